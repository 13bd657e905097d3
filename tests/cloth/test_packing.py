"""The search for a tighter packing, and its check."""

import builtins
import sys

import numpy as np
import pytest

from laywright.cloth.packing import fits, search
from laywright.cloth.skyline import Spot, place_by_lanes
from laywright.errors import Cancelled
from laywright.progress import silent


def ell(size):
    points = [[0, 0], [1, 0], [1, 0.3], [0.3, 0.3], [0.3, 1], [0, 1]]
    return size * np.array(points, float)


PIECES = [ell(size) for size in (300, 260, 260, 220, 180, 180, 150)]


def test_what_the_search_finds_fits():
    pytest.importorskip("spyrrow")
    spots = search(PIECES, 500.0, 5.0, 1.0, 1, silent)
    assert fits(PIECES, spots, 500.0, 5.0)
    starts = [spot.on(piece)[:, 0].min() for spot, piece in zip(spots, PIECES, strict=True)]
    assert min(starts) == pytest.approx(0.0, abs=1e-9)


def test_a_piece_nearly_as_wide_as_the_roll_is_left_to_the_lanes():
    assert search([ell(495), ell(100)], 500.0, 5.0, 1.0, 1, silent) is None


def test_without_the_library_there_is_nothing_to_find(monkeypatch):
    real = builtins.__import__

    def without(name, *args, **kwargs):
        if name == "spyrrow":
            raise ImportError(name)
        return real(name, *args, **kwargs)

    monkeypatch.delitem(sys.modules, "spyrrow", raising=False)
    monkeypatch.setattr(builtins, "__import__", without)
    assert search(PIECES, 500.0, 5.0, 1.0, 1, silent) is None


def test_stops_when_asked():
    pytest.importorskip("spyrrow")

    def stop(share, doing=""):
        raise Cancelled

    with pytest.raises(Cancelled):
        search(PIECES, 500.0, 5.0, 1.0, 1, stop)


def test_overlaps_edges_and_gaps_are_seen():
    good = place_by_lanes(PIECES, 500.0, 5.0)
    assert fits(PIECES, good, 500.0, 5.0)
    assert not fits(PIECES, good, 500.0, 50.0)
    stacked = [Spot(0.0, 0.0, False)] * len(PIECES)
    assert not fits(PIECES, stacked, 500.0, 0.0)
    outside = [Spot(spot.x, spot.y - 400.0, spot.turned) for spot in good]
    assert not fits(PIECES, outside, 500.0, 5.0)
    touching = [Spot(0.0, 0.0, False), Spot(100.0, 0.0, False)]
    assert fits([ell(100)] * 2, touching, 500.0, 0.0)
