from __future__ import annotations

import pytest

from laywright.errors import InputError
from laywright.laminate.materials import load_materials
from laywright.shop.cure import CurePlan, CureSettings, Support, plan_cure
from laywright.values import pack, unpack

RESIN = load_materials().resin("Laminating epoxy, slow hardener")


def test_at_the_temperature_of_the_card_the_card_speaks():
    plan = plan_cure(RESIN, CureSettings(RESIN.cure_temperature_c))
    assert (plan.gel_hours, plan.trim_until_hours) == (RESIN.gel_hours, RESIN.trim_end_hours)
    assert (plan.demould_hours, plan.cure_hours) == (RESIN.demould_hours, RESIN.cure_hours)
    assert plan.glass_transition_c == RESIN.glass_transition_c


def test_all_times_halve_for_ten_degrees_more():
    cool, warm = (plan_cure(RESIN, CureSettings(t)) for t in (18.0, 28.0))
    for name in (
        "pot_life_minutes",
        "gel_hours",
        "trim_until_hours",
        "demould_hours",
        "cure_hours",
    ):
        assert getattr(cool, name) == pytest.approx(2.0 * getattr(warm, name), rel=1e-12)


@pytest.mark.parametrize("temperature", [10.0, 21.0, 35.0])
def test_times_follow_each_other(temperature):
    plan = plan_cure(RESIN, CureSettings(temperature))
    times = (
        plan.pot_life_minutes / 60.0,
        plan.trim_from_hours,
        plan.trim_until_hours,
        plan.demould_hours,
        plan.cure_hours,
    )
    assert times == tuple(sorted(times))
    assert plan.gel_hours == plan.trim_from_hours


@pytest.mark.parametrize(
    ("post_cure", "hours", "expected"),
    [(None, 8.0, 55.0), (50.0, 8.0, 65.0), (80.0, 8.0, 85.0), (35.0, 8.0, 55.0), (60.0, 0.0, 55.0)],
)
def test_post_cure_raises_the_softening_up_to_the_resins_best(post_cure, hours, expected):
    plan = plan_cure(RESIN, CureSettings(post_cure_c=post_cure, post_cure_hours=hours))
    assert plan.glass_transition_c == expected


def said(**settings) -> str:
    return "\n".join(plan_cure(RESIN, CureSettings(**settings)).warnings)


def test_a_hot_post_cure_on_the_mould_is_warned_of_and_in_a_cradle_not():
    hot = {"mould_softening_c": 55.0, "post_cure_c": 60.0}
    assert "too hot for the mould" in said(**hot, post_cure_support=Support.MOULD)
    assert "too hot for the mould" not in said(**hot, post_cure_support=Support.CRADLE)
    assert "too hot for the mould" not in said(
        mould_softening_c=100.0, post_cure_c=60.0, post_cure_support=Support.MOULD
    )


def test_other_warnings():
    assert "The shop is at 45 degC" in said(temperature_c=45.0, mould_softening_c=50.0)
    assert "gains nothing" in said(post_cure_c=100.0)
    assert "warm it slowly" in said(post_cure_c=60.0)
    assert "never cure fully" in said(temperature_c=10.0)
    assert "rough here" in said(temperature_c=40.0)
    assert "out of the sun" in said(mould_softening_c=100.0)
    assert plan_cure(RESIN, CureSettings()).warnings[-1].startswith("Resin that collects")


def test_post_cure_step_says_how():
    steps = plan_cure(RESIN, CureSettings(post_cure_c=60.0, post_cure_hours=6.0)).steps
    assert any("a cradle" in step and "60 degC" in step and "6 hours" in step for step in steps)


def test_plan_survives_storage():
    settings = CureSettings(20.0, 55.0, 50.0, 10.0, Support.MOULD)
    plan = plan_cure(RESIN, settings)
    assert unpack(CurePlan, pack(plan)) == plan
    assert unpack(CureSettings, pack(settings)) == settings
    assert plan.digest == plan_cure.digest(RESIN, settings)


@pytest.mark.parametrize(
    ("settings", "where"),
    [
        ({"temperature_c": 60.0}, "shop temperature"),
        ({"mould_softening_c": 5.0}, "softening temperature of the mould"),
        ({"post_cure_c": 500.0}, "post-cure temperature"),
        ({"post_cure_hours": -1.0}, "length of the post-cure"),
    ],
)
def test_bad_settings_are_named(settings, where):
    with pytest.raises(InputError) as caught:
        CureSettings(**settings)
    assert caught.value.where == where
