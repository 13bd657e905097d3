"""Volumes below planes and in glue gaps have their closed forms."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.mould.solid import block, to_manifold
from laywright.mould.tiles.cells import cell_block
from laywright.mould.tiles.tile_account import gap_volume, taken_inside, volumes_below
from tile_demo import plan_of


@pytest.mark.parametrize("axis", [0, 1, 2])
def test_caps_of_a_ball(axis):
    ball = shapes.sphere(20.0, 200)
    places = np.array([-25.0, -20.0, -7.0, 0.0, 13.0, 20.0, 30.0])
    rise = np.clip(places + 20.0, 0.0, 40.0)
    wanted = math.pi * rise**2 * (60.0 - rise) / 3.0
    np.testing.assert_allclose(volumes_below(ball, axis, places), wanted, rtol=1e-3, atol=1e-6)


@settings(max_examples=20, deadline=None)
@given(st.floats(-52.0, 52.0), st.integers(0, 2))
def test_below_is_what_a_boolean_leaves_there(place, axis):
    torus = shapes.torus(40.0, 12.0, 24, 12)
    low, high = np.full(3, -99.0), np.full(3, 99.0)
    high[axis] = place
    wanted = (to_manifold(torus, "torus") ^ block(low, high, 0)).volume()
    (found,) = volumes_below(torus, axis, np.array([place]))
    assert found == pytest.approx(wanted, rel=1e-9, abs=1e-6)


def test_at_a_corner_the_volume_is_exact_too():
    box = shapes.box(10.0, 20.0, 30.0)
    np.testing.assert_allclose(
        volumes_below(box, 2, np.array([0.0, 15.0, 30.0])), [0.0, 3000.0, 6000.0], atol=1e-9
    )


def test_gaps_that_cross_count_once():
    box = shapes.box(100.0, 60.0, 40.0)
    plan = plan_of(box, ((30.0, 60.0), (20.0,), (10.0, 25.0)))
    gap = 0.5
    left = (100.0 - 2 * gap) * (60.0 - gap) * (40.0 - 2 * gap)
    found = gap_volume(box, to_manifold(box, "box"), plan, gap)
    assert found == pytest.approx(240000.0 - left, rel=1e-12)
    assert gap_volume(box, to_manifold(box, "box"), plan, 0.0) == 0.0


def test_holes_count_between_the_gaps_and_marks_inside_the_body():
    box = shapes.box(100.0, 60.0, 40.0)
    plan = plan_of(box, ((50.0,), (), ()))
    hole = block(np.array([40.0, 20.0, 10.0]), np.array([50.0, 30.0, 20.0]), 0)
    mark = block(np.array([10.0, 10.0, -1.0]), np.array([20.0, 20.0, 0.5]), 0)
    cutter = cell_block(plan, (0, 0, 0), 0.2, 0) - hole - mark
    found = taken_inside(plan, (0, 0, 0), 0.2, cutter, 100.0)
    assert found == pytest.approx(9.9 * 100.0 + 50.0, rel=1e-9)
