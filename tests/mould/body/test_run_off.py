"""The run-off leaves the surface smoothly, for its whole length."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.mould.body.run_off import RunOff, rays_of, run_off_rows


def rays(surface):
    return rays_of(surface, surface.boundary_loops[0])


@settings(max_examples=20, deadline=None)
@given(st.floats(0.1, 1.4), st.integers(6, 20), st.floats(5.0, 40.0))
def test_rays_of_a_cap_are_tangents_of_the_sphere(angle, rings, length):
    surface = shapes.cap(50.0, angle, rings)
    found = rays(surface)
    radial = found.start / 50.0
    step = angle / rings
    lean = np.einsum("ij,ij->i", found.along, radial)
    assert np.abs(lean).max() < step
    assert np.abs(found.along[:, 2] + math.sin(angle)).max() < step
    tips = run_off_rows(found, RunOff(length))[-1]
    np.testing.assert_allclose(np.linalg.norm(tips - found.start, axis=1), length, rtol=1e-12)


def test_rays_are_unit_square_to_normals_and_to_the_edge_in_plan():
    surface = shapes.hatch(spacing=12.0)
    found = rays(surface)
    for vectors in (found.along, found.normal, found.outward):
        np.testing.assert_allclose(np.linalg.norm(vectors, axis=1), 1.0, rtol=1e-12)
    assert np.abs(np.einsum("ij,ij->i", found.along, found.normal)).max() < 1e-12
    plan = found.along[:, :2] / np.linalg.norm(found.along[:, :2], axis=1, keepdims=True)
    np.testing.assert_allclose(plan, found.outward, atol=1e-9)
    middle = surface.vertices[:, :2].mean(axis=0)
    assert (np.einsum("ij,ij->i", found.start[:, :2] - middle, found.outward) > 0).all()


def test_a_square_plate_gets_a_fan_at_every_corner():
    surface = shapes.graph(lambda x, y: 0.0 * x, (0, 10), (0, 10), (5, 5))
    found = rays(surface)
    number = np.bincount(found.vertex)[surface.boundary_loops[0]]
    assert sorted(number.tolist()) == [1] * 16 + [9] * 4
    np.testing.assert_allclose(found.along[:, 2], 0.0, atol=1e-15)
    turns = np.degrees(np.arctan2(found.outward[:, 1], found.outward[:, 0])) % 360.0
    assert len(np.unique(np.round(turns, 6) % 360.0)) == 4 * 8


@pytest.mark.parametrize("draft", [0.0, 2.0, 30.0])
def test_a_steep_cavity_bends_over_to_a_rim(draft):
    slope = math.radians(draft)
    wall = np.array([[0, 0], [20, 0], [20 + 30 * math.tan(slope), 30]], float)
    surface = shapes.dish(wall, 64)
    found = rays(surface)
    rows = run_off_rows(found, RunOff(25.0))
    line = np.concatenate([found.start[None], rows])
    length = np.linalg.norm(np.diff(line, axis=0), axis=2).sum(axis=0)
    assert length == pytest.approx(25.0, rel=2e-3)
    first, last = line[1] - line[0], line[-1] - line[-2]
    assert math.degrees(
        np.arcsin(last[:, 2] / np.linalg.norm(last, axis=1)).max()
    ) == pytest.approx(20.0, abs=0.1)
    steep = np.degrees(np.arcsin(first[:, 2] / np.linalg.norm(first, axis=1)))
    assert steep == pytest.approx(90.0 - draft, abs=0.2)
    bends = [
        np.degrees(np.arccos(np.clip(np.sum(a * b, axis=1), -1, 1))).max()
        for a, b in zip(
            *[
                [v / np.linalg.norm(v, axis=1, keepdims=True) for v in np.diff(line, axis=0)][s]
                for s in (slice(None, -1), slice(1, None))
            ],
            strict=True,
        )
    ]
    assert max(bends) < 6.5


def test_a_plug_runs_straight_on():
    surface = shapes.dish(np.array([[0, 0], [20, 0], [21, -30]], float), 64)
    rows = run_off_rows(rays(surface), RunOff(25.0))
    assert rows.shape[0] == 1
    assert rows[0, :, 2] == pytest.approx(-30.0 - 25.0 * 30 / math.hypot(1, 30), abs=0.01)
