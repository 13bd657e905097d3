"""What the bench buys and in which order it works, from the plans of its corners.

Times that nothing else tells are common practice, no source.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from laywright.shop.bench.bag import BagPlan
from laywright.shop.bench.consumables import ConsumableList
from laywright.shop.bench.finish import FinishPlan
from laywright.shop.bench.release_coats import CoatingPlan
from laywright.shop.bench.shopping import Paid, ShoppingItem
from laywright.shop.bench.strips import StripPlan
from laywright.shop.bench.timeline import Span, Timeline
from laywright.shop.bench.trim import TrimPlan
from laywright.shop.mixing.mix import MixPlan
from laywright.shop.plan import ShopPlan

__all__ = ["CutWork", "hour_items", "layup_run", "shopping_items"]

_PIECE_MINUTES = 8.0  # to mark, number and weigh a piece of cloth
_CUT_PER_METRE = 2.0  # minutes with shears along a metre of cloth
_KNIFE_PER_METRE = 5.0  # minutes along a metre of the green edge
_SAW_PER_METRE = 20.0  # minutes to saw and sand a metre of the cured edge to the line
_SHEET_LOST = 1.2  # a fifth more sheet than part
_BAG_MINUTES = 30.0  # to close a bag and draw it down
_DEMOULD_MINUTES = 20.0  # to take a part off its mould
_RECORD_MINUTES = 30.0  # to drill, weigh and write down


@dataclass(frozen=True)
class CutWork:
    """Amounts of cutting and trimming that the clock follows from.

    Attributes
    ----------
    pieces : int
        Of cloth.
    cloth_mm, trim_mm : float, mm
        Cut lines of the cloth, and of the part.
    bagged : bool
        Whether a bag is closed over the wet laminate.
    """

    pieces: int
    cloth_mm: float
    trim_mm: float
    bagged: bool


def layup_run(work: CutWork, shop: ShopPlan) -> list[list[Span]]:
    """Return the runs of work from the cut cloth to the trimmed part."""
    mix, cure = shop.mix, shop.cure
    bag = _BAG_MINUTES if work.bagged else 0.0
    gel, hard = 60.0 * cure.trim_from_hours, 60.0 * cure.trim_until_hours
    demould, done = 60.0 * cure.demould_hours, 60.0 * cure.finish_hours
    fills = [cup for cup in mix.cups if not cup.plies and cup.uses[0].startswith("fill")]
    run = [
        Span("Lay up" + (" and close the bag" if work.bagged else ""), mix.laying_minutes + bag),
        Span(
            "Cut the edge with a knife",
            _KNIFE_PER_METRE * work.trim_mm / 1000.0,
            earliest=gel,
            latest=hard,
        ),
        *(
            Span(cup.uses[0].capitalize(), cup.hands_minutes, earliest=cup.stir_at_minutes)
            for cup in fills
        ),
    ]
    off = Span("Take the part off the mould", _DEMOULD_MINUTES, earliest=demould)
    if cure.post_cure_start is not None:
        warm = Span(
            "Post-cure",
            0.0,
            60.0 * ((cure.post_cure_end or 0.0) - cure.post_cure_start),
            earliest=60.0 * cure.post_cure_start,
        )
        run += [off, warm] if cure.demould_hours < (cure.post_cure_end or 0.0) else [warm, off]
    else:
        run.append(off)
    run.append(Span("Wait until it is cured", 0.0, earliest=done))
    run.append(
        Span(
            "Saw and sand to the line, drill, weigh, record",
            _RECORD_MINUTES + _SAW_PER_METRE * work.trim_mm / 1000.0,
        )
    )
    cut = Span(
        "Cut and weigh the cloth",
        _PIECE_MINUTES * work.pieces + _CUT_PER_METRE * work.cloth_mm / 1000.0,
    )
    return [[cut], run]


def shopping_items(
    rolls: dict[str, float],
    plastic: str,
    print_g: float,
    glue_g: float,
    mix: MixPlan,
    finish: FinishPlan | None,
    coats: CoatingPlan,
    strips: StripPlan | None,
    bag: BagPlan | None,
    trim: TrimPlan,
    consumables: ConsumableList,
    cores: dict[str, float],
) -> tuple[ShoppingItem, ...]:
    """Return all that is bought for one part and its mould; what there is none of is left out.

    Parameters
    ----------
    rolls : dict of str to float, mm
        Length cut off each roll.
    plastic : str
    print_g, glue_g : float, g
        Of the tiles, and of the glue in their seams.
    mix, finish, coats, strips, bag, trim, consumables
        Plans of the corners; None where there is none.
    cores : dict of str to float, mm^2
        Area of each core sheet.
    """
    once = Paid.ONCE
    items = [
        *(ShoppingItem(cloth, _up(length / 1000.0), "m") for cloth, length in rolls.items()),
        *(
            ShoppingItem(core, _up(_SHEET_LOST * area * 1e-6), "m^2")
            for core, area in cores.items()
        ),
        ShoppingItem("Resin", _up(mix.resin_g / 1000.0), "kg"),
        ShoppingItem("Hardener", _up(mix.hardener_g / 1000.0), "kg"),
        ShoppingItem(f"Filament {plastic}", _up(print_g / 1000.0), "kg", once),
        ShoppingItem("Glue", _whole(glue_g), "g", once),
    ]
    if finish is not None:
        items += [
            ShoppingItem("Filler", _whole(finish.filler_g), "g", once),
            ShoppingItem("Primer", _whole(finish.primer_g), "g", once),
            ShoppingItem("Sealer", _whole(finish.sealer_g), "g", once),
            ShoppingItem(
                f"Abrasive paper, {' '.join(finish.sheets)}",
                float(sum(finish.sheets.values())),
                "sheets",
                once,
            ),
        ]
    items += [
        ShoppingItem("Release wax", _whole(coats.wax_g), "g"),
        ShoppingItem("Release film to spray", _whole(coats.film_g), "g"),
    ]
    if strips is not None:
        layers = coats.tape_layers
        items.append(ShoppingItem("Release tape", _up(layers * strips.total_mm / 1000.0), "m"))
    if bag is not None:
        items += [
            ShoppingItem(piece.item, _up(piece.bought_mm2 * 1e-6), "m^2") for piece in bag.pieces
        ]
        items += [
            ShoppingItem("Sealant tape", _up(bag.tape_bought_mm / 1000.0), "m"),
            ShoppingItem("Resin hose", _up(bag.hose_mm / 1000.0), "m"),
        ]
    tape = trim.cloth_tape_mm + trim.part_tape_mm
    items.append(ShoppingItem("Masking tape", _up(tape / 1000.0), "m"))
    items += [ShoppingItem(each.item, each.amount, each.unit) for each in consumables.items]
    return tuple(item for item in items if item.amount > 0.0)


def hour_items(
    print_hours: float, mould_minutes: float, timeline: Timeline
) -> tuple[ShoppingItem, ...]:
    """Return hours of printer and hands, for whoever puts a price on them.

    Parameters
    ----------
    print_hours : float, hours
    mould_minutes : float, minutes
        Of hands on the mould, done once.
    timeline : Timeline
        Whose hands work on mould and part together.
    """
    part = (timeline.hands_minutes - mould_minutes) / 60.0
    items = (
        ShoppingItem("Hours of the printer", _tenth(print_hours), "h", Paid.ONCE),
        ShoppingItem("Hours of work on the mould", _tenth(mould_minutes / 60.0), "h", Paid.ONCE),
        ShoppingItem("Hours of work on the part", _tenth(part), "h"),
    )
    return tuple(item for item in items if item.amount > 0.0)


def _tenth(hours: float) -> float:
    return round(hours, 1)


def _up(amount: float) -> float:
    """Round up to two figures after the point."""
    return math.ceil(amount * 100.0 - 1e-9) / 100.0


def _whole(amount: float) -> float:
    return float(math.ceil(amount))
