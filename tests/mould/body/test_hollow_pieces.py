"""Pieces hollowed from below: full where they have no base or no room, solid round bolts."""

from __future__ import annotations

import math

import numpy as np
import pytest
from manifold3d import Manifold

from laywright.mould.body.hollow_pieces import hollowed
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.body.settings import Inside, MouldBuild
from laywright.mould.solid import ball, from_manifold, to_manifold
from laywright.surface.triangles import Surface
from shapes import box

NAMES = ("sides", "base", "hollow")
SHELL = Inside(MouldBuild.SHELL, wall=5.0)
NONE = np.empty((0, 3))


def block(x, y, z, base=True) -> Manifold:
    shape = box(x, y, z)
    low = (shape.normals[:, 2] < -0.5) & base
    return to_manifold(
        Surface(shape.vertices, shape.triangles, low.astype(int), NAMES), "the block"
    )


def test_a_block_becomes_a_box_with_its_wall():
    solid = block(120.0, 80.0, 50.0)
    made = hollowed("Piece 1", solid, NAMES, np.eye(3), NONE, SHELL, PieceSettings())
    assert made.remark == ""
    assert made.hollow.least_wall >= 5.0
    wanted = 120.0 * 80.0 * 50.0 - 110.0 * 70.0 * 45.0
    assert wanted <= made.solid.volume() <= 1.05 * wanted
    assert from_manifold(made.solid, NAMES).is_closed


def test_the_mouth_of_the_mould_says_what_is_below():
    turn = np.array([[0.0, 0.0, 1.0], [1.0, 0.0, 0.0], [0.0, 1.0, 0.0]])
    upright = block(120.0, 80.0, 50.0)
    lying = upright.transform(np.column_stack([turn.T, np.zeros(3)]))
    one, other = (
        hollowed("Piece 1", solid, NAMES, way, NONE, SHELL, PieceSettings()).solid
        for solid, way in ((upright, np.eye(3)), (lying, turn))
    )
    assert other.volume() == pytest.approx(one.volume(), rel=1e-6)


def test_round_a_bolt_it_stays_full():
    settings = PieceSettings()
    solid, place = block(120.0, 80.0, 50.0), np.array([[60.0, 40.0, 25.0]])
    made = hollowed("Piece 1", solid, NAMES, np.eye(3), place, SHELL, settings)
    bare = hollowed("Piece 1", solid, NAMES, np.eye(3), NONE, SHELL, settings)
    reach = math.hypot(settings.clamped, settings.pocket) + SHELL.wall
    around = ball(place[0], reach, 0)
    assert (around - made.solid).volume() == pytest.approx(0.0, abs=1e-6)
    added = made.solid.volume() - bare.solid.volume()
    assert added == pytest.approx((around ^ bare.hollow.solid).volume(), rel=1e-9)
    assert around.volume() == pytest.approx(4.0 / 3.0 * math.pi * reach**3, rel=0.06)


def test_without_a_base_or_room_it_stays_full_and_says_so():
    for solid, why in (
        (block(120.0, 80.0, 50.0, base=False), "no base"),
        (block(120.0, 80.0, 4.0), "no room behind a wall of 5 mm"),
    ):
        made = hollowed("Piece 2", solid, NAMES, np.eye(3), NONE, SHELL, PieceSettings())
        assert made.hollow is None
        assert made.solid is solid
        assert made.remark.startswith("Piece 2 stays full: ")
        assert why in made.remark
