"""A quick look along the pull: hidden places found at sample points of every facet.

For searches that look along hundreds of directions; what is decided by it is measured with
`laywright.mould.release.visibility.hidden_share` afterwards.
"""

from __future__ import annotations

import numpy as np
import shapely
from shapely import STRtree

from laywright.arrays import Array, FloatArray, IntArray, Vector
from laywright.mould.frame import upright
from laywright.mould.release.visibility import STANDING
from laywright.surface.triangles import Surface

__all__ = ["barely_hidden", "sampled_hidden"]

# Near the corners, near the middles of the sides, and the centroid.
_SAMPLES = np.array(
    [
        [0.94, 0.03, 0.03],
        [0.03, 0.94, 0.03],
        [0.03, 0.03, 0.94],
        [0.485, 0.485, 0.03],
        [0.03, 0.485, 0.485],
        [0.485, 0.03, 0.485],
        [1 / 3, 1 / 3, 1 / 3],
    ]
)
_MOST_POINTS = 20_000
_HAIR = 1e-6


def sampled_hidden(surface: Surface, pull: Vector, facets: IntArray | None = None) -> FloatArray:
    """Return the share of every facet's sample points that are hidden along the pull: (m,).

    A fine mesh is looked at in the middle of its facets only.

    Parameters
    ----------
    surface : Surface
        Open or closed, mm.
    pull : tuple of 3 float
        Unit direction.
    facets : (k,) int, optional
        Those that are looked at; the share of the others is 0.
    """
    turn = upright(pull)
    normals = surface.normals @ turn.T
    corners = (surface.vertices @ turn.T)[surface.triangles]
    tilt = normals[:, 2]
    share = np.zeros(len(tilt))
    asked = np.arange(len(tilt)) if facets is None else facets
    targets = asked[(tilt[asked] >= -STANDING) & (surface.areas[asked] > 0.0)]
    blockers = np.flatnonzero(tilt < -STANDING if surface.is_closed else np.abs(tilt) > STANDING)
    if len(targets) == 0 or len(blockers) == 0:
        return share
    hair = _HAIR * float(np.ptp(surface.bounds, axis=0).max())
    samples = _SAMPLES if len(targets) * len(_SAMPLES) <= _MOST_POINTS else _SAMPLES[-1:]
    points = np.einsum("sc,mcx->msx", samples, corners[targets])
    points += (
        np.where(tilt[targets] <= STANDING, 10.0 * hair, 0.0)[:, None, None]
        * (normals[targets][:, None])
    )
    share[targets] = _met(points, corners[blockers], hair).mean(axis=1)
    return share


def barely_hidden(surface: Surface, pull: Vector, facets: IntArray, depth: float) -> Array:
    """Return which of some facets (k,) would be free if they stood out a little: (k,) bool.

    Facets that face away may be asked for too: they are free where nothing of the surface lies
    over their sample points once these are moved out.  Where many are asked for, they are
    looked at in their middle only.

    Parameters
    ----------
    surface : Surface
        Open or closed, mm.
    pull : tuple of 3 float
        Unit direction.
    facets : (k,) int
        Those that are looked at.
    depth : float, mm
        How far they are moved out along their normals.
    """
    turn = upright(pull)
    normals = surface.normals @ turn.T
    corners = (surface.vertices @ turn.T)[surface.triangles]
    blockers = np.flatnonzero(np.abs(normals[:, 2]) > STANDING)
    if len(facets) == 0 or len(blockers) == 0:
        return np.ones(len(facets), dtype=bool)
    hair = _HAIR * float(np.ptp(surface.bounds, axis=0).max())
    samples = _SAMPLES if len(facets) * len(_SAMPLES) <= _MOST_POINTS else _SAMPLES[-1:]
    points = np.einsum("sc,mcx->msx", samples, corners[facets])
    points += depth * normals[facets][:, None]
    return np.asarray(~_met(points, corners[blockers], hair).any(axis=1))


def _met(places: FloatArray, corners: FloatArray, hair: float) -> Array:
    """Return over which places (k, s, 3) any triangle (b, 3, 3) lies: (k, s) bool."""
    points = places.reshape(-1, 3)
    low, high = corners.min(axis=1), corners.max(axis=1)
    tree = STRtree(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))
    point, blocker = tree.query(shapely.points(points[:, :2]))
    above = high[blocker, 2] > points[point, 2] + hair
    point, blocker = point[above], blocker[above]
    met = np.zeros(len(points), dtype=bool)
    met[point[_over(points[point], corners[blocker], hair)]] = True
    return met.reshape(places.shape[:2])


def _over(points: FloatArray, corners: FloatArray, hair: float) -> FloatArray:
    """Return whether each triangle (k, 3, 3) lies over its point (k, 3): (k,) bool."""
    a, b, c = corners[:, 0, :2], corners[:, 1, :2], corners[:, 2, :2]
    at = points[:, :2]
    whole = _twice(a, b, c)
    with np.errstate(divide="ignore", invalid="ignore"):
        shares = np.stack([_twice(at, b, c), _twice(a, at, c), _twice(a, b, at)], axis=1)
        shares = shares / whole[:, None]
        height = np.einsum("kc,kc->k", shares, corners[..., 2])
        return np.asarray((shares >= 0.0).all(axis=1) & (height > points[:, 2] + hair))


def _twice(a: FloatArray, b: FloatArray, c: FloatArray) -> FloatArray:
    return np.asarray(
        (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
    )
