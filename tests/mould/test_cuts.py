"""The grid: fewest tiles first, then the cheapest seams, all within the printer."""

from __future__ import annotations

import math
from itertools import permutations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.errors import LimitError
from laywright.mould.cuts import (
    CutPlan,
    PrintPose,
    fewest_counts,
    plan_cuts,
    rotations,
    slivers,
    underside,
)
from laywright.surface.triangles import Surface

UP = (0.0, 0.0, 1.0)


def plan_of(solid, room, least=30.0, pose=PrintPose.BASE_DOWN, working=None):
    """Plan the cuts of a box-like solid whose top is the working surface."""
    working = working or solid.part(solid.normals[:, 2] > 0.5)
    trim = working.vertices[working.boundary_loops[0]]
    return plan_cuts(solid, working, trim, UP, room, least, pose)


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


@settings(max_examples=15, deadline=None)
@given(st.floats(60.0, 500.0), st.floats(60.0, 500.0), st.floats(20.0, 300.0))
def test_every_cell_fits_and_none_is_too_thin(x, y, z):
    room = (200.0, 180.0, 150.0)
    plan = plan_of(shapes.box(x, y, z), room)
    limit = np.abs(plan.rotation).T @ np.array(room)
    for axis in range(3):
        edges = np.array([plan.low[axis], *plan.cuts[axis], plan.high[axis]])
        assert (np.diff(edges) <= limit[axis] + 1e-6).all()
        if plan.cuts[axis]:
            assert (np.diff(edges) >= 30.0 - 1e-6).all()


def test_a_plate_that_lies_askew_is_cut_along_its_own_sides():
    turn = math.radians(30.0)
    about = np.array([[math.cos(turn), -math.sin(turn), 0], [math.sin(turn), math.cos(turn), 0]])
    box = shapes.box(390.0, 190.0, 20.0)
    turned = box.moved(np.column_stack([box.vertices @ about.T, box.vertices[:, 2]]))
    plan = plan_of(turned, (200.0, 200.0, 200.0))
    assert math.prod(plan.counts) == 2
    assert math.degrees(plan.turn) == pytest.approx(30.0)


def test_a_seam_keeps_off_a_bump():
    def height(x, y):
        return 15.0 * np.exp(-((x / 12.0) ** 2) - (y / 30.0) ** 2)

    working = shapes.graph(height, (-150, 150), (-50, 50), (150, 40))
    box = shapes.box(300.0, 100.0, 20.0)
    solid = box.moved(box.vertices - np.array([150.0, 50.0, 20.0]))
    plan = plan_of(solid, (200.0, 200.0, 200.0), working=working)
    assert plan.counts == (2, 1, 1)
    assert abs(plan.cuts[0][0]) > 15.0
    flat = shapes.graph(lambda x, y: 0.0 * x, (-150, 150), (-50, 50), (150, 40))
    assert plan_of(solid, (200.0,) * 3, working=flat).cuts[0] == pytest.approx((0.0,), abs=1e-6)


def test_standing_tiles_where_any_side_may_lie_down():
    box = shapes.box(100.0, 80.0, 290.0)
    room = (300.0, 200.0, 100.0)
    assert math.prod(plan_of(box, room).counts) == 3
    standing = plan_of(box, room, pose=PrintPose.ANY_SIDE)
    assert math.prod(standing.counts) == 1
    assert (np.abs(standing.rotation) @ np.array([100.0, 80.0, 290.0]) <= np.array(room)).all()


def test_corners_that_would_be_slivers_are_counted():
    outline = np.array([[0, 0], [100, 0], [100, 100], [95, 100], [95, 5], [0, 5]], float)
    plate = shapes.plate(outline, lambda x, y: 0.0 * x, 2.0)
    below = Surface.single(plate.vertices, plate.triangles[:, ::-1])
    outline = underside(below, np.eye(3))
    assert outline.area == pytest.approx(100.0**2 - 95.0**2)
    cuts = ((50.0,), (50.0,), ())
    plan = CutPlan(np.eye(3), 0.0, (0, 0, 0), (100, 100, 0), cuts, np.eye(3), 0.0)
    assert slivers(outline, plan, 10.0) == 2
    assert slivers(outline, plan, 4.0) == 0
    assert plan.cell((1, 0, 0)).tolist() == [[50, 0, 0], [100, 50, 0]]


def test_a_printer_too_small_or_far_too_many_tiles():
    box = shapes.box(400.0, 300.0, 100.0)
    with pytest.raises(LimitError) as caught:
        plan_of(box, (20.0, 200.0, 200.0))
    assert caught.value.found == "room for 20 mm"
    with pytest.raises(LimitError, match="tiles for this mould"):
        plan_of(shapes.box(4000.0, 4000.0, 100.0), (100.0, 100.0, 100.0))
    with pytest.raises(LimitError, match="least tile"):
        plan_of(shapes.box(100.0, 40.0, 30.0), (60.0, 60.0, 60.0), least=55.0)
