"""Bolt holes and registration cones drilled into the two sides of a sheet."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import shapely
from manifold3d import Manifold

from laywright.arrays import FloatArray
from laywright.mould.body.fastening import FlangePlan, plan_flange
from laywright.mould.body.parting_sheet import Sheet
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.solid import bore, to_manifold
from laywright.surface.triangles import Surface

__all__ = ["Sides", "fastened", "plan_view"]

_STEEPEST = 0.9
_SIDES = 48
_WALL = 3.0
_TOUCH = 0.5
_ALONG = 4.0
_BEYOND = 5.0


@dataclass(frozen=True, eq=False)
class Sides:
    """The two sides of a sheet, in the sheet's frame.

    Attributes
    ----------
    low, high : Manifold
        Below and above the sheet.
    below : Manifold
        All that lies below the sheet.
    sheet : Sheet
        The sheet.
    """

    low: Manifold
    high: Manifold
    below: Manifold
    sheet: Sheet


def fastened(
    sides: Sides,
    hollow: shapely.Geometry,
    lean: float,
    settings: PieceSettings,
    names: tuple[str, ...],
) -> tuple[Manifold, Manifold, FlangePlan]:
    """Return both sides with bolt holes and cones, and where these are.

    Parameters
    ----------
    sides : Sides
        What is fastened together.
    hollow : shapely geometry
        Plan view of all that is hollow: bolts and cones keep clear of it.
    lean : float, radians
        Half angle of the cones.
    settings : PieceSettings
        Sizes.
    names : tuple of str
        Patch names, ``"bolt hole"``, ``"head bore"`` and ``"registration"`` among them.
    """
    low, high, sheet = sides.low, sides.high, sides.sheet
    plan = _plan(sides, hollow, lean, settings)
    bottom = float(low.bounding_box()[2]) - _BEYOND
    top = float(high.bounding_box()[5]) + _BEYOND
    mark, wider = names.index("bolt hole"), names.index("head bore")
    wide = 2.0 * settings.pocket
    for centre, (height, slope) in zip(plan.bolts, sheet.height(plan.bolts), strict=True):
        reach = settings.clamped + slope * settings.pocket
        shaft = bore(centre, settings.bolt_diameter, bottom, top, mark)
        low = low - shaft - bore(centre, wide, bottom, float(height - reach), wider)
        high = high - shaft - bore(centre, wide, float(height + reach), top, wider)
    radius = 0.5 * settings.cone_diameter
    for centre, (height, slope) in zip(plan.cones, sheet.height(plan.cones), strict=True):
        at = np.array([*centre, height])
        sunk = slope * radius + 1.0
        tall = min(radius + slope * radius, 0.7 * radius / math.tan(lean))
        low = low + _cone(at, radius, lean, sunk, tall, names)
        gap = settings.clearance
        high = high - _cone(at, radius + gap, lean, sunk, tall + gap, names)
    return low, high, plan


def plan_view(solid: Manifold) -> shapely.Geometry:
    """Return the plan view of a solid along its third axis."""
    if solid.is_empty():
        return shapely.Polygon()
    rings = [shapely.Polygon(ring) for ring in solid.project().to_polygons() if len(ring) > 2]
    view: shapely.Geometry = shapely.Polygon()
    for ring in sorted(rings, key=lambda ring: -ring.area):
        view = view.symmetric_difference(ring.buffer(0))
    return view


def _plan(
    sides: Sides, hollow: shapely.Geometry, lean: float, settings: PieceSettings
) -> FlangePlan:
    """Return places where both sides touch, clear of all that is hollow."""
    room = settings.room
    under = sides.low - sides.below.translate((0.0, 0.0, -_TOUCH))
    over = sides.high ^ sides.below.translate((0.0, 0.0, _TOUCH))
    touching = plan_view(under).intersection(plan_view(over))
    inner = touching.buffer(-room).difference(hollow.buffer(room))
    along = hollow.buffer(room + 0.5).boundary.intersection(inner)
    tracks = [
        np.array(part.segmentize(_ALONG).coords)
        for part in shapely.get_parts(shapely.line_merge(along))
        if part.geom_type == "LineString"
    ]
    radius = 0.5 * settings.cone_diameter
    foot = ((room - 0.5 - radius) / math.tan(lean) - 1.0) / radius
    bolts, cones = (
        [run for track in tracks for run in _gentle(track, sides.sheet, steepest)]
        for steepest in (_STEEPEST, min(_STEEPEST, foot))
    )
    return plan_flange(bolts, cones, settings.bolt_spacing, room, radius + _WALL)


def _gentle(line: FloatArray, sheet: Sheet, steepest: float) -> list[FloatArray]:
    """Return the runs of a plan line along which the sheet is not steep."""
    steep = ~(sheet.height(line)[:, 1] <= steepest)
    cuts = np.flatnonzero(np.diff(steep.astype(int))) + 1
    runs = np.split(np.arange(len(line)), cuts)
    return [line[run] for run in runs if not steep[run[0]] and len(run) > 1]


def _cone(
    at: FloatArray,
    radius: float,
    lean: float,
    sunk: float,
    tall: float,
    names: tuple[str, ...],
) -> Manifold:
    """Return a blunt cone on a flange, sunk into it."""
    turn = 2.0 * np.pi * np.arange(_SIDES) / _SIDES
    ring = np.stack([np.cos(turn), np.sin(turn)], axis=1)
    points = np.concatenate(
        [
            np.column_stack([at[:2] + size * ring, np.full(_SIDES, at[2] + rise)])
            for size, rise in (
                (radius + sunk * math.tan(lean), -sunk),
                (radius - tall * math.tan(lean), tall),
            )
        ]
    )
    here = np.arange(_SIDES)
    after = (here + 1) % _SIDES
    fan = np.stack([np.zeros(_SIDES - 2, dtype=np.int64), here[1:-1], here[2:]], axis=1)
    walls = np.concatenate(
        [
            np.stack([here, after, after + _SIDES], axis=1),
            np.stack([here, after + _SIDES, here + _SIDES], axis=1),
        ]
    )
    triangles = np.concatenate([fan[:, ::-1], fan + _SIDES, walls])
    mark = np.full(len(triangles), names.index("registration"))
    return to_manifold(Surface(points, triangles, mark, names), "a registration cone")
