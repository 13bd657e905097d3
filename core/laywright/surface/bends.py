"""Bends of a part: strips that turn within a small radius, and sharp edges.

A strip turns by the angle ``sum(fold * length) / line``, where the folds are those of its mesh
edges and the line is its length; its radius is its area by that sum.  The line follows from
area and outline of the strip, which is a ring or has two ends.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from laywright.arrays import Array, FloatArray, IntArray, Vector
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["Bend", "bends_of", "turn_of"]

_LARGEST_RADIUS = 30.0
_LEAST_TURN = math.radians(15.0)
_LIKE = 3.0
_COPLANAR = 1e-4


@dataclass(frozen=True)
class Bend:
    """A place where the skin turns.

    Attributes
    ----------
    where : str
        Names of the faces there.
    turn : float, radians
        Angle through which the skin turns, the mean along the line.
    radius : float, mm
        Of the face, the mean; 0 for a sharp edge.
    length : float, mm
        Of the line.
    point : tuple of 3 float, mm
        A point on it.
    edges : tuple of int
        Edges of the surface's table whose folds make the turn.
    """

    where: str
    turn: float
    radius: float
    length: float
    point: Vector
    edges: tuple[int, ...] = ()


def bends_of(
    surface: Surface, largest_radius: float = _LARGEST_RADIUS, least_turn: float = _LEAST_TURN
) -> tuple[Bend, ...]:
    """Return the bends of a surface, those with the longest lines first.

    Parameters
    ----------
    surface : Surface
        The part, mm.
    largest_radius : float, mm
        What is curved less is no bend.
    least_turn : float, radians
        What turns by less is no bend.

    Examples
    --------
    >>> import numpy as np
    >>> points = np.array([[0, 0, 0], [90, 0, 0], [0, 50, 0], [90, 0, 50]])
    >>> folded = Surface.single(points, np.array([[0, 1, 2], [1, 0, 3]]))
    >>> [(round(math.degrees(bend.turn)), bend.length) for bend in bends_of(folded)]
    [(90, 90.0)]
    """
    table = surface.edges
    left, right = table.left, table.right
    outer = (left < 0) | (right < 0)
    fold, length = _folds(surface)
    width = 2.0 * np.stack([surface.areas[left], surface.areas[right]]) / length
    sharp = fold > TOLERANCES.sharp_edge
    curved = ~sharp & (fold * largest_radius > width.min(axis=0))
    narrow = width <= _LIKE * width.min(axis=0)
    in_bend = np.zeros(len(surface.triangles), dtype=bool)
    for side, owner in enumerate((left, right)):
        in_bend[owner[curved & narrow[side]]] = True
    flat = ~outer & (fold < _COPLANAR)
    areas = surface.areas
    for one, other in ((left, right), (right, left)):
        joins = flat & in_bend[one] & (areas[other] <= _LIKE * areas[one])
        in_bend[other[joins]] = True
    found = _strips(surface, in_bend, fold * length * ~sharp, length, least_turn)
    found += _edges(
        surface, np.flatnonzero(sharp), table.ends, fold, length, (left, right), least_turn
    )
    return tuple(sorted(found, key=lambda bend: -bend.length))


def turn_of(bend: Bend, surface: Surface) -> float:
    """Return the turn of a bend on a surface of the same triangles, its points moved, radians."""
    fold, length = _folds(surface)
    own = list(bend.edges)
    return float(fold[own] @ length[own]) / bend.length


def _folds(surface: Surface) -> tuple[FloatArray, FloatArray]:
    """Return fold and length of every edge of the table; the outline has no fold."""
    table = surface.edges
    span = surface.vertices[table.ends[:, 1]] - surface.vertices[table.ends[:, 0]]
    one, other = surface.normals[table.left], surface.normals[table.right]
    sine = np.linalg.norm(np.cross(one, other), axis=1)
    fold = np.arctan2(sine, np.einsum("ij,ij->i", one, other))
    outer = (table.left < 0) | (table.right < 0)
    return np.where(outer, 0.0, fold), np.linalg.norm(span, axis=1)


def _strips(
    surface: Surface, in_bend: Array, turning: FloatArray, length: FloatArray, least_turn: float
) -> list[Bend]:
    """Return the bends of connected facets."""
    table = surface.edges
    facets = np.flatnonzero(in_bend)
    if len(facets) == 0:
        return []
    sides = [np.where(owner >= 0, in_bend[owner], False) for owner in (table.left, table.right)]
    both, rim = sides[0] & sides[1], sides[0] ^ sides[1]
    number = np.full(len(in_bend), -1)
    number[facets] = np.arange(len(facets))
    groups, label = _joined(number[table.left[both]], number[table.right[both]], len(facets))
    group = np.full(len(in_bend), -1)
    group[facets] = label
    owner = np.where(sides[0], group[table.left], group[table.right])
    near = both | rim
    total = np.bincount(owner[near], turning[near], groups)
    half = 0.5 * np.bincount(owner[rim], length[rim], groups)
    area = np.bincount(label, surface.areas[facets], groups)
    room = half * half - 4.0 * area
    rings = _runs(owner[rim], table.ends[rim], len(surface.vertices), groups)
    line = np.where(rings > 1, half, 0.5 * (half + np.sqrt(np.maximum(room, 0.0))))
    found = []
    for place in np.flatnonzero((room > 0.0) & (total >= least_turn * line)).tolist():
        own = facets[label == place]
        names = [surface.patch_names[patch] for patch in np.unique(surface.patches[own])]
        middle = surface.centroids[own].mean(axis=0)
        nearest = own[np.argmin(np.linalg.norm(surface.centroids[own] - middle, axis=1))]
        found.append(
            Bend(
                _named(names),
                float(total[place] / line[place]),
                float(area[place] / total[place]),
                float(line[place]),
                _point(surface.centroids[nearest]),
                tuple(np.flatnonzero(near & (turning > 0.0) & (owner == place)).tolist()),
            )
        )
    return found


def _runs(owner: IntArray, ends: IntArray, size: int, groups: int) -> IntArray:
    """Return how many runs of edges bound each group."""
    keys = owner[:, None] * size + ends
    points, index = np.unique(keys, return_inverse=True)
    index = index.reshape(-1, 2)
    runs, run = _joined(index[:, 0], index[:, 1], len(points))
    first = np.zeros(runs, dtype=np.int64)
    first[run] = points // size
    return np.asarray(np.bincount(first, minlength=groups))


def _edges(
    surface: Surface,
    sharp: IntArray,
    ends: IntArray,
    fold: FloatArray,
    length: FloatArray,
    sides: tuple[IntArray, IntArray],
    least_turn: float,
) -> list[Bend]:
    """Return the sharp edges between the same two faces, each run of them once."""
    if len(sharp) == 0:
        return []
    pairs = np.sort(np.stack([surface.patches[side[sharp]] for side in sides], axis=1), axis=1)
    kinds, kind = np.unique(pairs, axis=0, return_inverse=True)
    kind = kind.reshape(-1)
    found = []
    for number, (one, other) in enumerate(kinds.tolist()):
        run = sharp[kind == number]
        points, index = np.unique(ends[run], return_inverse=True)
        index = index.reshape(-1, 2)
        groups, label = _joined(index[:, 0], index[:, 1], len(points))
        names = [surface.patch_names[patch] for patch in dict.fromkeys((one, other))]
        for group in range(groups):
            own = run[label[index[:, 0]] == group]
            line = float(length[own].sum())
            turn = float(fold[own] @ length[own]) / line
            if turn < least_turn:
                continue
            place = surface.vertices[ends[own[len(own) // 2]]].mean(axis=0)
            edges = tuple(own.tolist())
            found.append(Bend(_named(names), turn, 0.0, line, _point(place), edges))
    return found


def _joined(rows: IntArray, columns: IntArray, size: int) -> tuple[int, IntArray]:
    graph = coo_matrix((np.ones(len(rows)), (rows, columns)), (size, size))
    number, label = connected_components(graph, directed=False)
    return number, label


def _named(names: list[str]) -> str:
    return ", ".join(names[:3]) + (f" and {len(names) - 3} more" if len(names) > 3 else "")


def _point(place: FloatArray) -> Vector:
    x, y, z = place.tolist()
    return x, y, z
