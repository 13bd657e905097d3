"""Upper surfaces are closed down to exact volumes."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.mould.body.base import close_down, with_run_off
from laywright.mould.body.run_off import RunOff, rays_of, run_off_rows
from laywright.surface.triangles import Surface

NAMES = ("face", "run-off", "sides", "base")


def named(surface):
    return Surface(surface.vertices, surface.triangles, surface.patches, NAMES)


@settings(max_examples=20, deadline=None)
@given(st.floats(-0.3, 0.3), st.floats(-0.3, 0.3), st.floats(20.0, 60.0))
def test_prism_under_a_tilted_plane(a, b, depth):
    top = named(shapes.graph(lambda x, y: a * x + b * y, (-10, 10), (-20, 20), (7, 9)))
    body = close_down(top, -depth, 2, 3)
    assert body.is_closed
    assert body.volume == pytest.approx(800.0 * depth, rel=1e-12)
    base = body.part(body.patches == 3)
    assert base.area == pytest.approx(800.0, rel=1e-12)
    assert np.ptp(base.vertices[:, 2]) == 0.0


def test_run_off_of_a_flat_disk_is_a_ring():
    turn = 2 * np.pi * np.arange(72) / 72
    disk = named(
        Surface.single(
            np.concatenate([[[0, 0, 0]], np.stack([np.cos(turn), np.sin(turn), 0 * turn], 1) * 30]),
            np.stack([0 * np.arange(72), 1 + np.arange(72), 1 + (np.arange(72) + 1) % 72], axis=1),
        )
    )
    rays = rays_of(disk, disk.boundary_loops[0])
    top, outline = with_run_off(disk, rays, run_off_rows(rays, RunOff(10.0)), 1)
    polygon = 72 / 2 * np.sin(2 * np.pi / 72)
    assert top.area == pytest.approx(polygon * 40.0**2, rel=1e-9)
    assert sorted(outline.tolist()) == sorted(top.boundary_loops[0].tolist())
    assert top.normals[:, 2].min() == pytest.approx(1.0)


def test_a_surface_with_a_hole_gives_a_body_with_a_hole():
    square = np.array([[-30, -30], [30, -30], [30, 30], [-30, 30]], float)
    plate = shapes.plate(square, lambda x, y: 0.1 * x - 0.2 * y, 5.0, (0.4 * square[::-1],))
    body = close_down(named(plate), -20.0, 2, 3)
    assert body.is_closed
    assert body.euler_characteristic == 0
    assert body.volume == pytest.approx(20.0 * (3600.0 - 576.0), rel=1e-9)


def test_a_run_off_shares_the_trim_edge_without_a_kink():
    surface = named(shapes.hatch(spacing=6.0))
    rays = rays_of(surface, surface.boundary_loops[0])
    top, _ = with_run_off(surface, rays, run_off_rows(rays, RunOff(25.0)), 3)
    table = top.edges
    inner = (table.left >= 0) & (table.right >= 0)
    left, right = table.left[inner], table.right[inner]
    trim = (top.patches[left] == 3) != (top.patches[right] == 3)
    turn = np.einsum("ij,ij->i", top.normals[left[trim]], top.normals[right[trim]])
    assert len(turn) == len(surface.boundary_loops[0])
    assert np.degrees(np.arccos(np.clip(turn, -1, 1))).max() < 1.0
