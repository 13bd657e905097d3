"""Facets divided along a plane, so that a parting line can run straight across them."""

from __future__ import annotations

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray
from laywright.surface.triangles import Surface

__all__ = ["split_along"]

_SNAP = 0.05


def split_along(
    surface: Surface, chosen: Array, normal: FloatArray, place: float
) -> tuple[Surface, IntArray]:
    """Return a surface whose chosen facets do not cross a plane, and each facet's parent.

    Parameters
    ----------
    surface : Surface
        mm.
    chosen : (m,) bool
        Facets to be divided; their neighbours take the new corners on.
    normal : (3,) float
        Unit normal of the plane.
    place : float, mm
        Where the plane lies along it.

    Returns
    -------
    surface : Surface
        The same places, more facets.  A corner nearer to the plane than a twentieth of an edge
        counts as lying on it.
    parent : (n,) int
        Facet of the given surface that each came from.
    """
    table = surface.edges
    height = surface.vertices @ normal - place
    low, high = height[table.ends[:, 0]], height[table.ends[:, 1]]
    sides = np.zeros(len(table.ends), dtype=bool)
    for side in (table.left, table.right):
        sides |= (side >= 0) & chosen[side]
    share = low / np.where(low != high, low - high, 1.0)
    split = sides & (low * high < 0.0) & (share > _SNAP) & (share < 1.0 - _SNAP)
    if not split.any():
        return surface, np.arange(len(surface.triangles))
    start, end = (surface.vertices[table.ends[split, i]] for i in (0, 1))
    middle = np.full(len(table.ends), -1)
    middle[split] = len(surface.vertices) + np.arange(int(split.sum()))
    points = np.concatenate([surface.vertices, start + share[split, None] * (end - start)])
    new = _middles(surface, middle)
    triangles, parent = _divided(surface.triangles, new)
    return (
        Surface(points, triangles, surface.patches[parent], surface.patch_names),
        parent,
    )


def _middles(surface: Surface, middle: IntArray) -> IntArray:
    """Return the new point on the edge that starts at each corner, -1 for none: (m, 3) int."""
    table, count = surface.edges, len(surface.vertices)
    here, after = surface.triangles, np.roll(surface.triangles, -1, axis=1)
    key = np.minimum(here, after) * count + np.maximum(here, after)
    place = np.searchsorted(table.ends[:, 0] * count + table.ends[:, 1], key)
    return np.asarray(middle[place], dtype=np.int64)


def _divided(triangles: IntArray, new: IntArray) -> tuple[IntArray, IntArray]:
    number = (new >= 0).sum(axis=1)
    parts, parents = [triangles[number == 0]], [np.flatnonzero(number == 0)]
    for count, plan in _PLANS.items():
        facets = np.flatnonzero(number == count)
        lone = (new[facets] >= 0) if count == 1 else (new[facets] < 0)
        turn = np.argmax(lone, axis=1) if count < 3 else np.zeros(len(facets), dtype=np.int64)
        order = (turn[:, None] + np.arange(3)) % 3
        corners = np.concatenate(
            [
                np.take_along_axis(triangles[facets], order, axis=1),
                np.take_along_axis(new[facets], order, axis=1),
            ],
            axis=1,
        )
        for pick in plan:
            parts.append(corners[:, pick])
            parents.append(facets)
    parent = np.concatenate(parents)
    order = np.argsort(parent, kind="stable")
    return np.concatenate(parts)[order], parent[order]


# Corners 0 to 2 and the new points 3 to 5 on the edges that start there.  With one new point it
# is 3, with two the edge that starts at corner 0 has none.
_PLANS = {
    1: ([0, 3, 2], [3, 1, 2]),
    2: ([0, 1, 4], [0, 4, 5], [5, 4, 2]),
    3: ([0, 3, 5], [3, 1, 4], [5, 4, 2], [3, 4, 5]),
}
