"""Flat maps of a sheet that is alike in all directions, from one factored matrix.

With ``z = u + i v`` a map has in a facet the two complex numbers ``w = z_x - i z_y`` and
``w' = z_x + i z_y``; its principal scales are ``(|w| + |w'|) / 2`` and ``(|w| - |w'|) / 2`` and
its nearest rotation turns by the argument of ``w``.  As rigid as possible is the map nearest to
rotations (L. Liu et al., A local/global approach to mesh parameterization, 2008): one of its
rounds is a step by the Laplace matrix, and the memory of the last steps saves most rounds.  The
sheet itself is laid the same way by its own energy, the mean of both squared principal
stretches, which grows without bound as a triangle is crushed.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from scipy.sparse import csr_matrix
from scipy.sparse.linalg import splu

from laywright.arrays import Array, FloatArray
from laywright.cloth.drape.descent import Descent, descend
from laywright.cloth.drape.strain import facet_gradients
from laywright.surface.triangles import Surface

__all__ = ["Rigid"]

_TINY = 1e-12


@dataclass(frozen=True, eq=False)
class Rigid:
    """What all such maps of one surface share.

    Attributes
    ----------
    surface : Surface
        One piece, mm, without triangles of no area.
    like : Rigid or None
        Of a surface that lies close by and has the same triangles: its factored matrix is used.
    """

    surface: Surface
    like: Rigid | None = None

    @cached_property
    def _reading(self) -> csr_matrix:
        """Matrix from z at the vertices to w in the facets: (m, n) complex."""
        surface = self.surface
        gradients = facet_gradients(surface)
        starts = np.arange(0, 3 * len(surface.triangles) + 1, 3)
        entries = (gradients[:, 0] - 1j * gradients[:, 1]).ravel()
        shape = (len(surface.triangles), len(surface.vertices))
        return csr_matrix((entries, surface.triangles.ravel(), starts), shape=shape)

    @cached_property
    def _gather(self) -> csr_matrix:
        return self._reading.conj().T.tocsr()

    @cached_property
    def _share(self) -> FloatArray:
        share: FloatArray = self.surface.areas / self.surface.area
        return share

    @cached_property
    def _factors(self) -> splu:
        """Factored Laplace matrix, the first point held: slopes without a mean push it nowhere."""
        if self.like is not None:
            return self.like._factors
        entries = self._reading.data.reshape(-1, 3)
        block = (entries.conj()[:, :, None] * entries[:, None, :]).real * self._share[:, None, None]
        triangles = self.surface.triangles
        down = np.append(np.repeat(triangles, 3, axis=1).ravel(), 0)
        across = np.append(np.tile(triangles, (1, 3)).ravel(), 0)
        size = len(self.surface.vertices)
        held = np.append(block.ravel(), block[:, 0, 0].mean())
        return splu(
            csr_matrix((held, (down, across)), shape=(size, size)).tocsc(),
            permc_spec="MMD_AT_PLUS_A",
            diag_pivot_thresh=0.0,
            options={"SymmetricMode": True},
        )

    def _read(self, place: FloatArray) -> tuple[Array, Array]:
        """Return w and the conjugate of w' in the facets: (m,) complex each."""
        z = place.view(complex)
        return self._reading @ z, self._reading @ z.conj()

    def _divide(self, slope: FloatArray) -> FloatArray:
        divided: FloatArray = self._factors.solve(slope.reshape(-1, 2)).ravel()
        return divided

    def _slope(self, by_w: Array, by_other: Array) -> FloatArray:
        pulled: Array = self._gather @ by_w + (self._gather @ by_other).conj()
        slope: FloatArray = pulled.view(float)
        return slope

    def _from_rotations(self, place: FloatArray) -> tuple[float, FloatArray]:
        """Return half the mean square of what the map lacks to rotations, and its slope."""
        w, other = self._read(place)
        size, off = np.abs(w), np.abs(other)
        if not (size > off).all():
            return np.inf, place
        value = 0.25 * ((size - 2.0) ** 2 + off * off)
        lack = 0.5 * self._share * (1.0 - 2.0 / size) * w
        return float(self._share @ value), self._slope(lack, 0.5 * self._share * other)

    def _stretched(self, place: FloatArray) -> tuple[float, FloatArray]:
        """Return half the mean of both squared principal stretches, and its slope."""
        w, other = self._read(place)
        size, off = np.abs(w), np.abs(other)
        if not (size > off).all():
            return np.inf, place
        more, less = 2.0 / (size + off), 2.0 / (size - off)
        value = 0.5 * ((more - 1.0) ** 2 + (less - 1.0) ** 2)
        by_more, by_less = (1.0 - more) * more * more, (1.0 - less) * less * less
        by_w = (0.5 * self._share) * (by_more + by_less) / size * w
        by_other = (0.5 * self._share) * (by_more - by_less) / np.maximum(off, _TINY) * other
        return float(self._share @ value), self._slope(by_w, by_other)

    def nearer(self, uv: FloatArray, most: int, rest: float) -> Descent:
        """Return a map nearer to rotations, from one that turns no triangle over.

        Parameters
        ----------
        uv : (n, 2) float, mm
            Where to start.
        most : int
            Largest number of rounds.
        rest : float, mm
            The end is where no point moves further.
        """
        return self._descend(self._from_rotations, uv, most, rest, _untold)

    def laid(
        self, uv: FloatArray, most: int, rest: float, tell: Callable[[float], None]
    ) -> Descent:
        """Return the map of a sheet with the least stretch; as `nearer`, `tell` told each step."""
        return self._descend(self._stretched, uv, most, rest, tell)

    def _descend(
        self,
        value_and_slope: Callable[[FloatArray], tuple[float, FloatArray]],
        uv: FloatArray,
        most: int,
        rest: float,
        tell: Callable[[float], None],
    ) -> Descent:
        start = np.ascontiguousarray(uv, dtype=np.float64).ravel()
        return descend(value_and_slope, self._divide, start, rest, most, tell)


def _untold(_moved: float) -> None:
    """Nobody asks how far it is."""
