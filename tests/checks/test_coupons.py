"""Formulas of coupon tests against the standards."""

from __future__ import annotations

import re

from checks import reference
from laywright.shop.coupons.bending import (
    ChordWindow,
    apparent_modulus_ratio,
    bending_strain,
    bending_strain_large,
    bending_stress,
    bending_stress_iso_14125,
    chord_modulus,
)
from laywright.shop.record.hardness import HardnessScale, hardness_remarks


def test_cpn_01_three_point_bending():
    size = (64.0, 15.2, 2.10)
    reference.agree(
        "CPN-01",
        {
            "stress": bending_stress(412.0, *size),
            "strain": bending_strain(3.35, 64.0, 2.10),
            "E": bending_stress(118.0, *size) / bending_strain(1.0, 64.0, 2.10),
        },
    )


def test_cpn_02_large_deflection_in_the_limit_of_a_thin_strip():
    thin = 1e-6
    factor = bending_stress_iso_14125(1.0, 100.0, 10.0, thin, 10.0) / bending_stress(
        1.0, 100.0, 10.0, thin
    )
    reference.agree(
        "CPN-02",
        {
            "stress_factor_leading_0.10": factor,
            "strain_coeff_0.10": bending_strain_large(10.0, 100.0, thin) * 100.0 / thin,
        },
    )


def test_cpn_03_large_deflection_evaluated():
    size, deflection = (80.0, 12.7, 1.6), 11.2
    reference.agree(
        "CPN-03",
        {
            "sigma_simple": bending_stress(96.0, *size),
            "sigma_ISO14125": bending_stress_iso_14125(96.0, *size, deflection),
            "strain_simple": bending_strain(deflection, 80.0, 1.6),
            "strain_ISO14125": bending_strain_large(deflection, 80.0, 1.6),
        },
    )


def test_cpn_05_shear_lowers_the_modulus():
    reference.agree(
        "CPN-05",
        {
            f"ratio_{stiff}_{span}": apparent_modulus_ratio(stiff, span)
            for stiff, span in ((15, 16), (15, 32), (30, 40))
        },
    )


def test_cpn_07_chord_modulus():
    strain = [0.0005, 0.0010, 0.0015, 0.0020, 0.0025, 0.0030]
    stress = [21.9, 43.5, 65.2, 86.6, 108.3, 129.5]
    reference.agree(
        "CPN-07",
        {
            "E_ISO527": chord_modulus(strain, stress, ChordWindow.ISO_527) / 1e3,
            "E_D3039": chord_modulus(strain, stress, ChordWindow.ASTM_D3039) / 1e3,
        },
    )


def test_cpn_08_hardness_tells_of_the_cure_only():
    """Ranges of the row, and the share of the maker's value below which resin is under-cured."""
    texts = {item["name"]: item["value"] for item in reference.row("CPN-08")["expected"]}
    for scale, name in ((HardnessScale.BARCOL, "Barcol_934"), (HardnessScale.SHORE_D, "Shore_D")):
        low, high = (float(number) for number in re.findall(r"\d+", texts[name])[:2])
        assert scale.usual == (low, high)
    least, most = re.findall(r"(\d+)-(\d+)%", texts["Barcol_934"])[0]
    full = 50.0

    def said(share: float) -> str:
        return " ".join(hardness_remarks([share * full], HardnessScale.BARCOL, full))

    assert "not cured through" in said(int(least) / 100.0 - 0.01)
    assert "perhaps" not in said(int(least) / 100.0 - 0.01)
    assert "perhaps not cured through" in said(int(most) / 100.0 - 0.01)
    assert said(int(most) / 100.0) == ""
    assert "modulus" not in said(0.1)
