"""Draft as it runs smoothly across facets, so that areas converge with the mesh.

A facet's own normal is constant and jumps to the next facet's; the true surface turns
gradually in between.  Inside a patch, where facets meet at less than a sharp edge, the corner
normals are averages of the facets around, and the draft runs linearly between the corners:
the line where it crosses a limit then cuts facets instead of jumping from edge to edge.  Where
all facets around lie clearly on one side of the limit, so does the facet, and nothing is averaged.
"""

from __future__ import annotations

import math

import numpy as np

from laywright.arrays import Array, FloatArray, Vector
from laywright.surface.corner_groups import corner_groups
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["corner_tilt", "share_below", "shares_below"]


def shares_below(
    surface: Surface, pull: Vector, levels: tuple[float, ...]
) -> tuple[FloatArray, ...]:
    """Return the share of every facet whose smooth draft lies below each of some levels.

    Parameters
    ----------
    surface : Surface
        Any.
    pull : tuple of 3 float
        Unit direction.
    levels : tuple of float
        Sines of drafts.

    Returns
    -------
    tuple of (m,) float
        0 to 1, for each level.
    """
    tilt = surface.normals @ np.array(pull)
    shares = tuple((tilt < level).astype(np.float64) for level in levels)
    mixed = np.zeros(len(surface.vertices), dtype=bool)
    for level in levels:
        # An average of tilts is divided by a length of at most 1, away from zero.
        perhaps_above, perhaps_below = tilt >= min(level, 0.0), tilt < max(level, 0.0)
        mixed |= _touched(surface, perhaps_above) & _touched(surface, perhaps_below)
    turning = _touching(surface, mixed)
    if not turning.any():
        return shares
    around = _touching(surface, _touched(surface, turning))
    corners = corner_tilt(surface.part(around), pull)[turning[around]]
    for share, level in zip(shares, levels, strict=True):
        share[turning] = share_below(corners, level)
    return shares


def _touched(surface: Surface, facets: Array) -> Array:
    """Return which points belong to some of the facets (m,): (n,) bool."""
    found = np.zeros(len(surface.vertices), dtype=bool)
    found[surface.triangles[facets]] = True
    return found


def _touching(surface: Surface, points: Array) -> Array:
    """Return which facets have some of the points (n,): (m,) bool."""
    a, b, c = surface.triangles.T
    return np.asarray(points[a] | points[b] | points[c])


def corner_tilt(surface: Surface, pull: Vector) -> FloatArray:
    """Return the sine of the draft at every facet's corners: (m, 3) float."""
    table, normals = surface.edges, surface.normals
    turn = np.einsum("ij,ij->i", normals[table.left], normals[table.right])
    smooth = (surface.patches[table.left] == surface.patches[table.right]) & (
        turn > math.cos(TOLERANCES.sharp_edge)
    )
    group = corner_groups(surface, smooth)
    weight = surface.angles.ravel()
    around = np.stack(
        [np.bincount(group, weights=weight * np.repeat(normals[:, i], 3)) for i in range(3)],
        axis=1,
    )
    length = np.linalg.norm(around, axis=1, keepdims=True)
    around = np.divide(around, length, out=np.zeros_like(around), where=length > 0.0)
    tilt: FloatArray = (around @ np.array(pull))[group].reshape(-1, 3)
    return tilt


def share_below(values: FloatArray, level: float) -> FloatArray:
    """Return the share of each triangle's area where a linear function lies below a level.

    Parameters
    ----------
    values : (m, 3) float
        The function at the corners.
    level : float
        The level.

    Examples
    --------
    >>> share_below(np.array([[0.0, 0.0, 1.0], [0.0, 2.0, 2.0], [3.0, 3.0, 3.0]]), 0.5).tolist()
    [0.75, 0.0625, 0.0]
    """
    low, middle, high = np.sort(values, axis=1).T - level
    near_low, near_high = (middle - low) * (high - low), (high - low) * (high - middle)
    below_one = low**2 / np.where(near_low > 0.0, near_low, 1.0)
    above_one = high**2 / np.where(near_high > 0.0, near_high, 1.0)
    return np.asarray(
        np.select([high <= 0.0, low >= 0.0, middle >= 0.0], [1.0, 0.0, below_one], 1.0 - above_one),
        dtype=np.float64,
    )
