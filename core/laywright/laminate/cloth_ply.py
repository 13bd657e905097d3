"""From a cloth and its resin to one ply with constants of its own.

Models, by name:

- woven, stitched and unidirectional cloth: equivalent cross-ply.  The ply is warp and weft
  side by side in its thickness, each a straight ply turned by 90 degrees, sharing one strain
  (the parallel bound of Ishikawa and Chou 1982);
- crimp: the modulus along a wavy yarn is the inverse of the mean compliance along a sine wave
  (the undulation model of Ishikawa and Chou 1982), with the yarn's steepest slope as input;
- mat: straight plies at 0, 45, 90 and 135 degrees in equal parts, which is the same at every
  angle (Tsai and Pagano 1968).

One ply is taken as even through its thickness; how warp and weft lie above each other inside
it is not followed.
"""

from __future__ import annotations

import dataclasses
import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.laminate.constituents import Cloth, Resin, Weave
from laywright.laminate.lamina import (
    Lamina,
    LaminaArrays,
    Strengths,
    free_strains,
    lamina_of_stiffness,
    reduced_stiffness,
)
from laywright.laminate.micromechanics import Constituents, straight_plies, unidirectional
from laywright.laminate.rotation import at_angles, rotated_expansion, rotated_stiffness
from laywright.laminate.transverse import through_moduli

__all__ = [
    "Yarns",
    "blend",
    "cloth_plies",
    "cloth_ply",
    "cloth_strengths",
    "crimped",
    "crimped_plies",
    "yarns",
]

_WAVE_POINTS = 64


@dataclass(frozen=True)
class Yarns:
    """Yarns of one direction in a ply, with the resin around them.

    Attributes
    ----------
    lamina : Lamina
        Axis 1 along the yarns.
    angle : float, radians
        From the warp, counter-clockwise.
    share : float
        Share of the ply's fibre.
    """

    lamina: Lamina
    angle: float
    share: float


def crimped_plies(ply: LaminaArrays, slope: ArrayLike) -> LaminaArrays:
    """Return plies whose fibres run in a sine wave out of the plane.

    Parameters
    ----------
    ply : LaminaArrays
        The straight plies.
    slope : (...) array_like, radians
        Steepest angle of a fibre to the plane.
    """
    phase = (np.arange(_WAVE_POINTS) + 0.5) * (2.0 * np.pi / _WAVE_POINTS)
    steepest = np.tan(np.asarray(slope, dtype=np.float64))[..., None]
    square = np.cos(np.arctan(steepest * np.cos(phase))) ** 2
    mixed = 1.0 / ply.shear_12 - 2.0 * ply.poisson_12 / ply.modulus_1
    modulus = 1.0 / (
        (square**2).mean(axis=-1) / ply.modulus_1
        + mixed * (square * (1.0 - square)).mean(axis=-1)
        + ((1.0 - square) ** 2).mean(axis=-1) / ply.modulus_2
    )
    poisson = ply.poisson_12 * modulus / ply.modulus_1
    return LaminaArrays(modulus, ply.modulus_2, poisson, ply.shear_12)


def crimped(lamina: Lamina, slope: float) -> Lamina:
    """Return one ply whose fibres run in a sine wave out of the plane; see `crimped_plies`."""
    straight = LaminaArrays(
        *(
            np.array(value)
            for value in (lamina.modulus_1, lamina.modulus_2, lamina.poisson_12, lamina.shear_12)
        )
    )
    wavy = crimped_plies(straight, slope)
    return dataclasses.replace(
        lamina, modulus_1=float(wavy.modulus_1), poisson_12=float(wavy.poisson_12)
    )


