"""Transverse shear: how a thick or cored laminate gives way across its thickness.

The shear stiffness of a laminate is not the sum over its plies, for the shear stress is not
even through the thickness.  It is found here from equilibrium: bending of a strip along one
direction gives the distribution of the shear stress, and the stiffness that stores the same
energy is the answer (Whitney 1973).  For one even plate that is 5/6 G h (Reissner 1945), for
thin faces on a soft core G d^2 / c (Allen 1969).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.laminate.lamina import Lamina
from laywright.laminate.rotation import rotated_stiffness
from laywright.laminate.stiffness import ply_bounds

__all__ = ["shear_flow", "through_moduli", "transverse_stiffness"]


def through_moduli(lamina: Lamina) -> tuple[float, float]:
    """Return the shear moduli 13 and 23 of a lamina, MPa.

    Where they are not given, the lamina is taken as the same in every direction across axis 1:
    13 equals 12, and 23 follows from Poisson's ratio 23 (Christensen 1988).
    """
    e1, e2, nu = lamina.modulus_1, lamina.modulus_2, lamina.poisson_12
    poisson_23 = nu * (1.0 - nu * e2 / e1) / (1.0 - nu) if nu < 1.0 else 0.0
    first = lamina.shear_13 if lamina.shear_13 is not None else lamina.shear_12
    second = lamina.shear_23 if lamina.shear_23 is not None else e2 / (2.0 * (1.0 + poisson_23))
    return first, second


def transverse_stiffness(
    plies: ArrayLike,
    angles: ArrayLike,
    thicknesses: ArrayLike,
    through: ArrayLike,
    direction: float = 0.0,
) -> FloatArray:
    """Return the shear force per width that a laminate carries for a unit of transverse shear.

    Parameters
    ----------
    plies : (..., k, 3, 3) array_like, MPa
        Stiffness of each ply in its own axes, ply 1 first.
    angles, thicknesses : (..., k) array_like, radians, mm
    through : (..., k, 2) array_like, MPa
        Shear moduli 13 and 23 of each ply.
    direction : float, radians
        Along which the laminate is bent, from the x axis.

    Returns
    -------
    numpy.ndarray
        (...) float, N/mm.

    Examples
    --------
    One even plate of 2 mm: 5/6 of the shear modulus times the thickness.

    >>> even = [[1e4, 3e3, 0.0], [3e3, 1e4, 0.0], [0.0, 0.0, 3e3]]
    >>> round(float(transverse_stiffness([even], [0.0], [2.0], [[3e3, 3e3]])), 6)
    5000.0
    """
    points, weights = np.polynomial.legendre.leggauss(3)  # exact for the square of a parabola
    t = np.asarray(thicknesses, dtype=np.float64)
    z = ply_bounds(t)
    heights = (z[..., 1:] + z[..., :-1])[..., None] / 2.0 + t[..., None] / 2.0 * points
    flow = _flow_at(heights, plies, angles, t, direction)
    turned = np.asarray(angles, dtype=np.float64) - direction
    g = np.asarray(through, dtype=np.float64)
    softness = np.cos(turned) ** 2 / g[..., 0] + np.sin(turned) ** 2 / g[..., 1]
    energy = (flow**2 @ weights / 2.0 * t * softness).sum(axis=-1)
    return np.asarray(1.0 / energy)


def shear_flow(
    plies: ArrayLike, angles: ArrayLike, thicknesses: ArrayLike, direction: float = 0.0
) -> FloatArray:
    """Return the largest shear stress in each ply under a unit of shear force per width.

    Parameters
    ----------
    plies, angles, thicknesses, direction
        As for `transverse_stiffness`.

    Returns
    -------
    numpy.ndarray
        (..., k) float, 1/mm.
    """
    z = ply_bounds(thicknesses)
    neutral, _ = _bending(plies, angles, thicknesses, direction)
    low, high = z[..., :-1], z[..., 1:]
    heights = np.stack([low, np.clip(neutral[..., None], low, high), high], axis=-1)
    return np.asarray(np.abs(_flow_at(heights, plies, angles, thicknesses, direction)).max(axis=-1))


def _flow_at(
    heights: FloatArray,
    plies: ArrayLike,
    angles: ArrayLike,
    thicknesses: ArrayLike,
    direction: float,
) -> FloatArray:
    """Return shear stress per shear force at heights inside each ply, (..., k, p) float."""
    modulus = _along(plies, angles, direction)[..., None]
    neutral, bending = _bending(plies, angles, thicknesses, direction)
    low = ply_bounds(thicknesses)[..., :-1, None]
    high = ply_bounds(thicknesses)[..., 1:, None]
    middle = neutral[..., None, None]

    def moment(upper: FloatArray) -> FloatArray:
        return np.asarray(modulus * (upper - low) * ((upper + low) / 2.0 - middle))

    below = np.cumsum(moment(high), axis=-2) - moment(high)
    return np.asarray(-(below + moment(heights)) / bending[..., None, None])


def _bending(
    plies: ArrayLike, angles: ArrayLike, thicknesses: ArrayLike, direction: float
) -> tuple[FloatArray, FloatArray]:
    """Return the height of the neutral plane, mm, and the stiffness about it, N mm."""
    modulus = _along(plies, angles, direction)
    z = ply_bounds(thicknesses)
    stretch, coupling, bending = (
        (modulus * np.diff(z**power, axis=-1) / power).sum(axis=-1) for power in (1, 2, 3)
    )
    return coupling / stretch, bending - coupling**2 / stretch


def _along(plies: ArrayLike, angles: ArrayLike, direction: float) -> FloatArray:
    turned = np.asarray(angles, dtype=np.float64) - direction
    return np.asarray(rotated_stiffness(plies, turned)[..., 0, 0])
