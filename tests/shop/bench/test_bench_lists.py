from __future__ import annotations

import dataclasses

import pytest

from job_sheet_demo import inputs
from laywright.laminate.materials import load_materials
from laywright.shop.bench.bench_lists import CutWork, hour_items, layup_run
from laywright.shop.bench.shopping import Paid
from laywright.shop.bench.timeline import Span, WorkingDay, plan_timeline
from laywright.shop.curing.cure import plan_cure
from laywright.shop.curing.cure_settings import CureSettings, Support
from laywright.shop.mixing.mix import MixSettings, PlyCloth, plan_mix
from laywright.shop.plan import ShopPlan

RESIN = load_materials().resin("Laminating epoxy, slow hardener")
WORK = CutWork(pieces=3, cloth_mm=4000.0, trim_mm=1400.0, bagged=False)


def shop(**cure) -> ShopPlan:
    given = inputs()["shop"]
    settings = CureSettings(mould_softening_c=90.0, **cure)
    return dataclasses.replace(given, cure=plan_cure(RESIN, settings, 0.5))


def what(run) -> list[str]:
    return [span.what for span in run]


def test_the_layup_is_the_head_and_all_else_is_bound_to_it():
    cut, run = layup_run(WORK, shop())
    assert what(cut) == ["Cut and weigh the cloth"]
    assert cut[0].hands_minutes == pytest.approx(8.0 * 3 + 2.0 * 4.0)
    assert what(run)[0] == "Lay up"
    knife = run[1]
    assert (knife.earliest, knife.latest) == pytest.approx((480.0, 960.0))
    assert run[2].earliest == pytest.approx(30.0 * 60.0)


def test_a_bag_takes_its_time():
    _, plain = layup_run(WORK, shop())
    _, bagged = layup_run(dataclasses.replace(WORK, bagged=True), shop())
    assert bagged[0].what == "Lay up and close the bag"
    assert bagged[0].hands_minutes > plain[0].hands_minutes


@pytest.mark.parametrize("degrees", [19.0, 21.0, 24.0, 27.3])
def test_a_post_cure_stands_where_the_part_is(degrees):
    given = {"temperature_c": degrees, "post_cure_c": 60.0}
    _, off = layup_run(WORK, shop(**given))
    assert what(off).index("Take the part off the mould") < what(off).index("Post-cure")
    _, on = layup_run(WORK, shop(**given, post_cure_support=Support.MOULD))
    assert what(on).index("Post-cure") < what(on).index("Take the part off the mould")


def test_fill_coats_come_when_the_laminate_has_gelled():
    mix = plan_mix((PlyCloth(1, "cloth", 1e6, 200.0),), RESIN, 0.5, MixSettings(fill_coats=2))
    _, run = layup_run(WORK, dataclasses.replace(shop(), mix=mix))
    coats = [span for span in run if span.what.startswith("Fill coat")]
    assert [span.what for span in coats] == ["Fill coat 1", "Fill coat 2"]
    assert coats[0].earliest == pytest.approx(mix.laying_minutes + 8.0 * 60.0)
    assert coats[1].earliest >= coats[0].earliest + coats[0].hands_minutes + 8.0 * 60.0 - 1e-9


def test_hours_of_mould_and_part_add_up_to_those_of_the_clock():
    timeline = plan_timeline([[Span("sand", 90.0)], [Span("lay up", 60.0)]], WorkingDay())
    items = {item.item: item for item in hour_items(12.0, 90.0, timeline)}
    assert items["Hours of the printer"].amount == 12.0
    assert items["Hours of work on the mould"].paid is Paid.ONCE
    assert items["Hours of work on the part"].paid is Paid.EACH
    hands = sum(items[name].amount for name in items if "work" in name)
    assert hands == pytest.approx(timeline.hands_minutes / 60.0)
    later = hour_items(0.0, 0.0, plan_timeline([[Span("lay up", 60.0)]], WorkingDay()))
    assert [item.item for item in later] == ["Hours of work on the part"]
