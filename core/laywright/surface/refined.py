"""A surface with smaller triangles where a value that spreads over it changes."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from laywright.arrays import FloatArray
from laywright.surface.divided import divided_at
from laywright.surface.triangles import Surface

__all__ = ["refined_between"]

_PASSES = 24


def refined_between(
    surface: Surface,
    value: Callable[[Surface], FloatArray],
    low: float,
    high: float,
    longest: float,
) -> Surface:
    """Return a surface whose edges are short where a distance along it lies between two bounds.

    Parameters
    ----------
    surface : Surface
        mm.
    value : callable
        Gives a distance along the surface, or one taken from a constant, at every point:
        (n,) float, mm.
    low, high : float, mm
        Bounds.
    longest : float, mm
        Of an edge there.

    Returns
    -------
    Surface
        The same places; new points stand behind the given ones.
    """
    for _ in range(_PASSES):
        corners = value(surface)[surface.triangles]
        sides = np.linalg.norm(surface.corners - np.roll(surface.corners, 1, axis=1), axis=2)
        reach = sides.max(axis=1)  # no distance changes by more than the way
        wanted = (corners.max(axis=1) + reach >= low) & (corners.min(axis=1) - reach <= high)
        table = surface.edges
        near = np.zeros(len(table.ends), dtype=bool)
        for owner in (table.left, table.right):
            near |= (owner >= 0) & wanted[owner]
        length = np.linalg.norm(np.diff(surface.vertices[table.ends], axis=1)[:, 0], axis=1)
        chosen = near & (length > longest)
        if not chosen.any():
            break
        surface, _ = divided_at(surface, chosen, np.full(len(chosen), 0.5))
    return surface
