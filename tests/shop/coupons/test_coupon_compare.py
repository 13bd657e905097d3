from __future__ import annotations

import dataclasses

import numpy as np
import pytest

from laywright.arrays import floats
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.shop.coupons.coupon import TensionCoupon
from laywright.shop.coupons.coupon_compare import (
    Prediction,
    bending_prediction,
    compare,
    tension_prediction,
)
from laywright.shop.coupons.coupons import evaluate_tension

MATERIALS = load_materials()
CLOTH = MATERIALS.cloth("E-glass twill weave 200 g/m^2")
LAMINATE = analyse(
    Layup((Ply(CLOTH, 0.0),) * 8, MATERIALS.resins["Laminating epoxy, slow hardener"])
)


def pulled(modulus: float, strength: float, count: int = 5, scatter: float = 0.0):
    coupons = []
    for k in range(count):
        e = modulus * (1.0 + scatter * (k - (count - 1) / 2.0))
        strain = np.linspace(0.0, strength / e, 50)
        coupons.append(
            TensionCoupon(f"{k}", 20.0, 2.0, floats(strain, -1), floats(40.0 * e * strain, -1))
        )
    return evaluate_tension(tuple(coupons))


def test_shear_of_the_span_is_that_of_one_even_plate():
    stiffness = LAMINATE.bending.e_x * LAMINATE.thickness**3 / 12.0
    for ratio in (16.0, 32.0, 40.0):
        span = ratio * LAMINATE.thickness
        found = bending_prediction(LAMINATE, span).modulus
        bent, sheared = span**3 / (48.0 * stiffness), span / (4.0 * LAMINATE.shear[0])
        assert found / LAMINATE.bending.e_x == pytest.approx(bent / (bent + sheared), rel=1e-9)


def test_strengths_of_one_cloth_are_those_of_its_card():
    """Eight equal plies pulled along the warp fail at the strength of the cloth itself."""
    strengths = CLOTH.strengths
    fraction = LAMINATE.fibre_volume_fraction / CLOTH.strength_fibre_fraction
    assert tension_prediction(LAMINATE).strength == pytest.approx(
        strengths.tension_1 * fraction, rel=0.02
    )
    assert tension_prediction(LAMINATE).modulus == LAMINATE.in_plane.e_x
    bent = bending_prediction(LAMINATE, 64.0).strength
    assert bent == pytest.approx(
        min(strengths.tension_1, strengths.compression_1) * fraction, rel=0.02
    )


def test_without_strengths_on_the_card_there_is_a_modulus_only():
    bare = dataclasses.replace(CLOTH, strengths=None)
    laminate = analyse(Layup((Ply(bare, 0.0),) * 8, LAMINATE.layup.resin))
    assert tension_prediction(laminate).strength is None
    (only,) = compare(pulled(15e3, 200.0), tension_prediction(laminate))
    assert only.what == "modulus"


@pytest.mark.parametrize(
    ("factor", "scatter", "words"),
    [
        (1.0, 0.0, "as good as cards and hands allow"),
        (0.7, 0.0, "-30%: too much resin"),
        (1.4, 0.0, "+40%, stiffer than the cards"),
        (1.2, 0.3, "scatter as much"),
    ],
)
def test_findings_say_what_a_difference_means(factor, scatter, words):
    report = pulled(15e3 * factor, 200.0, scatter=scatter)
    modulus, strength = compare(report, Prediction(15e3, 200.0))
    assert words in modulus.finding
    assert modulus.ratio == pytest.approx(factor)
    assert strength.ratio == pytest.approx(1.0)
