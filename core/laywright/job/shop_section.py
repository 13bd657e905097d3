"""The sections of the job description on the shop: mix, cure, coupons, bench, bag, prices.

A shop writes them like this; every key may be left out::

    [mix]
    temperature = "18 degC"         # of the shop; the cure runs at it as well
    scale_resolution_g = "0.1 g"
    square_metre_minutes = "45 min" # hands lay and wet out a square metre of one ply

    [coupons]
    count = 5

    [bench]
    begins = "17:00"
    ends = "22:30"
    people = 2
    trim_guide = "ring to be printed"
    wax = "Paste wax for moulds"

    [coating]
    agent = "wax and film"

    [bag]
    style = "round the whole mould"

    [prices]
    currency = "EUR"
    "Peel ply" = "4.20 per m^2"
"""

from __future__ import annotations

import dataclasses

from laywright.errors import InputError
from laywright.job.sections import Section, choice, only, text_of
from laywright.job.setting_values import section_of, settings_of
from laywright.laminate.materials import Materials, load_materials
from laywright.quantities import magnitude
from laywright.shop.bench.bag import BagSettings
from laywright.shop.bench.bench import BenchSettings, TrimGuide
from laywright.shop.bench.bench_supplies import USUAL_SUPPLIES, supplies_of
from laywright.shop.bench.finish import FinishSettings
from laywright.shop.bench.release_coats import CoatingSettings
from laywright.shop.bench.shopping import read_prices
from laywright.shop.bench.strips import StripSettings
from laywright.shop.bench.timeline import WorkingDay
from laywright.shop.coupons.coupon_plan import CouponSettings
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.mixing.mix import MixSettings
from laywright.shop.plan import ShopSettings

__all__ = ["SHOP_SECTIONS", "read_bench", "read_shop"]

SHOP_SECTIONS = frozenset(
    {"mix", "cure", "coupons", "bench", "finish", "coating", "tape", "bag", "prices"}
)
"""Names of the sections that this module reads."""

_BENCH = {"begins", "ends", "people", "parts", "trim_guide"}


def read_shop(table: Section) -> ShopSettings:
    """Return the settings of mixing, cure and coupons.

    Parameters
    ----------
    table : mapping
        The whole job description.
    """
    section = section_of(table, "mix")
    degrees = magnitude(section.get("temperature", "21 degC"), "degC", "[mix] temperature")
    mix = settings_of(MixSettings, section, "mix", besides=("temperature",))
    cure = settings_of(CureSettings, section_of(table, "cure"), "cure")
    return ShopSettings(
        dataclasses.replace(mix, temperature_c=degrees),
        dataclasses.replace(cure, temperature_c=degrees),
        settings_of(CouponSettings, section_of(table, "coupons"), "coupons"),
    )


def read_bench(table: Section, materials: Materials | None = None) -> BenchSettings:
    """Return the settings of everything around the laminate.

    Parameters
    ----------
    table : mapping
        The whole job description.
    materials : Materials, optional
        Cards of release agents and consumables; those that come along if left out.
    """
    section = section_of(table, "bench")
    only(section, _BENCH | set(USUAL_SUPPLIES), "[bench]")
    named = {
        place: text_of(section, place, "[bench]") for place in USUAL_SUPPLIES if place in section
    }
    day = {key: section[key] for key in ("begins", "ends") if key in section}
    prices = section_of(table, "prices")
    currency = prices.get("currency", "")
    if not isinstance(currency, str):
        raise InputError("[prices] currency", repr(currency), "a text in quotes", "correct it")
    return BenchSettings(
        finish=settings_of(FinishSettings, section_of(table, "finish"), "finish"),
        coating=settings_of(CoatingSettings, section_of(table, "coating"), "coating"),
        strips=settings_of(StripSettings, section_of(table, "tape"), "tape"),
        bag=settings_of(BagSettings, section_of(table, "bag"), "bag"),
        day=settings_of(WorkingDay, day, "bench"),
        people=_count(section, "people"),
        parts=_count(section, "parts"),
        prices=read_prices(
            f"{item} = {price}" for item, price in prices.items() if item != "currency"
        ),
        currency=currency,
        trim_guide=choice(TrimGuide, section.get("trim_guide"), "[bench] trim_guide"),
        shelf=supplies_of(materials or load_materials(), named),
    )


def _count(section: Section, key: str) -> int:
    value = section.get(key, 1)
    if isinstance(value, bool) or not isinstance(value, int) or value < 1:
        raise InputError(f"[bench] {key}", repr(value), "a whole number from 1 on", "correct it")
    return value
