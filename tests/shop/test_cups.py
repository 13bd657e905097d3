from __future__ import annotations

import pytest

from laywright.laminate.materials import load_materials
from laywright.shop.cups import fill_cups, hardener_error, pot_life

RESIN = load_materials().resin("Laminating epoxy, slow hardener")


def test_pot_life_halves_for_each_ten_degrees():
    assert pot_life(RESIN, RESIN.pot_life_temperature_c) == RESIN.pot_life_minutes
    assert pot_life(RESIN, 13.0) == pytest.approx(4.0 * pot_life(RESIN, 33.0))
    (cup,) = fill_cups({1: 50.0}, RESIN, 100.0, 1.0, 33.0)
    assert cup.use_by_minutes == 30.0


def test_error_of_the_hardener():
    """20 g at 100:30 need 4.6 g of hardener: half a gram is 11 percent (common practice)."""
    assert hardener_error(4.6, 4.6, 1.0) == pytest.approx(0.109, abs=0.001)
    assert hardener_error(5.0, 4.6, 1.0) == pytest.approx(0.9 / 4.6, rel=1e-12)


def test_a_ply_too_large_for_a_cup_is_shared_out_evenly():
    cups = fill_cups({4: 250.0}, RESIN, 100.0, 0.01, 21.0)
    assert [cup.plies for cup in cups] == [(4,)] * 3
    masses = [cup.scale_after_hardener for cup in cups]
    assert max(masses) - min(masses) < 0.05


def test_cups_are_as_even_as_the_order_allows():
    """Greedy filling would give 90 and 20; the same two cups can be 60 and 50."""
    cups = fill_cups({1: 30.0, 2: 30.0, 3: 30.0, 4: 20.0}, RESIN, 100.0, 0.01, 21.0)
    assert [cup.plies for cup in cups] == [(1, 2), (3, 4)]
