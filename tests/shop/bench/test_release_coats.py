from __future__ import annotations

import dataclasses

import pytest

from laywright.errors import InputError
from laywright.shop.bench.bench_supplies import usual_supplies
from laywright.shop.bench.release_coats import (
    CoatingPlan,
    CoatingSettings,
    MouldState,
    ReleaseAgent,
    plan_coats,
)
from laywright.values import pack, unpack

AREA = 5e5
SHELF = usual_supplies()


def coats(agent: ReleaseAgent, state: MouldState) -> int:
    plan = plan_coats(AREA, CoatingSettings(agent, state), SHELF)
    return sum(step.what.startswith("Wax") for step in plan.steps)


def test_a_new_mould_takes_most_coats():
    """Four to five coats on a new mould, two, then one: common practice."""
    assert [coats(ReleaseAgent.WAX, state) for state in MouldState] == [4, 2, 1]
    assert [coats(ReleaseAgent.WAX_AND_FILM, state) for state in MouldState] == [5, 2, 1]
    assert [coats(ReleaseAgent.TAPE, state) for state in MouldState] == [0, 0, 0]


@pytest.mark.parametrize("agent", ReleaseAgent)
@pytest.mark.parametrize("state", MouldState)
def test_the_clock_only_runs_forward(agent, state):
    plan = plan_coats(AREA, CoatingSettings(agent, state), SHELF)
    starts = [step.start_minutes for step in plan.steps]
    assert starts == sorted(set(starts))
    assert plan.ready_minutes == starts[-1]
    assert "test piece" in plan.steps[0].what


def test_the_clock_is_the_sum_of_work_and_waits():
    settings = CoatingSettings(wait_minutes=30.0, square_metre_minutes=20.0)
    assert plan_coats(1e6, settings, SHELF).ready_minutes == 20.0 + 4 * (20.0 + 30.0 + 20.0)


def test_amounts_follow_the_area():
    one, two = (
        plan_coats(area, CoatingSettings(ReleaseAgent.WAX_AND_FILM), SHELF)
        for area in (AREA, 2 * AREA)
    )
    assert (two.wax_g, two.film_g) == pytest.approx((2.0 * one.wax_g, 2.0 * one.film_g))
    assert one.wax_g == pytest.approx(5 * 12.0 * 0.5)
    assert one.film_g == pytest.approx(3 * 60.0 * 0.5)
    assert one.tape_layers == 0
    assert plan_coats(AREA, CoatingSettings(ReleaseAgent.TAPE), SHELF).tape_layers == 1


def test_coats_waits_and_amounts_are_those_of_the_chosen_cards():
    wax = dataclasses.replace(
        SHELF.wax, coats_new=2.0, coats_later=0.0, wait_minutes=10.0, use_per_coat=7.0
    )
    film = dataclasses.replace(SHELF.film, coats_new=1.0, wait_minutes=90.0, use_per_coat=100.0)
    tape = dataclasses.replace(SHELF.tape, coats_second=0.0)
    shelf = dataclasses.replace(SHELF, wax=wax, film=film, tape=tape)
    plan = plan_coats(1e6, CoatingSettings(), shelf)
    assert (plan.wax_g, plan.film_g) == (14.0, 0.0)
    assert plan.ready_minutes == 20.0 + 2 * (20.0 + 10.0 + 20.0)
    both = plan_coats(1e6, CoatingSettings(ReleaseAgent.WAX_AND_FILM), shelf)
    assert (both.wax_g, both.film_g) == (21.0, 100.0)
    assert both.ready_minutes == 20.0 + 3 * 50.0 + 20.0 + 90.0
    stated = CoatingSettings(ReleaseAgent.WAX_AND_FILM, wait_minutes=0.0, dry_minutes=5.0)
    assert plan_coats(1e6, stated, shelf).ready_minutes == 20.0 + 3 * 40.0 + 20.0 + 5.0
    assert plan_coats(1e6, CoatingSettings(state=MouldState.LATER), shelf).wax_g == 0.0
    taped = CoatingSettings(ReleaseAgent.TAPE, MouldState.SECOND)
    assert plan_coats(1e6, taped, shelf).tape_layers == 0


def test_plan_survives_storage():
    plan = plan_coats(AREA, CoatingSettings(), SHELF)
    assert unpack(CoatingPlan, pack(plan)) == plan


def test_bad_settings():
    with pytest.raises(InputError, match="wait after a coat"):
        CoatingSettings(wait_minutes=-1.0)
    with pytest.raises(InputError, match="mould area"):
        plan_coats(0.0, CoatingSettings(), SHELF)
