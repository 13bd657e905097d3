"""Outlines with bays: full run-off, trim edge free, closed body."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely.geometry.polygon import orient

import shapes
from laywright.mould.body.body import MouldSettings, build_body
from laywright.surface.face import LaminateSide, MouldSide, take_face

HALF = np.array([[90, -60], [90, 90], [12, 90], [12, 60], [50, 60], [50, -20]], float)
BAY = np.concatenate([HALF, HALF[::-1] * np.array([-1.0, 1.0])])
CORNER = np.array([[-60, -60], [60, -60], [60, 0], [0, 0], [0, 60], [-60, 60]], float)
SLOT = np.array(
    [[-80, -60], [80, -60], [80, 60], [10, 60], [10, -10], [-10, -10], [-10, 60], [-80, 60]], float
)
SETTINGS = MouldSettings(scribe_depth=0.0)


def flat(x, y):
    return 0.0 * x


def crowned(x, y):
    return -(x**2 + y**2) / 800.0


def body_of(outline, height, settings=SETTINGS):
    face = take_face(
        shapes.plate(outline, height, 6.0), (0, 0, 1), LaminateSide.INSIDE, MouldSide.INSIDE
    )
    return build_body(face, 0.0, settings)


@pytest.mark.parametrize("outline", [CORNER, SLOT])
def test_a_flat_plate_runs_off_by_a_round_offset(outline):
    body = body_of(outline, flat)
    rounded = shapely.Polygon(outline).buffer(25.0, quad_segs=200)
    assert body.volume == pytest.approx(8.0 * rounded.area, rel=2e-3)
    top = body.solid.normals[:, 2] > 0.5
    assert np.abs(body.solid.vertices[np.unique(body.solid.triangles[top]), 2]).max() < 1e-9


@pytest.mark.parametrize("outline", [CORNER, SLOT])
@pytest.mark.parametrize("height", [flat, crowned, lambda x, y: -crowned(x, y)])
def test_closed_one_piece_without_handles_and_exact(outline, height):
    body = body_of(outline, height)
    assert body.solid.is_closed
    assert body.solid.euler_characteristic == 2
    assert body.solid.components.max() == 0
    assert body.largest_deviation < 1e-9
    area = body.solid.areas[body.on_working_area].sum()
    assert area == pytest.approx(body.working.area, rel=1e-9)


def test_a_bay_wider_than_the_run_off_stays_open():
    body = body_of(BAY, crowned, MouldSettings(run_off=20.0, scribe_depth=0.0))
    assert body.solid.is_closed
    assert body.solid.euler_characteristic == 0
    assert body.largest_deviation < 1e-9
    flat_body = body_of(BAY, flat, MouldSettings(run_off=20.0, scribe_depth=0.0))
    rounded = shapely.Polygon(BAY).buffer(20.0, quad_segs=200)
    assert len(rounded.interiors) == 1
    assert flat_body.volume == pytest.approx(8.0 * rounded.area, rel=2e-3)


@settings(max_examples=12, deadline=None)
@given(seed=st.integers(0, 10**6), length=st.floats(5.0, 40.0))
def test_any_outline_with_any_crown(seed, length):
    rng = np.random.default_rng(seed)
    count = int(rng.integers(5, 12))
    turn = np.sort(rng.uniform(0.0, 2.0 * np.pi, count))
    radius = rng.uniform(40.0, 120.0, count)
    star = shapely.Polygon(np.stack([radius * np.cos(turn), radius * np.sin(turn)], axis=1))
    bend = float(rng.uniform(1.0, 12.0))
    shape = star.buffer(-bend).buffer(2 * bend, quad_segs=6).buffer(-bend).simplify(0.3)
    assume(shape.geom_type == "Polygon" and shape.area > 3000.0 and not shape.interiors)
    a, b, c, d = rng.normal(size=4) * [0.003, 0.003, 0.2, 0.2]
    outline = np.array(orient(shape).exterior.coords)[:-1]
    body = body_of(
        outline,
        lambda x, y: a * x * x + b * y * y + c * x + d * y,
        MouldSettings(run_off=length),
    )
    assert body.solid.is_closed
    assert body.solid.components.max() == 0
    assert body.solid.euler_characteristic == 2
    assert body.largest_deviation < 2e-4


def test_the_trim_edge_stands_free_of_the_run_off_across_the_slot():
    body = body_of(SLOT, crowned)
    points = body.solid.vertices[
        np.unique(body.solid.triangles[body.solid.patches == body.patch("run-off")])
    ]
    plan = shapely.points(points[:, :2])
    ring = shapely.LinearRing(SLOT)
    near = shapely.distance(ring, plan) < 3.0
    step = points[near, 2] - crowned(*points[near, :2].T)
    assert np.abs(step).max() < 0.15


def test_a_scribed_line_follows_the_bay():
    plain, scribed = body_of(SLOT, crowned), body_of(SLOT, crowned, MouldSettings())
    assert scribed.solid.is_closed
    assert scribed.solid.euler_characteristic == 2
    length = shapely.LinearRing(SLOT).length
    assert plain.volume - scribed.volume == pytest.approx(0.16 * length, rel=0.05)
