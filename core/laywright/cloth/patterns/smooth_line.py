"""A smooth closed line through the corners of a polygon, but for its sharp corners.

The edge of a mesh is a polygon whose corners lie on the true edge.  Between them the true edge
bulges, and an arc follows it more closely than a straight side does.  Each side is bent by the
smaller of the curvatures at its two ends, so that a circle is met all round and a straight side
that runs into a round corner stays straight.
"""

from __future__ import annotations

import math

import numpy as np

from laywright.arrays import Array, FloatArray, floats

__all__ = ["CORNER", "smooth_line"]

CORNER = math.radians(35.0)
"""A polygon that turns by more than this at a point has a sharp corner there, radians."""

_MOST = 64
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
    kept = lengths > 1e-9
    points, sides, lengths = points[kept], sides[kept], lengths[kept]
    if len(points) < 4:
        return floats(points, -1, 2)
    heading = np.arctan2(sides[:, 1], sides[:, 0])
    turn = (heading - np.roll(heading, 1) + math.pi) % (2.0 * math.pi) - math.pi
    sharp = np.abs(turn) > CORNER
    bend = _half_turns(turn, sharp, lengths)
    found = []
    for start, side, length, half in zip(points, sides, lengths, bend, strict=True):
        sag = length * abs(half) / 2.0
        count = min(_MOST, max(1, math.ceil(math.sqrt(sag / deviation))))
        found.append(start + _arc(side, float(half), np.arange(count) / count))
    return floats(np.concatenate(found), -1, 2)


def _half_turns(turn: Array, sharp: Array, lengths: Array) -> Array:
    """Return half the angle by which each side is bent, (k,) radians, positive to the left."""
    before = np.roll(lengths, 1)
    curvature = 2.0 * turn / (before + lengths)
    other = np.roll(curvature, -1)
    ends = np.where(sharp, other, curvature), np.where(np.roll(sharp, -1), curvature, other)
    smaller = np.where(np.abs(ends[0]) < np.abs(ends[1]), *ends)
    shorter = np.minimum(before, np.roll(lengths, -1))
    straight = (
        (ends[0] * ends[1] <= 0.0) | (sharp & np.roll(sharp, -1)) | (lengths > _UNEVEN * shorter)
    )
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
