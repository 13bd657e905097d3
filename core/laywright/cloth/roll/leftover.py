"""What remains of a length of cloth: the largest rectangles without a piece in them."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry import Polygon

from laywright.arrays import Array, FloatArray
from laywright.cloth.roll.bottom_left import Rectangle

__all__ = ["free_rectangles"]

_CELL = 10.0  # mm
_SMALLEST = 100.0  # mm
_MOST = 3


def free_rectangles(
    pieces: Sequence[FloatArray], length: float, width: float, taken: Sequence[Rectangle] = ()
) -> tuple[Rectangle, ...]:
    """Return up to three rectangles that are free of pieces, the largest first.

    Parameters
    ----------
    pieces : sequence of (k, 2) float, mm
        Outlines where they lie.
    length, width : float, mm
        The cloth, its corner at zero.
    taken : sequence of Rectangle
        Places that are not used.

    Returns
    -------
    tuple of Rectangle
        To 10 mm, inside the free place, each side at least 100 mm; they share no cloth.
    """
    columns, rows = int(length / _CELL), int(width / _CELL)
    if columns < 1 or rows < 1:
        return ()
    x, y = np.meshgrid(np.arange(columns) * _CELL, np.arange(rows) * _CELL)
    cells = shapely.box(x, y, x + _CELL, y + _CELL)
    free = np.ones((rows, columns), dtype=bool)
    shapes = [Polygon(piece) for piece in pieces]
    shapes += [shapely.box(a, low, b, high) for a, b, low, high in taken]
    for shape in shapes:
        left, bottom, right, top = (value / _CELL for value in shape.bounds)
        part = (
            slice(max(int(bottom) - 1, 0), int(top) + 2),
            slice(max(int(left) - 1, 0), int(right) + 2),
        )
        shapely.prepare(shape)
        free[part] &= ~shapely.intersects(shape, cells[part])
    found: list[Rectangle] = []
    while len(found) < _MOST:
        area, (bottom, top, left, right) = _largest(free)
        if area == 0:
            break
        free[bottom:top, left:right] = False
        found.append((left * _CELL, right * _CELL, bottom * _CELL, top * _CELL))
    return tuple(found)


def _largest(free: Array) -> tuple[int, tuple[int, int, int, int]]:
    """Return the area, and rows and columns, of the largest rectangle of free cells."""
    best, place = 0, (0, 0, 0, 0)
    least = int(_SMALLEST / _CELL)
    heights = np.zeros(free.shape[1] + 1, dtype=int)
    for row in range(free.shape[0]):
        heights[:-1] = np.where(free[row], heights[:-1] + 1, 0)
        stack: list[tuple[int, int]] = []  # where a height begins, and the height
        for column, height in enumerate(heights.tolist()):
            begin = column
            while stack and stack[-1][1] >= height:
                begin, high = stack.pop()
                wide = column - begin
                if wide >= least and high >= least and wide * high > best:
                    best, place = wide * high, (row - high + 1, row + 1, begin, column)
            stack.append((begin, height))
    return best, place
