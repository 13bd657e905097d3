"""Mending a scan without smoothing: no point is ever moved, and every change is reported.

Four things are done, each told by count and places: sheets beyond two at one edge are taken
off, loose scraps are left out, where an outline touches itself in a point the smaller side is cut
free of it, and small holes are closed with new triangles between the points of their edge,
unless a new edge would fall on an old one.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from manifold3d import triangulate

from laywright.arrays import Array, FloatArray, IntArray
from laywright.errors import GeometryError, LimitError
from laywright.surface.corner_groups import corner_groups
from laywright.surface.triangles import Surface
from laywright.surface.weld import ONE_SIDED, Defect, defect_at, tidy
from laywright.wording import three_figures

__all__ = ["Mended", "RepairSettings", "repair"]

_ROUNDS = 20


@dataclass(frozen=True)
class RepairSettings:
    """What may be changed.

    Attributes
    ----------
    scrap : float
        Pieces with a smaller share of the largest piece's area are left out.
    hole : float, mm
        Holes with a shorter edge are closed; the longest edge, the outline, never is.
    """

    scrap: float = 0.01
    hole: float = 20.0

    def __post_init__(self) -> None:
        if not 0.0 <= self.scrap < 1.0:
            raise LimitError(
                "scraps", three_figures(self.scrap), "a share from 0 to 1", "correct it"
            )
        if not 0.0 <= self.hole <= 1e5:
            raise LimitError(
                "holes", f"{three_figures(self.hole)} mm", "0 to 100000 mm", "correct it"
            )


@dataclass(frozen=True, eq=False)
class Mended:
    """A mended mesh.

    Attributes
    ----------
    surface : Surface
        Every point stands where it stood.
    changes : tuple of Defect
        What was changed, by count and place.
    left : tuple of Defect
        What is still wrong.
    """

    surface: Surface
    changes: tuple[Defect, ...]
    left: tuple[Defect, ...]


def repair(surface: Surface, settings: RepairSettings = RepairSettings()) -> Mended:
    """Mend a mesh; see the module's head.

    Parameters
    ----------
    surface : Surface
        As `laywright.surface.weld.tidy` gives it, mm; patches are lost.
    settings : RepairSettings
        What may be changed.

    Raises
    ------
    GeometryError
        If nothing is left.
    """
    changes: list[Defect] = []
    triangles = np.array(surface.triangles)
    vertices = surface.vertices
    triangles = _two_sheets(vertices, triangles, changes)
    mended, found = tidy(vertices, triangles)
    if len(mended.triangles) == 0:
        raise GeometryError("the mesh", "no triangle left", "a surface", "scan it again")
    if any(defect.kind == ONE_SIDED for defect in found):
        return Mended(mended, tuple(changes), found)
    mended = _without_scraps(mended, settings.scrap, changes)
    mended = _outline_freed(mended, changes)
    mended = _without_scraps(mended, settings.scrap, changes)
    mended = _holes_closed(mended, settings.hole, changes)
    mended, left = tidy(mended.vertices, mended.triangles)
    return Mended(mended, tuple(changes), left)


def _two_sheets(vertices: FloatArray, triangles: IntArray, changes: list[Defect]) -> IntArray:
    """Return the triangles with some taken off where an edge has more than two.

    Those with most open edges go first, and the smallest of these.
    """
    corners = vertices[triangles]
    area = np.linalg.norm(
        np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]), axis=1
    )
    kept = np.ones(len(triangles), dtype=bool)
    start, end = triangles, np.roll(triangles, -1, axis=1)
    key = np.minimum(start, end).ravel() * len(vertices) + np.maximum(start, end).ravel()
    owner = np.repeat(np.arange(len(triangles)), 3)
    for _ in range(_ROUNDS):
        here = kept[owner]
        _, edge, count = np.unique(key[here], return_inverse=True, return_counts=True)
        crowded = count[edge.reshape(-1)] > 2
        if not crowded.any():
            break
        alone = np.bincount(owner[here], count[edge.reshape(-1)] == 1, len(triangles))
        facets, edges = owner[here][crowded], edge.reshape(-1)[crowded]
        order = np.lexsort((area[facets], -alone[facets], edges))
        _, first = np.unique(edges[order], return_index=True)
        kept[facets[order][first]] = False
    _tell(changes, "triangles taken off edges with more than two", corners.mean(axis=1), ~kept)
    return np.asarray(triangles[kept])


def _without_scraps(surface: Surface, share: float, changes: list[Defect]) -> Surface:
    area = np.bincount(surface.components, weights=surface.areas)
    scrap = area < share * area.max()
    first = np.full(len(area), len(surface.triangles))
    np.minimum.at(first, surface.components, np.arange(len(surface.triangles)))
    _tell(changes, "loose scraps left out", surface.centroids[first], scrap)
    return surface.part(~scrap[surface.components]) if scrap.any() else surface


def _outline_freed(surface: Surface, changes: list[Defect]) -> Surface:
    """Return the surface with an outline that passes each point once.

    At a point where it touches itself, the fan of triangles with the largest area stays.
    """
    cut: list[FloatArray] = []
    for _ in range(_ROUNDS):
        table = surface.edges
        outer = table.ends[(table.left < 0) | (table.right < 0)]
        crowded = np.bincount(outer.ravel(), minlength=len(surface.vertices)) > 2
        if not crowded.any():
            break
        at = crowded[surface.triangles]
        fan = corner_groups(surface, np.ones(len(table.ends), dtype=bool)).reshape(-1, 3)
        area = np.bincount(fan[at], np.repeat(surface.areas, at.sum(axis=1)))
        order = np.argsort(area[fan[at]], kind="stable")
        largest = np.full(len(crowded), -1)
        largest[surface.triangles[at][order]] = fan[at][order]
        dropped = (at & (fan != largest[surface.triangles])).any(axis=1)
        cut.append(surface.centroids[dropped])
        surface = surface.part(~dropped)
    points = np.concatenate([np.empty((0, 3)), *cut])
    every = np.ones(len(points), dtype=bool)
    _tell(changes, "triangles taken off where an outline touches itself", points, every)
    return surface


def _holes_closed(surface: Surface, longest: float, changes: list[Defect]) -> Surface:
    try:
        loops = surface.boundary_loops
    except GeometryError:
        return surface
    small = [loop for loop in loops[1:] if surface.loop_length(loop) <= longest]
    taken = {(low, high) for low, high in surface.edges.ends.tolist()}
    closed, fillings = [], []
    for loop in small:
        filling = _filling(surface, loop)
        across = _across(filling, loop)
        if across & taken or len(filling) != len(loop) - 2:
            continue
        taken |= across
        closed.append(loop)
        fillings.append(filling)
    if not closed:
        return surface
    middles = np.array([surface.vertices[loop].mean(axis=0) for loop in closed])
    _tell(changes, "holes closed", middles, np.ones(len(closed), dtype=bool))
    return Surface.single(surface.vertices, np.concatenate([surface.triangles, *fillings]), "Face1")


def _across(filling: IntArray, loop: IntArray) -> set[tuple[int, int]]:
    """Return the edges of a filling that do not lie on the edge of the hole."""
    ends = np.sort(np.stack([filling, np.roll(filling, -1, axis=1)], axis=2).reshape(-1, 2), axis=1)
    rim = np.sort(np.stack([loop, np.roll(loop, -1)], axis=1), axis=1)
    edges = {(low, high) for low, high in ends.tolist()}
    return edges - {(low, high) for low, high in rim.tolist()}


def _filling(surface: Surface, loop: IntArray) -> IntArray:
    """Return triangles over a hole, between the points of its edge, in its mean plane."""
    points = surface.vertices[loop][::-1]
    after = np.roll(points, -1, axis=0)
    normal = np.cross(points, after).sum(axis=0)
    length = float(np.linalg.norm(normal))
    if length == 0.0:
        return np.empty((0, 3), dtype=np.int64)
    normal /= length
    side = np.cross(normal, np.eye(3)[int(np.argmin(np.abs(normal)))])
    side /= np.linalg.norm(side)
    flat = points @ np.stack([side, np.cross(normal, side)], axis=1)
    facets = np.asarray(triangulate([flat])).astype(np.int64)
    return np.asarray(loop[::-1][facets])


def _tell(changes: list[Defect], kind: str, points: FloatArray, which: Array) -> None:
    if which.any():
        changes.append(defect_at(kind, points[which]))
