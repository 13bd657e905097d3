"""What the search asks of a body: extents at every turn, seam costs, the fewest tiles."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright.mould.tiles.cut_ground import CutLimits, ground_of

UP = (0.0, 0.0, 1.0)


def plate(hole=None, room=(200.0,) * 3):
    working = shapes.graph(lambda x, y: 0.0 * x, (0, 300), (0, 100), (150, 50))
    solid = shapes.box(300.0, 100.0, 20.0)
    solid = solid.moved(solid.vertices - np.array([0.0, 0.0, 20.0]))
    if hole is not None:
        # the filled hole is a patch of the body, in the mesh of its top
        names = (*solid.patch_names, "filled hole")
        points = np.concatenate([solid.vertices, hole])
        added = len(solid.vertices) + np.array([[0, 1, 2], [0, 2, 3]])
        solid = type(solid)(
            points,
            np.concatenate([solid.triangles, added]),
            np.concatenate([solid.patches, [len(names) - 1] * 2]),
            names,
        )
    trim = working.vertices[working.boundary_loops[0]]
    return ground_of(solid, working, trim, UP, CutLimits(room, 30.0))


def test_extents_of_a_turned_plate():
    turn = math.radians(30.0)
    ends = plate().extents(turn)
    lengths = [high - low for low, high in ends]
    wide = 300.0 * math.cos(turn) + 100.0 * math.sin(turn)
    deep = 300.0 * math.sin(turn) + 100.0 * math.cos(turn)
    assert lengths == pytest.approx([wide, deep, 20.0])
    low, high = plate().working_extent(turn, 0)
    assert high - low == pytest.approx(wide)


def test_never_fewer_tiles_than_boxes():
    assert plate().fewest(0.0) == 2
    assert plate(room=(100.0,) * 3).fewest(0.0) == 3
    assert plate(room=(301.0,) * 3).fewest(0.0) == 1


def test_a_seam_costs_more_near_the_trim_line_and_near_a_hole():
    steps, costs = plate().seam_costs(0.0, 0)
    middle = costs[np.abs(steps - 150.0).argmin()]
    assert middle == pytest.approx(costs[np.abs(steps - 100.0).argmin()], rel=1e-3)
    assert costs[np.abs(steps - 8.0).argmin()] > 1.4 * middle
    square = np.array([[140, 40, 0], [160, 40, 0], [160, 60, 0], [140, 60, 0]], float)
    _, holed = plate(square).seam_costs(0.0, 0)
    assert holed[np.abs(steps - 150.0).argmin()] > 1.1 * middle
    assert holed[np.abs(steps - 60.0).argmin()] == pytest.approx(middle, rel=1e-2)


def test_axes_are_a_turn():
    axes = plate().axes(0.3)
    np.testing.assert_allclose(axes @ axes.T, np.eye(3), atol=1e-15)
    assert axes[0].tolist() == pytest.approx([math.cos(0.3), math.sin(0.3), 0.0])
