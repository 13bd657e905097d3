from __future__ import annotations

import numpy as np
import pytest

from laywright.arrays import floats
from laywright.errors import InputError
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.shop.coupons.coupon import BendCoupon, CouponSet, TensionCoupon
from laywright.shop.coupons.coupon_assessment import CouponLoading, CouponTest, assess_coupons
from laywright.shop.coupons.coupon_compare import bending_prediction, tension_prediction
from laywright.shop.coupons.coupon_plan import CouponSettings, SpanRule, plan_coupons
from laywright.values import pack, unpack

MATERIALS = load_materials()
CLOTH = MATERIALS.cloth("E-glass twill weave 200 g/m^2")
LAMINATE = analyse(
    Layup((Ply(CLOTH, 0.0),) * 8, MATERIALS.resin("Laminating epoxy, slow hardener"))
)
PLAN = plan_coupons(LAMINATE)


def bent(name: str, factor: float = 1.0) -> BendCoupon:
    """A straight record of a coupon with this many times the predicted modulus."""
    modulus = factor * bending_prediction(LAMINATE, PLAN.span).modulus
    slope = 4.0 * modulus * 15.0 * PLAN.thickness**3 / PLAN.span**3
    travel = np.linspace(0.0, 6.0, 30)
    return BendCoupon(
        name, 15.0, PLAN.thickness, PLAN.span, floats(travel, -1), floats(slope * travel, -1)
    )


def pulled(name: str, factor: float = 1.0) -> TensionCoupon:
    modulus = factor * tension_prediction(LAMINATE).modulus
    strain = np.linspace(0.0, 0.014, 30)
    force = 15.0 * PLAN.thickness * modulus * strain
    return TensionCoupon(name, 15.0, PLAN.thickness, floats(strain, -1), floats(force, -1))


def test_before_the_test_there_is_the_plan():
    test = assess_coupons(LAMINATE, CouponSettings(6), CouponSet())
    assert test.plan == plan_coupons(LAMINATE, SpanRule.ASTM_D7264, 6)
    assert test.report is None
    assert test.comparisons == ()
    assert test.remarks == test.plan.remarks


def test_coupons_as_predicted_come_out_as_predicted():
    test = assess_coupons(
        LAMINATE,
        CouponSettings(5),
        CouponSet(tuple(bent(f"B{k}") for k in range(5))),
    )
    modulus = test.comparisons[0]
    assert modulus.ratio == pytest.approx(1.0, rel=1e-9)
    assert "within 15%" in modulus.finding
    assert test.span == PLAN.span
    assert test.remarks[0] == modulus.finding


def test_each_loading_counts_its_own_coupons():
    both = CouponSet((bent("B1", 0.9),), (pulled("P1", 1.1), pulled("P2", 1.1)))
    test = assess_coupons(LAMINATE, CouponSettings(), both, CouponLoading.TENSION)
    assert [result.name for result in test.report.results] == ["P1", "P2"]
    assert test.comparisons[0].ratio == pytest.approx(1.1)
    assert test.span is None
    test = assess_coupons(LAMINATE, CouponSettings(), both, CouponLoading.BENDING)
    assert test.comparisons[0].ratio == pytest.approx(0.9)


def test_it_survives_storage():
    settings = CouponSettings(5, SpanRule.ISO_14125_CARBON)
    test = assess_coupons(LAMINATE, settings, CouponSet((bent("B1"),)))
    assert pack(unpack(CouponTest, pack(test))) == pack(test)
    assert unpack(CouponSettings, pack(settings)) == settings
    assert test.plan.span == np.ceil(40.0 * LAMINATE.thickness)


def test_a_bad_number_is_refused():
    with pytest.raises(InputError, match="number of coupons"):
        CouponSettings(-1)
