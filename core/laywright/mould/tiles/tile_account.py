"""The account of a cut body: what glue gaps, holes and marks take off it.

It does not ask the tiles that it checks.  The gaps' share is integrated over the body's own
triangles; holes and marks count with their whole volume, as they should lie in the material on
every side.  Tiles and account together make up the body only if they do.
"""

from __future__ import annotations

from itertools import combinations, product

import numpy as np
from manifold3d import Manifold

from laywright.arrays import FloatArray
from laywright.mould.solid import block, joined
from laywright.mould.tiles.cells import cell_block
from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.joint import Place
from laywright.surface.triangles import Surface

__all__ = ["gap_volume", "taken_inside", "volumes_below"]

_FAR = 10.0


def volumes_below(solid: Surface, axis: int, places: FloatArray) -> FloatArray:
    """Return the volume of a closed surface below planes across an axis: (k,) float, mm^3.

    Parameters
    ----------
    solid : Surface
        Closed, mm.
    axis : int
        0, 1 or 2.
    places : (k,) float, mm
        Where the planes lie along it.

    Notes
    -----
    By the divergence theorem with the field ``-max(c - x, 0)`` along the axis.  Its mean over a
    triangle is a cubic of the plane's place, so the result is exact.

    Examples
    --------
    >>> corners = np.array([[0, 0, 0], [6, 0, 0], [0, 6, 0], [0, 0, 6]])
    >>> faces = np.array([[0, 2, 1], [0, 1, 3], [0, 3, 2], [1, 2, 3]])
    >>> wedge = Surface.single(corners, faces)
    >>> volumes_below(wedge, 0, np.array([0.0, 3.0, 9.0])).round(9).tolist()
    [0.0, 31.5, 36.0]
    """
    points = solid.vertices.T
    x, u, v = (points[(axis + i) % 3][solid.triangles] for i in range(3))
    facing = 0.5 * (
        (u[:, 1] - u[:, 0]) * (v[:, 2] - v[:, 0]) - (u[:, 2] - u[:, 0]) * (v[:, 1] - v[:, 0])
    )
    first = np.minimum(np.minimum(x[:, 0], x[:, 1]), x[:, 2])
    last = np.maximum(np.maximum(x[:, 0], x[:, 1]), x[:, 2])
    total = x[:, 0] + x[:, 1] + x[:, 2]
    found = np.empty(len(places))
    for index, place in enumerate(places.tolist()):
        under = last <= place
        met = (first < place) & ~under
        a, c = first[met], last[met]
        b = total[met] - a - c
        rising = place <= b
        up = (place - a) ** 3 / np.where(rising, 3.0 * (b - a) * (c - a), 1.0)
        down = (c - place) ** 3 / np.where(rising, 1.0, 3.0 * (c - b) * (c - a))
        mean = np.where(rising, up, place - total[met] / 3.0 + down)
        whole = facing[under] @ (place - total[under] / 3.0)
        found[index] = 0.0 - float(whole) - float(facing[met] @ mean)
    return found


def gap_volume(solid: Surface, whole: Manifold, plan: CutPlan, gap: float) -> float:
    """Return the volume that glue gaps take off a body, mm^3.

    Parameters
    ----------
    solid : Surface
        The body in the grid's axes.
    whole : Manifold
        The same; asked only for the thin bars in which gaps cross.
    plan : CutPlan
        The grid.
    gap : float, mm
        Of every seam.
    """
    if gap <= 0.0:
        return 0.0
    total = 0.0
    for axis in range(3):
        cuts = np.array(plan.cuts[axis])
        if len(cuts):
            ends = np.concatenate([cuts - gap / 2.0, cuts + gap / 2.0])
            before, after = np.split(volumes_below(solid, axis, ends), 2)
            total += float((after - before).sum())
    bars = [
        _crossing(plan, {one: first, other: second}, gap)
        for one, other in combinations(range(3), 2)
        for first, second in product(plan.cuts[one], plan.cuts[other])
    ]
    if not bars:
        return total
    crossed = whole ^ joined(bars)
    cubes = [_crossing(plan, dict(enumerate(cuts)), gap) for cuts in product(*plan.cuts)]
    thrice = float((crossed ^ joined(cubes)).volume()) if cubes else 0.0
    # A cube lies in three gaps and in three bars, which their union counts once.
    return total - float(crossed.volume()) - thrice


def taken_inside(
    plan: CutPlan, place: Place, gap: float, cutter: Manifold, outside: float
) -> float:
    """Return the volume of the holes and marks of one cell between its glue gaps, mm^3.

    Parameters
    ----------
    plan : CutPlan
        The grid.
    place : tuple of 3 int
        The cell.
    gap : float, mm
        Of every seam.
    cutter : Manifold
        What stays of the cell.
    outside : float, mm^3
        Volume of its mark below the body.
    """
    box = cell_block(plan, place, gap, 0)
    return float(box.volume()) - float(cutter.volume()) - outside


def _crossing(plan: CutPlan, at: dict[int, float], gap: float) -> Manifold:
    low, high = np.array(plan.low) - _FAR, np.array(plan.high) + _FAR
    for axis, cut in at.items():
        low[axis], high[axis] = cut - gap / 2.0, cut + gap / 2.0
    return block(low, high, 0)
