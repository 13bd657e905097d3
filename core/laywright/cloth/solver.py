"""The drape solver: damped Gauss-Newton on the strain energy of the cloth.

Unknowns are the flat coordinates (u, v) of every vertex.  What is minimised is the mean over
the area of ``k_warp warp^2 + k_weft weft^2 + k_shear shear^2`` (see `laywright.cloth.strain`),
past the locking angle with ``k_locked (|shear| - locking)^2`` on top, plus the rows by which
points are held.  Stretch grows without bound as a triangle is crushed, so the energy is its
own barrier: a step that would turn a triangle over is shortened until it does not.

The facets read the gradients of a curved map wrong in the first order of their size.  Once the
cloth lies roughly, what they miss (see `laywright.cloth.recovery`) is added to the gradients as
it was after the step before, until nothing moves any more: the strain is then right in the
second order and hardly depends on how the triangles lie.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from scipy.sparse import csc_matrix
from scipy.sparse.linalg import splu

from laywright.arrays import Array, FloatArray, IntArray
from laywright.cloth.dissection import dissection
from laywright.cloth.fabric import Fabric
from laywright.cloth.hold import Rows
from laywright.cloth.recovery import Recovery
from laywright.cloth.strain import facet_gradients
from laywright.progress import Progress
from laywright.surface.triangles import Surface

__all__ = ["Energy", "Settled", "settle"]

_RESIDUALS = 4
_ROUGHLY = 1e-3
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


class Energy:
    """The strain energy of one fabric on one surface.

    Parameters
    ----------
    surface : Surface
        Without triangles of no area.
    fabric : Fabric
        The stiffnesses.
    rows : Rows
        What holds the cloth.
    """

    def __init__(self, surface: Surface, fabric: Fabric, rows: Rows) -> None:
        self.surface = surface
        self._rows = rows
        self._locking = fabric.locking_angle
        self._gradients = facet_gradients(surface)
        share = np.sqrt(surface.areas / surface.area)
        stiffness = np.sqrt([fabric.warp, fabric.weft, fabric.shear, fabric.locked])
        self._weights = share[:, None] * stiffness

    @cached_property
    def _unknowns(self) -> IntArray:
        """Unknowns of every triangle, u and v of each corner in turn: (m, 6) int."""
        doubled = 2 * self.surface.triangles
        unknowns: IntArray = np.stack([doubled, doubled + 1], axis=2).reshape(-1, 6)
        return unknowns

    @cached_property
    def elimination(self) -> IntArray:
        """Unknowns in the order in which the matrix eliminates them: (2 n,) int."""
        order = dissection(self.surface)
        unknowns: IntArray = np.stack([2 * order, 2 * order + 1], axis=1).ravel()
        return unknowns

    @cached_property
    def _pattern(self) -> tuple[Array, Array, Array, Array, FloatArray]:
        """Where the entries of the triangles and of the rows go in the sparse matrix."""
        size = 2 * len(self.surface.vertices)
        rank = np.empty(size, dtype=np.int64)
        rank[self.elimination] = np.arange(size)
        held = (self._rows.matrix.T @ self._rows.matrix).tocoo()
        own = rank[self._unknowns]
        across = np.repeat(own, 6, axis=1).ravel()
        down = np.tile(own, (1, 6)).ravel()
        every = np.arange(size)
        keys = np.concatenate(
            [across * size + down, rank[held.col] * size + rank[held.row], every * (size + 1)]
        )
        unique, index = np.unique(keys, return_inverse=True)
        starts = np.searchsorted(unique // size, np.arange(size + 1))
        _, of_rows, diagonal = np.split(index, [own.size * 6, own.size * 6 + held.nnz])
        fixed: Array = np.bincount(of_rows, weights=held.data, minlength=len(unique))
        return unique % size, starts, index[: own.size * 6], diagonal, fixed

    def jacobians(self, uv: FloatArray) -> FloatArray:
        """Return d(u, v)/d(x, y) of every facet: (m, 2, 2) float."""
        jacobians: FloatArray = np.einsum(
            "mxk,mkw->mwx", self._gradients, uv[self.surface.triangles]
        )
        return jacobians

    def _lack(self, uv: FloatArray) -> FloatArray:
        lack: FloatArray = self._rows.matrix @ uv.ravel() - self._rows.targets
        return lack

    def _beyond(self, shear: FloatArray) -> FloatArray:
        past: FloatArray = np.sign(shear) * np.maximum(np.abs(shear) - self._locking, 0.0)
        return past

    def value(self, uv: FloatArray, missed: FloatArray | float = 0.0) -> float:
        """Return the energy; infinite where a triangle is turned over.

        Parameters
        ----------
        uv : (n, 2) float, mm
            Flat coordinates.
        missed : (m, 2, 2) float
            What is added to the gradients of the facets.
        """
        facets = self.jacobians(uv)
        u, v, det = _split(facets + missed)
        if det.min() <= 0.0 or _split(facets)[2].min() <= 0.0:
            return np.inf
        shear = np.arctan2(-np.einsum("ij,ij->i", u, v), det)
        residual = np.stack(
            [
                np.sqrt(np.einsum("ij,ij->i", v, v)) / det - 1.0,
                np.sqrt(np.einsum("ij,ij->i", u, u)) / det - 1.0,
                shear,
                self._beyond(shear),
            ],
            axis=1,
        )
        held = self._lack(uv)
        return float(((residual * self._weights) ** 2).sum() + held @ held)

    def slope(self, uv: FloatArray, missed: FloatArray | float = 0.0) -> FloatArray:
        """Return half the gradient of the energy: (2 n,) float."""
        return self._gathered(uv, *self._linearised(uv, missed))

    def slope_and_curvature(
        self, uv: FloatArray, missed: FloatArray | float = 0.0
    ) -> tuple[FloatArray, csc_matrix, Array]:
        """Return half the gradient, the Gauss-Newton matrix, and the places of its diagonal.

        The matrix stands in the order of `elimination`.
        """
        local, residual = self._linearised(uv, missed)
        down, starts, place, diagonal, fixed = self._pattern
        block = np.matmul(local.transpose(0, 2, 1), local)
        entries = fixed + np.bincount(place, weights=block.ravel(), minlength=len(down))
        matrix = csc_matrix((entries, down, starts), shape=(uv.size, uv.size))
        return self._gathered(uv, local, residual), matrix, diagonal

    def _gathered(self, uv: FloatArray, local: FloatArray, residual: FloatArray) -> FloatArray:
        slope: Array = np.bincount(
            self._unknowns.ravel(),
            weights=np.einsum("mrj,mr->mj", local, residual).ravel(),
            minlength=uv.size,
        )
        total: FloatArray = slope + self._rows.matrix.T @ self._lack(uv)
        return total

    def _linearised(
        self, uv: FloatArray, missed: FloatArray | float
    ) -> tuple[FloatArray, FloatArray]:
        """Return the weighted residuals, (m, 4), and their derivatives, (m, 4, 6)."""
        u, v, det = _split(self.jacobians(uv) + missed)
        length_u = np.sqrt(np.einsum("ij,ij->i", u, u))
        length_v = np.sqrt(np.einsum("ij,ij->i", v, v))
        dot = np.einsum("ij,ij->i", u, v)
        shear = np.arctan2(-dot, det)
        det_by_u = np.stack([v[:, 1], -v[:, 0]], axis=1)
        det_by_v = np.stack([-u[:, 1], u[:, 0]], axis=1)
        warp, weft = length_v / det, length_u / det
        residual = np.stack([warp - 1.0, weft - 1.0, shear, self._beyond(shear)], axis=1)
        by = np.zeros((len(det), _RESIDUALS, 2, 2))
        by[:, 0, 0] = -(warp / det)[:, None] * det_by_u
        by[:, 0, 1] = v / (length_v * det)[:, None] - (warp / det)[:, None] * det_by_v
        by[:, 1, 0] = u / (length_u * det)[:, None] - (weft / det)[:, None] * det_by_u
        by[:, 1, 1] = -(weft / det)[:, None] * det_by_v
        squared = (length_u * length_v) ** 2
        by[:, 2, 0] = (dot[:, None] * det_by_u - det[:, None] * v) / squared[:, None]
        by[:, 2, 1] = (dot[:, None] * det_by_v - det[:, None] * u) / squared[:, None]
        by[:, 3] = by[:, 2] * (residual[:, 3] != 0.0)[:, None, None]
        by *= self._weights[:, :, None, None]
        local = np.matmul(by, self._gradients[:, None])  # (m, residual, u or v, corner)
        return local.transpose(0, 1, 3, 2).reshape(-1, _RESIDUALS, 6), residual * self._weights


def _split(jacobians: FloatArray) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Return the gradients of u and v, (m, 2) float each, and their determinant."""
    u, v = jacobians[:, 0], jacobians[:, 1]
    return u, v, u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]


