"""Simply supported rectangles by Navier's double sine series, with transverse shear.

Exact for laminates without coupling (B, D16 and D26 are zero); other rectangles are estimated
by `laywright.laminate.plate`.  Source: Reddy 2004, sections 5.2 (thin) and 7.2 (with
first-order shear deformation).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray

__all__ = ["navier_buckling", "navier_deflection"]


def navier_deflection(
    bending: ArrayLike,
    size: tuple[float, float],
    pressure: float,
    shear: tuple[float, float] | None = None,
    terms: int = 99,
) -> float:
    """Return the deflection of the middle under an even pressure, mm.

    Parameters
    ----------
    bending : (3, 3) array_like, N mm
        D, of which 16 and 26 are left out.
    size : tuple of float, mm
        Length along x and y.
    pressure : float, MPa
    shear : tuple of float, N/mm, optional
        Transverse shear stiffness along x and y; None leaves transverse shear out.
    terms : int
        Largest number of half waves along each side.

    Examples
    --------
    An even square plate with Poisson's ratio 0.3 bends by 0.00406 q a^4 / D (Timoshenko and
    Woinowsky-Krieger 1959, table 8).

    >>> even = [[1.0, 0.3, 0.0], [0.3, 1.0, 0.0], [0.0, 0.0, 0.35]]
    >>> round(navier_deflection(even, (1.0, 1.0), 1.0), 5)
    0.00406
    """
    waves = np.arange(1, terms + 1, 2)
    m, n = np.meshgrid(waves, waves, indexing="ij")
    load = 16.0 * pressure / (np.pi**2 * m * n)
    sign = np.sin(m * np.pi / 2.0) * np.sin(n * np.pi / 2.0)
    return float((sign * load / _resistance(bending, size, shear, m, n)).sum())


def navier_buckling(
    bending: ArrayLike,
    size: tuple[float, float],
    force: tuple[float, float],
    shear: tuple[float, float] | None = None,
    terms: int = 20,
) -> float:
    """Return the factor of growth of in-plane forces at which a rectangle buckles.

    Parameters
    ----------
    bending, size, shear
        As for `navier_deflection`.
    force : tuple of float, N/mm
        Along x and y, negative where it presses.
    terms : int
        Largest number of half waves along each side.

    Returns
    -------
    float
        Infinite where nothing presses.
    """
    waves = np.arange(1, terms + 1)
    m, n = np.meshgrid(waves, waves, indexing="ij")
    pressing = -force[0] * (m * np.pi / size[0]) ** 2 - force[1] * (n * np.pi / size[1]) ** 2
    resistance = _resistance(bending, size, shear, m, n)
    some = pressing > 0.0
    return float((resistance[some] / pressing[some]).min()) if some.any() else float("inf")


def _resistance(
    bending: ArrayLike,
    size: tuple[float, float],
    shear: tuple[float, float] | None,
    m: FloatArray,
    n: FloatArray,
) -> FloatArray:
    """Return the pressure for each wave of unit deflection, MPa per mm."""
    d = np.asarray(bending, dtype=np.float64)
    x, y = m * np.pi / size[0], n * np.pi / size[1]
    thin = d[0, 0] * x**4 + 2.0 * (d[0, 1] + 2.0 * d[2, 2]) * x**2 * y**2 + d[1, 1] * y**4
    if shear is None:
        return np.asarray(thin)
    hx, hy = shear
    matrix = np.empty((*x.shape, 3, 3))
    matrix[..., 0, 0] = hx * x**2 + hy * y**2
    matrix[..., 0, 1] = matrix[..., 1, 0] = hx * x
    matrix[..., 0, 2] = matrix[..., 2, 0] = hy * y
    matrix[..., 1, 1] = d[0, 0] * x**2 + d[2, 2] * y**2 + hx
    matrix[..., 1, 2] = matrix[..., 2, 1] = (d[0, 1] + d[2, 2]) * x * y
    matrix[..., 2, 2] = d[2, 2] * x**2 + d[1, 1] * y**2 + hy
    return np.asarray(1.0 / np.linalg.inv(matrix)[..., 0, 0])
