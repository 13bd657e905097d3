"""Wishes that contradict each other are refused; obstacles bar what they span."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright.errors import LimitError
from laywright.mould.tiles.wishes import CutWishes, barred, obstacles
from laywright.surface.triangles import Surface


def pocketed():
    box = shapes.box(40.0, 30.0, 20.0)
    names = ("Pry pocket", "right", "bolt hole", "filled hole", "base", "dowel hole")
    return Surface(box.vertices, box.triangles, box.patches, names)


def test_pockets_bolts_and_dowels_are_found_each_as_one_thing():
    things = obstacles(pocketed())
    # left, front and top sides of the box hang together along edges
    assert len(things) == 1
    assert things[0].min(axis=0).tolist() == [0.0, 0.0, 0.0]
    assert obstacles(shapes.box(1, 1, 1)) == []


@pytest.mark.parametrize("turn", [0.0, 0.3])
def test_barred_stretches_of_points_and_balls(turn):
    cos, sin = math.cos(turn), math.sin(turn)
    axes = np.array([[cos, sin, 0], [-sin, cos, 0], [0, 0, 1.0]])
    points = np.array([[10.0, 0, 0], [20.0, 5, 0]])
    wishes = CutWishes(turn=turn, free_x=((1.0, 2.0),), kept_whole=((30.0, 4.0, 0.0, 5.0),))
    free, thing, ball = barred([points], wishes, axes, 0, 1.5)
    assert free == (1.0, 2.0)
    assert thing == pytest.approx((10 * cos - 1.5, 20 * cos + 5 * sin + 1.5))
    middle = 30 * cos + 4 * sin
    assert ball == pytest.approx((middle - 6.5, middle + 6.5))


@pytest.mark.parametrize(
    ("wrong", "where"),
    [
        ({"pinned_x": (5.0,), "free_x": ((4.0, 6.0),)}, "pinned cut along x"),
        ({"free_y": ((6.0, 4.0),)}, "stretch without cuts along y"),
        ({"pinned_z": (float("nan"),)}, "cuts"),
    ],
)
def test_wishes_that_cannot_be(wrong, where):
    with pytest.raises(LimitError) as caught:
        CutWishes(**wrong)
    assert caught.value.where == where


def test_only_places_fix_the_turn():
    assert not CutWishes().fixes_turn
    assert not CutWishes(kept_whole=((0, 0, 0, 1),)).fixes_turn
    assert CutWishes(pinned_y=(1.0,)).fixes_turn
    assert CutWishes(turn=0.0).fixes_turn
