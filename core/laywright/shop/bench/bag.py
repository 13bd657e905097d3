"""The vacuum bag: what is cut to which size, how much tape, how the leak is tested.

What is bought for each piece that is cut, the heat that it stands and the resin that it takes up
stand on the cards of the consumables.  A printed wall leaks, so the bag goes round the
whole mould unless the mould is sealed and has held vacuum by itself.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from laywright.errors import InputError
from laywright.laminate.plies import Process
from laywright.laminate.supplies import Consumable, Use
from laywright.shop.bench.bench_supplies import BenchSupplies
from laywright.shop.mixing.mix import MixPlan
from laywright.stage import stage

__all__ = ["BagFacts", "BagPiece", "BagPlan", "BagSettings", "BagStyle", "plan_bag", "soaked_words"]

_ROUND = 10.0
_ITEMS = {
    Use.PEEL_PLY: "Peel ply",
    Use.RELEASE_FILM: "Release film, perforated",
    Use.BREATHER: "Breather",
    Use.FLOW_MESH: "Flow mesh",
}


class BagStyle(Enum):
    """Where the bag is closed."""

    ENVELOPE = "round the whole mould"
    FLANGE = "on the flange"


@dataclass(frozen=True)
class BagSettings:
    """How the bag is made.

    Attributes
    ----------
    style : BagStyle
    beyond : float, mm
        By which peel ply, film and breather reach beyond the part, on every side.
    slack : float, mm
        By which the bag is larger than the developed size, in length and in width.
    pleat_every : float, mm
        Of the edge there is one pleat.
    pleat_height : float, mm
        It takes twice as much bag and tape.
    """

    style: BagStyle = BagStyle.ENVELOPE
    beyond: float = 40.0
    slack: float = 200.0
    pleat_every: float = 400.0
    pleat_height: float = 40.0

    def __post_init__(self) -> None:
        for where, number, low, high in (
            ("bag: beyond the part", self.beyond, 0.0, 500.0),
            ("bag: slack", self.slack, 0.0, 5000.0),
            ("bag: a pleat every", self.pleat_every, 50.0, 10000.0),
            ("bag: height of a pleat", self.pleat_height, 0.0, 500.0),
        ):
            if not low <= number <= high:
                raise InputError(
                    where, f"{number:g} mm", f"{low:g} to {high:g} mm", "correct the setting"
                )


@dataclass(frozen=True)
class BagFacts:
    """Sizes that the bag follows from.

    Attributes
    ----------
    part : tuple of 2 float, mm
        Length and width of the part laid flat.
    face : tuple of 2 float, mm
        Length and width of moulded face, run-off and flange laid flat.
    mould : tuple of 3 float, mm
        Outer size of the mould, its height last.
    """

    part: tuple[float, float]
    face: tuple[float, float]
    mould: tuple[float, float, float]

    def __post_init__(self) -> None:
        if not all(0.0 < side <= 2e4 for side in (*self.part, *self.face, *self.mould)):
            raise InputError("bag", "a size that is none", "lengths in mm", "check the mould")


@dataclass(frozen=True)
class BagPiece:
    """One piece to be cut.

    Attributes
    ----------
    item : str
    length, width : float, mm
    card : str
        Of what it is cut.
    bought_mm2 : float, mm^2
        Its area with the allowance of that card.
    """

    item: str
    length: float
    width: float
    card: str
    bought_mm2: float


@dataclass(frozen=True)
class BagPlan:
    """What lies on the laminate and over it.

    Attributes
    ----------
    pieces : tuple of BagPiece
        In the order of laying.
    pleats : int
    tape_mm : float, mm
        Sealant tape, pleats included.
    tape_card : str
        Which tape.
    tape_bought_mm : float, mm
        The same with the allowance of its card.
    hose_mm : float, mm
        Of resin and vacuum hose; zero for a bag without infusion.
    steps : tuple of str
        What to do, the leak test included.
    uptake : float, g/m^2
        Resin that peel ply and what lies on it take up.
    remarks : tuple of str
        What does not stand the heat of the cure.
    digest : str
        Of its inputs.
    """

    pieces: tuple[BagPiece, ...]
    pleats: int
    tape_mm: float
    tape_card: str
    tape_bought_mm: float
    hose_mm: float
    steps: tuple[str, ...]
    uptake: float
    remarks: tuple[str, ...] = ()
    digest: str = ""


@stage("Bag Plan", version=2)
def plan_bag(
    facts: BagFacts,
    process: Process,
    settings: BagSettings,
    shelf: BenchSupplies,
    hottest_c: float,
) -> BagPlan:
    """Return what to cut for the bag.

    Parameters
    ----------
    facts : BagFacts
    process : Process
        Bagged or infused.
    settings : BagSettings
    shelf : BenchSupplies
        What the bag is made of, as it stands on cards.
    hottest_c : float, degC
        That the part sees while it is on the mould.

    Raises
    ------
    InputError
        If the process has no bag.
    """
    if process is Process.HAND:
        raise InputError("bag", "work by hand", "a process with a bag", "choose another process")
    covered = tuple(_rounded(side + 2.0 * settings.beyond) for side in facts.part)
    long, wide, height = facts.mould
    if settings.style is BagStyle.ENVELOPE:
        length, width = max(long, wide) + height, 2.0 * (min(long, wide) + height)
    else:
        length, width = max(facts.face), min(facts.face)
    edge = 2.0 * length + width if settings.style is BagStyle.ENVELOPE else 2.0 * (length + width)
    pleats = max(4, math.ceil(edge / settings.pleat_every))
    gathered = 2.0 * settings.pleat_height * pleats
    bag = _piece(
        "Bag film, once" if settings.style is BagStyle.FLANGE else "Bag film, folded round",
        _rounded(length + settings.slack + gathered / 4.0),
        _rounded(width + settings.slack + gathered / 4.0),
        shelf.bag_film,
    )
    inside = shelf.in_bag(process)
    tape = _rounded(edge + 2.0 * settings.slack + gathered)
    return BagPlan(
        (*(_piece(_ITEMS[each.use], covered[0], covered[1], each) for each in inside), bag),
        pleats,
        tape,
        shelf.sealant_tape.name,
        tape * shelf.sealant_tape.allowance,
        _rounded(edge) if process is Process.INFUSED else 0.0,
        _steps(settings, pleats),
        math.fsum(each.resin_uptake or 0.0 for each in inside),
        tuple(
            f"{each.name} stands {each.largest_temperature_c:g} degC, the part is heated to "
            f"{hottest_c:g} degC in the bag: take another one, or post-cure without the bag."
            for each in (*inside, shelf.bag_film, shelf.sealant_tape)
            if each.largest_temperature_c < hottest_c
        ),
    )


def soaked_words(bag: BagPlan, part_area: float, mix: MixPlan) -> tuple[str, ...]:
    """Return a remark where the bag takes up more of the mix than the plan has to spare.

    Parameters
    ----------
    bag : BagPlan
    part_area : float, mm^2
    mix : MixPlan
    """
    taken = bag.uptake * part_area * 1e-6
    held = mix.laminate_resin_g + mix.coats_g + mix.coupon_g
    spare = mix.mix_g - held
    if taken <= spare:
        return ()
    return (
        f"Peel ply and what lies on it may take up {taken:.0f} g of the mix, the plan has "
        f"{spare:.0f} g to spare: allow {100.0 * taken / held:.0f} % extra for losses, or weigh "
        "what a piece of them takes up and put it on the card.",
    )


def _piece(item: str, length: float, width: float, of: Consumable) -> BagPiece:
    return BagPiece(item, length, width, of.name, length * width * of.allowance)


def _rounded(length: float) -> float:
    return float(math.ceil(length / _ROUND) * _ROUND)


def _steps(settings: BagSettings, pleats: int) -> tuple[str, ...]:
    return (
        "Cut and dry-fit everything before any resin is mixed.",
        f"Close the bag {settings.style.value}; set the {pleats} pleats where the mould is deep "
        "or tight, so that the bag reaches the bottom of every corner.",
        "Leak test with the dry bag: pump to full vacuum, shut the valve, wait ten minutes. A "
        "gauge that falls by more than 20 mbar (common practice, no source) means a leak: listen, "
        "press the tape, patch.",
        "Use a regulator: too much vacuum on thin wet cloth sucks it dry. A printed mould creeps "
        "under the load when it is warm: keep it cold until the resin has gelled.",
        "Keep the vacuum until the resin has gelled, better until demould.",
    )
