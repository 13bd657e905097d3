"""Patterns that are the same for the shears: one drawing of them is enough."""

from __future__ import annotations

import math
from collections.abc import Sequence

import shapely
from shapely.geometry import LinearRing

from laywright.cloth.patterns.pattern import Pattern

__all__ = ["ALIKE", "alike_groups"]

ALIKE = 1.0
"""Patterns whose cut lines come this close to each other everywhere count as the same, mm:
a small part of the margin."""


def alike_groups(patterns: Sequence[Pattern], within: float = ALIKE) -> tuple[tuple[int, ...], ...]:
    """Return which patterns are alike.

    They are of the same cloth and ply angle, have as many openings and slits, and their cut
    lines, laid on each other by their start points, come within a distance of each other.

    Parameters
    ----------
    patterns : sequence of Pattern
        The patterns.
    within : float, mm
        That distance.

    Returns
    -------
    tuple of tuple of int
        Groups of places in `patterns`, each led by its largest pattern, in the order in which
        their first members come.
    """
    groups: list[list[int]] = []
    for index, pattern in enumerate(patterns):
        for group in groups:
            if _alike(patterns[group[0]], pattern, within):
                group.append(index)
                break
        else:
            groups.append([index])
    return tuple(
        tuple(sorted(group, key=lambda index: (-patterns[index].area, index))) for group in groups
    )


def _alike(one: Pattern, other: Pattern, within: float) -> bool:
    if (
        one.cloth != other.cloth
        or abs(math.remainder(one.angle - other.angle, 2.0 * math.pi)) > 1e-6
        or len(one.openings) != len(other.openings)
        or len(one.slits) != len(other.slits)
    ):
        return False
    lines = zip((one.cut, *one.openings), (other.cut, *other.openings), strict=True)
    return all(
        shapely.hausdorff_distance(
            LinearRing(first - one.datum), LinearRing(second - other.datum), densify=0.05
        )
        <= within
        for first, second in lines
    )
