"""Corners of facets that meet in a point, grouped by the edges that join their facets."""

from __future__ import annotations

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from laywright.arrays import Array, IntArray
from laywright.surface.triangles import Surface

__all__ = ["corner_groups"]


def corner_groups(surface: Surface, joining: Array) -> IntArray:
    """Return a number for every corner, the same for corners joined around their point: (3 m,) int.

    Parameters
    ----------
    surface : Surface
        Any.
    joining : (e,) bool
        Edges across which corners count as joined; edges with one facet never do.

    Examples
    --------
    >>> flat = Surface.single(
    ...     np.array([[0, 0, 0], [1, 0, 0], [1, 1, 0], [0, 1, 0]]), np.array([[0, 1, 2], [0, 2, 3]])
    ... )
    >>> corner_groups(flat, np.ones(5, dtype=bool)).tolist()
    [0, 1, 2, 0, 2, 3]
    """
    table = surface.edges
    joined = (table.left >= 0) & (table.right >= 0) & joining
    left, right, ends = table.left[joined], table.right[joined], table.ends[joined]
    rows: list[IntArray] = []
    columns: list[IntArray] = []
    for end in (0, 1):
        for sides, found in ((left, rows), (right, columns)):
            at = np.argmax(surface.triangles[sides] == ends[:, end, None], axis=1)
            found.append(3 * sides + at)
    size = 3 * len(surface.triangles)
    row, column = np.concatenate(rows), np.concatenate(columns)
    graph = coo_matrix((np.ones(len(row)), (row, column)), (size, size))
    return np.asarray(connected_components(graph, directed=False)[1], dtype=np.int64)
