"""Corners of a pattern where the face's own edge meets the side of a cut.

The margin goes on to where the side of the cut, straight on, leaves it, and the lap beside the
cut ends where the margin of the neighbouring piece does.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import Polygon

from laywright.arrays import Array
from laywright.cloth.patterns.edge_strips import pieces_of
from laywright.cloth.patterns.margins import EdgeMargins
from laywright.cloth.patterns.seam_runs import Run

__all__ = ["SeamCorner", "corner_after", "corner_before"]

_STEEP = 0.3


@dataclass(frozen=True, eq=False)
class SeamCorner:
    """Where a run of the face's edge meets the side of a cut.

    Attributes
    ----------
    point : (2,) float, mm
    facing : (2,) float
        Unit direction outwards of the edge.
    drawn : (2,) float
        The same of the straight piece that draws the edge there.
    onward : (2,) float
        Unit direction of the edge, straight on past the corner.
    seam : (2,) float
        Unit direction of the side of the cut, straight on past the corner.
    margin : float, mm
        Beyond the edge.
    """

    point: Array
    facing: Array
    drawn: Array
    onward: Array
    seam: Array
    margin: float

    @property
    def reach(self) -> float:
        """How far the side of the cut runs on, straight, to the end of the margin, mm."""
        return self.margin / max(float(self.seam @ self.facing), _STEEP)

    @property
    def tip(self) -> Array:
        """Where it leaves the margin: (2,) float, mm."""
        return np.asarray(self.point + self.reach * self.seam)

    def margin_left(self) -> list[Polygon]:
        """Return the margin between the end of the edge's strip and the line of the cut."""
        if float(self.seam @ self.onward) <= 0.0 or float(self.seam @ self.facing) < _STEEP:
            return []
        ends = [self.point + self.margin * way for way in (self.drawn, self.facing)]
        return _hull([self.point, *ends, self.tip])

    def lapping(self, away: Array, lap: float) -> list[Polygon]:
        """Return the lap beyond the corner, `lap` mm wide along the unit direction `away`."""
        across = lap * away
        steep = float(self.onward @ away)
        if steep > _STEEP:
            across = (lap / steep) * self.onward
        ends = [self.point, self.tip, self.tip + across, self.point + across]
        return _hull([*ends, self.point + lap * away])


def corner_before(seam: Run, free: Run, edge: EdgeMargins) -> SeamCorner:
    """Return the corner at the start of the side of a cut, at which a run of edge ends."""
    facing = free.outwards[1]
    onward = np.array([-facing[1], facing[0]])
    drawn = pieces_of(free.points).normals[-1]
    margin = _width(free, drawn, edge)
    return SeamCorner(seam.points[0], facing, drawn, onward, seam.beyond_start, margin)


def corner_after(seam: Run, free: Run, edge: EdgeMargins) -> SeamCorner:
    """Return the corner at the end of the side of a cut, at which a run of edge starts."""
    facing = free.outwards[0]
    onward = np.array([facing[1], -facing[0]])
    drawn = pieces_of(free.points).normals[0]
    margin = _width(free, drawn, edge)
    return SeamCorner(seam.points[-1], facing, drawn, onward, seam.beyond_end, margin)


def _width(free: Run, facing: Array, edge: EdgeMargins) -> float:
    own = edge.of_holes() if free.hole else edge
    return float(own.widths(facing[None])[0])


def _hull(points: list[Array]) -> list[Polygon]:
    shape = shapely.MultiPoint(points).convex_hull
    return [shape] if isinstance(shape, Polygon) else []
