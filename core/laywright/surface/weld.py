"""A heap of triangles made one surface: welded, freed of scraps, turned one way.

What is found wrong on the way is kept as a list of defects, each with its count and a place
where to look.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components
from scipy.spatial import cKDTree

from laywright.arrays import Array, FloatArray, IntArray, Vector
from laywright.surface.triangles import Surface
from laywright.surface.unique import unique_rows
from laywright.tolerances import TOLERANCES

__all__ = ["Defect", "smooth_patches", "tidy"]

_SINGLE_PRECISION = 2e-7


@dataclass(frozen=True)
class Defect:
    """Something wrong with a mesh.

    Attributes
    ----------
    kind : str
        What it is, in plain words, in the plural.
    count : int
        How many.
    point : tuple of 3 float, mm
        Where one of them is.
    """

    kind: str
    count: int
    point: Vector

    def __str__(self) -> str:
        x, y, z = (round(part, 2) + 0.0 for part in self.point)
        return f"{self.count} {self.kind}, one at ({x:.2f}, {y:.2f}, {z:.2f}) mm"


def tidy(vertices: FloatArray, triangles: IntArray) -> tuple[Surface, tuple[Defect, ...]]:
    """Return the triangles as one surface, and what was found wrong with them.

    Points closer than the weld tolerance, or than single precision can tell apart at this
    size, become one.  Triangles without area and doubled ones are left out.  Pieces are
    turned one way; a closed piece so that its normals point outwards.

    Parameters
    ----------
    vertices : (n, 3) float, mm
        Points.
    triangles : (m, 3) int
        Vertex indices.

    Returns
    -------
    surface : Surface
        One patch.  Its edge table raises if non-manifold edges are among the defects.
    defects : tuple of Defect
        Open edges, edges of more than two triangles, points where pieces touch, triangles
        without area, doubled triangles, pieces that cannot be turned one way.  Triangles that
        pass through each other are not looked for.
    """
    vertices, triangles = _welded(vertices, triangles)
    defects: list[Defect] = []
    corners = vertices[triangles]
    cross = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    empty = 0.5 * np.linalg.norm(cross, axis=1) <= TOLERANCES.zero_area
    _note(defects, "triangles without area", corners.mean(axis=1), empty)
    triangles = triangles[~empty]
    first, _ = unique_rows(np.sort(triangles, axis=1))
    doubled = np.ones(len(triangles), dtype=bool)
    doubled[first] = False
    _note(defects, "doubled triangles", vertices[triangles].mean(axis=1), doubled)
    triangles = triangles[~doubled]
    start, end = triangles, np.roll(triangles, -1, axis=1)
    low, high = np.minimum(start, end).ravel(), np.maximum(start, end).ravel()
    key, index, count = np.unique(
        low * len(vertices) + high, return_inverse=True, return_counts=True
    )
    middle = 0.5 * (vertices[key // len(vertices)] + vertices[key % len(vertices)])
    _note(defects, "open edges", middle, count == 1)
    _note(defects, "edges with more than two triangles", middle, count > 2)
    triangles, one_sided = _turned(vertices, triangles, index.reshape(-1), count)
    _note(defects, "pieces that cannot be turned one way", vertices[triangles[:, 0]], one_sided)
    _note(defects, "points where pieces touch", vertices, _touching(triangles, len(vertices)))
    used, number = np.unique(triangles, return_inverse=True)
    return Surface.single(vertices[used], number.reshape(-1, 3)), tuple(defects)


def smooth_patches(surface: Surface, crease: float, name: str = "Face") -> Surface:
    """Return the surface with one patch for each region without a crease, largest first.

    Parameters
    ----------
    surface : Surface
        Any.
    crease : float, radians
        Neighbours that meet at a larger turn belong to different patches.
    name : str
        Patches are called by it and a number from 1.
    """
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    left, right = table.left[inner], table.right[inner]
    turn = np.einsum("ij,ij->i", surface.normals[left], surface.normals[right])
    smooth = turn > np.cos(crease)
    size = len(surface.triangles)
    graph = coo_matrix((np.ones(smooth.sum()), (left[smooth], right[smooth])), (size, size))
    number, label = connected_components(graph, directed=False)
    area = np.bincount(label, weights=surface.areas, minlength=number)
    rank = np.empty(number, dtype=np.int64)
    rank[np.argsort(-area, kind="stable")] = np.arange(number)
    names = tuple(f"{name}{i + 1}" for i in range(number))
    return Surface(surface.vertices, surface.triangles, rank[label], names)


def _welded(vertices: FloatArray, triangles: IntArray) -> tuple[FloatArray, IntArray]:
    first, index = unique_rows(vertices + 0.0)
    unique = vertices[first]
    triangles = index[triangles]
    extent = float(np.ptp(unique, axis=0).max()) if len(unique) else 0.0
    near = max(TOLERANCES.weld, _SINGLE_PRECISION * extent)
    pairs = cKDTree(unique).query_pairs(near, output_type="ndarray")
    if len(pairs) == 0:
        return unique, triangles
    size = len(unique)
    graph = coo_matrix((np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), (size, size))
    label = connected_components(graph, directed=False)[1]
    _, first, place = np.unique(label, return_index=True, return_inverse=True)
    return unique[first], place.reshape(-1)[triangles]


def _note(defects: list[Defect], kind: str, points: FloatArray, which: Array) -> None:
    if which.any():
        x, y, z = points[int(np.flatnonzero(which)[0])].tolist()
        defects.append(Defect(kind, int(which.sum()), (x, y, z)))


def _turned(
    vertices: FloatArray, triangles: IntArray, edge: IntArray, count: IntArray
) -> tuple[IntArray, Array]:
    """Return the triangles turned one way, and which ones start a one-sided piece."""
    size = len(triangles)
    half = np.flatnonzero(count[edge] == 2)
    half = half[np.argsort(edge[half], kind="stable")].reshape(-1, 2)
    owner = half // 3
    start = triangles.ravel()[half]
    against = (start[:, 0] != start[:, 1]).astype(np.int64)
    rows = np.concatenate([owner[:, 0], owner[:, 0] + size])
    columns = np.concatenate([owner[:, 1] + size * (1 - against), owner[:, 1] + size * against])
    graph = coo_matrix((np.ones(len(rows)), (rows, columns)), (2 * size, 2 * size))
    side = connected_components(graph, directed=False)[1]
    whole = coo_matrix((np.ones(len(owner)), (owner[:, 0], owner[:, 1])), (size, size))
    number, piece = connected_components(whole, directed=False)
    first = np.full(number, size)
    np.minimum.at(first, piece, np.arange(size))
    one_sided = np.zeros(size, dtype=bool)
    one_sided[first] = side[first] == side[first + size]
    flipped = side[:size] != side[first[piece]]
    turned = np.where(flipped[:, None], triangles[:, ::-1], triangles)
    share = np.bincount(piece, weights=flipped, minlength=number) / np.bincount(piece)
    mostly = share > 0.5
    corners = vertices[turned]
    volume = np.einsum("ij,ij->i", corners[:, 0], np.cross(corners[:, 1], corners[:, 2])) / 6.0
    closed = np.bincount(piece, weights=(count[edge] != 2).reshape(-1, 3).any(axis=1)) == 0
    inward = np.bincount(piece, weights=volume, minlength=number) < 0.0
    hollow = (share == 0.0) & _inside_another(vertices, triangles, piece, number)
    wrong = np.where(closed, inward & ~hollow, mostly)
    return np.where(wrong[piece][:, None], turned[:, ::-1], turned), one_sided


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


def _touching(triangles: IntArray, size: int) -> Array:
    """Return the points at which several fans of triangles meet: (size,) bool."""
    corner = np.arange(3 * len(triangles)).reshape(-1, 3)
    start, end = triangles, np.roll(triangles, -1, axis=1)
    key = np.minimum(start, end).ravel() * size + np.maximum(start, end).ravel()
    order = np.argsort(key, kind="stable")
    same = np.flatnonzero(np.diff(key[order]) == 0)
    one, other = order[same], order[same + 1]
    ends = np.stack([corner, np.roll(corner, -1, axis=1)], axis=2).reshape(-1, 2)
    flat = triangles.ravel()
    rows, columns = [], []
    for i in (0, 1):
        for j in (0, 1):
            a, b = ends[one, i], ends[other, j]
            joined = flat[a] == flat[b]
            rows.append(a[joined])
            columns.append(b[joined])
    row, column = np.concatenate(rows), np.concatenate(columns)
    graph = coo_matrix((np.ones(len(row)), (row, column)), (len(flat), len(flat)))
    fan = connected_components(graph, directed=False)[1]
    pairs = np.unique(flat * (fan.max(initial=0) + 1) + fan) // (fan.max(initial=0) + 1)
    return np.asarray(np.bincount(pairs, minlength=size) > 1)
