"""What a seam costs at a place: its length on the working surface, weighted.

A seam through tight curvature is hard to fair, and one that runs along the trim line weakens
the edge; there it counts more.
"""

from __future__ import annotations

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray
from laywright.surface.triangles import Surface

__all__ = ["place_seams", "seam_lengths", "seam_weights"]

_TIGHT = 50.0
_NEAR_TRIM = 10.0
_TRIM_WEIGHT = 2.0
_UNEVEN = 0.05


def seam_weights(surface: Surface, trim_line: FloatArray) -> FloatArray:
    """Return how much a millimetre of seam counts on every triangle: (m,) float.

    1 on a flat; more by 50 mm times the curvature, and by up to 2 within about 10 mm of the
    trim line (our own choice, no source).
    """
    normals = surface.vertex_normals[surface.triangles]
    corners = surface.corners
    bend = np.zeros(len(corners))
    for corner in range(3):
        other = (corner + 1) % 3
        length = np.linalg.norm(corners[:, other] - corners[:, corner], axis=1)
        turn = np.linalg.norm(normals[:, other] - normals[:, corner], axis=1)
        bend = np.maximum(bend, turn / np.maximum(length, 1e-6))
    flat = surface.triangles.ravel()
    count = np.bincount(flat, minlength=len(surface.vertices))
    around = np.bincount(flat, weights=np.repeat(bend, 3), minlength=len(count))
    bend = (around / np.maximum(count, 1))[surface.triangles].mean(axis=1)
    distance, _ = cKDTree(trim_line).query(
        surface.centroids, distance_upper_bound=10.0 * _NEAR_TRIM
    )
    return np.asarray(
        1.0 + _TIGHT * bend + _TRIM_WEIGHT * np.exp(-distance / _NEAR_TRIM), dtype=np.float64
    )


def seam_lengths(
    corners: FloatArray, weights: FloatArray, axis: int, places: FloatArray
) -> FloatArray:
    """Return the weighted length of the section at every place along an axis.

    Parameters
    ----------
    corners : (m, 3, 3) float, mm
        Triangles in the tiles' frame.
    weights : (m,) float
        Weight of every triangle.
    axis : int
        0, 1 or 2.
    places : (k,) float, mm
        Increasing positions of the plane across the axis.

    Returns
    -------
    (k,) float, mm
        Exact: a plane that moves through a triangle cuts a length that grows linearly to the
        middle corner and falls linearly behind it, and these tents are added up.
    """
    order = np.argsort(corners[:, :, axis], axis=1)
    ordered = np.take_along_axis(corners, order[..., None], axis=1)
    low, middle, high = (ordered[:, i, axis] for i in range(3))
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


def place_seams(
    places: FloatArray,
    costs: FloatArray,
    extent: tuple[float, float],
    count: int,
    longest: float,
    shortest: float,
) -> tuple[tuple[float, ...], float] | None:
    """Return the cheapest places of `count` seams, or None if none fit.

    Parameters
    ----------
    places, costs : (k,) float
        Candidate places, increasing, and what a seam costs at each.
    extent : tuple of 2 float, mm
        Where the body starts and ends.
    count : int
        Number of seams.
    longest, shortest : float, mm
        Limits of the length of every piece.

    Returns
    -------
    places : tuple of float
        The seams.
    cost : float
        Sum of their costs plus a little for uneven pieces.

    Notes
    -----
    Dynamic programming over the candidates (Bellman 1957): the best end of the first i pieces
    at each candidate follows from that of the first i - 1.  It is the true optimum among the
    candidates.
    """
    low, high = extent
    slack = 1e-9 * max(1.0, high - low)
    mean = (high - low) / (count + 1)
    scale = _UNEVEN * float(costs.mean()) if len(costs) else 0.0
    scale = scale if scale > 0.0 else 1.0

    def piece(length: FloatArray) -> FloatArray:
        fits = (length <= longest + slack) & (length >= max(shortest - slack, slack))
        return np.where(fits, scale * (length / mean - 1.0) ** 2, np.inf)

    if count == 0:
        whole = float(piece(np.array([high - low]))[0])
        return ((), whole) if np.isfinite(whole) else None
    best = piece(places - low) + costs
    between = piece(places[None, :] - places[:, None])
    came: list[FloatArray] = []
    for _ in range(count - 1):
        total = best[:, None] + between
        came.append(np.argmin(total, axis=0))
        best = total.min(axis=0) + costs
    best = best + piece(high - places)
    at = int(np.argmin(best)) if len(best) else 0
    if not len(best) or not np.isfinite(best[at]):
        return None
    cost, chosen = float(best[at]), [at]
    for back in reversed(came):
        chosen.append(int(back[chosen[-1]]))
    return tuple(float(places[i]) for i in reversed(chosen)), cost
