"""The cut list, every piece in the order of cutting, and where patterns land on the mould."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from laywright.arrays import Vector
from laywright.cloth.patterns.landing import landings
from laywright.cloth.patterns.pattern import Pattern, PatternSet
from laywright.cloth.roll.roll_drawing import roll_drawing
from laywright.cloth.roll.roll_layout import RollLayout, RollPlan, placed_outline
from laywright.files.csv import csv_bytes
from laywright.shop.bench.roll_summary import CutLine, LandingLine, RollLine

__all__ = ["cut_lines", "cut_table", "landing_lines", "roll_lines"]

_SMALL = ("left over", "unused edge", "check bar", "warp")  # not on the small picture


def cut_lines(layout: RollLayout, patterns: Sequence[Pattern]) -> tuple[CutLine, ...]:
    """Return the pieces of a length of cloth in the order of cutting.

    Parameters
    ----------
    layout : RollLayout
        The roll or offcut.
    patterns : sequence of Pattern
        All patterns of the job.
    """
    lines = []
    for number, placement in enumerate(layout.placements, 1):
        pattern = patterns[placement.pattern]
        outline = placed_outline(pattern, placement)
        (along, across), (long, wide) = outline.min(axis=0), np.ptp(outline, axis=0)
        lines.append(
            CutLine(
                number,
                placement.name,
                placement.ply,
                pattern.angle,
                (float(along), float(across)),
                (float(long), float(wide)),
                placement.face_down,
                placement.turned,
            )
        )
    return tuple(lines)


def roll_lines(roll: RollPlan, patterns: Sequence[Pattern]) -> tuple[RollLine, ...]:
    """Return every length of cloth for the sheet, offcuts first."""
    return tuple(
        RollLine(
            layout.title,
            layout.width,
            layout.length,
            layout.share_used,
            roll_drawing(layout, patterns).without(*_SMALL),
            layout.to_buy,
            (layout.tape_20, layout.tape_50),
            tuple((b - a, high - low) for a, b, low, high in layout.left_over),
            cut_lines(layout, patterns),
        )
        for layout in roll.layouts
    )


def landing_lines(patterns: PatternSet, pull: Vector) -> tuple[LandingLine, ...]:
    """Return where the patterns land on the mould, for the sheet."""
    return tuple(
        LandingLine(
            ", ".join(landing.names),
            (float(landing.start[0]), float(landing.start[1])),
            tuple((word, (float(p[0]), float(p[1]))) for word, p in landing.notches.items()),
        )
        for landing in landings(patterns, pull)
    )


def cut_table(roll: RollPlan, patterns: Sequence[Pattern]) -> bytes:
    """Return the cut list as comma-separated text."""
    head = (
        "from",
        "number",
        "piece",
        "ply",
        "angle (deg)",
        "begins along the warp (mm)",
        "begins across (mm)",
        "length (mm)",
        "width (mm)",
        "face",
        "warp arrow",
    )
    rows = [
        (
            layout.title,
            line.number,
            line.piece,
            line.ply,
            round(float(np.degrees(line.angle)), 3),
            round(line.at[0], 1),
            round(line.at[1], 1),
            round(line.size[0], 1),
            round(line.size[1], 1),
            "down" if line.face_down else "up",
            "back to the free end" if line.turned else "away from the free end",
        )
        for layout in roll.layouts
        for line in cut_lines(layout, patterns)
    ]
    return csv_bytes(head, rows)
