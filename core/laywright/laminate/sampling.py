"""Drawing the numbers of a layup from the ranges on its cards, many times over."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from laywright.arrays import FloatArray
from laywright.errors import InputError
from laywright.laminate.card_files import Card, CardValue, convert
from laywright.laminate.limits import limits_of
from laywright.laminate.plies import Process

__all__ = ["Draws", "Scatter", "usual_scatter"]


@dataclass(frozen=True)
class Scatter:
    """What varies from part to part beside the values on the cards.

    Attributes
    ----------
    resin_share : float
        By how much the share of resin in the mass may lie above or below the planned one.
    void_share : float
        By how much the share of voids may lie above the planned one.
    angle : float, radians
        By how much a ply may lie askew to either side, each ply for itself.
    samples : int
        Number of parts that are drawn.
    seed : int
        Start of the random numbers: the same seed gives the same result.
    """

    resin_share: float = 0.07
    void_share: float = 0.04
    angle: float = 0.09
    samples: int = 2000
    seed: int = 1

    def __post_init__(self) -> None:
        if not (
            0.0 <= self.resin_share <= 0.3
            and 0.0 <= self.void_share <= 0.2
            and 0.0 <= self.angle <= 0.8
        ):
            raise InputError(
                "scatter",
                f"resin share {self.resin_share:g}, voids {self.void_share:g}, angle "
                f"{self.angle:g} rad",
                "shares up to 0.3 and 0.2, an angle up to 0.8 rad",
                "correct the setting",
            )
        if not 100 <= self.samples <= 100_000:
            raise InputError("samples", f"{self.samples}", "100 to 100000", "correct the setting")


_USUAL = {
    Process.HAND: Scatter(0.07, 0.04, 0.09),
    Process.BAGGED: Scatter(0.05, 0.03, 0.09),
    Process.INFUSED: Scatter(0.04, 0.02, 0.07),
}


def usual_scatter(process: Process) -> Scatter:
    """Return what usually varies with a process; common practice, no source.

    Examples
    --------
    >>> usual_scatter(Process.HAND).resin_share
    0.07
    """
    return _USUAL[process]


class Draws:
    """Drawn numbers, by what they are called.

    Each value is drawn from a triangle between its low and its high end with its peak at the
    planned value; a value without a range stays what it is.

    Parameters
    ----------
    cards : tuple of Card
        With the ranges.
    samples, seed : int
    """

    def __init__(self, cards: tuple[Card, ...], samples: int, seed: int) -> None:
        self._cards = {card.name: card for card in cards}
        self._samples = samples
        self._random = np.random.default_rng(seed)
        self.drawn: dict[str, list[FloatArray]] = {}

    def within(self, name: str, value: float, low: float, high: float) -> FloatArray:
        """Return numbers between `low` and `high` under a name, (samples,) float."""
        if not low < high:
            return np.full(self._samples, value)
        found = self._random.triangular(low, min(max(value, low), high), high, self._samples)
        self.drawn.setdefault(name, []).append(found)
        return found

    def of(self, material: Any, field: str) -> FloatArray:
        """Return numbers for a field of a material, from the range on its card.

        A field of a group is written with a point, such as ``"strengths.shear"``.
        """
        group, _, inner = field.rpartition(".")
        owner = getattr(material, group) if group else material
        value = float(getattr(owner, inner))
        card = self._cards.get(material.name)
        written = card.values.get(field) if card is not None else None
        if written is None:
            return np.full(self._samples, value)
        unit = limits_of(type(owner))[inner].unit
        low, high = (
            value
            if end is None
            else convert(_with(written, end), unit, f"{material.name}: {field}")
            for end in (written.low, written.high)
        )
        words = field.replace("strengths.", "strength, ").replace("_", " ")
        return self.within(f"{words} of {material.name}", value, min(low, value), max(high, value))


def _with(written: CardValue, number: float) -> CardValue:
    return CardValue(number, written.unit, None, None, written.source, written.kind)
