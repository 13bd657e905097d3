"""A heap of triangles made one surface: welded, freed of scraps, turned one way.

What is found wrong on the way is kept as a list of defects, each with its count and places
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
from laywright.surface.turning import edge_ends, half_edges, touching_points, turned_one_way
from laywright.surface.unique import unique_keys, unique_rows
from laywright.tolerances import TOLERANCES

__all__ = ["ONE_SIDED", "PLACES", "Defect", "defect_at", "smooth_patches", "tidy"]

ONE_SIDED = "pieces that cannot be turned one way"
"""Kind of a defect: a band that comes back to itself turned over."""

PLACES = 50
"""Of a defect that is found more often, the places of so many are kept."""

_SINGLE_PRECISION = 2e-7
_SPECK = 1e-3
_ROUNDS = 20


@dataclass(frozen=True)
class Defect:
    """Something wrong with a mesh.

    Attributes
    ----------
    kind : str
        What it is, in plain words, in the plural.
    count : int
        How many.
    points : tuple of tuple of 3 float, mm
        Where they are; of many, `PLACES` spread over all.
    """

    kind: str
    count: int
    points: tuple[Vector, ...]

    def __str__(self) -> str:
        return self.words()

    def words(self, most: int = 3) -> str:
        """Return kind, count and at most so many places."""
        named = self.points[:most]
        places = ", ".join(
            "({:.2f}, {:.2f}, {:.2f})".format(*(round(part, 2) + 0.0 for part in point))
            for point in named
        )
        left = self.count - len(named)
        if left:
            return f"{self.count} {self.kind} at {places} mm and {left} more"
        return f"{self.count} {self.kind} at {places} mm"


def defect_at(kind: str, points: FloatArray) -> Defect:
    """Return a defect that is found at all of some points (k, 3)."""
    step = np.linspace(0, len(points) - 1, min(len(points), PLACES))
    shown = points[np.unique(np.rint(step).astype(np.int64))]
    return Defect(kind, len(points), tuple((x, y, z) for x, y, z in shown.tolist()))


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
    empty = _doubled_areas(vertices, triangles) <= 2.0 * TOLERANCES.zero_area
    triangles = _without(defects, "triangles without area", vertices, triangles, empty)
    first, _ = unique_rows(np.sort(triangles, axis=1))
    if len(first) < len(triangles):
        doubled = np.ones(len(triangles), dtype=bool)
        doubled[first] = False
        triangles = _without(defects, "doubled triangles", vertices, triangles, doubled)
    half = half_edges(triangles, len(vertices))
    for kind, which in (
        ("open edges", half.count == 1),
        ("edges with more than two triangles", half.count > 2),
    ):
        if which.any():
            ends = half.first[which]
            start, end = triangles.ravel()[ends], edge_ends(triangles).ravel()[ends]
            defects.append(defect_at(kind, 0.5 * (vertices[start] + vertices[end])))
    triangles, twin, one_sided = turned_one_way(vertices, triangles, half)
    if one_sided.any():
        defects.append(defect_at(ONE_SIDED, vertices[triangles[one_sided, 0]]))
    crowded = np.zeros(len(vertices), dtype=bool)
    for many in half.first[half.count > 2].tolist():
        crowded[[triangles.ravel()[many], edge_ends(triangles).ravel()[many]]] = True
    touching = touching_points(triangles, twin, len(vertices)) & ~crowded
    if touching.any():
        defects.append(defect_at("points where pieces touch", vertices[touching]))
    used = np.zeros(len(vertices), dtype=bool)
    used[triangles] = True
    number = np.cumsum(used) - 1
    return Surface.single(vertices[used], number[triangles]), tuple(defects)


def smooth_patches(surface: Surface, crease: float, name: str = "Face") -> Surface:
    """Return the surface with one patch for each region without a crease, largest first.

    A speck of less than a thousandth of the surface, most of whose border is with one larger
    region, belongs to that: noise is no crease.

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
    label = connected_components(graph, directed=False)[1]
    label = _specks_joined(surface, label, inner)
    number = int(label.max(initial=-1)) + 1
    area = np.bincount(label, weights=surface.areas, minlength=number)
    rank = np.empty(number, dtype=np.int64)
    rank[np.argsort(-area, kind="stable")] = np.arange(number)
    names = tuple(f"{name}{i + 1}" for i in range(number))
    return Surface(surface.vertices, surface.triangles, rank[label], names)


def _specks_joined(surface: Surface, label: IntArray, inner: Array) -> IntArray:
    """Return the regions' numbers with specks counted to the region around them: (m,) int."""
    table = surface.edges
    ends = surface.vertices[table.ends]
    length = np.linalg.norm(ends[:, 1] - ends[:, 0], axis=1)
    left = np.where(table.left < 0, table.right, table.left)
    right = np.where(table.right < 0, table.left, table.right)
    for _ in range(_ROUNDS):
        count = int(label.max(initial=-1)) + 1
        area = np.bincount(label, surface.areas, count)
        speck = area < _SPECK * surface.area
        if not speck.any():
            break
        one, other = label[left], label[right]
        met = np.flatnonzero(inner & (one != other))
        pairs = (np.concatenate([one[met], other[met]]), np.concatenate([other[met], one[met]]))
        border = coo_matrix((np.tile(length[met], 2), pairs), (count, count)).tocsr()
        around = np.asarray(border.sum(axis=1)).ravel()
        shared = np.asarray(border.max(axis=1).todense()).ravel()
        host = np.asarray(border.argmax(axis=1)).ravel()
        joined = speck & (shared > 0.5 * around) & (area < area[host])
        if not joined.any():
            break
        label = unique_keys(np.where(joined, host, np.arange(count))[label])[1]
    return label


def _welded(vertices: FloatArray, triangles: IntArray) -> tuple[FloatArray, IntArray]:
    first, index = unique_rows(vertices + 0.0)
    unique = vertices[first]
    triangles = index[triangles]
    extent = float(np.ptp(unique, axis=0).max()) if len(unique) else 0.0
    near = max(TOLERANCES.weld, _SINGLE_PRECISION * extent)
    tree = cKDTree(unique, balanced_tree=False, compact_nodes=False)
    pairs = tree.query_pairs(near, output_type="ndarray")
    if len(pairs) == 0:
        return unique, triangles
    size = len(unique)
    graph = coo_matrix((np.ones(len(pairs)), (pairs[:, 0], pairs[:, 1])), (size, size))
    label = connected_components(graph, directed=False)[1]
    first, place = unique_keys(label)
    return unique[first], place[triangles]


def _doubled_areas(vertices: FloatArray, triangles: IntArray) -> FloatArray:
    """Return twice the area of every triangle, mm^2."""
    x, y, z = (np.ascontiguousarray(vertices[:, axis]) for axis in range(3))
    a, b, c = (np.ascontiguousarray(triangles[:, corner]) for corner in range(3))
    ux, uy, uz = x[b] - x[a], y[b] - y[a], z[b] - z[a]
    vx, vy, vz = x[c] - x[a], y[c] - y[a], z[c] - z[a]
    squares = (uy * vz - uz * vy) ** 2 + (uz * vx - ux * vz) ** 2 + (ux * vy - uy * vx) ** 2
    return np.asarray(np.sqrt(squares))


def _without(
    defects: list[Defect], kind: str, vertices: FloatArray, triangles: IntArray, which: Array
) -> IntArray:
    """Return the other triangles, those that are left out noted."""
    if not which.any():
        return triangles
    defects.append(defect_at(kind, vertices[triangles[which]].mean(axis=1)))
    return triangles[~which]
