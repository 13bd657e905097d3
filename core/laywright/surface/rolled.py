"""Offset beyond the radius of curvature: where the exact offset folds, a rolling ball's envelope.

Seen along a direction from which the whole surface is visible, the true offset is the envelope
of balls about all its points (see `laywright.surface.ball`).  Triangles whose moved corners lie
on it are kept as they are; the folded ones are cut away and the gap is filled with triangles
between points of the envelope, refined until they follow it within a stated accuracy.
"""

from __future__ import annotations

import numpy as np
import shapely
from manifold3d import CrossSection, FillRule, triangulate
from scipy.spatial import Delaunay, cKDTree

from laywright.arrays import Array, FloatArray, IntArray
from laywright.errors import GeometryError
from laywright.surface.ball import ball_heights
from laywright.surface.triangles import Surface

__all__ = ["ACCURACY", "rolled_offset"]

ACCURACY = 0.02
"""Largest height, mm, by which a new triangle's middle may miss the envelope."""

_WITHIN = 0.005
_SAME = 2e-5
_SLIVER = 1e-6
_ROUNDS = 8
_GROWTHS = 4


def rolled_offset(surface: Surface, moved: Surface, radius: float) -> Surface | None:
    """Return the offset of a surface upwards by a radius, its folds cut away.

    Parameters
    ----------
    surface : Surface
        In a frame whose third axis sees all of it, normals not downwards, mm.
    moved : Surface
        The same triangles with every vertex offset, folds included.
    radius : float, mm
        Distance, positive.

    Returns
    -------
    Surface or None
        Patches as those of the nearest triangles; None where no clean surface is found.
    """
    corners = surface.corners
    level = ball_heights(moved.vertices[:, :2], corners, radius)
    low = moved.vertices[:, 2] < level - max(1e-6, _WITHIN * radius)
    bad = low[moved.triangles].any(axis=1) | (moved.normals[:, 2] <= 0.0)
    area = surface.areas > 0.0
    bad |= ~area | (np.einsum("ij,ij->i", surface.normals, moved.normals) <= 0.0)
    for _ in range(_GROWTHS):
        try:
            return _patched(surface, moved, ~bad, radius)
        except GeometryError:
            touched = np.zeros(len(moved.vertices), dtype=bool)
            touched[moved.triangles[bad]] = True
            bad |= touched[moved.triangles].any(axis=1)
    return None


def _patched(surface: Surface, moved: Surface, kept: Array, radius: float) -> Surface:
    whole = _section(moved, moved.boundary_loops)
    if kept.any():
        good = moved.part(kept)
        gap = whole - _section(good, good.boundary_loops)
        known = good.vertices
    else:
        good, gap, known = None, whole, np.empty((0, 3))
    size = float(np.median(np.linalg.norm(np.diff(surface.corners[:, :2], axis=1), axis=2)))
    points, triangles = [known], []
    count = len(known)
    tree = cKDTree(known[:, :2]) if len(known) else None
    for piece in gap.decompose():
        if piece.area() < _SLIVER * size**2:
            continue
        rings = _clean(piece, tree)
        if len(rings) == 0:
            continue
        number, fresh = _numbered(rings, tree, count)
        inner, facets = _filled(rings, surface.corners, radius, size)
        flat = np.concatenate([np.concatenate(rings)[fresh], inner])
        level = ball_heights(flat, surface.corners, radius)
        points.append(np.column_stack([flat, level]))
        index = np.concatenate([number, count + fresh.sum() + np.arange(len(inner))])
        triangles.append(index[facets])
        count += len(flat)
    every = np.concatenate(points)
    added = np.concatenate(triangles) if triangles else np.empty((0, 3), dtype=np.int64)
    if not np.isfinite(every).all():
        raise _unclean(surface)
    centres = every[added].mean(axis=1)
    nearest = cKDTree(surface.centroids).query(centres)[1] if len(added) else np.empty(0, int)
    result = Surface(
        every,
        added if good is None else np.concatenate([good.triangles, added]),
        np.concatenate(
            [np.empty(0, int) if good is None else good.patches, surface.patches[nearest]]
        ),
        surface.patch_names,
    )
    flat_area = float((result.areas * result.normals[:, 2]).sum())
    if abs(flat_area - whole.area()) > 1e-5 * whole.area() or not _as_whole(result, surface):
        raise _unclean(surface)
    return result


