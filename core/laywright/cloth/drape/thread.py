"""A thread laid straight: the geodesic from a place of the surface in a direction.

Laid without force a thread follows a geodesic: it turns with the surface and to neither side.
The facets alone would lead it astray, since their corners carry all curvature and a line
passes each on one side; so the direction is carried along with the normals of the smooth
surface, read between those at the vertices, by the least rotation from normal to normal.
Beside a sharp edge the facets' own normals count, which unfolds the edge.  A thread that meets
a hole spans it and goes on behind it, in the plane in which it left.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray, Vector
from laywright.cloth.drape.place import Place
from laywright.cloth.drape.strain import smooth_facets
from laywright.surface.triangles import Surface

__all__ = ["Thread", "lay_thread", "neighbours"]

_FLAT = 1e-6


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
    normals: FloatArray | None = None,
    smooth: Array | None = None,
) -> Thread:
    """Lay a thread until it leaves the outer edge, meets itself or reaches a length.

    Parameters
    ----------
    surface : Surface
        The surface, mm.
    start : Place
        Where it starts.
    direction : tuple of 3 float
        Direction along the surface at the start.
    length : float, mm
        Where to stop at the latest; the crossing after it is the last one kept.
    across : (m, 3) int, optional
        The result of `neighbours`, to save its time.
    normals : (n, 3) float, optional
        Normals at the vertices, if better ones are known than the mean of the triangles.
    smooth : (m,) bool, optional
        The result of `smooth_facets`, to save its time.

    Returns
    -------
    Thread
    """
    across = neighbours(surface) if across is None else across
    smooth = smooth_facets(surface) if smooth is None else smooth
    corner_normals = surface.vertex_normals if normals is None else normals

    def normal_in(triangle: int, rounded: Array) -> Array:
        return _unit(rounded) if smooth[triangle] else surface.normals[triangle]

    ends, shares, distances = [], [], []
    triangle, point = start.triangle, start.point(surface)
    upright = normal_in(triangle, start.value(surface, corner_normals))
    along = _unit(np.array(direction) - (np.array(direction) @ upright) * upright)
    walked, entered = 0.0, -1
    passed = {triangle}
    while True:
        normal = surface.normals[triangle]
        course = _unit(along - (along @ normal) / (upright @ normal) * upright)
        side, share, step = _exit(surface, triangle, point, course, entered)
        if side < 0:
            break
        first = int(surface.triangles[triangle, side])
        second = int(surface.triangles[triangle, (side + 1) % 3])
        mix = np.array([1.0 - share, share])
        rounded = mix @ corner_normals[[first, second]]
        walked += step
        ends.append((first, second))
        shares.append(share)
        distances.append(walked)
        along = _carried(along, upright, normal_in(triangle, rounded))
        upright = normal_in(triangle, rounded)
        triangle = int(across[triangle, side])
        if triangle < 0:
            point = mix @ surface.vertices[[first, second]]
            found = _behind_hole(surface, (first, second), point, along, upright)
            if found is None:
                break
            triangle, first, second, share, chord = found
            mix = np.array([1.0 - share, share])
            ahead = normal_in(triangle, mix @ corner_normals[[first, second]])
            walked += chord * _bulge(upright, ahead)
            ends.append((first, second))
            shares.append(share)
            distances.append(walked)
            along = _carried(along, upright, ahead)
            upright = ahead
        if triangle in passed or walked >= length:
            break
        passed.add(triangle)
        along = _carried(along, upright, normal_in(triangle, rounded))
        upright = normal_in(triangle, rounded)
        point = mix @ surface.vertices[[first, second]]
        entered = _side_of(surface, triangle, first, second)
    return Thread(
        np.array(ends, dtype=np.int64).reshape(-1, 2), np.array(shares), np.array(distances)
    )


def _side_of(surface: Surface, triangle: int, first: int, second: int) -> int:
    """Return which side of a triangle runs between two vertices."""
    corners = surface.triangles[triangle].tolist()
    pairs = [{corners[side], corners[(side + 1) % 3]} for side in range(3)]
    return pairs.index({first, second})


def _behind_hole(
    surface: Surface, edge: tuple[int, int], point: Array, along: Array, upright: Array
) -> tuple[int, int, int, float, float] | None:
    """Return where a thread that leaves into a hole comes down behind it.

    Returns
    -------
    tuple or None
        Triangle, both ends of the edge, share of it, and the straight length across; None
        where the edge belongs to the outer edge of the surface.
    """
    hole = next((loop for loop in surface.boundary_loops[1:] if np.isin(edge, loop).all()), None)
    if hole is None:
        return None
    starts, ends = hole, np.roll(hole, -1)
    beside = _cross(upright, along)
    offs = (surface.vertices - point) @ beside
    low, high = offs[starts], offs[ends]
    crossed = (low > 0.0) != (high > 0.0)
    share = np.where(crossed, low / np.where(crossed, low - high, 1.0), 0.0)
    step = surface.vertices[ends] - surface.vertices[starts]
    reached = surface.vertices[starts] + share[:, None] * step - point
    chord = np.linalg.norm(reached, axis=1)
    own = np.isin(starts, edge) & np.isin(ends, edge)
    ahead = np.flatnonzero(crossed & ~own & (reached @ along > 0.0))
    if not len(ahead):
        return None
    best = int(ahead[np.argmin(chord[ahead])])
    first, second = int(starts[best]), int(ends[best])
    table = surface.edges
    at = np.flatnonzero(
        (table.ends[:, 0] == min(first, second)) & (table.ends[:, 1] == max(first, second))
    )[0]
    triangle = int(max(table.left[at], table.right[at]))
    return triangle, first, second, float(share[best]), float(chord[best])


def _bulge(before: Array, after: Array) -> float:
    """Return arc over chord of a circle whose normals at both ends are known."""
    half = 0.5 * float(np.arccos(np.clip(before @ after, -1.0, 1.0)))
    return half / np.sin(half) if half > _FLAT else 1.0


def _unit(vector: Array) -> Array:
    unit: Array = vector / math.sqrt(float(vector @ vector))
    return unit


def _cross(a: Array, b: Array) -> Array:
    """Return the cross product of two single vectors, sooner than NumPy's for many."""
    return np.array(
        [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
    )


def _carried(along: Array, before: Array, after: Array) -> Array:
    """Return a tangent carried by the least rotation from one normal to the next."""
    axis = _cross(before, after)
    cosine = float(before @ after)
    turned = cosine * along + _cross(axis, along) + axis * (axis @ along) / (1.0 + cosine)
    return _unit(turned - (turned @ after) * after)


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
        out = _cross(edge, normal)
        speed = float(along @ out)
        if speed <= 0.0:
            continue
        step = max(float((start - point) @ out) / speed, 0.0)
        if step < best[2]:
            share = float((point + step * along - start) @ edge / (edge @ edge))
            best = (side, min(max(share, 0.0), 1.0), step)
    return best
