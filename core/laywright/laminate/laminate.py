"""The laminate that a layup makes: thickness, mass, fibre fraction, stiffness, remarks."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.laminate.constituents import Weave
from laywright.laminate.coupling import State, coupling_words, free_shape_words, state_of
from laywright.laminate.layers import Layer, layers, ply_fraction, stack_of
from laywright.laminate.micromechanics import mixture
from laywright.laminate.plies import Layup, Process
from laywright.laminate.stiffness import (
    Moduli,
    Stiffness,
    bending_moduli,
    free_resultants,
    in_plane_moduli,
    laminate_stiffness,
    response,
)
from laywright.laminate.transverse import transverse_stiffness
from laywright.stage import stage

__all__ = ["Laminate", "analyse", "main_of"]

_USUAL_FRACTION = {
    Process.HAND: (0.25, 0.55),
    Process.BAGGED: (0.35, 0.60),
    Process.INFUSED: (0.40, 0.65),
}
_USUAL_MAT_FRACTION = (0.10, 0.30)


@dataclass(frozen=True, eq=False)
class Laminate:
    """What a layup gives when it is cured, where only the plies lie that cover the whole face.

    Attributes
    ----------
    layup : Layup
        What it is made of.
    ply_thicknesses : (k,) float, mm
        Cured thickness of each ply, ply 1 first.
    ply_fibre_fractions : (k,) float
        Fibre volume over laminate volume, of each ply.
    thickness : float, mm
        Of the whole, core included.
    areal_mass, cloth_areal, resin_areal, core_areal : float, g/m^2
        Mass per area of the whole, of its dry cloth, of its resin and of its core; the resin
        includes what bonds the core.
    fibre_volume_fraction : float
        Fibre volume over laminate volume, of all plies together; the core is not counted.
    a, b, d : (3, 3) float, N/mm, N, N mm
        Stiffness about the middle, in the axes of the layup.
    in_plane, bending : Moduli
        Engineering constants when pulled and when bent.
    shear : (2,) float, N/mm
        Transverse shear stiffness when bent along the datum arrow and across it.
    expansion, swelling : (3,) float, 1/K and 1
        Strain of the middle per kelvin, and for each unit of water in the mass of the resin.
    warp, swell_warp : (3,) float, 1/(mm K) and 1/mm
        Curvature of a free piece per kelvin, and for each unit of water in the mass of the
        resin; zero for a symmetric layup.
    state : State
        Whether it is symmetric and balanced.
    couplings : tuple of str
        What else happens when it is pulled or bent.
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
    core_areal: float
    fibre_volume_fraction: float
    a: FloatArray
    b: FloatArray
    d: FloatArray
    in_plane: Moduli
    bending: Moduli
    shear: FloatArray
    expansion: FloatArray
    swelling: FloatArray
    warp: FloatArray
    swell_warp: FloatArray
    state: State
    couplings: tuple[str, ...]
    remarks: tuple[str, ...]
    digest: str = ""

    @property
    def ply_heights(self) -> FloatArray:
        """Height of the middle of each ply above the mould, (k,) float, mm.

        Of a ply that covers the whole face where no local one lies below, and of a local one
        where all those below do.
        """
        through = np.isin(np.arange(len(self.ply_thicknesses)) + 1, self.layup.throughout)
        tops = np.cumsum(self.ply_thicknesses)
        main = np.cumsum(np.where(through, self.ply_thicknesses, 0.0))
        tops = np.where(through, main, tops)
        core = self.layup.core
        if core is not None:
            tops[core.after :] += core.thickness
        return floats(tops - self.ply_thicknesses / 2.0, -1)

    @property
    def stiffness(self) -> Stiffness:
        """A, B and D as one value."""
        return Stiffness(self.a, self.b, self.d)

    @property
    def bending_stiffness(self) -> tuple[float, float]:
        """Stiffness of a strip bent along the datum arrow and across it, per width, N mm."""
        part = self.thickness**3 / 12.0
        return self.bending.e_x * part, self.bending.e_y * part

    @property
    def resin_share(self) -> float:
        """Share of resin in the mass of cloth and resin."""
        return self.resin_areal / (self.cloth_areal + self.resin_areal)


