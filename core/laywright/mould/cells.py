"""The body cut along the grid: one piece of it in every cell."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
from manifold3d import Manifold

from laywright.mould.cuts import CutPlan
from laywright.mould.joints import Place
from laywright.mould.solid import block

__all__ = ["cells_of", "glue_gaps"]

_CRUMB = 1e-6
_FAR = 10.0


def cells_of(whole: Manifold, plan: CutPlan, patch: int) -> list[tuple[Place, Manifold]]:
    """Return every cell of the grid that holds a piece of a solid, with that piece.

    Parameters
    ----------
    whole : Manifold
        The solid in the grid's axes.
    plan : CutPlan
        The grid.
    patch : int
        Patch of the faces that the cuts make.
    """
    pieces: list[tuple[list[int], Manifold]] = [([], whole)]
    for axis in range(3):
        pieces = [
            ([*place, index], part)
            for place, piece in pieces
            for index, part in enumerate(_slabs(piece, plan, axis, patch))
            if part.volume() > _CRUMB
        ]
    return [((place[0], place[1], place[2]), piece) for place, piece in pieces]


def glue_gaps(plan: CutPlan, place: Place, gap: float, patch: int) -> list[Manifold]:
    """Return what makes room for half the glue at every seam of a cell.

    Parameters
    ----------
    plan : CutPlan
        The grid.
    place : tuple of 3 int
        The cell.
    gap : float, mm
        Thickness of the glue.
    patch : int
        Patch of the new faces.
    """
    if gap <= 0.0:
        return []
    blocks = []
    for axis in range(3):
        for cut in plan.cuts[axis][max(0, place[axis] - 1) : place[axis] + 1]:
            low, high = np.array(plan.low) - _FAR, np.array(plan.high) + _FAR
            low[axis], high[axis] = cut - gap / 2.0, cut + gap / 2.0
            blocks.append(block(low, high, patch))
    return blocks


def _slabs(piece: Manifold, plan: CutPlan, axis: int, patch: int) -> list[Manifold]:
    """Return the slices of a solid between the cuts along one axis."""
    if not plan.cuts[axis]:
        return [piece]
    low, high = np.array(plan.low) - _FAR, np.array(plan.high) + _FAR
    slabs = []
    for start, end in pairwise([low[axis], *plan.cuts[axis], high[axis]]):
        corners = np.stack([low, high])
        corners[:, axis] = start, end
        slabs.append(piece ^ block(corners[0], corners[1], patch))
    return slabs
