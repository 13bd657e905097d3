from __future__ import annotations

import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Core, Layup, Ply
from laywright.shop.coupons.coupon_plan import CouponSettings
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.mixing.mix import MixSettings, PlyCloth
from laywright.shop.plan import ShopSettings, plan_shop
from laywright.shop.record.record import ClothReading, Readings, Record, Verdict, weigh_in
from laywright.values import pack, unpack

MATERIALS = load_materials()
RESIN = MATERIALS.resin("Laminating epoxy, slow hardener")
CARBON = MATERIALS.cloth("Carbon twill weave 200 g/m^2")
GLASS = MATERIALS.cloth("E-glass plain weave 163 g/m^2")
LAYUP = Layup((Ply(GLASS, 0.0), Ply(CARBON, 0.0), Ply(GLASS, 0.0)), RESIN)
LAMINATE = analyse(LAYUP)
AREA = 2.5e5
PIECES = tuple(
    PlyCloth(n, ply.cloth.name, AREA, ply.cloth.areal_weight)
    for n, ply in enumerate(LAYUP.plies, start=1)
)
CURE = CureSettings(mould_softening_c=70.0)
SHOP = plan_shop(PIECES, LAMINATE, ShopSettings(cure=CURE))
MIX = SHOP.mix


def made_to(share: float, void: float = 0.0) -> Readings:
    """Readings of a part that really holds this much resin and air; demo data, invented."""
    real = analyse(dataclasses.replace(LAYUP, resin_share=share, void_share=void))
    part = MIX.cloth_g / (1.0 - share)
    return Readings(MIX.cloth_g, part - MIX.cloth_g + 10.0, part, (real.thickness,) * 4)


@given(st.floats(0.3, 0.7), st.floats(0.0, 0.2))
def test_resin_and_air_of_the_part_come_back(share, void):
    record = weigh_in(LAMINATE, SHOP, made_to(share, void))
    assert record.resin_share == pytest.approx(share, rel=1e-9)
    assert record.void_share == pytest.approx(void, abs=1e-9)
    assert record.fraction_by_thickness == pytest.approx(
        record.fraction_by_mass * (1.0 - void), rel=1e-9
    )
    assert record.lost_g == pytest.approx(10.0, rel=1e-9)


def test_a_part_as_planned_needs_no_remark():
    record = weigh_in(LAMINATE, SHOP, made_to(0.5))
    assert record.remarks == ()
    assert record.part_g == pytest.approx(record.planned_part_g, rel=1e-12)
    assert record.fraction_by_mass == pytest.approx(LAMINATE.fibre_volume_fraction, rel=1e-9)
    assert record.planned_resin_share == pytest.approx(0.5)


def test_a_heavy_part_says_what_to_plan_next_time():
    remarks = " ".join(weigh_in(LAMINATE, SHOP, made_to(0.58)).remarks)
    assert "19% heavier than planned" in remarks
    assert "plan the next one with 58%" in remarks


def test_air_and_contradictions_are_told_apart():
    airy = weigh_in(LAMINATE, SHOP, made_to(0.5, 0.12))
    assert "12% of air" in " ".join(airy.remarks)
    thin = dataclasses.replace(made_to(0.5), thicknesses_mm=(0.8 * LAMINATE.thickness,))
    assert "is wrong" in " ".join(weigh_in(LAMINATE, SHOP, thin).remarks)


def test_without_a_gauge_there_is_no_second_opinion():
    blind = dataclasses.replace(made_to(0.5), thicknesses_mm=())
    record = weigh_in(LAMINATE, SHOP, blind)
    assert (record.fraction_by_thickness, record.void_share, record.thickness) == (None,) * 3


def test_weighed_cloth_corrects_its_card():
    pieces = (
        ClothReading(GLASS.name, 1e5, 17.2),
        ClothReading(GLASS.name, 3e5, 51.6),
        ClothReading(CARBON.name, 1e5, 20.1),
    )
    record = weigh_in(LAMINATE, SHOP, dataclasses.replace(made_to(0.5), cloths=pieces))
    glass, carbon = record.cloths
    assert (glass.written, glass.weighed) == pytest.approx((163.0, 172.0))
    assert carbon.weighed == pytest.approx(201.0)
    (remark,) = record.remarks
    assert remark.startswith(f"{GLASS.name} weighs 172 g/m^2")


def test_record_survives_storage():
    readings = made_to(0.45)
    record = weigh_in(LAMINATE, SHOP, readings)
    assert unpack(Record, pack(record)) == record
    assert unpack(Readings, pack(readings)) == readings
    assert record.digest == weigh_in.digest(LAMINATE, SHOP, readings)


def test_the_verdict_is_the_band():
    for share, verdict in ((0.5, Verdict.GOOD), (0.58, Verdict.HEAVY), (0.42, Verdict.LIGHT)):
        record = weigh_in(LAMINATE, SHOP, made_to(share))
        assert record.verdict is verdict
        inside = record.least_g <= record.part_g <= record.most_g
        assert inside == (verdict is Verdict.GOOD)


