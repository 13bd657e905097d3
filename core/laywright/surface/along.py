"""Distances along a surface: from a point, from its edge, and from the border of some patches.

They spread from triangle to triangle.  From a point, each triangle is unfolded together with
the place that the point would have in its plane, so that distances are exact on everything that
develops; from a line, the front is taken as straight across each triangle (J. A. Sethian, Fast
marching methods, 1996; M. Novotni, R. Klein, Computing geodesic distances on triangular meshes,
2002).  Holes count as filled for a point: a patch around a bolt hole is a disc.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from laywright.arrays import Array, FloatArray, Vector, floats
from laywright.errors import InputError
from laywright.surface.distance import distances, nearest_triangles
from laywright.surface.lines import away_from_lines
from laywright.surface.triangles import Surface

__all__ = ["Along"]

_STILL = 1e-9
_BESIDE = 2.0
_OFF = 0.1
_Step = Callable[[FloatArray, FloatArray, FloatArray, FloatArray, FloatArray], FloatArray]


class Along:
    """Distances of the vertices of a surface, measured along it.

    Parameters
    ----------
    surface : Surface
        One piece with an open edge, mm.
    named : Surface, optional
        The same shape with its patches as they are drawn, where the triangles of `surface` do
        not end at their borders.
    """

    def __init__(self, surface: Surface, named: Surface | None = None) -> None:
        self._surface = surface
        self._named = named or surface
        self._size = float(np.linalg.norm(np.ptp(surface.vertices, axis=0)))

    def from_point(self, point: Vector) -> FloatArray:
        """Return the distance of every vertex from the place nearest to a point: (n,) float, mm.

        A point may lie off the surface, as one on the other side of a laminate does; farther off
        than a tenth of the surface's size, it is as much farther from every vertex.
        """
        filled = _filled(self._surface)
        at = np.array([point], dtype=np.float64)
        if not np.isfinite(at).all():
            raise InputError("point on the face", f"{point}", "three numbers in mm", "correct it")
        triangle, off = nearest_triangles(at, filled)
        corners = filled.triangles[triangle[0]]
        normal = filled.normals[triangle[0]]
        foot = at[0] - ((at[0] - filled.vertices[corners[0]]) @ normal) * normal
        start = np.full(len(filled.vertices), np.inf)
        start[corners] = np.linalg.norm(filled.vertices[corners] - foot, axis=1)
        found = _spread(filled, start, _round_a_point)[: len(self._surface.vertices)]
        beside = float(off[0]) > _OFF * self._size
        return floats(found + (float(off[0]) if beside else 0.0), -1)

    def from_edge(self) -> FloatArray:
        """Return the distance of every vertex from the outer edge: (n,) float, mm."""
        points, loop = self._surface.vertices, self._surface.boundary_loops[0]
        lines = points[np.stack([loop, np.roll(loop, -1)], axis=1)]
        straight = away_from_lines(points, lines)
        # Close to a bent edge the straight way is nearer the truth than a straight front.
        near = _BESIDE * float(np.median(np.linalg.norm(lines[:, 1] - lines[:, 0], axis=1)))
        start = np.where(straight <= near, straight, np.inf)
        return floats(_spread(self._surface, start, _ahead_of_a_line, straight), -1)

    def into_patches(self, names: tuple[str, ...]) -> FloatArray:
        """Return how far every vertex lies inside some patches: (n,) float, mm.

        Measured from their border with the other patches, negative outside of them, and the
        size of the surface where they have no such border.

        Raises
        ------
        InputError
            If there is no patch of a name.
        """
        named = self._named
        unknown = [name for name in names if name not in named.patch_names]
        if unknown or not names:
            raise InputError(
                "picked faces",
                f"'{unknown[0]}'" if unknown else "no name",
                f"names of moulded faces, such as '{named.patch_names[0]}'",
                "pick faces of the Moulded Face",
            )
        within = np.isin(named.patches, [named.patch_names.index(name) for name in names])
        table = named.edges
        both = (table.left >= 0) & (table.right >= 0)
        border = np.flatnonzero(both)[within[table.left[both]] != within[table.right[both]]]
        if len(border) == 0:
            return np.full(len(self._surface.vertices), self._size * (1.0 if within.all() else -1))
        inside = self._side_of(within)
        lines = named.vertices[table.ends[border]]
        straight = away_from_lines(self._surface.vertices, lines)
        # Beside the border the straight way is the one along the surface.
        corners = self._surface.triangles
        crossed = inside[corners].any(axis=1) & ~inside[corners].all(axis=1)
        touched = straight[corners].min(axis=1) <= 1e-6 * self._size
        near = np.unique(corners[crossed | touched])
        start = np.full(len(straight), np.inf)
        start[near] = straight[near]
        far = np.minimum(_spread(self._surface, start, _ahead_of_a_line, straight), self._size)
        return floats(np.where(inside, far, -far), -1)

    def _side_of(self, within: Array) -> Array:
        """Return whether each vertex lies on marked triangles of the named surface: (n,) bool."""
        named, points = self._named, self._surface.vertices
        if named is self._surface:
            found = np.zeros(len(points), dtype=bool)
            found[named.triangles[within]] = True
            return found
        one, other = named.part(within), named.part(~within)
        return distances(points, one) <= distances(points, other)


def _filled(surface: Surface) -> Surface:
    """Return a surface with its holes closed by fans about their middles."""
    holes = surface.boundary_loops[1:]
    if not holes:
        return surface
    points, triangles = [surface.vertices], [surface.triangles]
    for number, loop in enumerate(holes, len(surface.vertices)):
        points.append(surface.vertices[loop].mean(axis=0)[None])
        middle = np.full(len(loop), number)
        triangles.append(np.stack([np.roll(loop, -1), loop, middle], axis=1))
    every = np.concatenate(triangles)
    return Surface(np.concatenate(points), every, np.zeros(len(every), dtype=np.int64), ("filled",))


def _spread(
    surface: Surface, start: FloatArray, step: _Step, least: FloatArray | None = None
) -> FloatArray:
    """Return distances that grow from known ones, each the least that a triangle gives.

    Where fronts from two sides meet, a straight front across a triangle comes out too near; no
    distance is less than the straight way, `least`.
    """
    triangles = surface.triangles
    corners = surface.corners
    sides = [np.linalg.norm(corners[:, k - 1] - corners[:, k - 2], axis=1) for k in range(3)]
    distance = start.copy()
    changed = np.isfinite(distance)
    while changed.any():
        some = np.flatnonzero(changed[triangles].any(axis=1))
        before = distance.copy()
        for corner in range(3):
            c, a, b = (triangles[some, (corner + k) % 3] for k in range(3))
            base, to_b, to_a = (sides[(corner + k) % 3][some] for k in range(3))
            from_a, from_b = distance[a], distance[b]
            found = np.minimum(from_a + to_a, from_b + to_b)
            known = np.flatnonzero(np.isfinite(from_a) & np.isfinite(from_b))
            found[known] = np.minimum(
                found[known],
                step(from_a[known], from_b[known], base[known], to_a[known], to_b[known]),
            )
            if least is not None:
                found = np.maximum(found, least[c])
            np.minimum.at(distance, c, found)
        changed = distance < before - _STILL
    return distance


def _corner(base: FloatArray, to_a: FloatArray, to_b: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Return the corner c of triangles laid flat, a at zero and b at (base, 0)."""
    x = (to_a**2 - to_b**2 + base**2) / (2.0 * base)
    return x, np.sqrt(np.maximum(to_a**2 - x**2, 0.0))


