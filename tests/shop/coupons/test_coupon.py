from __future__ import annotations

import pytest

from laywright.arrays import floats
from laywright.errors import InputError
from laywright.shop.coupons.coupon import BendCoupon, CouponSet, Ending, TensionCoupon
from laywright.values import pack, unpack

RISING = floats([0.0, 1.0, 2.0], -1)


@pytest.mark.parametrize(
    ("call", "where"),
    [
        (lambda: TensionCoupon("a", 0.0, 1.0, RISING, RISING), "coupon a: width"),
        (lambda: TensionCoupon("a", 20.0, 2000.0, RISING, RISING), "coupon a: thickness"),
        (lambda: BendCoupon("a", 20.0, 2.0, 6.0, RISING, RISING), "coupon a: span"),
        (lambda: TensionCoupon("a", 20.0, 2.0, RISING[::-1], RISING), "coupon a"),
        (lambda: TensionCoupon("a", 20.0, 2.0, RISING, RISING * 0.0), "coupon a"),
        (lambda: TensionCoupon("a", 20.0, 2.0, RISING, RISING[:2]), "coupon a"),
    ],
)
def test_bad_records_are_named(call, where):
    with pytest.raises(InputError) as caught:
        call()
    assert caught.value.where == where


def test_coupons_survive_storage():
    bent = BendCoupon("a", 15.0, 2.0, 64.0, RISING, RISING, Ending.STOPPED)
    pulled = TensionCoupon("b", 15.0, 2.0, RISING, RISING)
    for coupon in (bent, pulled):
        assert pack(unpack(type(coupon), pack(coupon))) == pack(coupon)


def test_a_name_stands_for_one_coupon_of_the_set():
    bent = BendCoupon("A1", 15.0, 2.0, 64.0, RISING, RISING)
    pulled = TensionCoupon("A2", 15.0, 2.0, RISING, RISING)
    both = CouponSet().with_coupon(bent).with_coupon(pulled)
    assert both.names == ("A1", "A2")
    assert pack(unpack(CouponSet, pack(both))) == pack(both)
    assert both.without("A1").names == ("A2",)
    assert both.without("A1").with_coupon(bent).names == both.names
    with pytest.raises(InputError, match="a name that is taken"):
        both.with_coupon(bent)
    with pytest.raises(InputError, match="no name"):
        both.with_coupon(BendCoupon(" ", 15.0, 2.0, 64.0, RISING, RISING))


def test_a_size_is_corrected_and_the_readings_stay():
    bent = BendCoupon("A1", 15.0, 2.0, 64.0, RISING, RISING)
    pulled = TensionCoupon("A2", 15.0, 2.0, RISING, RISING)
    before = CouponSet((bent,), (pulled,))
    after = before.resized("A1", thickness=2.1).resized("A2", width=14.5)
    (first,), (second,) = after.bent, after.pulled
    assert (first.width, first.thickness, first.span) == (15.0, 2.1, 64.0)
    assert (second.width, second.thickness) == (14.5, 2.0)
    assert first.force is bent.force
    with pytest.raises(InputError, match="A3"):
        before.resized("A3", width=14.0)
    with pytest.raises(InputError, match="coupon A1: width"):
        before.resized("A1", width=0.5)
