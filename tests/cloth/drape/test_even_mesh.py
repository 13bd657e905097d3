"""Even meshes keep the shape, the outline and the topology."""

import math

import numpy as np
import pytest

import shapes
from laywright.cloth.drape.even_mesh import even_mesh, spacing_for
from laywright.errors import GeometryError


def shape_quality(surface):
    """1 for an equilateral triangle, 0 for a needle (4 sqrt 3 area over the squared sides)."""
    corners = surface.corners
    squares = sum(((corners[:, i] - corners[:, i - 1]) ** 2).sum(axis=1) for i in range(3))
    return 4.0 * math.sqrt(3.0) * surface.areas / squares


@pytest.mark.parametrize("make", [lambda: shapes.cap(100, math.radians(60), 40), shapes.hatch])
def test_even_triangles_of_the_wanted_number(make):
    surface = make()
    even = even_mesh(surface, spacing_for(surface, 5000))
    assert abs(len(even.triangles) - 5000) < 300
    assert shape_quality(even).min() > 0.5
    assert even.area == pytest.approx(surface.area, rel=5e-4)
    assert even.euler_characteristic == 1
    assert even.normals[:, 2].min() > 0.0


def test_points_lie_on_the_smooth_sphere_better_than_on_its_facets():
    radius, rings = 100.0, 40
    cap = shapes.cap(radius, math.radians(60), rings)
    even = even_mesh(cap, 4.0)
    inner = np.setdiff1d(np.arange(len(even.vertices)), even.boundary_loops[0])
    error = np.abs(np.linalg.norm(even.vertices[inner], axis=1) - radius).max()
    chord = radius * (1.0 - math.cos(math.radians(60.0 / rings)))
    assert error < 0.5 * chord


def test_a_hole_stays_a_hole_and_corners_stay_corners():
    plate = shapes.graph(lambda x, y: 0.0 * x, (-50, 50), (-30, 30), (50, 30))
    middle = plate.centroids
    plate = plate.part(np.hypot(middle[:, 0], middle[:, 1]) > 10.0)
    even = even_mesh(plate, 3.0)
    assert len(even.boundary_loops) == 2
    corners = even.vertices[even.boundary_loops[0]]
    for x, y in ((-50, -30), (-50, 30), (50, -30), (50, 30)):
        assert np.linalg.norm(corners - (x, y, 0), axis=1).min() < 1e-9


def test_patches_are_carried_over():
    plate = shapes.graph(lambda x, y: 0.0 * x, (-50, 50), (-30, 30), (50, 30))
    halves = type(plate)(
        plate.vertices, plate.triangles, plate.centroids[:, 0] > 0, ("left", "right")
    )
    even = even_mesh(halves, 3.0)
    right = even.areas[even.patches == 1].sum()
    assert right == pytest.approx(3000.0, rel=0.03)


def test_a_closed_surface_is_refused():
    with pytest.raises(GeometryError):
        even_mesh(shapes.sphere(20, 20), 3.0)
