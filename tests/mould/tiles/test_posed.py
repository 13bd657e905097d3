"""Names and places of tiles on the bed."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.errors import LimitError
from laywright.mould.solid import block, to_manifold
from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.posed import posed_tiles
from laywright.mould.tiles.printer import Printer

QUARTER = np.array([[0.0, -1.0, 0.0], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]])


def plan_of(cuts, rotation=QUARTER):
    return CutPlan(np.eye(3), 0.0, (0, 0, 0), (60, 30, 20), cuts, rotation, 0.0)


def test_a_turned_tile_stands_in_the_middle_of_the_bed():
    box = shapes.box(60, 30, 20)
    printer = Printer("P", (100.0, 80.0, 50.0))
    (tile,) = posed_tiles(
        to_manifold(box, "box"),
        (0, 0, 0),
        plan_of(((), (), ())),
        printer,
        (1.0, 1.0, 1.01),
        ("b",) * 6,
    )
    assert tile.size == pytest.approx((60.0, 30.0, 20.2))
    np.testing.assert_allclose(tile.printed().bounds, [[20, 25, 0], [80, 55, 20.2]], atol=1e-9)
    assert tile.volume == pytest.approx(36000.0)
    assert tile.printed().volume == pytest.approx(36360.0)


def test_pieces_apart_in_one_cell_are_tiles_of_their_own():
    box = to_manifold(shapes.box(60, 30, 20), "box")
    middle = block(np.array([20.0, -1, -1]), np.array([40.0, 31, 21]), 0)
    printer = Printer("P", (100.0, 80.0, 50.0))
    tiles = posed_tiles(
        box - middle, (0, 0, 0), plan_of(((), (), ())), printer, (1.0, 1.0, 1.0), ("b",) * 6
    )
    assert [tile.name for tile in tiles] == ["A1a", "A1b"]
    assert [tile.volume for tile in tiles] == pytest.approx([12000.0, 12000.0])


def test_a_tile_too_large_is_refused_with_its_sizes():
    box = to_manifold(shapes.box(60, 30, 20), "box")
    with pytest.raises(LimitError) as caught:
        posed_tiles(
            box,
            (0, 0, 0),
            plan_of(((), (), ())),
            Printer("P", (60.0, 60.0, 50.0)),
            (1.0, 1.0, 1.0),
            ("b",) * 6,
        )
    assert caught.value.where == "tile A1"
    assert caught.value.found == "30.0 x 60.0 x 20.0 mm"
    assert caught.value.needed == "at most 50.0 x 50.0 x 50.0 mm"
