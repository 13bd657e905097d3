"""What is used up besides cloth and resin, and what the part costs.

Rates of use are common practice, no source, and rounded up to whole pieces; prices are the
maker's own.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from laywright.errors import InputError
from laywright.laminate.plies import Process
from laywright.shop.mix import MixPlan
from laywright.stage import stage

__all__ = [
    "Consumable",
    "ConsumableList",
    "Cost",
    "CostLine",
    "Work",
    "cost_of",
    "list_consumables",
]

_FILM_ALLOWANCE = 1.15
_BAG_ALLOWANCE = 1.6
_TAPE_PLEATS = 1.3
_GLOVE_HOURS = 0.75


@dataclass(frozen=True)
class Work:
    """Size of the job, as far as consumables go.

    Attributes
    ----------
    part_area_mm2 : float, mm^2
        One side of the part.
    mould_area_mm2 : float, mm^2
        Moulded face with run-off and flange.
    bag_perimeter_mm : float, mm
        Along which a bag is taped down.
    people : int
        At the mould.
    hours : float, hours
        Of hands on wet resin.
    """

    part_area_mm2: float
    mould_area_mm2: float
    bag_perimeter_mm: float
    people: int = 1
    hours: float = 1.0

    def __post_init__(self) -> None:
        sound = (
            0.0 < self.part_area_mm2 <= self.mould_area_mm2 <= 1e9
            and 0.0 <= self.bag_perimeter_mm <= 1e6
            and 1 <= self.people <= 20
            and 0.0 < self.hours <= 100.0
        )
        if not sound:
            raise InputError(
                "size of the job",
                f"{self.part_area_mm2:g} mm^2 of part on {self.mould_area_mm2:g} mm^2 of mould, "
                f"{self.people} people for {self.hours:g} hours",
                "a mould no smaller than its part, 1 to 20 people, up to 100 hours",
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
    """All that is used up besides cloth and resin.

    Attributes
    ----------
    items : tuple of Consumable
    digest : str
        Of its inputs.
    """

    items: tuple[Consumable, ...]
    digest: str = ""


@stage("Consumables", version=1)
def list_consumables(work: Work, process: Process, mix: MixPlan) -> ConsumableList:
    """Return what to have at hand before any resin is mixed.

    Parameters
    ----------
    work : Work
    process : Process
        With a bag there are peel ply, release film, breather, bag film and tape as well.
    mix : MixPlan
    """
    cups = len(mix.cups)
    pairs = work.people * (1 + math.ceil(work.hours / _GLOVE_HOURS))
    items = [
        Consumable("nitrile gloves", pairs, "pairs"),
        Consumable("mixing cups, two for each mix", 2 * cups, "pieces"),
        Consumable("stirring sticks", 2 * cups, "pieces"),
        Consumable("brushes", work.people * max(1, math.ceil(cups / 3)), "pieces"),
        Consumable("rollers or squeegees", work.people, "pieces"),
        Consumable("film to cover the bench", _square_metres(work.mould_area_mm2), "m^2"),
        Consumable("masking tape", math.ceil(2.0 * work.bag_perimeter_mm / 1000.0), "m"),
        Consumable("particle filters for the mask", work.people, "pairs"),
    ]
    if process is not Process.HAND:
        covered = _square_metres(_FILM_ALLOWANCE * work.part_area_mm2)
        bag = _square_metres(_BAG_ALLOWANCE * work.mould_area_mm2)
        tape = math.ceil(_TAPE_PLEATS * work.bag_perimeter_mm / 1000.0)
        items += [
            Consumable("peel ply", covered, "m^2"),
            Consumable("bag film, with pleats", bag, "m^2"),
            Consumable("sealant tape, with pleats", tape, "m"),
        ]
        if process is Process.BAGGED:
            items += [
                Consumable("release film", covered, "m^2"),
                Consumable("breather", covered, "m^2"),
            ]
        else:
            items += [
                Consumable("flow mesh", covered, "m^2"),
                Consumable("resin hose", math.ceil(work.bag_perimeter_mm / 1000.0), "m"),
            ]
    return ConsumableList(tuple(items))


def _square_metres(area_mm2: float) -> float:
    return math.ceil(area_mm2 * 1e-5) / 10.0


@dataclass(frozen=True)
class CostLine:
    """One line of a cost estimate.

    Attributes
    ----------
    item : str
    amount : float
        Used, in any unit.
    price : float
        Of one such unit, in the maker's currency.
    once : float
        Share of the line that is paid once for all parts, 0 to 1: a mould is 1, cloth is 0.
    """

    item: str
    amount: float
    price: float
    once: float = 0.0

    def __post_init__(self) -> None:
        if not (self.amount >= 0.0 and self.price >= 0.0 and 0.0 <= self.once <= 1.0):
            raise InputError(
                f"cost of {self.item}",
                f"{self.amount:g} at {self.price:g}, {self.once:g} of it once",
                "amounts and prices of zero or more, and a share of 0 to 1",
                "correct the line",
            )


@dataclass(frozen=True)
class Cost:
    """What a run of parts costs, in the maker's currency.

    Attributes
    ----------
    once : float
        Paid once: mould, print, finishing.
    each : float
        For every part.
    parts : int
    """

    once: float
    each: float
    parts: int

    @property
    def per_part(self) -> float:
        """Cost of one part, with its share of what is paid once."""
        return self.each + self.once / self.parts

    @property
    def total(self) -> float:
        """Cost of the whole run."""
        return self.once + self.each * self.parts


def cost_of(lines: tuple[CostLine, ...], parts: int = 1) -> Cost:
    """Return the cost of a run of parts.

    Examples
    --------
    >>> cost_of((CostLine("mould", 1.0, 90.0, 1.0), CostLine("cloth", 0.5, 40.0)), 3).per_part
    50.0
    """
    if parts < 1:
        raise InputError("cost", f"{parts} parts", "at least one", "set the number of parts")
    once = math.fsum(line.amount * line.price * line.once for line in lines)
    each = math.fsum(line.amount * line.price * (1.0 - line.once) for line in lines)
    return Cost(once, each, parts)
