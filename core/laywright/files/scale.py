"""Colours for values: a few steps, told apart by lightness alone, each with its numbers.

The ramps are our own.  Along each of them red, green and blue fall together, so that every eye,
however it weighs them, and a grey print see the same order.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from enum import StrEnum

import numpy as np

from laywright.arrays import FloatArray, IntArray, floats, ints

__all__ = ["Colour", "Ramp", "Scale", "round_step", "shades", "stepped"]

Colour = tuple[float, float, float]


class Ramp(StrEnum):
    """Colours from low to high, by the first and the last of them."""

    SAND_TO_PLUM = "sand to plum"
    FROST_TO_NIGHT = "frost to night"
    STRAW_TO_BARK = "straw to bark"


_RAMPS = {
    Ramp.SAND_TO_PLUM: [
        [0.95, 0.91, 0.80],
        [0.76, 0.80, 0.60],
        [0.47, 0.64, 0.53],
        [0.31, 0.45, 0.50],
        [0.30, 0.26, 0.45],
        [0.26, 0.08, 0.28],
    ],
    Ramp.FROST_TO_NIGHT: [
        [0.92, 0.95, 0.97],
        [0.72, 0.83, 0.90],
        [0.48, 0.69, 0.80],
        [0.27, 0.52, 0.66],
        [0.13, 0.33, 0.47],
        [0.05, 0.14, 0.26],
    ],
    Ramp.STRAW_TO_BARK: [
        [0.98, 0.94, 0.74],
        [0.93, 0.79, 0.52],
        [0.84, 0.60, 0.36],
        [0.68, 0.42, 0.26],
        [0.46, 0.26, 0.19],
        [0.24, 0.12, 0.10],
    ],
}


@dataclass(frozen=True, eq=False)
class Scale:
    """Steps of a value, each with a colour.

    Attributes
    ----------
    unit : str
        Unit of the limits, as it is printed.
    limits : (k,) float
        Upper limits of all steps but the last, ascending.
    colours : (k + 1, 3) float
        Red, green, blue of each step, 0 to 1.
    """

    unit: str
    limits: FloatArray
    colours: FloatArray

    def __post_init__(self) -> None:
        object.__setattr__(self, "limits", floats(self.limits, -1))
        object.__setattr__(self, "colours", floats(self.colours, -1, 3))
        if len(self.colours) != len(self.limits) + 1 or (np.diff(self.limits) <= 0.0).any():
            raise ValueError("a scale needs ascending limits and one colour more than limits")

    def steps(self, values: FloatArray) -> IntArray:
        """Return the step of each value: (n,) int; a value on a limit is below it."""
        return ints(np.searchsorted(self.limits, values, side="left"), -1)

    def shares(self, values: FloatArray, weights: FloatArray) -> tuple[float, ...]:
        """Return the share of the weights that every step takes, 0 to 1.

        Parameters
        ----------
        values, weights : (n,) float
            For example the shear of each triangle, and its area.

        Examples
        --------
        >>> stepped("deg", (10.0, 20.0)).shares(np.array([5.0, 25.0]), np.array([3.0, 1.0]))
        (0.75, 0.0, 0.25)
        """
        total = float(weights.sum()) or 1.0
        taken = np.bincount(self.steps(values), weights, len(self.colours))
        return tuple((taken / total).tolist())

    def painted(self, ramp: Ramp) -> Scale:
        """Return the same steps in the colours of a ramp."""
        return replace(self, colours=_spread(ramp, len(self.colours)))


def stepped(unit: str, limits: tuple[float, ...], ramp: Ramp = Ramp.SAND_TO_PLUM) -> Scale:
    """Return a scale whose colours are spread evenly over a ramp.

    Examples
    --------
    >>> stepped("deg", (10.0, 20.0)).colours.shape
    (3, 3)
    """
    return Scale(unit, np.array(limits), _spread(ramp, len(limits) + 1))


def shades(ramp: Ramp, count: int) -> tuple[Colour, ...]:
    """Return colours spread evenly over a ramp, the palest first."""
    return tuple((float(r), float(g), float(b)) for r, g, b in _spread(ramp, count))


def round_step(reach: float, most: int) -> float:
    """Return the smallest of 1, 2, 5, 10, 20 ... of which at most so many reach a value.

    Examples
    --------
    >>> round_step(2.3, 5), round_step(46.0, 5), round_step(0.03, 3)
    (0.5, 10.0, 0.01)
    """
    power = 10.0 ** math.floor(math.log10(reach / most))
    return next(
        round(figure * power, 12)
        for figure in (1.0, 2.0, 5.0, 10.0)
        if figure * power * most >= reach * (1.0 - 1e-9)
    )


def _spread(ramp: Ramp, count: int) -> FloatArray:
    """Return colours spread evenly over a ramp: (count, 3) float, 0 to 1."""
    given = np.array(_RAMPS[ramp])
    at = np.linspace(0.0, len(given) - 1.0, count)
    bands = [np.interp(at, np.arange(len(given)), given[:, band]) for band in range(3)]
    return floats(np.stack(bands, axis=1), -1, 3)
