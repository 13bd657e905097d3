"""The simple packing that fills holes."""

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon

from laywright.cloth.roll.bottom_left import drawn_back, place_bottom_left
from laywright.cloth.roll.packing import fits
from laywright.cloth.roll.spot import STRAIGHT, Spot, end_of

FOUR = (*STRAIGHT, Spot(0, 0, False, True), Spot(0, 0, True, True))


def blob(seed, size):
    """Star-shaped outline with 12 corners."""
    generator = np.random.default_rng(seed)
    turn = 2 * np.pi * np.arange(12) / 12
    radius = size * generator.uniform(0.4, 1.0, 12)
    return np.stack([radius * np.cos(turn), radius * np.sin(turn)], axis=1)


def square(side):
    return np.array([[0, 0], [side, 0], [side, side], [0, side]], float)


def placed(outlines, width, gap, ways=STRAIGHT, **more):
    return place_bottom_left(
        outlines, [ways] * len(outlines), width, gap, range(len(outlines)), **more
    )


@given(
    st.lists(st.tuples(st.integers(0, 99), st.floats(20, 200)), min_size=1, max_size=8),
    st.floats(0.0, 15.0),
    st.sampled_from([STRAIGHT, FOUR]),
)
@settings(max_examples=12, deadline=None)
def test_pieces_keep_their_gap_and_stay_on_the_cloth(pieces, gap, ways):
    outlines = [blob(seed, size) for seed, size in pieces]
    spots = placed(outlines, 500.0, gap, ways)
    assert fits(outlines, spots, 500.0, gap)
    assert spots == placed(outlines, 500.0, gap, ways)


def test_squares_fill_the_cloth_without_loss():
    outlines = [square(250.0)] * 8
    spots = placed(outlines, 500.0, 0.0)
    assert shapely.union_all(
        [Polygon(spot.on(square(250.0))) for spot in spots]
    ).area == pytest.approx(8 * 250.0**2)
    assert end_of(outlines, spots) == pytest.approx(1000.0)


def test_the_gap_counts_along_and_across():
    outlines = [square(100.0)] * 6
    spots = placed(outlines, 330.0, 10.0)
    apart = [
        Polygon(a.on(square(100.0))).distance(Polygon(b.on(square(100.0))))
        for i, a in enumerate(spots)
        for b in spots[:i]
    ]
    assert min(apart) >= 10.0 - 1e-9
    assert end_of(outlines, spots) == pytest.approx(210.0, abs=0.1)


def test_a_hole_between_pieces_is_filled_by_a_later_one():
    """A wall with a window to its start: the small square goes through it to x = 0."""
    cover = np.array([[0, 0], [300, 0], [300, 300], [200, 300], [200, 100], [0, 100]], float)
    outlines = [cover, square(190.0)]
    spots = place_bottom_left(outlines, [(Spot(0, 0),)] * 2, 300.0, 0.0, (0, 1))
    assert end_of(outlines, spots) == pytest.approx(300.0)
    assert spots[1].x == pytest.approx(0.0)


def test_two_wedges_nest_by_half_a_turn():
    wedge = np.array([[0, 0], [400, 0], [0, 300]], float)
    spots = placed([wedge, wedge], 300.0, 0.0)
    assert end_of([wedge, wedge], spots) < 420.0
    assert sum(spot.turned for spot in spots) == 1


def test_a_mirrored_way_saves_cloth_where_a_turn_cannot():
    """A parallelogram and its mirror image: only face down do both slant the same way."""
    slanted = np.array([[0, 0], [200, 0], [300, 300], [100, 300]], float)
    other = slanted * np.array([1.0, -1.0])
    outlines = [slanted, other[::-1]]
    assert end_of(outlines, placed(outlines, 300.0, 0.0, FOUR)) == pytest.approx(500.0, abs=4.0)
    assert end_of(outlines, placed(outlines, 300.0, 0.0, STRAIGHT)) > 590.0


def test_nothing_is_placed_on_a_fault_or_past_the_end():
    outlines = [square(100.0)] * 5
    fault = (50.0, 80.0, 0.0, 300.0)
    spots = placed(outlines, 300.0, 0.0, taken=(fault,), longest=380.0)
    boxes = [Polygon(s.on(square(100.0))) for s in spots if s is not None]
    assert len(boxes) == 5
    assert not any(box.overlaps(shapely.box(50.0, 0.0, 80.0, 300.0)) for box in boxes)
    assert max(box.bounds[2] for box in boxes) <= 380.0
    short = placed(outlines, 300.0, 0.0, longest=199.0)
    assert sum(spot is not None for spot in short) == 3


def test_a_fault_at_one_edge_leaves_the_rest_of_the_width():
    spots = placed([square(100.0)] * 2, 300.0, 0.0, taken=((0.0, 1000.0, 0.0, 150.0),))
    assert end_of([square(100.0)] * 2, spots) == pytest.approx(200.0, abs=0.1)
    assert all(spot.y >= 150.0 - 1e-9 for spot in spots)


def test_a_piece_as_wide_as_the_cloth_fits():
    assert fits([square(500.0)], placed([square(500.0)], 500.0, 5.0), 500.0, 5.0)


def test_pieces_are_drawn_back_to_the_gap_and_no_further():
    outlines = [square(100.0)] * 3
    loose = [Spot(1.0, 0.0), Spot(107.5, 0.0), Spot(216.0, 30.0)]
    tight = drawn_back(outlines, loose, 5.0, reach=20.0)
    assert [spot.x for spot in tight] == pytest.approx([0.0, 105.0, 210.0], abs=0.5)
    assert fits(outlines, tight, 200.0, 5.0)
