"""The drape solver: damped Gauss-Newton, then mixed steps with one factored matrix.

A step that would turn a triangle over is shortened until it does not.

The facets read the gradients of a curved map wrong in the first order of their size.  Once the
cloth lies roughly, what they miss (see `laywright.cloth.recovery`) is added to the gradients as
it was after the step before, until nothing moves any more: the strain is then right in the
second order and hardly depends on how the triangles lie.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.sparse import csc_matrix, diags

from laywright.arrays import FloatArray
from laywright.cloth.energy import Energy, Factors
from laywright.cloth.mixer import Mixer
from laywright.progress import Progress

__all__ = ["REST", "ROUGHLY", "Settled", "settle"]

REST = 2e-6
ROUGHLY = 1e-3
_STIFF = 1e3
_ROUNDING = 1e-12
_LARGEST_MISS = 0.3


@dataclass(frozen=True, eq=False)
class Settled:
    """Where the solver came to rest.

    Attributes
    ----------
    uv : (n, 2) float, mm
        Flat coordinates.
    missed : (m, 2, 2) float
        What the facets miss of the gradients of the map at their middles.
    iterations : int
        Steps taken.
    at_rest : bool
        Whether the last step was small enough to call it the end.
    """

    uv: FloatArray
    missed: FloatArray
    iterations: int
    at_rest: bool


def settle(
    energy: Energy,
    start: FloatArray,
    progress: Progress,
    *,
    missed: FloatArray | None = None,
    most: int = 100,
    rest: float = REST,
) -> Settled:
    """Let the cloth come to rest from a start without turned triangles.

    Parameters
    ----------
    energy : Energy
        What is minimised.
    start : (n, 2) float, mm
        Flat coordinates to start from.
    progress : Progress
        Told after every step.
    missed : (m, 2, 2) float, optional
        What the facets miss at the start, if the start is a cloth that has settled already.
    most : int
        Largest number of steps.
    rest : float
        The end is where no point moves further than this share of the surface's size.

    Returns
    -------
    Settled

    Notes
    -----
    Levenberg's damping (K. Levenberg, 1944) shrinks tenfold after every full step and grows
    tenfold where no shortened step helps.
    """
    sheet = energy.sheet
    size = float(np.sqrt(sheet.surface.area))
    uv, damping = start, 1e-6
    curved = missed is not None
    missed = np.zeros((1, 2, 2)) if missed is None else missed
    factors: Factors | None = None
    mixer, best = Mixer(), np.inf
    for iteration in range(1, most + 1):
        if curved:
            missed = _bounded(sheet.recovery.missed(uv), sheet.jacobians(uv))
        if factors is None:
            uv, moved, damping, factors = _damped(energy, uv, missed, damping)
            if moved == 0.0:
                return Settled(uv, missed, iteration, False)
            moved /= size
            if moved > ROUGHLY or not curved:
                factors = None
            curved = curved or moved <= ROUGHLY
            mixer, best = Mixer(), np.inf
        else:
            step = factors.step(energy.slope(uv, missed))
            moved = float(np.abs(step).max()) / size
            ahead = mixer.mix(uv, step)
            if moved > 3.0 * best or not np.isfinite(energy.value(ahead, missed)):
                factors = None
                continue
            best, uv = min(best, moved), ahead
        progress(_share_done(moved, rest), "the cloth settles")
        if moved <= rest and curved:
            return Settled(uv, missed, iteration, True)
    return Settled(uv, missed, most, False)


def _bounded(missed: FloatArray, facets: FloatArray) -> FloatArray:
    """Return what facets miss, cut where it would come near to crushing a coarse triangle."""
    squares = np.einsum("mij,mij->m", facets, facets)
    twice_det = 2.0 * (facets[:, 0, 0] * facets[:, 1, 1] - facets[:, 0, 1] * facets[:, 1, 0])
    least = (np.sqrt(squares + twice_det) - np.sqrt(np.maximum(squares - twice_det, 0.0))) / 2.0
    size = np.sqrt(np.einsum("mij,mij->m", missed, missed))
    kept = np.minimum(1.0, _LARGEST_MISS * least / np.maximum(size, 1e-300))
    bounded: FloatArray = missed * kept[:, None, None]
    return bounded


def _damped(
    energy: Energy, uv: FloatArray, missed: FloatArray, damping: float
) -> tuple[FloatArray, float, float, Factors | None]:
    """Take one damped step: the new place, how far it moved, the next damping, the factors."""
    value = energy.value(uv, missed)
    slope, matrix = energy.slope_and_curvature(uv, missed)
    scale = float(matrix.diagonal().mean())
    while True:
        factors = _factored(matrix, damping * scale, energy)
        step = np.zeros_like(uv) if factors is None else factors.step(slope)
        share = 0.0 if factors is None else _shorten(energy, uv, missed, step, value)
        if share > 0.0 or damping > _STIFF:
            break
        damping *= 10.0
    if share == 1.0:
        damping = max(damping * 0.1, 1e-13)
    return uv + share * step, share * float(np.abs(step).max()), damping, factors


def _factored(matrix: csc_matrix, damping: float, energy: Energy) -> Factors | None:
    """Return the factors of a damped matrix, None where it is singular."""
    damped = (matrix + diags(np.full(matrix.shape[0], damping))).tocsc()
    try:
        return Factors(damped, energy.sheet.elimination)
    except RuntimeError:
        return None


def _share_done(moved: float, rest: float) -> float:
    """Return how far the steps have shrunk on their way to rest, on a logarithmic scale."""
    return 1.0 - float(np.clip(np.log(max(moved, rest) / rest) / np.log(1.0 / rest), 0.0, 1.0))


def _shorten(
    energy: Energy, uv: FloatArray, missed: FloatArray, step: FloatArray, value: float
) -> float:
    """Return the share of a step that lowers the energy, 0 if none does."""
    for share in 0.5 ** np.arange(6):
        reached = energy.value(uv + share * step, missed)
        if np.isfinite(reached) and reached <= value * (1.0 + _ROUNDING):
            return float(share)
    return 0.0
