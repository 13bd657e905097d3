"""The envelope's points lie exactly one radius from the triangles."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

import shapes
from laywright.surface.ball import ball_heights
from laywright.surface.distance import distances
from laywright.surface.triangles import Surface

COORDINATE = st.floats(-10.0, 10.0)


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(COORDINATE, COORDINATE, COORDINATE), min_size=3, max_size=3))
def test_every_height_lies_one_radius_off(points):
    corners = np.array(points)
    places = np.random.default_rng(0).uniform(-13.0, 13.0, (200, 2))
    heights = ball_heights(places, corners[None], 2.5)
    met = np.isfinite(heights)
    found = np.column_stack([places, heights])[met]
    surface = Surface.single(corners, np.array([[0, 1, 2]]))
    assume(len(found))
    assert distances(found, surface) == pytest.approx(2.5, abs=1e-5)
    assert (distances(found + np.array([0.0, 0.0, 1.0]), surface) > 2.5 - 1e-6).all()


def test_a_ball_rolls_over_a_plane_at_its_radius():
    surface = shapes.graph(lambda x, y: 0.5 * x, (0, 10), (0, 10), (4, 4))
    places = np.array([[5.0, 5.0], [4.3, 7.1]])
    wanted = 0.5 * places[:, 0] + 2.0 * np.hypot(1.0, 0.5)
    assert ball_heights(places, surface.corners, 2.0) == pytest.approx(wanted)
