"""Outlines of a pattern with cuts: margin at the edge of the part, lap or butt along each cut.

Along a cut the left side carries the lap, seen from the side away from the mould: it is cut
wider and lies over the right side, which ends at the seam.  A dart that opens by less than the
lap keeps all the cloth between its sides on the left one and is slit along the right one.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from itertools import pairwise

import numpy as np
import shapely
from shapely.geometry import LineString, MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient

from laywright.arrays import FloatArray, floats, line_length, ring_area
from laywright.cloth.cuts.cutting import Seam
from laywright.cloth.cuts.strips import HAIRLINE, healed, margin_strip
from laywright.errors import GeometryError
from laywright.surface.triangles import Surface

__all__ = ["SeamedOutline", "Side", "piece_region", "seamed_outline"]

_CLOSED = 0.25


class Side(Enum):
    """Which side of a cut a line is."""

    LEFT = "left"
    RIGHT = "right"


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
    """

    region: Polygon
    cut: Polygon
    slits: tuple[FloatArray, ...]
    laps: tuple[FloatArray, ...]


@dataclass(frozen=True, eq=False)
class _Run:
    """A run of boundary edges: free (no cut), or along one side of a cut."""

    cut: int
    side: Side | None
    points: FloatArray


def seamed_outline(
    surface: Surface,
    uv: FloatArray,
    seams: Sequence[Seam],
    laps: Sequence[float],
    margin: float,
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
    margin : float, mm
        Cloth beyond the edge of the part.
    name : str
        Name of the piece, for messages.

    Raises
    ------
    GeometryError
        If the flat cloth would overlap itself.
    """
    region = piece_region(surface, uv, name)
    loops = [_runs(loop.tolist(), uv, seams) for loop in surface.boundary_loops]
    free = [run.points for runs in loops for run in runs if run.side is None]
    grown: BaseGeometry = region
    if margin > 0.0:
        grown = shapely.union_all([region, *(margin_strip(line, margin) for line in free)])
    slits: list[FloatArray] = []
    marks: list[FloatArray] = []
    for runs in loops:
        for run, after in zip(runs, runs[1:] + runs[:1], strict=True):
            dart = run.side is not None and run.cut == after.cut and len(runs) > 1
            if dart and run.side is not after.side and _same(run.points[-1], after.points[0]):
                grown, slit = _dart(grown, region, run, after, laps[run.cut], margin)
                slits += slit
    tips = {run.cut for runs in loops for run in _darts(runs)}
    for runs in loops:
        for run in runs:
            if run.side is None:
                continue
            lap = laps[run.cut]
            if run.cut not in tips:
                grown = _beyond(grown, region, run, lap, margin)
            if run.side is Side.RIGHT and lap > 0.0:
                marks += _lines(_aside(run.points, lap, inwards=True).intersection(region))
    return SeamedOutline(region, orient(_largest(grown)), tuple(slits), tuple(marks))


def _runs(loop: list[int], uv: FloatArray, seams: Sequence[Seam]) -> list[_Run]:
    """Return the runs of a boundary loop, each with its last point, the first run whole."""
    known: dict[tuple[int, int], tuple[int, Side | None]] = {
        (int(a), int(b)): (number, side)
        for number, seam in enumerate(seams)
        for side, edges in ((Side.LEFT, seam.left), (Side.RIGHT, seam.right))
        for a, b in (edges if side is Side.LEFT else edges[:, ::-1])
    }
    none: tuple[int, Side | None] = (-1, None)
    keys = [known.get(edge, none) for edge in pairwise([*loop, loop[0]])]
    breaks = [k for k in range(len(loop)) if keys[k] != keys[k - 1]]
    if not breaks:
        return [_Run(keys[0][0], keys[0][1], uv[[*loop, loop[0]]])]
    runs = []
    for start, end in zip(breaks, [*breaks[1:], breaks[0] + len(loop)], strict=True):
        vertices = [loop[k % len(loop)] for k in range(start, end + 1)]
        runs.append(_Run(keys[start][0], keys[start][1], uv[vertices]))
    return runs


def _darts(runs: list[_Run]) -> list[_Run]:
    """Return the runs that end in the tip of a dart."""
    return [
        run
        for run, after in zip(runs, runs[1:] + runs[:1], strict=True)
        if run.side is not None
        and run.cut == after.cut
        and run.side is not after.side
        and _same(run.points[-1], after.points[0])
    ]


def _same(one: FloatArray, other: FloatArray) -> bool:
    return bool(np.allclose(one, other))


def piece_region(surface: Surface, uv: FloatArray, name: str) -> Polygon:
    """Return the flat region of one piece; a dart whose sides just touch is taken as closed.

    Raises
    ------
    GeometryError
        If the flat cloth would overlap itself.
    """
    loops = [uv[loop] for loop in surface.boundary_loops]
    areas = [ring_area(loop) for loop in loops]
    outer = int(np.argmax(areas))
    holes = [loop for number, loop in enumerate(loops) if number != outer]
    region = Polygon(loops[outer], holes)
    if region.is_valid:
        return orient(region)
    mended = _largest(region.buffer(0.0))
    length = line_length(loops[outer])
    whole = _largest(shapely.make_valid(region))
    if abs(mended.area - sum(areas)) > _CLOSED * length or whole.area < 0.98 * sum(areas):
        raise GeometryError(
            f"flat pattern of {name}",
            "a pattern that laps over itself",
            "a pattern that can be cut from one layer of cloth",
            "cut it into pieces from edge to edge, or move the start point",
        )
    return orient(mended)


def _largest(shape: BaseGeometry) -> Polygon:
    if isinstance(shape, Polygon):
        return shape
    parts = [part for part in getattr(shape, "geoms", []) if isinstance(part, Polygon)]
    parts += [
        part
        for several in getattr(shape, "geoms", [])
        if isinstance(several, MultiPolygon)
        for part in several.geoms
    ]
    return max(parts, key=lambda part: part.area, default=Polygon())


def _extended(points: FloatArray, by: float, *, start: bool, end: bool) -> FloatArray:
    """Return a line made longer straight ahead at its ends."""
    parts = [points]
    if start:
        parts.insert(0, _ahead(points[::-1], by))
    if end:
        parts.append(_ahead(points, by))
    return np.concatenate(parts)


def _ahead(points: FloatArray, by: float) -> FloatArray:
    back = points[max(len(points) - 4, 0)]
    way = points[-1] - back
    ahead: FloatArray = (points[-1] + by * way / np.linalg.norm(way))[None]
    return ahead


def _dart(
    grown: BaseGeometry, region: Polygon, down: _Run, up: _Run, lap: float, margin: float
) -> tuple[BaseGeometry, list[FloatArray]]:
    """Open a dart: `down` runs from its mouth to its tip, `up` back along the other side."""
    reach = 3.0 * margin + lap + 1.0
    first = _extended(down.points, reach, start=True, end=False)
    last = _extended(up.points, reach, start=False, end=True)
    wedge = Polygon(np.concatenate([first, last[1:]])).buffer(0.0)
    if lap > 0.0:
        near = _extended(
            (down if down.side is Side.LEFT else up).points,
            margin,
            start=down.side is Side.LEFT,
            end=down.side is not Side.LEFT,
        )
        kept = LineString(near).buffer(lap, cap_style="flat").intersection(wedge)
        grown, wedge = shapely.union(grown, kept), wedge.difference(kept)
    opened = healed(shapely.union(grown.buffer(0.0).difference(wedge), region))
    free = last if down.side is Side.LEFT else first
    inner = LineString(free).intersection(_largest(opened).buffer(-HAIRLINE))
    return opened, [line for line in _lines(inner) if line_length(line) > 1.0]


def _beyond(
    grown: BaseGeometry, region: Polygon, run: _Run, lap: float, margin: float
) -> BaseGeometry:
    """Keep the cloth beyond one side of a cut to its lap; the piece lies left of the run."""
    far = 3.0 * margin + lap + 1.0
    line = _extended(run.points, far, start=True, end=True)
    kept = lap if run.side is Side.LEFT else 0.0
    away = LineString(line).buffer(-far, single_sided=True)
    if kept > 0.0:
        near = _extended(run.points, margin, start=True, end=True)
        strip = LineString(near).buffer(-kept, single_sided=True)
        grown = shapely.union(grown, strip)
        away = away.difference(LineString(line).buffer(kept, cap_style="flat"))
    return healed(shapely.union(grown.difference(away), region))


def _aside(points: FloatArray, by: float, *, inwards: bool) -> BaseGeometry:
    """Return a line beside a run, on the piece's side of it."""
    return LineString(points).parallel_offset(by, "left" if inwards else "right")


def _lines(shape: BaseGeometry) -> list[FloatArray]:
    """Return the lines of a shape."""
    if isinstance(shape, LineString):
        parts = [shape] if len(shape.coords) else []
    else:
        merged = shapely.line_merge(shape) if hasattr(shape, "geoms") else shape
        parts = [p for p in getattr(merged, "geoms", [merged]) if isinstance(p, LineString)]
    return [floats(np.asarray(part.coords)[:, :2], -1, 2) for part in parts if part.length > 0.0]
