from __future__ import annotations

import dataclasses

import numpy as np
import pytest

from job_sheet_demo import inputs
from laywright.errors import InputError
from laywright.laminate.plies import Process
from laywright.shop.bench.bench import BenchFacts, BenchPlan, BenchSettings, plan_bench
from laywright.shop.bench.bench_supplies import usual_supplies
from laywright.shop.bench.release_coats import CoatingSettings, MouldState, ReleaseAgent
from laywright.values import pack, unpack

FACTS = BenchFacts(
    part_area=1.26e5,
    mould_area=1.8e5,
    run_off=25.0,
    outline=[[0, 0], [420, 0], [420, 300], [0, 300]],
    curvature=1.8e-6,
    mould_size=(470.0, 350.0, 70.0),
    pull=(0.0, 0.0, 1.0),
    trim_loops=(np.array([[0, 0, 0], [420, 0, 0], [420, 300, 0], [0, 300, 0]], float),),
    cloth_edges=(),
    rolls=(),
    plastic="PETG",
    print_g=1000.0,
    glue_g=0.0,
    process=Process.HAND,
)
SHOP = inputs()["shop"]


def coated(agent=ReleaseAgent.WAX, state=MouldState.NEW) -> BenchSettings:
    return BenchSettings(coating=CoatingSettings(agent, state))


def test_a_bag_and_tape_are_planned_where_they_are_chosen():
    by_hand = plan_bench(FACTS, SHOP, BenchSettings())
    assert (by_hand.bag, by_hand.strips) == (None, None)
    bagged = dataclasses.replace(FACTS, process=Process.BAGGED)
    assert plan_bench(bagged, SHOP, BenchSettings()).bag.pieces[0].length == 500.0
    taped = plan_bench(FACTS, SHOP, coated(ReleaseAgent.TAPE))
    assert len(taped.strips.lengths) == 8, "350 mm in steps of 47"
    items = {line.item: line.amount for line in taped.shopping.lines}
    assert items["Release tape"] == pytest.approx(taped.strips.total_mm / 1000.0, abs=0.01)


def test_a_used_mould_is_not_sanded_again():
    new, used = (
        plan_bench(FACTS, SHOP, coated(state=s)) for s in (MouldState.NEW, MouldState.LATER)
    )
    assert len(new.timeline.entries) - len(used.timeline.entries) == len(new.finish.spans)
    assert "Primer" not in {line.item for line in used.shopping.lines}
    assert used.timeline.finish_minutes < new.timeline.finish_minutes


def test_the_clock_ends_when_the_part_is_cured_and_trimmed():
    timeline = plan_bench(FACTS, SHOP, BenchSettings()).timeline
    by_name = {entry.what: entry for entry in timeline.entries}
    laid = by_name["Lay up"].start_minutes
    cure = SHOP.cure
    since = {what: (entry.start_minutes - laid) / 60.0 for what, entry in by_name.items()}
    assert cure.trim_from_hours <= since["Cut the edge with a knife"] <= cure.trim_until_hours
    assert since["Take the part off the mould"] >= cure.demould_hours
    assert since["Wait until it is cured"] >= cure.finish_hours - 1e-9
    assert timeline.entries[-1].ready_minutes == timeline.finish_minutes
    assert timeline.remarks == ()


def test_everything_bought_is_something_that_is_planned():
    plan = plan_bench(FACTS, SHOP, BenchSettings())
    items = {line.item: line.amount for line in plan.shopping.lines}
    assert items["Resin"] == pytest.approx(SHOP.mix.resin_g / 1000.0, abs=0.01)
    assert items["Hardener"] == pytest.approx(SHOP.mix.hardener_g / 1000.0, abs=0.01)
    assert items["Filament PETG"] == 1.0
    assert items["Primer"] == pytest.approx(plan.finish.primer_g, abs=1.0)
    assert "Glue" not in items, "there is no seam"
    assert all(amount > 0.0 for amount in items.values())


def test_plan_survives_storage_and_knows_its_inputs():
    plan = plan_bench(FACTS, SHOP, BenchSettings())
    assert pack(unpack(BenchPlan, pack(plan))) == pack(plan)
    assert pack(unpack(BenchFacts, pack(FACTS))) == pack(FACTS)
    assert unpack(BenchSettings, pack(BenchSettings())) == BenchSettings()
    assert plan.digest == plan_bench.digest(FACTS, SHOP, BenchSettings())
    assert plan.digest != plan_bench.digest(FACTS, SHOP, BenchSettings(parts=2))


def test_a_run_of_no_parts_is_refused():
    with pytest.raises(InputError, match="number of parts"):
        BenchSettings(parts=0)


def test_what_the_bag_takes_up_is_held_against_the_mix():
    bagged = dataclasses.replace(FACTS, process=Process.BAGGED)
    mix = SHOP.mix
    held = mix.laminate_resin_g + mix.coats_g + mix.coupon_g
    taken, spare = 210.0 * 0.126, mix.mix_g - held
    assert taken > spare
    (said,) = plan_bench(bagged, SHOP, BenchSettings()).soaked_remarks
    assert f"{taken:.0f} g of the mix, the plan has {spare:.0f} g" in said
    assert said in plan_bench(bagged, SHOP, BenchSettings()).remarks
    shelf = usual_supplies()
    dry = dataclasses.replace(
        shelf,
        peel_ply=dataclasses.replace(shelf.peel_ply, resin_uptake=None),
        breather=dataclasses.replace(shelf.breather, resin_uptake=None),
    )
    assert plan_bench(bagged, SHOP, BenchSettings(shelf=dry)).soaked_remarks == ()
    assert plan_bench(FACTS, SHOP, BenchSettings()).soaked_remarks == ()


def test_tape_that_lasts_is_not_bought_again():
    shelf = usual_supplies()
    lasting = dataclasses.replace(shelf, tape=dataclasses.replace(shelf.tape, coats_second=0.0))
    settings = dataclasses.replace(coated(ReleaseAgent.TAPE, MouldState.SECOND), shelf=lasting)
    plan = plan_bench(FACTS, SHOP, settings)
    assert plan.strips is None
    assert "Release tape" not in {line.item for line in plan.shopping.lines}
