"""The marks of a grid's tiles, all on faces that cloth never touches.

On its underside every tile carries its name, an arrow and a crossed ring.  They are read from
below; the arrow points from row A towards row B, so that all arrows of a mould point the same
way, and the ring says that the pull goes away from the reader.  On one of its upright seam faces
it carries an arrow that points up in the mould, along the pull.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
import shapely
from manifold3d import Manifold

from laywright.arrays import FloatArray
from laywright.mould.marks import ARROW, AWAY, drawn, engraving, strokes
from laywright.mould.solid import extruded
from laywright.mould.tiles.cells import places
from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.joint import Place
from laywright.mould.tiles.joints import JointSize, sections
from laywright.mould.tiles.naming import tile_name

__all__ = ["TileMark", "marks_of", "pull_arrows"]

_MARGIN = 1.0
_BELOW = 1.0


@dataclass(frozen=True)
class TileMark:
    """What is engraved into the underside of one tile.

    Attributes
    ----------
    solid : Manifold
        What is cut out.
    outside : float, mm^3
        Volume of the part that sticks out below the body.
    """

    solid: Manifold
    outside: float


def marks_of(
    whole: Manifold,
    plan: CutPlan,
    depth: float,
    gap: float,
    size: JointSize | None,
    pen: float,
    patch: int,
) -> dict[Place, TileMark]:
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
        start = level - (gap / 2.0 if place[2] > 0 else _BELOW)
        name = tile_name(place, plan)
        for text in (name + ARROW + AWAY, name + ARROW):
            mark = engraving(text, under, (start, level + depth), pen, patch)
            if mark is not None:
                share = 0.0 if place[2] > 0 else _BELOW / (_BELOW + depth)
                marks[place] = TileMark(mark, share * float(mark.volume()))
                break
    return marks


def pull_arrows(
    rooms: Mapping[tuple[Place, int], shapely.Geometry],
    plan: CutPlan,
    depth: float,
    gap: float,
    pen: float,
    patch: int,
) -> dict[Place, Manifold]:
    """Return the arrow along the pull of every cell that has an upright seam with room.

    Parameters
    ----------
    rooms : mapping of (place, axis) to shapely.Geometry
        Where a seam's face may be engraved, by the lower cell and the seam's axis, in the
        coordinates of the two axes that follow it.
    plan : CutPlan
        The grid.
    depth, gap : float, mm
        Depth of the marks; glue gap of the seams.
    pen : float, mm
        Width of the strokes.
    patch : int
        Patch of the engraved faces.
    """
    widest: dict[Place, tuple[float, list[FloatArray], int, int]] = {}
    arrow = strokes(ARROW)
    for (lower, axis), room in rooms.items():
        if axis == 2 or depth <= 0.0:
            continue
        # Across x the coordinates are (y, z), across y they are (z, x): up is z.
        lines = arrow if axis == 0 else [line[:, ::-1] for line in arrow]
        bars = drawn(lines, shapely.buffer(room, -_MARGIN), pen)
        if bars is None:
            continue
        points = np.concatenate(bars)
        reach = float(np.ptp(points, axis=0).max())
        upper = (lower[0] + (axis == 0), lower[1] + (axis == 1), lower[2])
        for place, side in ((lower, -1), (upper, 1)):
            if place not in widest or reach > widest[place][0]:
                widest[place] = (reach, bars, axis, side)
    return {
        place: _into(bars, plan.cuts[axis][place[axis] - (side > 0)], axis, side, depth, gap, patch)
        for place, (_, bars, axis, side) in widest.items()
    }


def _into(
    bars: list[FloatArray], cut: float, axis: int, side: int, depth: float, gap: float, patch: int
) -> Manifold:
    """Return what engraves outlines into the face of a seam, on one side of its cut."""
    low, high = sorted((cut, cut + side * (gap / 2.0 + depth)))
    matrix = np.zeros((3, 4))
    for row, column in (((axis + 1) % 3, 0), ((axis + 2) % 3, 1), (axis, 2)):
        matrix[row, column] = 1.0
    return extruded(bars, low, high, patch).transform(matrix)
