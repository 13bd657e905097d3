"""Which plan boxes come near marked places: a first sieve over many boxes.

The marks are laid on a grid and summed up from one corner (summed-area table, Crow, 1984), so
that each box is settled by four looks, whatever its size.
"""

from __future__ import annotations

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray

__all__ = ["boxes_near"]

_MOST_CELLS = 1_000_000


def boxes_near(low: FloatArray, high: FloatArray, marks: tuple[FloatArray, FloatArray]) -> Array:
    """Return which boxes may meet a marked box; none that does is left out: (m,) bool.

    Parameters
    ----------
    low, high : (2, m) float, mm
        Corners of the boxes.
    marks : tuple of two (2, k) float, mm
        Corners of the marked boxes.

    Examples
    --------
    >>> low = np.array([[0.0, 7.0], [0.0, 7.0]])
    >>> boxes_near(low, low + 1.0, (low[:, 1:] + 0.5, low[:, 1:] + 2.0))
    array([False,  True])
    """
    first, last = marks
    if first.shape[1] == 0 or low.shape[1] == 0:
        return np.zeros(low.shape[1], dtype=bool)
    start = first.min(axis=1)
    extent = last.max(axis=1) - start
    side = max(
        0.5 * float((last - first).max(axis=0).mean()),
        float(np.sqrt(extent.prod() / _MOST_CELLS)),
        float(extent.max()) / _MOST_CELLS,
    )
    side = side if side > 0.0 else 1.0
    count = np.floor(extent / side).astype(np.int64) + 1
    row, size = int(count[1]) + 1, int((count + 1).prod())
    (x0, y0), (x1, y1) = (_cells(corner, start, side, count) for corner in marks)
    x0, x1, y1 = x0 * row, (x1 + 1) * row, y1 + 1
    marked = np.bincount(np.concatenate([x0 + y0, x1 + y1]), minlength=size)
    marked -= np.bincount(np.concatenate([x0 + y1, x1 + y0]), minlength=size)
    marked = marked.reshape(-1, row)
    covered = marked.cumsum(axis=0).cumsum(axis=1)[:-1, :-1] > 0
    table = np.zeros(tuple(count + 1), dtype=np.int32)
    table[1:, 1:] = covered.cumsum(axis=0, dtype=np.int32).cumsum(axis=1, dtype=np.int32)
    (x0, y0), (x1, y1) = (_cells(corner, start, side, count) for corner in (low, high))
    flat = table.ravel()
    x0, x1, y1 = x0 * row, (x1 + 1) * row, y1 + 1
    met = flat[x1 + y1] - flat[x0 + y1] - flat[x1 + y0] + flat[x0 + y0] > 0
    for axis in range(2):
        met &= (low[axis] <= start[axis] + extent[axis]) & (high[axis] >= start[axis])
    return np.asarray(met)


def _cells(corner: FloatArray, start: FloatArray, side: float, count: IntArray) -> list[IntArray]:
    """Return the row and the column of the cells that corners (2, k) lie in."""
    return [
        np.clip((corner[axis] - start[axis]) / side, 0, count[axis] - 1).astype(np.int64)
        for axis in range(2)
    ]
