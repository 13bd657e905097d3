"""The shipped cards against published ranges."""

from __future__ import annotations

import math
import re

import pytest

from checks import reference
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import Weave, load_materials
from laywright.laminate.plies import Layup, Ply, Process

MATERIALS = load_materials()
RESIN = MATERIALS.resin("Laminating epoxy, slow hardener")


def ranges(identity: str, name: str) -> list[tuple[float, float]]:
    (text,) = [e["value"] for e in reference.row(identity)["expected"] if e["name"] == name]
    return [(float(a), float(b)) for a, b in re.findall(r"([\d.]+)-([\d.]+)", text)]


@pytest.mark.parametrize(
    ("row", "name"),
    [
        ("E_glass", "E-glass"),
        ("carbon_HS", "Carbon, standard modulus"),
        ("aramid_49", "Aramid, high modulus"),
    ],
)
def test_mic_14_fibres(row, name):
    (low, high), _, (lightest, heaviest) = ranges("MIC-14", row)
    fibre = MATERIALS.fibre(name)
    assert low <= fibre.axial_modulus / 1e3 <= high
    assert lightest <= fibre.density * 1e3 <= heaviest


@pytest.mark.parametrize("name", MATERIALS.resin_names)
def test_mic_14_resins(name):
    (low, high), (lightest, heaviest) = ranges("MIC-14", "epoxy")
    resin = MATERIALS.resin(name)
    assert low <= resin.modulus / 1e3 <= high
    assert lightest <= resin.density * 1e3 <= heaviest


@pytest.mark.parametrize("name", MATERIALS.cloth_names)
@pytest.mark.parametrize("process", [Process.HAND, Process.BAGGED])
def test_mic_15_fibre_fraction_at_the_usual_resin_share(name, process):
    cloth = MATERIALS.cloth(name)
    if cloth.weave is Weave.MAT:
        row = "hand_layup_CSM"
        process = Process.HAND
    else:
        row = "hand_layup_woven_wet" if process is Process.HAND else "wet_layup_vacuum_bag"
    ((low, high),) = ranges("MIC-15", row)
    made = analyse(Layup((Ply(cloth, 0.0),), RESIN, process))
    assert low <= made.fibre_volume_fraction <= high
    assert made.remarks == ()


@pytest.mark.parametrize("name", MATERIALS.resin_names)
def test_cur_07_pot_life_is_stated_for_the_reference_mass(name):
    text = reference.row("CUR-07")["expected"][0]["value"]
    assert text.startswith(f"{MATERIALS.resin(name).pot_life_mass_g:.0f} g")


LOCKING = {
    Weave.PLAIN: "tight_plain_weave",
    Weave.TWILL: "twill_satin",
    Weave.SATIN: "twill_satin",
    Weave.BIAXIAL: "non_crimp",
}


@pytest.mark.parametrize(
    "cloth",
    [cloth for cloth in MATERIALS.cloths.values() if cloth.weave in LOCKING],
    ids=lambda cloth: cloth.name,
)
def test_drp_15_locking_angles(cloth):
    ((low, high),) = ranges("DRP-15", LOCKING[cloth.weave])
    assert low <= math.degrees(cloth.locking_angle) <= high
