"""The nearest place of a surface."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.cloth.drape.place import Place, nearest_place
from laywright.surface.triangles import Surface

PLATE = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-5, 5), (7, 4))
number = st.floats(-30, 30)


@given(number, number, number)
def test_nearest_place_of_a_plate_is_the_clamped_point(x, y, z):
    place = nearest_place(PLATE, np.array([x, y, z]))
    expected = [np.clip(x, -10, 10), np.clip(y, -5, 5), 0.0]
    assert place.point(PLATE) == pytest.approx(expected, abs=1e-6)
    assert min(place.weights) >= -1e-12
    assert sum(place.weights) == pytest.approx(1.0)


@given(number, number, number)
@settings(max_examples=25)
def test_no_vertex_is_nearer(x, y, z):
    cap = shapes.cap(20, 1.0, 6)
    point = np.array([x, y, z])
    found = np.linalg.norm(nearest_place(cap, point).point(cap) - point)
    assert found <= np.linalg.norm(cap.vertices - point, axis=1).min() + 1e-12


def test_a_point_above_a_sphere_falls_along_the_normal():
    cap = shapes.cap(100, 1.0, 40)
    place = nearest_place(cap, np.array([30.0, 20.0, 150.0]))
    direction = np.array([30.0, 20.0, 150.0]) / np.linalg.norm([30, 20, 150])
    assert place.point(cap) / 100 == pytest.approx(direction, abs=5e-3)
    assert np.array(place.normal(cap)) == pytest.approx(direction, abs=5e-3)


def test_values_are_read_linearly():
    place = Place(0, (0.2, 0.3, 0.5))
    field = PLATE.vertices @ [1.0, 2.0, 3.0] + 4.0
    assert place.value(PLATE, field) == pytest.approx(place.point(PLATE) @ [1, 2, 3] + 4.0)


def test_triangles_without_area_are_passed_over():
    points = np.array([[0, 0, 0], [1, 0, 0], [2, 0, 0], [0, 1, 0]], float)
    surface = Surface.single(points, np.array([[0, 1, 2], [0, 2, 3]]))
    assert nearest_place(surface, np.array([1.0, -1.0, 0.0])).triangle == 1
