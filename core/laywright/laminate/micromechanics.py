"""From fibre and resin to one straight ply: fractions, thickness, moduli, expansion.

Models, by name: rule of mixtures along the fibres and for Poisson's ratio; Halpin and Tsai
(1969) across the fibres and in shear; Schapery (1968) for thermal expansion and for swelling by
water; Christensen (1988) for shear through the thickness.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeVar

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.errors import LimitError
from laywright.laminate.constituents import Fibre, Resin
from laywright.laminate.lamina import Lamina, LaminaArrays

__all__ = [
    "HEXAGONAL_PACKING",
    "Constituents",
    "check_fraction",
    "christensen_poisson",
    "constituents_of",
    "fibre_volume_fraction",
    "halpin_tsai",
    "mixture",
    "ply_thickness",
    "schapery",
    "straight_plies",
    "unidirectional",
]

Number = TypeVar("Number", float, FloatArray)

HEXAGONAL_PACKING = math.pi / (2.0 * math.sqrt(3.0))


def check_fraction(volume_fraction: float, where: str) -> float:
    """Return the fibre volume fraction if round fibres can be packed so tightly.

    Raises
    ------
    LimitError
        If it is not above 0 and at most 0.907, the densest packing of parallel round fibres.
    """
    if not 0.0 < volume_fraction <= HEXAGONAL_PACKING:
        raise LimitError(
            f"{where}: fibre volume fraction",
            f"{volume_fraction:.3f}",
            f"more than 0 and at most {HEXAGONAL_PACKING:.3f}, the densest packing of round fibres",
            "give it more resin",
        )
    return volume_fraction


def fibre_volume_fraction(
    mass_fraction: Number,
    fibre_density: Number,
    resin_density: Number,
    void_share: float | FloatArray = 0.0,
) -> Number:
    """Return the share of fibre in the volume from its share in the mass.

    Parameters
    ----------
    mass_fraction : float or (...) float
        Fibre mass over laminate mass.
    fibre_density, resin_density : float or (...) float, g/cm^3
    void_share : float or (...) float
        Air over laminate volume.

    Examples
    --------
    >>> round(fibre_volume_fraction(0.5, 2.55, 1.15), 3)
    0.311
    """
    fibre, resin = mass_fraction / fibre_density, (1.0 - mass_fraction) / resin_density
    fraction: Number = fibre / (fibre + resin)
    sound: Number = fraction * (1.0 - void_share)  # type: ignore[assignment]
    return sound


def ply_thickness(areal_weight: Number, fibre_density: Number, volume_fraction: Number) -> Number:
    """Return the cured thickness of a ply, mm.

    Parameters
    ----------
    areal_weight : float or (...) float, g/m^2
        Of the dry cloth.
    fibre_density : float or (...) float, g/cm^3
    volume_fraction : float or (...) float
        Fibre volume over laminate volume.
    """
    thickness: Number = areal_weight / (1000.0 * fibre_density * volume_fraction)
    return thickness


def mixture(values: Sequence[float], shares: Sequence[float]) -> float:
    """Return the rule of mixtures: the mean by volume, for parts that stretch alike."""
    return math.fsum(value * share for value, share in zip(values, shares, strict=True))


def halpin_tsai(fibre: Number, resin: Number, volume_fraction: Number, shape: float) -> Number:
    """Return a modulus across the fibres by Halpin and Tsai.

    Parameters
    ----------
    fibre, resin : float or (...) float, MPa
        The modulus of each.
    volume_fraction : float or (...) float
        Of the fibres.
    shape : float
        2 for the transverse modulus and 1 for the shear modulus of round fibres in square
        array (Halpin and Tsai 1969).
    """
    eta = (fibre / resin - 1.0) / (fibre / resin + shape)
    share = eta * volume_fraction
    modulus: Number = resin * (1.0 + shape * share) / (1.0 - share)
    return modulus


@dataclass(frozen=True, eq=False)
class Constituents:
    """Moduli of fibre and resin, of one pair or of many; see `laywright.laminate.constituents`.

    Attributes
    ----------
    fibre_axial, fibre_transverse, fibre_shear, fibre_poisson : (...) float, MPa and 1
    resin_modulus, resin_poisson : (...) float, MPa and 1
    """

    fibre_axial: FloatArray
    fibre_transverse: FloatArray
    fibre_shear: FloatArray
    fibre_poisson: FloatArray
    resin_modulus: FloatArray
    resin_poisson: FloatArray


def constituents_of(fibre: Fibre, resin: Resin) -> Constituents:
    """Return the moduli of one fibre and one resin."""
    return Constituents(
        *(
            np.asarray(value, dtype=np.float64)
            for value in (
                fibre.axial_modulus,
                fibre.transverse_modulus,
                fibre.shear_modulus,
                fibre.poisson,
                resin.modulus,
                resin.poisson,
            )
        )
    )


def straight_plies(
    parts: Constituents, volume_fraction: ArrayLike, void_share: ArrayLike = 0.0
) -> LaminaArrays:
    """Return the constants of plies of straight parallel fibres.

    Parameters
    ----------
    parts : Constituents
    volume_fraction, void_share : (...) array_like
        Fibre and air over laminate volume; the air is taken to lie in the resin and to carry
        nothing.

    Returns
    -------
    LaminaArrays
        Rule of mixtures for modulus 1 and Poisson's ratio, Halpin and Tsai with shape 2 for
        modulus 2 and shape 1 for shear.
    """
    fibre = np.asarray(volume_fraction, dtype=np.float64)
    rest = 1.0 - fibre
    modulus = parts.resin_modulus * (1.0 - np.asarray(void_share) / rest)
    shear = modulus / (2.0 * (1.0 + parts.resin_poisson))
    return LaminaArrays(
        np.asarray(fibre * parts.fibre_axial + rest * modulus),
        halpin_tsai(parts.fibre_transverse, modulus, fibre, 2.0),
        np.asarray(fibre * parts.fibre_poisson + rest * parts.resin_poisson),
        halpin_tsai(parts.fibre_shear, shear, fibre, 1.0),
    )


def schapery(
    fibre: Fibre,
    resin: Resin,
    volume_fraction: float,
    resin_modulus: float,
    free: tuple[float, float, float],
) -> tuple[float, float]:
    """Return the free strain along and across the fibres.

    Schapery 1968; for fibres that expand differently along and across, the transverse term of
    the fibre is ``across + poisson * along``.

    Parameters
    ----------
    fibre, resin : Fibre, Resin
    volume_fraction : float
    resin_modulus : float, MPa
        Of the resin with its voids.
    free : tuple of three float
        Free strain of the fibre along and across, and of the resin: per kelvin for thermal
        expansion, per unit of water for swelling.
    """
    shares = (volume_fraction, 1.0 - volume_fraction)
    moduli = (fibre.axial_modulus, resin_modulus)
    axial, transverse, matrix = free
    along = mixture((moduli[0] * axial, moduli[1] * matrix), shares) / mixture(moduli, shares)
    poisson = mixture((fibre.poisson, resin.poisson), shares)
    across = mixture((transverse + fibre.poisson * axial, (1.0 + resin.poisson) * matrix), shares)
    return along, across - along * poisson


def christensen_poisson(poisson_12: float, modulus_1: float, modulus_2: float) -> float:
    """Return Poisson's ratio 23 of a ply that is the same in every direction across axis 1.

    ``nu12 (1 - nu21) / (1 - nu12)``: Christensen 1988.
    """
    poisson_21 = poisson_12 * modulus_2 / modulus_1
    return poisson_12 * (1.0 - poisson_21) / (1.0 - poisson_12)


def unidirectional(
    fibre: Fibre, resin: Resin, volume_fraction: float, void_share: float = 0.0
) -> Lamina:
    """Return a ply of straight parallel fibres; see `straight_plies`.

    Parameters
    ----------
    fibre, resin : Fibre, Resin
    volume_fraction : float
        Fibre volume over laminate volume.
    void_share : float
        Air over laminate volume.

    Returns
    -------
    Lamina
        Expansion and swelling by Schapery, with fibres that take up no water (aramid and plant
        fibres do, and swell more than this says); shear 13 as 12, shear 23 by Christensen.
    """
    check_fraction(volume_fraction, fibre.name)
    ply = straight_plies(constituents_of(fibre, resin), volume_fraction, void_share)
    e1, e2, nu, g = (
        float(value) for value in (ply.modulus_1, ply.modulus_2, ply.poisson_12, ply.shear_12)
    )
    softened = resin.modulus * (1.0 - void_share / (1.0 - volume_fraction))
    warmed = (fibre.expansion_axial, fibre.expansion_transverse, resin.expansion)
    expansion, swelling = (
        schapery(fibre, resin, volume_fraction, softened, free)
        for free in (warmed, (0.0, 0.0, resin.swelling))
    )
    across = e2 / (2.0 * (1.0 + christensen_poisson(nu, e1, e2)))
    return Lamina(e1, e2, nu, g, *expansion, *swelling, g, across)
