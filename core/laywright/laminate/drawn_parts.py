"""Many parts of one layup, drawn at random: their layers as arrays, and their margins."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray
from laywright.laminate.cloth_ply import cloth_plies
from laywright.laminate.constituents import Cloth, Weave
from laywright.laminate.cores import core_lamina
from laywright.laminate.criteria import Criterion, strength_factor
from laywright.laminate.knock_downs import KnockDowns, void_factor
from laywright.laminate.lamina import LaminaArrays, StrengthArrays, reduced_stiffness
from laywright.laminate.loads import LoadCase
from laywright.laminate.micromechanics import (
    HEXAGONAL_PACKING,
    Constituents,
    fibre_volume_fraction,
    ply_thickness,
)
from laywright.laminate.plies import Layup
from laywright.laminate.rotation import stress_rotation
from laywright.laminate.sampling import Draws, Scatter
from laywright.laminate.stiffness import (
    laminate_stiffness,
    ply_strains,
    ply_stresses,
    response,
)

__all__ = ["DrawnParts", "draw_parts", "margins_of"]

_RESIN = (0.06, 0.94)


@dataclass(frozen=True, eq=False)
class DrawnParts:
    """The layers of many parts that were drawn at random.

    Attributes
    ----------
    stiffness : (s, k, 3, 3) float, MPa
    angles, thicknesses : (s, k) float, radians, mm
    areal_mass : (s,) float, g/m^2
    strengths : tuple of StrengthArrays or None
        (s, 1) each, of each layer.
    """

    stiffness: FloatArray
    angles: FloatArray
    thicknesses: FloatArray
    areal_mass: FloatArray
    strengths: tuple[StrengthArrays | None, ...]


def draw_parts(
    layup: Layup, draws: Draws, scatter: Scatter, knock_downs: KnockDowns | None
) -> DrawnParts:
    """Draw many parts of one layup.

    Parameters
    ----------
    layup : Layup
    draws : Draws
        Remembers what was drawn.
    scatter : Scatter
    knock_downs : KnockDowns or None
        Shares of the card's strengths that are counted on; None draws no strengths.
    """
    resin = layup.resin
    resin_density = draws.of(resin, "density")
    resin_parts = draws.of(resin, "modulus"), draws.of(resin, "poisson")
    shift = draws.within("resin share", 0.0, -scatter.resin_share, scatter.resin_share)
    voids = layup.void_share + draws.within("void share", 0.0, 0.0, scatter.void_share)
    cloths: dict[str, dict[str, FloatArray]] = {}
    strengths: dict[str, tuple[FloatArray, ...]] = {}
    stiffness, angles, thicknesses, mass = [], [], [], np.zeros(scatter.samples)
    found: list[StrengthArrays | None] = []
    for number, ply in enumerate(layup.plies, start=1):
        cloth = ply.cloth
        if cloth.name not in cloths:
            cloths[cloth.name] = _cloth_draws(cloth, draws)
            if knock_downs is not None and cloth.strengths is not None:
                strengths[cloth.name] = tuple(
                    draws.of(cloth, f"strengths.{name}") for name in vars(cloth.strengths)
                )
        own = cloths[cloth.name]
        share = np.clip(layup.ply_resin_share(number) + shift, *_RESIN)
        fraction = np.minimum(
            fibre_volume_fraction(1.0 - share, own["density"], resin_density, voids),
            HEXAGONAL_PACKING,
        )
        parts = Constituents(
            own["axial_modulus"],
            own["transverse_modulus"],
            own["shear_modulus"],
            own["poisson"],
            *resin_parts,
        )
        stiffness.append(cloth_plies(cloth, parts, fraction, voids, own["crimp_angle"]))
        thicknesses.append(ply_thickness(own["areal_weight"], own["density"], fraction))
        angles.append(
            ply.angle + draws.within("angles of the plies", 0.0, -scatter.angle, scatter.angle)
        )
        mass += own["areal_weight"] / (1.0 - share)
        found.append(
            _strengths(cloth, strengths[cloth.name], fraction, voids, knock_downs)
            if knock_downs is not None and cloth.name in strengths
            else None
        )
        core = layup.core
        if core is not None and core.after == number:
            lamina = core_lamina(core.sheet)
            stiffness.append(np.broadcast_to(reduced_stiffness(lamina), (scatter.samples, 3, 3)))
            thicknesses.append(np.full(scatter.samples, core.thickness))
            angles.append(np.zeros(scatter.samples))
            mass += 1000.0 * draws.of(core.sheet, "density") * core.thickness
            mass += 2.0 * draws.of(core.sheet, "bond_resin")
            found.append(None)
    return DrawnParts(
        np.stack(stiffness, axis=1),
        np.stack(angles, axis=1),
        np.stack(thicknesses, axis=1),
        mass,
        tuple(found),
    )


def _cloth_draws(cloth: Cloth, draws: Draws) -> dict[str, FloatArray]:
    names = ("density", "axial_modulus", "transverse_modulus", "shear_modulus", "poisson")
    found = {name: draws.of(cloth.fibre, name) for name in names}
    return found | {name: draws.of(cloth, name) for name in ("areal_weight", "crimp_angle")}


def _strengths(
    cloth: Cloth,
    drawn: tuple[FloatArray, ...],
    fraction: FloatArray,
    voids: FloatArray,
    knock_downs: KnockDowns,
) -> StrengthArrays:
    """Return what `laywright.laminate.knock_downs.knocked_down` gives, for every part."""
    along = fraction / cloth.strength_fibre_fraction
    across = np.ones_like(along) if cloth.weave is Weave.UNIDIRECTIONAL else along
    left = np.array([void_factor(float(share)) for share in voids])
    factors = (
        along * knock_downs.tension,
        along * knock_downs.compression,
        across * knock_downs.tension,
        across * knock_downs.compression,
        left * knock_downs.shear,
    )
    return StrengthArrays(
        *((value * factor)[:, None] for value, factor in zip(drawn, factors, strict=True))
    )


def margins_of(drawn: DrawnParts, load: LoadCase, criterion: Criterion) -> FloatArray:
    """Return the factor by which a load may grow until the first ply of each part fails.

    Parameters
    ----------
    drawn : DrawnParts
    load : LoadCase
    criterion : Criterion

    Returns
    -------
    numpy.ndarray
        (s,) float.
    """
    order = (drawn.stiffness, drawn.angles, drawn.thicknesses)
    strain, curvature = response(laminate_stiffness(*order), load.force, load.moment)
    strains = ply_strains(drawn.thicknesses, strain, curvature)
    stresses = ply_stresses(drawn.stiffness, drawn.angles, strains)
    own = (stress_rotation(drawn.angles)[:, :, None] @ stresses[..., None])[..., 0]
    least = np.full(len(own), np.inf)
    for number, strengths in enumerate(drawn.strengths):
        if strengths is None:
            continue
        compliance = np.linalg.inv(drawn.stiffness[:, number])[:, None]
        lamina = LaminaArrays(
            1.0 / compliance[..., 0, 0],
            1.0 / compliance[..., 1, 1],
            -compliance[..., 0, 1] / compliance[..., 0, 0],
            1.0 / compliance[..., 2, 2],
        )
        factors = strength_factor(criterion, own[:, number], strengths, lamina)
        least = np.minimum(least, factors.min(axis=1))
    return least
