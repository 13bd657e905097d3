"""Heights of the surface that a ball's top sweeps over triangles.

Seen along one direction, the offset of a surface by ``d`` is the upper envelope of balls of
radius ``d`` about all its points.  Over a plan place it is the highest of: planes lying ``d``
above the triangles, cylinders about their sides, balls about their corners, each where its
foot lies on the triangle.  All three are closed forms, so the envelope is exact, creases and
valleys included.
"""

from __future__ import annotations

import numpy as np
import shapely
from shapely import STRtree

from laywright.arrays import FloatArray

__all__ = ["ball_heights"]

_CHUNK = 4000
_FLAT = 1e-9
_EDGE = 1e-9


def ball_heights(places: FloatArray, corners: FloatArray, radius: float) -> FloatArray:
    """Return the height of the envelope over plan places.

    Parameters
    ----------
    places : (k, 2) float, mm
        Plan places.
    corners : (m, 3, 3) float, mm
        Triangles; the third axis is the height.
    radius : float, mm
        Of the ball.

    Returns
    -------
    (k,) float, mm
        Minus infinity where no triangle comes within the radius in the plan view.

    Examples
    --------
    >>> import numpy as np
    >>> triangle = np.array([[[0.0, 0.0, 1.0], [9.0, 0.0, 1.0], [0.0, 9.0, 1.0]]])
    >>> ball_heights(np.array([[1.0, 1.0], [-2.0, 1.0], [-5.0, 0.0]]), triangle, 2.0).tolist()
    [3.0, 1.0, -inf]
    """
    low, high = corners[..., :2].min(axis=1) - radius, corners[..., :2].max(axis=1) + radius
    tree = STRtree(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))
    heights = np.full(len(places), -np.inf)
    for first in range(0, len(places), _CHUNK):
        some = places[first : first + _CHUNK]
        place, facet = tree.query(shapely.points(some))
        found = _highest(some[place], corners[facet], radius)
        np.maximum.at(heights, first + place, found)
    return heights


def _highest(places: FloatArray, corners: FloatArray, radius: float) -> FloatArray:
    """Return the envelope of one triangle over each place: (p,) float."""
    best = _over_faces(places, corners, radius)
    for corner in range(3):
        start, end = corners[:, corner], corners[:, (corner + 1) % 3]
        away = places - start[:, :2]
        room = radius**2 - np.einsum("ij,ij->i", away, away)
        ball = np.where(room >= 0.0, start[:, 2] + np.sqrt(np.maximum(room, 0.0)), -np.inf)
        np.maximum(best, ball, out=best)
        np.maximum(best, _over_sides(places, start, end, radius), out=best)
    return best


def _over_faces(places: FloatArray, corners: FloatArray, radius: float) -> FloatArray:
    a = corners[:, 0]
    u, v = corners[:, 1] - a, corners[:, 2] - a
    normal = np.cross(u, v)
    length = np.linalg.norm(normal, axis=1)
    normal /= np.maximum(length, 1e-300)[:, None]
    normal *= np.where(normal[:, 2] < 0.0, -1.0, 1.0)[:, None]
    usable = (normal[:, 2] > _FLAT) & (length > 0.0)
    rise = np.where(usable, normal[:, 2], 1.0)
    away = places - a[:, :2]
    level = a[:, 2] + (radius - np.einsum("ij,ij->i", away, normal[:, :2])) / rise
    foot = np.column_stack([places, level]) - radius * normal - a
    uu, uv, vv = (np.einsum("ij,ij->i", p, q) for p, q in ((u, u), (u, v), (v, v)))
    fu, fv = np.einsum("ij,ij->i", foot, u), np.einsum("ij,ij->i", foot, v)
    scale = np.maximum(uu * vv - uv**2, 1e-300)
    s, t = (vv * fu - uv * fv) / scale, (uu * fv - uv * fu) / scale
    inside = usable & (s >= -_EDGE) & (t >= -_EDGE) & (s + t <= 1.0 + _EDGE)
    return np.where(inside, level, -np.inf)


def _over_sides(
    places: FloatArray, start: FloatArray, end: FloatArray, radius: float
) -> FloatArray:
    side = end - start
    length = np.linalg.norm(side, axis=1)
    along = side / np.maximum(length, 1e-300)[:, None]
    away = places - start[:, :2]
    reach = np.einsum("ij,ij->i", away, along[:, :2])
    square = 1.0 - along[:, 2] ** 2
    usable = (square > _FLAT) & (length > 0.0)
    square = np.where(usable, square, 1.0)
    half = reach * along[:, 2]
    rest = np.einsum("ij,ij->i", away, away) - reach**2 - radius**2
    root = half**2 - square * rest
    level = (half + np.sqrt(np.maximum(root, 0.0))) / square
    foot = reach + level * along[:, 2]
    inside = usable & (root >= 0.0) & (foot >= 0.0) & (foot <= length)
    return np.where(inside, start[:, 2] + level, -np.inf)
