"""The margin of a piece with cuts, along the parts of its outline that are the face's edge."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.ops import substring

from laywright.arrays import FloatArray, floats
from laywright.cloth.patterns.edge_strips import outside
from laywright.cloth.patterns.margins import EdgeMargins, narrowed
from laywright.cloth.patterns.seam_corners import corner_after, corner_before
from laywright.cloth.patterns.seam_runs import Neighbours, Run, lengthened

__all__ = ["seam_margins"]


def seam_margins(neighbours: Sequence[Neighbours], edge: EdgeMargins) -> list[BaseGeometry]:
    """Return the cloth beyond the runs that are the face's own edge."""
    found: list[BaseGeometry] = []
    for before, run, after in neighbours:
        if run.side is not None:
            continue
        if run.closed and run.hole:
            opening = Polygon(run.points)
            found.append(opening.difference(narrowed(opening, edge)))
            continue
        own = edge.of_holes() if run.hole else edge
        ends = [(before, corner_after), (after, corner_before)]
        seams = [end for end in ends if end[0].side is not None]
        for seam, corner_of in seams:
            found += corner_of(seam, run, edge).margin_left()
        line = LineString(run.points)
        reach = 1.5 * own.largest + 1.0
        if before.cut == after.cut:
            reach = min(reach, 0.25 * line.length)
        if line.length < 4.0 * reach or not seams:
            found += _kept(own.beside(run.points), [seam for seam, _ in seams], own)
            continue
        for place, near in ((0.0, before), (line.length - reach, after)):
            found += _kept(own.beside(_part(line, place, place + reach)), [near], own)
        found += own.beside(_part(line, 0.9 * reach, line.length - 0.9 * reach))
    return found


def _part(line: LineString, start: float, end: float) -> FloatArray:
    """Return the points of a part of a line, by the lengths along it at which it lies, mm."""
    return floats(np.asarray(substring(line, start, end).coords)[:, :2], -1, 2)


def _kept(beside: Sequence[Polygon], seams: Sequence[Run], edge: EdgeMargins) -> list[BaseGeometry]:
    """Return what of a margin does not reach over the sides of cuts next to it."""
    far = 1.1 * edge.largest + 1.0
    away = [
        part for seam in seams for part in outside(lengthened(seam, far, far), far, edge.deviation)
    ]
    found: list[BaseGeometry] = shapely.difference(beside, shapely.union_all(away)).tolist()
    return found
