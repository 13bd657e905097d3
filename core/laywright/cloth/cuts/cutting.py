"""Cuts in a mesh: vertices drawn onto the line of a cut, and the mesh opened along it.

The triangles stay the same ones in the same order.  Only points near a cut move, each along
the surface and by at most about half a side, and points on it are doubled, so that whatever
is known of a triangle stays known.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components, dijkstra

from laywright.arrays import Array, FloatArray, IntArray, floats, ints, line_length
from laywright.cloth.drape.even_mesh import carried
from laywright.errors import GeometryError
from laywright.surface.triangles import Surface

__all__ = ["CutSurface", "Seam", "cut_surface"]

_THINNEST = 0.12
_OFF_LINE = 20.0
_AT_EDGE = 0.75
_REACH = 3.0
_SLIDE = 0.6
_CORNER = 0.35


@dataclass(frozen=True, eq=False)
class Seam:
    """Both sides of a cut.

    Attributes
    ----------
    line : (k, 3) float, mm
        The cut on the surface, from its first end to its last.
    left, right : (k - 1, 2) int
        Vertices of the cut surface along each side, seen from the side the normals point to.
    """

    line: FloatArray
    left: IntArray
    right: IntArray

    @property
    def length(self) -> float:
        """Length of the cut, mm."""
        return line_length(self.line)


@dataclass(frozen=True, eq=False)
class CutSurface:
    """A surface that is open along its cuts.

    Attributes
    ----------
    surface : Surface
        The triangles in the order of the uncut surface.
    origin : (n,) int
        Vertex of the uncut surface that each vertex is, or is a double of.
    flat : (n, 2) float, mm
        The flat map, its vertices moved along.
    seams : tuple of Seam
        One for each cut.
    """

    surface: Surface
    origin: IntArray
    flat: FloatArray
    seams: tuple[Seam, ...]


def cut_surface(
    surface: Surface, flat: FloatArray, paths: Sequence[FloatArray], name: str = ""
) -> CutSurface:
    """Return a surface opened along paths.

    Parameters
    ----------
    surface : Surface
        One piece with an open edge, mm.
    flat : (n, 2) float, mm
        A flat map of it that turns no triangle over.
    paths : sequence of (k, 2) float, mm
        Each cut in the flat map: from the edge, or from another cut, along straight lines.
    name : str
        What is cut, for messages.

    Returns
    -------
    CutSurface

    Raises
    ------
    GeometryError
        If a path starts away from every edge, is shorter than the triangles, or runs along
        another cut.
    """
    lines = _Lines(surface, flat)
    chains = [lines.draw(path, f"cut {number} in {name}") for number, path in enumerate(paths, 1)]
    points = surface.vertices.copy()
    moved = np.flatnonzero(np.any(lines.flat != flat, axis=1))
    inner = moved[~lines.rim[moved]]
    points[inner] = carried(surface, flat, lines.flat[inner])[0]
    for vertex in moved[lines.rim[moved]]:
        points[vertex] = lines.slid[int(vertex)]
    return _opened(surface.moved(points), lines.flat, chains)


class _Lines:
    """The flat mesh while vertices are drawn onto the lines of cuts."""

    def __init__(self, surface: Surface, flat: FloatArray) -> None:
        self.surface = surface
        self.flat = flat.copy()
        self.slid: dict[int, FloatArray] = {}
        count = len(flat)
        self.rim = np.zeros(count, dtype=bool)
        self._beside: dict[int, tuple[int, int]] = {}
        for loop in surface.boundary_loops:
            self.rim[loop] = True
            for before, at, after in zip(np.roll(loop, 1), loop, np.roll(loop, -1), strict=True):
                self._beside[int(at)] = int(before), int(after)
        self._locked = np.zeros(count, dtype=bool)
        self._taken: set[tuple[int, int]] = set()
        self._ends = surface.edges.ends
        order = np.argsort(surface.triangles.ravel(), kind="stable")
        self._around = np.split(
            order // 3, np.cumsum(np.bincount(surface.triangles.ravel(), minlength=count))[:-1]
        )
        self._spacing = float(np.sqrt(abs(self._doubled(np.arange(len(surface.triangles)))).mean()))
        self._least = _THINNEST * float(self._doubled(np.arange(len(surface.triangles))).mean())

    def _doubled(self, triangles: IntArray) -> FloatArray:
        a, b, c = (self.flat[self.surface.triangles[triangles, k]] for k in range(3))
        doubled: FloatArray = (b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0]
        return doubled

    def _shift(self, vertex: int, place: FloatArray) -> bool:
        """Move a vertex unless that makes a triangle too thin; return whether it moved."""
        before = self.flat[vertex].copy()
        around = self._around[vertex]
        thin = np.minimum(self._least, 0.5 * self._doubled(around))
        self.flat[vertex] = place
        if (self._doubled(around) < thin).any():
            self.flat[vertex] = before
            return False
        return True

    def draw(self, path: FloatArray, name: str) -> IntArray:
        """Return the vertices of a cut along a path, from its first end to its last."""
        path = np.asarray(path, dtype=np.float64)
        anchors = [self._first(path[0], name)]
        anchors += [self._inner(place) for place in path[1:-1]]
        anchors.append(self._last(path[-1], anchors[0]))
        chain = [anchors[0]]
        for start, end in pairwise(anchors):
            if start == end:
                continue
            self._draw_leg(start, end)
            chain += self._leg(start, end, name)[1:]
        pairs = [(min(a, b), max(a, b)) for a, b in pairwise(chain)]
        if len(chain) < 3 or len(set(chain)) != len(chain):
            raise GeometryError(
                name,
                f"a cut of about {float(np.linalg.norm(path[-1] - path[0])):.1f} mm",
                f"a cut of at least {2.5 * self._spacing:.1f} mm that does not meet itself",
                "lengthen the cut or take more triangles for the drape",
            )
        if self._taken & set(pairs):
            raise GeometryError(
                name, "a cut that runs along another one", "cuts apart", "move one of them"
            )
        self._taken |= set(pairs)
        self._locked[chain] = True
        return ints(chain, -1)

    def _first(self, place: FloatArray, name: str) -> int:
        vertex, far = self._nearest(place, self.rim | self._locked)
        if far > _REACH * self._spacing:
            raise GeometryError(
                name,
                f"a start {far:.0f} mm away from every edge",
                "a cut that starts at the edge of the face, of a hole or of another cut",
                "move its first point to the edge",
            )
        return self._at_edge(vertex, place)

    def _last(self, place: FloatArray, first: int) -> int:
        here = self.rim | self._locked
        here[first] = False
        vertex, far = self._nearest(place, here)
        if far <= _AT_EDGE * self._spacing:
            return self._at_edge(vertex, place)
        return self._inner(place)

    def _nearest(self, place: FloatArray, among: Array) -> tuple[int, float]:
        members = np.flatnonzero(among)
        distance = np.linalg.norm(self.flat[members] - place, axis=1)
        best = int(np.argmin(distance))
        return int(members[best]), float(distance[best])

    def _at_edge(self, vertex: int, place: FloatArray) -> int:
        """Slide a vertex of the edge towards a place, unless it is a corner or in use."""
        if self._locked[vertex] or not self.rim[vertex]:
            return vertex
        before, after = self._beside[vertex]
        at = self.flat[vertex]
        points = self.surface.vertices
        one, other = at - self.flat[before], self.flat[after] - at
        turn = abs(np.arctan2(one[0] * other[1] - one[1] * other[0], one @ other))
        if turn > _CORNER:
            return vertex
        best = (float(np.linalg.norm(place - at)), at, points[vertex])
        for neighbour in (before, after):
            arm = self.flat[neighbour] - at
            share = float(np.clip((place - at) @ arm / (arm @ arm), 0.0, _SLIDE))
            reached = at + share * arm
            far = float(np.linalg.norm(place - reached))
            if far < best[0]:
                space = points[vertex] + share * (points[neighbour] - points[vertex])
                best = far, reached, space
        if self._shift(vertex, best[1]):
            self.slid[vertex] = best[2]
        return vertex

    def _inner(self, place: FloatArray) -> int:
        vertex, _ = self._nearest(place, ~(self.rim | self._locked))
        self._shift(vertex, place)
        return vertex

    def _draw_leg(self, start: int, end: int) -> None:
        """Draw vertices beside the straight line between two vertices onto it."""
        origin = self.flat[start]
        along = self.flat[end] - origin
        length = float(np.linalg.norm(along))
        along = along / length
        beside = np.array([-along[1], along[0]])
        done = {start, end}
        rise = (self.flat - origin) @ beside
        run = (self.flat - origin) @ along
        near = 1e-9 * self._spacing
        a, b = self._ends.T
        crossing = (rise[a] * rise[b] < 0.0) & (np.abs(rise[a]) > near) & (np.abs(rise[b]) > near)
        a, b = a[crossing], b[crossing]
        share = rise[a] / (rise[a] - rise[b])
        at = run[a] + share * (run[b] - run[a])
        within = (at > 0.0) & (at < length)
        order = np.argsort(at[within])
        for one, other, where, nearer in zip(
            a[within][order].tolist(),
            b[within][order].tolist(),
            at[within][order].tolist(),
            share[within][order].tolist(),
            strict=True,
        ):
            if one in done or other in done:
                continue
            pair = (one, other) if nearer <= 0.5 else (other, one)
            for vertex in pair:
                free = not (self.rim[vertex] or self._locked[vertex])
                if free and self._shift(vertex, origin + where * along):
                    done.add(vertex)
                    break

    def _leg(self, start: int, end: int, name: str) -> list[int]:
        """Return the run of edges that keeps nearest to the line between two vertices."""
        along = self.flat[end] - self.flat[start]
        along = along / np.linalg.norm(along)
        beside = np.array([-along[1], along[0]])
        off = np.abs((self.flat - self.flat[start]) @ beside)
        allowed = ~self.rim
        allowed[[start, end]] = True
        a, b = self._ends[allowed[self._ends].all(axis=1)].T
        length = np.linalg.norm(self.flat[a] - self.flat[b], axis=1)
        weight = length * (1.0 + _OFF_LINE * (off[a] + off[b]) / self._spacing)
        count = len(self.flat)
        graph = coo_matrix((weight, (a, b)), shape=(count, count)).tocsr()
        far, before = dijkstra(graph, directed=False, indices=start, return_predecessors=True)
        if not np.isfinite(far[end]):
            raise GeometryError(
                name, "a cut that runs along the edge", "a cut across the face", "move it inwards"
            )
        run = [end]
        while run[-1] != start:
            run.append(int(before[run[-1]]))
        return run[::-1]


def _opened(surface: Surface, flat: FloatArray, chains: Sequence[IntArray]) -> CutSurface:
    """Return the surface with the vertices along chains of edges doubled."""
    count, table = len(surface.vertices), surface.edges
    key = table.ends[:, 0] * count + table.ends[:, 1]
    steps = [np.stack([chain[:-1], chain[1:]], axis=1) for chain in chains]
    cut_edges = [np.searchsorted(key, s.min(axis=1) * count + s.max(axis=1)) for s in steps]
    kept = (table.left >= 0) & (table.right >= 0)
    for edges in cut_edges:
        kept[edges] = False
    corners = 3 * len(surface.triangles)
    here, there = [], []
    for side in range(2):
        at = table.ends[kept, side]
        here.append(_corner(surface, table.left[kept], at))
        there.append(_corner(surface, table.right[kept], at))
    pairs = (np.concatenate(here), np.concatenate(there))
    graph = coo_matrix((np.ones(len(pairs[0])), pairs), shape=(corners, corners))
    _, fan = connected_components(graph, directed=False)
    fans, first = np.unique(fan, return_index=True)
    owner = surface.triangles.ravel()[first]
    order = np.lexsort((fans, owner))
    fresh = np.concatenate([[True], np.diff(owner[order]) > 0])
    number = np.empty(len(fans), dtype=np.int64)
    number[order[fresh]] = owner[order[fresh]]
    number[order[~fresh]] = count + np.arange(int((~fresh).sum()))
    origin = np.concatenate([np.arange(count), owner[order[~fresh]]])
    triangles = number[fan].reshape(-1, 3)
    opened = Surface(surface.vertices[origin], triangles, surface.patches, surface.patch_names)
    seams = []
    for chain, step, edges in zip(chains, steps, cut_edges, strict=True):
        ahead = step[:, 0] < step[:, 1]
        left = np.where(ahead, table.left[edges], table.right[edges])
        right = np.where(ahead, table.right[edges], table.left[edges])
        sides = []
        for triangle in (left, right):
            ends = [triangles.ravel()[_corner(surface, triangle, step[:, k])] for k in range(2)]
            sides.append(ints(np.stack(ends, axis=1), -1, 2))
        seams.append(Seam(floats(surface.vertices[chain], -1, 3), *sides))
    return CutSurface(opened, ints(origin, -1), floats(flat[origin], -1, 2), tuple(seams))


def _corner(surface: Surface, triangle: IntArray, vertex: IntArray) -> IntArray:
    """Return the number, among all corners, of the corner of a triangle at a vertex."""
    place: IntArray = np.argmax(surface.triangles[triangle] == vertex[:, None], axis=1)
    return 3 * triangle + place
