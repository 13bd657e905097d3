"""Thickness and mass of plies against published numbers."""

from __future__ import annotations

import dataclasses

from scipy.optimize import brentq

from checks import reference
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.micromechanics import (
    fibre_volume_fraction,
    ply_thickness,
)
from laywright.laminate.plies import Layup, Ply
from laywright.shop.mixing.mix import MixSettings, PlyCloth, plan_mix

MATERIALS = load_materials()
RESIN = MATERIALS.resin("Laminating epoxy, slow hardener")


def ply_of(density: float, areal_weight: float, name: str) -> Ply:
    cloth = MATERIALS.cloth(name)
    fibre = dataclasses.replace(cloth.fibre, density=density)
    return Ply(dataclasses.replace(cloth, fibre=fibre, areal_weight=areal_weight), 0.0)


def test_mic_07_one_ply():
    fibre_share = brentq(lambda share: fibre_volume_fraction(share, 1.76, 1.15) - 0.45, 0.1, 0.9)
    resin = dataclasses.replace(RESIN, density=1.15)
    made = analyse(
        Layup(
            (ply_of(1.76, 200.0, "Carbon twill weave 200 g/m^2"),),
            resin,
            resin_share=1.0 - fibre_share,
        )
    )
    reference.agree(
        "MIC-07",
        {
            "t": made.thickness,
            "resin": made.resin_areal,
            "Wf": 1.0 - made.resin_share,
            "ply_mass": made.areal_mass,
        },
    )
    assert abs(ply_thickness(200.0, 1.76, 0.45) - made.thickness) < 1e-12


def test_mic_09_chopped_strand_mat():
    """Densities of the lecture: 2.56 and 1.20 g/cm^3 give its printed numbers."""
    mat = ply_of(2.56, 450.0, "E-glass chopped strand mat 300 g/m^2")
    made = analyse(Layup((mat, mat), dataclasses.replace(RESIN, density=1.20)))
    reference.agree(
        "MIC-09",
        {
            "h": made.thickness,
            "Vf": made.fibre_volume_fraction,
            "Wf": made.cloth_areal / made.areal_mass,
        },
    )


def test_mic_10_shop_rule():
    cloth = (PlyCloth(1, "8 oz cloth", 1e6, 224.0),)
    plan = plan_mix(cloth, RESIN, 0.40, MixSettings(extra_share=0.0, cup_limit_g=200.0))
    reference.agree("MIC-10", {"resin": plan.laminate_resin_g})


def test_mic_11_mass_to_volume():
    reference.agree(
        "MIC-11",
        {
            "Vf_glass": fibre_volume_fraction(0.6, 2.54, 1.18),
            "Vf_carbon": fibre_volume_fraction(0.6, 1.76, 1.15),
            "Vf_aramid": fibre_volume_fraction(0.6, 1.44, 1.15),
        },
    )
