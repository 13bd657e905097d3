"""The drape solver: damped Gauss-Newton on the strain energy of the cloth.

Unknowns are the flat coordinates (u, v) of every vertex.  What is minimised is the mean over
the area of ``k_warp warp^2 + k_weft weft^2 + k_shear shear^2`` (see `laywright.cloth.strain`),
past the locking angle with ``k_locked (|shear| - locking)^2`` on top, plus the rows by which
points are held.  Stretch grows without bound as a triangle is crushed, so the energy is its
own barrier: a step that would turn a triangle over is shortened until it does not.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from scipy.sparse import csc_matrix, csr_matrix
from scipy.sparse.linalg import splu

from laywright.arrays import Array, FloatArray, IntArray
from laywright.cloth.fabric import Fabric
from laywright.cloth.strain import facet_gradients
from laywright.progress import Progress
from laywright.surface.triangles import Surface

__all__ = ["Energy", "Settled", "settle"]

_RESIDUALS = 4


@dataclass(frozen=True, eq=False)
class Settled:
    """Where the solver came to rest.

    Attributes
    ----------
    uv : (n, 2) float, mm
        Flat coordinates.
    energy : float
        Mean strain energy, in the unit of the fabric's stiffnesses.
    iterations : int
        Steps taken.
    at_rest : bool
        Whether the last step was small enough to call it the end.
    """

    uv: FloatArray
    energy: float
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
    rows : (r, 2 n) sparse, 1/mm
        Held points: the energy has the square of ``rows @ (u0, v0, u1, v1, ...) - targets``.
    targets : (r,) float
        Right-hand side of the rows.
    """

    def __init__(
        self, surface: Surface, fabric: Fabric, rows: csr_matrix, targets: FloatArray
    ) -> None:
        self.surface = surface
        self.rows = rows
        self.targets = targets
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
    def _pattern(self) -> tuple[Array, Array, Array, Array, FloatArray]:
        """Where the entries of the triangles and of the rows go in the sparse matrix."""
        size = 2 * len(self.surface.vertices)
        held = (self.rows.T @ self.rows).tocoo()
        across = np.repeat(self._unknowns, 6, axis=1).ravel()
        down = np.tile(self._unknowns, (1, 6)).ravel()
        every = np.arange(size)
        keys = np.concatenate(
            [across * size + down, held.col.astype(np.int64) * size + held.row, every * (size + 1)]
        )
        unique, index = np.unique(keys, return_inverse=True)
        starts = np.searchsorted(unique // size, np.arange(size + 1))
        own = len(across)
        fixed: Array = np.bincount(
            index[own : own + held.nnz], weights=held.data, minlength=len(unique)
        )
        return unique % size, starts, index[:own], index[own + held.nnz :], fixed

    def _jacobians(self, uv: FloatArray) -> tuple[FloatArray, FloatArray, FloatArray]:
        both = np.einsum("mxk,mkw->mwx", self._gradients, uv[self.surface.triangles])
        u, v = both[:, 0], both[:, 1]
        return u, v, u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]

    def _beyond(self, shear: FloatArray) -> FloatArray:
        past: FloatArray = np.sign(shear) * np.maximum(np.abs(shear) - self._locking, 0.0)
        return past

    def value(self, uv: FloatArray) -> float:
        """Return the energy; infinite where a triangle is turned over."""
        u, v, det = self._jacobians(uv)
        if det.min() <= 0.0:
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
        held = self.rows @ uv.ravel() - self.targets
        return float(((residual * self._weights) ** 2).sum() + held @ held)

    def slope_and_curvature(self, uv: FloatArray) -> tuple[FloatArray, csc_matrix, Array]:
        """Return half the gradient, the Gauss-Newton matrix, and the places of its diagonal."""
        u, v, det = self._jacobians(uv)
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
        residual *= self._weights
        local = np.matmul(by, self._gradients[:, None])  # (m, residual, u or v, corner)
        local = local.transpose(0, 1, 3, 2).reshape(len(det), _RESIDUALS, 6)
        slope: Array = np.bincount(
            self._unknowns.ravel(),
            weights=np.einsum("mrj,mr->mj", local, residual).ravel(),
            minlength=uv.size,
        )
        slope += self.rows.T @ (self.rows @ uv.ravel() - self.targets)
        down, starts, place, diagonal, fixed = self._pattern
        block = np.matmul(local.transpose(0, 2, 1), local)
        entries = fixed + np.bincount(place, weights=block.ravel(), minlength=len(down))
        matrix = csc_matrix((entries, down, starts), shape=(uv.size, uv.size))
        return slope, matrix, diagonal


def settle(
    energy: Energy,
    start: FloatArray,
    progress: Progress,
    *,
    most: int = 100,
    rest: float = 1e-7,
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
    uv, value = start, energy.value(start)
    size = float(np.sqrt(energy.surface.area))
    damping = 1e-6
    for iteration in range(1, most + 1):
        slope, matrix, diagonal = energy.slope_and_curvature(uv)
        scale = float(matrix.data[diagonal].mean())
        undamped = matrix.data[diagonal].copy()
        while True:
            matrix.data[diagonal] = undamped + damping * scale
            step = -_solve(matrix, slope).reshape(-1, 2)
            share, reached = _shorten(energy, uv, step, value)
            if share > 0.0 or damping > 1e3:
                break
            damping *= 10.0
        moved = share * float(np.abs(step).max())
        uv, value = uv + share * step, reached
        damping = max(damping * 0.1, 1e-13) if share == 1.0 else damping
        progress(min(0.95, -0.05 * iteration / (iteration + 1.0) + _share_done(moved / size, rest)))
        if moved <= rest * size:
            return Settled(uv, value, iteration, True)
    return Settled(uv, value, most, False)


def _share_done(moved: float, rest: float) -> float:
    """Return how far the steps have shrunk on their way to rest, on a logarithmic scale."""
    return 1.0 - float(np.clip(np.log(max(moved, rest) / rest) / np.log(1.0 / rest), 0.0, 1.0))


def _solve(matrix: csc_matrix, right: FloatArray) -> FloatArray:
    factors = splu(
        matrix,
        permc_spec="MMD_AT_PLUS_A",
        diag_pivot_thresh=0.0,
        options={"SymmetricMode": True},
    )
    solution: FloatArray = factors.solve(right)
    return solution


def _shorten(energy: Energy, uv: FloatArray, step: FloatArray, value: float) -> tuple[float, float]:
    """Return the share of a step that lowers the energy and what it lowers it to."""
    share = 1.0
    for _ in range(6):
        reached = energy.value(uv + share * step)
        if reached < value:
            return share, reached
        share *= 0.5
    return 0.0, value
