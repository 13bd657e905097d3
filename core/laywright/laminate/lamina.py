"""One lamina: its constants and its stiffness in its own axes.

Axis 1 lies along the fibres (or the warp), axis 2 across them in the plane.  Stresses and
strains are written as ``(1, 2, 12)`` or ``(x, y, xy)`` with engineering shear strain.
All functions take leading axes, so one call serves many laminae; the constants of many at once
stand in `LaminaArrays` and `StrengthArrays`, in place of `Lamina` and `Strengths`.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.errors import LimitError
from laywright.laminate.limits import Limits, check_limits

__all__ = [
    "Lamina",
    "LaminaArrays",
    "StrengthArrays",
    "Strengths",
    "free_strains",
    "lamina_of_stiffness",
    "reduced_stiffness",
]

Modulus = Annotated[float, Limits("MPa", 1.0, 1e6)]
Strength = Annotated[float, Limits("MPa", 1.0, 9e3)]
Expansion = Annotated[float, Limits("1/K", -2e-5, 5e-4)]
Swelling = Annotated[float, Limits("1", -0.05, 2.0)]


@dataclass(frozen=True)
class Strengths:
    """Strengths of one lamina, all given as positive numbers in MPa.

    Attributes
    ----------
    tension_1, compression_1 : float, MPa
        Along axis 1.
    tension_2, compression_2 : float, MPa
        Along axis 2.
    shear : float, MPa
        In the plane.
    """

    tension_1: Strength
    compression_1: Strength
    tension_2: Strength
    compression_2: Strength
    shear: Strength

    def __post_init__(self) -> None:
        check_limits(self, "strengths")


@dataclass(frozen=True, eq=False)
class StrengthArrays:
    """Strengths of many laminae; see `Strengths`.

    Attributes
    ----------
    tension_1, compression_1, tension_2, compression_2, shear : (...) float, MPa
    """

    tension_1: FloatArray
    compression_1: FloatArray
    tension_2: FloatArray
    compression_2: FloatArray
    shear: FloatArray


@dataclass(frozen=True)
class Lamina:
    """Elastic constants and free strains of an orthotropic lamina in plane stress.

    Attributes
    ----------
    modulus_1, modulus_2 : float, MPa
        Young's moduli along axes 1 and 2.
    poisson_12 : float
        Strain along 2 per strain along 1 under stress along 1, sign turned.
    shear_12 : float, MPa
        Shear modulus in the plane.
    expansion_1, expansion_2 : float, 1/K
        Thermal expansion along axes 1 and 2.
    swelling_1, swelling_2 : float
        Strain along axes 1 and 2 for each unit of water in the mass of the resin.
    shear_13, shear_23 : float or None, MPa
        Shear moduli through the thickness; None takes those of a ply that is the same in every
        direction across axis 1, see `laywright.laminate.transverse.through_moduli`.

    Raises
    ------
    LimitError
        If the constants would give energy away (Jones 1975, section 2.4).
    """

    modulus_1: Modulus
    modulus_2: Modulus
    poisson_12: float
    shear_12: Modulus
    expansion_1: Expansion = 0.0
    expansion_2: Expansion = 0.0
    swelling_1: Swelling = 0.0
    swelling_2: Swelling = 0.0
    shear_13: Modulus | None = None
    shear_23: Modulus | None = None

    def __post_init__(self) -> None:
        check_limits(self, "lamina")
        bound = float(np.sqrt(self.modulus_1 / self.modulus_2))
        if not abs(self.poisson_12) < bound:
            raise LimitError(
                "lamina: poisson_12",
                f"{self.poisson_12:g}",
                f"less than {bound:.3g}, the square root of the ratio of the moduli",
                "check Poisson's ratio and the two moduli",
            )


@dataclass(frozen=True, eq=False)
class LaminaArrays:
    """Elastic constants of many laminae; see `Lamina`.

    Attributes
    ----------
    modulus_1, modulus_2, poisson_12, shear_12 : (...) float, MPa, 1, MPa
    """

    modulus_1: FloatArray
    modulus_2: FloatArray
    poisson_12: FloatArray
    shear_12: FloatArray


def reduced_stiffness(lamina: Lamina | LaminaArrays) -> FloatArray:
    """Return the plane-stress stiffness Q of a lamina in its own axes.

    Returns
    -------
    numpy.ndarray
        (..., 3, 3) float, MPa.  Jones 1975, eq. 2.61.

    Examples
    --------
    >>> reduced_stiffness(Lamina(70e3, 70e3, 0.0, 35e3)).diagonal().tolist()
    [70000.0, 70000.0, 35000.0]
    """
    e1, e2, nu, g = np.broadcast_arrays(
        lamina.modulus_1, lamina.modulus_2, lamina.poisson_12, lamina.shear_12
    )
    share = 1.0 / (1.0 - nu * nu * e2 / e1)
    q = np.zeros((*e1.shape, 3, 3))
    q[..., 0, 0] = share * e1
    q[..., 1, 1] = share * e2
    q[..., 0, 1] = q[..., 1, 0] = share * nu * e2
    q[..., 2, 2] = g
    return q


def lamina_of_stiffness(
    stiffness: ArrayLike,
    expansion: tuple[float, float] = (0.0, 0.0),
    swelling: tuple[float, float] = (0.0, 0.0),
    through: tuple[float, float] | None = None,
) -> Lamina:
    """Return the lamina whose stiffness in its own axes is given.

    Parameters
    ----------
    stiffness : (3, 3) array_like, MPa
        Orthotropic in these axes: no coupling of stretch and shear.
    expansion, swelling : tuple of two float, 1/K and 1
        Free strains along axes 1 and 2.
    through : tuple of two float, MPa, optional
        Shear moduli 13 and 23.
    """
    compliance = np.linalg.inv(np.asarray(stiffness, dtype=np.float64))
    return Lamina(
        float(1.0 / compliance[0, 0]),
        float(1.0 / compliance[1, 1]),
        float(-compliance[0, 1] / compliance[0, 0]),
        float(1.0 / compliance[2, 2]),
        *expansion,
        *swelling,
        *(through or (None, None)),
    )


def free_strains(lamina: Lamina) -> FloatArray:
    """Return what a free lamina does by itself, in its own axes.

    Returns
    -------
    numpy.ndarray
        (2, 3) float: thermal strain per kelvin, strain per unit of water in the resin.
    """
    return np.array(
        [
            [lamina.expansion_1, lamina.expansion_2, 0.0],
            [lamina.swelling_1, lamina.swelling_2, 0.0],
        ]
    )
