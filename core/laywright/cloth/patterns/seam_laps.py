"""The laps of a piece: cloth beyond the left side of a cut, to lie over the right side."""

from __future__ import annotations

from collections.abc import Sequence

from shapely.geometry import Polygon

from laywright.arrays import FloatArray
from laywright.cloth.patterns.edge_strips import outside, pieces_of, pointed_corner, round_corner
from laywright.cloth.patterns.margins import EdgeMargins
from laywright.cloth.patterns.seam_corners import corner_after, corner_before
from laywright.cloth.patterns.seam_runs import Neighbours, Side, lengthened

__all__ = ["facing_sides", "lapping"]


def lapping(three: Neighbours, laps: Sequence[float], edge: EdgeMargins) -> list[Polygon]:
    """Return the lap beside one side of a cut, up to the end of the margin or the next lap."""
    before, run, after = three
    lap = laps[run.cut]
    if run.side is not Side.LEFT or lap <= 0.0:
        return []
    found = outside(run.points, lap, edge.deviation)
    first, last = run.outwards
    drawn = pieces_of(run.points).normals
    found += round_corner(run.points[0], (first, drawn[0]), lap, edge.deviation)
    found += round_corner(run.points[-1], (drawn[-1], last), lap, edge.deviation)
    if before.side is None:
        found += corner_before(run, before, edge).lapping(first, lap)
    if after.side is None:
        found += corner_after(run, after, edge).lapping(last, lap)
    elif after.side is Side.LEFT and after is not run:
        found += pointed_corner(run.points[-1], (last, after.outwards[0]), (lap, laps[after.cut]))
    return found


def facing_sides(
    three: Neighbours, seamed: Sequence[Neighbours], edge: EdgeMargins
) -> list[FloatArray]:
    """Return the right sides, on the same piece, of the cut whose left side a run is.

    The lap has room up to them, and where it reaches them the cloth is slit there.
    """
    run = three[1]
    if run.side is not Side.LEFT:
        return []
    return [
        _through(other, edge)
        for other in seamed
        if other[1].cut == run.cut and other[1].side is Side.RIGHT
    ]


def _through(three: Neighbours, edge: EdgeMargins) -> FloatArray:
    """Return the line of one side of a cut, straight on through the margins at its ends."""
    before, run, after = three
    return lengthened(
        run,
        corner_before(run, before, edge).reach if before.side is None else 0.0,
        corner_after(run, after, edge).reach if after.side is None else 0.0,
    )
