"""Tiles pulled apart keep their shape and stand a gap away from their neighbours."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.mould.body.body import build_body
from laywright.mould.tiles.exploded import exploded, shifts, signs
from laywright.mould.tiles.printer import load_printers
from laywright.mould.tiles.tiles import cut_tiles
from laywright.surface.face import MouldSide, take_face


def test_neighbours_stand_apart_by_the_gap():
    face = take_face(shapes.hatch(spacing=30.0), (0, 0, 1), mould_side=MouldSide.INSIDE)
    tiles = cut_tiles(build_body(face, 0.0), load_printers()["Small, 180 mm"])
    assert shifts(tiles, 25.0).sum(axis=0) == pytest.approx(0.0, abs=1e-9)
    apart = exploded(tiles, 25.0)
    for tile, moved in zip(tiles.tiles, apart, strict=True):
        assert moved.volume == pytest.approx(tile.volume, rel=1e-9)
    axes = tiles.plan.axes
    first, second = (apart[i].vertices @ axes[0] for i in (0, 1))
    assert second.min() - first.max() == pytest.approx(25.0 + tiles.glue_gap, abs=1e-6)
    written = signs(tiles, 25.0)
    assert [text for text, _ in written] == [f"{t.order}: {t.name}" for t in tiles.tiles]
    for (_, place), moved in zip(written, apart, strict=True):
        low, high = moved.bounds
        assert ((low < place) & (place < high)).all()
    still = exploded(tiles, 0.0)
    assert all(
        np.array_equal(tile.solid.vertices, same.vertices)
        for tile, same in zip(tiles.tiles, still, strict=True)
    )
