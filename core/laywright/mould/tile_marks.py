"""The marks of a grid's tiles: on the underside of each its name and an arrow.

They are read from below with the arrow up; the arrow points from row A towards row B, so that
all arrows of a mould point the same way, and the marked side is the one away from the pull.
"""

from __future__ import annotations

import shapely
from manifold3d import Manifold

from laywright.mould.cells import places
from laywright.mould.cuts import CutPlan
from laywright.mould.joint import Place
from laywright.mould.joints import JointSize, sections
from laywright.mould.marks import ARROW, engraving
from laywright.mould.naming import tile_name

__all__ = ["marks_of"]

_MARGIN = 1.0


def marks_of(
    whole: Manifold,
    plan: CutPlan,
    depth: float,
    gap: float,
    size: JointSize | None,
    pen: float,
    patch: int,
) -> dict[Place, Manifold]:
    """Return the engraving of every cell whose underside has room for one.

    Parameters
    ----------
    whole : Manifold
        The body in the grid's axes.
    plan : CutPlan
        The grid.
    depth, gap : float, mm
        Depth of the marks; glue gap of the seams.
    size : JointSize or None
        Joints in the level seams, which marks keep clear of.
    pen : float, mm
        Width of the strokes.
    patch : int
        Patch of the engraved faces.
    """
    if depth <= 0.0:
        return {}
    levels = [plan.low[2], *(cut + gap / 2.0 for cut in plan.cuts[2])]
    unders = sections(whole, 2, [level + 1e-3 for level in levels])
    marks = {}
    for place in places(plan):
        low, high = plan.cell(place)
        window = shapely.box(*(low[:2] + _MARGIN).tolist(), *(high[:2] - _MARGIN).tolist())
        under = shapely.intersection(unders[place[2]], window)
        if place[2] > 0 and size is not None:
            under = shapely.buffer(under, -(size.diameter + size.wall))
        level = levels[place[2]]
        start = level - (gap / 2.0 if place[2] > 0 else 1.0)
        text = tile_name(place, plan) + ARROW
        mark = engraving(text, under, (start, level + depth), pen, patch)
        if mark is not None:
            marks[place] = mark
    return marks
