"""Which sides of which triangles lie on each other, for pictures and coarse meshes.

A *slot* is one side of one triangle: slot 3 t + k runs from corner k of triangle t to the
next.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray, ints

__all__ = ["Sides", "facet_normals", "sides"]


@dataclass(frozen=True, eq=False)
class Sides:
    """The sides of a mesh.

    Attributes
    ----------
    first, second : (e,) int
        Slots that lie on each other, where exactly two do.
    lone : (f,) int
        All other slots: at an open edge, or where more than two triangles meet.
    """

    first: IntArray
    second: IntArray
    lone: IntArray


def sides(triangles: IntArray) -> Sides:
    """Return which sides of the triangles, (m, 3) int, lie on each other.

    Examples
    --------
    >>> found = sides(np.array([[0, 1, 2], [2, 1, 3]]))
    >>> found.first.tolist(), found.second.tolist(), found.lone.tolist()
    ([1], [3], [0, 2, 4, 5])
    """
    count = 3 * len(triangles)
    starts, ends = triangles.ravel(), np.roll(triangles, -1, axis=1).ravel()
    low, high = np.minimum(starts, ends), np.maximum(starts, ends)
    key = low * (int(high.max(initial=0)) + 1) + high
    order = np.argsort(key, kind="stable")
    new = np.ones(count, dtype=bool)
    new[1:] = key[order][1:] != key[order][:-1]
    start = np.flatnonzero(new)
    shared = np.diff(np.append(start, count))
    pair = start[shared == 2]
    first, second = order[pair], order[pair + 1]
    alone = np.ones(count, dtype=bool)
    alone[first] = alone[second] = False
    return Sides(ints(first, -1), ints(second, -1), ints(np.flatnonzero(alone), -1))


def facet_normals(corners: FloatArray) -> FloatArray:
    """Return the unit normals of triangles from their corners, (m, 3, 3); zero without area."""
    normals = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    lengths = np.linalg.norm(normals, axis=1)
    unit: FloatArray = normals / np.where(lengths > 0.0, lengths, 1.0)[:, None]
    return unit
