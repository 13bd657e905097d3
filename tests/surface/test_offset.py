"""Offsets keep flat faces at their exact distance and edges sharp."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.errors import GeometryError
from laywright.surface.distance import distances
from laywright.surface.offset import offset


@settings(max_examples=30, deadline=None)
@given(st.floats(-4.0, 20.0), st.floats(10.0, 30.0), st.floats(10.0, 30.0))
def test_box_grows_by_the_distance_on_every_side(distance, x, y):
    grown = offset(shapes.box(x, y, 12.0), distance)
    wanted = (x + 2 * distance) * (y + 2 * distance) * (12.0 + 2 * distance)
    assert grown.volume == pytest.approx(wanted, rel=1e-9)


@pytest.mark.parametrize("distance", [-10.0, 3.0])
def test_sphere_offset_converges_to_the_sphere(distance):
    errors = []
    for rings in (20, 40):
        moved = offset(shapes.sphere(50.0, rings), distance)
        radius = np.linalg.norm(moved.vertices, axis=1)
        errors.append(np.abs(radius - (50.0 + distance)).max())
    assert errors[1] < 0.3 * errors[0]
    assert errors[1] < 0.02


def test_there_and_back_is_where_it_was():
    surface = shapes.cylinder_patch(80.0, 1.0, 100.0)
    back = offset(offset(surface, 2.0), -2.0)
    assert np.abs(back.vertices - surface.vertices).max() < 1e-3


def test_zero_changes_nothing():
    surface = shapes.hatch(spacing=30.0)
    assert offset(surface, 0.0) is surface


def test_beyond_the_radius_of_curvature_a_closed_surface_is_refused_with_the_place():
    with pytest.raises(GeometryError) as caught:
        offset(shapes.torus(20.0, 5.0, 40, 20), -6.0)
    assert caught.value.where == "Face1"
    assert "turn over" in caught.value.found
    assert "more than 6 mm" in caught.value.needed


def test_beyond_the_radius_of_curvature_an_open_one_is_cut_clean():
    surface = shapes.graph(lambda x, y: np.sqrt(x**2 + 1.0), (-30, 30), (-20, 20), (60, 6))
    moved = offset(surface, 5.0)
    assert len(moved.boundary_loops) == 1
    assert np.abs(distances(moved.vertices, surface) - 5.0).max() < 0.05


def test_a_face_that_folds_altogether_is_refused():
    with pytest.raises(GeometryError, match="turn over"):
        offset(shapes.cylinder_patch(5.0, math.pi / 2, 20.0, (10, 10)), -6.0)