def _as_whole(result: Surface, surface: Surface) -> bool:
    """Whether the result hangs together as the surface did, outline for outline."""
    return len(result.boundary_loops) == len(surface.boundary_loops) and (
        result.components.max() == surface.components.max()
    )


def _unclean(surface: Surface) -> GeometryError:
    return GeometryError(
        ", ".join(surface.patch_names), "an offset with gaps", "a clean offset", "smooth the face"
    )


def _section(surface: Surface, loops: tuple[IntArray, ...]) -> CrossSection:
    return CrossSection(
        [np.array(surface.vertices[loop][:, :2]) for loop in loops], FillRule.Positive
    )


def _clean(piece: CrossSection, tree: cKDTree | None) -> list[FloatArray]:
    """Return a gap's rings, the outer one first, points of the kept triangles drawn on."""
    rings = []
    for ring in piece.to_polygons():
        flat = np.asarray(ring, dtype=np.float64)
        if tree is not None:
            away, near = tree.query(flat)
            flat = np.where((away < _SAME)[:, None], tree.data[near], flat)
        flat = flat[np.linalg.norm(flat - np.roll(flat, 1, axis=0), axis=1) > 0.0]
        if len(flat) > 2:
            rings.append(flat)
    rings.sort(key=lambda ring: -abs(shapely.Polygon(ring).area))
    if rings and abs(shapely.Polygon(rings[0]).area) < _SLIVER:
        return []
    return rings


def _numbered(rings: list[FloatArray], tree: cKDTree | None, count: int) -> tuple[IntArray, Array]:
    """Return the vertex of every ring point, and which of them are new."""
    flat = np.concatenate(rings)
    if tree is None:
        return count + np.arange(len(flat)), np.ones(len(flat), dtype=bool)
    away, near = tree.query(flat)
    fresh = away > 0.0
    number = np.where(fresh, count + np.cumsum(fresh) - 1, near)
    return number.astype(np.int64), fresh


def _filled(
    rings: list[FloatArray], corners: FloatArray, radius: float, size: float
) -> tuple[FloatArray, IntArray]:
    """Return inner points of a gap and its triangles, the rings' points first."""
    edge = np.concatenate(rings)
    shape = shapely.Polygon(rings[0], rings[1:])
    inner = np.empty((0, 2))
    facets = np.asarray(triangulate(rings)).astype(np.int64)
    for _ in range(_ROUNDS):
        flat = np.concatenate([edge, inner])
        level = ball_heights(flat, corners, radius)
        where = flat[facets].mean(axis=1)
        miss = np.abs(ball_heights(where, corners, radius) - level[facets].mean(axis=1))
        longest = np.linalg.norm(flat[facets] - flat[np.roll(facets, -1, axis=1)], axis=2).max(1)
        wanted = (miss > ACCURACY) & (longest > 0.02 * size) | (longest > 4.0 * size)
        if not wanted.any():
            break
        more = np.concatenate([inner, where[wanted]])
        found = _triangles(edge, rings, more, shape)
        if found is None:
            break
        inner, facets = more, found
    return inner, facets


def _triangles(
    edge: FloatArray, rings: list[FloatArray], inner: FloatArray, shape: shapely.Polygon
) -> IntArray | None:
    """Return triangles over ring and inner points, or None where a ring's edge is lost."""
    points = np.concatenate([edge, inner])
    found = Delaunay(points).simplices.astype(np.int64)
    a, b, c = points[found].transpose(1, 0, 2)
    double = (b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0]
    found[double < 0] = found[double < 0][:, ::-1]
    inside = shapely.contains_xy(shape, points[found].mean(axis=1))
    kept = inside & (np.abs(double) > 1e-12 * shape.area)
    found = found[kept]
    area = 0.5 * float(np.abs(double[kept]).sum())
    sides = np.concatenate([found[:, [i, (i + 1) % 3]] for i in range(3)])
    present = set(map(tuple, np.sort(sides, axis=1).tolist()))
    first = 0
    for ring in rings:
        for i in range(len(ring)):
            pair = sorted((first + i, first + (i + 1) % len(ring)))
            if tuple(pair) not in present:
                return None
        first += len(ring)
    return found if abs(area - shape.area) < 1e-7 * shape.area else None
