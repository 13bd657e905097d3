from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.laminate.materials import load_materials
from laywright.shop.bench.consumables import ConsumableList, Work, list_consumables
from laywright.shop.mixing.mix import MixSettings, PlyCloth, plan_mix
from laywright.values import pack, unpack

RESIN = load_materials().resin("Laminating epoxy, slow hardener")
MIX = plan_mix((PlyCloth(1, "cloth", 1e6, 200.0),), RESIN, 0.5, MixSettings())
WORK = Work(8e5, people=2, hours=1.5)


def amounts(work: Work = WORK) -> dict[str, float]:
    return {c.item: c.amount for c in list_consumables(work, MIX).items}


def test_cups_follow_the_mixing_plan():
    found = amounts()
    assert found["Mixing cups, two for each mix"] == 2 * len(MIX.cups) == 6
    assert found["Nitrile gloves"] == 2 * 3


@given(st.integers(1, 10), st.floats(0.1, 20.0))
def test_more_people_and_hours_never_take_less(people, hours):
    few, many = amounts(Work(1e5, people, hours)), amounts(Work(1e5, people + 1, hours + 1.0))
    assert all(many[item] >= few[item] for item in few)


def test_list_survives_storage():
    made = list_consumables(WORK, MIX)
    assert unpack(ConsumableList, pack(made)) == made


@pytest.mark.parametrize("work", [(0.0, 1, 1.0), (1e5, 0, 1.0), (1e5, 1, 0.0)])
def test_a_job_without_size_is_refused(work):
    with pytest.raises(InputError, match="size of the job"):
        Work(*work)
