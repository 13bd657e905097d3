"""Strips of cloth beyond the pieces of an edge, and what fills the corners between them."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import Polygon

from laywright.arrays import Array, FloatArray

__all__ = [
    "Pieces",
    "outside",
    "pieces_of",
    "pointed_corner",
    "quarter_steps",
    "round_corner",
    "strips",
]

_NO_LENGTH = 1e-9
_POINTED = 1.5


@dataclass(frozen=True, eq=False)
class Pieces:
    """The straight pieces of a line, those without length left out.

    Attributes
    ----------
    starts, ends : (k, 2) float, mm
    normals : (k, 2) float
        Unit direction to the right of each: outwards, where the part lies on the left.
    """

    starts: FloatArray
    ends: FloatArray
    normals: FloatArray


def pieces_of(points: FloatArray) -> Pieces:
    """Return the pieces of a line through points, (n, 2) float, mm."""
    along = np.diff(points, axis=0)
    kept = np.concatenate([[True], np.hypot(*along.T) > _NO_LENGTH])
    line: FloatArray = points[kept]
    along = np.diff(line, axis=0)
    normals = np.stack([along[:, 1], -along[:, 0]], axis=1) / np.hypot(*along.T)[:, None]
    return Pieces(line[:-1], line[1:], normals)


def strips(pieces: Pieces, widths: FloatArray) -> list[Polygon]:
    """Return the strip of cloth outside each piece of an edge, `widths` wide, (k,) mm."""
    outwards = widths[:, None] * pieces.normals
    corners = [pieces.starts, pieces.ends, pieces.ends + outwards, pieces.starts + outwards]
    shapes = zip(np.stack(corners, axis=1), widths, strict=True)
    return [Polygon(strip) for strip, width in shapes if width > 0.0]


def outside(points: FloatArray, width: float, deviation: float) -> list[Polygon]:
    """Return the strip of one width to the right of a line."""
    pieces = pieces_of(points)
    normals = pieces.normals
    found = strips(pieces, np.full(len(normals), width))
    for index in range(1, len(normals)):
        both = normals[index - 1], normals[index]
        found += round_corner(pieces.starts[index], both, width, 0.5 * deviation)
    return found


def quarter_steps(radius: float, deviation: float) -> int:
    """Return into how many straight pieces a quarter circle is drawn, each within a deviation."""
    share = min(deviation / abs(radius), 0.5)
    return max(2, math.ceil(0.25 * math.pi / math.acos(1.0 - share)))


def round_corner(
    point: Array, normals: tuple[Array, Array], width: float, deviation: float
) -> list[Polygon]:
    """Return the sector that fills an outer corner between strips of one width.

    Parameters
    ----------
    point : (2,) float, mm
    normals : pair of (2,) float
        Unit directions outwards of the pieces before and after.
    width : float, mm
    deviation : float, mm
        Largest distance between the arc and the straight pieces that draw it.
    """
    one, other = normals
    turn = _turn(one, other)
    if turn <= _NO_LENGTH or width <= _NO_LENGTH:
        return []  # an inner corner has no gap
    count = math.ceil(turn / (0.5 * math.pi) * quarter_steps(width, deviation))
    turns = math.atan2(one[1], one[0]) + turn * np.arange(1, count) / count
    arc = point + width * np.stack([np.cos(turns), np.sin(turns)], axis=1)
    return [Polygon([point, point + width * one, *arc, point + width * other])]


def pointed_corner(
    point: Array, normals: tuple[Array, Array], widths: tuple[float, float]
) -> list[Polygon]:
    """Return what fills an outer corner between strips of any widths, up to their crossing."""
    one, other = normals
    if _turn(one, other) <= _NO_LENGTH:
        return []
    first, second = widths
    hull = [point, point + first * one, point + second * other]
    tip = np.linalg.solve(np.stack([one, other]), [first, second])
    if np.hypot(*tip) <= _POINTED * max(first, second):
        hull.append(point + tip)
    corner = shapely.MultiPoint(hull).convex_hull
    return [corner] if isinstance(corner, Polygon) else []


def _turn(one: Array, other: Array) -> float:
    return math.atan2(one[0] * other[1] - one[1] * other[0], float(one @ other))
