"""Heights of a surface over a regular grid of the plan view."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray
from laywright.surface.triangles import Surface

__all__ = ["grid_heights"]

_EDGE = 1e-9


def grid_heights(
    surface: Surface, start: FloatArray, step: float, shape: tuple[int, int]
) -> FloatArray:
    """Return the lowest height of a surface at every point of a grid.

    Parameters
    ----------
    surface : Surface
        Any; facets that stand upright are passed over.
    start : (2,) float, mm
        Plan place of the grid's first point.
    step : float, mm
        Between its points, along both axes.
    shape : tuple of 2 int
        Number of points along x and y.

    Returns
    -------
    shape float, mm
        NaN where there is no surface.

    Examples
    --------
    >>> import numpy as np
    >>> tent = Surface.single(np.array([[0, 0, 0], [2, 0, 2], [0, 2, 0]]), np.array([[0, 1, 2]]))
    >>> grid_heights(tent, np.zeros(2), 1.0, (3, 2)).tolist()
    [[0.0, 0.0], [1.0, 1.0], [2.0, nan]]
    """
    heights = np.full(shape, np.inf).ravel()
    corners = surface.corners.copy()
    corners[..., :2] = (corners[..., :2] - start) / step
    a, b, c = corners[:, 0], corners[:, 1], corners[:, 2]
    double = (b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0]
    flat = np.abs(double) > 1e-12
    low = np.maximum(np.ceil(corners[..., :2].min(axis=1) - _EDGE), 0).astype(np.int64)
    high = np.floor(corners[..., :2].max(axis=1) + _EDGE).astype(np.int64)
    high = np.minimum(high, np.array(shape) - 1)
    size = np.maximum(high - low + 1, 0)
    count = np.where(flat, size[:, 0] * size[:, 1], 0)
    owner = np.repeat(np.arange(len(count)), count)
    place = np.arange(len(owner)) - np.repeat(np.cumsum(count) - count, count)
    i = low[owner, 0] + place // size[owner, 1]
    j = low[owner, 1] + place % size[owner, 1]
    x, y = i - a[owner, 0], j - a[owner, 1]
    u, v = (b - a)[owner], (c - a)[owner]
    first = (x * v[:, 1] - y * v[:, 0]) / double[owner]
    second = (y * u[:, 0] - x * u[:, 1]) / double[owner]
    inside = (first >= -_EDGE) & (second >= -_EDGE) & (first + second <= 1.0 + _EDGE)
    height = a[owner, 2] + first * u[:, 2] + second * v[:, 2]
    np.minimum.at(heights, (i * shape[1] + j)[inside], height[inside])
    return np.asarray(np.where(np.isinf(heights), np.nan, heights).reshape(shape))
