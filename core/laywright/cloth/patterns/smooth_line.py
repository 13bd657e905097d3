"""A smooth line through the corners of a polygon, or of a part of one, but for its sharp corners.

The edge of a mesh is a polygon whose corners lie on the true edge.  Between them the true edge
bulges, and an arc follows it more closely than a straight side does.  Each side is bent by the
smaller of the curvatures at its two ends, so that a circle is met all round and a straight side
that runs into a round corner stays straight.
"""

from __future__ import annotations

import math

import numpy as np

from laywright.arrays import Array, FloatArray, floats

__all__ = ["CORNER", "headings_of_run", "smooth_line", "smooth_run"]

CORNER = math.radians(35.0)
"""A polygon that turns by more than this at a point has a sharp corner there, radians."""

_MOST = 64
_NO_LENGTH = 1e-9
_UNEVEN = 1.6


def smooth_line(points: FloatArray, deviation: float) -> FloatArray:
    """Return a closed line with points put in between where it bends.

    Parameters
    ----------
    points : (k, 2) float, mm
        Corners of a closed polygon, the first not repeated.
    deviation : float, mm
        Largest distance between the smooth line and the straight pieces that draw it.

    Returns
    -------
    (n, 2) float, mm
        All given points and those put in between.
    """
    sides = np.roll(points, -1, axis=0) - points
    lengths = np.hypot(*sides.T)
    kept = lengths > _NO_LENGTH
    points, sides, lengths = points[kept], sides[kept], lengths[kept]
    if len(points) < 4:
        return floats(points, -1, 2)
    heading = np.arctan2(sides[:, 1], sides[:, 0])
    turn = _between(heading, np.roll(heading, 1))
    ends = (turn, np.roll(turn, -1))
    beside = (np.roll(lengths, 1), np.roll(lengths, -1))
    return floats(_bent(points, sides, _half_turns(ends, lengths, beside), deviation), -1, 2)


def smooth_run(points: FloatArray, deviation: float) -> FloatArray:
    """Return a line from its first point to its last with points put in between where it bends.

    Parameters
    ----------
    points : (k, 2) float, mm
        Corners of a line; its ends count as sharp corners.
    deviation : float, mm
        As for `smooth_line`.

    Returns
    -------
    (n, 2) float, mm
        All given points and those put in between.
    """
    starts, sides, halves = _sides_of_run(points)
    found = _bent(starts, sides, halves, deviation)
    return floats(np.concatenate([found, points[-1:]]), -1, 2)


def headings_of_run(points: FloatArray) -> tuple[float, float]:
    """Return where the smooth line through `points` heads at its start and its end, radians."""
    _, sides, halves = _sides_of_run(points)
    heading = np.arctan2(sides[:, 1], sides[:, 0])
    return float(heading[0] - halves[0]), float(heading[-1] + halves[-1])


def _sides_of_run(points: FloatArray) -> tuple[Array, Array, Array]:
    """Return the start of each side of a line, the side, and half the angle it is bent by."""
    sides = np.diff(points, axis=0)
    lengths = np.hypot(*sides.T)
    kept = lengths > _NO_LENGTH
    starts, sides, lengths = points[:-1][kept], sides[kept], lengths[kept]
    if len(starts) < 3:
        return starts, sides, np.zeros(len(starts))
    heading = np.arctan2(sides[:, 1], sides[:, 0])
    turn = np.concatenate([[math.pi], _between(heading[1:], heading[:-1]), [math.pi]])
    beside = (
        np.concatenate([lengths[:1], lengths[:-1]]),
        np.concatenate([lengths[1:], lengths[-1:]]),
    )
    return starts, sides, _half_turns((turn[:-1], turn[1:]), lengths, beside)


def _between(heading: Array, before: Array) -> Array:
    """Return by how much a heading turns to the left, radians, at most half a turn."""
    return np.asarray((heading - before + math.pi) % (2.0 * math.pi) - math.pi)


def _bent(starts: Array, sides: Array, halves: Array, deviation: float) -> Array:
    """Return the starts of sides with points put in between on the arcs over them."""
    found = []
    for start, side, half in zip(starts, sides, halves, strict=True):
        sag = float(np.hypot(*side)) * abs(half) / 2.0
        count = min(_MOST, max(1, math.ceil(math.sqrt(sag / deviation))))
        found.append(start + _arc(side, float(half), np.arange(count) / count))
    return np.concatenate(found)


def _half_turns(turns: tuple[Array, Array], lengths: Array, beside: tuple[Array, Array]) -> Array:
    """Return half the angle by which each side is bent, (k,) radians, positive to the left.

    Parameters
    ----------
    turns : pair of (k,) float, radians
        By how much the line turns at the start and at the end of each side.
    lengths : (k,) float, mm
    beside : pair of (k,) float, mm
        Lengths of the sides before and after.
    """
    sharp = [np.abs(turn) > CORNER for turn in turns]
    one, other = (2.0 * turn / (near + lengths) for turn, near in zip(turns, beside, strict=True))
    one, other = np.where(sharp[0], other, one), np.where(sharp[1], one, other)
    smaller = np.where(np.abs(one) < np.abs(other), one, other)
    uneven = lengths > _UNEVEN * np.minimum(*beside)
    straight = (one * other <= 0.0) | (sharp[0] & sharp[1]) | uneven
    return np.asarray(np.where(straight, 0.0, 0.5 * smaller * lengths))


def _arc(side: Array, half: float, shares: Array) -> Array:
    """Return points of the arc over a side.

    Parameters
    ----------
    side : (2,) float, mm
        From its start to its end.
    half : float, radians
        Half the angle that the arc turns by, positive to the left: it bulges to the right.
    shares : (n,) float
        Where on the arc, 0 to 1.
    """
    if abs(half) < 1e-9:
        return np.asarray(shares[:, None] * side)
    turn = half * (2.0 * shares - 1.0)
    along = 0.5 * (1.0 + np.sin(turn) / math.sin(half))
    aside = -0.5 * (np.cos(turn) - math.cos(half)) / math.sin(half)
    left = np.array([-side[1], side[0]])
    points: Array = along[:, None] * side + aside[:, None] * left
    return points
