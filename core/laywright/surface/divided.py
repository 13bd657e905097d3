"""Facets divided at new points on their edges, so that neighbours still share every point."""

from __future__ import annotations

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray
from laywright.surface.triangles import Surface

__all__ = ["divided_at", "with_short_edges"]

_PASSES = 24


def divided_at(surface: Surface, chosen: Array, share: FloatArray) -> tuple[Surface, IntArray]:
    """Return a surface with a new point on each of some edges, and each facet's parent.

    Parameters
    ----------
    surface : Surface
        mm.
    chosen : (e,) bool
        Edges of its table that are divided.
    share : (e,) float
        Where along each, from its first end, 0 to 1.

    Returns
    -------
    surface : Surface
        The same places, more facets; new points stand behind the given ones.
    parent : (n,) int
        Facet of the given surface that each came from.
    """
    table, count = surface.edges, len(surface.vertices)
    start, end = (surface.vertices[table.ends[chosen, i]] for i in (0, 1))
    middle = np.full(len(table.ends), -1)
    middle[chosen] = count + np.arange(int(np.count_nonzero(chosen)))
    points = np.concatenate([surface.vertices, start + share[chosen, None] * (end - start)])
    here, after = surface.triangles, np.roll(surface.triangles, -1, axis=1)
    key = np.minimum(here, after) * count + np.maximum(here, after)
    place = np.searchsorted(table.ends[:, 0] * count + table.ends[:, 1], key)
    triangles, parent = _divided(surface.triangles, np.asarray(middle[place], dtype=np.int64))
    return Surface(points, triangles, surface.patches[parent], surface.patch_names), parent


def with_short_edges(surface: Surface, longest: float) -> tuple[Surface, IntArray]:
    """Return a surface whose edges are halved until none is longer, and each facet's parent.

    Parameters
    ----------
    surface : Surface
        mm.
    longest : float, mm
        Of an edge.

    Examples
    --------
    >>> flat = Surface.single(np.array([[0, 0, 0], [4, 0, 0], [0, 4, 0]]), np.array([[0, 1, 2]]))
    >>> len(with_short_edges(flat, 3.0)[0].triangles)
    4
    """
    parent = np.arange(len(surface.triangles))
    for _ in range(_PASSES):
        ends = surface.vertices[surface.edges.ends]
        long = np.linalg.norm(ends[:, 1] - ends[:, 0], axis=1) > longest
        if not long.any():
            break
        surface, own = divided_at(surface, long, np.full(len(long), 0.5))
        parent = parent[own]
    return surface, parent


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
