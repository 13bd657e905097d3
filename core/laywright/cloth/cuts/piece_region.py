"""The flat region of one piece of a ply with cuts."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient

from laywright.arrays import FloatArray, line_length, ring_area
from laywright.errors import GeometryError
from laywright.surface.triangles import Surface

__all__ = ["largest_part", "piece_region", "region_within"]

_CLOSED = 0.25


def piece_region(surface: Surface, uv: FloatArray, name: str) -> Polygon:
    """Return the flat region of one piece; a dart whose sides just touch is taken as closed.

    Parameters
    ----------
    surface : Surface
        The piece; vertices of other pieces may be unused.
    uv : (n, 2) float, mm
        Flat coordinates.
    name : str
        Name of the piece, for messages.

    Raises
    ------
    GeometryError
        If the flat cloth would overlap itself.
    """
    return region_within([uv[loop] for loop in surface.boundary_loops], name)


def region_within(loops: Sequence[FloatArray], name: str) -> Polygon:
    """Return the region within closed lines, (k, 2) mm each: one outside, the others holes.

    Raises
    ------
    GeometryError
        If the flat cloth would overlap itself.
    """
    areas = [ring_area(loop) for loop in loops]
    outer = int(np.argmax(areas))
    holes = [loop for number, loop in enumerate(loops) if number != outer]
    region = Polygon(loops[outer], holes)
    if region.is_valid:
        return orient(region)
    mended = largest_part(region.buffer(0.0))
    length = line_length(loops[outer])
    whole = largest_part(shapely.make_valid(region))
    if abs(mended.area - sum(areas)) > _CLOSED * length or whole.area < 0.98 * sum(areas):
        raise GeometryError(
            f"flat pattern of {name}",
            "a pattern that laps over itself",
            "a pattern that can be cut from one layer of cloth",
            "cut it into pieces from edge to edge, or move the start point",
        )
    return orient(mended)


def largest_part(shape: BaseGeometry) -> Polygon:
    """Return the largest polygon of a shape."""
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
