"""What a maker should know about the ends of local plies, in plain words."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray, floats
from laywright.cloth.plies.cover import Cover
from laywright.cloth.plies.draped_ply import DrapedPly
from laywright.laminate.drop_off import drop_offs
from laywright.laminate.extents import extent_text
from laywright.laminate.laminate import Laminate
from laywright.wording import three_figures

__all__ = ["end_remarks", "ends_apart"]

_STEP = 0.5
_NEAR = 0.9


def end_remarks(laminate: Laminate, cover: Cover, plies: Sequence[DrapedPly]) -> list[str]:
    """Return the remarks on local plies: those that cover everything, and ends too close.

    Parameters
    ----------
    laminate : Laminate
    cover : Cover
        Which plies lie where.
    plies : sequence of DrapedPly
        Ply 1 first.
    """
    remarks = []
    layup, wanted = laminate.layup, drop_offs(laminate)
    for own, depth in zip(cover.local, cover.depths, strict=True):
        name, words = layup.ply_name(own.ply), extent_text(own.extent)
        pieces = len(plies[own.ply - 1].pieces)
        if depth.min() >= 0.0:
            remarks.append(f"{name}: {words} covers the whole face; its extent can be left out.")
        if pieces > 1:
            remarks.append(f"{name}: {words} falls apart into {pieces} pieces; cut them all.")
    for one, other in combinations(cover.local, 2):
        near = ends_apart(plies[one.ply - 1], plies[other.ply - 1])
        asked = wanted[other.ply - 1]
        if near is not None and near[0] < _NEAR * asked:
            x, y, z = (round(part) + 0.0 for part in near[1].tolist())
            remarks.append(
                f"Ply {one.ply} and ply {other.ply} end {three_figures(near[0])} mm apart near "
                f"({x:.0f}, {y:.0f}, {z:.0f}) mm, at least {three_figures(asked)} mm are wanted: "
                "change one of their extents."
            )
    return remarks


def ends_apart(one: DrapedPly, other: DrapedPly) -> tuple[float, FloatArray] | None:
    """Return how near the ends of two local plies come to each other, and where.

    Returns
    -------
    distance : float, mm
        Straight, between the middles of the plies, of points 0.5 mm apart along the ends.
    place : (3,) float, mm
    """
    first, second = _points(one), _points(other)
    if first is None or second is None:
        return None
    distance, _ = cKDTree(first).query(second)
    at = int(np.argmin(distance))
    return float(distance[at]), second[at]


def _points(ply: DrapedPly) -> FloatArray | None:
    """Return points along the ends of a ply inside the face."""
    if ply.ends is None or not len(ply.ends):
        return None
    start, end = ply.surface.vertices[ply.ends[:, 0]], ply.surface.vertices[ply.ends[:, 1]]
    found = []
    for a, b in zip(start, end, strict=True):
        count = max(1, int(np.ceil(np.linalg.norm(b - a) / _STEP)))
        found.append(a + (b - a) * (np.arange(count)[:, None] / count))
    return floats(np.concatenate(found), -1, 3)
