"""Slivers: parts of an outline that a grid of cuts leaves too thin, as at rounded corners."""

from __future__ import annotations

from itertools import pairwise, product

import shapely
from shapely.affinity import rotate

from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.wishes import Stretch

__all__ = ["narrow_ends", "slivers"]

_EXACT = 1e-9
_SPECK = 1e-6
_FAR = 1e6


def slivers(outline: shapely.Geometry, plan: CutPlan, least: float) -> int:
    """Return how many parts of an outline would be thinner than `least` in the plan view.

    Parameters
    ----------
    outline : shapely.Geometry, mm
        In the axes of a grid that is not turned.
    plan : CutPlan
        The grid.
    least : float, mm
        The limit.
    """
    turned = _turned(outline, plan)
    count = 0
    for i, j in product(range(plan.counts[0]), range(plan.counts[1])):
        low, high = plan.cell((i, j, 0))
        for part in _parts(shapely.clip_by_rect(turned, low[0], low[1], high[0], high[1])):
            x0, y0, x1, y1 = part.bounds
            count += min(x1 - x0, y1 - y0) < least - _EXACT
    return count


def narrow_ends(
    outline: shapely.Geometry, plan: CutPlan, axis: int, least: float
) -> tuple[Stretch, ...]:
    """Return the stretches of an axis where a cut would leave an end thinner than `least`.

    In every strip between the cuts across the other axis the outline ends somewhere; nearer to
    that end than `least` there should be no cut.

    Parameters
    ----------
    outline : shapely.Geometry, mm
        In the axes of a grid that is not turned.
    plan : CutPlan
        The grid.
    axis : int
        0 or 1.
    least : float, mm
        The limit.
    """
    turned = _turned(outline, plan)
    other = 1 - axis
    edges = (-_FAR, *plan.cuts[other], _FAR)
    found = set()
    for low, high in pairwise(edges):
        box = (-_FAR, low, _FAR, high) if axis == 0 else (low, -_FAR, high, _FAR)
        for part in _parts(shapely.clip_by_rect(turned, *box)):
            start, end = part.bounds[axis], part.bounds[axis + 2]
            found |= {(start, start + least), (end - least, end)}
    return tuple(sorted(found))


def _turned(outline: shapely.Geometry, plan: CutPlan) -> shapely.Geometry:
    return rotate(outline, -plan.turn, origin=(0.0, 0.0), use_radians=True)


def _parts(shape: shapely.Geometry) -> list[shapely.Polygon]:
    parts = getattr(shape, "geoms", [shape])
    return [part for part in parts if part.geom_type == "Polygon" and part.area > _SPECK]
