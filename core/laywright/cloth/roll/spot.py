"""Where a piece lies on a piece of cloth, and the ways round in which it may lie."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray

__all__ = ["STRAIGHT", "Spot", "end_of"]


@dataclass(frozen=True)
class Spot:
    """Where a piece lies: mirrored about its x axis or not, turned or not, then shifted.

    Attributes
    ----------
    x, y : float, mm
        Shift along and across the cloth.
    turned : bool
        Whether it is turned by 180 degrees first.
    mirrored : bool
        Whether it is mirrored about the x axis before that: the warp stays along the cloth.
    """

    x: float
    y: float
    turned: bool = False
    mirrored: bool = False

    def on(self, outline: FloatArray) -> FloatArray:
        """Return an outline, (k, 2) float, where it lies; counter-clockwise stays so.

        Examples
        --------
        >>> Spot(10.0, 5.0, turned=True).on(np.array([[1.0, 2.0]])).tolist()
        [[9.0, 3.0]]
        >>> Spot(0.0, 0.0, mirrored=True).on(np.array([[1.0, 2.0]])).tolist()
        [[1.0, -2.0]]
        """
        sign = -1.0 if self.turned else 1.0
        factors = np.array([sign, -sign if self.mirrored else sign])
        placed: FloatArray = outline * factors + np.array([self.x, self.y])
        return placed[::-1] if self.mirrored else placed


STRAIGHT = (Spot(0.0, 0.0), Spot(0.0, 0.0, turned=True))
"""The two ways round that every cloth allows: as drawn, and turned by half a turn."""


def end_of(outlines: Sequence[FloatArray], spots: Sequence[Spot]) -> float:
    """Return where the last piece ends along the cloth, mm; 0 where there is none."""
    return max(
        (
            float(spot.on(outline)[:, 0].max())
            for outline, spot in zip(outlines, spots, strict=True)
        ),
        default=0.0,
    )
