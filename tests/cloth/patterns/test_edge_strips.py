"""Strips beyond an edge and their corners: areas known in closed form."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from laywright.cloth.patterns.edge_strips import (
    outside,
    pieces_of,
    pointed_corner,
    quarter_steps,
    round_corner,
    strips,
)

BEND = np.array([[0.0, 0.0], [50.0, 0.0], [50.0, 0.0], [50.0, 30.0]])


def test_strips_lie_to_the_right_and_points_without_length_are_left_out():
    pieces = pieces_of(BEND)
    assert pieces.normals == pytest.approx(np.array([[0.0, -1.0], [1.0, 0.0]]))
    low, high = strips(pieces, np.array([4.0, 6.0]))
    assert low.bounds == pytest.approx((0.0, -4.0, 50.0, 0.0))
    assert high.bounds == pytest.approx((50.0, 0.0, 56.0, 30.0))


@given(st.floats(1.0, 60.0), st.floats(0.005, 0.5))
def test_a_round_corner_stays_within_its_deviation(width, deviation):
    both = np.array([0.0, -1.0]), np.array([1.0, 0.0])
    (corner,) = round_corner(np.zeros(2), both, width, deviation)
    exact = 0.25 * math.pi * width**2
    assert 0.0 < exact - corner.area <= deviation * 0.5 * math.pi * width
    steps = quarter_steps(width, deviation)
    assert width * (1.0 - math.cos(0.25 * math.pi / steps)) <= deviation * 1.01
    assert round_corner(np.zeros(2), both[::-1], width, deviation) == []


def test_a_pointed_corner_reaches_where_both_margins_cross():
    both = np.array([0.0, -1.0]), np.array([1.0, 0.0])
    (corner,) = pointed_corner(np.zeros(2), both, (5.0, 8.0))
    assert corner.area == pytest.approx(40.0)
    assert corner.bounds == pytest.approx((0.0, -5.0, 8.0, 0.0))


def test_the_strip_beside_a_bent_line_is_a_half_of_its_buffer():
    whole = shapely.union_all(outside(BEND, 7.0, 1e-4))
    assert whole.area == pytest.approx(7.0 * 80.0 + 0.25 * math.pi * 49.0, rel=1e-4)
