"""Facets divided along a plane, so that a parting line can run straight across them."""

from __future__ import annotations

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray
from laywright.surface.divided import divided_at
from laywright.surface.triangles import Surface

__all__ = ["split_along"]

_SNAP = 0.05


def split_along(
    surface: Surface, chosen: Array, normal: FloatArray, place: float
) -> tuple[Surface, IntArray]:
    """Return a surface whose chosen facets do not cross a plane, and each facet's parent.

    Parameters
    ----------
    surface : Surface
        mm.
    chosen : (m,) bool
        Facets to be divided; their neighbours take the new corners on.
    normal : (3,) float
        Unit normal of the plane.
    place : float, mm
        Where the plane lies along it.

    Returns
    -------
    surface : Surface
        The same places, more facets.  A corner nearer to the plane than a twentieth of an edge
        counts as lying on it.
    parent : (n,) int
        Facet of the given surface that each came from.
    """
    table = surface.edges
    height = surface.vertices @ normal - place
    low, high = height[table.ends[:, 0]], height[table.ends[:, 1]]
    sides = np.zeros(len(table.ends), dtype=bool)
    for side in (table.left, table.right):
        sides |= (side >= 0) & chosen[side]
    share = low / np.where(low != high, low - high, 1.0)
    split = sides & (low * high < 0.0) & (share > _SNAP) & (share < 1.0 - _SNAP)
    if not split.any():
        return surface, np.arange(len(surface.triangles))
    return divided_at(surface, split, share)