def test_masses_in_and_out_are_balanced():
    readings = dataclasses.replace(made_to(0.5), left_g=4.0)
    record = weigh_in(LAMINATE, SHOP, readings)
    given = readings.cloth_g + readings.mix_g
    assert given == pytest.approx(record.part_g + readings.left_g + record.unseen_g)
    assert record.unseen_g == pytest.approx(6.0)
    spilt = dataclasses.replace(readings, mix_g=readings.mix_g + 20.0)
    assert "neither in the part nor" in " ".join(weigh_in(LAMINATE, SHOP, spilt).remarks)


def test_coats_and_core_are_taken_off_before_the_share_is():
    """A fill coat of 22.5 g and a core of 2 mm do not make the laminate rich."""
    sheet = next(iter(MATERIALS.cores.values()))
    layup = dataclasses.replace(LAYUP, core=Core(sheet, 2.0, 1))
    laminate = analyse(layup)
    settings = ShopSettings(MixSettings(fill_coats=1, scale_resolution_g=0.1), CURE)
    shop = plan_shop(PIECES, laminate, settings)
    assert shop.core_g == pytest.approx(laminate.core_areal * 0.25)
    assert shop.mix.coats_g == pytest.approx(22.5)
    part = 2.0 * shop.mix.cloth_g + shop.core_g + shop.mix.coats_g
    whole = laminate.thickness
    readings = Readings(shop.mix.cloth_g, shop.mix.mix_g, part, (whole,))
    record = weigh_in(laminate, shop, readings)
    assert record.resin_share == pytest.approx(0.5)
    assert record.planned_part_g == pytest.approx(part, rel=1e-9)
    assert record.verdict is Verdict.GOOD


def test_planned_and_made_stand_side_by_side():
    readings = dataclasses.replace(
        made_to(0.5), trimmed_g=150.0, temperature_c=19.5, gel_hours=9.0, date="2026-11-25"
    )
    record = weigh_in(LAMINATE, SHOP, readings)
    lines = {line.what: line for line in record.lines}
    assert record.date == "2026-11-25"
    assert lines["dry cloth"].made == lines["dry cloth"].planned
    assert (lines["shop"].planned, lines["shop"].made) == (21.0, 19.5)
    assert (lines["gelled after"].planned, lines["gelled after"].made) == (8.0, 9.0)
    assert lines["part after trimming"].made == 150.0
    assert lines["laying"].made is None


def test_pace_is_hands_without_mixing():
    mixing = 8.0 * len(MIX.cups)
    readings = dataclasses.replace(made_to(0.5), laying_minutes=mixing + 1.5 * sum(MIX.ply_minutes))
    assert weigh_in(LAMINATE, SHOP, readings).pace == pytest.approx(1.5)
    assert weigh_in(LAMINATE, SHOP, made_to(0.5)).pace is None


@pytest.mark.parametrize(
    ("call", "where"),
    [
        (lambda: weigh_in(LAMINATE, SHOP, Readings(100.0, 80.0, 190.0)), "weighed part"),
        (
            lambda: weigh_in(LAMINATE, SHOP, Readings(100.0, 110.0, 190.0, left_g=30.0)),
            "weighed part",
        ),
        (lambda: weigh_in(LAMINATE, SHOP, Readings(100.0, 100.0, 90.0)), "weighed part"),
        (
            lambda: weigh_in(
                LAMINATE,
                SHOP,
                Readings(100.0, 100.0, 190.0, cloths=(ClothReading("linen", 1e5, 20.0),)),
            ),
            "weighed cloth",
        ),
    ],
)
def test_impossible_readings_are_named(call, where):
    with pytest.raises(InputError) as caught:
        call()
    assert caught.value.where == where


def test_a_coupon_plate_is_no_loss():
    """The mix in a plate of coupons is neither in the part nor lost."""
    settings = ShopSettings(MixSettings(), CURE, CouponSettings(6))
    shop = plan_shop(PIECES, LAMINATE, settings)
    assert shop.coupons is not None
    assert shop.mix.coupon_g == shop.coupons.resin_g > 3.0
    without, beside = made_to(0.5), shop.mix.coupon_g
    record = weigh_in(LAMINATE, shop, dataclasses.replace(without, mix_g=without.mix_g + beside))
    alone = weigh_in(LAMINATE, SHOP, without)
    assert record.lost_g == pytest.approx(alone.lost_g)
    assert record.resin_share == pytest.approx(alone.resin_share)


def test_humidity_and_hardness_are_kept_beside_the_rest():
    readings = dataclasses.replace(
        made_to(0.5), humidity=55.0, hardness=(60.0, 62.0), hardness_full=84.0
    )
    record = weigh_in(LAMINATE, SHOP, readings)
    lines = {line.what: line for line in record.lines}
    assert (lines["humidity"].made, lines["hardness"].made) == (55.0, 61.0)
    assert lines["hardness"].unit == "Shore D"
    (remark,) = record.remarks
    assert "73% of the 84" in remark
