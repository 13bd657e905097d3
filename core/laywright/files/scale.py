"""Colours for values: a few steps, told apart by lightness alone, each with its numbers.

The ramp is our own, from pale sand through a dull green to dark plum.  Its lightness falls
steadily, so that it can be read in grey and by eyes that tell few colours apart.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray, floats, ints

__all__ = ["Colour", "Scale", "stepped"]

Colour = tuple[float, float, float]

_RAMP = np.array(
    [
        [0.95, 0.91, 0.80],
        [0.76, 0.80, 0.60],
        [0.47, 0.64, 0.53],
        [0.29, 0.45, 0.50],
        [0.30, 0.26, 0.45],
        [0.26, 0.08, 0.28],
    ]
)


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

    def rows(self, values: FloatArray, weights: FloatArray) -> tuple[tuple[Colour, str], ...]:
        """Return colour and text of every step, with the share of the weights it takes.

        Parameters
        ----------
        values, weights : (n,) float
            For example the shear of each triangle, and its area.
        """
        total = float(weights.sum())
        shares = np.bincount(self.steps(values), weights, len(self.colours)) / (total or 1.0)
        return tuple(
            ((float(r), float(g), float(b)), f"{self._words(step)}: {100.0 * share:.1f} %")
            for step, ((r, g, b), share) in enumerate(zip(self.colours, shares, strict=True))
        )

    def _words(self, step: int) -> str:
        if step == 0:
            return f"up to {self.limits[0]:g} {self.unit}"
        if step == len(self.limits):
            return f"over {self.limits[-1]:g} {self.unit}"
        return f"{self.limits[step - 1]:g} to {self.limits[step]:g} {self.unit}"


def stepped(unit: str, limits: tuple[float, ...]) -> Scale:
    """Return a scale whose colours are spread evenly over the ramp.

    Examples
    --------
    >>> scale = stepped("deg", (10.0, 20.0))
    >>> [text for _, text in scale.rows(np.array([5.0, 25.0]), np.array([3.0, 1.0]))]
    ['up to 10 deg: 75.0 %', '10 to 20 deg: 0.0 %', 'over 20 deg: 25.0 %']
    """
    at = np.linspace(0.0, len(_RAMP) - 1.0, len(limits) + 1)
    colours = np.stack(
        [np.interp(at, np.arange(len(_RAMP)), _RAMP[:, band]) for band in range(3)], axis=1
    )
    return Scale(unit, np.array(limits), colours)
