"""The strain energy of a cloth on a surface, its slope and its Gauss-Newton matrix.

Unknowns are the flat coordinates (u, v) of every vertex.  The energy is the mean over the area
of ``k_warp warp^2 + k_weft weft^2 + k_shear shear^2`` (see `laywright.cloth.drape.strain`), past
the locking angle with ``k_locked (|shear| - locking)^2`` on top, plus the rows by which the cloth
is held.  Stretch grows without bound as a triangle is crushed, so the energy is its own barrier.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from scipy.sparse import csc_matrix, csr_matrix, diags
from scipy.sparse.linalg import splu

from laywright.arrays import Array, FloatArray, IntArray
from laywright.cloth.drape.dissection import dissection
from laywright.cloth.drape.fabric import Fabric
from laywright.cloth.drape.hold import Rows
from laywright.cloth.drape.recovery import Recovery
from laywright.cloth.drape.rigid import Rigid
from laywright.cloth.drape.strain import facet_gradients
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
    def rigid(self) -> Rigid:
        """Flat maps of a sheet that is alike in all directions."""
        twin = self._twin
        return Rigid(self.surface, None if twin is None else twin.rigid)

    @cached_property
    def order(self) -> IntArray:
        """Vertices in the order in which the matrix eliminates them: (n,) int."""
        twin = self._twin
        return dissection(self.surface) if twin is None else twin.order

    @cached_property
    def elimination(self) -> IntArray:
        """Unknowns in the order in which the matrix eliminates them: (2 n,) int."""
        unknowns: IntArray = np.stack([2 * self.order, 2 * self.order + 1], axis=1).ravel()
        return unknowns

    @cached_property
    def pattern(self) -> tuple[Array, Array, Array]:
        """Entries of the matrix that triangles fill.

        Rows and column starts of the matrix in the order of elimination, and the place among
        its entries of each of the (m, 6, 6) that triangles bring, u and v of each corner in
        turn.
        """
        twin = self._twin
        if twin is not None:
            return twin.pattern
        size = len(self.order)
        rank = np.empty(size, dtype=np.int64)
        rank[self.order] = np.arange(size)
        own = rank[self.surface.triangles]
        ends = rank[self.surface.edges.ends]
        keys = np.concatenate(
            [ends @ [size, 1], ends @ [1, size], np.arange(size) * (size + 1)]
        )  # column times size plus row: every entry once
        keys.sort()
        column, row = np.divmod(keys, size)
        starts = np.searchsorted(column, np.arange(size + 1))
        high = np.diff(starts)
        slot = np.searchsorted(keys, own[:, None, :] * size + own[:, :, None])  # (m, row, column)
        across = 2 * high[own]
        first = 2 * slot + 2 * starts[own][:, None, :]  # of a block of 2 x 2
        place = first[:, :, None, :, None] + np.arange(2)[:, None, None]
        place = place + across[:, None, None, :, None] * np.arange(2)
        taller = np.repeat(2 * high, 2)
        down = np.empty(4 * len(keys), dtype=np.int32)
        upper = 2 * np.arange(len(keys)) + 2 * starts[column]
        for unknown in range(2):
            for other in range(2):
                down[upper + unknown + 2 * high[column] * other] = 2 * row + unknown
        return down, np.concatenate([[0], np.cumsum(taller)]), place.ravel()

    @cached_property
    def facets(self) -> csr_matrix:
        """Matrix from values at the vertices to the gradients of the facets: (2 m, n).

        Along x of every triangle first, then along y.
        """
        triangles = self.surface.triangles
        starts = np.arange(0, 6 * len(triangles) + 1, 3)
        entries = self.gradients.transpose(1, 0, 2).ravel()
        shape = (2 * len(triangles), len(self.surface.vertices))
        return csr_matrix((entries, np.tile(triangles.ravel(), 2), starts), shape=shape)

    def rounded(self, uv: FloatArray) -> csr_matrix:
        """Return the same with what facets miss of curved maps added back: (2 m, n).

        Triangles so coarse that this would come near to crushing them at `uv` go without.
        """
        a, b, c, d = _read(self.facets, uv)
        missed = np.stack(_read(self.recovery.missed, uv))
        squares, twice = a * a + b * b + c * c + d * d, 2.0 * (a * d - b * c)
        least = (np.sqrt(squares + twice) - np.sqrt(np.maximum(squares - twice, 0.0))) / 2.0
        fine = (missed**2).sum(axis=0) < (_LARGEST_MISS * least) ** 2
        if fine.all():
            return self.facets + self.recovery.missed
        kept = diags(np.tile(fine.astype(float), 2))
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
        share = sheet.surface.areas / sheet.surface.area
        stiffness = (fabric.warp, fabric.weft, fabric.shear, fabric.locked)
        self._weights = np.stack([share * each for each in stiffness])

    @cached_property
    def _gather(self) -> csr_matrix:
        return self._reading.T.tocsr()

    @cached_property
    def _held(self) -> csc_matrix:
        """What holds the cloth, in the order of elimination."""
        rows = self._rows.matrix.tocsc()[:, self.sheet.elimination]
        return (rows.T @ rows).tocsc()

    def jacobians(self, uv: FloatArray) -> FloatArray:
        """Return d(u, v)/d(x, y) in every triangle, as this energy reads it: (m, 2, 2) float."""
        a, b, c, d = _read(self._reading, uv)
        jacobians: FloatArray = np.stack([a, b, c, d], axis=1).reshape(-1, 2, 2)
        return jacobians

    def value_and_slope(self, uv: FloatArray) -> tuple[float, FloatArray]:
        """Return the energy and half its gradient, (2 n,) float.

        The energy is infinite where a triangle is turned over, read either way.
        """
        read = _read(self._reading, uv)
        flat = read if self._reading is self.sheet.facets else _read(self.sheet.facets, uv)
        if any((a * d - b * c).min() <= 0.0 for a, b, c, d in (read, flat)):
            return np.inf, np.zeros(uv.size)
        strained = _Strained(read, self._locking)
        lack: FloatArray = self._rows.matrix @ uv.ravel() - self._rows.targets
        value = float((self._weights * strained.residual**2).sum() + lack @ lack)
        along, across = strained.pull(self._weights)
        slope = np.stack([self._gather @ along, self._gather @ across], axis=1).ravel()
        return value, slope + self._rows.matrix.T @ lack

    def matrix(self, uv: FloatArray) -> csc_matrix:
        """Return the Gauss-Newton matrix of the facets, in the order of `Sheet.elimination`."""
        strained = _Strained(_read(self.sheet.facets, uv), self._locking)
        by = strained.derivatives * np.sqrt(self._weights.T)[:, :, None, None]
        local = np.matmul(by, self.sheet.gradients[:, None])  # (m, residual, u or v, corner)
        local = local.transpose(0, 1, 3, 2).reshape(-1, _RESIDUALS, 6)
        down, starts, place = self.sheet.pattern
        block = np.matmul(local.transpose(0, 2, 1), local)
        entries = np.bincount(place, weights=block.ravel(), minlength=len(down))
        return csc_matrix((entries, down, starts), shape=(uv.size, uv.size)) + self._held


class _Strained:
    """Residuals of the strain, (4, m): warp, weft, shear, shear past locking.

    From the gradients ``(a, b)`` of u and ``(c, d)`` of v, (m,) float each.
    """

    def __init__(self, read: _Read, locking: float) -> None:
        self._read = a, b, c, d = read
        self._det, self._dot = a * d - b * c, a * c + b * d
        self._length_u, self._length_v = np.sqrt(a * a + b * b), np.sqrt(c * c + d * d)
        shear = np.arctan2(-self._dot, self._det)
        past = np.sign(shear) * np.maximum(np.abs(shear) - locking, 0.0)
        warp, weft = self._length_v / self._det, self._length_u / self._det
        self.residual: FloatArray = np.stack([warp - 1.0, weft - 1.0, shear, past])

    def pull(self, weights: FloatArray) -> tuple[FloatArray, FloatArray]:
        """Return half the derivative of the weighted squares by both gradients: (2 m,) each."""
        a, b, c, d = self._read
        det, length_u, length_v = self._det, self._length_u, self._length_v
        warp, weft, shear, past = weights * self.residual
        turn = (shear + past) / (length_u * length_v) ** 2
        by_det = turn * self._dot - (warp * length_v + weft * length_u) / det**2
        own_u, own_v, other = weft / (length_u * det), warp / (length_v * det), turn * det
        along = np.concatenate([by_det * d + own_u * a - other * c, own_u * b - by_det * c])
        along[len(a) :] -= other * d
        across = np.concatenate([own_v * c - by_det * b - other * a, by_det * a + own_v * d])
        across[len(a) :] -= other * b
        return along, across

    @property
    def derivatives(self) -> FloatArray:
        """Derivatives of the residuals by both gradients: (m, 4, 2, 2) float."""
        a, b, c, d = self._read
        det, dot = self._det, self._dot
        by = np.zeros((len(det), _RESIDUALS, 2, 2))
        by_det = ((d, -c), (-b, a))  # derivatives of the determinant
        whole = ((a, b), (c, d))
        squared = (self._length_u * self._length_v) ** 2
        for residual, (mine, other) in enumerate(((1, self._length_v), (0, self._length_u))):
            size = other / det**2
            for axis in range(2):
                by[:, residual, 0, axis] = -size * by_det[0][axis]
                by[:, residual, 1, axis] = -size * by_det[1][axis]
                by[:, residual, mine, axis] += whole[mine][axis] / (other * det)
        for row in range(2):
            for axis in range(2):
                by[:, 2, row, axis] = (
                    dot * by_det[row][axis] - det * whole[1 - row][axis]
                ) / squared
        by[:, 3] = by[:, 2] * (self.residual[3] != 0.0)[:, None, None]
        return by


_Read = tuple[FloatArray, FloatArray, FloatArray, FloatArray]


def _read(reading: csr_matrix, uv: FloatArray) -> _Read:
    """Return the gradients ``(a, b)`` of u and ``(c, d)`` of v in the triangles, (m,) each."""
    half = reading.shape[0] // 2
    u, v = reading @ np.ascontiguousarray(uv[:, 0]), reading @ np.ascontiguousarray(uv[:, 1])
    return u[:half], u[half:], v[:half], v[half:]
