"""Facets divided at points on their edges: the same places, every point still shared."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.surface.divided import divided_at, with_short_edges


@settings(max_examples=30, deadline=None)
@given(seed=st.integers(0, 10_000), share=st.floats(0.0, 1.0))
def test_whichever_edges_are_divided_the_solid_stays(seed, share):
    solid = shapes.box(60.0, 40.0, 30.0)
    chosen = np.random.default_rng(seed).random(len(solid.edges.ends)) < share
    made, parent = divided_at(solid, chosen, np.full(len(chosen), 0.3))
    assert made.is_closed
    assert made.euler_characteristic == 2
    assert made.volume == pytest.approx(60.0 * 40.0 * 30.0, rel=1e-12)
    assert len(made.triangles) == len(solid.triangles) + 2 * chosen.sum()
    np.testing.assert_allclose(made.normals, solid.normals[parent], atol=1e-12)
    own = np.bincount(parent, made.areas, len(solid.triangles))
    np.testing.assert_allclose(own, solid.areas, rtol=1e-12)


def test_no_edge_stays_longer_than_was_asked():
    solid = shapes.box(60.0, 40.0, 30.0)
    made, parent = with_short_edges(solid, 7.0)
    ends = made.vertices[made.edges.ends]
    assert np.linalg.norm(ends[:, 1] - ends[:, 0], axis=1).max() <= 7.0
    assert made.is_closed
    np.testing.assert_array_equal(made.vertices[:8], solid.vertices)
    np.testing.assert_array_equal(made.patches, solid.patches[parent])


def test_short_edges_are_left_to_the_bit():
    solid = shapes.box(60.0, 40.0, 30.0)
    made, parent = with_short_edges(solid, 100.0)
    assert made is solid
    np.testing.assert_array_equal(parent, np.arange(12))
