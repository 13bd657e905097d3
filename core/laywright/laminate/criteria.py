"""When a ply fails: five criteria, each as the factor by which its stress may still grow.

Stresses are ``(..., 3)`` arrays ``(s1, s2, s12)`` in MPa in the ply's own axes.  A factor of 2
means that failure comes at twice the stress, of 1 that it comes now; an unstressed ply has an
infinite factor.  Strengths and constants of many laminae at once may be given as arrays that
broadcast with the stresses.  The criteria speak of one ply in plane stress, not of delamination,
holes, impact, fatigue or damp.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.laminate.lamina import (
    Lamina,
    LaminaArrays,
    StrengthArrays,
    Strengths,
    reduced_stiffness,
)

__all__ = [
    "Criterion",
    "HashinIndices",
    "HillStrengths",
    "hashin_factor",
    "hashin_indices",
    "hashin_modes",
    "max_strain_factor",
    "max_stress_factor",
    "strength_factor",
    "tsai_hill_factor",
    "tsai_wu_factor",
]


Limits = Strengths | StrengthArrays
Number = float | FloatArray


class Criterion(Enum):
    """By which rule a ply is judged."""

    MAX_STRESS = "maximum stress"
    MAX_STRAIN = "maximum strain"
    TSAI_HILL = "Tsai-Hill"
    TSAI_WU = "Tsai-Wu"
    HASHIN = "Hashin"


class HillStrengths(Enum):
    """Which strengths the Tsai-Hill criterion takes."""

    TENSILE = "those in tension, whatever the sign of the stress"
    BY_SIGN = "those in tension or compression, by the sign of each stress"


@dataclass(frozen=True, eq=False)
class HashinIndices:
    """Hashin's indices; failure in a mode at 1, zero where the mode does not act.

    Attributes
    ----------
    fibre_tension, fibre_compression, matrix_tension, matrix_compression : (...) float
    """

    fibre_tension: FloatArray
    fibre_compression: FloatArray
    matrix_tension: FloatArray
    matrix_compression: FloatArray


def _parts(stress: ArrayLike) -> tuple[FloatArray, FloatArray, FloatArray]:
    array = np.asarray(stress, dtype=np.float64)
    return array[..., 0], array[..., 1], array[..., 2]


def _by_sign(stress: FloatArray, tension: Number, compression: Number) -> FloatArray:
    return np.where(stress < 0.0, compression, tension)


def _inverse(load: FloatArray) -> FloatArray:
    with np.errstate(divide="ignore"):
        return np.asarray(1.0 / load)


def _root(square: FloatArray, linear: FloatArray) -> FloatArray:
    """Positive f with ``square f^2 + linear f = 1``."""
    with np.errstate(divide="ignore"):
        return np.asarray(2.0 / (linear + np.sqrt(linear**2 + 4.0 * square)))


def max_stress_factor(stress: ArrayLike, strengths: Limits) -> FloatArray:
    """Return the factor by the criterion of maximum stress, (...) float."""
    s1, s2, s12 = _parts(stress)
    loads = (
        np.abs(s1) / _by_sign(s1, strengths.tension_1, strengths.compression_1),
        np.abs(s2) / _by_sign(s2, strengths.tension_2, strengths.compression_2),
        np.abs(s12) / strengths.shear,
    )
    return _inverse(np.maximum.reduce(loads))


def max_strain_factor(
    stress: ArrayLike, strengths: Limits, lamina: Lamina | LaminaArrays
) -> FloatArray:
    """Return the factor by the criterion of maximum strain, (...) float.

    The limits are the strengths over the moduli of the lamina, which stays linear to failure.
    """
    compliance = np.linalg.inv(reduced_stiffness(lamina))
    column = np.asarray(stress, dtype=np.float64)[..., None]
    e1, e2, g12 = _parts((compliance @ column)[..., 0])
    loads = (
        np.abs(e1) * lamina.modulus_1 / _by_sign(e1, strengths.tension_1, strengths.compression_1),
        np.abs(e2) * lamina.modulus_2 / _by_sign(e2, strengths.tension_2, strengths.compression_2),
        np.abs(g12) * lamina.shear_12 / strengths.shear,
    )
    return _inverse(np.maximum.reduce(loads))


def tsai_hill_factor(
    stress: ArrayLike, strengths: Limits, which: HillStrengths = HillStrengths.BY_SIGN
) -> FloatArray:
    """Return the factor by the criterion of Tsai and Hill, (...) float.

    Azzi and Tsai 1965; with strengths by sign, the mixed term takes the strength along axis 1
    by the sign of each of its two stresses (Kaw 2006, section 2.8.4).
    """
    s1, s2, s12 = _parts(stress)
    if which is HillStrengths.TENSILE:
        along = along_2 = np.broadcast_to(strengths.tension_1, s1.shape)
        across = np.broadcast_to(strengths.tension_2, s1.shape)
    else:
        along = _by_sign(s1, strengths.tension_1, strengths.compression_1)
        along_2 = _by_sign(s2, strengths.tension_1, strengths.compression_1)
        across = _by_sign(s2, strengths.tension_2, strengths.compression_2)
    index = (
        (s1 / along) ** 2
        - s1 * s2 / (along * along_2)
        + (s2 / across) ** 2
        + (s12 / strengths.shear) ** 2
    )
    return _inverse(np.sqrt(index))


def tsai_wu_factor(stress: ArrayLike, strengths: Limits, interaction: float = -0.5) -> FloatArray:
    """Return the factor by the criterion of Tsai and Wu, (...) float.

    Parameters
    ----------
    stress : (..., 3) array_like, MPa
    strengths : Strengths
    interaction : float
        F12 over the root of F11 F22; -0.5 is the choice of Mises and Hencky (Tsai and Wu 1971,
        Tsai and Hahn 1980), and between -1 and 1 the envelope is closed.
    """
    s1, s2, s12 = _parts(stress)
    f1 = 1.0 / strengths.tension_1 - 1.0 / strengths.compression_1
    f2 = 1.0 / strengths.tension_2 - 1.0 / strengths.compression_2
    f11 = 1.0 / (strengths.tension_1 * strengths.compression_1)
    f22 = 1.0 / (strengths.tension_2 * strengths.compression_2)
    f66 = 1.0 / strengths.shear**2
    f12 = interaction * np.sqrt(f11 * f22)
    square = f11 * s1**2 + f22 * s2**2 + f66 * s12**2 + 2.0 * f12 * s1 * s2
    return _root(square, f1 * s1 + f2 * s2)


def hashin_indices(
    stress: ArrayLike, strengths: Limits, transverse_shear: float | None = None
) -> HashinIndices:
    """Return the indices of Hashin (1980) in plane stress.

    Parameters
    ----------
    stress : (..., 3) array_like, MPa
    strengths : Strengths
    transverse_shear : float, MPa, optional
        Shear strength across the fibres; half the transverse compressive strength where it is
        not known.
    """
    s1, s2, s12 = _parts(stress)
    across = strengths.compression_2 / 2.0 if transverse_shear is None else transverse_shear
    shear = (s12 / strengths.shear) ** 2
    compression = (
        (s2 / (2.0 * across)) ** 2
        + ((strengths.compression_2 / (2.0 * across)) ** 2 - 1.0) * s2 / strengths.compression_2
        + shear
    )
    zero = np.zeros_like(s1)
    return HashinIndices(
        np.where(s1 >= 0.0, (s1 / strengths.tension_1) ** 2 + shear, zero),
        np.where(s1 < 0.0, (s1 / strengths.compression_1) ** 2, zero),
        np.where(s2 >= 0.0, (s2 / strengths.tension_2) ** 2 + shear, zero),
        np.where(s2 < 0.0, compression, zero),
    )


def hashin_modes(
    stress: ArrayLike, strengths: Limits, transverse_shear: float | None = None
) -> FloatArray:
    """Return the factor of each of Hashin's modes, (..., 4) float, in the order of the indices."""
    _, s2, s12 = _parts(stress)
    found = hashin_indices(stress, strengths, transverse_shear)
    simple = np.stack([found.fibre_tension, found.fibre_compression, found.matrix_tension], axis=-1)
    across = strengths.compression_2 / 2.0 if transverse_shear is None else transverse_shear
    pressed = np.minimum(s2, 0.0)
    linear = ((strengths.compression_2 / (2.0 * across)) ** 2 - 1.0) / strengths.compression_2
    square = (pressed / (2.0 * across)) ** 2 + (s12 / strengths.shear) ** 2
    compression = np.where(s2 < 0.0, _root(square, linear * pressed), np.inf)
    return np.concatenate([_inverse(np.sqrt(simple)), compression[..., None]], axis=-1)


def hashin_factor(
    stress: ArrayLike, strengths: Limits, transverse_shear: float | None = None
) -> FloatArray:
    """Return the factor by the first of Hashin's modes to come, (...) float."""
    return np.asarray(hashin_modes(stress, strengths, transverse_shear).min(axis=-1))


def strength_factor(
    criterion: Criterion, stress: ArrayLike, strengths: Limits, lamina: Lamina | LaminaArrays
) -> FloatArray:
    """Return the factor by any of the criteria in its usual form, (...) float."""
    if criterion is Criterion.MAX_STRESS:
        return max_stress_factor(stress, strengths)
    if criterion is Criterion.MAX_STRAIN:
        return max_strain_factor(stress, strengths, lamina)
    if criterion is Criterion.TSAI_HILL:
        return tsai_hill_factor(stress, strengths)
    if criterion is Criterion.TSAI_WU:
        return tsai_wu_factor(stress, strengths)
    return hashin_factor(stress, strengths)
