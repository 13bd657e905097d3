from __future__ import annotations

import dataclasses

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from laywright.laminate.materials import load_materials
from laywright.shop.curing.course import CureCourse, cure_along, cure_at, glass_transition_limit
from laywright.shop.curing.profile import Profile, TimeRule, room_profile, speed, with_post_cure
from laywright.shop.kinetics import glass_transition, nth_order_cure
from laywright.values import pack, unpack

RESIN = load_materials().resin("Laminating epoxy, slow hardener")
FREE = dataclasses.replace(RESIN, glass_transition_c=84.0)  # so that nothing freezes below 21 degC
TEN = TimeRule.TEN_DEGREES


def test_it_gels_when_the_card_says():
    course = cure_along(RESIN, room_profile(21.0), 24.0, TEN)
    assert course.at(RESIN.gel_hours)[0] == pytest.approx(RESIN.gel_conversion, abs=1e-3)


@pytest.mark.parametrize("order", [1.0, 1.5, 2.0])
def test_along_a_ramp_the_closed_form_meets_the_differential_equation(order):
    resin = dataclasses.replace(FREE, reaction_order=order)
    ramp = Profile(np.array([0.0, 6.0]), np.array([21.0, 45.0]))
    course = cure_along(resin, ramp, 6.0, TimeRule.ARRHENIUS)
    scale = 1.0 if order == 1.0 else order - 1.0
    gelled = 1.0 - resin.gel_conversion
    rate = (
        -np.log(gelled) if order == 1.0 else (gelled ** (1.0 - order) - 1.0) / scale
    ) / resin.gel_hours

    def slope(hours, cure):
        fast = speed(resin, ramp.at(np.array([hours])), TimeRule.ARRHENIUS)[0]
        return rate * fast * (1.0 - cure) ** order

    found = solve_ivp(slope, (0.0, 6.0), [0.0], rtol=1e-9, atol=1e-12).y[0, -1]
    assert course.cure[-1] == pytest.approx(found, rel=1e-4)


def test_at_room_temperature_the_resin_stops_at_what_its_card_says():
    course = cure_along(RESIN, room_profile(21.0), RESIN.cure_hours, TEN)
    assert course.at(RESIN.cure_hours)[1] == pytest.approx(RESIN.glass_transition_c, abs=1e-6)
    free = nth_order_cure(RESIN.gel_conversion / (1.0 - RESIN.gel_conversion) / 8.0, 168.0, 2.0)
    assert course.cure[-1] < free


@given(st.floats(0.0, 1.0))
def test_cure_and_glass_transition_are_inverse(cure):
    glass = glass_transition(cure, RESIN.glass_transition_fresh_c, RESIN.glass_transition_full_c)
    assert cure_at(RESIN, glass) == pytest.approx(cure, abs=1e-9)


@given(st.floats(25.0, 80.0), st.floats(1.0, 16.0), st.floats(2.0, 60.0))
def test_cure_never_falls_and_a_post_cure_never_passes_its_limit(hold, hours, ramp):
    profile = with_post_cure(21.0, 30.0, hold, hours, ramp)
    end = float(profile.hours[-1]) + 20.0
    course = cure_along(RESIN, profile, end, TEN)
    assert (np.diff(course.cure) >= 0.0).all()
    assert (np.diff(course.glass_transition_c) >= -1e-9).all()
    assert course.cure[0] == 0.0
    assert course.cure[-1] <= 1.0
    assert course.glass_transition_c[-1] <= glass_transition_limit(RESIN, hold) + 1e-6


def test_a_post_cure_of_sixteen_hours_at_fifty_degrees():
    """Practice: about 73 degC after 16 h at 50 degC; common practice, no source."""
    profile = with_post_cure(21.0, 30.0, 50.0, 16.0, 10.0)
    course = cure_along(RESIN, profile, float(profile.hours[-1]), TEN)
    assert course.glass_transition_c[-1] == pytest.approx(73.0, abs=2.0)


def test_least_margin_is_found_after_its_start():
    hours = np.arange(5.0)
    course = CureCourse(hours, np.full(5, 20.0), hours / 5.0, np.array([0.0, 30.0, 25.0, 40.0, 50]))
    assert course.least_margin(1.0) == (5.0, 2.0)
    assert course.least_margin(0.0) == (-20.0, 0.0)
    assert pack(unpack(CureCourse, pack(course))) == pack(course)