def _round_a_point(
    from_a: FloatArray, from_b: FloatArray, base: FloatArray, to_a: FloatArray, to_b: FloatArray
) -> FloatArray:
    """Return the distance of c from the point that is so far from a and b, where it is seen."""
    cx, cy = _corner(base, to_a, to_b)
    x, y = _corner(base, from_a, from_b)
    share = np.divide(y, y + cy, out=np.zeros_like(y), where=y + cy > 0.0)
    at = x + (cx - x) * share
    seen = (at >= -1e-9 * base) & (at <= (1.0 + 1e-9) * base)
    return np.asarray(np.where(seen, np.hypot(cx - x, cy + y), np.inf))


def _ahead_of_a_line(
    from_a: FloatArray, from_b: FloatArray, base: FloatArray, to_a: FloatArray, to_b: FloatArray
) -> FloatArray:
    """Return the distance of c from a straight line that is so far from a and b."""
    cx, cy = _corner(base, to_a, to_b)
    along = (from_b - from_a) / base
    ahead = np.sqrt(np.maximum(1.0 - along**2, 0.0))
    at = cx * ahead - cy * along
    seen = (np.abs(along) < 1.0) & (at >= -1e-9 * base) & (at <= (ahead + 1e-9) * base)
    return np.asarray(np.where(seen, from_a + along * cx + ahead * cy, np.inf))
