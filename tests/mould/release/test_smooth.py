"""Areas below a level converge; sharp parts keep their facets' own draft."""

from __future__ import annotations

import math

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

import shapes
from laywright.arrays import unit_vector
from laywright.mould.release.smooth import corner_tilt, share_below, shares_below


@given(st.tuples(*[st.floats(-3.0, 3.0)] * 3), st.floats(-3.0, 3.0))
def test_share_is_that_of_many_points(values, level):
    u, v = np.meshgrid(*[(np.arange(200) + 0.5) / 200] * 2)
    inside = u + v < 1.0
    height = values[0] + u * (values[1] - values[0]) + v * (values[2] - values[0])
    wanted = (height < level)[inside].mean()
    found = share_below(np.array([values]), level)[0]
    flat = np.ptp(values) < 0.05
    assert 0.0 <= found <= 1.0
    assert flat or abs(found - wanted) < 0.02


@given(st.tuples(*[st.floats(-3.0, 3.0)] * 3), st.floats(-3.0, 3.0))
def test_below_and_above_make_the_whole(values, level):
    values = np.array([values])
    below, above = share_below(values, level)[0], share_below(-values, -level)[0]
    level_part = 1.0 if (values == level).all() else 0.0
    assert abs(below + above - 1.0 - level_part) < 1e-9


def test_facets_of_a_box_keep_their_own_tilt():
    surface = shapes.box(1, 2, 3)
    pull = np.array([0.6, 0.0, 0.8])
    tilt = corner_tilt(surface, tuple(pull))
    np.testing.assert_allclose(tilt, np.repeat((surface.normals @ pull)[:, None], 3, axis=1))


def test_corners_of_a_sphere_have_the_spheres_tilt():
    surface = shapes.sphere(50.0, 40)
    tilt = corner_tilt(surface, (0.0, 0.0, 1.0))
    wanted = surface.vertices[surface.triangles][:, :, 2] / 50.0
    assert np.abs(tilt - wanted).max() < math.radians(0.2)


@given(st.integers(0, 10**6))
def test_shares_are_those_of_averaging_everywhere(seed):
    rng = np.random.default_rng(seed)
    pull = unit_vector(rng.normal(size=3))
    surface = (shapes.torus(40.0, 12.0, 24, 12), shapes.mushroom(16))[seed % 2]
    levels = (-1e-5, 0.05)
    corners = corner_tilt(surface, pull)
    for found, level in zip(shares_below(surface, pull, levels), levels, strict=True):
        np.testing.assert_allclose(found, share_below(corners, level), atol=1e-12)
