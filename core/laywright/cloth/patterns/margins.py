"""The margin of cloth beyond the edge of the part, the same all round or by side.

Sides are named as a person sees them who stands at the start point and looks along the datum
arrow: ahead, left, behind, right.  A piece of the edge belongs to the side that it faces.
"""

from __future__ import annotations

import math
from collections.abc import Mapping

import numpy as np
import shapely
from shapely.geometry import Polygon
from shapely.geometry.polygon import orient

from laywright.arrays import FloatArray
from laywright.errors import InputError
from laywright.quantities import magnitude

__all__ = ["SIDES", "check_margins", "side_margin", "with_margins"]

SIDES = ("ahead", "left", "behind", "right", "holes")
"""Names of the sides; the last is the edge of every hole."""

_NO_MARGIN = 1e-6
_NO_LENGTH = 1e-9
_CRACK = 1e-3


def check_margins(margins: Mapping[str, float]) -> None:
    """Refuse a side that is not known and a margin that cannot be.

    Raises
    ------
    InputError
    """
    for side, margin in margins.items():
        if side not in SIDES:
            raise InputError(
                "margins of the patterns",
                f"the side '{side}'",
                ", ".join(SIDES),
                "correct the side",
            )
        if not (math.isfinite(margin) and margin >= 0.0):
            raise InputError(
                f"margin {side} of the patterns",
                f"{margin:g} mm",
                "at least 0 mm",
                "correct the setting",
            )


def side_margin(text: str) -> tuple[str, float]:
    """Return the side and its margin, mm, that a text describes.

    Examples
    --------
    >>> side_margin("ahead: 4 cm")
    ('ahead', 40.0)
    """
    side, colon, margin = text.partition(":")
    if not colon:
        raise InputError(
            "margin of a side", f"'{text}'", "side: margin", 'write for example "ahead: 40 mm"'
        )
    return side.strip(), magnitude(margin.strip(), "mm", f"margin {side.strip()}")


def with_margins(
    region: Polygon,
    margin: float,
    by_side: Mapping[str, float],
    arrow: FloatArray,
    deviation: float,
) -> Polygon:
    """Return a region with its margins, its outline drawn with few points.

    Parameters
    ----------
    region : shapely.Polygon
        Edge of the part and its holes.
    margin : float, mm
        Margin of every side that is not named; holes close by it.
    by_side : mapping of str to float, mm
        Margin by name of a side, see `SIDES`.
    arrow : (2,) float
        Unit direction of the datum arrow on the cloth.
    deviation : float, mm
        Largest distance between the outline drawn and the exact one.
    """
    wanted = {side: by_side.get(side, margin) for side in SIDES}
    if len({round(value, 9) for value in wanted.values()}) == 1:
        grown = _grown(region, wanted["holes"], deviation)
    else:
        grown = _by_side(orient(region), wanted, arrow, deviation)
    return orient(shapely.simplify(_in_one(grown, deviation), 0.5 * deviation))


def _grown(shape: Polygon, margin: float, deviation: float) -> shapely.Geometry:
    if abs(margin) <= _NO_MARGIN:
        return shape
    share = min(0.5 * deviation / abs(margin), 0.5)
    quarter = max(2, math.ceil(0.25 * math.pi / math.acos(1.0 - share)))
    return shape.buffer(margin, quad_segs=quarter)


def _mitred(shape: shapely.Geometry, margin: float) -> shapely.Geometry:
    return shape.buffer(margin, join_style="mitre")


def _in_one(grown: shapely.Geometry, deviation: float) -> Polygon:
    """Return the largest piece without the gaps that are too narrow to be openings."""
    pieces = [part for part in getattr(grown, "geoms", [grown]) if isinstance(part, Polygon)]
    largest = max(pieces, key=lambda part: float(part.area))
    wide = [
        ring for ring in largest.interiors if not Polygon(ring).buffer(-0.5 * deviation).is_empty
    ]
    return Polygon(largest.exterior, wide)


def _by_side(
    region: Polygon, wanted: Mapping[str, float], arrow: FloatArray, deviation: float
) -> shapely.Geometry:
    points = np.asarray(region.exterior.coords)[:, :2]
    along = np.diff(points, axis=0)
    length = np.hypot(*along.T)
    points, along = points[:-1][length > _NO_LENGTH], along[length > _NO_LENGTH]
    normals = np.stack([along[:, 1], -along[:, 0]], axis=1) / np.hypot(*along.T)[:, None]
    ahead = normals @ arrow
    left = normals @ np.array([-arrow[1], arrow[0]])
    facing = (np.round(np.arctan2(left, ahead) / (0.5 * math.pi)).astype(int)) % 4
    widths = np.array([wanted[side] for side in SIDES[:4]])[facing]
    whole = Polygon(region.exterior)
    grown = shapely.union_all(
        [whole, *_strips(points, normals, widths), *_corners(points, normals, widths)]
    )
    grown = _mitred(_mitred(grown, _CRACK), -_CRACK)  # closes what rounding left open
    for hole in region.interiors:
        grown = grown.difference(_grown(Polygon(hole), -wanted["holes"], deviation))
    return grown


def _strips(points: FloatArray, normals: FloatArray, widths: FloatArray) -> list[Polygon]:
    """Return the strip of cloth outside each piece of the edge."""
    starts, ends = points, np.roll(points, -1, axis=0)
    outwards = widths[:, None] * normals
    strips = np.stack([starts, ends, ends + outwards, starts + outwards], axis=1)
    return [Polygon(strip) for strip in strips]


def _corners(points: FloatArray, normals: FloatArray, widths: FloatArray) -> list[Polygon]:
    """Return what fills the outer corner between two pieces of the edge, side by side.

    Parameters
    ----------
    points : (k, 2) float, mm
        Corners of the edge, counter-clockwise.
    normals : (k, 2) float
        Unit direction outwards of the piece that follows each corner.
    widths : (k,) float, mm
        Margin of that piece.
    """
    found = []
    for index, point in enumerate(points):
        one, other = normals[index - 1], normals[index]
        if one[0] * other[1] - one[1] * other[0] <= 1e-9:
            continue  # an inner corner has no gap
        first, second = widths[index - 1], widths[index]
        hull = [point, point + first * one, point + second * other]
        tip = np.linalg.solve(np.stack([one, other]), [first, second])
        if np.hypot(*tip) <= 1.5 * max(first, second):
            hull.append(point + tip)
        corner = shapely.MultiPoint(hull).convex_hull
        if isinstance(corner, Polygon):
            found.append(corner)
    return found
