"""Overlap of triangles in a plane, for many pairs at once."""

from __future__ import annotations

import functools

import numpy as np

from laywright.arrays import Array, FloatArray

__all__ = ["apart", "overlaps", "signed_areas", "union_area"]

_FEW = 24
_CLEARLY = 0.75
_PARALLEL = 1e-200


def signed_areas(triangles: FloatArray) -> FloatArray:
    """Return the signed area of every (p, 3, 2) triangle, counter-clockwise positive: (p,)."""
    a = triangles[:, 1] - triangles[:, 0]
    b = triangles[:, 2] - triangles[:, 0]
    return np.asarray(0.5 * (a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0]), dtype=np.float64)


def apart(one: FloatArray, other: FloatArray, by: float) -> Array:
    """Return which pairs of convex shapes lie farther apart than a distance: (p,) bool.

    Parameters
    ----------
    one, other : (p, c, 2) float, mm
        Segments or triangles.
    by : float, mm
        The distance; a negative one finds also those that overlap by less.

    Notes
    -----
    Convex shapes are apart if they are so seen along a side of one of them.
    """
    left = np.arange(len(one))
    shapes = [np.ascontiguousarray(one.T), np.ascontiguousarray(other.T)]
    for which in range(2):
        corners = shapes[which].shape[1]
        for corner in range(corners if corners > 2 else 1):
            run, rise = shapes[which][:, corner - 1] - shapes[which][:, corner]
            (low, high), (other_low, other_high) = (
                _reach([rise * x - run * y for x, y in zip(*shape, strict=True)])
                for shape in shapes
            )
            gap = np.maximum(low - other_high, other_low - high)
            close = gap <= by * np.sqrt(run * run + rise * rise)
            left = left[close]
            shapes = [shape[:, :, close] for shape in shapes]
    found = np.ones(len(one), dtype=bool)
    found[left] = False
    return found


def _reach(rows: list[FloatArray]) -> tuple[FloatArray, FloatArray]:
    """Return the least and the largest of numbers that stand in rows."""
    return functools.reduce(np.minimum, rows), functools.reduce(np.maximum, rows)


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


def union_area(polygons: FloatArray) -> float:
    """Return the area that convex polygons cover together.

    The plane is cut into upright strips at every corner and crossing; within a strip the
    covered length changes linearly, so its value in the middle times the width is exact.

    Parameters
    ----------
    polygons : (k, c, 2) float, mm
        Convex polygons; corners may repeat.

    Examples
    --------
    >>> square = np.array([[0.0, 0.0], [2.0, 0.0], [2.0, 2.0], [0.0, 2.0]])
    >>> union_area(np.stack([square, square + 1.0]))
    7.0
    """
    return _covered(polygons, polygons.min(axis=(0, 1)), polygons.max(axis=(0, 1)))


def _covered(polygons: FloatArray, low: FloatArray, high: FloatArray) -> float:
    """Return the area that convex polygons cover together in a window.

    Many polygons are shared out between two halves of the window, as often as that leaves each
    half with clearly fewer: the strips cost the square of their number.
    """
    if len(polygons) > _FEW:
        least, most = polygons.min(axis=1), polygons.max(axis=1)
        middle = np.median(0.5 * (least + most), axis=0)
        before, after = least < middle, most > middle
        larger = np.maximum(before.sum(axis=0), after.sum(axis=0))
        axis = int(np.argmin(larger))
        if larger[axis] <= _CLEARLY * len(polygons) and low[axis] < middle[axis] < high[axis]:
            end, start = high.copy(), low.copy()
            end[axis] = start[axis] = middle[axis]
            return _covered(polygons[before[:, axis]], low, end) + _covered(
                polygons[after[:, axis]], start, high
            )
    return _strips(polygons, low, high)


def _strips(polygons: FloatArray, lowest: FloatArray, highest: FloatArray) -> float:
    """Return the area that convex polygons cover together in a window, strip by strip."""
    start, end = polygons, np.roll(polygons, -1, axis=1)
    run, rise = np.moveaxis(end - start, 2, 0)
    across = [
        (start[..., 0] + (level - start[..., 1]) / np.where(rise != 0.0, rise, 1.0) * run).ravel()
        for level in (lowest[1], highest[1])
    ]
    places = np.concatenate([polygons[..., 0].ravel(), _crossings(start, end), *across])
    places = np.unique(np.clip(places, lowest[0], highest[0]))
    middle, width = 0.5 * (places[1:] + places[:-1]), np.diff(places)
    share = (middle[:, None, None] - start[..., 0]) / np.where(run != 0.0, run, 1.0)
    met = (run != 0.0) & (share >= 0.0) & (share <= 1.0)
    height = np.clip(start[..., 1] + share * rise, lowest[1], highest[1])
    low = np.where(met, height, np.inf).min(axis=2)
    high = np.where(met, height, -np.inf).max(axis=2)
    order = np.argsort(low, axis=1)
    low, high = np.take_along_axis(low, order, axis=1), np.take_along_axis(high, order, axis=1)
    reached = np.maximum.accumulate(high, axis=1)
    before = np.concatenate([np.full((len(middle), 1), -np.inf), reached[:, :-1]], axis=1)
    gained = np.where(high > low, high - np.maximum(low, before), 0.0)
    return float(np.maximum(gained, 0.0).sum(axis=1) @ width)


def _crossings(start: FloatArray, end: FloatArray) -> FloatArray:
    """Return the x of all points where sides of different polygons cross: (n,) float."""
    a, b = start.reshape(-1, 2), end.reshape(-1, 2)
    distinct = (a != b).any(axis=1)
    a, way = a[distinct], (b - a)[distinct]
    turn = way[:, None, 0] * way[None, :, 1] - way[:, None, 1] * way[None, :, 0]
    offset = a[None] - a[:, None]
    crossing = np.abs(turn) > _PARALLEL
    safe = np.where(crossing, turn, 1.0)
    one = (offset[..., 0] * way[None, :, 1] - offset[..., 1] * way[None, :, 0]) / safe
    other = (offset[..., 0] * way[:, None, 1] - offset[..., 1] * way[:, None, 0]) / safe
    met = crossing & (one > 0.0) & (one < 1.0) & (other > 0.0) & (other < 1.0)
    return np.asarray((a[:, None, 0] + one * way[:, None, 0])[met], dtype=np.float64)


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
