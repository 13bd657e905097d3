"""The bench: everything around the laminate, from the sanding of the mould to the last hole.

Takes what the other rooms know about part and mould as plain numbers and returns the plans of
finish, release, bag, trim, shopping and clock as one value.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum

from laywright.arrays import FloatArray, floats
from laywright.errors import InputError
from laywright.laminate.plies import Process
from laywright.shop.bench.bag import BagFacts, BagPlan, BagSettings, plan_bag, soaked_words
from laywright.shop.bench.bench_lists import CutWork, hour_items, layup_run, shopping_items
from laywright.shop.bench.bench_supplies import BenchSupplies, usual_supplies
from laywright.shop.bench.consumables import ConsumableList, Work, list_consumables
from laywright.shop.bench.finish import FinishPlan, FinishSettings, plan_finish
from laywright.shop.bench.release_coats import (
    CoatingPlan,
    CoatingSettings,
    MouldState,
    plan_coats,
)
from laywright.shop.bench.shopping import Price, ShoppingList, list_shopping
from laywright.shop.bench.strips import StripPlan, StripSettings, plan_strips
from laywright.shop.bench.summaries import CoreLine
from laywright.shop.bench.timeline import Span, Timeline, WorkingDay, plan_timeline
from laywright.shop.bench.trim import EdgeFacts, TrimPlan, plan_trim
from laywright.shop.plan import ShopPlan
from laywright.stage import stage

__all__ = ["BenchFacts", "BenchPlan", "BenchSettings", "RollUse", "TrimGuide", "plan_bench"]


class TrimGuide(Enum):
    """What is printed to trim by, besides the scribe line in the mould."""

    NONE = "none"
    PAPER = "paper at true scale"
    RING = "ring to be printed"


@dataclass(frozen=True)
class BenchSettings:
    """How the bench works.

    Attributes
    ----------
    finish : FinishSettings
    coating : CoatingSettings
    strips : StripSettings
    bag : BagSettings
    day : WorkingDay
    people : int
        At the mould.
    parts : int
        To be made; what is paid once is shared among them.
    prices : tuple of Price
        The maker's own.
    currency : str
    trim_guide : TrimGuide
    shelf : BenchSupplies
        Release agents and consumables, from their cards.
    """

    finish: FinishSettings = field(default_factory=FinishSettings)
    coating: CoatingSettings = field(default_factory=CoatingSettings)
    strips: StripSettings = field(default_factory=StripSettings)
    bag: BagSettings = field(default_factory=BagSettings)
    day: WorkingDay = field(default_factory=WorkingDay)
    people: int = 1
    parts: int = 1
    prices: tuple[Price, ...] = ()
    currency: str = ""
    trim_guide: TrimGuide = TrimGuide.NONE
    shelf: BenchSupplies = field(default_factory=usual_supplies)

    def __post_init__(self) -> None:
        if not 1 <= self.parts <= 10000:
            raise InputError(
                "number of parts", f"{self.parts}", "1 to 10000", "correct the setting"
            )


@dataclass(frozen=True)
class RollUse:
    """Cloth that is cut off a roll for one part.

    Attributes
    ----------
    cloth : str
    length : float, mm
    """

    cloth: str
    length: float


@dataclass(frozen=True, eq=False)
class BenchFacts:
    """What the bench must know about part and mould.

    Attributes
    ----------
    part_area, mould_area : float, mm^2
        Of the part, and of moulded face with run-off.
    run_off : float, mm
        Width of the run-off, as the widest place of it.
    outline : (k, 2) float, mm
        Edge of the part laid flat.
    curvature : float, 1/mm^2
        Gauss curvature of the face where it is large.
    mould_size : tuple of 3 float, mm
        Outer size, its height last.
    pull : tuple of 3 float
        Direction in which the part leaves the mould.
    trim_loops : tuple of (k, 3) float, mm
        Edges of the part, the outer one first.
    cloth_edges : tuple of EdgeFacts
        Of every piece of cloth.
    rolls : tuple of RollUse
    plastic : str
        That the mould is printed of.
    print_g : float, g
        Mass of all tiles.
    glue_g : float, g
        Glue in all seams.
    process : Process
    core : CoreLine or None
    print_hours : float, hours
        Of the printer; zero where it is not known.
    """

    part_area: float
    mould_area: float
    run_off: float
    outline: FloatArray
    curvature: float
    mould_size: tuple[float, float, float]
    pull: tuple[float, float, float]
    trim_loops: tuple[FloatArray, ...]
    cloth_edges: tuple[EdgeFacts, ...]
    rolls: tuple[RollUse, ...]
    plastic: str
    print_g: float
    glue_g: float
    process: Process
    core: CoreLine | None = None
    print_hours: float = 0.0

    def __post_init__(self) -> None:
        object.__setattr__(self, "outline", floats(self.outline, -1, 2))

    @property
    def bag_facts(self) -> BagFacts:
        """Sizes that a bag follows from."""
        low, high = self.outline.min(axis=0), self.outline.max(axis=0)
        x, y = (float(side) for side in high - low)
        wider = 2.0 * self.run_off
        return BagFacts((x, y), (x + wider, y + wider), self.mould_size)


@dataclass(frozen=True, eq=False)
class BenchPlan:
    """Everything around the laminate.

    Attributes
    ----------
    finish : FinishPlan
    coats : CoatingPlan
    strips : StripPlan or None
        Where the release agent is a tape.
    bag : BagPlan or None
        Where the process has one.
    trim : TrimPlan
    consumables : ConsumableList
    shopping : ShoppingList
    timeline : Timeline
    trim_guide : TrimGuide
    soaked_remarks : tuple of str
        Where what lies in the bag takes up more of the mix than there is to spare.
    digest : str
        Of its inputs.
    """

    finish: FinishPlan
    coats: CoatingPlan
    strips: StripPlan | None
    bag: BagPlan | None
    trim: TrimPlan
    consumables: ConsumableList
    shopping: ShoppingList
    timeline: Timeline
    trim_guide: TrimGuide
    soaked_remarks: tuple[str, ...] = ()
    digest: str = ""

    @property
    def remarks(self) -> tuple[str, ...]:
        """What to watch."""
        return (
            *(self.strips.remarks if self.strips is not None else ()),
            *(self.bag.remarks if self.bag is not None else ()),
            *self.soaked_remarks,
            *self.timeline.remarks,
        )


@stage("Bench Plan", version=4)
def plan_bench(facts: BenchFacts, shop: ShopPlan, settings: BenchSettings) -> BenchPlan:
    """Return everything around the laminate.

    Parameters
    ----------
    facts : BenchFacts
    shop : ShopPlan
    settings : BenchSettings
    """
    finish = plan_finish(facts.mould_area, settings.finish)
    coats = plan_coats(facts.mould_area, settings.coating, settings.shelf)
    strips = (
        plan_strips(facts.outline, facts.curvature, settings.strips) if coats.tape_layers else None
    )
    bag = (
        None
        if facts.process is Process.HAND
        else plan_bag(
            facts.bag_facts,
            facts.process,
            settings.bag,
            settings.shelf,
            shop.cure.mould_peak_c,
        )
    )
    trim = plan_trim(facts.trim_loops, facts.pull, facts.cloth_edges)
    hours = shop.mix.laying_minutes / 60.0
    consumables = list_consumables(Work(facts.mould_area, settings.people, hours), shop.mix)
    items = shopping_items(
        {roll.cloth: roll.length for roll in facts.rolls},
        facts.plastic,
        facts.print_g,
        facts.glue_g,
        shop.mix,
        finish if settings.coating.state is MouldState.NEW else None,
        coats,
        strips,
        bag,
        trim,
        consumables,
        {} if facts.core is None else {_core_name(facts.core): facts.part_area},
    )
    cutting = CutWork(
        len(facts.cloth_edges),
        sum(edge.length for edge in facts.cloth_edges),
        trim.line_mm + trim.holes_mm,
        bag is not None,
    )
    first = finish.spans if settings.coating.state is MouldState.NEW else ()
    runs: list[list[Span]] = [[span] for span in first]
    runs.append([Span("Release agent, ready to lay up", coats.ready_minutes)])
    runs += layup_run(cutting, shop)
    timeline = plan_timeline(runs, settings.day)
    items += hour_items(facts.print_hours, sum(span.hands_minutes for span in first), timeline)
    return BenchPlan(
        finish,
        coats,
        strips,
        bag,
        trim,
        consumables,
        list_shopping(items, settings.prices, settings.parts, settings.currency),
        timeline,
        settings.trim_guide,
        () if bag is None else soaked_words(bag, facts.part_area, shop.mix),
    )


def _core_name(core: CoreLine) -> str:
    return f"{core.name}, {core.thickness:g} mm"
