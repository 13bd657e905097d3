"""Constituents to ply against textbook examples."""

from __future__ import annotations

import dataclasses

import pytest
from scipy.optimize import brentq

from checks import reference
from laywright.laminate.materials import Fibre, FibreKind, load_materials
from laywright.laminate.micromechanics import (
    HEXAGONAL_PACKING,
    fibre_volume_fraction,
    halpin_tsai,
    mixture,
    unidirectional,
)

GLASS = Fibre("glass of the example", 2.5, 85e3, 85e3, 85e3 / 2.4, 0.2, 5e-6, 5e-6, FibreKind.GLASS)
RESIN = dataclasses.replace(
    load_materials().resin("Laminating epoxy, slow hardener"),
    density=1.2,
    modulus=3.4e3,
    poisson=0.3,
    expansion=63e-6,
)


def test_mic_01_density_and_mass():
    fibre = brentq(lambda share: fibre_volume_fraction(share, 2.5, 1.2) - 0.7, 0.1, 0.99)
    reference.agree(
        "MIC-01",
        {"rho_c": 1e3 * mixture((2.5, 1.2), (0.7, 0.3)), "Wf": fibre, "Wm": 1.0 - fibre},
    )


def test_mic_02_elastic_constants():
    ply = unidirectional(GLASS, RESIN, 0.7)
    shear = (85e3 / 2.4, 3.4e3 / 2.6)
    reference.agree(
        "MIC-02",
        {
            "E1": ply.modulus_1 / 1e3,
            "nu12": ply.poisson_12,
            "E2_HalpinTsai": ply.modulus_2 / 1e3,
            "G12_HalpinTsai": ply.shear_12 / 1e3,
        },
    )
    assert ply.shear_12 == pytest.approx(halpin_tsai(*shear, 0.7, 1.0), rel=1e-12)


def test_mic_03_expansion():
    ply = unidirectional(GLASS, RESIN, 0.7)
    reference.agree("MIC-03", {"alpha1": ply.expansion_1 * 1e6, "alpha2": ply.expansion_2 * 1e6})


def test_mic_05_hybrid():
    reference.agree("MIC-05", {"E_cl": mixture((4.0, 131.0, 72.5), (0.4, 0.25, 0.35))})


def test_mic_15_packing_limits():
    rows = {item["name"]: item["value"] for item in reference.row("MIC-15")["expected"]}
    assert pytest.approx(rows["hard_ceiling_hexagonal_packing"], rel=1e-12) == HEXAGONAL_PACKING


def test_clt_13_axial_modulus_of_published_laminae():
    """Fibre and matrix moduli of the same paper (from memory) give its plies to 9 percent."""
    parts = {  # fibre modulus, matrix modulus GPa, fibre volume fraction
        "AS4/3501-6": (225.0, 4.2, 0.60),
        "T300/BSL914C": (230.0, 4.0, 0.60),
        "E-glass/LY556": (80.0, 3.35, 0.62),
        "Silenka E-glass/MY750": (74.0, 3.35, 0.60),
    }
    for item in reference.row("CLT-13")["expected"]:
        fibre, matrix, fraction = parts[item["name"]]
        assert mixture((fibre, matrix), (fraction, 1.0 - fraction)) == pytest.approx(
            item["value"][0], rel=0.09
        )
