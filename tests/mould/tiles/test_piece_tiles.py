"""The tiles of a mould in pieces: named by piece, all of the volume, pulled apart by piece."""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest

import shapes
from laywright import values
from laywright.mould.body.body import build_body
from laywright.mould.tiles.exploded import exploded
from laywright.mould.tiles.printer import load_printers
from laywright.mould.tiles.tiles import TileSet, TileSettings, cut_tiles
from laywright.surface.face import take_face


@cache
def mould():
    return build_body(take_face(shapes.tray(turns=6, spacing=14.0), (0.0, 0.0, 1.0)), 0.8)


@cache
def tiles():
    plain = TileSettings(dowel_diameter=0.0, glue_gap=0.0, mark_depth=0.0)
    return cut_tiles(mould(), load_printers()["Small, 180 mm"], plain)


def test_each_piece_is_cut_by_its_own_grid_and_none_of_it_is_lost():
    assert len(tiles().plans) == 2
    for number, piece in enumerate(mould().pieces):
        own = [tile for tile in tiles().tiles if tile.piece == number]
        assert all(tile.name[0] == str(number + 1) and tile.name[1].isalpha() for tile in own)
        assert sum(tile.volume for tile in own) == pytest.approx(piece.volume, rel=1e-6)
        assert all(tiles().plan_of(tile) is tiles().plans[number] for tile in own)
    assert len({tile.name for tile in tiles().tiles}) == len(tiles().tiles)
    assert all(tile.solid.is_closed for tile in tiles().tiles)


def test_the_order_of_assembly_ends_with_the_bolts():
    assert sorted(tile.order for tile in tiles().tiles) == list(range(1, len(tiles().tiles) + 1))
    assert tiles().steps[-1] == "Put piece 1 and piece 2 together and bolt them."
    assert any("begins with the number of its piece" in remark for remark in tiles().remarks)


def test_pulled_apart_the_pieces_stand_clear_of_each_other():
    first, second = (
        np.concatenate(
            [
                s.vertices
                for s, t in zip(exploded(tiles(), 30.0), tiles().tiles, strict=True)
                if t.piece == number
            ]
        )
        for number in (0, 1)
    )
    away = first.mean(axis=0) - second.mean(axis=0)
    still = mould().pieces[0].solid.vertices.mean(axis=0)
    still = still - mould().pieces[1].solid.vertices.mean(axis=0)
    assert np.linalg.norm(away) > np.linalg.norm(still) + 50.0


def test_stored():
    stored = values.pack(tiles())
    assert values.pack(values.unpack(TileSet, stored)) == stored
