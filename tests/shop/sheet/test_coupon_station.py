from __future__ import annotations

import dataclasses

import pytest

from job_sheet_demo import inputs, texts_on
from laywright.files.page import Table
from laywright.shop.sheet.coupon_station import coupon_station
from laywright.shop.sheet.traveller import make_sheet


@pytest.fixture
def given():
    return inputs()


def test_every_weight_and_every_coupon_has_its_blank(given):
    plan = given["shop"].coupons
    station = coupon_station(plan)
    tables = [block for block in station.blocks if isinstance(block, Table)]
    facts, readings = tables
    hung = [row[0] for row in readings.rows if row[0].startswith("With")]
    assert hung == [f"With {step.mass_g:g} g, mm" for step in plan.steps]
    assert all(row[2:] == ("",) * plan.count for row in readings.rows)
    assert dict(facts.rows)["Supports apart"] == f"{plan.span:.0f} mm"


def test_many_coupons_stand_in_several_tables(given):
    plan = dataclasses.replace(given["shop"].coupons, count=12)
    tables = [block for block in coupon_station(plan).blocks if isinstance(block, Table)][1:]
    heads = [head for table in tables for head in table.columns[2:]]
    assert heads == [f"No. {number}" for number in range(1, 13)]
    assert all(len(table.columns) <= 7 for table in tables)


def test_splinters_and_weights_are_warned_of_at_the_step(given):
    said = " ".join(coupon_station(given["shop"].coupons).cautions)
    assert "splinters" in said
    assert "mask" in said


def test_the_page_and_the_mix_stand_on_the_sheet_only_where_coupons_are_wanted(given):
    shop = given["shop"]
    mix = dataclasses.replace(shop.mix, coupon_g=9.0)
    with_plate = make_sheet(**given | {"shop": dataclasses.replace(shop, mix=mix)}).sheet
    page = next(s for s in with_plate.stations if s.title == "Mix")
    assert "9 g in the plate of coupons" in " ".join(texts_on(page))
    without = make_sheet(**given | {"shop": dataclasses.replace(shop, coupons=None)}).sheet
    assert "Coupons" not in [station.title for station in without.stations]
