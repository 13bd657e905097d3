"""An order of the vertices in which a sparse matrix of a mesh factors with little fill.

The mesh is halved along its longest extent again and again; the vertices between the halves
come last (A. George, Nested dissection of a regular finite element mesh, SIAM J. Numer. Anal.
10 (1973) 345).
"""

from __future__ import annotations

import numpy as np
from scipy.sparse import coo_matrix

from laywright.arrays import IntArray
from laywright.surface.triangles import Surface

__all__ = ["dissection"]

_LEAF = 20


def dissection(surface: Surface) -> IntArray:
    """Return the vertices of a surface in the order of elimination: (n,) int."""
    points = surface.vertices
    count = len(points)
    first, second = surface.edges.ends.T
    one = np.ones(len(first))
    graph = coo_matrix((one, (first, second)), shape=(count, count))
    graph = (graph + graph.T).tocsr()
    beyond = np.zeros(count)
    last: list[IntArray] = []
    open_parts: list[IntArray] = [np.arange(count)]
    while open_parts:
        part = open_parts.pop()
        along = points[part, int(np.ptp(points[part], axis=0).argmax())]
        near = along <= np.median(along)
        if len(part) <= _LEAF or near.all():
            last.append(part)
            continue
        beyond[part[~near]] = 1.0
        side = part[near]
        between = graph[side] @ beyond > 0.0
        beyond[part[~near]] = 0.0
        last.append(side[between])
        open_parts += [side[~between], part[~near]]
    order: IntArray = np.concatenate(last[::-1])
    return order