@stage("Layup", version=3)
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
    every, main = layers(layup), layup.main
    stack = stack_of(layers(main))
    plies = [layer.thickness for layer in every if layer.ply is not None]
    fractions = [ply_fraction(layup, number) for number in range(1, len(plies) + 1)]
    thickness = math.fsum(stack.thicknesses.tolist())
    cloth = math.fsum(ply.cloth.areal_weight for ply in main.plies)
    resin, core = _resin_and_core(main)
    own = [(plies[n - 1], fractions[n - 1]) for n in layup.throughout]

    order = (stack.stiffness, stack.angles, stack.thicknesses)
    stiffness = laminate_stiffness(*order)
    free = [
        response(stiffness, *free_resultants(order[0], strains, *order[1:]))
        for strains in stack.free
    ]
    (expansion, warp), (swelling, swell_warp) = free
    state = state_of(stiffness, thickness)
    return Laminate(
        layup=layup,
        ply_thicknesses=floats(plies, -1),
        ply_fibre_fractions=floats(fractions, -1),
        thickness=thickness,
        areal_mass=cloth + resin + core,
        cloth_areal=cloth,
        resin_areal=resin,
        core_areal=core,
        fibre_volume_fraction=mixture(
            [fraction for _, fraction in own], [t / math.fsum(t for t, _ in own) for t, _ in own]
        ),
        a=floats(stiffness.a, 3, 3),
        b=floats(stiffness.b, 3, 3),
        d=floats(stiffness.d, 3, 3),
        in_plane=in_plane_moduli(stiffness, thickness),
        bending=bending_moduli(stiffness, thickness),
        shear=floats(
            [
                transverse_stiffness(*order, stack.through, direction)
                for direction in (0.0, math.pi / 2.0)
            ],
            2,
        ),
        expansion=floats(expansion, 3),
        swelling=floats(swelling, 3),
        warp=floats(warp, 3),
        swell_warp=floats(swell_warp, 3),
        state=state,
        couplings=coupling_words(stiffness),
        remarks=(
            *_evenness_remarks(state, warp, swell_warp, layup.resin.water_uptake),
            *_fraction_remarks(layup, every, fractions),
        ),
    )


def main_of(laminate: Laminate) -> Laminate:
    """Return the laminate without its local plies: what there is on the whole face."""
    layup = laminate.layup
    return laminate if not layup.local else analyse(layup.main)


def _resin_and_core(layup: Layup) -> tuple[float, float]:
    """Return the resin and the core in a laminate, g/m^2."""
    held = []
    for number, ply in enumerate(layup.plies, start=1):
        share = layup.ply_resin_share(number)
        held.append(ply.cloth.areal_weight * share / (1.0 - share))
    if layup.core is None:
        return math.fsum(held), 0.0
    sheet = layup.core.sheet
    return math.fsum(held) + 2.0 * sheet.bond_resin, 1000.0 * sheet.density * layup.core.thickness


def _evenness_remarks(
    state: State, warp: FloatArray, swell_warp: FloatArray, water: float
) -> list[str]:
    remarks = []
    if not state.symmetric:
        trouble = free_shape_words(warp, swell_warp, water) or (
            "the part bends or twists when it is pulled",
        )
        remarks.append(
            f"The plies are not symmetric about the middle: {'; '.join(trouble)}. Mirror the plies "
            "about the middle to avoid it."
        )
    if not state.balanced:
        remarks.append(
            "The angles are not balanced: pulled along the datum arrow the laminate also shears. "
            "Give each angled ply a partner at the opposite angle to avoid it."
        )
    return remarks


def _fraction_remarks(layup: Layup, found: tuple[Layer, ...], fractions: list[float]) -> list[str]:
    remarks = []
    names = [layer.name for layer in found if layer.ply is not None]
    for name, ply, fraction in zip(names, layup.plies, fractions, strict=True):
        mat = ply.cloth.weave is Weave.MAT
        low, high = _USUAL_MAT_FRACTION if mat else _USUAL_FRACTION[layup.process]
        if low <= fraction <= high:
            continue
        trouble = "it may stay dry" if fraction > high else "it will be heavy and weak"
        remarks.append(
            f"{name.capitalize()} would hold {fraction:.0%} fibre by volume, "
            f"where {layup.process.value} work usually gives {low:.0%} to {high:.0%}: {trouble}. "
            "Check the resin share."
        )
    return remarks
