"""A place on a triangle surface, and the nearest place to a point in space."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray, Vector, unit_vector
from laywright.surface.triangles import Surface

__all__ = ["Place", "nearest_place"]


@dataclass(frozen=True)
class Place:
    """A place in a triangle.

    Attributes
    ----------
    triangle : int
        Index of the triangle.
    weights : tuple of 3 float
        Share of each corner; they sum to 1.
    """

    triangle: int
    weights: Vector

    def point(self, surface: Surface) -> FloatArray:
        """Return the point in space: (3,) float, mm."""
        point: FloatArray = np.array(self.weights) @ surface.corners[self.triangle]
        return point

    def value(self, surface: Surface, values: FloatArray) -> FloatArray:
        """Return values given at the vertices, (n, ...) float, at this place."""
        value: FloatArray = np.array(self.weights) @ values[surface.triangles[self.triangle]]
        return value

    def normal(self, surface: Surface) -> Vector:
        """Return the unit normal of the smooth surface, read between those at the corners."""
        return unit_vector(self.value(surface, surface.vertex_normals))


def nearest_place(surface: Surface, point: FloatArray) -> Place:
    """Return the place of `surface` nearest to `point`.

    Parameters
    ----------
    surface : Surface
        Open or closed, mm.
    point : (3,) float, mm
        Anywhere.

    Returns
    -------
    Place

    Notes
    -----
    The nearest point of a triangle is either inside it, where the foot of the perpendicular
    has no negative weight, or on one of its sides.
    """
    usable = _near(surface, point)
    corners = surface.corners[usable]
    weights = np.empty((len(usable), 4, 3))
    weights[:, 0] = _foot_in_plane(corners, surface.normals[usable], point)
    for side in range(3):
        weights[:, side + 1] = _foot_on_side(corners, side, point)
    feet = np.einsum("mki,mij->mkj", weights, corners)
    distance = np.linalg.norm(feet - point, axis=2)
    distance[weights[:, 0].min(axis=1) < 0.0, 0] = np.inf
    best, kind = np.unravel_index(int(np.argmin(distance)), distance.shape)
    a, b, c = weights[best, kind].tolist()
    return Place(int(usable[best]), (a, b, c))


def _near(surface: Surface, point: FloatArray) -> IntArray:
    """Return the triangles with area that may be the nearest.

    The nearest one has a corner no further than its nearest point and a longest side.
    """
    x, y, z = (surface.vertices - point).T
    away = np.sqrt(x * x + y * y + z * z)[surface.triangles].min(axis=1)
    first, last = surface.edges.ends.T
    longest = np.linalg.norm(surface.vertices[last] - surface.vertices[first], axis=1).max()
    with_area = surface.areas > 0.0
    near: IntArray = np.flatnonzero(with_area & (away <= away[with_area].min() + longest))
    return near


def _foot_in_plane(corners: FloatArray, normals: FloatArray, point: FloatArray) -> FloatArray:
    weights = np.empty((len(corners), 3))
    for corner in range(3):
        after, last = corners[:, (corner + 1) % 3], corners[:, (corner + 2) % 3]
        weights[:, corner] = np.einsum("ij,ij->i", np.cross(after - point, last - point), normals)
    total = weights.sum(axis=1, keepdims=True)
    foot: FloatArray = weights / np.where(total == 0.0, 1.0, total)
    foot[(total == 0.0)[:, 0]] = -1.0
    return foot


def _foot_on_side(corners: FloatArray, side: int, point: FloatArray) -> FloatArray:
    start, end = corners[:, side], corners[:, (side + 1) % 3]
    along = end - start
    squared = np.einsum("ij,ij->i", along, along)
    share = np.einsum("ij,ij->i", point - start, along) / np.where(squared == 0.0, 1.0, squared)
    share = np.clip(share, 0.0, 1.0)
    weights = np.zeros((len(corners), 3))
    weights[:, side] = 1.0 - share
    weights[:, (side + 1) % 3] = share
    return weights
