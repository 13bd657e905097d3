from __future__ import annotations

import dataclasses

import numpy as np
import pytest

from laywright.arrays import floats
from laywright.errors import InputError
from laywright.shop.coupons.bending import ChordWindow, bending_strain, bending_stress
from laywright.shop.coupons.coupon import BendCoupon, Ending, TensionCoupon
from laywright.shop.coupons.coupons import CouponReport, evaluate_bending, evaluate_tension
from laywright.shop.coupons.statistics import A_BASIS, B_BASIS, basis_value
from laywright.values import pack, unpack

MODULUS, STRENGTH = 20e3, 300.0


def bent(name: str, strength: float = STRENGTH, span: float = 64.0) -> BendCoupon:
    """A strip of a straight-line material that breaks at a stress."""
    width, thickness = 15.0, 2.0
    top = strength / MODULUS / bending_strain(1.0, span, thickness)
    deflection = np.linspace(0.0, top, 60)
    stress = MODULUS * bending_strain(1.0, span, thickness) * deflection
    force = stress / bending_stress(1.0, span, width, thickness)
    return BendCoupon(name, width, thickness, span, floats(deflection, -1), floats(force, -1))


def pulled(name: str, strength: float = STRENGTH) -> TensionCoupon:
    strain = np.linspace(0.0, strength / MODULUS, 60)
    return TensionCoupon(name, 20.0, 1.5, floats(strain, -1), floats(30.0 * MODULUS * strain, -1))


@pytest.mark.parametrize(
    ("evaluate", "made"), [(evaluate_bending, bent), (evaluate_tension, pulled)]
)
def test_a_known_material_comes_back(evaluate, made):
    for window in ChordWindow:
        report = evaluate((made("a"),), window)
        (result,) = report.results
        assert result.strength == pytest.approx(STRENGTH, rel=1e-9)
        assert result.strain == pytest.approx(STRENGTH / MODULUS, rel=1e-9)
        assert result.modulus == pytest.approx(MODULUS, rel=1e-9)


def test_large_deflection_is_corrected():
    """Beyond a tenth of the span the plain formula is not used any more."""
    coupon = bent("thin", strength=3000.0)
    assert coupon.deflection[-1] > 0.1 * coupon.span
    (result,) = evaluate_bending((coupon,)).results
    ratio = coupon.deflection[-1] / coupon.span
    factor = 1.0 + 6.0 * ratio**2 - 3.0 * ratio * coupon.thickness / coupon.span
    assert result.strength == pytest.approx(3000.0 * factor, rel=1e-9)


def test_five_coupons_give_a_basis_value_and_four_do_not():
    strengths = [300.0, 310.0, 295.0, 305.0, 290.0]
    report = evaluate_tension(tuple(pulled(f"{s:.0f}", s) for s in strengths))
    assert report.strength.mean == pytest.approx(300.0, rel=1e-9)
    assert report.b_basis == pytest.approx(basis_value(report.strength, B_BASIS), rel=1e-12)
    assert report.a_basis == pytest.approx(basis_value(report.strength, A_BASIS), rel=1e-12)
    assert report.a_basis < report.b_basis < min(strengths)
    assert report.remarks == ()
    few = evaluate_tension(tuple(pulled(f"{s:.0f}", s) for s in strengths[:4]))
    assert (few.b_basis, few.a_basis) == (None, None)
    assert "too few" in few.remarks[0]


def test_wild_and_scattered_coupons_are_named():
    strengths = [300.0, 302.0, 298.0, 301.0, 299.0, 300.5, 450.0]
    remarks = " ".join(evaluate_tension(tuple(pulled(f"{s:g}", s) for s in strengths)).remarks)
    assert "Coupon 450 lies far from the others in strength" in remarks
    assert "scatter" in remarks


def test_what_did_not_break_has_a_modulus_and_no_strength():
    hung = dataclasses.replace(bent("hung"), ending=Ending.STOPPED)
    report = evaluate_bending((hung, hung))
    assert report.modulus.mean == pytest.approx(MODULUS, rel=1e-9)
    assert (report.strength, report.b_basis) == (None, None)
    assert report.results[0].strength is None
    assert report.results[0].stress == pytest.approx(STRENGTH, rel=1e-9)
    assert "No coupon broke" in " ".join(report.remarks)
    both = evaluate_bending((hung, bent("broken", 250.0)))
    assert both.strength.count == 1
    assert both.strength.mean == pytest.approx(250.0, rel=1e-9)
    assert both.modulus.count == 2


def test_a_short_span_is_remarked_on():
    assert "16 times the thickness" in evaluate_bending((bent("a", span=32.0),)).remarks[0]


def test_report_survives_storage():
    coupons = (bent("a"), bent("b", 310.0))
    report = evaluate_bending(coupons)
    assert unpack(CouponReport, pack(report)) == report
    assert report.digest == evaluate_bending.digest(coupons)


def test_no_coupon_is_refused():
    with pytest.raises(InputError, match="no coupon"):
        evaluate_tension(())
