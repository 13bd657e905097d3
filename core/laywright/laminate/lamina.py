"""One lamina: stiffness in its own axes, rotation, invariants.

Axis 1 lies along the fibres (or the warp), axis 2 across them in the plane.  Stresses and
strains are written as ``(1, 2, 12)`` or ``(x, y, xy)`` with engineering shear strain.
All functions take leading axes, so one call serves many laminae.
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
    "Strengths",
    "at_angles",
    "invariants",
    "lamina_of_stiffness",
    "reduced_stiffness",
    "rotated_expansion",
    "rotated_stiffness",
    "strain_rotation",
    "stress_rotation",
]

Modulus = Annotated[float, Limits("MPa", 1.0, 1e6)]
Strength = Annotated[float, Limits("MPa", 1.0, 9e3)]
Expansion = Annotated[float, Limits("1/K", -2e-5, 5e-4)]


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


@dataclass(frozen=True)
class Lamina:
    """Elastic constants and thermal expansion of an orthotropic lamina in plane stress.

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


def reduced_stiffness(lamina: Lamina) -> FloatArray:
    """Return the plane-stress stiffness Q of a lamina in its own axes.

    Returns
    -------
    numpy.ndarray
        (3, 3) float, MPa.  Jones 1975, eq. 2.61.

    Examples
    --------
    >>> reduced_stiffness(Lamina(70e3, 70e3, 0.0, 35e3)).diagonal().tolist()
    [70000.0, 70000.0, 35000.0]
    """
    poisson_21 = lamina.poisson_12 * lamina.modulus_2 / lamina.modulus_1
    share = 1.0 / (1.0 - lamina.poisson_12 * poisson_21)
    q12 = share * lamina.poisson_12 * lamina.modulus_2
    return np.array(
        [
            [share * lamina.modulus_1, q12, 0.0],
            [q12, share * lamina.modulus_2, 0.0],
            [0.0, 0.0, lamina.shear_12],
        ]
    )


def lamina_of_stiffness(
    stiffness: ArrayLike, expansion: tuple[float, float] = (0.0, 0.0)
) -> Lamina:
    """Return the lamina whose stiffness in its own axes is given.

    Parameters
    ----------
    stiffness : (3, 3) array_like, MPa
        Orthotropic in these axes: no coupling of stretch and shear.
    expansion : tuple of two float, 1/K
        Thermal expansion along axes 1 and 2.
    """
    compliance = np.linalg.inv(np.asarray(stiffness, dtype=np.float64))
    return Lamina(
        float(1.0 / compliance[0, 0]),
        float(1.0 / compliance[1, 1]),
        float(-compliance[0, 1] / compliance[0, 0]),
        float(1.0 / compliance[2, 2]),
        float(expansion[0]),
        float(expansion[1]),
    )


def stress_rotation(angle: ArrayLike) -> FloatArray:
    """Return T with ``(s1, s2, s12) = T (sx, sy, sxy)`` for a lamina at `angle`.

    Parameters
    ----------
    angle : (...) array_like, radians
        From x to axis 1, counter-clockwise.

    Returns
    -------
    numpy.ndarray
        (..., 3, 3) float.  Jones 1975, eq. 2.76.
    """
    angle = np.asarray(angle, dtype=np.float64)
    c, s = np.cos(angle), np.sin(angle)
    return _matrix([[c * c, s * s, 2 * c * s], [s * s, c * c, -2 * c * s], _shear_row(c, s, 1.0)])


def strain_rotation(angle: ArrayLike) -> FloatArray:
    """Return T with ``(e1, e2, g12) = T (ex, ey, gxy)``, engineering shear.

    See Also
    --------
    stress_rotation : parameters and shape.
    """
    angle = np.asarray(angle, dtype=np.float64)
    c, s = np.cos(angle), np.sin(angle)
    return _matrix([[c * c, s * s, c * s], [s * s, c * c, -c * s], _shear_row(c, s, 2.0)])


def _shear_row(c: FloatArray, s: FloatArray, factor: float) -> list[FloatArray]:
    return [-factor * c * s, factor * c * s, c * c - s * s]


