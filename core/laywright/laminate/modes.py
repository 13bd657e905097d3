"""In which way a ply fails: five modes, each with its own factor of growth."""

from __future__ import annotations

from enum import Enum

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.laminate.criteria import Criterion, hashin_modes
from laywright.laminate.lamina import Lamina, Strengths, reduced_stiffness

__all__ = ["Mode", "mode_factors"]


class Mode(Enum):
    """What happens to a ply; "warp" stands for the fibres where they all lie one way."""

    TENSION_1 = "pulled along the warp"
    COMPRESSION_1 = "pressed along the warp"
    TENSION_2 = "pulled across the warp"
    COMPRESSION_2 = "pressed across the warp"
    SHEAR = "sheared in the plane"


def mode_factors(
    criterion: Criterion, stress: ArrayLike, strengths: Strengths, lamina: Lamina
) -> FloatArray:
    """Return the factor of growth of the stress in each mode.

    Parameters
    ----------
    criterion : Criterion
        Tsai-Hill and Tsai-Wu judge all modes together; for them the modes are told apart by
        maximum stress, and their own factor may be smaller than each of these.
    stress : (..., 3) array_like, MPa
        In the ply's own axes.
    strengths, lamina : Strengths, Lamina

    Returns
    -------
    numpy.ndarray
        (..., 5) float in the order of `Mode`; infinite where a mode does not act, as shear on
        its own does not with Hashin.
    """
    acting = np.asarray(stress, dtype=np.float64)
    if criterion is Criterion.HASHIN:
        four = hashin_modes(acting, strengths)
        return np.concatenate([four, np.full_like(four[..., :1], np.inf)], axis=-1)
    if criterion is Criterion.MAX_STRAIN:
        strain = acting @ np.linalg.inv(reduced_stiffness(lamina))
        acting = strain * [lamina.modulus_1, lamina.modulus_2, lamina.shear_12]
    s1, s2, s12 = np.moveaxis(acting, -1, 0)
    loads = np.stack(
        [
            np.maximum(s1, 0.0) / strengths.tension_1,
            np.maximum(-s1, 0.0) / strengths.compression_1,
            np.maximum(s2, 0.0) / strengths.tension_2,
            np.maximum(-s2, 0.0) / strengths.compression_2,
            np.abs(s12) / strengths.shear,
        ],
        axis=-1,
    )
    with np.errstate(divide="ignore"):
        return np.asarray(1.0 / loads)
