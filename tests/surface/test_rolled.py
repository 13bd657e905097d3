"""Offsets beyond the radius of curvature: one clean surface at its distance."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright.surface.distance import distances
from laywright.surface.offset import offset
from laywright.surface.rolled import ACCURACY


def measured(surface, distance):
    moved = offset(surface, distance)
    points = np.concatenate([moved.vertices, moved.centroids])
    return moved, distances(points, surface) - abs(distance)


def test_a_groove_becomes_a_valley_where_the_flanks_offsets_meet():
    """Balls of 8 mm about z = sqrt(x^2 + 1) top out at 2 sqrt((8^2 + 1) / 2) over x = 0."""
    surface = shapes.graph(lambda x, y: np.sqrt(x**2 + 1.0), (-30, 30), (-20, 20), (120, 6))
    moved, away = measured(surface, 8.0)
    middle = np.abs(moved.vertices[:, 0]) < 1.0
    bottom = moved.vertices[middle, 2] - np.abs(moved.vertices[middle, 0])
    assert bottom.min() == pytest.approx(2.0 * math.sqrt(32.5), abs=0.1)
    assert away.min() > -ACCURACY
    assert away.max() < 0.1
    assert len(moved.triangles) != len(surface.triangles)


@pytest.mark.parametrize("distance", [8.0, 14.0])
def test_a_bowl_tighter_than_the_distance(distance):
    surface = shapes.graph(lambda x, y: (x**2 + y**2) / 10, (-15, 15), (-15, 15), (30, 30))
    moved, away = measured(surface, distance)
    assert len(moved.boundary_loops) == 1
    assert moved.components.max() == 0
    assert moved.euler_characteristic == 1
    assert np.abs(away).max() < 0.2
    assert (moved.normals[:, 2] > 0.0).all()


def test_the_other_way_is_its_mirror():
    def wave(x, y):
        return (x**2 + y**2) / 10

    one = offset(shapes.graph(wave, (-15, 15), (-15, 15), (30, 30)), 8.0)
    other = offset(shapes.graph(lambda x, y: -wave(x, y), (-15, 15), (-15, 15), (30, 30)), -8.0)
    assert one.area == pytest.approx(other.area, rel=1e-2)
    assert one.vertices[:, 2].min() == pytest.approx(-other.vertices[:, 2].max(), abs=0.05)


def test_patches_stay_with_their_places():
    r = np.array([[0, 0], [20, 0], [23, 1], [24, 4], [25, 30]], float)
    moved, away = measured(shapes.dish(r, 48), 6.0)
    assert moved.patch_names == ("Face1",)
    assert away.min() > -ACCURACY
    assert moved.boundary_loops[0].size > 0
