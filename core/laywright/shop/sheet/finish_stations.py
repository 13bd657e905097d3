"""The stations of the job sheet after the layup: cure, trim, record."""

from __future__ import annotations

import numpy as np

from laywright.files.charts import Curve, Level, line_chart
from laywright.files.drawing import Drawing
from laywright.files.page import Note, Picture, Station, Steps, Table
from laywright.shop.bench.summaries import (
    LaminateSummary,
    PartSummary,
)
from laywright.shop.bench.trim import TrimPlan
from laywright.shop.curing.cure import CurePlan
from laywright.shop.plan import ShopPlan
from laywright.shop.record.hardness import HardnessScale
from laywright.shop.record.record import BAND
from laywright.shop.sheet import cautions
from laywright.shop.sheet.station_parts import BY_HAND, remarks_of, trimmed_mass

__all__ = ["cure_station", "record_station", "trim_station"]

_AROUND = 33.0  # mm, for what stands above and below the chart's field
_FROZEN = 0.0  # degC, below which the chart leaves the softening out


def cure_station(cure: CurePlan) -> Station:
    """Return the page of the oven clock."""
    rows = tuple(
        (
            event.what,
            f"{event.hours:.1f}",
            "-" if event.cure is None else f"{100.0 * event.cure:.0f}",
            "-" if event.glass_transition_c is None else f"{event.glass_transition_c:.0f}",
            BY_HAND,
        )
        for event in cure.events
    )
    return Station(
        "Cure",
        cautions.CURE,
        (
            Table(
                f"Times from the first stir, shop at {cure.temperature_c:g} °C",
                ("What", "After, h", "Cure, %", "Part softens near, °C", "Clock time"),
                rows,
            ),
            Picture(
                "Temperature of shop and oven, and where the part softens",
                _clock(cure),
                _field_height(cure) + _AROUND,
            ),
            Note(
                f"The cured part softens near {cure.glass_transition_c:.0f} °C. The mould softens "
                f"at {cure.mould_softening_c:.0f} °C and must stay below {cure.mould_limit_c:.0f} "
                f"°C. If no heat got out, a cup would reach {cure.cup_bound_c:.0f} °C and a thick "
                f"laminate {cure.laminate_bound_c:.0f} °C: upper bounds, no forecast. Degree of "
                "cure and softening are estimates from generic values."
            ),
            *remarks_of(cure.warnings),
            Steps(cure.steps),
        ),
    )


def trim_station(cure: CurePlan, trim: TrimPlan) -> Station:
    """Return the page of knife and saw."""
    guide = f"The trim line is {trim.line_mm / 1000.0:.2f} m long"
    guide += f", the edges of the holes {trim.holes_mm / 1000.0:.2f} m" if trim.holes else ""
    holes = (
        Table(
            "Holes",
            ("Hole", "Centre x, y, z, mm", "Diameter, mm", "Out of round, mm", "Done"),
            tuple(
                (
                    f"H{hole.number}",
                    ", ".join(f"{x:.1f}" for x in hole.centre),
                    f"{hole.diameter:.1f}" if hole.is_round else "not round",
                    f"{hole.out_of_round:.2f}",
                    BY_HAND,
                )
                for hole in trim.holes
            ),
        ),
    )
    return Station(
        "Trim",
        cautions.TRIM,
        (
            Picture("Trim line and holes, seen along the pull", trim.picture, 70.0),
            Note(f"{guide}. Tape along it takes {trim.part_tape_mm / 1000.0:.1f} m."),
            *(holes if trim.holes else ()),
            Steps(
                (
                    f"With a knife, {cure.trim_from_hours:.1f} to {cure.trim_until_hours:.1f} h "
                    "after the first stir: cut along the scribe line. Gloves, it is not cured.",
                    "Loosen all edges with thin wedges before you pull; no metal on the moulded "
                    "face. Weigh the untrimmed part and write it down.",
                    f"Saw, disc or paper: only when fully cured, after {cure.finish_hours:.0f} h.",
                    "Tape along the line, stay outside it, then sand to it, wet.",
                    "Drill against wood, with a sharp drill and little pressure; start small.",
                    "Seal cut edges with a thin coat of mix against water.",
                )
            ),
        ),
    )


def record_station(part: PartSummary, laminate: LaminateSummary, shop: ShopPlan) -> Station:
    """Return the page on which planned and found stand side by side."""
    mix, cure = shop.mix, shop.cure
    whole = mix.untrimmed_g + shop.core_g
    fibre = 100.0 * (1.0 - mix.resin_share)
    low, high = HardnessScale.SHORE_D.usual
    rows = (
        ("Dry cloth", f"{mix.cloth_g:.1f} g"),
        ("Resin and hardener mixed", f"{mix.mix_g:g} g"),
        (
            "Mix left over in cups and tools",
            f"{mix.mix_g + mix.cloth_g + shop.core_g - whole - mix.coupon_g:.1f} g",
        ),
        ("Part before trimming", f"{whole:.1f} g"),
        ("Good work by hand", f"{whole * (1 - BAND):.0f} to {whole * (1 + BAND):.0f} g"),
        ("Part after trimming", f"{trimmed_mass(part, laminate):.1f} g"),
        ("Cloth over untrimmed part, by mass", f"{fibre:.0f} %"),
        ("Thickness at five places, away from laps", f"{laminate.thickness:.2f} mm"),
        ("From the first stir to the last ply", f"{mix.laying_minutes:.0f} min"),
        ("Gelled after", f"{cure.gel_hours:.1f} h"),
        ("Off the mould after", f"{cure.demould_hours:.1f} h"),
        ("Temperature of the shop", f"{cure.temperature_c:g} °C"),
        ("Hardness at five places, Shore D", f"{low:.0f} to {high:.0f} is usual"),
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
                    )
                ),
            ),
            Table("Signed", ("Name", "Date"), ((BY_HAND, BY_HAND),)),
            Note(
                "Enter what was found into the Weigh-in of the job: accepted records teach the "
                "next plan. Keep this sheet with the part."
            ),
        ),
    )


def _field_height(cure: CurePlan) -> float:
    """Return the height of the chart's field, mm: a post-cure has more lines beside it."""
    return 40.0 if cure.post_cure_end is None else 28.0


def _clock(cure: CurePlan) -> Drawing:
    """Return temperature and softening over time, with the moments that matter."""
    end = max(1.5 * cure.demould_hours, 1.1 * (cure.post_cure_end or 0.0))
    hours = cure.profile.grid(end)
    curves = [Curve("shop or oven", np.column_stack([hours, cure.profile.at(hours)]))]
    if cure.course is not None:
        softens = np.interp(hours, cure.course.hours, cure.course.glass_transition_c)
        warm = softens > _FROZEN
        curves.append(Curve("the part softens", np.column_stack([hours, softens])[warm]))
    marks = [Level("gelled", cure.gel_hours), Level("too hard for a knife", cure.trim_until_hours)]
    marks.append(Level("may leave the mould", cure.demould_hours))
    return line_chart(
        "Cure",
        "hours after the first stir, h",
        "temperature, °C",
        tuple(curves),
        (Level("the mould must stay below this", cure.mould_limit_c),),
        marks=tuple(marks),
        size=(150.0, _field_height(cure)),
    )
