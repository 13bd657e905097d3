"""Bolts at most so far apart; cones that go together one way only."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.mould.body.fastening import other_placements, plan_flange


def ring(radius, count=90):
    turn = np.linspace(0.0, 2.0 * np.pi, count + 1)
    return radius * np.stack([np.cos(turn), np.sin(turn)], axis=1)


def test_known_patterns():
    square = np.array([[0, 0], [10, 0], [10, 10], [0, 10]], float)
    assert other_placements(square, 0.1) == 7
    assert other_placements(np.array([[0, 0], [10, 0], [5, 8.6602540378]]), 0.1) == 5
    assert other_placements(np.array([[0, 0], [20, 0], [10, 25]], float), 0.1) == 1
    assert other_placements(np.array([[0, 0], [20, 0], [5, 30]], float), 0.1) == 0
    assert other_placements(np.array([[0, 0], [20, 0]], float), 0.1) == 3


@settings(max_examples=40, deadline=None)
@given(turn=st.floats(0, 6.3), x=st.floats(-50, 50), mirror=st.booleans())
def test_the_number_does_not_depend_on_the_place(turn, x, mirror):
    square = np.array([[0, 0], [30, 0], [30, 20], [0, 20]], float)
    c, s = np.cos(turn), np.sin(turn)
    placed = square @ np.array([[c, -s], [s, c]]) * [-1.0 if mirror else 1.0, 1.0] + x
    assert other_placements(placed, 1e-6) == 3


@pytest.mark.parametrize(
    "lines",
    [
        [ring(60.0)],
        [np.array([[-120, 0], [-120, -60], [120, -60], [120, 0]], float)],
        [np.array([[0, 0], [400, 0]], float), np.array([[0, 90], [300, 90]], float)],
    ],
)
def test_bolts_stand_close_enough_and_cones_have_one_placement(lines):
    plan = plan_flange(lines, lines, 150.0, 12.0, 9.0)
    lengths = [np.linalg.norm(np.diff(line, axis=0), axis=1).sum() for line in lines]
    assert len(plan.bolts) >= sum(lengths) / 150.0
    apart = np.linalg.norm(plan.bolts[:, None] - plan.cones[None], axis=2)
    assert apart.min() >= 21.0 - 1e-9
    assert plan.cones.shape == (3, 2)
    assert other_placements(plan.cones, 1.0) == 0


def test_bolts_of_lines_side_by_side_keep_apart():
    lines = [np.array([[0, y], [300, y]], float) for y in (0.0, 9.0, 60.0)]
    plan = plan_flange(lines, lines, 150.0, 12.0, 9.0)
    apart = np.linalg.norm(plan.bolts[:, None] - plan.bolts[None], axis=2)
    assert (apart + 1e3 * np.eye(len(apart))).min() >= 24.0
    assert len(plan.bolts) == 6


def test_no_room_gives_none():
    plan = plan_flange(*2 * ([np.array([[0, 0], [5, 0]], float)],), 150.0, 12.0, 9.0)
    assert len(plan.bolts) == len(plan.cones) == 0
