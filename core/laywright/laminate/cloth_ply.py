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

from laywright.laminate.lamina import (
    Lamina,
    Strengths,
    lamina_of_stiffness,
    reduced_stiffness,
    rotated_expansion,
    rotated_stiffness,
)
from laywright.laminate.materials import Cloth, Resin, Weave
from laywright.laminate.micromechanics import unidirectional

__all__ = ["Yarns", "blend", "cloth_ply", "cloth_strengths", "crimped", "yarns"]

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


def crimped(lamina: Lamina, slope: float) -> Lamina:
    """Return a ply whose fibres run in a sine wave out of the plane.

    Parameters
    ----------
    lamina : Lamina
        The straight ply.
    slope : float, radians
        Steepest angle of a fibre to the plane.
    """
    if slope == 0.0:
        return lamina
    phase = (np.arange(_WAVE_POINTS) + 0.5) * (2.0 * np.pi / _WAVE_POINTS)
    square = np.cos(np.arctan(np.tan(slope) * np.cos(phase))) ** 2
    mixed = 1.0 / lamina.shear_12 - 2.0 * lamina.poisson_12 / lamina.modulus_1
    compliance = (
        square**2 / lamina.modulus_1
        + mixed * square * (1.0 - square)
        + (1.0 - square) ** 2 / lamina.modulus_2
    )
    modulus = float(1.0 / compliance.mean())
    poisson = lamina.poisson_12 * modulus / lamina.modulus_1
    return dataclasses.replace(lamina, modulus_1=modulus, poisson_12=poisson)


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
    stiffness, force = np.zeros((3, 3)), np.zeros(3)
    for part in directions:
        own = part.share * rotated_stiffness(reduced_stiffness(part.lamina), part.angle)
        expansion = (part.lamina.expansion_1, part.lamina.expansion_2, 0.0)
        stiffness += own
        force += own @ rotated_expansion(expansion, part.angle)
    first, second = np.linalg.solve(stiffness[:2, :2], force[:2]).tolist()
    return lamina_of_stiffness(stiffness, (first, second))


def cloth_ply(
    cloth: Cloth, resin: Resin, volume_fraction: float, void_share: float = 0.0
) -> Lamina:
    """Return one ply of a cloth, axis 1 along the warp; see `yarns` for the parameters."""
    return blend(yarns(cloth, resin, volume_fraction, void_share))


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
