"""The margin of cloth beyond the edge of the part, the same all round or by side.

Sides are named as a person sees them who stands at the start point and looks along the datum
arrow: ahead, left, behind, right.  A piece of the edge belongs to the side that it faces.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import Polygon
from shapely.geometry.polygon import orient

from laywright.arrays import FloatArray
from laywright.cloth.patterns.edge_strips import (
    pieces_of,
    pointed_corner,
    quarter_steps,
    round_corner,
    strips,
)
from laywright.errors import InputError
from laywright.quantities import magnitude

__all__ = ["SIDES", "EdgeMargins", "check_margins", "narrowed", "side_margin", "with_margins"]

SIDES = ("ahead", "left", "behind", "right", "holes")
"""Names of the sides; the last is the edge of every hole."""

_NO_MARGIN = 1e-6
_CRACK = 1e-3
_BETWEEN = 0.01
"""A straight edge that faces half between two sides belongs to the right one of them, all along;
in quarter turns, our own choice."""


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


@dataclass(frozen=True, eq=False)
class EdgeMargins:
    """How much cloth stays beyond which edge.

    Attributes
    ----------
    wanted : mapping of str to float, mm
        Margin of every side, see `SIDES`.
    arrow : (2,) float
        Unit direction of the datum arrow on the cloth.
    deviation : float, mm
        Largest distance between the outline drawn and the exact one.
    """

    wanted: Mapping[str, float]
    arrow: FloatArray
    deviation: float

    @classmethod
    def by_side(
        cls, margin: float, margins: Mapping[str, float], arrow: FloatArray, deviation: float
    ) -> EdgeMargins:
        """Return a common margin, mm, with that of each side that is named."""
        return cls({side: margins.get(side, margin) for side in SIDES}, arrow, deviation)

    @property
    def largest(self) -> float:
        """The widest of all, mm."""
        return max(self.wanted.values())

    @property
    def alike(self) -> bool:
        """Whether every side has the same one."""
        return len({round(value, 9) for value in self.wanted.values()}) == 1

    def of_holes(self) -> EdgeMargins:
        """Return those of the edge of a hole, the same on every side."""
        return EdgeMargins(dict.fromkeys(SIDES, self.wanted["holes"]), self.arrow, self.deviation)

    def widths(self, normals: FloatArray) -> FloatArray:
        """Return the margin beyond pieces of the edge that face along `normals`, (k,) mm."""
        ahead = normals @ self.arrow
        left = normals @ np.array([-self.arrow[1], self.arrow[0]])
        quarters = np.arctan2(left, ahead) / (0.5 * math.pi)
        facing = np.round(quarters - _BETWEEN).astype(int) % 4
        widths: FloatArray = np.array([self.wanted[side] for side in SIDES[:4]])[facing]
        return widths

    def beside(self, points: FloatArray) -> list[Polygon]:
        """Return the cloth beyond a line of the edge, in parts that share their sides.

        Parameters
        ----------
        points : (k, 2) float, mm
            The part lies on their left; a closed line ends where it starts.

        Returns
        -------
        list of shapely.Polygon
            The corners round where all margins are alike, else pointed.
        """
        pieces = pieces_of(points)
        normals = pieces.normals
        widths = self.widths(normals)
        found = strips(pieces, widths)
        first = 0 if np.allclose(points[0], points[-1]) else 1
        for index in range(first, len(widths)):
            corner, both = pieces.starts[index], (normals[index - 1], normals[index])
            if self.alike:
                found += round_corner(corner, both, float(widths[0]), 0.5 * self.deviation)
            else:
                found += pointed_corner(corner, both, (widths[index - 1], widths[index]))
        return found


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
    edge = EdgeMargins.by_side(margin, by_side, arrow, deviation)
    if edge.alike:
        grown = _grown(region, edge.wanted["holes"], deviation)
    else:
        region = orient(region)
        beside = edge.beside(np.asarray(region.exterior.coords)[:, :2])
        grown = shapely.union_all([Polygon(region.exterior), *beside])
        grown = _mitred(_mitred(grown, _CRACK), -_CRACK)  # closes what rounding left open
        for inner in region.interiors:
            grown = grown.difference(narrowed(Polygon(inner), edge))
    return orient(shapely.simplify(_in_one(grown, deviation), 0.5 * deviation))


def narrowed(opening: Polygon, edge: EdgeMargins) -> shapely.Geometry:
    """Return what stays open of a hole in the part, nothing where its margin closes it."""
    return _grown(opening, -edge.wanted["holes"], edge.deviation)


def _grown(shape: Polygon, margin: float, deviation: float) -> shapely.Geometry:
    if abs(margin) <= _NO_MARGIN:
        return shape
    quarter = quarter_steps(margin, 0.5 * deviation)
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
