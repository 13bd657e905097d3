"""Formulas of bending and tension tests on flat coupons.

Lengths in mm, forces in N, stresses in MPa.  Sources: ISO 14125:1998, ASTM D790, ASTM D7264
for three-point bending; ISO 527 and ASTM D3039 for tension; Timoshenko for shear.
"""

from __future__ import annotations

from enum import Enum

import numpy as np
from numpy.typing import ArrayLike

from laywright.errors import InputError

__all__ = [
    "STANDARD_GRAVITY",
    "ChordWindow",
    "apparent_modulus_ratio",
    "bending_strain",
    "bending_strain_large",
    "bending_stress",
    "bending_stress_iso_14125",
    "chord_modulus",
]

STANDARD_GRAVITY = 9.80665
"""m/s^2: the force of a weight that hangs on a coupon."""


class ChordWindow(Enum):
    """Strains between which a chord modulus is taken."""

    ISO_527 = (0.0005, 0.0025)
    ASTM_D3039 = (0.001, 0.003)


def bending_stress(force: float, span: float, width: float, thickness: float) -> float:
    """Return the stress at the surface under the middle load of three-point bending, MPa."""
    return 3.0 * force * span / (2.0 * width * thickness**2)


def bending_strain(deflection: float, span: float, thickness: float) -> float:
    """Return the strain at the surface, for deflections small against the span."""
    return 6.0 * deflection * thickness / span**2


def bending_stress_iso_14125(
    force: float, span: float, width: float, thickness: float, deflection: float
) -> float:
    """Return the stress at the surface for large deflections, MPa (ISO 14125)."""
    factor = 1.0 + 6.0 * (deflection / span) ** 2 - 3.0 * deflection * thickness / span**2
    return bending_stress(force, span, width, thickness) * factor


def bending_strain_large(deflection: float, span: float, thickness: float) -> float:
    """Return the strain at the surface for deflections above a tenth of the span (ISO 14125)."""
    ratio = deflection / span
    return thickness / span * (6.0 * ratio - 24.37 * ratio**3 + 62.17 * ratio**5)


def apparent_modulus_ratio(modulus_over_shear: float, span_over_thickness: float) -> float:
    """Return the modulus that a bending test finds over the true one.

    Shear through the thickness adds to the deflection; a long span makes it small.  Rectangular
    section, Timoshenko.

    Examples
    --------
    >>> round(apparent_modulus_ratio(15.0, 32.0), 3)
    0.983
    """
    return 1.0 / (1.0 + 1.2 * modulus_over_shear / span_over_thickness**2)


def chord_modulus(strain: ArrayLike, stress: ArrayLike, window: ChordWindow) -> float:
    """Return the slope between the two strains of a window, read off between the points.

    Parameters
    ----------
    strain : (n,) array_like
        Rising.
    stress : (n,) array_like, MPa
    window : ChordWindow

    Returns
    -------
    float
        MPa.

    Raises
    ------
    InputError
        If the record does not reach over the window or does not rise.
    """
    low, high = window.value
    e = np.asarray(strain, dtype=np.float64)
    s = np.asarray(stress, dtype=np.float64)
    if e.ndim != 1 or e.shape != s.shape or len(e) < 2 or not (np.diff(e) > 0.0).all():
        raise InputError(
            "test record", "strains that do not rise", "one rising series", "clean the record"
        )
    slack = 1e-9
    if e[0] > low + slack or e[-1] < high - slack:
        raise InputError(
            "test record",
            f"strains from {e[0]:.4%} to {e[-1]:.4%}",
            f"{low:.2%} to {high:.2%}",
            "load it from nothing up to there, or take the other window",
        )
    at_low, at_high = np.interp((low, high), e, s).tolist()
    return float((at_high - at_low) / (high - low))
