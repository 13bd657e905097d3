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
from scipy.sparse import csc_matrix, csr_matrix, diags
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
_LARGEST_MISS = 0.3


@dataclass(frozen=True, eq=False)
class Sheet:
    """What the energies of all cloths on one surface share.

    Attributes
    ----------
    surface : Surface
        Without triangles of no area.
    like : Sheet or None
        One with the same triangles on other points: what depends on the triangles alone, the
        order of elimination and the places of the matrix's entries, is taken from it.
    """

    surface: Surface
    like: Sheet | None = None

    @property
    def _twin(self) -> Sheet | None:
        known = self.like
        if known is None or not np.array_equal(known.surface.triangles, self.surface.triangles):
            return None
        return known

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
        twin = self._twin
        if twin is not None:
            return twin.elimination
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
        twin = self._twin
        if twin is not None:
            return twin.keys
        size = len(self.rank)
        own = self.rank[self.unknowns]
        every = np.repeat(own, 6, axis=1).ravel() * size + np.tile(own, (1, 6)).ravel()
        distinct, place = np.unique(every, return_inverse=True)
        return distinct, place.ravel()

    @cached_property
    def facets(self) -> csr_matrix:
        """Matrix from values at the vertices to the gradients of the facets: (2 m, n)."""
        triangles = self.surface.triangles
        down = np.repeat(np.arange(2 * len(triangles)), 3)
        across = np.repeat(triangles, 2, axis=0).ravel()
        shape = (2 * len(triangles), len(self.surface.vertices))
        return csr_matrix((self.gradients.ravel(), (down, across)), shape=shape)

    def rounded(self, uv: FloatArray) -> csr_matrix:
        """Return the same with what facets miss of curved maps added back: (2 m, n).

        Triangles so coarse that this would come near to crushing them at `uv` go without.
        """
        facets = _read(self.facets, uv)
        missed = _read(self.recovery.missed, uv)
        squares = (facets**2).sum(axis=(1, 2))
        twice = 2.0 * (facets[:, 0, 0] * facets[:, 1, 1] - facets[:, 0, 1] * facets[:, 1, 0])
        least = (np.sqrt(squares + twice) - np.sqrt(np.maximum(squares - twice, 0.0))) / 2.0
        fine = np.sqrt((missed**2).sum(axis=(1, 2))) < _LARGEST_MISS * least
        kept = diags(np.repeat(fine.astype(float), 2))
        return (self.facets + kept @ self.recovery.missed).tocsr()


