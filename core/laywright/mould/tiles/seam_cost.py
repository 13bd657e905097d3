"""What a seam costs at a place: its length on the working surface, weighted.

A seam through tight curvature is hard to fair, and one that runs along the trim line or close
to a hole weakens the edge; there it counts more.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray
from laywright.surface.triangles import Surface

__all__ = ["SeamCost", "seam_lengths", "seam_weights"]

# Our own choice, all of them
_TIGHT = 50.0  # mm: a seam across a bend of that radius counts twice
_NEAR_EDGE = 10.0  # mm, after which an edge weighs 1/e of what it does beside it
_EDGE_WEIGHT = 2.0  # what a seam right beside an edge counts more, over one on flat ground
_REACH = 6.0  # times `_NEAR_EDGE`, beyond which an edge weighs nothing
_POOLED = 2.0  # mm, side of the cubes whose triangles share one distance to the edges
_EVENED = 6.0  # mm to both sides, over which a cost is evened
_SMALL = 3.0  # mm, below which a triangle is taken as a point
_BIN = 0.25  # mm, step in which points are summed


@dataclass(frozen=True, eq=False)
class SeamCost:
    """What a seam costs anywhere, ready to be asked for many directions.

    Costs are means within 6 mm, free of the triangles' own pattern.  Triangles much smaller
    than that are taken as points; the others are cut exactly.

    Attributes
    ----------
    large : (k, 3, 3) float, mm
        Corners of the larger triangles.
    large_weights : (k,) float
        Their weights.
    points, normals : (s, 3) float
        Centroids in mm and unit normals of the small triangles.
    masses : (s,) float, mm^2
        Weight times area of the small triangles.
    """

    large: FloatArray
    large_weights: FloatArray
    points: FloatArray
    normals: FloatArray
    masses: FloatArray

    @classmethod
    def of(cls, surface: Surface, edges: FloatArray) -> SeamCost:
        """Return the costs on a working surface with the given edge points (k, 3), mm."""
        weights = seam_weights(surface, edges)
        corners = surface.corners
        low = np.minimum(np.minimum(corners[:, 0], corners[:, 1]), corners[:, 2])
        high = np.maximum(np.maximum(corners[:, 0], corners[:, 1]), corners[:, 2])
        small = (high - low).max(axis=1) < _SMALL
        return cls(
            corners[~small],
            weights[~small],
            _middles(corners[small]),
            surface.normals[small],
            (weights * surface.areas)[small],
        )

    def along(self, axis: FloatArray, places: FloatArray) -> FloatArray:
        """Return the cost of a seam across a unit axis (3,) at increasing places (k,): mm."""
        if len(places) < 2:
            return np.zeros(len(places))
        low, high = (
            np.maximum(places - _EVENED, places[0]),
            np.minimum(places + _EVENED, places[-1]),
        )
        lengths = seam_lengths(self.large @ axis, self.large, self.large_weights, places)
        total = np.concatenate(
            [[0.0], np.cumsum(0.5 * (lengths[1:] + lengths[:-1]) * np.diff(places))]
        )
        found = np.interp(high, places, total) - np.interp(low, places, total)
        if len(self.points):
            along = self.points @ axis
            masses = self.masses * np.sqrt(np.maximum(1.0 - (self.normals @ axis) ** 2, 0.0))
            start = float(along.min())
            step = np.floor((along - start) / _BIN).astype(np.int64)
            below = np.concatenate([[0.0], np.cumsum(np.bincount(step, weights=masses))])
            ends = start + _BIN * np.arange(len(below))
            found = found + np.interp(high, ends, below) - np.interp(low, ends, below)
        return np.asarray(found / (high - low), dtype=np.float64)


def seam_weights(surface: Surface, edges: FloatArray) -> FloatArray:
    """Return how much a millimetre of seam counts on every triangle: (m,) float.

    1 on a flat; more by 50 mm times the curvature, and by up to 2 within about 10 mm of an
    edge (our own choice, no source).

    Parameters
    ----------
    surface : Surface
        The working surface.
    edges : (k, 3) float, mm
        Points of the trim line and of the edges of holes.
    """
    near = np.exp(-_distance(_middles(surface.corners), edges) / _NEAR_EDGE)
    return np.asarray(1.0 + _TIGHT * _bend(surface) + _EDGE_WEIGHT * near, dtype=np.float64)


def _middles(corners: FloatArray) -> FloatArray:
    """Return the centroids of triangles: (m, 3) float, mm."""
    return np.asarray((corners[:, 0] + corners[:, 1] + corners[:, 2]) / 3.0, dtype=np.float64)


def _bend(surface: Surface) -> FloatArray:
    """Return the curvature around every triangle: (m,) float, 1/mm.

    The turn of the normal along an edge over its length, the largest of the three edges,
    averaged over the triangles around each corner.
    """
    count, (one, two, three) = len(surface.vertices), surface.triangles.T
    flat = surface.triangles.T.ravel()
    total = [
        np.bincount(flat, np.tile(surface.areas * surface.normals[:, i], 3), count)
        for i in range(3)
    ]
    length = np.maximum(np.sqrt(total[0] ** 2 + total[1] ** 2 + total[2] ** 2), 1e-300)
    normal = [part / length for part in total]
    point = surface.vertices.T.copy()
    bend = np.zeros(len(surface.triangles))
    for start, end in ((one, two), (two, three), (three, one)):
        turn = sum(((part[start] - part[end]) ** 2 for part in normal), np.zeros(len(bend)))
        run = sum(((part[start] - part[end]) ** 2 for part in point), np.zeros(len(bend)))
        np.maximum(bend, turn / np.maximum(run, 1e-12), out=bend)
    around = np.bincount(flat, np.tile(np.sqrt(bend), 3), count)
    mean = around / np.maximum(np.bincount(flat, minlength=count), 1)
    return np.asarray((mean[one] + mean[two] + mean[three]) / 3.0, dtype=np.float64)


def _distance(points: FloatArray, edges: FloatArray) -> FloatArray:
    """Return the distance to the nearest edge point, to 2 mm; far off it is infinite."""
    cell = np.floor((points - points.min(axis=0)) / _POOLED).astype(np.int64)
    size = cell.max(axis=0) + 1
    key = (cell[:, 0] * size[1] + cell[:, 1]) * size[2] + cell[:, 2]
    used, first, index = np.unique(key, return_index=True, return_inverse=True)
    asked = points if len(used) > len(points) // 2 else points[first]
    found, _ = cKDTree(edges).query(asked, distance_upper_bound=_REACH * _NEAR_EDGE)
    return np.asarray(found if asked is points else found[index], dtype=np.float64)


def seam_lengths(
    along: FloatArray, corners: FloatArray, weights: FloatArray, places: FloatArray
) -> FloatArray:
    """Return the weighted length of the section at every place along an axis.

    Parameters
    ----------
    along : (m, 3) float, mm
        Where the corners of every triangle lie along the axis.
    corners : (m, 3, 3) float, mm
        The corners.
    weights : (m,) float
        Weight of every triangle.
    places : (k,) float, mm
        Increasing positions of the plane across the axis.

    Returns
    -------
    (k,) float, mm
        Exact: a plane that moves through a triangle cuts a length that grows linearly to the
        middle corner and falls linearly behind it, and these tents are added up.
    """
    order = np.argsort(along, axis=1)
    ordered = np.take_along_axis(corners, order[..., None], axis=1)
    low, middle, high = np.take_along_axis(along, order, axis=1).T
    reach = high - low
    share = np.where(reach > 0.0, (middle - low) / np.where(reach > 0.0, reach, 1.0), 0.0)
    met = ordered[:, 0] + share[:, None] * (ordered[:, 2] - ordered[:, 0])
    peak = weights * np.linalg.norm(met - ordered[:, 1], axis=1)
    thin = 1e-9 * max(1.0, float(np.abs(reach).max(initial=0.0)))
    total = np.zeros(len(places))
    for start, end, zero in ((low, middle, low), (middle, high, high)):
        used = end - start > thin
        rise = np.where(zero[used] == start[used], peak[used], -peak[used])
        slope = rise / (end[used] - start[used])
        total += _ramps(start[used], end[used], zero[used], slope, places)
    return total


def _ramps(
    start: FloatArray, end: FloatArray, zero: FloatArray, slope: FloatArray, places: FloatArray
) -> FloatArray:
    """Return the sum of the ramps ``slope * (x - zero)`` over [start, end) at places: (k,)."""
    size = len(places) + 1
    value, rate = np.zeros(size), np.zeros(size)
    for at, change in ((start, slope), (end, -slope)):
        place = np.searchsorted(places, at)
        rate += np.bincount(place, weights=change, minlength=size)
        value -= np.bincount(place, weights=change * zero, minlength=size)
    total = np.cumsum(value)[:-1] + np.cumsum(rate)[:-1] * places
    return np.asarray(np.maximum(total, 0.0), dtype=np.float64)
