"""Holes of a moulded face are filled: the mould goes on smoothly below them.

The filling takes its heights from a thin plate laid through the face around the hole (thin
plate spline: Duchon, "Splines minimizing rotation-invariant semi-norms", 1977), so that it
meets the edge without a kink where the face is smooth.
"""

from __future__ import annotations

import numpy as np
import shapely
from manifold3d import triangulate
from scipy.interpolate import RBFInterpolator
from scipy.spatial import Delaunay

from laywright.arrays import FloatArray, IntArray
from laywright.errors import GeometryError
from laywright.mould.clipping import signed_areas
from laywright.surface.triangles import Surface

__all__ = ["fill_holes"]

_AROUND = 250


def fill_holes(surface: Surface, patch: int) -> Surface:
    """Return the surface with all boundary loops but the longest filled.

    Parameters
    ----------
    surface : Surface
        In the mould's frame (pull upwards), mm; its patch names already hold the filling's.
    patch : int
        Patch of the fillings.

    Raises
    ------
    GeometryError
        If a hole's edge crosses itself in the plan view.
    """
    vertices, triangles = [surface.vertices], [surface.triangles]
    count = len(surface.vertices)
    for loop in surface.boundary_loops[1:]:
        inner, facets = _filling(surface, loop)
        number = np.concatenate([loop, count + np.arange(len(inner))])
        vertices.append(inner)
        triangles.append(number[facets])
        count += len(inner)
    every = np.concatenate(triangles)
    added = len(every) - len(surface.triangles)
    return Surface(
        np.concatenate(vertices),
        every,
        np.concatenate([surface.patches, np.full(added, patch)]),
        surface.patch_names,
    )


def _filling(surface: Surface, loop: IntArray) -> tuple[FloatArray, IntArray]:
    """Return inner points of a filling (k, 3) and its triangles, the loop's points first."""
    edge = surface.vertices[loop][:, :2]
    shape = shapely.Polygon(edge)
    if not shape.is_valid or shape.area <= 0.0:
        x, y = edge[0]
        raise GeometryError(
            f"the hole at ({x:.1f}, {y:.1f}) mm in {', '.join(surface.patch_names)}",
            "an edge that crosses itself seen along the pull",
            "an edge that encloses a clear area",
            "close the hole in the part or set another pull direction",
        )
    spacing = float(np.median(np.linalg.norm(np.roll(edge, -1, axis=0) - edge, axis=1)))
    inner = _grid_inside(shape, max(spacing, float(np.sqrt(shape.area / 4000.0))))
    facets = _triangles(edge, inner, shape.area)
    if facets is None:
        inner = np.empty((0, 2))
        ears = np.asarray(triangulate([np.array(edge[::-1])])).astype(np.int64)
        facets = len(loop) - 1 - ears
    return np.column_stack([inner, _heights(surface, loop, inner)]), facets


def _grid_inside(shape: shapely.Polygon, spacing: float) -> FloatArray:
    """Return points of a triangular grid inside a shape, kept off its edge: (k, 2) float."""
    x0, y0, x1, y1 = shape.bounds
    columns = np.arange(x0, x1 + spacing, spacing)
    rows = [
        np.column_stack([columns + 0.5 * spacing * (i % 2), np.full(len(columns), y)])
        for i, y in enumerate(np.arange(y0, y1 + spacing, spacing * np.sqrt(0.75)))
    ]
    grid = np.concatenate(rows)
    room = shape.buffer(-0.7 * spacing)
    return np.asarray(grid[shapely.contains_xy(room, grid)], dtype=np.float64)


def _triangles(edge: FloatArray, inner: FloatArray, area: float) -> IntArray | None:
    """Return upward triangles over edge and inner points, or None if an edge is lost."""
    points = np.concatenate([edge, inner])
    found = Delaunay(points).simplices.astype(np.int64)
    size = signed_areas(points[found])
    found[size < 0] = found[size < 0][:, ::-1]
    shape = shapely.Polygon(edge)
    kept = shapely.contains_xy(shape, points[found].mean(axis=1)) & (np.abs(size) > 1e-12 * area)
    found, size = found[kept], np.abs(size[kept])
    directed = {(a, b) for a, b, _ in np.concatenate([np.roll(found, i, 1) for i in range(3)])}
    number = len(edge)
    whole = all(((i + 1) % number, i) in directed for i in range(number))
    return found if whole and abs(size.sum() - area) <= 1e-9 * area else None


def _heights(surface: Surface, loop: IntArray, flat: FloatArray) -> FloatArray:
    """Return the heights of a thin plate through the face around a hole: (k,) float, mm."""
    if len(flat) == 0:
        return np.empty(0)
    centre = surface.vertices[loop][:, :2].mean(axis=0)
    used = np.unique(surface.triangles)
    near = used[np.argsort(np.linalg.norm(surface.vertices[used][:, :2] - centre, axis=1))]
    known = np.unique(np.concatenate([loop, near[:_AROUND]]))
    _, first = np.unique(np.round(surface.vertices[known][:, :2], 6), axis=0, return_index=True)
    given = surface.vertices[known[first]]
    plate = RBFInterpolator(given[:, :2] - centre, given[:, 2], kernel="thin_plate_spline")
    return np.asarray(plate(flat - centre), dtype=np.float64)
