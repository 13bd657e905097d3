"""Bends: a fillet by its angle, radius and length; a ring; a sharp edge; and what is none."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.surface.bends import bends_of
from laywright.surface.triangles import Surface


def angle_section(turn, radius, length=120.0, leg=40.0, steps=12):
    """Two flat legs with a bend of `turn` between them."""
    arc = np.linspace(0.0, turn, steps + 1)
    bow = radius * np.stack([np.sin(arc), 1.0 - np.cos(arc)], axis=1)
    way = np.array([math.cos(turn), math.sin(turn)])
    profile = np.concatenate([[[-leg, 0.0]], bow, [bow[-1] + leg * way]])
    count = len(profile)
    points = np.concatenate([np.column_stack([profile, np.full(count, z)]) for z in (0.0, length)])
    i = np.arange(count - 1)
    triangles = np.concatenate(
        [
            np.stack([i, i + 1, i + 1 + count], axis=1),
            np.stack([i, i + 1 + count, i + count], axis=1),
        ]
    )
    return Surface.single(points, triangles, "Angle")


@settings(max_examples=30, deadline=None)
@given(turn=st.floats(0.4, 2.6), radius=st.floats(2.0, 20.0))
def test_a_fillet_is_found_by_angle_radius_and_length(turn, radius):
    (bend,) = bends_of(angle_section(turn, radius))
    assert bend.turn == pytest.approx(turn, rel=0.02)
    assert bend.radius == pytest.approx(radius, rel=0.03)
    assert bend.length == pytest.approx(120.0, rel=0.02)
    assert bend.where == "Angle"


def test_a_ring_is_one_bend_whatever_its_plan():
    bends = bends_of(shapes.tray(0.0, turns=8, spacing=12.0))
    assert len(bends) >= 1
    floor = min(bends, key=lambda bend: bend.point[2])
    assert floor.turn < math.radians(95.0)
    assert floor.length > 300.0


def test_sharp_edges_are_bends_without_a_radius():
    box = shapes.box(100.0, 60.0, 40.0)
    bends = bends_of(box)
    assert len(bends) == 12
    assert {round(math.degrees(bend.turn), 6) for bend in bends} == {90.0}
    assert sum(bend.length for bend in bends) == pytest.approx(800.0)
    assert {bend.radius for bend in bends} == {0.0}


def test_wide_curves_and_caps_are_none():
    assert bends_of(shapes.cylinder_patch(80.0, 1.0, 200.0)) == ()
    assert bends_of(shapes.cap(20.0, 0.8, 12)) == ()
    assert bends_of(angle_section(math.radians(10.0), 5.0)) == ()


@settings(max_examples=25, deadline=None)
@given(bump=st.floats(2.0, 30.0), size=st.floats(20.0, 120.0), cells=st.integers(3, 14))
def test_any_surface_is_searched_without_complaint(bump, size, cells):
    surface = shapes.graph(
        lambda x, y: bump * np.sin(9.0 * x / size) * np.cos(7.0 * y / size),
        (-size / 2, size / 2),
        (-size / 2, size / 2),
        (cells, cells + 1),
    )
    for bend in bends_of(surface):
        assert bend.length > 0.0
        assert math.radians(15.0) <= bend.turn
        assert bend.radius >= 0.0
