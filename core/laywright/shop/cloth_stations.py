"""The stations of the job sheet from roll to mould: cut cloth, mix, lay up."""

from __future__ import annotations

import math

from laywright.files.framing import gathered
from laywright.files.page import Block, Note, Picture, Station, Steps, Table
from laywright.shop import cautions
from laywright.shop.mix import MixPlan
from laywright.shop.station_parts import ANGLES, BY_HAND, pictured, remarks_of
from laywright.shop.summaries import (
    LaminateSummary,
    PatternLine,
    RollLine,
)

__all__ = ["cut_station", "lay_up_station", "mix_station"]

_PATTERNS = 6  # pictures of patterns on a page


def cut_station(patterns: tuple[PatternLine, ...], rolls: tuple[RollLine, ...]) -> Station:
    """Return the page of shears and scale."""
    blocks: list[Block] = [
        Table(
            "Rolls",
            ("Cloth", "Width of the roll, mm", "Length to be cut, mm", "Used, %"),
            tuple(
                (r.cloth, f"{r.width:.0f}", f"{r.length:.0f}", f"{100.0 * r.share_used:.0f}")
                for r in rolls
            ),
        )
    ]
    for roll in rolls:
        blocks += pictured(f"{roll.cloth}: the warp runs along the roll", roll.drawing, 60.0)
    blocks += [
        Steps(
            (
                "Paper patterns: both bars on every page must measure 100 mm.",
                "Lay each pattern with its warp arrow along the roll and the written side up.",
                "Tape over the cut line, then cut; write ply and arrow on the tape.",
                "Weigh every piece before any resin is poured and write it down.",
            )
        ),
        Table(
            "Weigh-in of the dry cloth",
            ("Ply", "Cloth", "Angle, °", "Area, m²", "Planned, g", "Weighed, g", "By"),
            tuple(
                (
                    f"{p.ply}",
                    p.cloth,
                    f"{math.degrees(p.angle):.0f}",
                    f"{p.area * 1e-6:.4f}",
                    f"{p.mass:.1f}",
                    BY_HAND,
                    BY_HAND,
                )
                for p in patterns
            ),
        ),
        Table(
            "What the drape asks of the cloth",
            ("Ply", "Largest shear, °", "Area past locking, %"),
            tuple(
                (
                    f"{p.ply}",
                    f"{math.degrees(p.largest_shear):.1f}",
                    f"{100.0 * p.locked_share:.1f}",
                )
                for p in patterns
            ),
        ),
        Note(f"{ANGLES} Where area is past locking, expect wrinkles: cut a dart or a splice."),
    ]
    shown = [p.drawing.without("check bar") for p in patterns if p.drawing is not None]
    for start in range(0, len(shown), _PATTERNS):
        some = gathered("Patterns", shown[start : start + _PATTERNS])
        blocks.append(Picture("Patterns with their arrows", some, 190.0))
    return Station("Cut cloth", cautions.CUT, tuple(blocks))


def mix_station(laminate: LaminateSummary, mix: MixPlan) -> Station:
    """Return the page of scale and cups."""
    cups = tuple(
        (
            f"{cup.number}",
            ", ".join(str(ply) for ply in cup.plies),
            f"{cup.scale_after_resin:g}",
            f"{cup.scale_after_hardener:g}",
            f"{cup.use_by_minutes:.0f}",
            BY_HAND,
            BY_HAND,
        )
        for cup in mix.cups
    )
    columns = (
        "Cup",
        "Ply",
        "Scale after resin, g",
        "Scale after hardener, g",
        "Use within, min",
        "Stirred at",
        "Empty at",
    )
    return Station(
        "Mix",
        cautions.MIX,
        (
            Note(
                f"{laminate.resin}. In all {mix.resin_g:g} g of resin and {mix.hardener_g:g} g of "
                f"hardener, {mix.mix_g:g} g together, for {mix.cloth_g:.1f} g of dry cloth."
            ),
            Table("The same ratio in three ways", ("Ratio",), tuple((t,) for t in mix.ratio_texts)),
            Table("Cups: scale set to zero with the empty cup on it", columns, cups),
            *remarks_of(mix.remarks),
            Steps(mix.steps),
            Table(
                "Batches",
                ("What", "Product", "Batch number", "Temperature, °C"),
                (("Resin", *(BY_HAND,) * 3), ("Hardener", *(BY_HAND,) * 3)),
            ),
        ),
    )


def lay_up_station(laminate: LaminateSummary, mix: MixPlan) -> Station:
    """Return the page of the mould: ply after ply."""
    cups = {ply: f"{cup.number}" for cup in reversed(mix.cups) for ply in cup.plies}
    rows = tuple(
        (
            f"{ply.ply}",
            ply.cloth if ply.name in ("", f"ply {ply.ply}") else f"{ply.cloth} ({ply.name})",
            f"{math.degrees(ply.angle):.0f}",
            f"{ply.thickness:.2f}",
            cups.get(ply.ply, "-"),
            BY_HAND,
            BY_HAND,
        )
        for ply in laminate.plies
    )
    columns = ("Ply", "Cloth", "Angle, °", "Thickness, mm", "Cup", "Laid at", "By")
    return Station(
        "Lay up",
        cautions.LAY_UP,
        (
            Note(ANGLES),
            Table("Plies in the order of laying", columns, rows),
            Steps(
                (
                    "Brush a thin coat of mix onto the mould.",
                    "Lay the ply with its centre mark on the start point and its arrow along the "
                    "datum; work outwards from there.",
                    "Wet it out from below, press it into every corner, take off what is surplus: "
                    "the cloth looks wet, not shiny.",
                    "Look for bridges in corners, dry spots and air before the next ply.",
                    "Tick the ply off in the table before the next one is taken up.",
                    "Keep laps away from the seams of the mould and from each other.",
                )
            ),
            Table(
                "Shop",
                ("When", "Temperature, °C", "Humidity, %"),
                (("At the start", BY_HAND, BY_HAND), ("At the end", BY_HAND, BY_HAND)),
            ),
        ),
    )
