"""The shopping list, with the maker's own prices: what is paid once and what for every part."""

from __future__ import annotations

import math
import re
from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum

from laywright.errors import InputError
from laywright.stage import stage

__all__ = [
    "Paid",
    "Price",
    "ShoppingItem",
    "ShoppingLine",
    "ShoppingList",
    "list_shopping",
    "read_prices",
]

_PRICE = re.compile(r"\s*(.+?)\s*=\s*(\d+(?:\.\d+)?)\s*(?:per|/)\s*(\S+?)\s*")


class Paid(Enum):
    """How often something is bought."""

    ONCE = "once"
    EACH = "every part"


@dataclass(frozen=True)
class Price:
    """A price of the maker's own.

    Attributes
    ----------
    item : str
        As on the shopping list.
    amount : float
        In the maker's currency, for one `unit`.
    unit : str
    """

    item: str
    amount: float
    unit: str


@dataclass(frozen=True)
class ShoppingItem:
    """Something that is needed.

    Attributes
    ----------
    item : str
    amount : float
        For one part, or in all where it is paid once; in `unit`.
    unit : str
    paid : Paid
    """

    item: str
    amount: float
    unit: str
    paid: Paid = Paid.EACH


@dataclass(frozen=True)
class ShoppingLine:
    """A line of the list.

    Attributes
    ----------
    item : str
    amount : float
        For all parts, in `unit`.
    unit : str
    paid : Paid
    price : float or None
        Of one unit; None where the maker has given none.
    cost : float or None
    """

    item: str
    amount: float
    unit: str
    paid: Paid
    price: float | None
    cost: float | None


@dataclass(frozen=True)
class ShoppingList:
    """All that is bought, and what it costs.

    Attributes
    ----------
    lines : tuple of ShoppingLine
    parts : int
        Number of parts.
    currency : str
    once, each : float
        Cost that is paid once, and for every part, as far as there are prices.
    unpriced : tuple of str
        What has no price yet.
    digest : str
        Of its inputs.
    """

    lines: tuple[ShoppingLine, ...]
    parts: int
    currency: str
    once: float
    each: float
    unpriced: tuple[str, ...]
    digest: str = ""

    @property
    def per_part(self) -> float:
        """Cost of one part with its share of what is paid once."""
        return self.each + self.once / self.parts

    @property
    def total(self) -> float:
        """Cost of all parts."""
        return self.once + self.each * self.parts


def read_prices(lines: Iterable[str]) -> tuple[Price, ...]:
    """Return prices from lines such as ``"Peel ply = 4.20 per m^2"``.

    Raises
    ------
    InputError
        If a line is no price, or an item has two.

    Examples
    --------
    >>> read_prices(["Peel ply = 4.20 per m^2"])
    (Price(item='Peel ply', amount=4.2, unit='m^2'),)
    """
    prices: dict[str, Price] = {}
    for line in lines:
        if not line.strip():
            continue
        found = _PRICE.fullmatch(line)
        if found is None:
            raise InputError(
                "prices",
                f"'{line}'",
                "an item, a price and its unit, such as 'Peel ply = 4.20 per m^2'",
                "write it that way, with a point as the decimal mark",
            )
        price = Price(found[1], float(found[2]), found[3])
        if price.item.casefold() in prices:
            raise InputError("prices", f"'{price.item}' twice", "one price", "remove one of them")
        prices[price.item.casefold()] = price
    return tuple(prices.values())


@stage("Shopping List", version=1)
def list_shopping(
    items: tuple[ShoppingItem, ...], prices: tuple[Price, ...], parts: int, currency: str
) -> ShoppingList:
    """Return the list for a number of parts.

    Parameters
    ----------
    items : tuple of ShoppingItem
    prices : tuple of Price
        The maker's own; prices of other things are left aside.
    parts : int
    currency : str
        As it is printed.

    Raises
    ------
    InputError
        If a price is for another unit than the list counts in.
    """
    if parts < 1:
        raise InputError("number of parts", f"{parts}", "at least 1", "set the number of parts")
    known = {price.item.casefold(): price for price in prices}
    lines = []
    for item in items:
        price = known.get(item.item.casefold())
        if price is not None and price.unit != item.unit:
            raise InputError(
                f"price of {item.item}",
                f"{price.amount:g} per {price.unit}",
                f"a price per {item.unit}",
                "give the price in the unit of the shopping list",
            )
        amount = item.amount if item.paid is Paid.ONCE else item.amount * parts
        lines.append(
            ShoppingLine(
                item.item,
                amount,
                item.unit,
                item.paid,
                None if price is None else price.amount,
                None if price is None else price.amount * amount,
            )
        )
    costs = {
        paid: math.fsum(line.cost for line in lines if line.paid is paid and line.cost is not None)
        for paid in Paid
    }
    return ShoppingList(
        tuple(lines),
        parts,
        currency,
        costs[Paid.ONCE],
        costs[Paid.EACH] / parts,
        tuple(line.item for line in lines if line.cost is None),
    )
