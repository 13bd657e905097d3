"""The strain energy of a cloth on a surface, its slope and its Gauss-Newton matrix.

Unknowns are the flat coordinates (u, v) of every vertex.  The energy is the mean over the area
of ``k_warp warp^2 + k_weft weft^2 + k_shear shear^2`` (see `laywright.cloth.strain`), past the
locking angle with ``k_locked (|shear| - locking)^2`` on top, plus the rows by which the cloth
is held.  Stretch grows without bound as a triangle is crushed, so the energy is its own barrier.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from scipy.sparse import csc_matrix, csr_matrix
from scipy.sparse.linalg import splu

from laywright.arrays import Array, FloatArray, IntArray
from laywright.cloth.dissection import dissection
from laywright.cloth.fabric import Fabric
from laywright.cloth.hold import Rows
from laywright.cloth.recovery import Recovery
from laywright.cloth.strain import facet_gradients
from laywright.surface.triangles import Surface

__all__ = ["Energy", "Factors", "Sheet"]

_RESIDUALS = 4


@dataclass(frozen=True, eq=False)
class Sheet:
    """What the energies of all cloths on one surface share.

    Attributes
    ----------
    surface : Surface
        Without triangles of no area.
    """

    surface: Surface

    @cached_property
    def gradients(self) -> FloatArray:
        """Gradients of the hat functions: (m, 2, 3) float, 1/mm."""
        return facet_gradients(self.surface)

    @cached_property
    def recovery(self) -> Recovery:
        """Fitted gradients."""
        return Recovery(self.surface)

    @cached_property
    def unknowns(self) -> IntArray:
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
    def rank(self) -> IntArray:
        """Place of every unknown in the order of elimination: (2 n,) int."""
        rank = np.empty(2 * len(self.surface.vertices), dtype=np.int64)
        rank[self.elimination] = np.arange(len(rank))
        return rank

    @cached_property
    def keys(self) -> tuple[Array, Array]:
        """Entries of the matrix that triangles fill, as column times size plus row.

        The distinct ones, sorted, and which of them each of the (m, 6, 6) entries is.
        """
        size = len(self.rank)
        own = self.rank[self.unknowns]
        every = np.repeat(own, 6, axis=1).ravel() * size + np.tile(own, (1, 6)).ravel()
        distinct, place = np.unique(every, return_inverse=True)
        return distinct, place.ravel()

    @cached_property
    def _linear(self) -> csr_matrix:
        """Matrix from values at the vertices to the gradients of the facets: (2 m, n)."""
        triangles = self.surface.triangles
        down = np.repeat(np.arange(2 * len(triangles)), 3)
        across = np.repeat(triangles, 2, axis=0).ravel()
        shape = (2 * len(triangles), len(self.surface.vertices))
        return csr_matrix((self.gradients.ravel(), (down, across)), shape=shape)

    def jacobians(self, uv: FloatArray) -> FloatArray:
        """Return d(u, v)/d(x, y) of every facet: (m, 2, 2) float."""
        jacobians: FloatArray = (self._linear @ uv).reshape(-1, 2, 2).transpose(0, 2, 1)
        return jacobians


class Factors:
    """A factored matrix."""

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


class Energy:
    """The strain energy of one fabric on one surface.

    Parameters
    ----------
    sheet : Sheet
        The surface.
    fabric : Fabric
        The stiffnesses.
    rows : Rows
        What holds the cloth.
    """

    def __init__(self, sheet: Sheet, fabric: Fabric, rows: Rows) -> None:
        self.sheet = sheet
        self._rows = rows
        self._locking = fabric.locking_angle
        share = np.sqrt(sheet.surface.areas / sheet.surface.area)
        stiffness = np.sqrt([fabric.warp, fabric.weft, fabric.shear, fabric.locked])
        self._weights = share[:, None] * stiffness

    @cached_property
    def _pattern(self) -> tuple[Array, Array, Array, Array]:
        """Rows and column starts of the matrix, where triangles fill it, what holds the cloth."""
        rank = self.sheet.rank
        size = len(rank)
        filled, place = self.sheet.keys
        held = (self._rows.matrix.T @ self._rows.matrix).tocoo()
        further = rank[held.col].astype(np.int64) * size + rank[held.row]
        keys = np.union1d(filled, further)
        fixed: Array = np.bincount(
            np.searchsorted(keys, further), weights=held.data, minlength=len(keys)
        )
        starts = np.searchsorted(keys, np.arange(size + 1) * size)
        return keys % size, starts, np.searchsorted(keys, filled)[place], fixed

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
        facets = self.sheet.jacobians(uv)
        u, v, det = _split(facets + missed)
        if det.min() <= 0.0 or _split(facets)[2].min() <= 0.0:
            return np.inf
        shear = np.arctan2(-_dot(u, v), det)
        residual = np.stack(
            [
                np.sqrt(_dot(v, v)) / det - 1.0,
                np.sqrt(_dot(u, u)) / det - 1.0,
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
    ) -> tuple[FloatArray, csc_matrix]:
        """Return half the gradient and the Gauss-Newton matrix.

        The matrix stands in the order of `Sheet.elimination`.
        """
        local, residual = self._linearised(uv, missed)
        down, starts, place, fixed = self._pattern
        block = np.matmul(local.transpose(0, 2, 1), local)
        entries = fixed + np.bincount(place, weights=block.ravel(), minlength=len(down))
        matrix = csc_matrix((entries, down, starts), shape=(uv.size, uv.size))
        return self._gathered(uv, local, residual), matrix

    def _gathered(self, uv: FloatArray, local: FloatArray, residual: FloatArray) -> FloatArray:
        slope: Array = np.bincount(
            self.sheet.unknowns.ravel(),
            weights=np.matmul(residual[:, None], local).ravel(),
            minlength=uv.size,
        )
        total: FloatArray = slope + self._rows.matrix.T @ self._lack(uv)
        return total

    def _linearised(
        self, uv: FloatArray, missed: FloatArray | float
    ) -> tuple[FloatArray, FloatArray]:
        """Return the weighted residuals, (m, 4), and their derivatives, (m, 4, 6)."""
        u, v, det = _split(self.sheet.jacobians(uv) + missed)
        length_u = np.sqrt(_dot(u, u))
        length_v = np.sqrt(_dot(v, v))
        dot = _dot(u, v)
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
        local = np.matmul(by, self.sheet.gradients[:, None])  # (m, residual, u or v, corner)
        return local.transpose(0, 1, 3, 2).reshape(-1, _RESIDUALS, 6), residual * self._weights


def _split(jacobians: FloatArray) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Return the gradients of u and v, (m, 2) float each, and their determinant."""
    u, v = jacobians[:, 0], jacobians[:, 1]
    return u, v, u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]


def _dot(u: FloatArray, v: FloatArray) -> FloatArray:
    return np.asarray(u[:, 0] * v[:, 0] + u[:, 1] * v[:, 1], dtype=np.float64)
