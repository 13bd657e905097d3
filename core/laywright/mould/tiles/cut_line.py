"""The best cuts along one axis of a grid: limits and wishes kept, seams where they cost least."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray
from laywright.errors import LimitError
from laywright.mould.tiles.cut_ground import Ground, Line
from laywright.mould.tiles.cuts import count_along
from laywright.mould.tiles.seams import place_seams
from laywright.mould.tiles.wishes import CutWishes, Stretch, barred

__all__ = ["SLIVER", "line_of"]

SLIVER = 10.0
"""No cut leaves less of the working face than this, mm (our own choice, no source)."""

_MORE_CUTS = 4


def line_of(
    ground: Ground,
    wishes: CutWishes,
    turn: float,
    axis: int,
    most: float,
    ear: float = 0.0,
    avoided: tuple[Stretch, ...] = (),
) -> Line | None:
    """Return the cuts along one axis and their cost, or None if none keep the limits.

    Parameters
    ----------
    ground : Ground
        What is known of the body.
    wishes : CutWishes
        The maker's.
    turn : float, radians
        Turn of the grid about the pull.
    axis : int
        Which of the grid's axes.
    most : float, mm
        Room of the printer along it.
    ear : float, mm
        How far ears stand out at both ends.
    avoided : tuple of (float, float), mm
        Stretches without cuts beside those that are barred.

    Raises
    ------
    LimitError
        If a pinned cut runs through what no cut may pass.
    """
    key = (turn, axis, most, ear, avoided)
    if key not in ground.lines:
        ground.lines[key] = _found(ground, wishes, turn, axis, most, ear, avoided)
    return ground.lines[key]


def _found(
    ground: Ground,
    wishes: CutWishes,
    turn: float,
    axis: int,
    most: float,
    ear: float,
    avoided: tuple[Stretch, ...],
) -> Line | None:
    low, high = ground.extents(turn)[axis]
    pins = tuple(sorted(pin for pin in wishes.pinned[axis] if low < pin < high))
    limits = ground.limits
    bars = barred(ground.things, wishes, ground.axes(turn) @ ground.frame, axis, limits.wall)
    _check_pins(pins, bars, axis)
    bars += avoided
    start, end = ground.working_extent(turn, axis)
    rims = [(start, start + SLIVER), (end - SLIVER, end)]
    extent = (low - ear, high + ear)
    reach = limits.tongue
    if most <= reach:
        return None
    least = max(count_along(extent[1] - extent[0], most, reach) - 1, len(pins))
    for kept_free in ([*bars, *rims], bars):
        for count in range(least, least + _MORE_CUTS):
            shortest = limits.least_tile if count else 0.0
            places, costs = _candidates(ground, turn, axis, count, (*pins, *sum(bars, ())))
            clear = (places >= low + shortest - 1e-9) & (places <= high - shortest + 1e-9)
            for a, b in kept_free:
                clear &= (places <= a) | (places >= b)
            clear |= np.isin(places, pins)
            found = place_seams(
                places[clear],
                costs[clear],
                extent,
                count,
                most,
                shortest,
                pinned=pins,
                reach=reach if count else 0.0,
            )
            if found is not None:
                return found
    return None


def _check_pins(pins: tuple[float, ...], bars: list[Stretch], axis: int) -> None:
    for pin in pins:
        for low, high in bars:
            if low < pin < high:
                raise LimitError(
                    f"pinned cut along {'xyz'[axis]}",
                    f"{pin:.4g} mm, through what no cut may pass",
                    f"a place outside {low:.4g} to {high:.4g} mm",
                    "move the pinned cut",
                )


def _candidates(
    ground: Ground, turn: float, axis: int, count: int, more: tuple[float, ...]
) -> tuple[FloatArray, FloatArray]:
    """Return candidate cuts and their costs: one every millimetre, the even ones, the named."""
    low, high = ground.extents(turn)[axis]
    steps, costs = ground.seam_costs(turn, axis)
    even = low + (high - low) * np.arange(1, count + 1) / (count + 1)
    every = np.unique(np.concatenate([steps, even, np.array(more, dtype=np.float64)]))
    every = every[(every > low) & (every < high)]
    return every, np.asarray(np.interp(every, steps, costs))