def _matrix(rows: list[list[FloatArray]]) -> FloatArray:
    return np.stack([np.stack(row, axis=-1) for row in rows], axis=-2)


def rotated_stiffness(stiffness: ArrayLike, angle: ArrayLike) -> FloatArray:
    """Return the stiffness of a lamina at `angle`, in the axes x, y.

    Parameters
    ----------
    stiffness : (..., 3, 3) array_like, MPa
        In the lamina's own axes.
    angle : (...) array_like, radians

    Returns
    -------
    numpy.ndarray
        (..., 3, 3) float, MPa; Q-bar of Jones 1975, eq. 2.85.
    """
    turn = strain_rotation(angle)
    return np.swapaxes(turn, -1, -2) @ np.asarray(stiffness, dtype=np.float64) @ turn


def rotated_expansion(expansion: ArrayLike, angle: ArrayLike) -> FloatArray:
    """Return the thermal strain per kelvin of a lamina at `angle`, in the axes x, y.

    Parameters
    ----------
    expansion : (..., 3) array_like, 1/K
        In the lamina's own axes; the third is engineering shear, zero for a lamina.
    angle : (...) array_like, radians

    Returns
    -------
    numpy.ndarray
        (..., 3) float, 1/K, engineering shear.
    """
    back = strain_rotation(-np.asarray(angle, dtype=np.float64))
    return np.asarray((back @ np.asarray(expansion, dtype=np.float64)[..., None])[..., 0])


def invariants(stiffness: ArrayLike) -> FloatArray:
    """Return U1 to U5 of a lamina: what does not change when it is turned.

    Parameters
    ----------
    stiffness : (..., 3, 3) array_like, MPa

    Returns
    -------
    numpy.ndarray
        (..., 5) float, MPa.  Tsai and Pagano 1968; Tsai and Hahn 1980, ch. 3.
    """
    q = np.asarray(stiffness, dtype=np.float64)
    total = 3.0 * (q[..., 0, 0] + q[..., 1, 1])
    cross, shear = 2.0 * q[..., 0, 1], 4.0 * q[..., 2, 2]
    return np.stack(
        [
            (total + cross + shear) / 8.0,
            (q[..., 0, 0] - q[..., 1, 1]) / 2.0,
            (total / 3.0 - cross - shear) / 8.0,
            (total / 3.0 + 3.0 * cross - shear) / 8.0,
            (total / 3.0 - cross + shear) / 8.0,
        ],
        axis=-1,
    )


def at_angles(stiffness: ArrayLike, angles: ArrayLike) -> FloatArray:
    """Return the stiffness of one orthotropic lamina at many angles; fast for very many.

    The same as `rotated_stiffness`, written in multiples of the angle by the invariants
    (Tsai and Pagano 1968).

    Parameters
    ----------
    stiffness : (3, 3) array_like, MPa
        In the lamina's own axes, without coupling of stretch and shear.
    angles : (...) array_like, radians

    Returns
    -------
    numpy.ndarray
        (..., 3, 3) float, MPa.
    """
    u1, u2, u3, u4, u5 = invariants(stiffness).tolist()
    waves = np.array(
        [
            [[u1, u4, 0.0], [u4, u1, 0.0], [0.0, 0.0, u5]],
            [[u2, 0.0, 0.0], [0.0, -u2, 0.0], [0.0, 0.0, 0.0]],
            [[0.0, 0.0, u2 / 2.0], [0.0, 0.0, u2 / 2.0], [u2 / 2.0, u2 / 2.0, 0.0]],
            [[u3, -u3, 0.0], [-u3, u3, 0.0], [0.0, 0.0, -u3]],
            [[0.0, 0.0, u3], [0.0, 0.0, -u3], [u3, -u3, 0.0]],
        ]
    )
    twice = 2.0 * np.asarray(angles, dtype=np.float64)
    multiples = np.stack(
        [np.ones_like(twice), np.cos(twice), np.sin(twice), np.cos(2 * twice), np.sin(2 * twice)],
        axis=-1,
    )
    return np.asarray((multiples @ waves.reshape(5, 9)).reshape(*twice.shape, 3, 3))
