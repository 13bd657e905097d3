"""Distance from points to a triangle surface, exact for the triangles given.

Triangles are sorted into classes by the radius that holds them.  The nearest few centroids
give a true upper bound for every point; within each class only triangles whose centroid lies
closer than that bound plus the class's radius can be nearer, and all of these are measured,
unless the nearest few were already all of them.
"""

from __future__ import annotations

from itertools import chain

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray, IntArray
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["distances", "largest_distance", "nearest_triangles", "triangle_distances"]

_FIRST = 8
_TOUCHING = 1e-12
_CHUNK = 4000


def distances(points: FloatArray, surface: Surface) -> FloatArray:
    """Return the distance of every point to the nearest point of a surface.

    Parameters
    ----------
    points : (k, 3) float, mm
        Points.
    surface : Surface
        Its triangles without area count as the line or point that they are.

    Returns
    -------
    (k,) float, mm
        Exact up to rounding.

    Examples
    --------
    >>> import numpy as np
    >>> flat = Surface.single(np.array([[0, 0, 0], [4, 0, 0], [0, 4, 0]]), np.array([[0, 1, 2]]))
    >>> distances(np.array([[1.0, 1.0, 3.0], [-2.0, 1.0, 0.0]]), flat).tolist()
    [3.0, 2.0]
    """
    return nearest_triangles(points, surface)[1]


def nearest_triangles(points: FloatArray, surface: Surface) -> tuple[IntArray, FloatArray]:
    """Return the triangle nearest to each point, one of them where several are, and its distance.

    Parameters
    ----------
    points : (k, 3) float, mm
        Points.
    surface : Surface
        As for `distances`.

    Returns
    -------
    triangle : (k,) int
    distance : (k,) float, mm
    """
    if len(surface.triangles) == 0:
        raise ValueError("a surface without triangles has no distance")
    points = np.asarray(points, dtype=np.float64)
    corners = surface.corners
    centres = corners.mean(axis=1)
    number = min(_FIRST, len(centres))
    span, near = cKDTree(centres).query(points, k=number)
    span, near = (np.asarray(found).reshape(len(points), number) for found in (span, near))
    reached = span[:, -1] if number < len(centres) else np.full(len(points), np.inf)
    bound, best = np.full(len(points), np.inf), near[:, 0].astype(np.int64)
    for place in range(number):
        away = triangle_distances(points, corners[near[:, place]])
        nearer = away < bound
        bound[nearer], best[nearer] = away[nearer], near[nearer, place]
    radius = np.linalg.norm(corners - centres[:, None], axis=2).max(axis=1)
    size_class = np.ceil(0.5 * np.log2(np.maximum(radius, 1e-9))).astype(np.int64)
    for number in np.unique(size_class):
        members = np.flatnonzero(size_class == number)
        reach = float(radius[members].max())
        asked = np.flatnonzero((bound > _TOUCHING) & (reached < bound + reach))
        _refine(points, corners, centres, members, reach, asked, bound, best)
    return best, bound


def largest_distance(one: Surface, other: Surface) -> float:
    """Return the largest distance between two surfaces, measured both ways, mm.

    Triangles that both hold, corner by corner within the weld tolerance, count by the distance
    of their corners.  All others are measured at their corners and centroids.
    """
    nearest, partner = cKDTree(other.vertices).query(one.vertices)
    same = nearest <= TOLERANCES.weld
    size = len(other.vertices)
    ours = _keys(np.where(same, partner, -1)[one.triangles], size)
    theirs = _keys(other.triangles, size)
    kept = same[one.triangles].all(axis=1) & np.isin(ours, theirs)
    found = [float(nearest[one.triangles[kept]].max(initial=0.0))]
    for part, whole in (
        (one.part(~kept), other),
        (other.part(~np.isin(theirs, ours[kept])), one),
    ):
        if len(part.triangles):
            points = np.concatenate([part.vertices, part.centroids])
            found.append(float(distances(points, whole).max()))
    return max(found)


def _keys(triangles: IntArray, size: int) -> IntArray:
    """Return one number for every triangle, whichever corner comes first."""
    low, middle, high = np.sort(triangles, axis=1).astype(np.int64).T
    return np.asarray((low * size + middle) * size + high, dtype=np.int64)


def _refine(
    points: FloatArray,
    corners: FloatArray,
    centres: FloatArray,
    members: IntArray,
    radius: float,
    asked: IntArray,
    bound: FloatArray,
    best: IntArray,
) -> None:
    """Lower `bound`, and name in `best`, by all triangles of one size class that can be nearer."""
    tree = cKDTree(centres[members])
    for start in range(0, len(asked), _CHUNK):
        some = asked[start : start + _CHUNK]
        found = tree.query_ball_point(points[some], bound[some] + radius)
        count = np.fromiter(map(len, found), np.int64, len(found))
        some, count = some[count > 0], count[count > 0]
        if len(some) == 0:
            continue
        point = np.repeat(some, count)
        triangle = members[np.fromiter(chain.from_iterable(found), np.int64, count.sum())]
        away = triangle_distances(points[point], corners[triangle])
        least = np.minimum.reduceat(away, np.cumsum(count) - count)
        nearest = (away == np.repeat(least, count)) & (away < bound[point])
        best[point[nearest]] = triangle[nearest]
        bound[some] = np.minimum(bound[some], least)


def triangle_distances(points: FloatArray, triangles: FloatArray) -> FloatArray:
    """Return the distance of each point (p, 3) to its own triangle (p, 3, 3): (p,) float.

    The nearest point lies inside the triangle if the foot of the perpendicular does, and
    otherwise on one of its three sides.
    """
    at = np.ascontiguousarray(np.asarray(points, dtype=np.float64).T)
    corners = np.ascontiguousarray(np.asarray(triangles, dtype=np.float64).transpose(1, 2, 0))
    first, second, offset = corners[1] - corners[0], corners[2] - corners[0], at - corners[0]
    normal = _cross(first, second)
    size = _dot(normal, normal)
    usable = size > 0.0
    scale = np.where(usable, size, 1.0)
    u = _dot(_cross(offset, second), normal) / scale
    v = _dot(_cross(first, offset), normal) / scale
    inside = usable & (u >= 0.0) & (v >= 0.0) & (u + v <= 1.0)
    height = np.abs(_dot(offset, normal)) / np.sqrt(scale)
    beside = np.full(len(points), np.inf)
    for corner in range(3):
        along, away = corners[(corner + 1) % 3] - corners[corner], at - corners[corner]
        length = _dot(along, along)
        share = _dot(away, along) / np.where(length > 0.0, length, 1.0)
        away -= np.minimum(np.maximum(share, 0.0), 1.0) * along
        np.minimum(beside, _dot(away, away), out=beside)
    return np.asarray(np.where(inside, height, np.sqrt(beside)), dtype=np.float64)


def _dot(one: FloatArray, other: FloatArray) -> FloatArray:
    """Return the products of vectors that stand in columns, (3, p) each: (p,) float."""
    return np.asarray(one[0] * other[0] + one[1] * other[1] + one[2] * other[2])


def _cross(one: FloatArray, other: FloatArray) -> FloatArray:
    """Return the cross products of vectors that stand in columns: (3, p) float."""
    return np.stack(
        [
            one[1] * other[2] - one[2] * other[1],
            one[2] * other[0] - one[0] * other[2],
            one[0] * other[1] - one[1] * other[0],
        ]
    )
