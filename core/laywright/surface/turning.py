"""Which edges triangles share, and the triangles turned one way along them."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from laywright.arrays import Array, FloatArray, IntArray
from laywright.surface.unique import unique_keys

__all__ = ["HalfEdges", "edge_ends", "half_edges", "touching_points", "turned_one_way"]


def edge_ends(triangles: IntArray) -> IntArray:
    """Return the end of every edge that starts at a corner: (m, 3) int."""
    return triangles[:, [1, 2, 0]]


@dataclass(frozen=True, eq=False)
class HalfEdges:
    """The edges of triangles; half-edge ``3 t + k`` runs from corner k of triangle t.

    Attributes
    ----------
    edge : (3 m,) int
        Edge of every half-edge.
    first : (e,) int
        A half-edge of every edge.
    count : (e,) int
        Number of half-edges of every edge.
    pairs : (p, 2) int
        Half-edges of the edges that have two.
    """

    edge: IntArray
    first: IntArray
    count: IntArray
    pairs: IntArray


def half_edges(triangles: IntArray, size: int) -> HalfEdges:
    """Return the edges of triangles (m, 3) that name points below `size`."""
    start, end = triangles.ravel(), edge_ends(triangles).ravel()
    first, edge = unique_keys(np.minimum(start, end) * size + np.maximum(start, end))
    count = np.bincount(edge, minlength=len(first))
    total = np.bincount(edge, np.arange(len(edge)), len(first)).astype(np.int64)
    two = count == 2
    pairs = np.stack([first[two], total[two] - first[two]], axis=1)
    return HalfEdges(edge, first, count, pairs)


def turned_one_way(
    vertices: FloatArray, triangles: IntArray, half: HalfEdges
) -> tuple[IntArray, IntArray, Array]:
    """Return the triangles turned one way.

    Returns
    -------
    triangles : (m, 3) int
    twin : (3 m,) int
        The half-edge that runs against each one; -1 where there is none.
    one_sided : (m,) bool
        Which triangles start a one-sided piece.
    """
    size = len(triangles)
    owner = half.pairs // 3
    start = triangles.ravel()[half.pairs]
    against = start[:, 0] != start[:, 1]
    number, piece = _joined(owner[:, 0], owner[:, 1], size)
    first = np.full(number, size)
    np.minimum.at(first, piece, np.arange(size))
    one_sided, flipped = np.zeros(size, dtype=bool), np.zeros(size, dtype=bool)
    if not against.all():
        turn = against.astype(np.int64)
        rows = np.concatenate([owner[:, 0], owner[:, 0] + size])
        columns = np.concatenate([owner[:, 1] + size * (1 - turn), owner[:, 1] + size * turn])
        _, side = _joined(rows, columns, 2 * size)
        one_sided[first] = side[first] == side[first + size]
        flipped = side[:size] != side[first[piece]]
    volume = _volumes(vertices, triangles) * np.where(flipped, -1.0, 1.0)
    share = np.bincount(piece, weights=flipped, minlength=number) / np.bincount(piece)
    alone = (half.count != 2)[half.edge].reshape(-1, 3).any(axis=1)
    closed = np.bincount(piece, weights=alone) == 0
    inward = np.bincount(piece, weights=volume, minlength=number) < 0.0
    hollow = (share == 0.0) & _inside_another(vertices, triangles, piece, number)
    wrong = np.where(closed, inward & ~hollow, share > 0.5)
    flipped ^= wrong[piece]
    twin = np.full(3 * size, -1)
    good = against ^ flipped[owner[:, 0]] ^ flipped[owner[:, 1]]
    pairs = half.pairs[good]
    turned = flipped[pairs // 3]
    pairs = np.where(turned, 3 * (pairs // 3) + np.array([1, 0, 2])[pairs % 3], pairs)
    twin[pairs] = pairs[:, ::-1]
    return np.where(flipped[:, None], triangles[:, ::-1], triangles), twin, one_sided


def _joined(rows: IntArray, columns: IntArray, size: int) -> tuple[int, IntArray]:
    """Return how many groups pairs make of so many things, and the group of each."""
    graph = coo_matrix((np.ones(len(rows)), (rows, columns)), (size, size))
    number, group = connected_components(graph, directed=False)
    return number, group.astype(np.int64)


def _volumes(vertices: FloatArray, triangles: IntArray) -> FloatArray:
    """Return the volume between every triangle and the origin, mm^3."""
    a, b, c = (vertices[triangles[:, corner]].T for corner in range(3))
    return np.asarray(
        a[0] * (b[1] * c[2] - b[2] * c[1])
        + a[1] * (b[2] * c[0] - b[0] * c[2])
        + a[2] * (b[0] * c[1] - b[1] * c[0])
    )


def _inside_another(
    vertices: FloatArray, triangles: IntArray, piece: IntArray, number: int
) -> Array:
    """Return which pieces lie within the bounds of another one: (number,) bool."""
    if number == 1:
        return np.zeros(1, dtype=bool)
    low, high = np.full((number, 3), np.inf), np.full((number, 3), -np.inf)
    for corner in range(3):
        np.minimum.at(low, piece, vertices[triangles[:, corner]])
        np.maximum.at(high, piece, vertices[triangles[:, corner]])
    inside = np.zeros(number, dtype=bool)
    for other in range(number):
        within = (low > low[other]).all(axis=1) & (high < high[other]).all(axis=1)
        inside |= within
    return inside


def touching_points(triangles: IntArray, twin: IntArray, size: int) -> Array:
    """Return the points at which several fans of triangles meet: (size,) bool.

    Round every point one fan is walked through; where it has fewer corners than the point,
    there is another.
    """
    corner = triangles.ravel()
    before = np.arange(len(corner)).reshape(-1, 3)[:, [2, 0, 1]].ravel()
    following = twin[before]
    start = np.full(size, -1)
    start[corner] = np.arange(len(corner))
    opening = np.flatnonzero(twin < 0)
    start[corner[opening]] = opening
    place = np.flatnonzero(start >= 0)
    start = start[place]
    walked, here = np.ones(size, dtype=np.int64), following[start]
    while True:
        on = (here >= 0) & (here != start)
        if not on.any():
            break
        place, start, here = place[on], start[on], here[on]
        walked[place] += 1
        here = following[here]
    corners = np.bincount(corner, minlength=size)
    return np.asarray((corners > 0) & (walked < corners))
