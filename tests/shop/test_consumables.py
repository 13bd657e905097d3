from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Process
from laywright.shop.consumables import (
    ConsumableList,
    CostLine,
    Work,
    cost_of,
    list_consumables,
)
from laywright.shop.mix import MixSettings, PlyCloth, plan_mix
from laywright.values import pack, unpack

RESIN = load_materials().resin("Laminating epoxy, slow hardener")
MIX = plan_mix((PlyCloth(1, "cloth", 1e6, 200.0),), RESIN, 0.5, MixSettings())
WORK = Work(5e5, 8e5, 4000.0, people=2, hours=1.5)


def amounts(process: Process, work: Work = WORK) -> dict[str, float]:
    return {c.item: c.amount for c in list_consumables(work, process, MIX).items}


def test_cups_follow_the_mixing_plan():
    found = amounts(Process.HAND)
    assert found["mixing cups, two for each mix"] == 2 * len(MIX.cups) == 6
    assert found["nitrile gloves"] == 2 * 3


def test_a_bag_needs_what_goes_under_it():
    hand, bagged, infused = (set(amounts(process)) for process in Process)
    assert bagged - hand >= {"peel ply", "release film", "breather", "sealant tape, with pleats"}
    assert infused - hand >= {"peel ply", "flow mesh", "resin hose"}
    assert hand < bagged


def test_nothing_is_rounded_down():
    found = amounts(Process.BAGGED)
    assert found["peel ply"] * 1e6 >= 1.15 * WORK.part_area_mm2
    assert found["bag film, with pleats"] * 1e6 >= 1.6 * WORK.mould_area_mm2
    assert found["sealant tape, with pleats"] >= 1.3 * 4.0


def test_list_survives_storage():
    made = list_consumables(WORK, Process.BAGGED, MIX)
    assert unpack(ConsumableList, pack(made)) == made


@given(
    st.lists(
        st.tuples(st.floats(0.0, 100.0), st.floats(0.0, 100.0), st.floats(0.0, 1.0)), max_size=8
    ),
    st.integers(1, 50),
)
def test_a_run_costs_its_parts(lines, parts):
    cost = cost_of(tuple(CostLine("x", *line) for line in lines), parts)
    assert cost.per_part * parts == pytest.approx(cost.total, rel=1e-9, abs=1e-9)
    one = sum(amount * price for amount, price, _ in lines)
    assert cost.once + cost.each == pytest.approx(one, rel=1e-9, abs=1e-9)


@pytest.mark.parametrize(
    "call",
    [
        lambda: Work(8e5, 5e5, 4000.0),
        lambda: Work(5e5, 8e5, 4000.0, people=0),
        lambda: CostLine("cloth", -1.0, 5.0),
        lambda: CostLine("cloth", 1.0, 5.0, 2.0),
        lambda: cost_of((), 0),
    ],
)
def test_bad_input(call):
    with pytest.raises(InputError):
        call()
