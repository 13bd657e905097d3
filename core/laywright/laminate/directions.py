"""How stiff a laminate is in each direction of its plane."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.laminate.laminate import Laminate
from laywright.laminate.rotation import stress_rotation

__all__ = ["bent_moduli", "pulled_moduli"]


def pulled_moduli(laminate: Laminate, directions: ArrayLike) -> FloatArray:
    """Return Young's modulus of a strip that is pulled and free to curl, (n,) float, MPa.

    Parameters
    ----------
    laminate : Laminate
    directions : (n,) array_like, radians
        Of the strip, from the datum arrow.
    """
    return _moduli(_compliance(laminate)[:3, :3] * laminate.thickness, directions)


def bent_moduli(laminate: Laminate, directions: ArrayLike) -> FloatArray:
    """Return the modulus that an even strip of this thickness needs to bend alike, (n,), MPa."""
    return _moduli(_compliance(laminate)[3:, 3:] * laminate.thickness**3 / 12.0, directions)


def _compliance(laminate: Laminate) -> FloatArray:
    return np.asarray(np.linalg.inv(laminate.stiffness.matrix()))


def _moduli(compliance: FloatArray, directions: ArrayLike) -> FloatArray:
    # The stress of a unit pull along a direction, in x and y.
    pull = stress_rotation(directions)[..., 0, :] * np.array([1.0, 1.0, 0.5])
    return np.asarray(1.0 / np.einsum("...i,ij,...j->...", pull, compliance, pull))
