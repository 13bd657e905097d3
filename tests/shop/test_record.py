from __future__ import annotations

import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.shop.mix import MixSettings, PlyCloth, plan_mix
from laywright.shop.record import ClothReading, Readings, Record, weigh_in
from laywright.values import pack, unpack

MATERIALS = load_materials()
RESIN = MATERIALS.resin("Laminating epoxy, slow hardener")
CARBON = MATERIALS.cloth("Carbon twill weave 200 g/m^2")
GLASS = MATERIALS.cloth("E-glass plain weave 163 g/m^2")
LAYUP = Layup((Ply(GLASS, 0.0), Ply(CARBON, 0.0), Ply(GLASS, 0.0)), RESIN)
LAMINATE = analyse(LAYUP)
AREA = 2.5e5
MIX = plan_mix(
    tuple(
        PlyCloth(n, ply.cloth.name, AREA, ply.cloth.areal_weight)
        for n, ply in enumerate(LAYUP.plies, start=1)
    ),
    RESIN,
    0.5,
    MixSettings(),
)


def made_to(share: float, void: float = 0.0) -> Readings:
    """Readings of a part that really holds this much resin and air; demo data, invented."""
    real = analyse(dataclasses.replace(LAYUP, resin_share=share, void_share=void))
    part = MIX.cloth_g / (1.0 - share)
    return Readings(MIX.cloth_g, part - MIX.cloth_g + 10.0, part, (real.thickness,) * 4)


@given(st.floats(0.3, 0.7), st.floats(0.0, 0.2))
def test_resin_and_air_of_the_part_come_back(share, void):
    record = weigh_in(LAMINATE, MIX, made_to(share, void))
    assert record.resin_share == pytest.approx(share, rel=1e-9)
    assert record.void_share == pytest.approx(void, abs=1e-9)
    assert record.fraction_by_thickness == pytest.approx(
        record.fraction_by_mass * (1.0 - void), rel=1e-9
    )
    assert record.lost_g == pytest.approx(10.0, rel=1e-9)


def test_a_part_as_planned_needs_no_remark():
    record = weigh_in(LAMINATE, MIX, made_to(0.5))
    assert record.remarks == ()
    assert record.part_g == pytest.approx(record.planned_part_g, rel=1e-12)
    assert record.fraction_by_mass == pytest.approx(LAMINATE.fibre_volume_fraction, rel=1e-9)
    assert record.planned_resin_share == pytest.approx(0.5)


def test_a_heavy_part_says_what_to_plan_next_time():
    remarks = " ".join(weigh_in(LAMINATE, MIX, made_to(0.58)).remarks)
    assert "19% heavier than planned" in remarks
    assert "plan the next one with 58%" in remarks


def test_air_and_contradictions_are_told_apart():
    airy = weigh_in(LAMINATE, MIX, made_to(0.5, 0.12))
    assert "12% of air" in " ".join(airy.remarks)
    thin = dataclasses.replace(made_to(0.5), thicknesses_mm=(0.8 * LAMINATE.thickness,))
    assert "is wrong" in " ".join(weigh_in(LAMINATE, MIX, thin).remarks)


def test_without_a_gauge_there_is_no_second_opinion():
    blind = dataclasses.replace(made_to(0.5), thicknesses_mm=())
    record = weigh_in(LAMINATE, MIX, blind)
    assert (record.fraction_by_thickness, record.void_share, record.thickness) == (None,) * 3


def test_weighed_cloth_corrects_its_card():
    pieces = (
        ClothReading(GLASS.name, 1e5, 17.2),
        ClothReading(GLASS.name, 3e5, 51.6),
        ClothReading(CARBON.name, 1e5, 20.1),
    )
    record = weigh_in(LAMINATE, MIX, dataclasses.replace(made_to(0.5), cloths=pieces))
    glass, carbon = record.cloths
    assert (glass.written, glass.weighed) == pytest.approx((163.0, 172.0))
    assert carbon.weighed == pytest.approx(201.0)
    (remark,) = record.remarks
    assert remark.startswith(f"{GLASS.name} weighs 172 g/m^2")


def test_record_survives_storage():
    readings = made_to(0.45)
    record = weigh_in(LAMINATE, MIX, readings)
    assert unpack(Record, pack(record)) == record
    assert unpack(Readings, pack(readings)) == readings
    assert record.digest == weigh_in.digest(LAMINATE, MIX, readings)


@pytest.mark.parametrize(
    ("call", "where"),
    [
        (lambda: Readings(100.0, 80.0, 190.0), "weighed part"),
        (lambda: Readings(0.0, 80.0, 70.0), "weighed cloth"),
        (lambda: Readings(100.0, 100.0, 190.0, (600.0,)), "measured thickness"),
        (lambda: weigh_in(LAMINATE, MIX, Readings(100.0, 100.0, 90.0)), "weighed part"),
        (
            lambda: weigh_in(
                LAMINATE,
                MIX,
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
