"""Bolt holes and registration cones in the flange between two pieces.

Bolts stand about 150 mm apart.  Three cones fix the place; their triangle has three different
sides, so that the pieces go together one way only (both common practice, no source).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import combinations

import numpy as np
import shapely

from laywright.arrays import FloatArray

__all__ = ["FlangePlan", "other_placements", "plan_flange"]

_STEP = 2.0
_MOST = 36


@dataclass(frozen=True, eq=False)
class FlangePlan:
    """Places on a flange, in the plan view along the sheet's axis.

    Attributes
    ----------
    bolts : (b, 2) float, mm
        Centres of the bolt holes.
    cones : (c, 2) float, mm
        Centres of the registration cones: three, or none where there is no room.
    """

    bolts: FloatArray
    cones: FloatArray


def plan_flange(
    lines: list[FloatArray],
    cone_lines: list[FloatArray],
    bolt_spacing: float,
    bolt_room: float,
    cone_room: float,
) -> FlangePlan:
    """Return places for bolts and cones.

    Parameters
    ----------
    lines : list of (k, 2) float, mm
        Lines that bolts may stand on.
    cone_lines : list of (k, 2) float, mm
        Lines that cones may stand on.
    bolt_spacing : float, mm
        Largest distance between bolts along a line.
    bolt_room, cone_room : float, mm
        Radius that a bolt and a cone need for themselves; a bolt that would stand nearer to
        another one is left out.
    """
    bolts: list[tuple[float, float]] = []
    for path in _paths(lines, 2.0 * bolt_room):
        spans = math.ceil(path.length / bolt_spacing)
        if path.is_ring:
            share = np.arange(max(3, spans)) / max(3, spans)
        elif path.length > 4.0 * bolt_room:
            share = np.linspace(0.0, 1.0, spans + 1)
        else:
            share = np.array([0.5])
        for point in path.interpolate(share, normalized=True):
            if all(math.hypot(point.x - x, point.y - y) >= 2.0 * bolt_room for x, y in bolts):
                bolts.append((point.x, point.y))
    spots = [
        (p.x, p.y)
        for path in _paths(cone_lines, 0.0)
        for p in path.interpolate(np.arange(0.0, path.length, _STEP))
    ]
    placed = np.array(bolts).reshape(-1, 2)
    free = np.array(spots).reshape(-1, 2)
    if len(placed):
        apart = np.linalg.norm(free[:, None] - placed[None], axis=2).min(axis=1)
        free = free[apart >= bolt_room + cone_room]
    return FlangePlan(placed, _scalene(free, 2.0 * cone_room))


def _paths(lines: list[FloatArray], shortest: float) -> list[shapely.LineString]:
    paths = [shapely.LineString(line) for line in lines if len(line) > 1]
    return [path for path in paths if path.length >= shortest]


def other_placements(pattern: FloatArray, slack: float) -> int:
    """Return how many rigid placements other than its own fit a pattern onto itself.

    Parameters
    ----------
    pattern : (k, 2) float, mm
        Centres of alike cones.
    slack : float, mm
        How far a cone may be off and still go into its hole.

    Notes
    -----
    A rigid placement, turned over or not, that carries the pattern onto itself carries some
    pair of points onto another pair at the same distance.  All of these are tried.
    """
    count = len(pattern)
    if count < 2:
        return 1
    fits = []
    first, second = np.argwhere(~np.eye(count, dtype=bool)).T
    base = _complex(pattern)
    for mirror in (False, True):
        source = base.conj() if mirror else base
        turn = (base[second] - base[first]) / (source[1] - source[0])
        alike = np.abs(np.abs(turn) - 1.0) * abs(source[1] - source[0]) <= 2.0 * slack
        for a, t in zip(first[alike], turn[alike], strict=True):
            placed = base[a] + (source - source[0]) * t / abs(t)
            near = np.abs(placed[:, None] - base[None])
            if (near.min(axis=1) <= slack).all() and (near.min(axis=0) <= slack).all():
                fits.append((*np.argmin(near, axis=1).tolist(), mirror))
    own = (*range(count), False)
    return len(set(fits) - {own})


def _complex(points: FloatArray) -> FloatArray:
    return np.asarray(points[:, 0] + 1j * points[:, 1])


def _scalene(spots: FloatArray, apart: float) -> FloatArray:
    """Return three of the spots, far apart, their distances as different as can be."""
    if len(spots) < 3:
        return np.empty((0, 2))
    spots = spots[np.unique(np.linspace(0, len(spots) - 1, _MOST).astype(int))]
    triple = np.array(list(combinations(range(len(spots)), 3)))
    a, b, c = (spots[triple[:, i]] for i in range(3))
    sides = np.sort(
        np.stack([np.linalg.norm(p - q, axis=1) for p, q in ((a, b), (b, c), (c, a))], axis=1),
        axis=1,
    )
    different = np.diff(sides, axis=1).min(axis=1)
    score = np.minimum(different, 0.5 * sides[:, 0])
    score[sides[:, 0] < apart] = -1.0
    best = int(np.argmax(score))
    if score[best] <= 0.0:
        return np.empty((0, 2))
    return np.asarray(spots[triple[best]], dtype=np.float64)
