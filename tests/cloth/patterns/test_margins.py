"""Margins all round and by side."""

import math

import numpy as np
import pytest
import shapely
import shapely.affinity
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.cloth.patterns.margins import SIDES, check_margins, side_margin, with_margins
from laywright.errors import InputError

EAST = np.array([1.0, 0.0])
PLATE = shapely.box(0.0, 0.0, 200.0, 100.0)
NOTCHED = shapely.Polygon([(0, 0), (80, 0), (80, 50), (30, 20), (0, 60)])


@given(st.floats(0.0, 30.0), st.floats(0.01, 0.5))
@settings(max_examples=25)
def test_one_margin_all_round(margin, deviation):
    cut = with_margins(NOTCHED, margin, {}, EAST, deviation)
    exact = NOTCHED.buffer(margin, quad_segs=200) if margin > 1e-6 else NOTCHED
    assert shapely.hausdorff_distance(cut.exterior, exact.exterior) <= deviation + 1e-3
    assert cut.buffer(deviation + 1e-6).contains(NOTCHED)


def test_a_margin_for_each_side_seen_along_the_arrow():
    sides = {"ahead": 40.0, "left": 10.0, "behind": 5.0, "right": 0.0}
    cut = with_margins(PLATE, 20.0, sides, EAST, 0.05)
    assert cut.bounds == pytest.approx((-5.0, 0.0, 240.0, 110.0))
    north = with_margins(PLATE, 20.0, sides, np.array([0.0, 1.0]), 0.05)
    assert north.bounds == pytest.approx((-10.0, -5.0, 200.0, 140.0))


@given(st.floats(0.0, 2.0 * math.pi))
@settings(max_examples=20)
def test_sides_turn_with_the_arrow(angle):
    """A part and its arrow turned together have the same margins."""
    arrow = np.array([math.cos(angle), math.sin(angle)])
    turned = shapely.affinity.rotate(PLATE, angle, origin=(0, 0), use_radians=True)
    sides = {"ahead": 30.0, "left": 12.0}
    plain = with_margins(PLATE, 20.0, sides, EAST, 0.05)
    found = with_margins(turned, 20.0, sides, arrow, 0.05)
    assert found.area == pytest.approx(plain.area, rel=2e-4)


def test_a_side_that_is_not_named_has_the_common_margin():
    cut = with_margins(PLATE, 20.0, {"left": 50.0}, EAST, 0.05)
    assert cut.bounds == pytest.approx((-50.0, -20.0, 250.0, 150.0), abs=60.0)
    assert cut.bounds[1] == pytest.approx(-20.0)
    assert cut.bounds[3] == pytest.approx(150.0)


def test_holes_close_by_their_own_margin():
    plate = PLATE.difference(shapely.box(50.0, 30.0, 90.0, 70.0))
    by_common = with_margins(plate, 5.0, {}, EAST, 0.01)
    assert by_common.interiors[0].length == pytest.approx(120.0, abs=0.2)
    own = with_margins(plate, 5.0, {"holes": 10.0}, EAST, 0.01)
    assert own.interiors[0].length == pytest.approx(80.0, abs=0.2)
    assert own.bounds == pytest.approx((-5.0, -5.0, 205.0, 105.0))
    assert len(with_margins(plate, 20.0, {}, EAST, 0.01).interiors) == 0


def test_no_margin_leaves_the_edge():
    assert with_margins(PLATE, 0.0, {}, EAST, 0.05).equals(PLATE)


def test_unknown_sides_and_negative_margins_are_refused():
    check_margins(dict.fromkeys(SIDES, 0.0))
    with pytest.raises(InputError, match="the side 'top'"):
        check_margins({"top": 5.0})
    for wrong in (-1.0, math.nan):
        with pytest.raises(InputError, match="margin left"):
            check_margins({"left": wrong})


def test_a_side_is_read_from_text():
    assert side_margin("left : 1.5 cm") == ("left", 15.0)
    for wrong in ("left 15 mm", "left: 15", "left: 3 kg"):
        with pytest.raises(InputError):
            side_margin(wrong)


@given(
    st.floats(5.0, 40.0),
    st.integers(2, 30),
    st.floats(0.0, 2.0 * math.pi),
    st.integers(0, 2**32 - 1),
)
@settings(max_examples=60)
def test_margins_by_side_of_a_round_outline_hang_together(radius, steps, angle, seed):
    """One piece without gaps that covers the least margin, corners included."""
    outline = shapely.segmentize(shapely.box(0, 0, 90, 60).buffer(radius, quad_segs=steps), 4.0)
    points = np.array(outline.exterior.coords)[:-1]
    points = points + np.random.default_rng(seed).normal(0.0, 1e-6, points.shape)
    region = shapely.Polygon(points)
    arrow = np.array([math.cos(angle), math.sin(angle)])
    cut = with_margins(region, 22.0, {"left": 30.0}, arrow, 0.2)
    assert isinstance(cut, shapely.Polygon)
    assert cut.is_valid
    assert not cut.interiors
    assert cut.contains(region.buffer(21.7))
    assert region.buffer(1.5 * 30.0 + 0.2).contains(cut)


def test_an_edge_half_between_two_sides_belongs_to_one_of_them_all_along():
    """A slope of 45 degrees in short pieces that are a little uneven: its margin is 22 mm."""
    slope = np.linspace([100.0, 0.0], [0.0, 100.0], 26)
    slope += np.random.default_rng(1).normal(0.0, 1e-5, slope.shape)
    region = shapely.Polygon([[0.0, 0.0], *slope])
    cut = with_margins(region, 22.0, {"left": 30.0}, EAST, 0.2)
    assert not cut.interiors
    for share in np.linspace(0.2, 0.8, 25):
        place, out = np.array([100.0 * share, 100.0 - 100.0 * share]), np.array([1.0, 1.0])
        assert cut.covers(shapely.Point(place + 21.9 * out * 0.5**0.5))
        assert not cut.covers(shapely.Point(place + 22.1 * out * 0.5**0.5))
