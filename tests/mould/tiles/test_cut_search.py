"""The grid: fewest tiles first, then the cheapest seams, every limit and wish kept."""

from __future__ import annotations

import math
from itertools import combinations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.errors import Cancelled, LimitError
from laywright.mould.solid import prism_mesh
from laywright.mould.tiles.cut_ground import CutLimits
from laywright.mould.tiles.cut_search import plan_cuts
from laywright.mould.tiles.cuts import PrintPose
from laywright.mould.tiles.seam_cost import SeamCost
from laywright.mould.tiles.wishes import CutWishes
from laywright.surface.triangles import Surface

UP = (0.0, 0.0, 1.0)


def plan_of(solid, room, least=30.0, pose=PrintPose.BASE_DOWN, working=None, **more):
    """Plan the cuts of a box-like solid whose top is the working surface."""
    working = working or solid.part(solid.normals[:, 2] > 0.5)
    trim = working.vertices[working.boundary_loops[0]]
    kept = {key: more.pop(key) for key in ("tongue", "ear", "wall") if key in more}
    return plan_cuts(solid, working, trim, UP, CutLimits(room, least, pose, **kept), **more)


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


def test_a_printer_too_small_or_far_too_many_tiles():
    box = shapes.box(400.0, 300.0, 100.0)
    with pytest.raises(LimitError) as caught:
        plan_of(box, (20.0, 200.0, 200.0))
    assert caught.value.found == "room for 20 mm"
    with pytest.raises(LimitError, match="tiles for this mould"):
        plan_of(shapes.box(4000.0, 4000.0, 100.0), (100.0, 100.0, 100.0))
    with pytest.raises(LimitError) as caught:
        plan_of(
            shapes.box(100.0, 40.0, 30.0),
            (60.0, 60.0, 60.0),
            least=55.0,
            wishes=CutWishes(turn=0.0),
        )
    assert caught.value.where == "least tile"
    assert (caught.value.found, caught.value.needed) == ("55 mm", "at most 52.1 mm")
    assert plan_of(shapes.box(100.0, 40.0, 30.0), (60.0,) * 3, least=50.0).counts == (2, 1, 1)
    with pytest.raises(LimitError) as caught:
        plan_of(box, (250.0, 310.0, 200.0), wishes=CutWishes(turn=0.0, free_x=((20.0, 390.0),)))
    assert caught.value.needed == "cuts 30 mm apart beside what no cut may pass"


def exhaustive(length, room, least, costs):
    """Fewest pieces of a length, and the least cost at that number, over every millimetre."""
    if length <= room:
        return 1, 0.0
    for count in range(1, 5):
        cuts = np.array(list(combinations(range(1, int(length)), count)))
        ends = np.full((len(cuts), 1), 0), cuts, np.full((len(cuts), 1), length)
        pieces = np.diff(np.concatenate(ends, axis=1), axis=1)
        fits = (pieces.max(axis=1) <= room) & (pieces.min(axis=1) >= least)
        if fits.any():
            return count + 1, float(costs[cuts[fits]].sum(axis=1).min())
    raise AssertionError


@settings(max_examples=15, deadline=None)
@given(
    st.lists(st.floats(15.0, 105.0), min_size=1, max_size=2),
    st.floats(4.0, 25.0),
    st.floats(1.0, 12.0),
    st.floats(42.0, 125.0),
    st.floats(12.0, 17.0),
)
def test_never_more_tiles_than_the_best_of_all_and_within_five_per_cent_of_its_cost(
    bumps, width, rise, room, least
):
    def height(x, y):
        return sum(rise * np.exp(-(((x - bump) / width) ** 2)) for bump in bumps) + 0.0 * y

    working = shapes.graph(height, (0, 120), (0, 30), (120, 6))
    solid = shapes.box(120.0, 30.0, 10.0)
    solid = solid.moved(solid.vertices - np.array([0.0, 0.0, 10.0]))
    places = np.arange(0.0, 121.0)
    ask = SeamCost.of(working, working.vertices[working.boundary_loops[0]])
    costs = ask.along(np.array([1.0, 0.0, 0.0]), places)
    limits = (room, max(room, 31.0), 130.0)
    plan = plan_of(solid, limits, least, working=working, wishes=CutWishes(turn=0.0), seconds=60.0)
    tiles, cost = exhaustive(120.0, room, least, costs)
    assert math.prod(plan.counts) == tiles
    assert sum(float(np.interp(cut, places, costs)) for cut in plan.cuts[0]) <= 1.05 * cost


