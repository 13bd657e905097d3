"""A surface divided along the line where a value that is known at its points is zero."""

from __future__ import annotations

import numpy as np

from laywright.arrays import Array, FloatArray, floats
from laywright.surface.divided import divided_at
from laywright.surface.triangles import Surface

__all__ = ["above", "divided_along"]

_ON_LINE = 1e-3


def divided_along(
    surface: Surface, value: FloatArray, others: FloatArray
) -> tuple[Surface, FloatArray, FloatArray]:
    """Return a surface whose triangles end at the line where a value is zero.

    Parameters
    ----------
    surface : Surface
        mm.
    value : (n,) float, mm
        At its points, straight along every edge.
    others : (n, k) float
        More values, carried along.

    Returns
    -------
    surface : Surface
        New points stand behind the given ones.
    value : (m,) float, mm
        Exactly zero on the line; so are values within a thousandth of the edges beside.
    others : (m, k) float
    """
    ends = surface.edges.ends
    length = np.linalg.norm(surface.vertices[ends[:, 1]] - surface.vertices[ends[:, 0]], axis=1)
    near = np.full(len(value), np.inf)
    for side in (0, 1):
        np.minimum.at(near, ends[:, side], _ON_LINE * length)
    value = np.where(np.abs(value) <= near, 0.0, value)
    one, other = value[ends[:, 0]], value[ends[:, 1]]
    crossed = one * other < 0.0
    share = np.divide(one, one - other, out=np.full(len(one), 0.5), where=crossed)
    divided, _ = divided_at(surface, crossed, share)
    at = share[crossed, None]
    between = others[ends[crossed, 0]] * (1.0 - at) + others[ends[crossed, 1]] * at
    values = np.concatenate([value, np.zeros(int(crossed.sum()))])
    return divided, floats(values, -1), np.concatenate([others, between])


def above(surface: Surface, value: FloatArray) -> Array:
    """Return which triangles lie where a value is above zero: (m,) bool; see `divided_along`."""
    corners = value[surface.triangles]
    return np.asarray(corners.sum(axis=1) > 0.0)
