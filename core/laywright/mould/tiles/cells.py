"""The body cut along the grid: one piece of it in every cell, each in one cut.

A cell's cutter is a small solid: the cell's box, shortened at its seams by half the glue gap,
less holes and marks.  Meeting it with the body gives the tile at once.  A boolean costs what it
gives, plus a look at the whole body; where there are many cells the body is first cut into
slabs, so that each cutter looks at its slab alone.
"""

from __future__ import annotations

from itertools import product

import numpy as np
from manifold3d import Manifold

from laywright.arrays import FloatArray
from laywright.mould.solid import block
from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.joint import Place

__all__ = ["cell_block", "cells_of", "place_after", "places", "places_below"]

_CRUMB = 1e-6
_FAR = 10.0
_FEW = 24


def cells_of(
    whole: Manifold, plan: CutPlan, cutters: dict[Place, Manifold]
) -> list[tuple[Place, Manifold]]:
    """Return every cell of the grid that holds a piece of a solid, with that piece.

    Parameters
    ----------
    whole : Manifold
        The solid in the grid's axes.
    plan : CutPlan
        The grid.
    cutters : dict of tuple of 3 int to Manifold
        What stays of each cell.
    """
    longest = int(np.argmax(plan.counts))
    found = []
    for index in range(plan.counts[longest]):
        low, high = _far(plan)
        edges = (low[longest], *plan.cuts[longest], high[longest])
        low[longest], high[longest] = edges[index], edges[index + 1]
        slab = whole ^ block(low, high, 0) if len(cutters) > _FEW else whole
        for place, cutter in cutters.items():
            if place[longest] == index:
                piece = slab ^ cutter
                if piece.volume() > _CRUMB:
                    found.append((place, piece))
    return found


def cell_block(plan: CutPlan, place: Place, gap: float, patch: int) -> Manifold:
    """Return the box of a cell, shortened at its seams by half a gap, wide open elsewhere."""
    low, high = _far(plan)
    for axis in range(3):
        if place[axis] > 0:
            low[axis] = plan.cuts[axis][place[axis] - 1] + gap / 2.0
        if place[axis] < plan.counts[axis] - 1:
            high[axis] = plan.cuts[axis][place[axis]] - gap / 2.0
    return block(low, high, patch)


def places(plan: CutPlan) -> list[Place]:
    """Return all cells of the grid."""
    x, y, z = plan.counts
    return list(product(range(x), range(y), range(z)))


def places_below(plan: CutPlan, axis: int, index: int) -> list[Place]:
    """Return the cells just below a cut, the one numbered `index` along an axis."""
    return [place for place in places(plan) if place[axis] == index]


def place_after(lower: Place, axis: int) -> Place:
    """Return the cell that follows along an axis."""
    i, j, k = (place + (other == axis) for other, place in enumerate(lower))
    return i, j, k


def _far(plan: CutPlan) -> tuple[FloatArray, FloatArray]:
    return np.array(plan.low) - _FAR, np.array(plan.high) + _FAR
