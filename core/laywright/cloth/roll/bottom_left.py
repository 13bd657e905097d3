"""A packing that fills holes: each piece goes as near to the start of the cloth as it fits.

The cloth is divided into square cells; a row of cells along the cloth is one whole number
whose bits are set where the row is taken.  Pieces are drawn into the same cells, a little too
large rather than too small, so that what fits there fits in truth.  Faults in the cloth and
the end of an offcut are bits that are set from the start.  At last every piece is drawn back
by what the cells were too coarse for.

Source: B. S. Baker, E. G. Coffman, R. L. Rivest, Orthogonal packings in two dimensions, SIAM
J. Comput. 9 (1980) 846 (the rule bottom-left, there for rectangles; from memory).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from shapely.geometry import Polygon

from laywright.arrays import FloatArray
from laywright.cloth.roll.spot import Spot

__all__ = ["Rectangle", "drawn_back", "place_bottom_left"]

Rectangle = tuple[float, float, float, float]
"""Lowest and highest x, lowest and highest y of a place that is not used, mm."""

_ROWS = 400
_ROWS_OF_MANY = 240
_MANY = 60
_DRAWS = 3
_HALVINGS = 6
_ROUNDING = 1e-6

_Run = tuple[int, int, int]  # row, first cell, last cell


def place_bottom_left(
    outlines: Sequence[FloatArray],
    ways: Sequence[Sequence[Spot]],
    width: float,
    gap: float,
    order: Sequence[int],
    *,
    taken: Sequence[Rectangle] = (),
    longest: float = math.inf,
) -> list[Spot | None]:
    """Place pieces one after the other.

    Parameters
    ----------
    outlines : sequence of (k, 2) float, mm
        Outlines, x along the cloth, none wider than it.
    ways : sequence of sequence of Spot
        Ways round in which each may lie; their shifts do not count.
    width, gap : float, mm
        Width of the cloth, from y = 0, and smallest distance between pieces; half of it is
        kept from what is taken already.
    order : sequence of int
        In which they are placed.
    taken : sequence of Rectangle
        Places that are not used, such as faults.
    longest : float, mm
        Length of the cloth.

    Returns
    -------
    list of Spot or None
        In the order of the outlines; None for a piece that finds no room.
    """
    rows = _rows([float(np.ptp(outline[:, 1])) + gap for outline in outlines], width + gap)
    cell = (width + gap) / rows
    grid = _Grid(cell, rows)
    for low_x, high_x, low_y, high_y in taken:
        grid.block(low_x + gap / 2, high_x + gap / 2, low_y + gap / 2, high_y + gap / 2)
    last = math.inf if math.isinf(longest) else math.floor((longest + gap) / cell + _ROUNDING)
    shapes: dict[tuple[bytes, bool, bool], _Shape] = {}
    spots: list[Spot | None] = [None] * len(outlines)
    for index in order:
        found: tuple[int, int, _Shape] | None = None
        for way in ways[index]:
            key = (outlines[index].tobytes(), way.turned, way.mirrored)
            if key not in shapes:
                shapes[key] = _shape(outlines[index], way, gap, cell)
            shape = shapes[key]
            limit = last - shape.length if found is None else found[0] - 1
            at = grid.first_room(shape, limit)
            if at is not None:
                found = (*at, shape)
        if found is not None:
            x, row, shape = found
            grid.take(shape, x, row)
            spots[index] = replace(
                shape.way,
                x=x * cell - gap / 2 + shape.shift[0],
                y=row * cell - gap / 2 + shape.shift[1],
            )
    kept = [index for index, spot in enumerate(spots) if spot is not None]
    drawn = drawn_back(
        [outlines[index] for index in kept],
        [spot for spot in spots if spot is not None],
        gap,
        taken=taken,
        reach=2.0 * cell,
    )
    for index, spot in zip(kept, drawn, strict=True):
        spots[index] = spot
    return spots


def _rows(heights: Sequence[float], span: float) -> int:
    """Return into how many rows a cloth is divided so that the pieces lose least to rounding."""
    usual = _ROWS if len(heights) <= _MANY else _ROWS_OF_MANY
    choices = np.arange(int(0.8 * usual), int(1.2 * usual) + 1)
    cells = span / choices[:, None]
    lost = np.ceil(np.array(heights) / cells - 1e-9) * cells - np.array(heights)
    return int(choices[int(np.argmin(np.round(lost.sum(axis=1), 6)))])


def drawn_back(
    outlines: Sequence[FloatArray],
    spots: Sequence[Spot],
    gap: float,
    *,
    taken: Sequence[Rectangle] = (),
    reach: float,
) -> list[Spot]:
    """Return the spots with each piece drawn towards the start as far as it goes.

    Parameters
    ----------
    outlines : sequence of (k, 2) float, mm
        Outlines.
    spots : sequence of Spot
        Where they lie, keeping the gap.
    gap : float, mm
        Smallest distance between two pieces; half of it from what is taken.
    taken : sequence of Rectangle
        Places that are not used.
    reach : float, mm
        The farthest that a piece is drawn in one pass.
    """
    current = list(spots)
    placed = [Polygon(spot.on(outline)) for outline, spot in zip(outlines, spots, strict=True)]
    faults = [shapely.box(low_x, low_y, high_x, high_y) for low_x, high_x, low_y, high_y in taken]
    for _ in range(_DRAWS):
        moved = 0.0
        for index in sorted(range(len(placed)), key=lambda i: placed[i].bounds[0]):
            near = shapely.box(*placed[index].bounds).buffer(reach + gap)
            others = [
                other for k, other in enumerate(placed) if k != index and near.intersects(other)
            ]
            step = _draw(
                placed[index], others, [f for f in faults if near.intersects(f)], gap, reach
            )
            if step > 0.0:
                placed[index] = shapely.transform(
                    placed[index], lambda points, step=step: points - np.array([step, 0.0])
                )
                current[index] = replace(current[index], x=current[index].x - step)
                moved += step
        if moved < _ROUNDING:
            break
    return current


def _draw(
    piece: Polygon, others: list[Polygon], faults: list[Polygon], gap: float, reach: float
) -> float:
    """Return how far a piece can be drawn towards the start, at most `reach`, mm."""

    def free(step: float) -> bool:
        there = shapely.transform(piece, lambda points: points - np.array([step, 0.0]))
        return all(_apart(there, other, gap) for other in others) and all(
            _apart(there, fault, gap / 2) for fault in faults
        )

    most = min(reach, float(piece.bounds[0]))
    if most <= 0.0:
        return 0.0
    if free(most):
        return most
    low, high = 0.0, most
    for _ in range(_HALVINGS):
        middle = 0.5 * (low + high)
        low, high = (middle, high) if free(middle) else (low, middle)
    return low


def _apart(piece: Polygon, other: Polygon, gap: float) -> bool:
    if gap > 0.0:
        return bool(piece.distance(other) >= gap)
    return not piece.overlaps(other) and not piece.contains(other) and not piece.within(other)


@dataclass(frozen=True, eq=False)
class _Shape:
    """A piece in cells: runs of cells, long runs first, and what brings it to its corner."""

    way: Spot
    runs: tuple[_Run, ...]
    rows: int
    length: int
    shift: tuple[float, float]


def _shape(outline: FloatArray, way: Spot, gap: float, cell: float) -> _Shape:
    """Return a piece with half the gap around it, drawn into cells."""
    turned = replace(way, x=0.0, y=0.0).on(outline)
    low = turned.min(axis=0)
    grown = Polygon(turned - low + gap / 2).buffer(gap / 2, quad_segs=4)
    high = float(np.ptp(turned[:, 1])) + gap
    rows = max(1, math.ceil(high / cell - 1e-9))
    length = float(np.ptp(turned[:, 0])) + gap
    bottoms = np.arange(rows) * cell
    bands = shapely.box(-gap, bottoms, length + gap, bottoms + cell)
    parts, row = shapely.get_parts(shapely.intersection(grown, bands), return_index=True)
    held = ~shapely.is_empty(parts)
    bounds, row = shapely.bounds(parts[held]), row[held]
    first = np.floor(np.maximum(bounds[:, 0], 0.0) / cell + 1e-9).astype(int)
    past = np.ceil(np.minimum(bounds[:, 2], length) / cell - 1e-9).astype(int)
    found = [
        (int(r), int(a), max(int(a), int(b) - 1)) for r, a, b in zip(row, first, past, strict=True)
    ]
    runs = tuple(sorted(set(found), key=lambda run: run[1] - run[2]))
    columns = max(run[2] for run in runs) + 1
    shift = (gap / 2 - float(low[0]), gap / 2 - float(low[1]))
    return _Shape(way, runs, rows, columns, shift)


class _Grid:
    """The rows of a cloth as whole numbers, with what they look like to runs of any length."""

    def __init__(self, cell: float, rows: int) -> None:
        self._cell = cell
        self._rows = [0] * rows
        self._spread: list[dict[int, int]] = [{} for _ in range(rows)]

    def block(self, low_x: float, high_x: float, low_y: float, high_y: float) -> None:
        """Take a rectangle, mm."""
        first, past = math.floor(low_x / self._cell), math.ceil(high_x / self._cell)
        bits = (1 << max(past, 0)) - (1 << max(first, 0))
        bottom = max(math.floor(low_y / self._cell), 0)
        top = min(math.ceil(high_y / self._cell), len(self._rows))
        for row in range(bottom, top):
            self._set(row, bits)

    def take(self, shape: _Shape, x: int, row: int) -> None:
        """Put a piece down."""
        for down, first, last in shape.runs:
            self._set(row + down, (1 << (x + last + 1)) - (1 << (x + first)))

    def first_room(self, shape: _Shape, limit: float) -> tuple[int, int] | None:
        """Return the first column, at most `limit`, and its lowest row with room for a piece."""
        best: tuple[int, int] | None = None
        for row in range(len(self._rows) - shape.rows + 1):
            refused = 0
            free = 0
            for down, first, last in shape.runs:
                seen = self._seen(row + down, last - first) >> first
                if seen:
                    refused |= seen
                    free = ((refused + 1) & ~refused).bit_length() - 1
                    if free > limit:
                        break
            else:
                if free <= limit:
                    best, limit = (free, row), free - 1
            if limit < 0:
                break
        return best

    def _set(self, row: int, bits: int) -> None:
        self._rows[row] |= bits
        self._spread[row].clear()

    def _seen(self, row: int, length: int) -> int:
        """Return the places where a run of `length` + 1 cells would meet what is taken."""
        known = self._spread[row]
        if length not in known:
            if length == 0:
                known[0] = self._rows[row]
            else:
                half = length // 2
                part = self._seen(row, half)
                known[length] = part | (part >> (length - half))
        return known[length]
