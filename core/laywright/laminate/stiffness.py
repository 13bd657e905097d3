"""Classical laminated plate theory: A, B, D, resultants of free strain, response, ply stresses.

Heights z run from the middle of the laminate, positive away from the mould; ply 1 lies lowest.
Every function takes leading axes: ``(..., k, 3, 3)`` plies of many laminates in one call.
Source: Jones 1975, chapter 4; Kaw 2006, chapter 4.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.laminate.rotation import (
    entries_at_angles,
    rotated_expansion,
    rotated_stiffness,
    symmetric,
)

__all__ = [
    "Moduli",
    "Stiffness",
    "bending_moduli",
    "free_resultants",
    "in_plane_moduli",
    "integrated",
    "laminate_stiffness",
    "ply_bounds",
    "ply_strains",
    "ply_stresses",
    "response",
]


@dataclass(frozen=True, eq=False)
class Stiffness:
    """Stiffness of one or many laminates.

    Attributes
    ----------
    a : (..., 3, 3) float, N/mm
        Force per width for a mid-plane strain.
    b : (..., 3, 3) float, N
        Coupling of stretch and bending.
    d : (..., 3, 3) float, N mm
        Moment per width for a curvature.
    """

    a: FloatArray
    b: FloatArray
    d: FloatArray

    def matrix(self) -> FloatArray:
        """Return the (..., 6, 6) matrix ``[[A, B], [B, D]]``."""
        upper = np.concatenate([self.a, self.b], axis=-1)
        lower = np.concatenate([self.b, self.d], axis=-1)
        return np.concatenate([upper, lower], axis=-2)


@dataclass(frozen=True)
class Moduli:
    """Engineering constants of a laminate in the axes of the layup.

    Attributes
    ----------
    e_x, e_y, g_xy : float, MPa
        Young's moduli along the datum arrow and across it, and shear modulus.
    nu_xy : float
        Contraction along y per stretch along x.
    """

    e_x: float
    e_y: float
    g_xy: float
    nu_xy: float


def ply_bounds(thicknesses: ArrayLike) -> FloatArray:
    """Return the heights of the ply borders above the middle, (..., k + 1) float, mm.

    Examples
    --------
    >>> ply_bounds([1.0, 3.0]).tolist()
    [-2.0, -1.0, 2.0]
    """
    t = np.asarray(thicknesses, dtype=np.float64)
    tops = np.cumsum(t, axis=-1)
    half = tops[..., -1:] / 2.0
    return np.concatenate([-half, tops - half], axis=-1)


def laminate_stiffness(plies: ArrayLike, angles: ArrayLike, thicknesses: ArrayLike) -> Stiffness:
    """Return A, B and D; one call serves very many laminates.

    Parameters
    ----------
    plies : (..., k, 3, 3) array_like, MPa
        Stiffness of each ply in its own axes, ply 1 first; a ply has no coupling of stretch
        and shear in its own axes.
    angles : (..., k) array_like, radians
    thicknesses : (..., k) array_like, mm
    """
    return _summed(entries_at_angles(plies, angles), thicknesses)


def integrated(turned: ArrayLike, thicknesses: ArrayLike) -> Stiffness:
    """Return A, B and D of plies whose stiffness is given in the axes of the laminate.

    Parameters
    ----------
    turned : (..., k, 3, 3) array_like, MPa
    thicknesses : (..., k) array_like, mm
    """
    turned = np.asarray(turned, dtype=np.float64)
    return _summed(turned[..., (0, 0, 1, 0, 1, 2), (0, 1, 1, 2, 2, 2)], thicknesses)


def _summed(entries: FloatArray, thicknesses: ArrayLike) -> Stiffness:
    z = ply_bounds(thicknesses)
    weights = np.stack([np.diff(z**power, axis=-1) / power for power in (1, 2, 3)], axis=-2)
    sums = symmetric(weights @ entries)
    return Stiffness(sums[..., 0, :, :], sums[..., 1, :, :], sums[..., 2, :, :])


def free_resultants(
    plies: ArrayLike, expansions: ArrayLike, angles: ArrayLike, thicknesses: ArrayLike
) -> tuple[FloatArray, FloatArray]:
    """Return the force and the moment per width that held plies would exert, per unit.

    The unit is the kelvin for thermal expansion and the unit of water for swelling.

    Parameters
    ----------
    plies : (..., k, 3, 3) array_like, MPa
        Stiffness of each ply in its own axes.
    expansions : (..., k, 3) array_like, 1/K or 1
        Free strain per unit, in the ply's own axes; the third is zero.
    angles, thicknesses : (..., k) array_like, radians, mm

    Returns
    -------
    force : (..., 3) numpy.ndarray, N/(mm K) or N/mm
    moment : (..., 3) numpy.ndarray, N/K or N
    """
    strain = rotated_expansion(expansions, angles)
    stress = (rotated_stiffness(plies, angles) @ strain[..., None])[..., 0]
    z = ply_bounds(thicknesses)
    force, moment = (
        np.einsum("...k,...ki->...i", np.diff(z**power, axis=-1) / power, stress)
        for power in (1, 2)
    )
    return force, moment


def response(
    stiffness: Stiffness, force: ArrayLike, moment: ArrayLike = (0.0, 0.0, 0.0)
) -> tuple[FloatArray, FloatArray]:
    """Return mid-plane strains and curvatures under force and moment per width.

    Parameters
    ----------
    stiffness : Stiffness
    force : (..., 3) array_like, N/mm
    moment : (..., 3) array_like, N

    Returns
    -------
    strain : (..., 3) numpy.ndarray
        Engineering shear.
    curvature : (..., 3) numpy.ndarray, 1/mm
        ``(kx, ky, kxy)`` with kxy the twice mixed derivative.
    """
    force, moment = np.broadcast_arrays(
        np.asarray(force, dtype=np.float64), np.asarray(moment, dtype=np.float64)
    )
    load = np.concatenate([force, moment], axis=-1)
    matrix = stiffness.matrix()
    many = np.broadcast_shapes(matrix.shape[:-2], load.shape[:-1])
    answer = np.linalg.solve(matrix, np.broadcast_to(load, (*many, 6))[..., None])[..., 0]
    return answer[..., :3], answer[..., 3:]


def ply_strains(thicknesses: ArrayLike, strain: ArrayLike, curvature: ArrayLike) -> FloatArray:
    """Return the strains at the lower and upper border of each ply, (..., k, 2, 3), axes x, y."""
    z = ply_bounds(thicknesses)
    borders = np.stack([z[..., :-1], z[..., 1:]], axis=-1)[..., None]
    strain = np.asarray(strain, dtype=np.float64)[..., None, None, :]
    curvature = np.asarray(curvature, dtype=np.float64)[..., None, None, :]
    return np.asarray(strain + borders * curvature)


def ply_stresses(
    plies: ArrayLike,
    angles: ArrayLike,
    strains: ArrayLike,
    thermal_strain: ArrayLike | None = None,
) -> FloatArray:
    """Return the stresses at the borders of each ply, in the axes x, y.

    Parameters
    ----------
    plies : (..., k, 3, 3) array_like, MPa
    angles : (..., k) array_like, radians
    strains : (..., k, 2, 3) array_like
        From `ply_strains`.
    thermal_strain : (..., k, 3) array_like, optional
        Free thermal strain of each ply in its own axes: expansion times temperature change.

    Returns
    -------
    numpy.ndarray
        (..., k, 2, 3) float, MPa: lower border, upper border.
    """
    carried = np.asarray(strains, dtype=np.float64)
    if thermal_strain is not None:
        carried = carried - rotated_expansion(thermal_strain, angles)[..., None, :]
    turned = rotated_stiffness(plies, angles)[..., None, :, :]
    return np.asarray((turned @ carried[..., None])[..., 0])


def in_plane_moduli(stiffness: Stiffness, thickness: float) -> Moduli:
    """Return the constants of one laminate that is pulled and free to curl.

    Parameters
    ----------
    stiffness : Stiffness
        Of one laminate.
    thickness : float, mm
    """
    return _moduli(np.linalg.inv(stiffness.matrix())[:3, :3] * thickness)


def bending_moduli(stiffness: Stiffness, thickness: float) -> Moduli:
    """Return the constants that an even plate of this thickness would need to bend alike.

    Parameters
    ----------
    stiffness : Stiffness
        Of one laminate; it is free to stretch while it bends.
    thickness : float, mm
    """
    return _moduli(np.linalg.inv(stiffness.matrix())[3:, 3:] * thickness**3 / 12.0)


def _moduli(compliance: FloatArray) -> Moduli:
    return Moduli(
        float(1.0 / compliance[0, 0]),
        float(1.0 / compliance[1, 1]),
        float(1.0 / compliance[2, 2]),
        float(-compliance[0, 1] / compliance[0, 0]),
    )
