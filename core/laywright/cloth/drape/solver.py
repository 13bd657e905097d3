"""The drape solver: damped Gauss-Newton on the facets, then a descent that reads them rounded.

The facets read the gradients of a curved map wrong in the first order of their size.  They
bring the cloth near its rest in a few steps, each shortened until it turns no triangle over.
From there the energy is read with what facets miss added back (see
`laywright.cloth.drape.recovery`): the strain is then right in the second order and hardly
depends on how the triangles lie.  The facets' factored matrix, renewed now and then, is the
guess of the curvature.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from scipy.sparse import identity

from laywright.arrays import FloatArray
from laywright.cloth.drape.descent import descend
from laywright.cloth.drape.energy import Energy, Factors, Sheet
from laywright.cloth.drape.fabric import Fabric
from laywright.cloth.drape.hold import Rows
from laywright.cloth.drape.strain import turned_over
from laywright.progress import Progress, part_of

__all__ = ["REST", "Below", "Settled", "settle", "share_done"]

REST = 1e-5
"""The cloth is at rest where no point moves by more than this share of the surface's size."""

_ROUGHLY = 5e-3
_MOST_ROUGH = 60
_MOST = 800
_FRESH = 25
_STIFF = 1e3
_ROUNDING = 1e-12


@dataclass(frozen=True, eq=False)
class Below:
    """What a cloth takes over from the same cloth that came to rest on the plies below.

    Attributes
    ----------
    uv : (n, 2) float, mm
        Where it will come to rest, nearly.
    factors : Factors or None
        A factored matrix of near there, if one was needed.
    """

    uv: FloatArray
    factors: Factors | None


@dataclass(frozen=True, eq=False)
class Settled:
    """Where the cloth came to rest.

    Attributes
    ----------
    uv : (n, 2) float, mm
        Flat coordinates.
    jacobians : (m, 2, 2) float
        d(u, v)/d(x, y) at the middle of every triangle, in its axes.
    steps : int
        Steps taken.
    at_rest : bool
        Whether the last steps were small enough to call it the end.
    factors : Factors or None
        The last matrix that was factored, if any was.
    """

    uv: FloatArray
    jacobians: FloatArray
    steps: int
    at_rest: bool
    factors: Factors | None = None


def settle(
    sheet: Sheet,
    fabric: Fabric,
    held: tuple[Rows, Rows],
    start: FloatArray,
    progress: Progress,
    *,
    rest: float = REST,
    below: Below | None = None,
) -> Settled:
    """Let the cloth come to rest from a start without turned triangles.

    Parameters
    ----------
    sheet : Sheet
        The surface.
    fabric : Fabric
        Stiffnesses of the cloth.
    held : tuple of 2 Rows
        What holds it at first, while it is laid roughly, and in the end.
    start : (n, 2) float, mm
        Flat coordinates to start from.
    progress : Progress
        Told after every step.
    rest : float
        The end is where no point moves further than this share of the surface's size.
    below : Below, optional
        The same cloth at rest a ply below: this one starts from there, already laid roughly.

    Returns
    -------
    Settled
    """
    size = float(np.sqrt(sheet.surface.area))

    def told(inner: Progress, end: float, moved: float) -> None:
        inner(share_done(moved / size, end), "the cloth settles")

    uv, steps = (start, 0) if below is None else (below.uv, 0)
    if below is None or turned_over(sheet.surface, uv):
        uv, steps = _laid_roughly(
            Energy(sheet, fabric, held[0]),
            start,
            lambda moved: told(part_of(progress, 0.0, 0.4), _ROUGHLY, moved),
        )
    last = Energy(sheet, fabric, held[1], sheet.rounded(uv))
    inner = part_of(progress, 0.4, 1.0)

    def value_and_slope(place: FloatArray) -> tuple[float, FloatArray]:
        return last.value_and_slope(place.reshape(-1, 2))

    factors: Factors | None = None
    if below is not None and steps == 0:
        factors = below.factors
    at_rest = False
    while not at_rest and steps < _MOST:
        factors = factors or Factors(last.matrix(uv), sheet.elimination)
        descent = descend(
            value_and_slope,
            factors.divide,
            uv.ravel(),
            rest * size,
            _FRESH,
            lambda moved: told(inner, rest, moved),
        )
        uv, at_rest = descent.place.reshape(-1, 2), descent.at_rest
        steps += descent.steps
        kept, factors = factors, None
    return Settled(uv, last.jacobians(uv), steps, at_rest, kept)


def _laid_roughly(
    energy: Energy, uv: FloatArray, tell: Callable[[float], None]
) -> tuple[FloatArray, int]:
    """Return where damped steps bring the cloth near its rest, and how many it took."""
    size = float(np.sqrt(energy.sheet.surface.area))
    damping, steps, moved = 1e-6, 0, np.inf
    while moved > _ROUGHLY * size and steps < _MOST_ROUGH:
        uv, moved, damping = _damped(energy, uv, damping)
        tell(moved)
        steps += 1
    return uv, steps


def share_done(moved: float, end: float) -> float:
    """Return how much is done where points still move by `moved` and may in the end by `end`.

    Both are shares of the surface's size.
    """
    left = np.log(max(moved, end) / end) / np.log(1.0 / end)
    return 1.0 - float(np.clip(left, 0.0, 1.0))


def _damped(energy: Energy, uv: FloatArray, damping: float) -> tuple[FloatArray, float, float]:
    """Take one damped step: the new place, how far it moved, the next damping.

    Levenberg's damping (K. Levenberg, 1944) shrinks tenfold after every full step and grows
    tenfold where no shortened step helps.
    """
    value, slope = energy.value_and_slope(uv)
    matrix = energy.matrix(uv)
    scale = float(matrix.diagonal().mean())
    while damping < _STIFF:
        damped = (matrix + damping * scale * identity(matrix.shape[0])).tocsc()
        try:
            step = -Factors(damped, energy.sheet.elimination).divide(slope).reshape(-1, 2)
        except RuntimeError:  # exactly singular
            damping *= 10.0
            continue
        for share in 0.5 ** np.arange(6):
            reached, _ = energy.value_and_slope(uv + share * step)
            if np.isfinite(reached) and reached <= value * (1.0 + _ROUNDING):
                easier = max(damping * 0.1, 1e-13) if share == 1.0 else damping
                return uv + share * step, float(share * np.abs(step).max()), easier
        damping *= 10.0
    return uv, 0.0, damping
