"""Distances are those of a brute-force measurement."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.surface.distance import (
    distances,
    largest_distance,
    nearest_triangles,
    triangle_distances,
)
from laywright.surface.triangles import Surface


def brute(points: np.ndarray, surface: Surface) -> np.ndarray:
    every = [
        triangle_distances(points, np.broadcast_to(corner, (len(points), 3, 3)))
        for corner in surface.corners
    ]
    return np.min(every, axis=0)


@settings(max_examples=25, deadline=None)
@given(seed=st.integers(0, 10**6), count=st.integers(1, 60), stretch=st.sampled_from([1.0, 50.0]))
def test_equal_to_every_triangle_measured(seed, count, stretch):
    rng = np.random.default_rng(seed)
    corners = rng.normal(size=(count, 3, 3)) * np.exp(rng.normal(size=(count, 1, 1)))
    corners[..., 0] *= stretch
    surface = Surface.single(corners.reshape(-1, 3), np.arange(3 * count).reshape(-1, 3))
    points = rng.normal(size=(40, 3)) * 5.0
    np.testing.assert_allclose(distances(points, surface), brute(points, surface), atol=1e-9)


def test_triangle_distance_is_the_least_over_its_points():
    rng = np.random.default_rng(0)
    triangles, points = rng.normal(size=(200, 3, 3)), rng.normal(size=(200, 3)) * 2.0
    u, v = np.meshgrid(np.linspace(0, 1, 61), np.linspace(0, 1, 61))
    inside = u + v <= 1.0
    weights = np.stack([1 - u[inside] - v[inside], u[inside], v[inside]], axis=1)
    sampled = np.linalg.norm(
        np.einsum("wc,tcd->twd", weights, triangles) - points[:, None], axis=2
    ).min(axis=1)
    found = triangle_distances(points, triangles)
    assert (found <= sampled + 1e-12).all()
    assert np.abs(found - sampled).max() < 0.05


def test_points_off_a_sphere():
    surface = shapes.sphere(50.0, 40)
    directions = surface.centroids / np.linalg.norm(surface.centroids, axis=1, keepdims=True)
    found = distances(60.0 * directions, surface)
    assert (found >= 10.0 - 1e-9).all()
    assert (found <= 10.0 + 50.0 * (1.0 - np.cos(np.pi / 40))).all()


def test_two_surfaces_offset_by_a_known_distance():
    one = shapes.box(10.0, 10.0, 10.0)
    assert largest_distance(one, one) == 0.0
    moved = one.moved(one.vertices + np.array([0.0, 0.0, 0.25]))
    assert largest_distance(one, moved) == pytest.approx(0.25, abs=1e-12)


def test_a_missing_piece_is_seen_from_the_other_side():
    whole = shapes.hatch(spacing=15.0)
    part = whole.part(whole.centroids[:, 0] < 0.0)
    assert largest_distance(whole, part) > 190.0
    assert largest_distance(part, whole) == largest_distance(whole, part)


def test_an_empty_surface_is_refused():
    empty = shapes.box(1, 1, 1).part(np.zeros(12, dtype=bool))
    with pytest.raises(ValueError, match="without triangles"):
        distances(np.zeros((1, 3)), empty)


def test_the_nearest_triangle_is_named():
    rng = np.random.default_rng(3)
    solid, points = shapes.sphere(40.0, 10), rng.normal(size=(300, 3)) * 30.0
    triangle, away = nearest_triangles(points, solid)
    np.testing.assert_allclose(away, brute(points, solid), atol=1e-12)
    own = triangle_distances(points, solid.corners[triangle])
    np.testing.assert_array_equal(own, away)
