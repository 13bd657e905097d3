"""Packing by lanes."""

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon

from laywright.cloth.packing import fits
from laywright.cloth.skyline import Spot, place_by_lanes


def blob(seed, size):
    """Star-shaped outline with 12 corners."""
    generator = np.random.default_rng(seed)
    turn = 2 * np.pi * np.arange(12) / 12
    radius = size * generator.uniform(0.4, 1.0, 12)
    return np.stack([radius * np.cos(turn), radius * np.sin(turn)], axis=1)


@given(
    st.lists(st.tuples(st.integers(0, 99), st.floats(20, 200)), min_size=1, max_size=8),
    st.floats(0.0, 15.0),
)
@settings(max_examples=25, deadline=None)
def test_pieces_keep_their_gap_and_stay_on_the_roll(pieces, gap):
    outlines = [blob(seed, size) for seed, size in pieces]
    spots = place_by_lanes(outlines, 500.0, gap)
    assert fits(outlines, spots, 500.0, gap)
    starts = [spot.on(outline)[:, 0].min() for spot, outline in zip(spots, outlines, strict=True)]
    assert min(starts) == pytest.approx(0.0, abs=1e-9)
    assert spots == place_by_lanes(outlines, 500.0, gap)


def square(side):
    return np.array([[0, 0], [side, 0], [side, side], [0, side]], float)


def test_squares_fill_the_roll_without_loss():
    spots = place_by_lanes([square(250.0)] * 8, 500.0, 0.0)
    placed = [Polygon(spot.on(square(250.0))) for spot in spots]
    assert shapely.union_all(placed).area == pytest.approx(8 * 250.0**2)
    assert max(piece.bounds[2] for piece in placed) == pytest.approx(1000.0)


def test_the_gap_counts_along_and_across():
    spots = place_by_lanes([square(100.0)] * 6, 330.0, 10.0)
    placed = [Polygon(spot.on(square(100.0))) for spot in spots]
    apart = [a.distance(b) for i, a in enumerate(placed) for b in placed[:i]]
    assert min(apart) >= 10.0 - 1e-9
    assert max(piece.bounds[2] for piece in placed) == pytest.approx(210.0)


def test_two_wedges_nest_by_half_a_turn():
    """Two right triangles as wide as the roll share one rectangle, but for the gap's share."""
    wedge = np.array([[0, 0], [400, 0], [0, 300]], float)
    spots = place_by_lanes([wedge, wedge], 300.0, 0.0)
    end = max(spot.on(wedge)[:, 0].max() for spot in spots)
    assert end < 420.0
    assert sum(spot.turned for spot in spots) == 1


def test_a_piece_as_wide_as_the_roll_fits():
    assert fits([square(500.0)], place_by_lanes([square(500.0)], 500.0, 5.0), 500.0, 5.0)


def test_a_turned_spot_is_turned_about_zero_first():
    assert Spot(10.0, 5.0, True).on(np.array([[1.0, 2.0]])).tolist() == [[9.0, 3.0]]
