"""Rows first, then row to row, then layer on layer."""

from __future__ import annotations

from itertools import product

from hypothesis import given
from hypothesis import strategies as st

from laywright.mould.tiles.assembly import order_of, steps_of


@given(st.permutations([(k, j, i, f"{k}{j}{i}") for k, j, i in product(range(2), repeat=3)]))
def test_every_tile_has_one_place_whatever_comes_first(tiles):
    order = order_of(tiles)
    assert sorted(order) == list(range(1, 9))
    by_order = [tile for _, tile in sorted(zip(order, tiles, strict=True))]
    assert by_order == sorted(tiles)
    assert steps_of(tiles) == steps_of(by_order)


def test_steps_of_two_layers():
    tiles = [(k, j, i, f"{'AB'[j]}{i + 1}-{k + 1}") for k, j, i in product(range(2), repeat=3)]
    assert steps_of(tiles) == (
        "Glue A1-1 + A2-1.",
        "Glue B1-1 + B2-1.",
        "Glue row A1-1, A2-1 to row B1-1, B2-1.",
        "Glue A1-2 + A2-2.",
        "Glue B1-2 + B2-2.",
        "Glue row A1-2, A2-2 to row B1-2, B2-2.",
        "Glue the layer of A1-2 on the layer of A1-1.",
    )
    assert steps_of([(0, 0, 0, "A1")]) == ()
