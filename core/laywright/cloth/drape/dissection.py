"""An order of the vertices in which a sparse matrix of a mesh factors with little fill.

The mesh is halved along its longest extent again and again; the vertices between the halves
come last (A. George, Nested dissection of a regular finite element mesh, SIAM J. Numer. Anal.
10 (1973) 345).
"""

from __future__ import annotations

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray
from laywright.surface.triangles import Surface

__all__ = ["dissection"]

_LEAF = 20
_NEAR, _FAR, _BETWEEN = 0, 1, 2
_MOST = 38  # levels whose digits of base 3 fit into 64 bits


def dissection(surface: Surface) -> IntArray:
    """Return the vertices of a surface in the order of elimination: (n,) int.

    All parts are halved at once, level by level; each vertex keeps as digits in which half it
    was, and sorting by these puts what is between two halves behind both.
    """
    points = surface.vertices
    ends = surface.edges.ends
    digits = np.zeros(len(points), dtype=np.int64)
    active: IntArray = np.arange(len(points))
    for _ in range(_MOST):
        digits *= 3
        if not len(active):
            break
        half = np.full(len(points), -1)
        half[active] = _halved(points[active], digits[active])
        inner = (digits[ends[:, 0]] == digits[ends[:, 1]]) & (half[ends] >= 0).all(axis=1)
        ends = ends[inner]
        across = ends[half[ends[:, 0]] != half[ends[:, 1]]]
        between = np.where(half[across[:, 0]] == _NEAR, across[:, 0], across[:, 1])
        half[between] = _BETWEEN
        active = active[half[active] >= 0]
        digits[active] += half[active]
        active = active[half[active] != _BETWEEN]
        ends = ends[(half[ends] != _BETWEEN).all(axis=1)]
    order: IntArray = np.argsort(digits, kind="stable")
    return order


def _halved(points: FloatArray, part: IntArray) -> Array:
    """Return in which half of its part each point is: (k,) int, -1 where it is not halved.

    Parts are halved at the middle along their longest extent unless they are small.
    """
    order = np.argsort(part, kind="stable")
    starts = np.flatnonzero(np.diff(part[order], prepend=-1))
    sizes = np.diff(np.append(starts, len(order)))
    number = np.repeat(np.arange(len(starts)), sizes)
    sorted_points = points[order]
    extent = np.maximum.reduceat(sorted_points, starts) - np.minimum.reduceat(sorted_points, starts)
    along = sorted_points[np.arange(len(order)), extent.argmax(axis=1)[number]]
    rising = along[np.lexsort((along, number))]
    middle = rising[starts + (sizes - 1) // 2]
    near = along <= middle[number]
    whole = (sizes <= _LEAF) | (np.add.reduceat(near, starts) == sizes)
    half = np.empty(len(points), dtype=np.int64)
    half[order] = np.where(whole[number], -1, np.where(near, _NEAR, _FAR))
    return half
