"""What is used up besides cloth, resin and bag.

Rates of use are common practice, no source, and rounded up to whole pieces.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from laywright.errors import InputError
from laywright.shop.mixing.mix import MixPlan
from laywright.stage import stage

__all__ = ["Consumable", "ConsumableList", "Work", "list_consumables"]

_GLOVE_HOURS = 0.75
_CUPS_OF_A_BRUSH = 3


@dataclass(frozen=True)
class Work:
    """Size of the job, as far as consumables go.

    Attributes
    ----------
    mould_area_mm2 : float, mm^2
        Moulded face with run-off and flange.
    people : int
        At the mould.
    hours : float, hours
        Of hands on wet resin.
    """

    mould_area_mm2: float
    people: int = 1
    hours: float = 1.0

    def __post_init__(self) -> None:
        sound = (
            0.0 < self.mould_area_mm2 <= 1e9
            and 1 <= self.people <= 20
            and 0.0 < self.hours <= 100.0
        )
        if not sound:
            raise InputError(
                "size of the job",
                f"{self.mould_area_mm2:g} mm^2 of mould, {self.people} people for "
                f"{self.hours:g} hours",
                "a mould, 1 to 20 people, up to 100 hours",
                "correct the settings",
            )


@dataclass(frozen=True)
class Consumable:
    """Something that is used up.

    Attributes
    ----------
    item : str
    amount : float
        In `unit`.
    unit : str
    """

    item: str
    amount: float
    unit: str


@dataclass(frozen=True)
class ConsumableList:
    """What is used up besides cloth, resin and bag.

    Attributes
    ----------
    items : tuple of Consumable
    digest : str
        Of its inputs.
    """

    items: tuple[Consumable, ...]
    digest: str = ""


@stage("Consumables", version=2)
def list_consumables(work: Work, mix: MixPlan) -> ConsumableList:
    """Return what to have at hand before any resin is mixed.

    Parameters
    ----------
    work : Work
    mix : MixPlan
    """
    cups = len(mix.cups)
    people = float(work.people)
    pairs = people * (1 + math.ceil(work.hours / _GLOVE_HOURS))
    return ConsumableList(
        (
            Consumable("Nitrile gloves", pairs, "pairs"),
            Consumable("Mixing cups, two for each mix", 2.0 * cups, "pieces"),
            Consumable("Stirring sticks", 2.0 * cups, "pieces"),
            Consumable("Brushes", people * max(1, math.ceil(cups / _CUPS_OF_A_BRUSH)), "pieces"),
            Consumable("Rollers or squeegees", people, "pieces"),
            Consumable("Film to cover the bench", _square_metres(work.mould_area_mm2), "m^2"),
            Consumable("Particle filters for the mask", people, "pairs"),
        )
    )


def _square_metres(area_mm2: float) -> float:
    return math.ceil(area_mm2 * 1e-5) / 10.0