class Mixer:
    """Mixes the last few steps of a fixed-point iteration into a better one."""

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


def settle(
    energy: Energy,
    start: FloatArray,
    progress: Progress,
    *,
    missed: FloatArray | None = None,
    most: int = 100,
    rest: float = 2e-6,
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
    recovery = Recovery(energy.surface)
    size = float(np.sqrt(energy.surface.area))
    uv, damping = start, 1e-6
    curved = missed is not None
    missed = np.zeros((1, 2, 2)) if missed is None else missed
    factors: _Factors | None = None
    mixer, best = Mixer(), np.inf
    for iteration in range(1, most + 1):
        if curved:
            missed = _bounded(recovery.missed(uv), energy.jacobians(uv))
        if factors is None:
            uv, moved, damping, factors = _damped(energy, uv, missed, damping)
            if moved == 0.0:
                return Settled(uv, missed, iteration, False)
            moved /= size
            if moved > _ROUGHLY or not curved:
                factors = None
            curved = curved or moved <= _ROUGHLY
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
    least = np.linalg.svd(facets, compute_uv=False)[:, 1]
    size = np.sqrt(np.einsum("mij,mij->m", missed, missed))
    kept = np.minimum(1.0, _LARGEST_MISS * least / np.maximum(size, 1e-300))
    bounded: FloatArray = missed * kept[:, None, None]
    return bounded


def _damped(
    energy: Energy, uv: FloatArray, missed: FloatArray, damping: float
) -> tuple[FloatArray, float, float, _Factors]:
    """Take one damped step: the new place, how far it moved, the next damping, the factors."""
    value = energy.value(uv, missed)
    slope, matrix, diagonal = energy.slope_and_curvature(uv, missed)
    undamped = matrix.data[diagonal].copy()
    scale = float(undamped.mean())
    while True:
        matrix.data[diagonal] = undamped + damping * scale
        factors = _Factors(matrix, energy.elimination)
        step = factors.step(slope)
        share = _shorten(energy, uv, missed, step, value)
        if share > 0.0 or damping > _STIFF:
            break
        damping *= 10.0
    if share == 1.0:
        damping = max(damping * 0.1, 1e-13)
    return uv + share * step, share * float(np.abs(step).max()), damping, factors


def _share_done(moved: float, rest: float) -> float:
    """Return how far the steps have shrunk on their way to rest, on a logarithmic scale."""
    return 1.0 - float(np.clip(np.log(max(moved, rest) / rest) / np.log(1.0 / rest), 0.0, 1.0))


class _Factors:
    """A factored matrix of an energy."""

    def __init__(self, matrix: csc_matrix, elimination: IntArray) -> None:
        self._elimination = elimination
        self._factors = splu(
            matrix, permc_spec="NATURAL", diag_pivot_thresh=0.0, options={"SymmetricMode": True}
        )

    def step(self, slope: FloatArray) -> FloatArray:
        """Return the step down a slope: (n, 2) float."""
        step = np.empty_like(slope)
        step[self._elimination] = -self._factors.solve(slope[self._elimination])
        return step.reshape(-1, 2)


def _shorten(
    energy: Energy, uv: FloatArray, missed: FloatArray, step: FloatArray, value: float
) -> float:
    """Return the share of a step that lowers the energy, 0 if none does."""
    for share in 0.5 ** np.arange(6):
        reached = energy.value(uv + share * step, missed)
        if np.isfinite(reached) and reached <= value * (1.0 + _ROUNDING):
            return float(share)
    return 0.0
