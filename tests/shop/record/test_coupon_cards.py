from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest

from laywright.arrays import floats
from laywright.errors import InputError, MaterialError
from laywright.laminate.card_files import Knowledge, write_card
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.shop.coupons.coupon import Ending, TensionCoupon
from laywright.shop.coupons.coupon_compare import bending_prediction
from laywright.shop.coupons.coupons import evaluate_tension
from laywright.shop.record.coupon_cards import (
    fibre_modulus,
    with_fibre_modulus,
    with_tension_strength,
)

MATERIALS = load_materials()
CLOTH = MATERIALS.cloth("E-glass twill weave 200 g/m^2")
CARBON = MATERIALS.cloth("Carbon twill weave 200 g/m^2")
RESIN = MATERIALS.resins["Laminating epoxy, slow hardener"]
LAMINATE = analyse(Layup((Ply(CLOTH, 0.0),) * 4, RESIN))


def pulled(modulus: float = 15e3, ending: Ending = Ending.BROKEN):
    strain = np.linspace(0.0, 0.015, 40)
    force = 40.0 * modulus * strain
    coupons = tuple(
        TensionCoupon(f"{k}", 20.0, 2.0, floats(strain, -1), floats(force, -1), ending)
        for k in range(5)
    )
    return evaluate_tension(coupons)


def stiffer(factor: float):
    fibre = dataclasses.replace(CLOTH.fibre, axial_modulus=factor * CLOTH.fibre.axial_modulus)
    cloth = dataclasses.replace(CLOTH, fibre=fibre)
    return analyse(Layup((Ply(cloth, 0.0),) * 4, RESIN))


@pytest.mark.parametrize("factor", [0.6, 1.0, 1.3])
def test_the_fibre_that_gave_the_modulus_is_found_again(factor):
    made = stiffer(factor)
    wanted = factor * CLOTH.fibre.axial_modulus
    assert fibre_modulus(LAMINATE, made.in_plane.e_x) == pytest.approx(wanted, rel=1e-4)
    bent = bending_prediction(made, 32.0).modulus
    assert fibre_modulus(LAMINATE, bent, bent_over=32.0) == pytest.approx(wanted, rel=1e-4)


def test_with_the_new_card_the_laminate_comes_out_as_measured(tmp_path):
    report = pulled(17e3)
    card = with_fibre_modulus(MATERIALS, LAMINATE, report, "2026-11-25")
    write_card(card, tmp_path)
    cloth = load_materials(tmp_path).cloth(CLOTH.name)
    assert analyse(Layup((Ply(cloth, 0.0),) * 4, RESIN)).in_plane.e_x == pytest.approx(
        17e3, rel=1e-4
    )
    value = card.values["axial_modulus"]
    assert value.kind is Knowledge.MEASURED
    assert "5 coupons" in value.source
    assert "2026-11-25" in value.source


def test_a_strength_goes_onto_the_card_of_its_cloth_with_its_count(tmp_path):
    report = pulled()
    card = with_tension_strength(MATERIALS, LAMINATE, report, "2026-11-25")
    assert card.values["strengths.tension_1"].value == pytest.approx(15e3 * 0.015)
    assert "5 coupons" in card.values["strengths.tension_1"].source
    write_card(card, tmp_path)
    cloth = load_materials(tmp_path).cloth(CLOTH.name)
    assert cloth.strengths.tension_1 == pytest.approx(225.0)
    assert cloth.strength_fibre_fraction == pytest.approx(LAMINATE.fibre_volume_fraction)
    assert cloth.strengths.shear == CLOTH.strengths.shear


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: fibre_modulus(LAMINATE, 1e6), "a modulus of 1000000 MPa"),
        (
            lambda: with_tension_strength(MATERIALS, LAMINATE, pulled(ending=Ending.STOPPED), ""),
            "no coupon that broke",
        ),
        (
            lambda: with_tension_strength(
                MATERIALS,
                analyse(Layup((Ply(CLOTH, 0.0), Ply(CLOTH, math.pi / 4)), RESIN)),
                pulled(),
                "",
            ),
            "several angles",
        ),
        (
            lambda: with_tension_strength(
                MATERIALS,
                analyse(
                    Layup(
                        (
                            Ply(CLOTH, 0.0),
                            Ply(MATERIALS.cloth("Carbon twill weave 200 g/m^2"), 0.0),
                        ),
                        RESIN,
                    )
                ),
                pulled(),
                "",
            ),
            "one cloth and no core",
        ),
    ],
)
def test_what_cannot_be_learnt_is_said(call, words):
    with pytest.raises((InputError, MaterialError), match=words):
        call()
