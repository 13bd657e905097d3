"""A thread laid straight: the straightest line over the facets from a place in a direction.

Laid without force a thread follows a geodesic.  Over facets that is a line which is straight
in each triangle and goes on straight when two neighbours are turned flat about their edge
(K. Polthier, M. Schmies, Straightest geodesics on polyhedral surfaces, 1998).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray, Vector
from laywright.cloth.place import Place
from laywright.surface.triangles import Surface

__all__ = ["Thread", "lay_thread", "neighbours"]


@dataclass(frozen=True, eq=False)
class Thread:
    """Where a straight thread crosses the edges of the triangles.

    Attributes
    ----------
    ends : (k, 2) int
        Vertices of each crossed edge, in the order of crossing.
    share : (k,) float
        Where it is crossed, 0 at the first vertex, 1 at the second.
    distance : (k,) float, mm
        Length of the thread from its start to each crossing.
    """

    ends: IntArray
    share: FloatArray
    distance: FloatArray

    def points(self, surface: Surface) -> FloatArray:
        """Return the crossings as points: (k, 3) float, mm."""
        first, second = surface.vertices[self.ends[:, 0]], surface.vertices[self.ends[:, 1]]
        points: FloatArray = first + self.share[:, None] * (second - first)
        return points


def neighbours(surface: Surface) -> IntArray:
    """Return the triangle across each side (corner i to i + 1): (m, 3) int, -1 for none."""
    table = surface.edges
    size = len(surface.vertices)
    key = table.ends[:, 0] * size + table.ends[:, 1]
    start, end = surface.triangles, np.roll(surface.triangles, -1, axis=1)
    edge = np.searchsorted(key, np.minimum(start, end) * size + np.maximum(start, end))
    across: IntArray = np.where(start < end, table.right[edge], table.left[edge])
    return across


def lay_thread(
    surface: Surface,
    start: Place,
    direction: Vector,
    length: float = np.inf,
    across: IntArray | None = None,
) -> Thread:
    """Lay a thread until it leaves the surface or reaches a length.

    Parameters
    ----------
    surface : Surface
        The surface, mm.
    start : Place
        Where it starts.
    direction : tuple of 3 float
        Unit direction in the facet at the start.
    length : float, mm
        Where to stop at the latest; the crossing after it is the last one kept.
    across : (m, 3) int, optional
        The result of `neighbours`, to save its time.

    Returns
    -------
    Thread
    """
    across = neighbours(surface) if across is None else across
    ends, shares, distances = [], [], []
    triangle, point, along = start.triangle, start.point(surface), np.array(direction)
    walked, entered = 0.0, -1
    for _ in range(4 * len(surface.triangles)):
        side, share, step = _exit(surface, triangle, point, along, entered)
        if side < 0:
            break
        first = int(surface.triangles[triangle, side])
        second = int(surface.triangles[triangle, (side + 1) % 3])
        walked += step
        ends.append((first, second))
        shares.append(share)
        distances.append(walked)
        after = int(across[triangle, side])
        if after < 0 or walked >= length:
            break
        edge = surface.vertices[second] - surface.vertices[first]
        point = surface.vertices[first] + share * edge
        edge = edge / np.linalg.norm(edge)
        out = np.cross(edge, surface.normals[triangle])
        onward = np.cross(edge, surface.normals[after])
        along = (along @ edge) * edge + (along @ out) * onward
        along = along / np.linalg.norm(along)
        entered = int(np.flatnonzero(surface.triangles[after] == second)[0])
        triangle = after
    return Thread(
        np.array(ends, dtype=np.int64).reshape(-1, 2), np.array(shares), np.array(distances)
    )


def _exit(
    surface: Surface, triangle: int, point: Array, along: Array, entered: int
) -> tuple[int, float, float]:
    """Return the side by which a line leaves a triangle, where, and after what length."""
    corners = surface.corners[triangle]
    normal = surface.normals[triangle]
    best = (-1, 0.0, np.inf)
    for side in range(3):
        if side == entered:
            continue
        start = corners[side]
        edge = corners[(side + 1) % 3] - start
        out = np.cross(edge, normal)
        speed = float(along @ out)
        if speed <= 0.0:
            continue
        step = max(float((start - point) @ out) / speed, 0.0)
        if step < best[2]:
            share = float((point + step * along - start) @ edge / (edge @ edge))
            best = (side, min(max(share, 0.0), 1.0), step)
    return best
