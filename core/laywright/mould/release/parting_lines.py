"""Lines between the pieces of a mould, as chains of edges."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray, floats, line_length, ring_length
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["PartingLine", "chains", "parting_lines", "sharp_edges"]


@dataclass(frozen=True, eq=False)
class PartingLine:
    """A line between two pieces.

    Attributes
    ----------
    points : (k, 3) float, mm
        Its points in order; the first is not repeated at the end of a closed line.
    closed : bool
        Whether the last point joins the first.
    pieces : tuple of 2 int
        The pieces on its two sides.
    along_sharp, along_silhouette : float
        Share of its length along sharp edges, and along silhouettes: edges behind which the
        surface faces away from the pull of the piece before them.
    """

    points: FloatArray
    closed: bool
    pieces: tuple[int, int]
    along_sharp: float
    along_silhouette: float

    @property
    def length(self) -> float:
        """Length, mm."""
        return ring_length(self.points) if self.closed else line_length(self.points)


def sharp_edges(surface: Surface) -> Array:
    """Return which edges of the table lie between facets that meet sharply: (e,) bool."""
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    turn = np.einsum("ij,ij->i", surface.normals[table.left], surface.normals[table.right])
    return np.asarray(inner & (turn < math.cos(TOLERANCES.sharp_edge)))


def parting_lines(surface: Surface, piece: IntArray, silhouettes: Array) -> tuple[PartingLine, ...]:
    """Return the lines between pieces, longest first.

    Parameters
    ----------
    surface : Surface
        mm.
    piece : (m,) int
        Piece of every facet.
    silhouettes : (e,) bool
        Which edges are silhouettes.
    """
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    one, other = piece[table.left], piece[table.right]
    between = inner & (one != other)
    sharp = sharp_edges(surface)
    low, high = np.minimum(one, other), np.maximum(one, other)
    lines = []
    for first, second in np.unique(np.stack([low[between], high[between]], axis=1), axis=0):
        edges = np.flatnonzero(between & (low == first) & (high == second))
        for chain, closed, used in chains(table.ends[edges]):
            picked = edges[used]
            start, end = (surface.vertices[table.ends[picked, i]] for i in (0, 1))
            length = np.linalg.norm(end - start, axis=1)
            total = float(length.sum())
            lines.append(
                PartingLine(
                    floats(surface.vertices[chain], -1, 3),
                    closed,
                    (int(first), int(second)),
                    float(length @ sharp[picked]) / total,
                    float(length @ (silhouettes & ~sharp)[picked]) / total,
                )
            )
    return tuple(sorted(lines, key=lambda line: -line.length))


def chains(ends: IntArray) -> list[tuple[list[int], bool, list[int]]]:
    """Return edges (e, 2) as chains: points in order, whether closed, and the edges used.

    Chains end at points where one edge ends or more than two meet.
    """
    at: dict[int, list[int]] = {}
    for number, pair in enumerate(ends.tolist()):
        for point in pair:
            at.setdefault(point, []).append(number)
    unused = set(range(len(ends)))
    found = []
    knots = sorted(point for point, edges in at.items() if len(edges) != 2)
    for start in [*knots, *ends[:, 0].tolist()]:
        for edge in at[start]:
            if edge in unused:
                found.append(_walk(start, edge, ends, at, unused))
    return found


def _walk(
    start: int, edge: int, ends: IntArray, at: dict[int, list[int]], unused: set[int]
) -> tuple[list[int], bool, list[int]]:
    path, used = [start], []
    while True:
        unused.remove(edge)
        used.append(edge)
        a, b = ends[edge].tolist()
        point = b if path[-1] == a else a
        if point == start:
            return path, True, used
        path.append(point)
        onward = [other for other in at[point] if other in unused]
        if len(at[point]) != 2 or not onward:
            return path, False, used
        edge = onward[0]
