"""From fibre and resin to one straight ply: fractions, thickness, moduli, expansion.

Models, by name: rule of mixtures along the fibres and for Poisson's ratio; Halpin and Tsai
(1969) across the fibres and in shear; Schapery (1968) for thermal expansion.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from laywright.errors import LimitError
from laywright.laminate.lamina import Lamina
from laywright.laminate.materials import Fibre, Resin

__all__ = [
    "HEXAGONAL_PACKING",
    "SQUARE_PACKING",
    "check_fraction",
    "fibre_mass_fraction",
    "fibre_volume_fraction",
    "halpin_tsai",
    "inverse_mixture",
    "krenchel",
    "mixture",
    "mixture_density",
    "ply_thickness",
    "schapery_expansion",
    "unidirectional",
]

SQUARE_PACKING = math.pi / 4.0
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
    mass_fraction: float, fibre_density: float, resin_density: float, void_share: float = 0.0
) -> float:
    """Return the share of fibre in the volume from its share in the mass.

    Parameters
    ----------
    mass_fraction : float
        Fibre mass over laminate mass.
    fibre_density, resin_density : float, g/cm^3
    void_share : float
        Air over laminate volume.

    Examples
    --------
    >>> round(fibre_volume_fraction(0.5, 2.55, 1.15), 3)
    0.311
    """
    fibre, resin = mass_fraction / fibre_density, (1.0 - mass_fraction) / resin_density
    return (1.0 - void_share) * fibre / (fibre + resin)


def fibre_mass_fraction(
    volume_fraction: float, fibre_density: float, resin_density: float, void_share: float = 0.0
) -> float:
    """Return the share of fibre in the mass from its share in the volume."""
    fibre = volume_fraction * fibre_density
    return fibre / (fibre + (1.0 - volume_fraction - void_share) * resin_density)


def mixture_density(
    volume_fraction: float, fibre_density: float, resin_density: float, void_share: float = 0.0
) -> float:
    """Return the density of a laminate, g/cm^3."""
    return mixture(
        (fibre_density, resin_density), (volume_fraction, 1.0 - volume_fraction - void_share)
    )


def ply_thickness(areal_weight: float, fibre_density: float, volume_fraction: float) -> float:
    """Return the cured thickness of a ply, mm.

    Parameters
    ----------
    areal_weight : float, g/m^2
        Of the dry cloth.
    fibre_density : float, g/cm^3
    volume_fraction : float
        Fibre volume over laminate volume.
    """
    return areal_weight / (1000.0 * fibre_density * volume_fraction)


def mixture(values: Sequence[float], shares: Sequence[float]) -> float:
    """Return the rule of mixtures: the mean by volume, for parts that stretch alike."""
    return math.fsum(value * share for value, share in zip(values, shares, strict=True))


def inverse_mixture(values: Sequence[float], shares: Sequence[float]) -> float:
    """Return the inverse rule of mixtures: for parts that carry the same stress."""
    return 1.0 / math.fsum(share / value for value, share in zip(values, shares, strict=True))


def halpin_tsai(fibre: float, resin: float, volume_fraction: float, shape: float) -> float:
    """Return a modulus across the fibres by Halpin and Tsai.

    Parameters
    ----------
    fibre, resin : float, MPa
        The modulus of each.
    volume_fraction : float
        Of the fibres.
    shape : float
        2 for the transverse modulus and 1 for the shear modulus of round fibres in square
        array (Halpin and Tsai 1969).
    """
    eta = (fibre / resin - 1.0) / (fibre / resin + shape)
    return resin * (1.0 + shape * eta * volume_fraction) / (1.0 - eta * volume_fraction)


def schapery_expansion(
    fibre: Fibre, resin: Resin, volume_fraction: float, resin_modulus: float
) -> tuple[float, float]:
    """Return the thermal expansion along and across the fibres, 1/K.

    Schapery 1968; for fibres that expand differently along and across, the transverse term of
    the fibre is ``expansion_transverse + poisson * expansion_axial``.
    """
    shares = (volume_fraction, 1.0 - volume_fraction)
    moduli = (fibre.axial_modulus, resin_modulus)
    along = mixture(
        (moduli[0] * fibre.expansion_axial, moduli[1] * resin.expansion), shares
    ) / mixture(moduli, shares)
    poisson = mixture((fibre.poisson, resin.poisson), shares)
    across = mixture(
        (
            fibre.expansion_transverse + fibre.poisson * fibre.expansion_axial,
            (1.0 + resin.poisson) * resin.expansion,
        ),
        shares,
    )
    return along, across - along * poisson


def unidirectional(
    fibre: Fibre, resin: Resin, volume_fraction: float, void_share: float = 0.0
) -> Lamina:
    """Return a ply of straight parallel fibres.

    Parameters
    ----------
    fibre, resin : Fibre, Resin
    volume_fraction : float
        Fibre volume over laminate volume.
    void_share : float
        Air over laminate volume; it is taken to lie in the resin and to carry nothing.

    Returns
    -------
    Lamina
        Rule of mixtures for modulus 1 and Poisson's ratio, Halpin and Tsai with shape 2 for
        modulus 2 and shape 1 for shear, Schapery for expansion.
    """
    check_fraction(volume_fraction, fibre.name)
    modulus = resin.modulus * (1.0 - void_share / (1.0 - volume_fraction))
    shares = (volume_fraction, 1.0 - volume_fraction)
    shear = modulus / (2.0 * (1.0 + resin.poisson))
    expansion = schapery_expansion(fibre, resin, volume_fraction, modulus)
    return Lamina(
        mixture((fibre.axial_modulus, modulus), shares),
        halpin_tsai(fibre.transverse_modulus, modulus, volume_fraction, 2.0),
        mixture((fibre.poisson, resin.poisson), shares),
        halpin_tsai(fibre.shear_modulus, shear, volume_fraction, 1.0),
        *expansion,
    )


def krenchel(angles: Sequence[float], shares: Sequence[float]) -> float:
    """Return Krenchel's efficiency of fibres that lie at several angles to the load.

    Parameters
    ----------
    angles : sequence of float, radians
    shares : sequence of float
        Share of the fibres at each angle.

    Returns
    -------
    float
        Sum of share times cos^4 (Krenchel 1964): 1 for all along, 3/8 at random in the plane.
    """
    return mixture([math.cos(angle) ** 4 for angle in angles], shares)