def test_pinned_and_forbidden_cuts_and_their_cost():
    box = shapes.box(400.0, 100.0, 20.0)
    free = plan_of(box, (210.0,) * 3)
    assert free.counts == (2, 1, 1)
    assert free.free_count == 0
    pinned = plan_of(box, (210.0,) * 3, wishes=CutWishes(pinned_x=(150.0,)))
    assert 150.0 in pinned.cuts[0]
    assert pinned.counts == (3, 1, 1)
    assert (pinned.free_count, pinned.free_cost) == (2, free.cost)
    assert pinned.cost > free.cost
    assert (pinned.more_tiles, pinned.more_cost) == (1, pinned.cost - free.cost)
    assert (free.more_tiles, free.more_cost) == (0, 0.0)
    kept = plan_of(box, (210.0,) * 3, wishes=CutWishes(free_x=((180.0, 230.0),)))
    assert kept.counts == (3, 1, 1)
    assert all(not 180.0 < cut < 230.0 for cut in kept.cuts[0])
    shifted = plan_of(box, (230.0,) * 3, wishes=CutWishes(free_x=((190.0, 212.0),)))
    assert shifted.counts == (2, 1, 1)
    assert not 190.0 < shifted.cuts[0][0] < 212.0
    turned = plan_of(box, (210.0,) * 3, wishes=CutWishes(turn=math.radians(10.0)))
    assert turned.turn == pytest.approx(math.radians(10.0))
    assert turned.free_count == 2


def test_no_cut_goes_through_what_is_kept_whole():
    box = shapes.box(390.0, 100.0, 20.0)
    ball = CutWishes(kept_whole=((195.0, 50.0, 10.0, 4.0),))
    (cut,) = plan_of(box, (205.0,) * 3, wishes=ball).cuts[0]
    assert abs(cut - 195.0) >= 4.0 + 2.5 - 1e-9
    with pytest.raises(LimitError, match="what no cut may pass"):
        plan_of(
            box,
            (205.0,) * 3,
            wishes=CutWishes(pinned_x=(196.0,), kept_whole=ball.kept_whole),
        )


def test_no_sliver_on_the_working_face():
    box = shapes.box(250.0, 100.0, 20.0)
    solid = box.moved(box.vertices - np.array([0.0, 0.0, 20.0]))
    working = shapes.graph(lambda x, y: 0.0 * x, (48, 225), (25, 75), (60, 20))
    plan = plan_of(solid, (201.0,) * 3, working=working)
    (cut,) = plan.cuts[0]
    assert not 48.0 < cut < 58.0
    assert plan.slivers == 0


def test_tongues_and_ears_need_their_room():
    box = shapes.box(400.0, 100.0, 20.0)
    assert plan_of(box, (200.0,) * 3).counts == (2, 1, 1)
    assert plan_of(box, (200.0,) * 3, tongue=6.0).counts == (3, 1, 1)
    plan = plan_of(box, (206.0,) * 3, tongue=6.0)
    assert plan.counts == (2, 1, 1)
    assert plan.cuts[0][0] <= 200.0 + 1e-9
    assert plan_of(box, (206.0,) * 3, ear=5.0).counts == (2, 1, 1)
    assert plan_of(box, (204.0,) * 3, ear=5.0).counts == (3, 1, 1)


