from __future__ import annotations

import math

import pytest

from laywright.errors import InputError
from laywright.shop.bench.finish import FinishPlan, FinishSettings, plan_finish
from laywright.values import pack, unpack

AREA = 5e5


def test_grits_rise_and_primer_lies_between_them():
    what = [span.what for span in plan_finish(AREA, FinishSettings()).spans]
    assert what[0].startswith("Fill seams")
    first, second = what.index("Primer, coat 1 of 2"), what.index("Primer, coat 2 of 2")
    assert second == first + 1
    assert what.index("Sand with 120 grit") < first
    assert what.index("Sand with 240 grit, wet") > second
    assert what[-2:] == ["Sealer, coat 1 of 2", "Sealer, coat 2 of 2"]


def test_amounts_grow_with_the_area_and_the_coats():
    one, two = plan_finish(AREA, FinishSettings()), plan_finish(2.0 * AREA, FinishSettings())
    for name in ("filler_g", "primer_g", "sealer_g"):
        assert getattr(two, name) == pytest.approx(2.0 * getattr(one, name))
    three = plan_finish(AREA, FinishSettings(primer_coats=3))
    assert three.primer_g == pytest.approx(1.5 * one.primer_g)
    assert three.build_mm > one.build_mm
    assert 0.1 <= one.build_mm <= 0.3, "the usual build; common practice, no source"


def test_the_build_is_what_is_left_when_it_is_dry():
    """240 g/m^2 of primer with 60 percent solids and 120 g/m^2 of sealer at 1.4 g/cm^3."""
    plan = plan_finish(AREA, FinishSettings())
    assert plan.build_mm == pytest.approx((0.6 * 240.0 + 120.0) / 1400.0)


def test_hours_add_up():
    settings = FinishSettings()
    plan = plan_finish(AREA, settings)
    waits = math.fsum(span.wait_minutes for span in plan.spans)
    assert waits == pytest.approx(60.0 * (4.0 + 6.0 + 2 * 4.0) + 15.0)


def test_plan_survives_storage():
    plan = plan_finish(AREA, FinishSettings())
    assert unpack(FinishPlan, pack(plan)) == plan
    assert unpack(FinishSettings, pack(FinishSettings())) == FinishSettings()


@pytest.mark.parametrize(
    ("call", "where"),
    [
        (lambda: FinishSettings(grits=(400, 80)), "grits"),
        (lambda: FinishSettings(primer_coats=-1), "coats of primer"),
        (lambda: FinishSettings(sealer_hours=1e4), "hours of the sealer"),
        (lambda: plan_finish(0.0, FinishSettings()), "mould area"),
    ],
)
def test_bad_input_is_named(call, where):
    with pytest.raises(InputError) as caught:
        call()
    assert caught.value.where == where
