"""The job sheet: one station per page, from the drawing to the record, with tick boxes.

The sheet goes with the part through the shop.  It holds what is needed at each place and the
cautions that matter there, blanks for what is weighed and timed by hand, and on every page
the code by which a person sees whether it still belongs to the job.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace

from laywright.errors import InputError
from laywright.files.drawing import Drawing, Label
from laywright.files.page import Block, Cards, Note, Sheet, Station, Steps, Table
from laywright.shop.bench.bench import BenchPlan
from laywright.shop.bench.roll_summary import RollLine
from laywright.shop.bench.summaries import (
    LaminateSummary,
    PartSummary,
    PatternLine,
    PlyLine,
    ReleaseSummary,
    TileLine,
    TileSummary,
)
from laywright.shop.plan import ShopPlan
from laywright.shop.sheet import (
    cautions,
    cloth_stations,
    finish_stations,
    mould_stations,
    plan_stations,
)
from laywright.shop.sheet.bag_station import bag_station
from laywright.shop.sheet.coupon_station import coupon_station
from laywright.shop.sheet.laminate_station import laminate_station

__all__ = [
    "JobSheet",
    "LaminateSummary",
    "PartSummary",
    "PatternLine",
    "PlyLine",
    "ReleaseSummary",
    "RollLine",
    "TileLine",
    "TileSummary",
    "make_sheet",
    "version_code",
]

_PRINTED = {
    "degC": "°C",
    "mm^2": "mm²",
    "mm^3": "mm³",
    "m^2": "m²",
    "m^3": "m³",
    "cm^2": "cm²",
    "cm2": "cm²",
    "cm^3": "cm³",
}
_UNITS = re.compile("|".join(rf"\b{re.escape(unit)}(?![\w^])" for unit in _PRINTED))
_ZEROS = re.compile(r"(?<![\w.])-(?=0(?:\.0+)?(?!\.?\w))")  # the sign of a zero
_HELD = re.compile(r"(?<=\d) (?=(mm|g|m|h|min|g/m²|°C|%)\b)")  # a number stays with its unit


@dataclass(frozen=True, eq=False)
class JobSheet:
    """The job sheet, ready for the PDF and the HTML writer.

    Attributes
    ----------
    sheet : Sheet
        Its pages.
    bench : BenchPlan
        Everything around the laminate.
    digest : str
        Of its inputs.
    """

    sheet: Sheet
    bench: BenchPlan
    digest: str = ""


def version_code(digest: str) -> str:
    """Return the code that is printed for a digest.

    Examples
    --------
    >>> version_code("3f2a77c09b1e4d55")
    '3f2a77c0'
    """
    return digest[:8]


def make_sheet(
    name: str,
    part: PartSummary,
    release: ReleaseSummary,
    laminate: LaminateSummary,
    tiles: TileSummary,
    patterns: tuple[PatternLine, ...],
    rolls: tuple[RollLine, ...],
    shop: ShopPlan,
    bench: BenchPlan,
    version: str,
) -> JobSheet:
    """Return the job sheet of a job.

    Parameters
    ----------
    name : str
        Name of the job.
    part, release, laminate, tiles : PartSummary, ReleaseSummary, LaminateSummary, TileSummary
        What the other rooms found, in short.
    patterns : tuple of PatternLine
        One for each piece to be cut.
    rolls : tuple of RollLine
        One for each roll.
    shop : ShopPlan
        Mixing and curing.
    bench : BenchPlan
        Everything around the laminate.
    version : str
        Code that is printed on every page, see `version_code`.

    Returns
    -------
    JobSheet
        Stations: part and check, laminate if there are details of it, clock, shopping list,
        print, assemble and seal, release, cut cloth, mix, lay up, bag if there is one, cure,
        trim, coupons if there are any, record.

    Raises
    ------
    InputError
        If the job has no name, or the mixing plan is for other plies than the laminate's.
    """
    if not name.strip():
        raise InputError("the job", "no name", "a name", "give the job a name")
    unknown = set(shop.mix.ply_numbers) - {ply.ply for ply in laminate.plies}
    if unknown:
        raise InputError(
            "the job sheet",
            f"a mixing plan for ply {min(unknown)}",
            f"plies 1 to {len(laminate.plies)} of the laminate",
            "plan the mixing again",
        )
    sheet = Sheet(
        title=name,
        version=version,
        stations=tuple(
            _spelled(station)
            for station in (
                mould_stations.part_station(part, release, laminate),
                *(() if laminate.details is None else (laminate_station(laminate.details),)),
                plan_stations.clock_station(bench.timeline),
                plan_stations.shopping_station(bench.shopping),
                mould_stations.print_station(tiles, shop.cure),
                mould_stations.assemble_station(tiles, bench.finish),
                mould_stations.release_station(release, bench.coats, bench.strips),
                cloth_stations.cut_station(patterns, rolls),
                cloth_stations.mix_station(laminate, shop.mix),
                cloth_stations.lay_up_station(laminate, shop.mix),
                *(() if bench.bag is None else (bag_station(bench.bag, bench.soaked_remarks),)),
                finish_stations.cure_station(shop.cure),
                finish_stations.trim_station(shop.cure, bench.trim),
                *(() if shop.coupons is None else (coupon_station(shop.coupons),)),
                finish_stations.record_station(part, laminate, shop),
            )
        ),
        foot=cautions.ESTIMATES,
    )
    return JobSheet(sheet, bench)


def _spelled(station: Station) -> Station:
    """Return a station with units as printed and no negative zero, in its pictures too."""

    def spelled(texts: Iterable[str]) -> tuple[str, ...]:
        return tuple(
            _ZEROS.sub("", _UNITS.sub(lambda found: _PRINTED[found[0]], text)) for text in texts
        )

    def lettered(drawing: Drawing) -> Drawing:
        return replace(
            drawing,
            shapes=tuple(
                replace(shape, text=spelled([shape.text])[0]) if isinstance(shape, Label) else shape
                for shape in drawing.shapes
            ),
        )

    blocks: list[Block] = []
    for block in station.blocks:
        if isinstance(block, Note):
            blocks.append(Note(spelled([block.text])[0]))
        elif isinstance(block, Steps):
            blocks.append(Steps(spelled(block.items)))
        elif isinstance(block, Table):
            rows = tuple(spelled(row) for row in block.rows)
            blocks.append(Table(spelled([block.heading])[0], spelled(block.columns), rows))
        elif isinstance(block, Cards):
            cards = tuple(
                replace(
                    card,
                    lines=tuple(_HELD.sub("\u00a0", line) for line in spelled(card.lines)),
                    drawing=None if card.drawing is None else lettered(card.drawing),
                )
                for card in block.cards
            )
            blocks.append(Cards(block.heading, cards))
        else:
            drawing = lettered(block.drawing)
            blocks.append(replace(block, caption=spelled([block.caption])[0], drawing=drawing))
    return Station(station.title, station.cautions, tuple(blocks))
