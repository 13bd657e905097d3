"""Surfaces: measures against closed forms, loops, pieces, and what is refused."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright import values
from laywright.errors import GeometryError
from laywright.surface.triangles import Surface


@settings(max_examples=25, deadline=None)
@given(*[st.floats(0.5, 200.0)] * 3, st.integers(0, 10**6))
def test_a_box_anywhere_keeps_volume_area_and_closedness(x, y, z, seed):
    rng = np.random.default_rng(seed)
    turn = np.linalg.qr(rng.normal(size=(3, 3)))[0]
    turn *= np.linalg.det(turn)
    box = shapes.box(x, y, z)
    moved = box.moved(box.vertices @ turn.T + rng.normal(size=3) * 50.0)
    assert moved.volume == pytest.approx(x * y * z, rel=1e-9)
    assert moved.area == pytest.approx(2 * (x * y + y * z + z * x), rel=1e-9)
    assert moved.is_closed
    assert moved.euler_characteristic == 2
    np.testing.assert_allclose((moved.areas[:, None] * moved.normals).sum(axis=0), 0, atol=1e-6)


def test_sphere_and_torus_converge_to_their_closed_forms():
    for build, volume, area in (
        (lambda n: shapes.sphere(10.0, n), 4 / 3 * math.pi * 1000, 400 * math.pi),
        (lambda n: shapes.torus(10.0, 3.0, 2 * n, n), 2 * math.pi**2 * 90, 4 * math.pi**2 * 30),
    ):
        errors = [
            (abs(s.volume / volume - 1), abs(s.area / area - 1)) for s in (build(20), build(40))
        ]
        assert errors[1][0] < 0.3 * errors[0][0]
        assert errors[1][1] < 0.3 * errors[0][1]
    assert shapes.torus(10.0, 3.0, 20, 10).euler_characteristic == 0


def test_corner_angles_add_up_and_vertex_normals_are_the_spheres():
    ball = shapes.sphere(10.0, 20)
    np.testing.assert_allclose(ball.angles.sum(axis=1), math.pi, rtol=1e-12)
    np.testing.assert_allclose(ball.vertex_normals, ball.vertices / 10.0, atol=0.01)
    np.testing.assert_allclose(shapes.box(1, 1, 1).vertex_normals ** 2, 1 / 3, atol=1e-12)


def test_loops_run_with_the_surface_on_their_left_longest_first():
    ring = np.array([[-30, -30], [30, -30], [30, 30], [-30, 30]], float)
    plate = shapes.plate(ring, lambda x, y: 0.0 * x, 5.0, (0.5 * ring[::-1],))
    outer, inner = plate.boundary_loops
    assert plate.loop_length(outer) == pytest.approx(240.0)
    assert plate.loop_length(inner) == pytest.approx(120.0)

    def turned(loop):
        x, y = plate.vertices[loop][:, :2].T
        return 0.5 * (x * np.roll(y, -1) - y * np.roll(x, -1)).sum()

    assert turned(outer) == pytest.approx(3600.0)
    assert turned(inner) == pytest.approx(-900.0)
    assert plate.euler_characteristic == 0
    flipped = plate.flipped()
    assert flipped.area == plate.area
    assert (flipped.normals == -plate.normals).all()


def test_parts_pieces_and_bounds():
    box = shapes.box(1, 2, 3)
    assert box.bounds.tolist() == [[0, 0, 0], [1, 2, 3]]
    two = box.part(np.isin(box.patches, [0, 1]))
    assert sorted(set(two.components.tolist())) == [0, 1]
    assert two.area == 12.0
    assert not two.is_closed
    assert len(two.vertices) == 8
    assert two.patch_names == box.patch_names


def test_arrays_are_read_only_and_stored_whole():
    surface = shapes.hatch(spacing=40.0)
    with pytest.raises(ValueError, match="read-only"):
        surface.vertices[0] = 0.0
    stored = values.pack(surface)
    again = values.unpack(Surface, stored)
    assert values.pack(again) == stored
    assert again.area == surface.area


def test_zero_area_has_no_normal():
    points = np.array([[0, 0, 0], [1, 0, 0], [2, 0, 0], [0, 1, 0]], float)
    surface = Surface.single(points, np.array([[0, 1, 2], [0, 1, 3]]))
    assert surface.normals.tolist() == [[0, 0, 0], [0, 0, 1]]


def test_broken_input_is_refused():
    points = np.zeros((3, 3))
    with pytest.raises(GeometryError, match="point which does not exist"):
        Surface.single(points, np.array([[0, 1, 3]]))
    points[1, 1] = np.nan
    with pytest.raises(GeometryError, match="no numbers"):
        Surface.single(points, np.array([[0, 1, 2]]))
    with pytest.raises(ValueError, match="patch numbers"):
        Surface(np.zeros((3, 3)), np.array([[0, 1, 2]]), np.array([0, 0]))
    bow = np.array([[0, 0, 0], [1, 0, 0], [0, 1, 0], [-1, 0, 0], [0, -1, 0]], float)
    with pytest.raises(GeometryError, match="touches itself"):
        _ = Surface.single(bow, np.array([[0, 1, 2], [0, 3, 4]])).boundary_loops


@given(st.lists(st.booleans(), min_size=12, max_size=12))
def test_a_part_keeps_its_triangles_in_place_and_only_their_points(kept):
    box = shapes.box(3.0, 4.0, 5.0)
    mask = np.array(kept)
    part = box.part(mask)
    np.testing.assert_array_equal(part.corners, box.corners[mask])
    np.testing.assert_array_equal(part.vertices, box.vertices[np.unique(box.triangles[mask])])
    np.testing.assert_array_equal(part.patches, box.patches[mask])
