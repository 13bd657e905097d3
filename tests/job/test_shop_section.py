"""The shop of a job: every section with its units, every slip named."""

from __future__ import annotations

import dataclasses
import tomllib

import pytest

from laywright.errors import InputError, MaterialError
from laywright.job import shop_section
from laywright.job.shop_section import SHOP_SECTIONS, read_bench, read_shop
from laywright.laminate.materials import load_materials
from laywright.shop.bench.bag import BagStyle
from laywright.shop.bench.bench import BenchSettings, TrimGuide
from laywright.shop.bench.release_coats import MouldState, ReleaseAgent
from laywright.shop.bench.shopping import Price
from laywright.shop.coupons.coupon_plan import CouponSettings, SpanRule
from laywright.shop.curing.cure_settings import Support
from laywright.shop.curing.profile import TimeRule
from laywright.shop.plan import ShopSettings


def test_nothing_said_gives_the_defaults():
    assert read_shop({}) == ShopSettings()
    assert read_bench({}) == BenchSettings()


def test_mix_and_cure_are_read_with_their_units():
    found = read_shop(
        {
            "mix": {
                "temperature": "64.4 degF",
                "extra_share": "8 %",
                "fixed_loss_g": "0.01 kg",
                "scale_resolution_g": "100 mg",
                "seal_coats": 1,
                "seal_coat_weight": "50 g/m^2",
                "square_metre_minutes": "0.75 h",
                "ply_minutes": "4 min",
            },
            "cure": {
                "post_cure_c": "60 degC",
                "post_cure_hours": "10 h",
                "post_cure_support": "a cradle",
                "ramp": "0.25 delta_degC/minute",
                "rule": "activation energy of the resin",
            },
            "coupons": {"count": 6, "span": SpanRule.ISO_14125_CARBON.value},
        }
    )
    mix, cure = found.mix, found.cure
    assert (mix.temperature_c, cure.temperature_c) == pytest.approx((18.0, 18.0))
    assert (mix.extra_share, mix.fixed_loss_g) == pytest.approx((0.08, 10.0))
    assert mix.scale_resolution_g == pytest.approx(0.1)
    assert (mix.seal_coats, mix.seal_coat_weight) == (1, 50.0)
    assert (mix.square_metre_minutes, mix.ply_minutes) == (45.0, 4.0)
    assert (cure.post_cure_c, cure.post_cure_hours) == (60.0, 10.0)
    assert cure.post_cure_support is Support.CRADLE
    assert cure.ramp == pytest.approx(15.0)
    assert cure.rule is TimeRule.ARRHENIUS
    assert found.coupons == CouponSettings(6, SpanRule.ISO_14125_CARBON)


def test_the_bench_is_read_with_its_units():
    found = read_bench(
        {
            "bench": {
                "begins": "17:00",
                "ends": "22:30",
                "people": 2,
                "parts": 3,
                "trim_guide": "ring to be printed",
            },
            "finish": {"grits": [120, 240], "primer_coats": 1, "primer_hours": "90 min"},
            "coating": {"agent": "wax and film", "state": "before a later part"},
            "tape": {"width": "2 in"},
            "bag": {"style": "on the flange", "slack": "15 cm"},
            "prices": {"currency": "EUR", "Peel ply": "4.20 per m^2"},
        }
    )
    assert (found.day.begins, found.day.ends) == ("17:00", "22:30")
    assert (found.people, found.parts) == (2, 3)
    assert found.trim_guide is TrimGuide.RING
    assert (found.finish.grits, found.finish.primer_hours) == ((120, 240), 1.5)
    assert found.coating.agent is ReleaseAgent.WAX_AND_FILM
    assert found.coating.state is MouldState.LATER
    assert found.strips.width == pytest.approx(50.8)
    assert (found.bag.style, found.bag.slack) == (BagStyle.FLANGE, 150.0)
    assert found.prices == (Price("Peel ply", 4.2, "m^2"),)
    assert found.currency == "EUR"


def test_the_bench_takes_supplies_by_their_cards():
    materials = load_materials()
    peel = dataclasses.replace(materials.consumables["Polyester peel ply 85 g/m^2"], name="Thin")
    wider = dataclasses.replace(materials, consumables={**materials.consumables, "Thin": peel})
    assert read_bench({"bench": {"peel_ply": "Thin"}}, wider).shelf.peel_ply is peel
    with pytest.raises(MaterialError, match="bench: peel ply"):
        read_bench({"bench": {"peel_ply": "Thin"}})
    with pytest.raises(InputError, match="wax"):
        read_bench({"bench": {"wax": 3}})


def test_the_sections_shown_in_the_module_are_read_as_they_stand_there():
    text = shop_section.__doc__.split("::", 1)[1]
    table = tomllib.loads(text)
    assert set(table) <= SHOP_SECTIONS
    assert read_shop(table).mix.temperature_c == 18.0
    assert read_bench(table).trim_guide is TrimGuide.RING


@pytest.mark.parametrize(
    ("section", "words"),
    [
        ({"mix": {"scale_resolution_g": 0.1}}, "a number with its unit in quotes"),
        ({"mix": {"seal_coats": "two"}}, "a whole number"),
        ({"mix": {"seal_coats": True}}, "a whole number"),
        ({"mix": {"hands": "2"}}, "the key 'hands'"),
        ({"cure": {"rule": "by feeling"}}, "'10 degC more halve the time' or"),
        ({"cure": {"ramp": "10 degC"}}, "delta_degC/hour"),
        ({"coupons": {"count": 1000}}, "0 to 100"),
        ({"coupons": {"span": "long"}}, "32 times the thickness"),
        ({"bench": {"people": 0}}, "a whole number from 1 on"),
        ({"bench": {"begins": "5 pm"}}, "a time such as 08:00"),
        ({"bench": {"begins": 17}}, "a text in quotes"),
        ({"finish": {"grits": [400, 80]}}, "coarse to fine"),
        ({"finish": {"grits": 80}}, "whole numbers in brackets"),
        ({"coating": {"agent": "luck"}}, "'wax' or 'wax and film'"),
        ({"bag": {"slack": "30 s"}}, "a quantity in mm"),
        ({"prices": {"Peel ply": 4.2}}, "an item, a price and its unit"),
        ({"prices": {"Peel ply": "4,20 per m^2"}}, "a point as the decimal mark"),
        ({"prices": {"currency": 5}}, "a text in quotes"),
        ({"bag": 7}, "a section [bag]"),
    ],
)
def test_every_slip_is_one_sentence_that_says_what_is_needed(section, words):
    with pytest.raises(InputError) as caught:
        (read_shop(section), read_bench(section))
    assert words in str(caught.value)
    assert "\n" not in str(caught.value)
