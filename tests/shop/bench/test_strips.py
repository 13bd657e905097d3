from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.shop.bench.strips import (
    StripPlan,
    StripSettings,
    edge_excess,
    plan_strips,
    widest_strip,
)
from laywright.values import pack, unpack

SHEET = np.array([[0.0, 0.0], [400.0, 0.0], [400.0, 300.0], [0.0, 300.0]])
PLAIN = StripSettings(width=50.0, lap=0.0, beyond=0.0)


def test_strips_of_a_rectangle():
    plan = plan_strips(SHEET, 0.0, PLAIN)
    assert plan.lengths == (400.0,) * 6
    assert plan.total_mm == 2400.0
    assert plan.area_mm2 == 1.2e5
    assert (plan.excess, plan.widest_mm, plan.remarks) == (0.0, None, ())


def test_strips_run_along_the_longer_side():
    turned = plan_strips(SHEET[:, ::-1], 0.0, PLAIN)
    assert turned.lengths == pytest.approx((400.0,) * 6)


def test_a_disk_is_covered_and_short_strips_lie_at_its_edge():
    turn = 2.0 * np.pi * np.arange(720) / 720
    disk = 200.0 * np.stack([np.cos(turn), np.sin(turn)], axis=1)
    plan = plan_strips(disk, 0.0, StripSettings(width=20.0, lap=0.0, beyond=0.0))
    assert len(plan.lengths) == 20
    assert plan.lengths[0] == pytest.approx(2.0 * math.sqrt(200.0**2 - 180.0**2), rel=1e-3)
    assert plan.lengths[9] == pytest.approx(400.0, rel=1e-3)
    assert plan.area_mm2 > math.pi * 200.0**2


@given(st.floats(0.0, 40.0), st.floats(41.0, 200.0), st.floats(0.0, 60.0))
def test_what_is_laid_is_never_less_than_what_is_covered(lap, width, beyond):
    plan = plan_strips(SHEET, 0.0, StripSettings(width, lap, beyond))
    assert plan.area_mm2 >= 400.0 * 300.0 - 1e-6
    reach = len(plan.lengths) * (width - lap) + lap
    assert reach >= 300.0 + 2.0 * beyond - 1e-6


def test_edge_of_a_strip_on_a_sphere():
    """A parallel at half the width w away has cos(w / 2R) of the length."""
    radius, width = 300.0, 60.0
    exact = 1.0 - math.cos(width / (2.0 * radius))
    assert edge_excess(1.0 / radius**2, width) == pytest.approx(exact, rel=1e-3)
    assert edge_excess(1.0 / radius**2, widest_strip(1.0 / radius**2)) == pytest.approx(0.005)


def test_a_strip_that_would_wrinkle_is_warned_of_with_one_that_does_not():
    plan = plan_strips(SHEET, 1.0 / 150.0**2, StripSettings(width=100.0))
    assert plan.widest_mm == pytest.approx(30.0)
    assert "take 30 mm or less" in plan.remarks[0]
    assert plan_strips(SHEET, 1.0 / 150.0**2, StripSettings(width=25.0)).remarks == ()


def test_plan_survives_storage():
    plan = plan_strips(SHEET, 1e-6, PLAIN)
    assert unpack(StripPlan, pack(plan)) == plan


def test_bad_input_is_named():
    for call in (
        lambda: StripSettings(width=10.0, lap=10.0),
        lambda: plan_strips(SHEET[[0, 2, 1, 3]], 0.0, PLAIN),
    ):
        with pytest.raises(InputError) as caught:
            call()
        assert caught.value.where == "strips"
