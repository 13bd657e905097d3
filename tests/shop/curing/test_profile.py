from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.laminate.materials import load_materials
from laywright.shop.curing.profile import (
    Profile,
    TimeRule,
    equivalent_hours,
    room_profile,
    speed,
    with_post_cure,
)
from laywright.values import pack, unpack

RESIN = load_materials().resin("Laminating epoxy, slow hardener")
TEN = TimeRule.TEN_DEGREES


@given(st.floats(5.0, 45.0), st.floats(0.1, 300.0))
def test_at_one_temperature_times_follow_the_rule_exactly(temperature, hours):
    found = room_profile(temperature).reached(hours, RESIN, TEN)
    assert found == pytest.approx(hours * 2.0 ** ((21.0 - temperature) / 10.0), rel=1e-12)


def test_a_ramp_is_worth_what_its_integral_says():
    """From 21 to 41 degC in 4 h the speed grows as 2^(t/2): its integral is 2 (2^2 - 1) / ln 2."""
    ramp = Profile(np.array([0.0, 4.0]), np.array([21.0, 41.0]))
    done = equivalent_hours(ramp, ramp.grid(4.0), RESIN, TEN)
    assert done[-1] == pytest.approx(6.0 / np.log(2.0), rel=1e-4)


def test_what_the_profile_does_not_reach_goes_on_at_its_last_temperature():
    profile = with_post_cure(21.0, 10.0, 31.0, 5.0, 10.0)
    whole = equivalent_hours(profile, profile.grid(17.0), RESIN, TEN)[-1]
    assert profile.reached(whole + 7.0, RESIN, TEN) == pytest.approx(24.0)
    assert 10.0 < profile.reached(12.0, RESIN, TEN) < 12.0


def test_the_two_rules_agree_where_the_energy_stands_for_ten_degrees():
    # R ln 2 / (1 / T1 - 1 / T2), kJ/mol
    energy = 8.314462618e-3 * math.log(2.0) / (1.0 / 294.15 - 1.0 / 304.15)
    resin = dataclasses.replace(RESIN, activation_energy=energy)
    warm = np.array([21.0, 31.0])
    assert speed(resin, warm, TimeRule.ARRHENIUS) == pytest.approx(speed(resin, warm, TEN))


def test_without_an_energy_on_the_card_the_rule_is_refused():
    resin = dataclasses.replace(RESIN, activation_energy=None)
    with pytest.raises(InputError, match="no activation energy"):
        room_profile(25.0).reached(8.0, resin, TimeRule.ARRHENIUS)


def test_grid_holds_every_corner():
    profile = with_post_cure(21.0, 30.0, 60.0, 8.0, 10.0)
    grid = profile.grid(60.0)
    assert set(profile.hours.tolist()) <= set(grid.tolist())
    assert grid[0] == 0.0
    assert grid[-1] == 60.0
    assert (np.diff(grid) > 0.0).all()
    assert profile.at(np.array([31.95]))[0] == pytest.approx(40.5)


def test_profile_survives_storage():
    profile = with_post_cure(21.0, 30.0, 60.0, 8.0, 10.0)
    assert pack(unpack(Profile, pack(profile))) == pack(profile)
