"""The rectangular plate by Ritz's method, with transverse shear, simply supported or clamped.

Deflection and the two rotations of the normal are polynomials that keep to the supports; the
least energy gives their coefficients (Ritz 1909; the energy of first-order shear deformation
from Reddy 2004, chapter 3).  D16 and D26 are followed, B is not.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import numpy as np
from numpy.polynomial import legendre
from scipy.linalg import cho_factor, cho_solve, eigh

from laywright.arrays import FloatArray

__all__ = ["PlateState", "RitzPlate", "Support"]

_TERMS = 10
_POINTS = legendre.leggauss(_TERMS + 4)
_NOTHING = 1e-12


class Support(Enum):
    """How all four edges are held."""

    SIMPLE = "simply supported"
    CLAMPED = "clamped"


class _Kind(Enum):
    """Whether functions of one coordinate vanish at both ends."""

    HELD = "held"
    FREE = "free"


# Functions along x and along y of the deflection and of the rotations about y and about x.
_FIELDS = {
    Support.SIMPLE: (
        (_Kind.HELD, _Kind.HELD),
        (_Kind.FREE, _Kind.HELD),
        (_Kind.HELD, _Kind.FREE),
    ),
    Support.CLAMPED: ((_Kind.HELD, _Kind.HELD),) * 3,
}


@dataclass(frozen=True, eq=False)
class PlateState:
    """What happens at a place of a plate.

    Attributes
    ----------
    deflection : float, mm
    moment : (3,) float, N
        Per width, along x, along y, twist.
    shear : (2,) float, N/mm
        Transverse shear per width, across x and across y.
    """

    deflection: float
    moment: FloatArray
    shear: FloatArray


class RitzPlate:
    """A rectangle whose energy is at hand.

    Parameters
    ----------
    bending : (3, 3) float, N mm
        D.
    shear : (2,) float, N/mm
        Transverse shear stiffness along x and y.
    size : tuple of float, mm
        Length along x and y.
    support : Support
    """

    def __init__(
        self,
        bending: FloatArray,
        shear: FloatArray,
        size: tuple[float, float],
        support: Support,
    ) -> None:
        self._bending, self._shear = bending, shear
        self._size, self._fields = size, _FIELDS[support]
        self._counts = [
            len(_values(along, 0.0)[0]) * len(_values(across, 0.0)[0])
            for along, across in self._fields
        ]
        points, weights = _POINTS
        x, y = np.meshgrid(points, points, indexing="ij")
        self._weights = np.outer(weights, weights).ravel() * size[0] * size[1] / 4.0
        self._curvature, self._sheared, self._deflection, self._slopes = self._rows(
            x.ravel(), y.ravel()
        )
        self._stiffness = self._summed(self._curvature, bending) + self._summed(
            self._sheared, np.diag(shear)
        )

    def deflected(self, pressure: float) -> FloatArray:
        """Return the coefficients under an even pressure, MPa."""
        load = pressure * self._weights @ self._deflection
        return np.asarray(cho_solve(cho_factor(self._stiffness), load))

    def buckling(self, force: tuple[float, float, float]) -> float:
        """Return the factor of growth of in-plane forces (N/mm, per width) at which it buckles.

        Infinite where nothing presses.
        """
        held = np.array([[force[0], force[2]], [force[2], force[1]]])
        pressing = -self._summed(self._slopes, held)
        size = float(np.abs(held).max()) or 1.0
        largest = float(eigh(pressing / size, self._stiffness, eigvals_only=True)[-1]) * size
        return 1.0 / largest if largest > _NOTHING else float("inf")

    def at(self, coefficients: FloatArray, x: float, y: float) -> PlateState:
        """Return the state at a place, x and y from -1 to 1 across the rectangle."""
        curvature, sheared, deflection, _ = self._rows(np.array([x]), np.array([y]))
        return PlateState(
            float((deflection @ coefficients)[0]),
            np.asarray(self._bending @ (curvature @ coefficients)[:, 0]),
            np.asarray(self._shear * (sheared @ coefficients)[:, 0]),
        )

    def _summed(self, rows: FloatArray, weight: FloatArray) -> FloatArray:
        """Return the integral of the products of rows, weighted with a matrix."""
        count = rows.shape[-1]
        weighted = np.tensordot(weight, rows, 1) * self._weights[:, None]
        return np.asarray(rows.reshape(-1, count).T @ weighted.reshape(-1, count))

    def _rows(
        self, x: FloatArray, y: FloatArray
    ) -> tuple[FloatArray, FloatArray, FloatArray, FloatArray]:
        """Return curvature, transverse shear, deflection and its slopes of each coefficient."""
        a, b = self._size
        total = sum(self._counts)
        curvature = np.zeros((3, len(x), total))
        sheared = np.zeros((2, len(x), total))
        deflection = np.zeros((len(x), total))
        slopes = np.zeros((2, len(x), total))
        start = 0
        for field, ((along, across), count) in enumerate(
            zip(self._fields, self._counts, strict=True)
        ):
            own = slice(start, start + count)
            start += count
            (fx, dx), (fy, dy) = _values(along, x), _values(across, y)
            value = np.einsum("ap,bp->pab", fx, fy).reshape(len(x), count)
            by_x = np.einsum("ap,bp->pab", dx * 2.0 / a, fy).reshape(len(x), count)
            by_y = np.einsum("ap,bp->pab", fx, dy * 2.0 / b).reshape(len(x), count)
            if field == 0:
                deflection[:, own] = value
                slopes[0, :, own], slopes[1, :, own] = by_x, by_y
                sheared[0, :, own], sheared[1, :, own] = by_x, by_y
            else:
                axis = field - 1
                sheared[axis, :, own] = value
                curvature[axis, :, own] = (by_x, by_y)[axis]
                curvature[2, :, own] = (by_y, by_x)[axis]
        return curvature, sheared, deflection, slopes


def _values(kind: _Kind, place: FloatArray | float) -> tuple[FloatArray, FloatArray]:
    """Return the functions of one coordinate and their slopes at places from -1 to 1."""
    at = np.atleast_1d(np.asarray(place, dtype=np.float64))
    count = _TERMS if kind is _Kind.HELD else _TERMS + 1
    value = np.stack([legendre.Legendre.basis(i)(at) for i in range(count)])
    slope = np.stack([legendre.Legendre.basis(i).deriv()(at) for i in range(count)])
    if kind is _Kind.FREE:
        return value, slope
    bubble = 1.0 - at**2
    return bubble * value, bubble * slope - 2.0 * at * value
