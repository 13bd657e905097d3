"""Outlines of a flat pattern: the edge of the part, the cut line around it, the notches."""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry import LinearRing, LineString, Polygon
from shapely.geometry.polygon import orient

from laywright.arrays import FloatArray, floats, ring_area
from laywright.cloth.patterns.smooth_line import smooth_line
from laywright.errors import GeometryError
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = ["flat_region", "notches_of", "refuse_runaway", "ring", "smooth_region"]

_MOST_CLOTH = 3.0


def ring(line: LinearRing) -> FloatArray:
    """Return a closed line as points, (k, 2) float, mm, the first not repeated."""
    return floats(np.asarray(line.coords)[:-1, :2], -1, 2)


def flat_region(surface: Surface, uv: FloatArray, name: str) -> Polygon:
    """Return the flat region that the part's area takes, with its holes.

    Parameters
    ----------
    surface : Surface
        One piece with an open edge.
    uv : (n, 2) float, mm
        Flat coordinates.
    name : str
        Name of the ply, for the message.

    Raises
    ------
    GeometryError
        If the flat cloth would overlap itself.
    """
    loops = [uv[loop] for loop in surface.boundary_loops]
    outer = int(np.argmax([ring_area(loop) for loop in loops]))
    holes = [loop for index, loop in enumerate(loops) if index != outer]
    region = Polygon(loops[outer], holes)
    if not region.is_valid:
        raise GeometryError(
            f"flat pattern of {name}",
            "a pattern that laps over itself",
            "a pattern that can be cut from one layer of cloth",
            "have cuts proposed and made, cut the ply from edge to edge, or move the start point",
        )
    return orient(region)


def refuse_runaway(region: Polygon, surface: Surface, name: str) -> None:
    """Refuse a pattern that is far larger than what it covers: no cloth gathers that much.

    Parameters
    ----------
    region : Polygon, mm
        The flat cloth within the trim line.
    surface : Surface
        What it covers.
    name : str
        Of the ply or piece.

    Raises
    ------
    GeometryError
        If it takes more than three times the area; sheared by 70 degrees all over, which no
        cloth bears, it would take as much (1 / cos 70 deg).
    """
    if region.area > _MOST_CLOTH * surface.area:
        raise GeometryError(
            f"flat pattern of {name}",
            f"{three_figures(region.area * 1e-6)} m^2 of cloth for "
            f"{three_figures(surface.area * 1e-6)} m^2 of the part",
            "a face that one piece of cloth can cover",
            "smooth its spikes and pits, split it into two Moulded Faces, or cut the ply",
        )


def smooth_region(region: Polygon, deviation: float) -> Polygon:
    """Return the region with smooth edges, each within `deviation`, mm, of a smooth line.

    A region whose edges come too close to each other for that is given back as it is.
    """
    smooth = Polygon(
        smooth_line(ring(region.exterior), deviation),
        [smooth_line(ring(inner), deviation) for inner in region.interiors],
    )
    return orient(smooth) if smooth.is_valid else region


def notches_of(cut: Polygon, length: float) -> tuple[FloatArray, ...]:
    """Return short lines from the cut edge inwards, where x = 0 and y = 0 first meet it.

    The start point is at zero, so that these are the warp and the weft thread through it.
    """
    if length == 0.0:
        return ()
    reach = 2.0 * max(abs(bound) for bound in cut.bounds)
    notches = []
    for direction in (np.array(d) for d in ((1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0))):
        beam = LineString([(0.0, 0.0), reach * direction])
        met = beam.intersection(cut.exterior)
        if met.is_empty:
            continue
        near = min(shapely.get_coordinates(met) @ direction)
        notches.append(floats([near * direction, (near - length) * direction], 2, 2))
    return tuple(notches)
