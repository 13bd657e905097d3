"""Marks: every letter there, readable from below, inside the underside."""

from __future__ import annotations

import string

import numpy as np
import pytest
import shapely

from laywright.mould.marks import ARROW, AWAY, drawn, engraving, strokes
from laywright.mould.tiles.joints import sections


def test_every_letter_is_there_and_no_two_are_alike():
    letters = [*string.ascii_uppercase, *string.digits, "-", ARROW, AWAY]
    drawn = {}
    for letter in letters:
        lines = strokes(letter)
        points = np.concatenate(lines)
        assert points.min() >= 0.0
        assert points[:, 0].max() <= (6.0 if letter == AWAY else 4.0)
        assert points[:, 1].max() <= 6.0
        picture = shapely.MultiLineString(lines).buffer(0.3)
        drawn[letter] = picture
    for one in letters:
        for other in letters:
            if one < other:
                assert drawn[one].symmetric_difference(drawn[other]).area > 0.5, (one, other)
    assert len(strokes("a1")) == len(strokes("A")) + len(strokes("1"))


def test_the_engraving_lies_in_the_tile_and_reads_from_below():
    under = shapely.box(10, 20, 70, 60)
    cut = engraving("L", under, (-9.0, -7.4), 1.0, 5)
    low = np.array(cut.bounding_box()[:3])
    high = np.array(cut.bounding_box()[3:])
    assert low[2] == pytest.approx(-9.0)
    assert high[2] == pytest.approx(-7.4)
    (flat,) = sections(cut, 2, [-8.0 + 1e-3])
    assert under.contains(flat)
    assert flat.bounds[3] - flat.bounds[1] == pytest.approx(12.0 + 1.0)
    foot = shapely.intersection(flat, shapely.box(0, 0, 100, flat.bounds[1] + 1.0))
    assert foot.centroid.x < flat.bounds[0] + 5.0
    upright = shapely.intersection(flat, shapely.box(flat.bounds[2] - 1.0, 0, 100, 100))
    assert upright.area == pytest.approx(13.0, rel=0.1)


def test_a_larger_piece_is_chosen_and_none_where_there_is_no_room():
    two = shapely.union(shapely.box(0, 0, 5, 5), shapely.box(100, 0, 140, 40))
    cut = engraving("A1", two, (-1.0, 0.6), 0.8, 0)
    assert cut.bounding_box()[0] > 100.0
    assert engraving("A1", shapely.box(0, 0, 6, 6), (-1.0, 0.6), 0.8, 0) is None
    assert engraving("A1", shapely.Polygon(), (-1.0, 0.6), 0.8, 0) is None


@pytest.mark.parametrize("letter", [*string.ascii_uppercase, *string.digits, ARROW, AWAY])
@pytest.mark.parametrize("nozzle", [0.4, 0.6])
def test_the_smallest_letters_keep_their_counters_as_wide_as_a_line(letter, nozzle):
    pen = 2.0 * nozzle
    fine = shapely.MultiLineString(strokes(letter)).buffer(0.01)
    room = next(
        shapely.box(0, 0, side, side)
        for side in np.arange(4.0 * pen, 40.0, 0.1)
        if drawn(strokes(letter), shapely.box(0, 0, side, side), pen) is not None
    )
    inked = shapely.union_all([shapely.Polygon(bar) for bar in drawn(strokes(letter), room, pen)])
    assert holes(inked) == holes(fine)
    assert holes(inked.buffer(0.45 * nozzle)) == holes(fine)


def holes(shape):
    return sum(len(part.interiors) for part in getattr(shape, "geoms", [shape]))
