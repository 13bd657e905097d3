"""A pattern that is wider than its roll: where it could be split along the warp."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np

from laywright.cloth.patterns.pattern import Pattern
from laywright.cloth.roll.roll_layout import Strip
from laywright.cloth.roll.roll_settings import lap_of

__all__ = ["proposal", "strips_for"]


def strips_for(pattern: Pattern, usable: float) -> tuple[Strip, ...]:
    """Return the strips that a pattern is split into, all equally wide, lapping each other.

    Parameters
    ----------
    pattern : Pattern
        Wider across the warp than the roll.
    usable : float, mm
        What the roll offers.

    Returns
    -------
    tuple of Strip
        As few as there can be, from the lowest y up; neighbours share the lap.
    """
    low, high = float(pattern.cut[:, 1].min()), float(pattern.cut[:, 1].max())
    lap = min(lap_of(pattern.weave), 0.5 * usable)
    count = max(1, math.ceil((high - low - lap) / (usable - lap) - 1e-9))
    width = (high - low + (count - 1) * lap) / count
    starts = low + np.arange(count) * (width - lap)
    return tuple((float(start), float(start) + width) for start in starts)


def proposal(pattern: Pattern, usable: float) -> str:
    """Return the split in words."""
    strips = strips_for(pattern, usable)
    lap = strips[0][1] - strips[1][0]
    seams = [0.5 * (one[1] + two[0]) for one, two in pairwise(strips)]
    places = " and ".join(f"{round(seam - float(pattern.datum[1])) + 0:+d}" for seam in seams)
    joint = f"lapped by {lap:.0f} mm" if lap > 0.0 else "laid edge to edge"
    return (
        f"{len(strips)} strips of {strips[0][1] - strips[0][0]:.0f} mm along the warp, {joint}, "
        f"with the seam {places} mm to the left of the start point seen along the warp"
    )
