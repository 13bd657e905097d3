"""Mixing the steps of a slow iteration into faster ones."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray

__all__ = ["Mixer"]


class Mixer:
    """Mixes the last few steps of a fixed-point iteration into a better one.

    Parameters
    ----------
    memory : int
        How many steps are kept.

    Notes
    -----
    D. Anderson, Iterative procedures for nonlinear integral equations, J. ACM 12 (1965) 547.
    """

    def __init__(self, memory: int = 12) -> None:
        self._memory = memory
        self._places: list[FloatArray] = []
        self._steps: list[FloatArray] = []

    def mix(self, place: FloatArray, step: FloatArray) -> FloatArray:
        """Return the next place, given where one is and the step that the iteration asks for."""
        self._places.append(place.ravel())
        self._steps.append(step.ravel())
        del self._places[: -self._memory], self._steps[: -self._memory]
        if len(self._steps) == 1:
            return place + step
        turns = np.diff(np.stack(self._steps, axis=1), axis=1)
        moves = np.diff(np.stack(self._places, axis=1), axis=1)
        share = np.linalg.lstsq(turns, step.ravel(), rcond=1e-10)[0]
        mixed: FloatArray = (place.ravel() + step.ravel() - (moves + turns) @ share).reshape(-1, 2)
        return mixed
