"""The search for a tighter packing, and its check."""

import builtins
import sys

import numpy as np
import pytest

from laywright.cloth.roll.bottom_left import place_bottom_left
from laywright.cloth.roll.packing import fits, start, wait_for
from laywright.cloth.roll.spot import STRAIGHT, Spot
from laywright.errors import Cancelled
from laywright.progress import silent


def ell(size):
    points = [[0, 0], [1, 0], [1, 0.3], [0.3, 0.3], [0.3, 1], [0, 1]]
    return size * np.array(points, float)


PIECES = [ell(size) for size in (300, 260, 260, 220, 180, 180, 150)]
STRAIGHT_ALL = [False] * len(PIECES)


def test_what_the_search_finds_fits():
    pytest.importorskip("spyrrow")
    mirrored = [False, True] * 3 + [False]
    hunt = start(PIECES, mirrored, 500.0, 5.0, 1.0, 1)
    assert wait_for([hunt], 1.0, silent) is False
    spots = hunt.best()
    assert fits(PIECES, spots, 500.0, 5.0)
    assert [spot.mirrored for spot in spots] == mirrored
    starts = [spot.on(piece)[:, 0].min() for spot, piece in zip(spots, PIECES, strict=True)]
    assert min(starts) == pytest.approx(0.0, abs=1e-9)


def test_a_piece_nearly_as_wide_as_the_roll_is_left_to_the_simple_packing():
    assert start([ell(495), ell(100)], [False] * 2, 500.0, 5.0, 1.0, 1) is None


def test_without_the_library_there_is_nothing_to_find(monkeypatch):
    real = builtins.__import__

    def without(name, *args, **kwargs):
        if name == "spyrrow":
            raise ImportError(name)
        return real(name, *args, **kwargs)

    monkeypatch.delitem(sys.modules, "spyrrow", raising=False)
    monkeypatch.setattr(builtins, "__import__", without)
    assert start(PIECES, STRAIGHT_ALL, 500.0, 5.0, 1.0, 1) is None


def test_when_stopped_the_best_so_far_is_at_hand():
    pytest.importorskip("spyrrow")

    def stop(share, doing=""):
        if share > 0.15:
            raise Cancelled

    hunt = start(PIECES, STRAIGHT_ALL, 500.0, 5.0, 2.0, 1)
    assert wait_for([hunt], 2.0, stop) is True
    assert hunt.best() is None or fits(PIECES, hunt.best(), 500.0, 5.0)


def test_overlaps_edges_and_gaps_are_seen():
    good = place_bottom_left(PIECES, [STRAIGHT] * len(PIECES), 500.0, 5.0, range(len(PIECES)))
    assert fits(PIECES, good, 500.0, 5.0)
    assert not fits(PIECES, good, 500.0, 50.0)
    stacked = [Spot(0.0, 0.0)] * len(PIECES)
    assert not fits(PIECES, stacked, 500.0, 0.0)
    outside = [Spot(spot.x, spot.y - 400.0, spot.turned) for spot in good]
    assert not fits(PIECES, outside, 500.0, 5.0)
    before = [Spot(spot.x - 1.0, spot.y, spot.turned) for spot in good]
    assert not fits(PIECES, before, 500.0, 5.0)
    touching = [Spot(0.0, 0.0), Spot(100.0, 0.0)]
    assert fits([ell(100)] * 2, touching, 500.0, 0.0)
