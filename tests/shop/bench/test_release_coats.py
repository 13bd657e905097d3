from __future__ import annotations

import pytest

from laywright.errors import InputError
from laywright.shop.bench.release_coats import (
    CoatingPlan,
    CoatingSettings,
    MouldState,
    ReleaseAgent,
    plan_coats,
)
from laywright.values import pack, unpack

AREA = 5e5


def coats(agent: ReleaseAgent, state: MouldState) -> int:
    plan = plan_coats(AREA, CoatingSettings(agent, state))
    return sum(step.what.startswith("Wax") for step in plan.steps)


def test_a_new_mould_takes_most_coats():
    """Four to five coats on a new mould, two, then one: common practice."""
    assert [coats(ReleaseAgent.WAX, state) for state in MouldState] == [4, 2, 1]
    assert [coats(ReleaseAgent.WAX_AND_FILM, state) for state in MouldState] == [5, 2, 1]
    assert [coats(ReleaseAgent.TAPE, state) for state in MouldState] == [0, 0, 0]


@pytest.mark.parametrize("agent", ReleaseAgent)
@pytest.mark.parametrize("state", MouldState)
def test_the_clock_only_runs_forward(agent, state):
    plan = plan_coats(AREA, CoatingSettings(agent, state))
    starts = [step.start_minutes for step in plan.steps]
    assert starts == sorted(set(starts))
    assert plan.ready_minutes == starts[-1]
    assert "test piece" in plan.steps[0].what


def test_the_clock_is_the_sum_of_work_and_waits():
    settings = CoatingSettings(wait_minutes=30.0, square_metre_minutes=20.0)
    assert plan_coats(1e6, settings).ready_minutes == 20.0 + 4 * (20.0 + 30.0 + 20.0)


def test_amounts_follow_the_area():
    one, two = (
        plan_coats(area, CoatingSettings(ReleaseAgent.WAX_AND_FILM)) for area in (AREA, 2 * AREA)
    )
    assert (two.wax_g, two.film_g) == pytest.approx((2.0 * one.wax_g, 2.0 * one.film_g))
    assert one.tape_mm2 == 0.0
    assert plan_coats(AREA, CoatingSettings(ReleaseAgent.TAPE)).tape_mm2 > AREA


def test_plan_survives_storage():
    plan = plan_coats(AREA, CoatingSettings())
    assert unpack(CoatingPlan, pack(plan)) == plan


def test_bad_settings():
    with pytest.raises(InputError, match="wait after a coat"):
        CoatingSettings(wait_minutes=-1.0)
    with pytest.raises(InputError, match="mould area"):
        plan_coats(0.0, CoatingSettings())