class Factors:
    """A factored matrix."""

    def __init__(self, matrix: csc_matrix, elimination: IntArray) -> None:
        self._elimination = elimination
        self._factors = splu(
            matrix, permc_spec="NATURAL", diag_pivot_thresh=0.0, options={"SymmetricMode": True}
        )

    def divide(self, slope: FloatArray) -> FloatArray:
        """Return a slope divided by the matrix: (2 n,) float, both by vertices."""
        divided = np.empty_like(slope)
        divided[self._elimination] = self._factors.solve(slope[self._elimination])
        return divided


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
    reading : (2 m, n) sparse, optional
        Matrix that reads the gradients of a field in the triangles: `Sheet.facets` without
        it, `Sheet.rounded` for strain that is right in the second order.
    """

    def __init__(
        self, sheet: Sheet, fabric: Fabric, rows: Rows, reading: csr_matrix | None = None
    ) -> None:
        self.sheet = sheet
        self._rows = rows
        self._reading = sheet.facets if reading is None else reading
        self._locking = fabric.locking_angle
        share = np.sqrt(sheet.surface.areas / sheet.surface.area)
        stiffness = np.sqrt([fabric.warp, fabric.weft, fabric.shear, fabric.locked])
        self._weights = share[:, None] * stiffness

    @cached_property
    def _gather(self) -> csr_matrix:
        return self._reading.T.tocsr()

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

    def jacobians(self, uv: FloatArray) -> FloatArray:
        """Return d(u, v)/d(x, y) in every triangle, as this energy reads it: (m, 2, 2) float."""
        return _read(self._reading, uv)

    def value_and_slope(self, uv: FloatArray) -> tuple[float, FloatArray]:
        """Return the energy and half its gradient, (2 n,) float.

        The energy is infinite where a triangle is turned over, read either way.
        """
        strain = _Strained(self.jacobians(uv), self._locking)
        facets = strain if self._reading is self.sheet.facets else None
        flat = facets or _Strained(_read(self.sheet.facets, uv), self._locking)
        if strain.det.min() <= 0.0 or flat.det.min() <= 0.0:
            return np.inf, np.zeros(uv.size)
        weighted = strain.residual * self._weights
        lack: FloatArray = self._rows.matrix @ uv.ravel() - self._rows.targets
        pull = np.einsum("mr,mrwx->mwx", weighted * self._weights, strain.derivatives)
        slope = (self._gather @ pull.transpose(0, 2, 1).reshape(-1, 2)).ravel()
        value = float((weighted**2).sum() + lack @ lack)
        return value, slope + self._rows.matrix.T @ lack

    def matrix(self, uv: FloatArray) -> csc_matrix:
        """Return the Gauss-Newton matrix of the facets, in the order of `Sheet.elimination`."""
        strain = _Strained(_read(self.sheet.facets, uv), self._locking)
        by = strain.derivatives * self._weights[:, :, None, None]
        local = np.matmul(by, self.sheet.gradients[:, None])  # (m, residual, u or v, corner)
        local = local.transpose(0, 1, 3, 2).reshape(-1, _RESIDUALS, 6)
        down, starts, place, fixed = self._pattern
        block = np.matmul(local.transpose(0, 2, 1), local)
        entries = fixed + np.bincount(place, weights=block.ravel(), minlength=len(down))
        return csc_matrix((entries, down, starts), shape=(uv.size, uv.size))


class _Strained:
    """Residuals of the strain, (m, 4): warp, weft, shear, shear past locking."""

    def __init__(self, jacobians: FloatArray, locking: float) -> None:
        self._u, self._v = jacobians[:, 0], jacobians[:, 1]
        u, v = self._u, self._v
        self.det = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
        self._locking = locking

    @cached_property
    def _lengths(self) -> tuple[FloatArray, FloatArray, FloatArray]:
        u, v = self._u, self._v
        return np.sqrt((u * u).sum(axis=1)), np.sqrt((v * v).sum(axis=1)), (u * v).sum(axis=1)

    @cached_property
    def residual(self) -> FloatArray:
        length_u, length_v, dot = self._lengths
        shear = np.arctan2(-dot, self.det)
        past = np.sign(shear) * np.maximum(np.abs(shear) - self._locking, 0.0)
        return np.stack([length_v / self.det - 1.0, length_u / self.det - 1.0, shear, past], axis=1)

    @property
    def derivatives(self) -> FloatArray:
        """Derivatives by d(u, v)/d(x, y): (m, 4, 2, 2) float."""
        u, v, det = self._u, self._v, self.det
        length_u, length_v, dot = self._lengths
        det_by_u = np.stack([v[:, 1], -v[:, 0]], axis=1)
        det_by_v = np.stack([-u[:, 1], u[:, 0]], axis=1)
        warp, weft = length_v / det, length_u / det
        by = np.zeros((len(det), _RESIDUALS, 2, 2))
        by[:, 0, 0] = -(warp / det)[:, None] * det_by_u
        by[:, 0, 1] = v / (length_v * det)[:, None] - (warp / det)[:, None] * det_by_v
        by[:, 1, 0] = u / (length_u * det)[:, None] - (weft / det)[:, None] * det_by_u
        by[:, 1, 1] = -(weft / det)[:, None] * det_by_v
        squared = (length_u * length_v) ** 2
        by[:, 2, 0] = (dot[:, None] * det_by_u - det[:, None] * v) / squared[:, None]
        by[:, 2, 1] = (dot[:, None] * det_by_v - det[:, None] * u) / squared[:, None]
        by[:, 3] = by[:, 2] * (self.residual[:, 3] != 0.0)[:, None, None]
        return by


def _read(reading: csr_matrix, uv: FloatArray) -> FloatArray:
    jacobians: FloatArray = (reading @ uv).reshape(-1, 2, 2).transpose(0, 2, 1)
    return jacobians
