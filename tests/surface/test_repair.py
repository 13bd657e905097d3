"""Mending adds and takes triangles, moves no point, and tells all of it."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.errors import LimitError
from laywright.surface.repair import RepairSettings, repair
from laywright.surface.triangles import Surface
from laywright.surface.weld import tidy


@settings(max_examples=25, deadline=None)
@given(st.sets(st.integers(0, 1500), min_size=1, max_size=12))
def test_holes_in_a_sphere_are_closed_without_moving_a_point(missing):
    whole = shapes.sphere(40.0, 20)
    kept = ~np.isin(np.arange(len(whole.triangles)), list(missing))
    torn = tidy(whole.vertices, whole.triangles[kept])[0]
    mended = repair(torn, RepairSettings(hole=1e4))
    ours = {tuple(point) for point in mended.surface.vertices}
    assert ours <= {tuple(point) for point in whole.vertices}
    counts = {change.kind: change.count for change in mended.changes}
    assert not touching(mended.surface)
    freed = counts.get("triangles taken off where an outline touches itself", 0)
    assert (freed > 0) == touching(torn)
    if not freed:
        assert counts.get("holes closed", 0) == max(len(torn.boundary_loops) - 1, 0)


def touching(surface):
    table = surface.edges
    outer = table.ends[(table.left < 0) | (table.right < 0)]
    return np.bincount(outer.ravel()).max() > 2


def test_scraps_and_third_sheets_are_taken_off_and_told():
    plate = shapes.graph(lambda x, y: 0.0 * x, (0, 50), (0, 50), (10, 10))
    scrap = np.array([[80, 0, 0], [81, 0, 0], [80, 1, 0]], float)
    fin = np.array([[22.0, 22.0, 1.0]])
    size = len(plate.vertices)
    edge = plate.edges.ends[(plate.edges.left >= 0) & (plate.edges.right >= 0)][40]
    broken = Surface.single(
        np.concatenate([plate.vertices, scrap, fin]),
        np.concatenate(
            [plate.triangles, [[size, size + 1, size + 2]], [[edge[0], edge[1], size + 3]]]
        ),
    )
    mended = repair(tidy(broken.vertices, broken.triangles)[0])
    assert mended.surface.area == pytest.approx(2500.0)
    kinds = [change.kind for change in mended.changes]
    assert "loose scraps left out" in kinds
    assert "triangles taken off edges with more than two" in kinds
    assert [defect.kind for defect in mended.left] == ["open edges"]


def test_an_outline_that_touches_itself_is_freed_at_the_smaller_side():
    plate = shapes.graph(lambda x, y: 0.0 * x, (0, 50), (0, 50), (10, 10))
    point = np.flatnonzero((plate.vertices[:, :2] == 25.0).all(axis=1))[0]
    around = np.flatnonzero((plate.triangles == point).any(axis=1))
    turn = np.arctan2(*(plate.centroids[around] - plate.vertices[point])[:, 1::-1].T)
    order = around[np.argsort(turn)]
    kept = np.ones(len(plate.triangles), dtype=bool)
    kept[order[[0, len(order) // 2 + 1]]] = False
    torn = tidy(plate.vertices, plate.triangles[kept])[0]
    assert touching(torn)
    mended = repair(torn, RepairSettings(hole=0.0))
    (change,) = mended.changes
    assert change.kind == "triangles taken off where an outline touches itself"
    assert not touching(mended.surface)
    assert len(mended.surface.boundary_loops) == 2
    left = {tuple(sorted(map(tuple, corners))) for corners in mended.surface.corners.tolist()}
    assert left < {tuple(sorted(map(tuple, corners))) for corners in torn.corners.tolist()}
    assert len(torn.triangles) - len(left) == change.count < len(order) / 2


def test_a_share_or_a_hole_out_of_range_is_refused():
    with pytest.raises(LimitError, match="scraps: found 1, needed a share from 0 to 1"):
        RepairSettings(scrap=1.0)
    with pytest.raises(LimitError, match="holes: found -1 mm, needed 0 to 100000 mm"):
        RepairSettings(hole=-1.0)


def test_the_outline_is_never_closed_and_large_holes_stay():
    square = np.array([[-60, -60], [60, -60], [60, 60], [-60, 60]], float)
    turn = 2 * np.pi * np.arange(12) / 12
    small = np.stack([3 * np.cos(turn), 3 * np.sin(turn)], axis=1)
    large = np.stack([20 * np.cos(turn) + 30, 20 * np.sin(turn)], axis=1)
    plate = shapes.plate(square, lambda x, y: 0.0 * x, 8.0, (small, large))
    mended = repair(plate)
    assert len(mended.surface.boundary_loops) == 2
    (change,) = mended.changes
    assert str(change).startswith("1 holes closed at (0.00, 0.00, 0.00) mm")
    assert mended.surface.area - plate.area == pytest.approx(6 * np.sin(np.pi / 6) * 9.0)


def test_a_clean_mesh_stays_as_it_is():
    plate = shapes.graph(lambda x, y: 0.1 * x, (0, 50), (0, 50), (5, 5))
    mended = repair(plate)
    assert mended.changes == ()
    assert mended.surface.area == plate.area
    with pytest.raises(LimitError):
        RepairSettings(scrap=2.0)


def test_a_hole_whose_filling_would_double_an_edge_stays_open():
    # A square hole in a plate, its diagonal bridged by a fin: whichever way the hole is filled,
    # one diagonal is taken already.
    plate = shapes.graph(lambda x, y: 0.0 * x, (0, 40), (0, 40), (4, 4))
    middle = np.linalg.norm(plate.centroids[:, :2] - 15.0, axis=1) < 5.0
    torn = plate.part(~middle)
    mended = repair(torn, RepairSettings(scrap=0.0, hole=100.0))
    assert [change.kind for change in mended.changes] == ["holes closed"]
    assert mended.surface.area == pytest.approx(plate.area)
    corners = [
        int(np.argmin(np.linalg.norm(torn.vertices[:, :2] - place, axis=1)))
        for place in ([10, 10], [20, 20], [20, 10], [10, 20])
    ]
    fins = np.array([[corners[0], corners[1], 0], [corners[2], corners[3], 0]])
    lifted = np.concatenate([torn.vertices, [[15.0, 15.0, 9.0]]])
    fins[:, 2] = len(torn.vertices)
    barred, _ = tidy(lifted, np.concatenate([torn.triangles, fins]))
    again = repair(barred, RepairSettings(scrap=0.0, hole=45.0))
    assert all(defect.kind != "edges with more than two triangles" for defect in again.left)
