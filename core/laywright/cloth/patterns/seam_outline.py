"""Outlines of a pattern with cuts: margin at the edge of the part, lap or butt along each cut.

Along a cut the left side carries the lap, seen from the side away from the mould: it is cut
wider and lies over the right side, which ends at the seam.  A dart that opens by less than the
lap keeps all the cloth between its sides on the left one and is slit along the right one.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient

from laywright.arrays import FloatArray, IntArray, floats
from laywright.cloth.cuts.cutting import Seam
from laywright.cloth.cuts.piece_region import largest_part, piece_region, region_within
from laywright.cloth.cuts.strips import HAIRLINE, healed
from laywright.cloth.patterns.edge_strips import outside, quarter_steps
from laywright.cloth.patterns.margins import EdgeMargins
from laywright.cloth.patterns.seam_corners import corner_after, corner_before
from laywright.cloth.patterns.seam_laps import facing_sides, lapping
from laywright.cloth.patterns.seam_margins import seam_margins
from laywright.cloth.patterns.seam_runs import (
    Dart,
    Run,
    Side,
    darts_of,
    in_turn,
    lengthened,
    loops_of,
    runs_of,
    smoothed,
)
from laywright.errors import GeometryError
from laywright.surface.triangles import Surface

__all__ = ["SeamedOutline", "seamed_outline"]

_SHORTEST_SLIT = 1.0


@dataclass(frozen=True, eq=False)
class SeamedOutline:
    """What to cut and to mark of one piece.

    Attributes
    ----------
    region : shapely.Polygon
        The part's area on it, mm.
    cut : shapely.Polygon
        With margin and laps.
    slits : tuple of (k, 2) float, mm
        Lines to cut within `cut`.
    laps : tuple of (k, 2) float, mm
        Lines up to which the other side laps over it.
    runs : tuple of Run
        Its edges and the sides of its cuts.
    """

    region: Polygon
    cut: Polygon
    slits: tuple[FloatArray, ...]
    laps: tuple[FloatArray, ...]
    runs: tuple[Run, ...]


def seamed_outline(
    surface: Surface,
    uv: FloatArray,
    seams: Sequence[Seam],
    laps: Sequence[float],
    edge: EdgeMargins,
    holes: IntArray,
    name: str,
) -> SeamedOutline:
    """Return the outlines of one piece.

    Parameters
    ----------
    surface : Surface
        The piece, by the vertex numbers of the seams; vertices of other pieces may be unused.
    uv : (n, 2) float, mm
        Flat coordinates.
    seams : sequence of Seam
        Cuts of the ply.
    laps : sequence of float, mm
        Width of the lap at each cut; 0 for a butt.
    edge : EdgeMargins
        Cloth beyond the edge of the part, and how closely outlines are drawn.
    holes : (h,) int
        Vertices at the edges of holes in the part.
    name : str
        Name of the piece, for messages.

    Returns
    -------
    SeamedOutline
        Its lines within half of `EdgeMargins.deviation` of the smooth ones; where edges come too
        close to each other for that, through the points of the mesh alone.

    Raises
    ------
    GeometryError
        If the flat cloth would overlap itself.
    """
    region = piece_region(surface, uv, name)
    loops = runs_of(surface, uv, seams, holes)
    try:
        smooth = [smoothed(loop, 0.5 * edge.deviation) for loop in loops]
        region, loops = region_within(loops_of(smooth), name), smooth
    except GeometryError:
        pass  # the lines of the mesh stay
    neighbours = [three for loop in loops for three in in_turn(loop)]
    grown = shapely.union_all([region, *seam_margins(neighbours, edge)])
    slits: list[FloatArray] = []
    darts = [dart for loop in loops for dart in darts_of(loop)]
    for dart in darts:
        grown, slit = _opened(grown, region, dart, laps[dart.down.cut], edge)
        slits += slit
    at_darts = {dart.down.cut for dart in darts}
    seamed = [three for three in neighbours if three[1].cut not in {-1, *at_darts}]
    over: list[BaseGeometry] = []
    folded: list[FloatArray] = []
    for three in seamed:
        lap, here = lapping(three, laps, edge), facing_sides(three, seamed, edge)
        room = [
            part
            for line in here
            for part in outside(line[::-1], laps[three[1].cut], edge.deviation)
        ]
        over += shapely.difference(lap, shapely.union_all(room)).tolist()
        folded += here
    cut = healed(shapely.union_all([grown, *over]))
    slits += [line for right in folded for line in _long_lines(right, cut)]
    lapped = [run for _, run, _ in neighbours if run.side is Side.RIGHT and laps[run.cut] > 0.0]
    marks = [
        line
        for run in lapped
        for line in _lines(_inwards(run.points, laps[run.cut], edge.deviation), region)
    ]
    return SeamedOutline(
        region,
        orient(largest_part(cut)),
        tuple(slits),
        tuple(marks),
        tuple(run for loop in loops for run in loop),
    )


def _opened(
    grown: BaseGeometry, region: Polygon, dart: Dart, lap: float, edge: EdgeMargins
) -> tuple[BaseGeometry, list[FloatArray]]:
    """Open a dart, and return the slits it needs besides."""
    reach = 3.0 * edge.largest + lap + 1.0
    down, up = dart.down, dart.up
    first = np.concatenate([[down.points[0] + reach * down.beyond_start], down.points])
    last = np.concatenate([up.points, [up.points[-1] + reach * up.beyond_end]])
    wedge = Polygon(np.concatenate([first, last[1:]])).buffer(0.0)
    if lap > 0.0:
        if down.side is Side.LEFT:
            beside = dart.before
            far = corner_before(down, beside, edge).reach if beside.side is None else 0.0
            near = lengthened(down, far, 0.0)
        else:
            beside = dart.after
            far = corner_after(up, beside, edge).reach if beside.side is None else 0.0
            near = lengthened(up, 0.0, far)
        kept = LineString(near).buffer(lap, cap_style="flat").intersection(wedge)
        grown, wedge = shapely.union(grown, kept), wedge.difference(kept)
    opened = healed(shapely.union(grown.buffer(0.0).difference(wedge), region))
    free = last if down.side is Side.LEFT else first
    return opened, _long_lines(free, opened)


def _long_lines(points: FloatArray, cut: BaseGeometry) -> list[FloatArray]:
    """Return what of a line runs inside the cut line."""
    inner = _lines(LineString(points), largest_part(cut).buffer(-HAIRLINE))
    return [line for line in inner if LineString(line).length > _SHORTEST_SLIT]


def _inwards(points: FloatArray, by: float, deviation: float) -> BaseGeometry:
    """Return the line beside a run on the piece's side of it."""
    steps = quarter_steps(by, 0.5 * deviation)
    line = LineString(points).offset_curve(by, quad_segs=steps)
    return shapely.simplify(line, 0.5 * deviation)


def _lines(shape: BaseGeometry, within: BaseGeometry) -> list[FloatArray]:
    """Return the lines of a shape within another."""
    merged = shape.intersection(within)
    if not isinstance(merged, LineString) and hasattr(merged, "geoms"):
        merged = shapely.line_merge(merged)
    parts = [p for p in getattr(merged, "geoms", [merged]) if isinstance(p, LineString)]
    return [floats(np.asarray(part.coords)[:, :2], -1, 2) for part in parts if part.length > 0.0]
