"""Slivers are counted piece by piece, and the places of cuts that leave them are known."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.slivers import narrow_ends, slivers


def plan_of(outline, x=(), y=(), turn=0.0):
    x0, y0, x1, y1 = outline.bounds
    return CutPlan(np.eye(3), turn, (x0, y0, 0), (x1, y1, 9), (x, y, ()), np.eye(3), 0.0)


def rounded(width, height, radius):
    return shapely.box(radius, radius, width - radius, height - radius).buffer(radius, 64)


def test_thin_pieces_are_counted_one_by_one():
    hook = shapely.Polygon([[0, 0], [100, 0], [100, 100], [95, 100], [95, 5], [0, 5]])
    plan = plan_of(hook, (50.0,), (50.0,))
    assert slivers(hook, plan, 10.0) == 2
    assert slivers(hook, plan, 4.0) == 0
    two = shapely.union(shapely.box(0, 0, 40, 3), shapely.box(0, 20, 40, 23))
    assert slivers(two, plan_of(two, (20.0,)), 5.0) == 4


def test_the_end_of_every_strip_bars_its_neighbourhood():
    plate = rounded(450.0, 210.0, 100.0)
    plan = plan_of(plate, y=(35.0,))
    start = 100.0 - math.sqrt(100.0**2 - 65.0**2)
    lower = [(start, start + 30.0), (450.0 - start - 30.0, 450.0 - start)]
    wanted = sorted([*lower, (0.0, 30.0), (420.0, 450.0)])
    found = narrow_ends(plate, plan, 0, 30.0)
    np.testing.assert_allclose(found, wanted, atol=0.05)


@settings(max_examples=30, deadline=None)
@given(st.floats(20.0, 430.0), st.floats(15.0, 195.0), st.floats(20.0, 100.0))
def test_a_cut_clear_of_all_narrow_ends_leaves_no_piece_short_along_its_axis(x, y, radius):
    plate = rounded(450.0, 210.0, radius)
    barred = narrow_ends(plate, plan_of(plate, y=(y,)), 0, 12.0)
    plan = plan_of(plate, (x,), (y,))
    short = 0
    for i in range(2):
        for j in range(2):
            low, high = plan.cell((i, j, 0))
            piece = shapely.intersection(plate, shapely.box(*low[:2], *high[:2]))
            if piece.area > 1e-6:
                short += piece.bounds[2] - piece.bounds[0] < 12.0 - 1e-6
    assert (short > 0) == any(low + 1e-9 < x < high - 1e-9 for low, high in barred)


def test_a_turned_grid_sees_a_turned_outline():
    plate = rounded(300.0, 100.0, 30.0)
    turned = shapely.affinity.rotate(plate, 20.0, origin=(0.0, 0.0))
    straight, askew = plan_of(plate, (8.0,)), plan_of(plate, (8.0,), turn=math.radians(20.0))
    assert slivers(turned, askew, 10.0) == slivers(plate, straight, 10.0) == 1
    np.testing.assert_allclose(
        narrow_ends(turned, askew, 1, 9.0), narrow_ends(plate, straight, 1, 9.0), atol=1e-9
    )
    assert pytest.approx(0.0, abs=1e-9) == narrow_ends(plate, straight, 1, 9.0)[0][0]
