"""From a cloth and its resin to one ply with constants of its own.

Models, by name:

- woven, stitched and unidirectional cloth: equivalent cross-ply.  The ply is warp and weft
  side by side in its thickness, each a straight ply turned by 90 degrees, sharing one strain
  (the parallel bound of Ishikawa and Chou 1982);
- crimp: the modulus along a wavy yarn is the inverse of the mean compliance along a sine wave
  (the undulation model of Ishikawa and Chou 1982), with the yarn's steepest slope as input;
- mat: straight plies at all angles in equal parts (the invariants of Tsai and Pagano 1968).

One ply is taken as even through its thickness; how warp and weft lie above each other inside
it is not followed.
"""

from __future__ import annotations

import dataclasses

import numpy as np

from laywright.laminate.lamina import (
    Lamina,
    Strengths,
    from_invariants,
    invariants,
    lamina_of_stiffness,
    reduced_stiffness,
    rotated_stiffness,
)
from laywright.laminate.materials import Cloth, Resin, Weave
from laywright.laminate.micromechanics import unidirectional

__all__ = ["cloth_ply", "cloth_strengths", "crimped", "cross_ply", "scattered"]

_WAVE_POINTS = 64


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
    return dataclasses.replace(
        lamina,
        modulus_1=modulus,
        poisson_12=lamina.poisson_12 * modulus / lamina.modulus_1,
    )


def cross_ply(lamina: Lamina, warp_share: float) -> Lamina:
    """Return warp and weft side by side as one ply, axis 1 along the warp."""
    along = reduced_stiffness(lamina)
    across = rotated_stiffness(along, np.pi / 2.0)
    stiffness = warp_share * along + (1.0 - warp_share) * across
    expansion = (lamina.expansion_1, lamina.expansion_2)
    force = warp_share * along[:2, :2] @ expansion
    force += (1.0 - warp_share) * across[:2, :2] @ expansion[::-1]
    first, second = np.linalg.solve(stiffness[:2, :2], force).tolist()
    return lamina_of_stiffness(stiffness, (first, second))


def scattered(lamina: Lamina) -> Lamina:
    """Return the ply with its fibres at all angles of the plane in equal parts."""
    stiffness = from_invariants(invariants(reduced_stiffness(lamina)))
    force = reduced_stiffness(lamina)[:2, :2] @ (lamina.expansion_1, lamina.expansion_2)
    expansion = float(force.sum() / (2.0 * (stiffness[0, 0] + stiffness[0, 1])))
    return lamina_of_stiffness(stiffness, (expansion, expansion))


def cloth_ply(
    cloth: Cloth, resin: Resin, volume_fraction: float, void_share: float = 0.0
) -> Lamina:
    """Return one ply of a cloth, axis 1 along the warp.

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
        return scattered(straight)
    return cross_ply(crimped(straight, cloth.crimp_angle), cloth.warp_share)


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
