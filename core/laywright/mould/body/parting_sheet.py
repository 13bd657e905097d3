"""The sheet along which two pieces of a mould touch.

Seen along an axis between the pulls of the two pieces the sheet is a graph: it covers every
place once, so both pieces leave it.  It passes exactly through the parting lines; elsewhere its
height is harmonic (the least bending of a stretched skin, by linear finite elements; Dziuk,
"Finite elements for the Beltrami operator on arbitrary surfaces", 1988), pressed where needed
between the working areas of the two pieces.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np
import shapely
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve
from scipy.spatial import Delaunay
from shapely import STRtree

from laywright.arrays import FloatArray, IntArray
from laywright.errors import GeometryError
from laywright.mould.body.base import close_down
from laywright.mould.clipping import signed_areas
from laywright.surface.triangles import Surface

__all__ = ["Sheet", "lay_sheet"]

_CELLS = 45
_HALVINGS = 6
_OFF_LINE = 0.5
_CORNER = 0.1
_AWAY = 1e-3


@dataclass(frozen=True, eq=False)
class Sheet:
    """A graph over the plan view along its axis.

    Attributes
    ----------
    surface : Surface
        In the frame whose third axis is the sheet's, mm.
    """

    surface: Surface

    def below(self, floor: float) -> Surface:
        """Return the closed body between the sheet and a floor."""
        return close_down(self.surface, floor, 0, 0)

    def height(self, places: FloatArray) -> FloatArray:
        """Return height and steepest slope at plan places (k, 2): (k, 2) float."""
        corners = self.surface.corners
        tree = STRtree(shapely.polygons(corners[..., :2]))
        place, facet = tree.query(shapely.points(places), predicate="intersects")
        found = np.full((len(places), 2), np.nan)
        normal = self.surface.normals[facet]
        offset = places[place] - corners[facet, 0, :2]
        rise = -np.einsum("ij,ij->i", normal[:, :2], offset) / normal[:, 2]
        found[place, 0] = corners[facet, 0, 2] + rise
        found[place, 1] = np.linalg.norm(normal[:, :2], axis=1) / normal[:, 2]
        return found


def lay_sheet(
    lines: list[FloatArray], low: Surface, high: Surface, bounds: FloatArray, where: str
) -> Sheet:
    """Return the sheet through parting lines.

    Parameters
    ----------
    lines : list of (k, 3) float, mm
        Chains of points in the sheet's frame; a closed one repeats its first point.
    low, high : Surface
        Working areas below and above it, in the same frame.
    bounds : (2, 2) float, mm
        Plan corners of what is parted.
    where : str
        Name for messages.

    Raises
    ------
    GeometryError
        If a line crosses itself in the plan view.
    """
    grid, spacing = _grid(bounds, lines, np.concatenate([low.vertices, high.vertices]))
    fixed, edges = _joined(lines)
    for _ in range(_HALVINGS):
        points = np.concatenate([fixed[:, :2], grid])
        triangles = _triangles(points)
        lost = _lost(edges, triangles, len(points))
        if not len(lost):
            break
        fixed, edges = _halved(fixed, edges, lost)
        grid = _clear(grid, fixed, edges, _CORNER * spacing)
    else:
        x, y, z = fixed[edges[lost[0], 0]]
        raise GeometryError(
            where,
            f"a parting line that crosses itself near ({x:.1f}, {y:.1f}, {z:.1f}) mm in its frame",
            "parting lines that are seen apart along the pieces' pulls",
            "allow more pieces, or change the part",
        )
    height = _harmonic(points, triangles, fixed[:, 2])
    height[len(fixed) :] = _between(grid, height[len(fixed) :], low, high)
    return Sheet(Surface.single(np.column_stack([points, height]), triangles, "sheet"))


def _grid(
    bounds: FloatArray, lines: list[FloatArray], corners: FloatArray
) -> tuple[FloatArray, float]:
    """Return plan places off the lines: a grid, and the corners of the working areas."""
    spacing = float((bounds[1] - bounds[0]).max()) / _CELLS
    x, y = (
        np.linspace(a, b, max(3, round((b - a) / spacing) + 1))
        for a, b in zip(bounds[0], bounds[1], strict=True)
    )
    grid = np.stack([a.ravel() for a in np.meshgrid(x, y, indexing="ij")], axis=1)
    cells = np.unique(np.round(corners[:, :2] / (_CORNER * spacing)), axis=0, return_index=True)[1]
    near = shapely.multilinestrings([shapely.linestrings(line[:, :2]) for line in lines])
    found = []
    for places, away in ((grid, _OFF_LINE), (corners[cells, :2], _CORNER)):
        off = shapely.distance(near, shapely.points(places)) > away * spacing
        found.append(places[off])
    return np.concatenate(found), spacing


def _joined(lines: list[FloatArray]) -> tuple[FloatArray, IntArray]:
    """Return the points of all lines once, and their edges: (k, 3), (e, 2)."""
    points, index = np.unique(np.concatenate(lines), axis=0, return_inverse=True)
    index = index.reshape(-1)
    first = np.cumsum([0] + [len(line) for line in lines])
    edges = [
        np.stack([index[a : b - 1], index[a + 1 : b]], axis=1) for a, b in pairwise(first.tolist())
    ]
    return points, np.concatenate(edges)


def _triangles(points: FloatArray) -> IntArray:
    found: IntArray = Delaunay(points).simplices.astype(np.int64)
    size = signed_areas(points[found])
    found[size < 0] = found[size < 0][:, ::-1]
    return np.asarray(found[np.abs(size) > 1e-12 * float(np.abs(size).max())])


def _lost(edges: IntArray, triangles: IntArray, count: int) -> IntArray:
    """Return the edges that no triangle has."""
    sides = np.sort(np.concatenate([triangles[:, [i, (i + 1) % 3]] for i in range(3)]), axis=1)
    wanted = np.sort(edges, axis=1)
    known = np.unique(sides[:, 0] * count + sides[:, 1])
    return np.flatnonzero(~np.isin(wanted[:, 0] * count + wanted[:, 1], known))


def _halved(fixed: FloatArray, edges: IntArray, lost: IntArray) -> tuple[FloatArray, IntArray]:
    middle = len(fixed) + np.arange(len(lost))
    start, end = edges[lost].T
    kept = np.delete(edges, lost, axis=0)
    halves = [np.stack([start, middle], axis=1), np.stack([middle, end], axis=1)]
    return (
        np.concatenate([fixed, 0.5 * (fixed[start] + fixed[end])]),
        np.concatenate([kept, *halves]),
    )


def _clear(grid: FloatArray, fixed: FloatArray, edges: IntArray, away: float) -> FloatArray:
    near = shapely.multilinestrings(shapely.linestrings(fixed[edges][..., :2]))
    return np.asarray(grid[shapely.distance(near, shapely.points(grid)) > away])


def _harmonic(points: FloatArray, triangles: IntArray, known: FloatArray) -> FloatArray:
    """Return heights that are given at the first points and harmonic at the others."""
    size, count = len(points), len(known)
    corners = points[triangles]
    doubled = 2.0 * np.abs(signed_areas(corners))
    rows, columns, values = [], [], []
    for i in range(3):
        j, k = (i + 1) % 3, (i + 2) % 3
        u, v = corners[:, j] - corners[:, i], corners[:, k] - corners[:, i]
        weight = 0.5 * np.einsum("ij,ij->i", u, v) / np.maximum(doubled, 1e-12)
        a, b = triangles[:, j], triangles[:, k]
        rows += [a, b, a, b]
        columns += [b, a, a, b]
        values += [-weight, -weight, weight, weight]
    matrix = coo_matrix(
        (np.concatenate(values), (np.concatenate(rows), np.concatenate(columns))), (size, size)
    ).tocsr()
    free = matrix[count:, count:]
    height = np.concatenate([known, np.zeros(size - count)])
    if size > count:
        height[count:] = spsolve(free.tocsc(), -(matrix[count:, :count] @ known))
    return np.asarray(np.clip(height, known.min(), known.max()))


def _between(grid: FloatArray, height: FloatArray, low: Surface, high: Surface) -> FloatArray:
    """Return heights pressed above the lower working area and below the upper one."""
    floor = _reach(grid, low, -np.inf, np.maximum)
    ceiling = _reach(grid, high, np.inf, np.minimum)
    both = np.isfinite(floor) & np.isfinite(ceiling)
    gap = np.where(both, 0.1 * (np.where(both, ceiling, 1.0) - np.where(both, floor, 0.0)), 1.0)
    gap = np.maximum(np.minimum(gap, 1.0), _AWAY)
    return np.asarray(np.minimum(np.maximum(height, floor + gap), ceiling - gap))


def _reach(places: FloatArray, surface: Surface, start: float, pick: np.ufunc) -> FloatArray:
    """Return the highest or lowest point of a surface at plan places: (k,) float."""
    found = np.full(len(places), start)
    normal, corners = surface.normals, surface.corners
    lying = np.flatnonzero(np.abs(normal[:, 2]) > 1e-6)
    tree = STRtree(shapely.polygons(corners[lying][..., :2]))
    place, facet = tree.query(shapely.points(places), predicate="intersects")
    facet = lying[facet]
    offset = places[place] - corners[facet, 0, :2]
    rise = -np.einsum("ij,ij->i", normal[facet, :2], offset) / normal[facet, 2]
    pick.at(found, place, corners[facet, 0, 2] + rise)
    return found
