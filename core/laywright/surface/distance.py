"""Distance from points to a triangle surface, exact for the triangles given.

Triangles are sorted into classes by the radius that holds them.  The nearest few centroids
give a true upper bound for every point; within each class only triangles whose centroid lies
closer than that bound plus the class's radius can be nearer, and all of these are measured.
"""

from __future__ import annotations

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
    _, near = cKDTree(centres).query(points, k=number)
    near = np.asarray(near).reshape(len(points), number)
    bound, best = np.full(len(points), np.inf), near[:, 0].astype(np.int64)
    for place in range(number):
        away = triangle_distances(points, corners[near[:, place]])
        nearer = away < bound
        bound[nearer], best[nearer] = away[nearer], near[nearer, place]
    radius = np.linalg.norm(corners - centres[:, None], axis=2).max(axis=1)
    size_class = np.ceil(np.log2(np.maximum(radius, 1e-9))).astype(np.int64)
    for number in np.unique(size_class):
        members = np.flatnonzero(size_class == number)
        _refine(points, corners, centres, members, float(radius[members].max()), bound, best)
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
    bound: FloatArray,
    best: IntArray,
) -> None:
    """Lower `bound`, and name in `best`, by all triangles of one size class that can be nearer."""
    tree = cKDTree(centres[members])
    nearest, _ = tree.query(points)
    asked = np.flatnonzero((bound > _TOUCHING) & (nearest < bound + radius))
    for start in range(0, len(asked), _CHUNK):
        some = asked[start : start + _CHUNK]
        found = tree.query_ball_point(points[some], bound[some] + radius)
        count = np.array([len(item) for item in found])
        if count.sum() == 0:
            continue
        point = np.repeat(some, count)
        triangle = members[np.concatenate([np.asarray(item, dtype=np.int64) for item in found])]
        away = triangle_distances(points[point], corners[triangle])
        order = np.lexsort((away, point))
        point, triangle, away = point[order], triangle[order], away[order]
        first = np.concatenate([[True], point[1:] != point[:-1]])
        first &= away < bound[point]
        bound[point[first]], best[point[first]] = away[first], triangle[first]


def triangle_distances(points: FloatArray, triangles: FloatArray) -> FloatArray:
    """Return the distance of each point (p, 3) to its own triangle (p, 3, 3): (p,) float.

    The nearest point lies inside the triangle if the foot of the perpendicular does, and
    otherwise on one of its three sides.
    """
    a = triangles[:, 0]
    first, second, offset = triangles[:, 1] - a, triangles[:, 2] - a, points - a
    normal = np.cross(first, second)
    size = np.einsum("ij,ij->i", normal, normal)
    usable = size > 0.0
    scale = np.where(usable, size, 1.0)
    u = np.einsum("ij,ij->i", np.cross(offset, second), normal) / scale
    v = np.einsum("ij,ij->i", np.cross(first, offset), normal) / scale
    inside = usable & (u >= 0.0) & (v >= 0.0) & (u + v <= 1.0)
    height = np.abs(np.einsum("ij,ij->i", offset, normal)) / np.sqrt(scale)
    sides = np.full(len(points), np.inf)
    for corner in range(3):
        start = triangles[:, corner]
        along = triangles[:, (corner + 1) % 3] - start
        length = np.einsum("ij,ij->i", along, along)
        share = np.einsum("ij,ij->i", points - start, along) / np.where(length > 0, length, 1.0)
        foot = start + np.clip(share, 0.0, 1.0)[:, None] * along
        np.minimum(sides, np.linalg.norm(points - foot, axis=1), out=sides)
    return np.asarray(np.where(inside, height, sides), dtype=np.float64)
