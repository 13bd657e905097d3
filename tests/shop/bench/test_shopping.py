from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.shop.bench.shopping import (
    Paid,
    Price,
    ShoppingItem,
    ShoppingList,
    list_shopping,
    read_prices,
)
from laywright.values import pack, unpack

ITEMS = (
    ShoppingItem("Resin", 0.4, "kg"),
    ShoppingItem("Peel ply", 0.5, "m^2"),
    ShoppingItem("Filament PETG", 3.0, "kg", Paid.ONCE),
)


def test_a_worked_example():
    prices = read_prices(["Resin = 30 per kg", "filament petg=20 / kg", "  ", "Gold = 1 per g"])
    made = list_shopping(ITEMS, prices, 3, "EUR")
    assert made.each == pytest.approx(12.0)
    assert made.once == pytest.approx(60.0)
    assert made.per_part == pytest.approx(32.0)
    assert made.total == pytest.approx(96.0)
    assert made.unpriced == ("Peel ply",)
    resin, peel, filament = made.lines
    assert (resin.amount, resin.cost) == pytest.approx((1.2, 36.0))
    assert (peel.price, peel.cost) == (None, None)
    assert filament.amount == 3.0
    assert unpack(ShoppingList, pack(made)) == made


@given(st.integers(1, 50), st.floats(0.0, 100.0), st.floats(0.0, 100.0))
def test_costs_add_up_over_any_number_of_parts(parts, one, other):
    prices = (Price("Resin", one, "kg"), Price("Filament PETG", other, "kg"))
    made = list_shopping(ITEMS, prices, parts, "")
    paid = sum(line.cost for line in made.lines if line.cost is not None)
    assert made.total == pytest.approx(paid)
    assert made.total == pytest.approx(parts * made.per_part)


@pytest.mark.parametrize(
    ("call", "where"),
    [
        (lambda: read_prices(["Resin 30"]), "prices"),
        (lambda: read_prices(["Resin = 30,50 per kg"]), "prices"),
        (lambda: read_prices(["Resin = 30 per kg", "resin = 31 per kg"]), "prices"),
        (lambda: list_shopping(ITEMS, (Price("Resin", 3.0, "g"),), 1, ""), "price of Resin"),
        (lambda: list_shopping(ITEMS, (), 0, ""), "number of parts"),
    ],
)
def test_bad_prices_are_named(call, where):
    with pytest.raises(InputError) as caught:
        call()
    assert caught.value.where == where
