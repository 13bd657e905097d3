"""A simple packing: each piece goes where it ends soonest along the roll.

The roll is divided into narrow lanes along its length; each lane remembers how far it is used.
A piece is slid along, over all lanes and both ways round, and put where its far end lies
nearest to the start of the roll.  Long pieces come first.  The same pieces always give the same
plan, no two overlap, and the gap between them is kept.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.lib.stride_tricks import sliding_window_view

from laywright.arrays import Array, FloatArray

__all__ = ["Spot", "place_by_lanes"]

_LANES = 500


@dataclass(frozen=True)
class Spot:
    """Where a piece lies: turned by half a turn about zero or not, then shifted.

    Attributes
    ----------
    x, y : float, mm
        Shift along and across the roll.
    turned : bool
        Whether it is turned by 180 degrees first.
    """

    x: float
    y: float
    turned: bool

    def on(self, outline: FloatArray) -> FloatArray:
        """Return an outline, (k, 2) float, where it lies."""
        placed: FloatArray = (-outline if self.turned else outline) + np.array([self.x, self.y])
        return placed


def place_by_lanes(outlines: list[FloatArray], width: float, gap: float) -> list[Spot]:
    """Place pieces on a strip.

    Parameters
    ----------
    outlines : list of (k, 2) float, mm
        Outlines, x along the strip, none wider than it.
    width : float, mm
        Width of the strip, from y = 0.
    gap : float, mm
        Smallest distance kept between pieces along the strip and across it.

    Returns
    -------
    list of Spot
        In the order of the outlines; every x from 0 up.
    """
    lane = width / _LANES
    beside = int(np.ceil(gap / lane))
    used = np.full(_LANES + 2 * beside, -np.inf)
    used[beside : beside + _LANES] = 0.0
    spots: dict[int, Spot] = {}
    order = sorted(range(len(outlines)), key=lambda i: (-np.ptp(outlines[i], axis=0)[0], i))
    for index in order:
        choices = [_soonest(used, outlines[index], lane, gap, turned) for turned in (False, True)]
        best = min(choices, key=lambda choice: choice.end)
        taken = slice(beside + best.lane, beside + best.lane + len(best.far))
        used[taken] = best.at + best.far + gap
        low = best.outline.min(axis=0)
        spots[index] = Spot(best.at - float(low[0]), best.lane * lane - float(low[1]), best.turned)
    return [spots[index] for index in range(len(outlines))]


@dataclass(frozen=True, eq=False)
class _Choice:
    end: float
    at: float
    lane: int
    far: Array
    outline: FloatArray
    turned: bool


def _soonest(used: Array, outline: FloatArray, lane: float, gap: float, turned: bool) -> _Choice:
    """Return the place of one piece, one way round, where it ends soonest."""
    outline = -outline if turned else outline
    beside = (len(used) - _LANES) // 2
    near, far = _reach(outline - outline.min(axis=0), lane, beside)
    starts = np.maximum((sliding_window_view(used, len(near)) - near).max(axis=1), 0.0)
    first = int(np.argmin(starts))
    at = float(starts[first])
    return _Choice(at + float(far.max()), at, first, far, outline, turned)


def _reach(outline: FloatArray, lane: float, beside: int) -> tuple[Array, Array]:
    """Return where an outline begins and ends along each lane.

    The beginnings are those of the lanes within the gap, `beside` lanes to either side.
    """
    count = max(int(np.ceil(outline[:, 1].max() / lane - 1e-9)), 1)
    points = _cut_at_lanes(outline, lane)
    low = np.minimum(points[:-1], points[1:])
    high = np.maximum(points[:-1], points[1:])
    index = np.clip(((low[:, 1] + high[:, 1]) / (2.0 * lane)).astype(int), 0, count - 1)
    near, far = np.full(count, np.inf), np.full(count, -np.inf)
    np.minimum.at(near, index, low[:, 0])
    np.maximum.at(far, index, high[:, 0])
    padded = np.pad(near, 2 * beside, constant_values=np.inf)
    return sliding_window_view(padded, 2 * beside + 1).min(axis=1), far


def _cut_at_lanes(outline: FloatArray, lane: float) -> FloatArray:
    """Return the closed outline with further points where it crosses from lane to lane."""
    pieces = []
    for start, end in zip(outline, np.roll(outline, -1, axis=0), strict=True):
        first, last = sorted((start[1] / lane, end[1] / lane))
        lines = np.arange(np.floor(first) + 1, np.ceil(last)) * lane
        share = np.sort((lines - start[1]) / (end[1] - start[1])) if len(lines) else lines
        pieces.append(start + np.concatenate([[0.0], share])[:, None] * (end - start))
    return np.concatenate([*pieces, outline[:1]])
