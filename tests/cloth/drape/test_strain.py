"""Strain of a map from surface to flat."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import shapes
from cloth.drape.reading import principal_stretches, strain_of
from laywright.cloth.drape.strain import facet_gradients, image_of, jacobians, turned_over

PLATE = shapes.graph(lambda x, y: 0.3 * x, (-3, 3), (-2, 2), (4, 3))
SLOPE = math.hypot(1.0, 0.3)


def on_plate():
    """Coordinates along the tilted plate, mm."""
    return PLATE.vertices[:, :2] * [SLOPE, 1.0]


@given(st.floats(-0.2, 0.2), st.floats(-0.2, 0.2), st.floats(-1.2, 1.2), st.floats(-3.0, 3.0))
def test_a_known_stretch_and_shear_is_found(warp, weft, shear, turn):
    """Yarns of unit length are laid out with given stretches and angle; the map inverts it."""
    first = (1.0 + warp) * np.array([math.cos(turn), math.sin(turn)])
    between = turn + math.pi / 2 - shear
    second = (1.0 + weft) * np.array([math.cos(between), math.sin(between)])
    uv = on_plate() @ np.linalg.inv(np.stack([first, second]))
    strain = strain_of(PLATE, uv)
    assert strain.warp == pytest.approx(warp, abs=1e-9)
    assert strain.weft == pytest.approx(weft, abs=1e-9)
    assert strain.shear == pytest.approx(shear, abs=1e-9)


@given(st.floats(-1.2, 1.2))
def test_cover_is_flat_area_per_surface_area(shear):
    uv = on_plate() @ np.linalg.inv(np.array([[1.0, 0.0], [math.sin(shear), math.cos(shear)]]))
    cover = strain_of(PLATE, uv).cover
    flat = PLATE.moved(np.column_stack([uv, np.zeros(len(uv))]))
    assert cover == pytest.approx(flat.areas / PLATE.areas)
    assert cover == pytest.approx(1.0 / math.cos(shear))


def test_gradients_are_exact_for_linear_fields():
    gradients = facet_gradients(PLATE)
    assert gradients.sum(axis=2) == pytest.approx(0.0, abs=1e-12)
    field = on_plate() @ [2.0, -1.0]
    found = np.einsum("mxk,mk->mx", gradients, field[PLATE.triangles])
    assert np.linalg.norm(found, axis=1) == pytest.approx(math.sqrt(5.0))


def test_principal_stretches_of_a_stretched_map():
    scales = principal_stretches(PLATE, on_plate() * [2.0, 0.5])
    assert scales[:, 0] == pytest.approx(2.0)
    assert scales[:, 1] == pytest.approx(0.5)


def test_turned_triangles_are_counted():
    uv = on_plate()
    assert turned_over(PLATE, uv) == 0
    assert turned_over(PLATE, uv * [1, -1]) == len(PLATE.triangles)
    assert turned_over(PLATE, uv * [1, 0]) == len(PLATE.triangles)


def test_image_of_a_direction():
    turn = 0.4
    c, s = math.cos(turn), math.sin(turn)
    uv = on_plate() @ np.array([[c, s], [-s, c]])
    along = (1.0 / SLOPE, 0.0, 0.3 / SLOPE)
    assert image_of(PLATE, uv, (0.1, 0.2, 0.0), along) == pytest.approx([c, s])


def test_jacobian_of_an_isometry_is_a_rotation():
    both = jacobians(PLATE, on_plate())
    assert np.einsum("mij,mkj->mik", both, both) == pytest.approx(
        np.broadcast_to(np.eye(2), both.shape), abs=1e-12
    )
