"""Spring-in: why a corner comes off the mould tighter than it was laid.

Through its thickness a laminate shrinks far more than along the fibres, on cooling and while
the resin hardens, so that a bend of swept angle theta closes by

    theta * ((a_i - a_t) dT / (1 + a_t dT) + (p_i - p_t) / (1 + p_t))

(Nelson and Cairns 1989; Radford and Rennick 2000).  Neither the radius nor the thickness of
the corner enters, which agrees with the tests of Jain and others 1997.
"""

from __future__ import annotations

import dataclasses
import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray
from laywright.laminate.cloth_ply import yarns
from laywright.laminate.lamina import Lamina, reduced_stiffness
from laywright.laminate.laminate import Laminate, main_of
from laywright.laminate.rotation import rotated_expansion, rotated_stiffness, strain_rotation

__all__ = [
    "FreeStrain",
    "SpringIn",
    "closing_share",
    "cure_strain",
    "spring_in",
    "thermal_strain",
]


@dataclass(frozen=True)
class FreeStrain:
    """Free strain of a laminate that stays flat.

    Attributes
    ----------
    in_plane : tuple of float
        Along x, along y, engineering shear, in the axes of the layup.
    through : float
        Through the thickness.
    """

    in_plane: tuple[float, float, float]
    through: float

    def times(self, factor: float) -> FreeStrain:
        """Return the strain multiplied by a factor."""
        x, y, shear = (factor * part for part in self.in_plane)
        return FreeStrain((x, y, shear), factor * self.through)


@dataclass(frozen=True)
class SpringIn:
    """By how much a bend closes, in radians; negative if it opens.

    Attributes
    ----------
    thermal : float
        From cooling.
    cure : float
        From the shrinkage of the resin after gel.
    """

    thermal: float
    cure: float

    @property
    def total(self) -> float:
        """Both together, radians."""
        return self.thermal + self.cure


def spring_in(
    swept: float,
    in_plane: float,
    through: float,
    temperature_change: float,
    in_plane_shrinkage: float = 0.0,
    through_shrinkage: float = 0.0,
) -> SpringIn:
    """Return by how much a bend closes.

    Parameters
    ----------
    swept : float, radians
        Angle through which the skin turns: 180 degrees less the included angle.
    in_plane, through : float, 1/K
        Thermal expansion along the bend and through the thickness.
    temperature_change : float, K
        Negative on cooling.
    in_plane_shrinkage, through_shrinkage : float
        Strain while the resin hardens, negative.

    Examples
    --------
    >>> closed = spring_in(math.radians(90.0), 3e-6, 40e-6, -100.0)
    >>> round(math.degrees(closed.total), 3)
    0.334
    """
    thermal = (in_plane - through) * temperature_change / (1.0 + through * temperature_change)
    cure = (in_plane_shrinkage - through_shrinkage) / (1.0 + through_shrinkage)
    return SpringIn(swept * thermal, swept * cure)


def thermal_strain(laminate: Laminate) -> FreeStrain:
    """Return the free strain of a laminate per kelvin.

    In the plane by laminated plate theory, kept flat.  Through the thickness each ply expands
    as a transversely isotropic one and thins or thickens under the stresses that its
    neighbours put on it, with Poisson's ratio across the fibres by Christensen (1988).
    """
    parts: list[tuple[Lamina, float, float]] = []
    laminate = main_of(laminate)
    layup = laminate.layup
    for ply, fraction, thickness in zip(
        layup.plies,
        laminate.ply_fibre_fractions.tolist(),
        laminate.ply_thicknesses.tolist(),
        strict=True,
    ):
        parts += [
            (part.lamina, ply.angle + part.angle, part.share * thickness)
            for part in yarns(ply.cloth, layup.resin, fraction, layup.void_share)
        ]
    stiffness, force = np.zeros((3, 3)), np.zeros(3)
    for lamina, angle, thickness in parts:
        own = thickness * rotated_stiffness(reduced_stiffness(lamina), angle)
        stiffness += own
        force += own @ rotated_expansion(_expansion(lamina), angle)
    strain = np.linalg.solve(stiffness, force)
    through = math.fsum(t * _through(lamina, angle, strain) for lamina, angle, t in parts)
    x, y, shear = strain.tolist()
    return FreeStrain((x, y, shear), through / laminate.thickness)


def _expansion(lamina: Lamina) -> tuple[float, float, float]:
    return lamina.expansion_1, lamina.expansion_2, 0.0


def _through(lamina: Lamina, angle: float, strain: FloatArray) -> float:
    held = strain_rotation(angle) @ strain - _expansion(lamina)
    s1, s2, _ = (reduced_stiffness(lamina) @ held).tolist()
    poisson_12 = lamina.poisson_12
    poisson_21 = poisson_12 * lamina.modulus_2 / lamina.modulus_1
    poisson_23 = poisson_12 * (1.0 - poisson_21) / (1.0 - poisson_12)
    return float(
        lamina.expansion_2 - poisson_12 * s1 / lamina.modulus_1 - poisson_23 * s2 / lamina.modulus_2
    )


def cure_strain(laminate: Laminate) -> FreeStrain:
    """Return the free strain of a laminate while its resin hardens after gel.

    The same theory as for cooling, with fibres that do not shrink and resin that shrinks by
    what its card says.
    """
    layup = laminate.layup
    plies = tuple(
        dataclasses.replace(
            ply,
            cloth=dataclasses.replace(
                ply.cloth,
                fibre=dataclasses.replace(
                    ply.cloth.fibre, expansion_axial=0.0, expansion_transverse=0.0
                ),
            ),
        )
        for ply in layup.plies
    )
    still = dataclasses.replace(laminate, layup=dataclasses.replace(layup, plies=plies))
    return thermal_strain(still).times(-layup.resin.cure_shrinkage / layup.resin.expansion)


def closing_share(laminate: Laminate, temperature_change: float) -> float:
    """Return the share of its turn by which a bend of this laminate closes.

    Where a bend runs in no particular direction of the layup, the strain across it is taken as
    the mean over all directions.

    Parameters
    ----------
    laminate : Laminate
    temperature_change : float, K
        From the temperature at which the resin set to that of use; negative on cooling.

    Returns
    -------
    float
        Rounded to 1e-9: layups that close bends alike give the same share, and a mould made for
        one of them stays up to date for the other.
    """
    thermal, cure = thermal_strain(laminate), cure_strain(laminate)
    closing = spring_in(
        1.0,
        0.5 * (thermal.in_plane[0] + thermal.in_plane[1]),
        thermal.through,
        temperature_change,
        0.5 * (cure.in_plane[0] + cure.in_plane[1]),
        cure.through,
    ).total
    return round(closing, 9)
