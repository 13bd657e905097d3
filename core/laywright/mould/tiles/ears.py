"""Clamp ears: a pair of lugs outside the mould at the end of a seam.

A clamp across the pair presses the two tiles together while the glue sets.  Ears stand on the
bed beside the sides of the mould, where no cloth goes, and are sawn off or left.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from manifold3d import Manifold

from laywright.arrays import FloatArray
from laywright.mould.solid import block
from laywright.mould.tiles.cells import place_after, places_below
from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.joint import Place
from laywright.mould.tiles.joints import sections

__all__ = ["Ear", "EarSize", "ear_solid", "ears_of"]

_INTO = 0.5
_LEVELS = 5


@dataclass(frozen=True)
class EarSize:
    """How large an ear is, mm: how far it stands out, how thick it is, how high at most."""

    reach: float
    thickness: float
    height: float


@dataclass(frozen=True)
class Ear:
    """One lug.

    Attributes
    ----------
    place : tuple of 3 int
        Cell of the tile that it belongs to.
    low, high : tuple of 3 float, mm
        Corners of its box, in the grid's axes.
    """

    place: Place
    low: tuple[float, float, float]
    high: tuple[float, float, float]


def ear_solid(ear: Ear, patch: int) -> Manifold:
    """Return the lug as a solid, in the grid's axes."""
    return block(np.array(ear.low), np.array(ear.high), patch)


def ears_of(
    body: Manifold, plan: CutPlan, size: EarSize, gap: float
) -> tuple[tuple[Ear, ...], tuple[tuple[Place, Place], ...], float]:
    """Return the ears of all seams that reach the sides of the mould.

    Parameters
    ----------
    body : Manifold
        In the grid's axes.
    plan : CutPlan
        The grid.
    size : EarSize
        How large they are.
    gap : float, mm
        Glue gap of the seams.

    Returns
    -------
    ears : tuple of Ear
        Pairs, the lower tile's first.
    bare : tuple of (place, place)
        Seams without ears: inside the mould, level, or at a side too low for one.
    area : float, mm^2
        Area of all seams together.
    """
    ears: list[Ear] = []
    bare: list[tuple[Place, Place]] = []
    total = 0.0
    for axis in range(3):
        for index, cut in enumerate(plan.cuts[axis]):
            steps = np.linspace(-size.thickness, size.thickness, _LEVELS)
            levels = sections(body, axis, (cut + steps).tolist())
            total += levels[_LEVELS // 2].area
            for lower in places_below(plan, axis, index):
                low, high = plan.cell(lower)
                first, second = (axis + 1) % 3, (axis + 2) % 3
                window = shapely.box(low[first], low[second], high[first], high[second])
                if shapely.intersection(levels[_LEVELS // 2], window).area < 1e-6:
                    continue
                upper = place_after(lower, axis)
                found = _pairs(levels, plan, axis, cut, lower, upper, size, gap)
                ears += found
                if not found:
                    bare.append((lower, upper))
    return tuple(ears), tuple(bare), total


def _pairs(
    levels: list[shapely.Geometry],
    plan: CutPlan,
    axis: int,
    cut: float,
    lower: Place,
    upper: Place,
    size: EarSize,
    gap: float,
) -> list[Ear]:
    """Return the ears at the ends of one seam."""
    if axis == 2 or lower[2] > 0:
        return []
    aside = 1 - axis
    ears = []
    # In a section across x the coordinates are (y, z), across y they are (z, x).
    flats = [np.asarray(shapely.get_coordinates(shape)) for shape in levels]
    if any(len(flat) == 0 for flat in flats):
        return []
    if axis == 1:
        flats = [flat[:, ::-1] for flat in flats]
    for side in (-1, 1):
        at_end = lower[aside] == (0 if side < 0 else plan.counts[aside] - 1)
        if not at_end:
            continue
        rims = [_rim(flat, side, plan.low[2]) for flat in flats]
        height = min(size.height, *(high for _, high in rims))
        if height < size.thickness:
            continue
        inner = min(side * rim for rim, _ in rims) - _INTO
        outer = max(side * rim for rim, _ in rims) + size.reach
        ends = sorted((side * inner, side * outer))
        for place, start, end in (
            (lower, cut - size.thickness, cut - gap / 2.0),
            (upper, cut + gap / 2.0, cut + size.thickness),
        ):
            corner, far = [0.0, 0.0, plan.low[2]], [0.0, 0.0, plan.low[2] + height]
            corner[axis], far[axis] = start, end
            corner[aside], far[aside] = ends
            ears.append(Ear(place, (corner[0], corner[1], corner[2]), (far[0], far[1], far[2])))
    return ears


def _rim(flat: FloatArray, side: int, floor: float) -> tuple[float, float]:
    """Return where a section ends on one side, and how high its upright end stands, mm."""
    rim = float((side * flat[:, 0]).max())
    upright = flat[side * flat[:, 0] > rim - 1e-3]
    return side * rim, float(upright[:, 1].max()) - floor
