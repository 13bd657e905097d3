"""The stations of the job sheet after the layup: cure, trim, record."""

from __future__ import annotations

import numpy as np

from laywright.files.charts import Curve, Level, line_chart
from laywright.files.drawing import Drawing
from laywright.files.page import Note, Picture, Station, Steps, Table
from laywright.shop import cautions
from laywright.shop.cure import CurePlan
from laywright.shop.plan import ShopPlan
from laywright.shop.station_parts import BY_HAND, remarks_of, trimmed_mass
from laywright.shop.summaries import (
    LaminateSummary,
    PartSummary,
)

__all__ = ["cure_station", "record_station", "trim_station"]


def cure_station(cure: CurePlan) -> Station:
    """Return the page of the clock."""
    rows = (
        ("Pot life in the cup", f"{cure.pot_life_minutes:.0f} min", BY_HAND),
        ("Gelled", f"{cure.gel_hours:.1f} h", BY_HAND),
        (
            "Edge can be cut with a knife",
            f"{cure.trim_from_hours:.1f} to {cure.trim_until_hours:.1f} h",
            BY_HAND,
        ),
        ("May leave the mould", f"{cure.demould_hours:.1f} h", BY_HAND),
        ("Fully cured", f"{cure.cure_hours:.0f} h", BY_HAND),
    )
    return Station(
        "Cure",
        cautions.CURE,
        (
            Table(
                f"Times from the first stir, at {cure.temperature_c:g} °C",
                ("What", "After", "Clock time"),
                rows,
            ),
            Picture("Temperature of shop and mould, and when what may be done", _clock(cure), 60.0),
            *remarks_of(cure.warnings),
            Steps(cure.steps),
            Note(
                f"The cured resin softens near {cure.glass_transition_c:.0f} °C; the mould must "
                f"stay below {cure.mould_limit_c:.0f} °C."
            ),
        ),
    )


def trim_station(cure: CurePlan) -> Station:
    """Return the page of knife and saw."""
    return Station(
        "Trim",
        cautions.TRIM,
        (
            Steps(
                (
                    f"With a knife, {cure.trim_from_hours:.1f} to {cure.trim_until_hours:.1f} h "
                    "after the first stir: cut along the scribe line. Gloves, it is not cured.",
                    "Weigh the untrimmed part once it is off the mould, and write it down.",
                    "Loosen all edges with thin wedges before you pull; no metal on the moulded "
                    "face.",
                    f"Saw, disc or paper: only when fully cured, after {cure.cure_hours:.0f} h.",
                    "Stay outside the line, then sand to it, wet.",
                    "Seal cut edges with a thin coat of mix against water.",
                )
            ),
        ),
    )


def record_station(part: PartSummary, laminate: LaminateSummary, shop: ShopPlan) -> Station:
    """Return the page on which planned and found stand side by side."""
    untrimmed = shop.mix.cloth_g + shop.mix.laminate_resin_g
    fibre = 100.0 * (1.0 - shop.mix.resin_share)
    rows = (
        ("Dry cloth", f"{shop.mix.cloth_g:.1f} g"),
        ("Resin and hardener mixed", f"{shop.mix.mix_g:g} g"),
        ("Mix left over in cups and tools", f"{shop.mix.mix_g - shop.mix.laminate_resin_g:.1f} g"),
        ("Part before trimming", f"{untrimmed:.1f} g"),
        ("Part after trimming", f"{trimmed_mass(part, laminate):.1f} g"),
        ("Cloth over untrimmed part, by mass", f"{fibre:.0f} %"),
        ("Thickness, place 1", f"{laminate.thickness:.2f} mm"),
        ("Thickness, place 2", f"{laminate.thickness:.2f} mm"),
        ("Thickness, place 3", f"{laminate.thickness:.2f} mm"),
    )
    return Station(
        "Record",
        cautions.RECORD,
        (
            Table(
                "Planned and found",
                ("What", "Planned", "Found"),
                tuple((*row, BY_HAND) for row in rows),
            ),
            Table(
                "What was seen",
                ("Look for", "Where and how much"),
                tuple(
                    (what, BY_HAND)
                    for what in (
                        "Dry spots, pinholes",
                        "Bridges, air",
                        "Wrinkles",
                        "Damage at release",
                        "Bend test of a sample",
                    )
                ),
            ),
            Table("Signed", ("Name", "Date"), ((BY_HAND, BY_HAND),)),
            Note(
                "Enter what was found into the job: it corrects the resin share of the next part. "
                "Keep this sheet with the part."
            ),
        ),
    )


def _clock(cure: CurePlan) -> Drawing:
    """Return the times of the cure along one axis."""
    end = 1.25 * cure.demould_hours
    shop = np.array([[0.0, cure.temperature_c], [end, cure.temperature_c]])
    return line_chart(
        "Cure",
        "hours after the first stir, h",
        "temperature, °C",
        (Curve("shop", shop),),
        (
            Level("the mould must stay below this", cure.mould_limit_c),
            Level("shop", cure.temperature_c),
        ),
        marks=(
            Level("gelled", cure.gel_hours),
            Level("too hard for a knife", cure.trim_until_hours),
            Level("may leave the mould", cure.demould_hours),
        ),
        size=(150.0, 42.0),
    )
