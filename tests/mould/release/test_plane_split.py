"""Facets divided along a plane: same places, same area, no crossing left."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.mould.release.plane_split import split_along


@settings(max_examples=40, deadline=None)
@given(seed=st.integers(0, 10**6), whole=st.booleans())
def test_area_outline_and_parents_are_kept(seed, whole):
    rng = np.random.default_rng(seed)
    surface = shapes.torus(40.0, 12.0, 16, 9)
    normal = rng.normal(size=3)
    normal /= np.linalg.norm(normal)
    place = rng.uniform(-30.0, 30.0)
    chosen = (
        np.ones(len(surface.triangles), bool) if whole else rng.random(len(surface.triangles)) < 0.4
    )
    found, parent = split_along(surface, chosen, normal, place)
    assert found.is_closed
    assert found.euler_characteristic == surface.euler_characteristic
    assert found.volume == pytest.approx(surface.volume, rel=1e-12)
    area = np.bincount(parent, weights=found.areas, minlength=len(surface.triangles))
    np.testing.assert_allclose(area, surface.areas, rtol=1e-9)
    np.testing.assert_allclose(found.normals, surface.normals[parent], atol=1e-6)
    np.testing.assert_array_equal(found.patches, surface.patches[parent])
    height = found.corners @ normal - place
    longest = np.linalg.norm(found.corners - np.roll(found.corners, 1, axis=1), axis=2).max(axis=1)
    across = np.minimum(height.max(axis=1), -height.min(axis=1))
    assert (across <= 0.05 * longest + 1e-9)[chosen[parent]].all()


def test_nothing_to_divide_gives_the_surface_itself():
    surface = shapes.box(10.0, 10.0, 10.0)
    found, parent = split_along(surface, np.ones(12, bool), np.array([0.0, 0.0, 1.0]), 50.0)
    assert found is surface
    np.testing.assert_array_equal(parent, np.arange(12))
