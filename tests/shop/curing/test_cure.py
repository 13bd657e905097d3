from __future__ import annotations

import dataclasses
import re

import pytest

from laywright.errors import InputError
from laywright.laminate.materials import load_materials
from laywright.shop.curing.cure import CurePlan
from laywright.shop.curing.cure import plan_cure as plan
from laywright.shop.curing.cure_settings import CureSettings, Support
from laywright.shop.curing.profile import TimeRule
from laywright.shop.kinetics import rate_ratio
from laywright.values import pack, unpack

RESIN = load_materials().resin("Laminating epoxy, slow hardener")
BARE = dataclasses.replace(RESIN, activation_energy=None)


def plan_cure(resin, settings: CureSettings) -> CurePlan:
    """A laminate of equal masses on a mould that softens at 52 degC unless said otherwise."""
    softening = settings.mould_softening_c or 52.0
    return plan(resin, dataclasses.replace(settings, mould_softening_c=softening), 0.5)


def test_at_the_temperature_of_the_card_the_card_speaks():
    made = plan_cure(RESIN, CureSettings(RESIN.cure_temperature_c))
    assert (made.gel_hours, made.trim_until_hours) == (RESIN.gel_hours, RESIN.trim_end_hours)
    assert (made.demould_hours, made.cure_hours) == (RESIN.demould_hours, RESIN.cure_hours)
    assert made.glass_transition_c == pytest.approx(RESIN.glass_transition_c)
    assert made.finish_hours == made.cure_hours


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
    made = plan_cure(RESIN, CureSettings(temperature))
    times = (
        made.pot_life_minutes / 60.0,
        made.trim_from_hours,
        made.trim_until_hours,
        made.demould_hours,
        made.cure_hours,
    )
    assert times == tuple(sorted(times))
    assert made.gel_hours == made.trim_from_hours
    assert [event.hours for event in made.events] == sorted(e.hours for e in made.events)


@pytest.mark.parametrize(
    ("post_cure", "hours", "expected"),
    [(None, 8.0, 55.0), (50.0, 8.0, 72.8), (80.0, 8.0, 85.0), (30.0, 8.0, 60.5), (60.0, 0.0, 55.0)],
)
def test_without_kinetics_the_card_bounds_what_a_post_cure_gives(post_cure, hours, expected):
    made = plan_cure(BARE, CureSettings(post_cure_c=post_cure, post_cure_hours=hours))
    assert made.glass_transition_c == pytest.approx(expected, abs=0.1)
    assert made.course is None
    assert {event.cure for event in made.events} == {None}
    with_course = plan_cure(RESIN, CureSettings(post_cure_c=post_cure, post_cure_hours=hours))
    assert 50.0 < with_course.glass_transition_c <= expected + 0.1


def test_a_post_cure_begins_when_the_part_is_off_the_mould_and_shortens_the_cure():
    made = plan_cure(RESIN, CureSettings(post_cure_c=60.0, post_cure_hours=8.0, ramp=13.0))
    assert made.post_cure_start == pytest.approx(made.demould_hours) == pytest.approx(30.0)
    assert made.post_cure_end == pytest.approx(30.0 + 3.0 + 8.0 + 3.0)
    assert made.cure_hours < made.post_cure_end < plan_cure(RESIN, CureSettings()).cure_hours
    assert made.mould_peak_c == 21.0
    what = [event.what for event in made.events]
    assert what.index("May leave the mould") < what.index("Post-cure: begin to warm")
    on_mould = plan_cure(
        RESIN,
        CureSettings(post_cure_c=60.0, post_cure_hours=8.0, post_cure_support=Support.MOULD),
    )
    assert on_mould.demould_hours == on_mould.post_cure_end
    assert on_mould.mould_peak_c == 60.0


def test_what_gets_no_heat_out_bounds_the_temperature():
    """450 J/g over 1.8 J/(g K) is 250 K; half of it glass at 0.8 makes 225 over 1.3."""
    made = plan_cure(RESIN, CureSettings())
    assert made.cup_bound_c == pytest.approx(21.0 + 250.0)
    assert made.laminate_bound_c == pytest.approx(21.0 + 225.0 / 1.3)


def test_the_card_s_energy_can_take_the_times_instead():
    warm = CureSettings(31.0, rule=TimeRule.ARRHENIUS)
    assert plan_cure(RESIN, warm).gel_hours == pytest.approx(8.0 / rate_ratio(55e3, 21.0, 31.0))
    assert plan_cure(RESIN, CureSettings(31.0)).gel_hours == pytest.approx(4.0)


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
    bare = plan_cure(BARE, CureSettings(post_cure_c=60.0))
    assert "warm it slowly" in " ".join(bare.warnings)
    hasty = said(post_cure_c=80.0, ramp=60.0)
    assert "it sags" in hasty
    assert "an hour or less" in hasty
    slow = re.search(r"warm by ([\d.]+) degC an hour", hasty)
    assert "it sags" not in said(post_cure_c=80.0, ramp=float(slow[1]))
    assert "never cure fully" in said(temperature_c=10.0)
    assert "times there are rough" in said(temperature_c=40.0)
    assert "out of the sun" in said(mould_softening_c=100.0)
    assert plan_cure(RESIN, CureSettings()).warnings[-1].startswith("Corners full of resin")


def test_post_cure_step_says_how():
    steps = plan_cure(RESIN, CureSettings(post_cure_c=60.0, post_cure_hours=6.0)).steps
    assert any("a cradle" in step and "60 degC" in step and "6 hours" in step for step in steps)


def test_plan_survives_storage():
    settings = CureSettings(20.0, 55.0, 50.0, 10.0, Support.MOULD)
    made = plan(RESIN, settings, 0.5)
    assert pack(unpack(CurePlan, pack(made))) == pack(made)
    assert unpack(CureSettings, pack(settings)) == settings
    assert made.digest == plan.digest(RESIN, settings, 0.5)


def test_a_mould_of_unknown_plastic_is_asked_about():
    with pytest.raises(InputError, match="data sheet of the plastic"):
        plan(RESIN, CureSettings(), 0.5)


@pytest.mark.parametrize(
    ("settings", "where"),
    [
        ({"temperature_c": 60.0}, "shop temperature"),
        ({"mould_softening_c": 5.0}, "softening temperature of the mould"),
        ({"post_cure_c": 500.0}, "post-cure temperature"),
        ({"post_cure_hours": -1.0}, "length of the post-cure"),
        ({"ramp": 0.0}, "warming of the post-cure"),
    ],
)
def test_bad_settings_are_named(settings, where):
    with pytest.raises(InputError) as caught:
        CureSettings(**settings)
    assert caught.value.where == where
