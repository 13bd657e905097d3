from __future__ import annotations

import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.laminate.plies import Process
from laywright.shop.bench.bag import BagFacts, BagPlan, BagSettings, BagStyle, plan_bag
from laywright.shop.bench.bench_supplies import usual_supplies
from laywright.values import pack, unpack

FACTS = BagFacts((420.0, 300.0), (470.0, 350.0), (475.0, 355.0, 80.0))
SHELF = usual_supplies()
sides = st.floats(20.0, 3000.0)


def test_a_bag_on_the_flange_worked_by_hand():
    """Edge 2 (470 + 350) = 1640 mm: 5 pleats, each taking 80 mm of tape."""
    plan = plan_bag(FACTS, Process.BAGGED, BagSettings(BagStyle.FLANGE), SHELF, 21.0)
    assert plan.pleats == 5
    assert plan.tape_mm == 1640.0 + 2 * 200.0 + 5 * 80.0
    peel, film, breather, bag = plan.pieces
    assert (peel.length, peel.width) == (500.0, 380.0)
    assert (film.length, breather.width) == (500.0, 380.0)
    assert (bag.length, bag.width) == (770.0, 650.0)


def test_an_envelope_goes_round_the_whole_mould():
    bag = plan_bag(FACTS, Process.BAGGED, BagSettings(), SHELF, 21.0).pieces[-1]
    assert bag.length >= 475.0 + 80.0 + 200.0
    assert bag.width >= 2.0 * (355.0 + 80.0) + 200.0


def test_infusion_takes_a_mesh_and_hoses_instead_of_film_and_breather():
    items = {
        piece.item for piece in plan_bag(FACTS, Process.INFUSED, BagSettings(), SHELF, 21.0).pieces
    }
    assert "Flow mesh" in items
    assert "Breather" not in items
    assert plan_bag(FACTS, Process.INFUSED, BagSettings(), SHELF, 21.0).hose_mm > 0.0
    assert plan_bag(FACTS, Process.BAGGED, BagSettings(), SHELF, 21.0).hose_mm == 0.0


def test_the_leak_test_is_among_the_steps():
    steps = " ".join(plan_bag(FACTS, Process.BAGGED, BagSettings(), SHELF, 21.0).steps)
    assert "Leak test" in steps
    assert "ten minutes" in steps


@given(sides, sides, sides, st.sampled_from(BagStyle))
def test_a_larger_mould_never_takes_less(long, wide, height, style):
    settings = BagSettings(style)

    def bag(scale: float) -> BagPlan:
        face = (scale * long, scale * wide)
        return plan_bag(
            BagFacts(face, face, (*face, scale * height)), Process.BAGGED, settings, SHELF, 21.0
        )

    small, large = bag(1.0), bag(1.3)
    assert large.tape_mm >= small.tape_mm
    for one, other in zip(small.pieces, large.pieces, strict=True):
        assert other.length >= one.length
        assert other.width >= one.width
    assert small.pieces[0].length >= long + 80.0


def test_what_is_bought_is_what_is_cut_with_the_allowance_of_its_card():
    plan = plan_bag(FACTS, Process.BAGGED, BagSettings(), SHELF, 21.0)
    assert [piece.bought_mm2 for piece in plan.pieces] == [
        piece.length * piece.width for piece in plan.pieces
    ]
    assert plan.tape_bought_mm == plan.tape_mm
    peel = dataclasses.replace(SHELF.peel_ply, name="Thin", allowance=1.5, resin_uptake=35.0)
    tape = dataclasses.replace(SHELF.sealant_tape, allowance=1.25)
    shelf = dataclasses.replace(SHELF, peel_ply=peel, sealant_tape=tape)
    other = plan_bag(FACTS, Process.BAGGED, BagSettings(), shelf, 21.0)
    assert other.pieces[0].card == "Thin"
    assert other.pieces[0].bought_mm2 == 1.5 * plan.pieces[0].bought_mm2
    assert other.tape_bought_mm == 1.25 * plan.tape_mm
    assert (plan.uptake, other.uptake) == (60.0 + 150.0, 35.0 + 150.0)
    infused = plan_bag(FACTS, Process.INFUSED, BagSettings(), shelf, 21.0)
    assert infused.uptake == 35.0 + 600.0


def test_what_does_not_stand_the_cure_is_named():
    assert plan_bag(FACTS, Process.BAGGED, BagSettings(), SHELF, 120.0).remarks == ()
    hot = plan_bag(FACTS, Process.BAGGED, BagSettings(), SHELF, 130.0).remarks
    assert [remark.split(" stands")[0] for remark in hot] == [
        "Perforated release film",
        "Sealant tape",
    ]
    assert "heated to 130 degC in the bag" in hot[0]


def test_plan_survives_storage():
    plan = plan_bag(FACTS, Process.BAGGED, BagSettings(), SHELF, 21.0)
    assert unpack(BagPlan, pack(plan)) == plan


def test_bad_input_is_named():
    for call, where in (
        (lambda: plan_bag(FACTS, Process.HAND, BagSettings(), SHELF, 21.0), "bag"),
        (lambda: BagFacts((0.0, 1.0), (1.0, 1.0), (1.0, 1.0, 1.0)), "bag"),
        (lambda: BagSettings(slack=-1.0), "bag: slack"),
    ):
        with pytest.raises(InputError) as caught:
            call()
        assert caught.value.where == where
