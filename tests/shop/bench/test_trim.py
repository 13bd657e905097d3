from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.files.drawing import Label, Line
from laywright.shop.bench.trim import EdgeFacts, TrimPlan, plan_trim
from laywright.values import pack, unpack

SQUARE = np.array([[0, 0, 0], [400, 0, 0], [400, 300, 0], [0, 300, 0]], float)


def ring(diameter: float, centre, tilt: float = 0.0, count: int = 60) -> np.ndarray:
    turn = 2.0 * np.pi * np.arange(count) / count
    x, y = 0.5 * diameter * np.cos(turn), 0.5 * diameter * np.sin(turn)
    return np.stack([x, y * math.cos(tilt), y * math.sin(tilt)], axis=1) + centre


@given(
    st.floats(2.0, 100.0),
    st.tuples(*[st.floats(-500.0, 500.0)] * 3),
    st.floats(-1.2, 1.2),
)
def test_a_round_hole_is_found_wherever_it_lies(diameter, centre, tilt):
    (hole,) = plan_trim((SQUARE, ring(diameter, centre, tilt)), (0, 0, 1), ()).holes
    assert hole.diameter == pytest.approx(diameter, rel=1e-6)
    assert hole.centre == pytest.approx(centre, abs=1e-6)
    assert hole.out_of_round < 1e-6
    assert hole.is_round
    assert hole.length == pytest.approx(60 * diameter * math.sin(math.pi / 60), rel=1e-9)


def test_a_slot_is_not_drilled():
    slot = ring(20.0, (200, 150, 0)) * (3.0, 1.0, 1.0) - (400, 0, 0)
    (hole,) = plan_trim((SQUARE, slot), (0, 0, 1), ()).holes
    assert not hole.is_round
    assert hole.out_of_round > 5.0


def test_lengths_of_line_and_tape():
    plan = plan_trim(
        (SQUARE, ring(12.0, (50, 50, 0))), (0, 0, 1), (EdgeFacts(1500.0), EdgeFacts(1000.0, 2))
    )
    assert plan.line_mm == 1400.0
    assert plan.holes_mm == pytest.approx(math.pi * 12.0, rel=1e-3)
    assert plan.cloth_tape_mm == pytest.approx(1.1 * 3500.0)
    assert plan.part_tape_mm == pytest.approx(1.1 * (plan.line_mm + plan.holes_mm))


@pytest.mark.parametrize("pull", [(0, 0, 1), (0, 0, -2), (1, 0, 0), (0, 1, 0.1)])
def test_the_picture_looks_against_the_pull_without_mirroring(pull):
    ahead = np.array(pull) / np.linalg.norm(pull)
    side = np.cross(ahead, [0.3, 0.5, 0.7])
    side /= np.linalg.norm(side)
    up = np.cross(ahead, side)
    loop = np.stack([0 * side, side, side + up, up]) * 100.0
    shapes = plan_trim((loop, loop * 0.2 + 30.0 * side + 30.0 * up), pull, ()).picture.shapes
    edge = next(shape.points for shape in shapes if isinstance(shape, Line))
    x, y = edge.T
    assert 0.5 * (x * np.roll(y, -1) - np.roll(x, -1) * y).sum() == pytest.approx(1e4)
    assert [shape.text for shape in shapes if isinstance(shape, Label)] == ["H1"]


def test_plan_survives_storage():
    plan = plan_trim((SQUARE, ring(12.0, (50, 50, 0))), (0, 0, 1), (EdgeFacts(1.0),))
    assert pack(unpack(TrimPlan, pack(plan))) == pack(plan)


def test_a_part_without_an_edge_is_refused():
    with pytest.raises(InputError, match="trim line"):
        plan_trim((), (0, 0, 1), ())
