"""Holes are filled so that the surface goes on."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.errors import GeometryError
from laywright.mould.body.fill import fill_holes
from laywright.surface.triangles import Surface

NAMES = ("face", "filled hole")
SQUARE = np.array([[-60, -60], [60, -60], [60, 60], [-60, 60]], float)


def round_hole(x, y, radius, count=24):
    turn = 2 * np.pi * np.arange(count) / count
    return np.stack([x + radius * np.cos(turn), y + radius * np.sin(turn)], axis=1)


def filled(height, *holes, spacing=6.0):
    surface = shapes.plate(SQUARE, height, spacing, holes)
    named = Surface(surface.vertices, surface.triangles, surface.patches, NAMES)
    return surface, fill_holes(named, 1)


@pytest.mark.parametrize(("a", "b"), [(0.0, 0.0), (0.2, -0.4)])
def test_a_plane_is_filled_by_its_own_plane(a, b):
    surface, whole = filled(
        lambda x, y: a * x + b * y, round_hole(-20, 0, 15), round_hole(30, 10, 5)
    )
    assert len(surface.boundary_loops) == 3
    assert len(whole.boundary_loops) == 1
    assert whole.area == pytest.approx(120.0**2 * np.sqrt(1 + a * a + b * b), rel=1e-9)
    x, y, z = whole.vertices.T
    assert np.abs(z - a * x - b * y).max() < 1e-6


def test_a_crown_is_met_without_a_kink():
    radius = 400.0
    _, whole = filled(
        lambda x, y: np.sqrt(radius**2 - x**2 - y**2) - radius, round_hole(5, -8, 20), spacing=4.0
    )
    patch = whole.part(whole.patches == 1)
    away = np.linalg.norm(patch.vertices + np.array([0, 0, radius]), axis=1) - radius
    assert np.abs(away).max() < 0.02
    table = whole.edges
    inner = (table.left >= 0) & (table.right >= 0)
    left, right = table.left[inner], table.right[inner]
    seam = whole.patches[left] != whole.patches[right]
    turn = np.einsum("ij,ij->i", whole.normals[left[seam]], whole.normals[right[seam]])
    assert np.degrees(np.arccos(np.clip(turn, -1, 1))).max() < 1.5


def test_a_slot_too_narrow_for_inner_points_is_still_closed():
    slot = np.array([[-30, -1], [30, -1], [30, 1], [-30, 1]], float)
    _, whole = filled(lambda x, y: 0.0 * x, slot, spacing=8.0)
    assert len(whole.boundary_loops) == 1
    assert whole.area == pytest.approx(14400.0, rel=1e-9)


def test_a_surface_without_holes_is_left_alone():
    surface, whole = filled(lambda x, y: 0.0 * x)
    assert len(whole.triangles) == len(surface.triangles)


def test_a_hole_that_crosses_itself_in_plan_is_refused():
    wall = shapes.cylinder_patch(10.0, 6.0, 40.0, (60, 20))
    middle = np.linalg.norm(wall.centroids - np.array([0.0, 0.0, 10.0]), axis=1)
    holed = wall.part(middle > 5.0)
    named = Surface(holed.vertices[:, [0, 2, 1]], holed.triangles, holed.patches, NAMES)
    with pytest.raises(GeometryError, match="crosses itself"):
        fill_holes(named, 1)
