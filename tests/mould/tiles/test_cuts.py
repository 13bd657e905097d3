"""The grid: fewest tiles first, then the cheapest seams, all within the printer."""

from __future__ import annotations

import math
from itertools import permutations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import shapes
from laywright.mould.tiles.cuts import (
    CutPlan,
    PrintPose,
    fewest_counts,
    rotations,
    underside,
)
from laywright.surface.triangles import Surface


@pytest.mark.parametrize("pose", list(PrintPose))
def test_rotations_are_turns_of_the_axes(pose):
    for rotation in rotations(pose):
        assert np.linalg.det(rotation) == pytest.approx(1.0)
        assert sorted(np.abs(rotation).ravel().tolist()) == [0.0] * 6 + [1.0] * 3
    upright = [rotation[2, 2] for rotation in rotations(PrintPose.BASE_DOWN)]
    assert upright == [1.0, 1.0]
    assert len({np.abs(r).tobytes() for r in rotations(PrintPose.ANY_SIDE)}) == 6


@given(
    st.tuples(*[st.floats(1.0, 900.0)] * 3),
    st.tuples(*[st.floats(50.0, 400.0)] * 3),
)
def test_fewest_of_all_orders_of_the_sides(extent, room):
    for pose, orders in (
        (PrintPose.BASE_DOWN, [(0, 1, 2), (1, 0, 2)]),
        (PrintPose.ANY_SIDE, list(permutations(range(3)))),
    ):
        wanted = min(
            math.prod(math.ceil(extent[i] / room[order[i]] - 1e-9) for i in range(3))
            for order in orders
        )
        assert math.prod(fewest_counts(extent, room, pose)[0]) == wanted


def test_the_foot_of_a_body_and_the_corners_of_its_cells():
    outline = np.array([[0, 0], [100, 0], [100, 100], [95, 100], [95, 5], [0, 5]], float)
    plate = shapes.plate(outline, lambda x, y: 0.0 * x, 2.0)
    below = Surface.single(plate.vertices, plate.triangles[:, ::-1])
    assert underside(below, np.eye(3)).area == pytest.approx(100.0**2 - 95.0**2)
    cuts = ((50.0,), (50.0,), ())
    plan = CutPlan(np.eye(3), 0.0, (0, 0, 0), (100, 100, 0), cuts, np.eye(3), 0.0)
    assert plan.cell((1, 0, 0)).tolist() == [[50, 0, 0], [100, 50, 0]]
