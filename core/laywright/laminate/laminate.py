"""The laminate that a layup makes: thickness, mass, fibre fraction, stiffness, remarks."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.laminate.cloth_ply import cloth_ply
from laywright.laminate.lamina import Lamina, reduced_stiffness
from laywright.laminate.materials import Weave
from laywright.laminate.micromechanics import (
    check_fraction,
    fibre_volume_fraction,
    mixture,
    ply_thickness,
)
from laywright.laminate.plies import Layup, Process
from laywright.laminate.stiffness import (
    Moduli,
    Stiffness,
    bending_moduli,
    in_plane_moduli,
    laminate_stiffness,
    response,
    thermal_resultants,
)
from laywright.stage import stage

__all__ = ["Laminate", "analyse", "laminae"]

_USUAL_FRACTION = {
    Process.HAND: (0.25, 0.55),
    Process.BAGGED: (0.35, 0.60),
    Process.INFUSED: (0.40, 0.65),
}
_USUAL_MAT_FRACTION = (0.10, 0.30)
_EVEN = 1e-6
_SAMPLE_LENGTH = 300.0
_SAMPLE_COOLING = 10.0
_VISIBLE_RISE = 0.05


@dataclass(frozen=True, eq=False)
class Laminate:
    """What a layup gives when it is cured.

    Attributes
    ----------
    layup : Layup
        What it is made of.
    ply_thicknesses : (k,) float, mm
        Cured thickness of each ply, ply 1 first.
    ply_fibre_fractions : (k,) float
        Fibre volume over laminate volume, of each ply.
    thickness : float, mm
        Of the whole.
    areal_mass, cloth_areal, resin_areal : float, g/m^2
        Mass per area of the whole, of its dry cloth and of its resin.
    fibre_volume_fraction : float
        Fibre volume over laminate volume, of the whole.
    a, b, d : (3, 3) float, N/mm, N, N mm
        Stiffness about the middle, in the axes of the layup.
    in_plane, bending : Moduli
        Engineering constants when pulled and when bent.
    expansion : (3,) float, 1/K
        Strain of the middle per kelvin.
    warp : (3,) float, 1/(mm K)
        Curvature of a free piece per kelvin; zero for a symmetric layup.
    remarks : tuple of str
        What a maker should know about it.
    digest : str
        Of its inputs.
    """

    layup: Layup
    ply_thicknesses: FloatArray
    ply_fibre_fractions: FloatArray
    thickness: float
    areal_mass: float
    cloth_areal: float
    resin_areal: float
    fibre_volume_fraction: float
    a: FloatArray
    b: FloatArray
    d: FloatArray
    in_plane: Moduli
    bending: Moduli
    expansion: FloatArray
    warp: FloatArray
    remarks: tuple[str, ...]
    digest: str = ""

    @property
    def ply_heights(self) -> FloatArray:
        """Height of the middle of each ply above the mould, (k,) float, mm."""
        tops = np.cumsum(self.ply_thicknesses)
        return floats(tops - self.ply_thicknesses / 2.0, -1)

    @property
    def stiffness(self) -> Stiffness:
        """A, B and D as one value."""
        return Stiffness(self.a, self.b, self.d)

    @property
    def resin_share(self) -> float:
        """Share of resin in the mass."""
        return self.resin_areal / self.areal_mass


def laminae(layup: Layup) -> tuple[Lamina, ...]:
    """Return the elastic constants of each ply of a layup, axis 1 along its warp."""
    return tuple(
        cloth_ply(ply.cloth, layup.resin, _fraction(layup, number), layup.void_share)
        for number, ply in enumerate(layup.plies, start=1)
    )


def _fraction(layup: Layup, number: int) -> float:
    fibre = layup.plies[number - 1].cloth.fibre
    fraction = fibre_volume_fraction(
        1.0 - layup.ply_resin_share(number), fibre.density, layup.resin.density, layup.void_share
    )
    return check_fraction(fraction, layup.ply_name(number))


@stage("Layup", version=1)
def analyse(layup: Layup) -> Laminate:
    """Return the laminate that a layup makes.

    The thickness of each ply follows from its areal weight, the densities, the resin share and
    the voids; it is never a constant of the cloth.

    Parameters
    ----------
    layup : Layup

    Returns
    -------
    Laminate

    Raises
    ------
    LimitError
        If a ply would hold more fibre than can be packed.
    """
    numbers = range(1, len(layup.plies) + 1)
    fractions = [_fraction(layup, number) for number in numbers]
    thicknesses = [
        ply_thickness(ply.cloth.areal_weight, ply.cloth.fibre.density, fraction)
        for ply, fraction in zip(layup.plies, fractions, strict=True)
    ]
    cloth = [ply.cloth.areal_weight for ply in layup.plies]
    shares = [layup.ply_resin_share(number) for number in numbers]
    resin = [mass * share / (1.0 - share) for mass, share in zip(cloth, shares, strict=True)]
    thickness = math.fsum(thicknesses)

    plies = laminae(layup)
    angles = [ply.angle for ply in layup.plies]
    stiffness_of_plies = np.stack([reduced_stiffness(lamina) for lamina in plies])
    expansions = [(lamina.expansion_1, lamina.expansion_2, 0.0) for lamina in plies]
    stiffness = laminate_stiffness(stiffness_of_plies, angles, thicknesses)
    expansion, warp = response(
        stiffness, *thermal_resultants(stiffness_of_plies, expansions, angles, thicknesses)
    )
    return Laminate(
        layup=layup,
        ply_thicknesses=floats(thicknesses, -1),
        ply_fibre_fractions=floats(fractions, -1),
        thickness=thickness,
        areal_mass=math.fsum(cloth) + math.fsum(resin),
        cloth_areal=math.fsum(cloth),
        resin_areal=math.fsum(resin),
        fibre_volume_fraction=mixture(fractions, [t / thickness for t in thicknesses]),
        a=floats(stiffness.a, 3, 3),
        b=floats(stiffness.b, 3, 3),
        d=floats(stiffness.d, 3, 3),
        in_plane=in_plane_moduli(stiffness, thickness),
        bending=bending_moduli(stiffness, thickness),
        expansion=floats(expansion, 3),
        warp=floats(warp, 3),
        remarks=(
            *_symmetry_remarks(stiffness, thickness, warp),
            *_fraction_remarks(layup, fractions),
        ),
    )


def _symmetry_remarks(stiffness: Stiffness, thickness: float, warp: FloatArray) -> list[str]:
    remarks = []
    scale = float(np.abs(stiffness.a).max())
    if float(np.abs(stiffness.b).max()) > _EVEN * scale * thickness:
        rise = float(np.abs(warp).max()) * _SAMPLE_COOLING * _SAMPLE_LENGTH**2 / 8.0
        trouble = (
            "the part will warp when it cools from cure, a flat strip of "
            f"{_SAMPLE_LENGTH:.0f} mm rises by about {rise:.1f} mm for each "
            f"{_SAMPLE_COOLING:.0f} degC"
            if rise > _VISIBLE_RISE
            else "the part bends or twists when it is pulled"
        )
        remarks.append(
            f"The plies are not symmetric about the middle: {trouble}. Mirror the plies about "
            "the middle to avoid it."
        )
    coupling = max(abs(stiffness.a[0, 2]), abs(stiffness.a[1, 2]))
    if coupling > _EVEN * scale:
        remarks.append(
            "The angles are not balanced: pulled along the datum arrow the laminate also shears. "
            "Give each angled ply a partner at the opposite angle to avoid it."
        )
    return remarks


def _fraction_remarks(layup: Layup, fractions: list[float]) -> list[str]:
    remarks = []
    for number, (ply, fraction) in enumerate(zip(layup.plies, fractions, strict=True), start=1):
        mat = ply.cloth.weave is Weave.MAT
        low, high = _USUAL_MAT_FRACTION if mat else _USUAL_FRACTION[layup.process]
        if low <= fraction <= high:
            continue
        trouble = "it may stay dry" if fraction > high else "it will be heavy and weak"
        remarks.append(
            f"{layup.ply_name(number).capitalize()} would hold {fraction:.0%} fibre by volume, "
            f"where {layup.process.value} work usually gives {low:.0%} to {high:.0%}: {trouble}. "
            "Check the resin share."
        )
    return remarks
