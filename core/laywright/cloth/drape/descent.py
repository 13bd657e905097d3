"""Descent with a memory: the way down is learnt from the last steps, from a good first guess.

Limited-memory quasi-Newton steps (J. Nocedal, Updating quasi-Newton matrices with limited
storage, Math. Comput. 35 (1980) 773) on top of a factored matrix that is nearly right.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray

__all__ = ["Descent", "descend"]

_MEMORY = 20
_ENOUGH = 1e-4
_ROUNDING = 1e-14
_SHORTEST = 1e-8
_CALM = 2


@dataclass(frozen=True, eq=False)
class Descent:
    """Where a descent ended.

    Attributes
    ----------
    place : (k,) float
        Where.
    steps : int
        Steps taken.
    at_rest : bool
        Whether the last steps were small enough to call it the end.
    """

    place: FloatArray
    steps: int
    at_rest: bool


def descend(
    value_and_slope: Callable[[FloatArray], tuple[float, FloatArray]],
    divide: Callable[[FloatArray], FloatArray],
    start: FloatArray,
    rest: float,
    most: int,
    tell: Callable[[float], None],
) -> Descent:
    """Walk down until two steps in a row are short.

    Parameters
    ----------
    value_and_slope : callable
        Value, infinite where one must not go, and gradient.
    divide : callable
        Divides a gradient by the guessed curvature.
    start : (k,) float
        Where to start; its value is finite.
    rest : float
        Largest change of any unknown in a short step.
    most : int
        Largest number of steps.
    tell : callable
        Told the largest change in each step.

    Returns
    -------
    Descent
    """
    place = start
    value, slope = value_and_slope(place)
    memory: deque[tuple[FloatArray, FloatArray, float]] = deque(maxlen=_MEMORY)
    calm = 0
    for count in range(1, most + 1):
        way = -_divided(slope, memory, divide)
        down = _dot(slope, way)
        if down >= 0.0:
            memory.clear()
            way = -divide(slope)
            down = _dot(slope, way)
        share, ahead, reached, steeper = 1.0, place, np.inf, slope
        while share > _SHORTEST:
            ahead = place + share * way
            reached, steeper = value_and_slope(ahead)
            if reached <= value + _ENOUGH * share * down + _ROUNDING * abs(value):
                break
            share *= 0.5
        else:
            return Descent(place, count, False)
        step, turn = ahead - place, steeper - slope
        bend = _dot(step, turn)
        if bend > 1e-12 * float(np.sqrt(_dot(step, step) * _dot(turn, turn))):
            memory.append((step, turn, 1.0 / bend))
        place, value, slope = ahead, reached, steeper
        moved = float(np.abs(step).max())
        tell(moved)
        calm = calm + 1 if moved <= rest else 0
        if calm == _CALM:
            return Descent(place, count, True)
    return Descent(place, most, False)


def _divided(
    slope: FloatArray,
    memory: deque[tuple[FloatArray, FloatArray, float]],
    divide: Callable[[FloatArray], FloatArray],
) -> FloatArray:
    """Return the slope divided by the curvature that the memory and the first guess suggest."""
    left = slope.copy()
    shares = []
    for step, turn, weight in reversed(memory):
        share = weight * _dot(step, left)
        shares.append(share)
        left -= share * turn
    way = divide(left)
    for (step, turn, weight), share in zip(memory, reversed(shares), strict=True):
        way += step * (share - weight * _dot(turn, way))
    return way


def _dot(one: FloatArray, other: FloatArray) -> float:
    """Return the product of two vectors: too short to share among processors."""
    return float(np.einsum("i,i->", one, other))