def yarns(
    cloth: Cloth, resin: Resin, volume_fraction: float, void_share: float = 0.0
) -> tuple[Yarns, ...]:
    """Return the yarns of a ply of cloth, direction by direction; those without share left out.

    Parameters
    ----------
    cloth, resin : Cloth, Resin
    volume_fraction : float
        Fibre volume over laminate volume.
    void_share : float
        Air over laminate volume.
    """
    straight = unidirectional(cloth.fibre, resin, volume_fraction, void_share)
    if cloth.weave is Weave.MAT:
        return tuple(Yarns(straight, i * math.pi / 4.0, 0.25) for i in range(4))
    wavy = crimped(straight, cloth.crimp_angle)
    both = (
        Yarns(wavy, 0.0, cloth.warp_share),
        Yarns(wavy, math.pi / 2.0, 1.0 - cloth.warp_share),
    )
    return tuple(direction for direction in both if direction.share > 0.0)


def blend(directions: Sequence[Yarns]) -> Lamina:
    """Return yarns of several directions, sharing one strain, as one ply.

    Their mixture must be orthotropic about the warp; what little coupling of stretch and shear
    rounding leaves is dropped.
    """
    stiffness = np.zeros((3, 3))
    forces = np.zeros((2, 3))
    through = np.zeros(2)
    for part in directions:
        own = part.share * rotated_stiffness(reduced_stiffness(part.lamina), part.angle)
        stiffness += own
        forces += rotated_expansion(free_strains(part.lamina), part.angle) @ own
        square = math.cos(part.angle) ** 2
        g13, g23 = through_moduli(part.lamina)
        through += part.share * np.array(
            [square * g13 + (1.0 - square) * g23, (1.0 - square) * g13 + square * g23]
        )
    expansion, swelling = (
        tuple(np.linalg.solve(stiffness[:2, :2], force[:2]).tolist()) for force in forces
    )
    return lamina_of_stiffness(stiffness, expansion, swelling, tuple(through.tolist()))


def cloth_ply(
    cloth: Cloth, resin: Resin, volume_fraction: float, void_share: float = 0.0
) -> Lamina:
    """Return one ply of a cloth, axis 1 along the warp; see `yarns` for the parameters."""
    return blend(yarns(cloth, resin, volume_fraction, void_share))


def cloth_plies(
    cloth: Cloth,
    parts: Constituents,
    volume_fraction: ArrayLike,
    void_share: ArrayLike = 0.0,
    crimp: ArrayLike | None = None,
) -> FloatArray:
    """Return the stiffness of many plies of one cloth, axis 1 along the warp.

    The same as `cloth_ply` for each of them.

    Parameters
    ----------
    cloth : Cloth
        Weave, warp share and crimp; its fibre is not looked at.
    parts : Constituents
        Moduli of fibre and resin.
    volume_fraction, void_share : (...) array_like
        Fibre and air over laminate volume.
    crimp : (...) array_like, radians, optional
        Steepest slope of a yarn out of the plane; that of the cloth where it is not given.

    Returns
    -------
    numpy.ndarray
        (..., 3, 3) float, MPa.
    """
    straight = straight_plies(parts, volume_fraction, void_share)
    if cloth.weave is Weave.MAT:
        even = reduced_stiffness(straight)
        turned = [at_angles(even, i * math.pi / 4.0) for i in range(4)]
        return np.asarray(sum(turned) / 4.0)
    warp = reduced_stiffness(crimped_plies(straight, cloth.crimp_angle if crimp is None else crimp))
    weft = warp[..., (1, 0, 2), :][..., (1, 0, 2)]
    return np.asarray(cloth.warp_share * warp + (1.0 - cloth.warp_share) * weft)


def cloth_strengths(cloth: Cloth, volume_fraction: float) -> Strengths | None:
    """Return the strengths of a ply at this fibre volume fraction, or None if none are known.

    Strengths that the fibres carry grow in proportion to the fibre volume fraction, so that
    the load per width of a ply does not depend on how much resin it holds; those across
    unidirectional fibres and in shear stay as they are on the card.
    """
    known = cloth.strengths
    if known is None:
        return None
    along = volume_fraction / cloth.strength_fibre_fraction
    across = 1.0 if cloth.weave is Weave.UNIDIRECTIONAL else along
    return Strengths(
        known.tension_1 * along,
        known.compression_1 * along,
        known.tension_2 * across,
        known.compression_2 * across,
        known.shear,
    )
