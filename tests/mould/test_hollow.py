"""Outlines with hollow corners: full run-off, trim edge free, closed body."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

import shapes
from laywright.mould.body import MouldSettings, build_body
from laywright.surface.face import LaminateSide, MouldSide, take_face

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


def test_a_scribed_line_follows_the_hollow():
    plain, scribed = body_of(SLOT, crowned), body_of(SLOT, crowned, MouldSettings())
    assert scribed.solid.is_closed
    assert scribed.solid.euler_characteristic == 2
    length = shapely.LinearRing(SLOT).length
    assert plain.volume - scribed.volume == pytest.approx(0.16 * length, rel=0.05)
