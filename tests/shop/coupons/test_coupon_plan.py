from __future__ import annotations

import math

import pytest

from laywright.arrays import floats
from laywright.errors import InputError
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.shop.coupons.bending import bending_strain
from laywright.shop.coupons.coupon import BendCoupon
from laywright.shop.coupons.coupon_compare import bending_prediction
from laywright.shop.coupons.coupon_plan import CouponPlan, SpanRule, plan_coupons
from laywright.shop.coupons.coupons import evaluate_bending
from laywright.values import pack, unpack

MATERIALS = load_materials()
CLOTH = MATERIALS.cloth("E-glass twill weave 200 g/m^2")
RESIN = MATERIALS.resins["Laminating epoxy, slow hardener"]


def laminate(plies: int = 8):
    return analyse(Layup((Ply(CLOTH, 0.0),) * plies, RESIN))


@pytest.mark.parametrize(("rule", "ratio"), [("D790", 16), ("D7264", 32), ("CARBON", 40)])
def test_spans_follow_the_standard(rule, ratio):
    chosen = next(r for r in SpanRule if rule in r.name)
    plan = plan_coupons(laminate(), chosen)
    assert plan.span == math.ceil(ratio * plan.thickness)
    assert plan.length == math.ceil(1.2 * plan.span)


def test_the_plate_holds_all_coupons_with_saw_cuts():
    plan = plan_coupons(laminate(), count=6)
    assert plan.plate[0] >= plan.length
    assert plan.plate[1] >= 6 * plan.width + 5 * 2.0
    area = plan.plate[0] * plan.plate[1] * 1e-6
    assert plan.cloth_g == pytest.approx(8 * 200.0 * area)
    assert plan.resin_g == pytest.approx(plan.cloth_g), "equal masses by hand"


def test_weights_stay_in_the_straight_part_and_match_the_prediction():
    plan = plan_coupons(laminate())
    assert 4 <= len(plan.steps) <= 9
    for step in plan.steps:
        force = step.mass_g * 9.80665e-3
        slope = plan.span**3 / (4.0 * plan.width * plan.thickness**3)
        assert slope * force / step.deflection == pytest.approx(plan.modulus)
    last = plan.steps[-1]
    strain = bending_strain(last.deflection, plan.span, plan.thickness)
    assert 0.003 - 1e-12 <= strain < 0.004, "past the window of the chord modulus"
    assert plan.modulus == bending_prediction(laminate(), plan.span).modulus
    assert plan.break_g > last.mass_g


def test_a_thin_laminate_is_laid_double():
    said = " ".join(plan_coupons(laminate(2)).remarks)
    assert "plies twice" in said
    assert "plies twice" not in " ".join(plan_coupons(laminate(8)).remarks)
    assert "same cup" in said


def test_plan_survives_storage_and_bad_counts_are_refused():
    plan = plan_coupons(laminate())
    assert unpack(CouponPlan, pack(plan)) == plan
    with pytest.raises(InputError, match="number of coupons"):
        plan_coupons(laminate(), count=0)


@pytest.mark.parametrize("plies", [2, 4, 8, 16])
@pytest.mark.parametrize("stiffer", [0.8, 1.0, 1.15])
def test_the_weights_of_the_plan_are_enough_to_find_the_modulus(plies, stiffer):
    """Readings of the planned weights on a coupon that is a little off give its modulus."""
    plan = plan_coupons(laminate(plies))
    travel = [0.0, *(step.deflection / stiffer for step in plan.steps)]
    force = [0.0, *(step.mass_g * 9.80665e-3 for step in plan.steps)]
    coupon = BendCoupon(
        "B1", plan.width, plan.thickness, plan.span, floats(travel, -1), floats(force, -1)
    )
    (found,) = evaluate_bending((coupon,)).results
    assert found.modulus == pytest.approx(stiffer * plan.modulus, rel=1e-9)
