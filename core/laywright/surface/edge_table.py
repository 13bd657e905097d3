"""Every edge of a heap of triangles once, with the triangle on either side."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray, ints
from laywright.errors import GeometryError
from laywright.surface.unique import order_of

__all__ = ["EdgeTable", "edge_table"]


@dataclass(frozen=True, eq=False)
class EdgeTable:
    """Every edge of a surface once.

    Attributes
    ----------
    ends : (e, 2) int
        Vertex indices, the smaller first; in their order.
    left, right : (e,) int
        The triangle that runs along the edge from its first to its second end, and the one
        that runs against it; -1 where there is none.
    """

    ends: IntArray
    left: IntArray
    right: IntArray


def edge_table(vertices: FloatArray, triangles: IntArray, where: str) -> EdgeTable:
    """Return the edges of triangles.

    Parameters
    ----------
    vertices : (n, 3) float, mm
        Points.
    triangles : (m, 3) int
        Vertex indices.
    where : str
        Name for the message.

    Raises
    ------
    GeometryError
        If an edge has more than two triangles, or two that run the same way.
    """
    start, end = triangles.ravel(), triangles[:, [1, 2, 0]].ravel()
    low, high = np.minimum(start, end), np.maximum(start, end)
    order = order_of(high, len(vertices))
    order = order[order_of(low[order], len(vertices))]
    forward, owner = (start < end)[order], order // 3
    low, high = low[order], high[order]
    first: Array = np.ones(len(low), dtype=bool)
    first[1:] = (low[1:] != low[:-1]) | (high[1:] != high[:-1])
    index = np.cumsum(first) - 1
    ends = np.stack([low[first], high[first]], axis=1)
    sides = []
    for along in (forward, ~forward):
        side = np.full(len(ends), -1, dtype=np.int64)
        side[index[along]] = owner[along]
        if np.count_nonzero(side >= 0) != np.count_nonzero(along):
            count = np.bincount(index[along], minlength=len(ends))
            x, y, z = vertices[ends[int(np.argmax(count)), 0]]
            raise GeometryError(
                where,
                f"{int((count > 1).sum())} edges with more than two triangles or triangles "
                f"turned against each other, one at ({x:.2f}, {y:.2f}, {z:.2f}) mm",
                "at most two triangles along an edge, turned the same way",
                "repair the mesh or pick faces that do not touch along an edge",
            )
        sides.append(side)
    return EdgeTable(ints(ends, -1, 2), ints(sides[0], -1), ints(sides[1], -1))
