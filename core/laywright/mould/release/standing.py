"""Hidden share of facets that stand along the pull and so have no area in the plan view."""

from __future__ import annotations

import numpy as np
import shapely
from shapely import STRtree

from laywright.arrays import FloatArray

__all__ = ["hidden_standing"]

_OUTSIDE = 1e3


def hidden_standing(
    facets: FloatArray,
    outward: FloatArray,
    blockers: FloatArray,
    tree: STRtree,
    close: float,
) -> FloatArray:
    """Return the share of standing facets above which other facets hang.

    A point on the facet leaves along the pull just outside of the facet, so the facet's plan
    line is moved outwards by a hair and cut against the plan triangles of the blockers.

    Parameters
    ----------
    facets : (f, 3, 3) float, mm
        Corners of the standing facets, pull upwards.
    outward : (f, 2) float
        Their unit normals in the plan view.
    blockers : (b, 3, 3) float, mm
        Corners of the facets that can hide them, counter-clockwise in the plan view.
    tree : STRtree
        Plan boxes of the blockers.
    close : float, mm
        Distance that counts as touching; the hair is 1000 times as long.

    Returns
    -------
    (f,) float
        0 to 1, by area.
    """
    share = np.zeros(len(facets))
    if len(facets) == 0 or len(blockers) == 0:
        return share
    along = np.stack([-outward[:, 1], outward[:, 0]], axis=1)
    place = np.einsum("fij,fj->fi", facets[:, :, :2], along)
    order = np.argsort(place, axis=1)
    place = np.take_along_axis(place, order, axis=1)
    corners = np.take_along_axis(facets, order[..., None], axis=1)
    ends = corners[:, [0, 2], :2] + (_OUTSIDE * close * outward)[:, None]
    low, high = ends.min(axis=1), ends.max(axis=1)
    which, blocker = tree.query(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))
    start, end = _inside(ends[which], blockers[blocker, :, :2])
    middle = 0.5 * (start + end)
    reach = place[which, 2] - place[which, 0]
    at = ends[which, 0] + middle[:, None] * (ends[which, 1] - ends[which, 0])
    above = _plane_height(blockers[blocker], at) > _column_middle(corners[which], middle)
    kept = above & ((end - start) * reach > close)
    order = np.flatnonzero(kept)[np.argsort(which[kept], kind="stable")]
    for mine in np.split(order, np.flatnonzero(np.diff(which[order])) + 1):
        if len(mine):
            facet = which[mine[0]]
            share[facet] = _covered(start[mine], end[mine], place[facet])
    return share


def _inside(segments: FloatArray, triangles: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Return where segments enter and leave triangles, as shares of their length."""
    start, end = np.zeros(len(segments)), np.ones(len(segments))
    for corner in range(3):
        origin = triangles[:, corner]
        along = triangles[:, (corner + 1) % 3] - origin
        offset = segments - origin[:, None]
        side = along[:, None, 0] * offset[:, :, 1] - along[:, None, 1] * offset[:, :, 0]
        first, change = side[:, 0], side[:, 1] - side[:, 0]
        crossing = np.divide(-first, change, out=np.zeros_like(first), where=change != 0.0)
        start = np.where(change > 0.0, np.maximum(start, crossing), start)
        end = np.where(change < 0.0, np.minimum(end, crossing), end)
        end = np.where((change == 0.0) & (first < 0.0), -1.0, end)
    return start, end


def _plane_height(triangles: FloatArray, at: FloatArray) -> FloatArray:
    normal = np.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    offset = at - triangles[:, 0, :2]
    tilt = normal[:, 0] * offset[:, 0] + normal[:, 1] * offset[:, 1]
    return np.asarray(triangles[:, 0, 2] - tilt / normal[:, 2], dtype=np.float64)


def _column_middle(corners: FloatArray, share: FloatArray) -> FloatArray:
    """Return the middle height of facets at a share of their plan length: (p,) float, mm."""
    first, bend, last = (
        np.linalg.norm(corners[:, i, :2] - corners[:, 0, :2], axis=1) for i in range(3)
    )
    at = share * last
    straight = corners[:, 0, 2] + share * (corners[:, 2, 2] - corners[:, 0, 2])
    rising = at < bend
    run = np.where(rising, bend - first, last - bend)
    part = np.where(rising, at, at - bend) / np.where(run > 0.0, run, 1.0)
    low = np.where(rising, corners[:, 0, 2], corners[:, 1, 2])
    high = np.where(rising, corners[:, 1, 2], corners[:, 2, 2])
    return np.asarray(0.5 * (straight + low + part * (high - low)), dtype=np.float64)


def _covered(start: FloatArray, end: FloatArray, place: FloatArray) -> float:
    """Return the share of a triangle's area over the union of intervals of its length."""
    order = np.argsort(start)
    total, reached = 0.0, 0.0
    for low, high in zip(start[order].tolist(), end[order].tolist(), strict=True):
        if high > reached:
            total += _area_up_to(high, place) - _area_up_to(max(low, reached), place)
            reached = high
    return total


def _area_up_to(share: float, place: FloatArray) -> float:
    """Return the share of a triangle's area before a share of its length."""
    length = float(place[2] - place[0])
    bend = float(place[1] - place[0]) / length
    if share < bend:
        return share**2 / bend
    return 1.0 - (1.0 - share) ** 2 / (1.0 - bend) if bend < 1.0 else 1.0