def test_a_search_without_time_takes_the_first_grid_and_says_so():
    box = shapes.box(390.0, 290.0, 20.0)
    plan = plan_of(box, (200.0,) * 3, seconds=0.0)
    assert plan.turn == 0.0
    assert not plan.is_whole_search
    assert plan_of(box, (200.0,) * 3, seconds=60.0).is_whole_search


def test_stopped_before_any_grid_nothing_and_after_it_the_best_so_far():
    box = shapes.box(200.0, 200.0, 20.0)

    def stop_at(limit):
        def progress(share, doing="", /):
            if share >= limit:
                raise Cancelled("the cuts")

        return progress

    room = (110.0, 110.0, 110.0)
    with pytest.raises(Cancelled):
        plan_of(box, room, progress=stop_at(0.0))
    plan = plan_of(box, room, progress=stop_at(0.01))
    assert not plan.is_whole_search
    assert math.prod(plan.counts) == 4


def test_seams_keep_off_a_hole_and_off_a_trim_line_that_runs_along_them():
    working = shapes.graph(lambda x, y: 0.0 * x, (-150, 150), (-50, 50), (150, 50))
    box = shapes.box(300.0, 100.0, 20.0)
    solid = box.moved(box.vertices - np.array([150.0, 50.0, 20.0]))
    square = np.array([[-10, -10, 0], [10, -10, 0], [10, 10, 0], [-10, 10, 0]], float)
    holed = Surface(
        np.concatenate([solid.vertices, square]),
        np.concatenate([solid.triangles, len(solid.vertices) + np.array([[0, 1, 2], [0, 2, 3]])]),
        np.concatenate([solid.patches, [len(solid.patch_names)] * 2]),
        (*solid.patch_names, "filled hole"),
    )
    top = working
    (straight,) = plan_of(solid, (200.0,) * 3, working=top, wishes=CutWishes(turn=0.0)).cuts[0]
    assert straight == pytest.approx(0.0, abs=1e-6)
    (aside,) = plan_of(holed, (200.0,) * 3, working=top, wishes=CutWishes(turn=0.0)).cuts[0]
    assert abs(aside) > 10.0
    # the trim line runs along the even cut, two millimetres beside it
    half = shapes.graph(lambda x, y: 0.0 * x, (-2, 140), (-50, 50), (71, 50))
    (free,) = plan_of(solid, (200.0,) * 3, working=half, wishes=CutWishes(turn=0.0)).cuts[0]
    assert free < -2.0 or free > 20.0


def test_no_sliver_at_a_rounded_corner():
    def height(x, y):
        return np.where(x > 56.0, 3.0 * np.sin((x - 56.0) / 6.0), 0.0) + 0.0 * y

    turn = np.linspace(0.0, 2.0 * np.pi, 129)[:-1]
    corner = np.stack([np.sign(np.cos(turn)) * 125.0, np.sign(np.sin(turn)) * 5.0], axis=1)
    outline = corner + 100.0 * np.stack([np.cos(turn), np.sin(turn)], axis=1) + [225.0, 105.0]
    solid = Surface.single(*prism_mesh(outline, -20.0, 0.0))
    working = shapes.graph(height, (0, 450), (0, 210), (225, 20))
    wishes = CutWishes(turn=0.0, pinned_y=(35.0,))
    foot = np.column_stack([outline, np.zeros(len(outline))])
    limits = CutLimits((205.0,) * 3, 30.0)
    plan = plan_cuts(solid, working, foot, UP, limits, wishes, 60.0)
    # beside the lower corners the outline starts 24 mm in: 30 mm further no cut may lie
    start = 100.0 - math.sqrt(100.0**2 - 65.0**2)
    assert all(start + 30.0 - 0.1 <= cut <= 450.0 - start - 30.0 + 0.1 for cut in plan.cuts[0])
    assert plan.counts[0] == 3
    assert plan.slivers == 0
