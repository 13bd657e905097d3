"""The surface that a local ply covers: cut out of the face at its end, in even triangles.

Where the extent falls apart, for example at a slot in the face, each part is a piece of the ply.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray, floats, ints
from laywright.cloth.drape.even_mesh import even_mesh, spacing_for
from laywright.errors import GeometryError
from laywright.laminate.drop_off import LocalPly
from laywright.laminate.extents import extent_text
from laywright.surface.along import Along
from laywright.surface.level_line import above, divided_along
from laywright.surface.lines import away_from_lines
from laywright.surface.refined import refined_between
from laywright.surface.triangles import Surface

__all__ = ["Region", "region_of"]

_TRIANGLES = 800
_TRIES = 6
_LESS = 0.3
_AMPLE = 1.1
_CRUMB = 0.005
_AT_EDGE = 0.1


@dataclass(frozen=True, eq=False)
class Region:
    """What a local ply covers.

    Attributes
    ----------
    surface : Surface
        On the working surface, mm; in several pieces where the extent falls apart.
    ends : (e, 2) int
        Boundary edges at which the ply ends inside the face, the ply on their left.
    area : float, mm^2
        Of the given surface within the end of the ply.
    """

    surface: Surface
    ends: IntArray
    area: float


def region_of(mesh: Surface, named: Surface, ply: LocalPly) -> Region:
    """Return the surface that a local ply covers.

    Parameters
    ----------
    mesh : Surface
        The working surface in even triangles, mm.
    named : Surface
        The same with the faces of the part as its patches.
    ply : LocalPly

    Raises
    ------
    InputError
        If it covers nothing.
    GeometryError
        If it is too narrow to be draped.
    """
    where = f"ply {ply.ply}, {extent_text(ply.extent)}"

    def depth(surface: Surface) -> FloatArray:
        return ply.depth(Along(surface, named))

    if depth(mesh).min() >= 0.0:
        return Region(mesh, ints(np.empty((0, 2), dtype=np.int64), -1, 2), mesh.area)
    spacing = spacing_for(mesh, len(mesh.triangles))
    for _ in range(_TRIES):
        fine = refined_between(mesh, depth, 0.0, 0.0, spacing)
        found = depth(fine)
        rough = float(fine.areas[found[fine.triangles].sum(axis=1) > 0.0].sum())
        enough = spacing_for(fine, round(_TRIANGLES * fine.area / rough)) if rough else 0.0
        if spacing <= _AMPLE * enough or (not rough and found.max() < -spacing):
            break
        spacing = enough or _LESS * spacing
    ply.check(found)
    divided, value, _ = divided_along(fine, found, np.empty((len(fine.vertices), 0)))
    inside = above(divided, value)
    if not inside.any():
        raise GeometryError(
            where, "a region smaller than its triangles", "a larger one", "widen its extent"
        )
    covered = divided.part(inside)
    areas = np.bincount(covered.components, weights=covered.areas)
    pieces = []
    for number in np.argsort(-areas, kind="stable").tolist():
        if areas[number] < _CRUMB * covered.area:
            continue
        try:
            pieces.append(even_mesh(covered.part(covered.components == number), spacing))
        except GeometryError as problem:
            raise GeometryError(
                where, problem.found, "a region that cloth can be cut for", "widen its extent"
            ) from problem
    surface = _together(pieces)
    return Region(surface, _ends(surface, mesh, _AT_EDGE * spacing), covered.area)


def _together(pieces: list[Surface]) -> Surface:
    starts = np.cumsum([0, *(len(piece.vertices) for piece in pieces)])
    return Surface(
        np.concatenate([piece.vertices for piece in pieces]),
        np.concatenate(
            [piece.triangles + first for piece, first in zip(pieces, starts, strict=False)]
        ),
        np.concatenate([piece.patches for piece in pieces]),
        pieces[0].patch_names,
    )


def _ends(surface: Surface, mesh: Surface, near: float) -> IntArray:
    """Return the boundary edges that lie off the edges of the face."""
    edges = np.concatenate(
        [np.stack([loop, np.roll(loop, -1)], axis=1) for loop in surface.boundary_loops]
    )
    rim = np.concatenate(
        [np.stack([loop, np.roll(loop, -1)], axis=1) for loop in mesh.boundary_loops]
    )
    middles = floats(surface.vertices[edges].mean(axis=1), -1, 3)
    return ints(edges[away_from_lines(middles, mesh.vertices[rim]) > near], -1, 2)
