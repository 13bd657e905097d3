"""Margin at the edge of the part, none where a ply ends inside."""

import numpy as np
import pytest
from shapely.geometry import Polygon, box

import shapes
from laywright.cloth.plies.local_outline import local_outline


def outlined(inside, margin=10.0):
    """Return the outline of a square plate whose edges with `inside(middle)` are ends."""
    plate = shapes.graph(lambda x, y: 0.0 * x, (0, 80), (0, 40), (8, 4))
    loop = plate.boundary_loops[0]
    edges = np.stack([loop, np.roll(loop, -1)], axis=1)
    uv = plate.vertices[:, :2]
    ends = edges[[inside(*uv[edge].mean(axis=0)) for edge in edges]]
    return local_outline(Polygon(uv[loop]), plate, uv, ends, margin)


def test_no_margin_without_an_edge_of_the_part():
    found = outlined(lambda x, y: True)
    assert found.symmetric_difference(box(0, 0, 80, 40)).area < 0.1


def test_margin_all_round_without_an_end():
    whole = box(0, 0, 80, 40).buffer(10.0)
    assert outlined(lambda x, y: False).symmetric_difference(whole).area < 0.01 * whole.area


def test_margin_on_one_side_ends_straight_ahead_of_the_ends():
    found = outlined(lambda x, y: y > 0.0)
    assert found.symmetric_difference(box(0, -10, 80, 40)).area < 1.0


def test_margin_on_two_sides_meets_round_the_corner():
    found = outlined(lambda x, y: x > 0.0 and y > 0.0)
    wanted = box(0, 0, 80, 40).union(box(-10, -10, 80, 40).difference(box(-10, -10, 0, 0)))
    corner = found.difference(wanted).area
    assert corner == pytest.approx(25.0 * np.pi, rel=0.03)
