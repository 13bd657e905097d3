"""Overlap of triangles in a plane, for many pairs at once."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray

__all__ = ["overlaps", "signed_areas"]


def signed_areas(triangles: FloatArray) -> FloatArray:
    """Return the signed area of every (p, 3, 2) triangle, counter-clockwise positive: (p,)."""
    a = triangles[:, 1] - triangles[:, 0]
    b = triangles[:, 2] - triangles[:, 0]
    return np.asarray(0.5 * (a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0]), dtype=np.float64)


def overlaps(subjects: FloatArray, clips: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Return the polygons in which pairs of triangles overlap, and their areas.

    Every subject is cut by the three edge lines of its clip triangle in turn (Sutherland and
    Hodgman, 1974), which is exact for convex shapes.

    Parameters
    ----------
    subjects, clips : (p, 3, 2) float, mm
        Triangles, counter-clockwise.

    Returns
    -------
    polygons : (p, 9, 2) float, mm
        Corners of the overlap; a polygon with fewer corners repeats its last one.
    areas : (p,) float, mm^2
        Area of the overlap, 0 where there is none.
    """
    polygons, counts = subjects, np.full(len(subjects), 3)
    for corner in range(3):
        start, end = clips[:, corner], clips[:, (corner + 1) % 3]
        polygons, counts = _cut(polygons, counts, start, end - start)
    local = polygons - polygons[:, :1]
    after = np.roll(local, -1, axis=1)
    areas = 0.5 * (local[..., 0] * after[..., 1] - local[..., 1] * after[..., 0]).sum(axis=1)
    return polygons, np.where(counts > 2, np.maximum(areas, 0.0), 0.0)


def _cut(
    polygons: FloatArray, counts: FloatArray, start: FloatArray, along: FloatArray
) -> tuple[FloatArray, FloatArray]:
    """Keep of every polygon what lies left of a line."""
    pairs, size = polygons.shape[:2]
    after = np.roll(polygons, -1, axis=1)
    here = _left_of(polygons, start, along)
    there = np.roll(here, -1, axis=1)
    crossing = (here > 0) != (there > 0)
    share = np.where(crossing, here / np.where(crossing, here - there, 1.0), 0.0)
    met = polygons + share[..., None] * (after - polygons)
    points = np.stack([polygons, met], axis=2).reshape(pairs, 2 * size, 2)
    kept = np.stack([here > 0, crossing], axis=2).reshape(pairs, 2 * size)
    order = np.argsort(~kept, axis=1, kind="stable")[:, : size + 2]
    count = kept.sum(axis=1)
    order = np.where(
        np.arange(order.shape[1]) < count[:, None],
        order,
        np.take_along_axis(order, np.maximum(count - 1, 0)[:, None], axis=1),
    )
    return np.take_along_axis(points, order[..., None], axis=1), count


def _left_of(points: FloatArray, start: FloatArray, along: FloatArray) -> FloatArray:
    offset = points - start[:, None]
    return np.asarray(
        along[:, None, 0] * offset[..., 1] - along[:, None, 1] * offset[..., 0], dtype=np.float64
    )
