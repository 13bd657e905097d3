"""Strips of cloth beside the lines of a flat outline, and what mends the outline after them."""

from __future__ import annotations

from shapely.geometry import LineString
from shapely.geometry.base import BaseGeometry

from laywright.arrays import FloatArray

__all__ = ["HAIRLINE", "healed", "margin_strip"]

HAIRLINE = 0.02
"""Half the width of a gap or a tongue that rounding leaves and nobody can cut, mm; our choice."""

_QUARTER = 8
"""Straight pieces of a quarter circle round the end of a line: at a margin of 30 mm they lie
0.15 mm within the circle; our own choice."""


def margin_strip(points: FloatArray, margin: float) -> BaseGeometry:
    """Return the cloth within a margin, mm, of a line, (k, 2) float, mm, round at its ends."""
    return LineString(points).buffer(margin, _QUARTER)


def healed(shape: BaseGeometry) -> BaseGeometry:
    """Return a shape without the hairlines that rounding leaves between its parts."""
    wide = shape.buffer(HAIRLINE, join_style="mitre")
    return wide.buffer(-HAIRLINE, join_style="mitre")
