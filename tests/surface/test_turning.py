"""Edges of triangles, one way for all of them, and points where fans meet."""

from __future__ import annotations

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.surface.triangles import Surface
from laywright.surface.turning import half_edges, touching_points, turned_one_way


def test_half_edges_of_a_box():
    box = shapes.box(1.0, 2.0, 3.0)
    half = half_edges(box.triangles, len(box.vertices))
    assert len(half.first) == 18
    assert (half.count == 2).all()
    start = box.triangles.ravel()[half.pairs]
    assert (start[:, 0] != start[:, 1]).all()


@settings(max_examples=20, deadline=None)
@given(seed=st.integers(0, 10**6))
def test_whatever_is_turned_over_comes_out_one_way_with_its_twins(seed):
    torus = shapes.torus(40.0, 12.0, 12, 8)
    over = np.random.default_rng(seed).random(len(torus.triangles)) < 0.5
    mixed = np.where(over[:, None], torus.triangles[:, ::-1], torus.triangles)
    half = half_edges(mixed, len(torus.vertices))
    triangles, twin, one_sided = turned_one_way(torus.vertices, mixed, half)
    assert not one_sided.any()
    start, end = triangles.ravel(), np.roll(triangles, -1, axis=1).ravel()
    np.testing.assert_array_equal(start[twin], end)
    np.testing.assert_array_equal(end[twin], start)
    assert np.isclose(Surface.single(torus.vertices, triangles).volume, torus.volume)
    assert not touching_points(triangles, twin, len(torus.vertices)).any()


def test_two_fans_at_a_point_are_found():
    box = shapes.box(1.0, 1.0, 1.0)
    points = np.concatenate([box.vertices, box.vertices + 1.0])
    tip = int(np.argmax(box.vertices.sum(axis=1)))
    low = 8 + int(np.argmin(box.vertices.sum(axis=1)))
    other = np.where(box.triangles + 8 == low, tip, box.triangles + 8)
    both = np.concatenate([box.triangles, other])
    half = half_edges(both, len(points))
    triangles, twin, _ = turned_one_way(points, both, half)
    assert np.flatnonzero(touching_points(triangles, twin, len(points))).tolist() == [tip]
