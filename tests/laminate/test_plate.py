from __future__ import annotations

import dataclasses
import math

import pytest

from laminate.navier import navier_deflection
from laminate.stacks import CARBON, GLASS, MATERIALS, TAPE, layup
from laywright.errors import InputError
from laywright.laminate.knock_downs import KnockDowns
from laywright.laminate.laminate import analyse
from laywright.laminate.loads import LoadCase
from laywright.laminate.plate import Plate, PlateReport, Support, check_plate
from laywright.laminate.plies import Core
from laywright.laminate.strength import check_strength
from laywright.values import pack, unpack

KPA = 0.001
SHEET = analyse(layup(CARBON, 0, 45, 45, 0))
FOAM = MATERIALS.core("Closed-cell PVC foam 80 kg/m^3")
CORED = analyse(layup(CARBON, 0, 0, core=Core(FOAM, 8.0, 1)))


def test_a_sheet_meets_the_series():
    report = check_plate(SHEET, Plate(300.0, 200.0, pressure=KPA))
    series = navier_deflection(SHEET.d, (300.0, 200.0), KPA, tuple(SHEET.shear))
    assert report.deflection == pytest.approx(series, rel=1e-4)
    assert 0.0 < report.shear_share < 0.01
    assert math.isinf(report.buckling_factor)


def test_a_sandwich_gives_way_in_shear():
    plate = Plate(300.0, 200.0, pressure=KPA)
    report = check_plate(CORED, plate)
    series = navier_deflection(CORED.d, (300.0, 200.0), KPA, tuple(CORED.shear))
    assert report.deflection == pytest.approx(series, rel=1e-4)
    assert 0.2 < report.shear_share < 0.6
    assert report.deflection < check_plate(SHEET, plate).deflection / 20.0


def test_clamping_stiffens_and_moves_the_largest_moment_to_the_edge():
    simple, clamped = (
        check_plate(SHEET, Plate(200.0, 200.0, support, pressure=KPA)) for support in Support
    )
    assert 3.0 < simple.deflection / clamped.deflection < 5.0
    assert simple.finding.startswith("In the middle: ")
    assert clamped.finding.startswith("At the edges across ")


def test_strength_in_the_middle_is_that_of_its_moment():
    report = check_plate(SHEET, Plate(200.0, 200.0, pressure=KPA), knock_downs=KnockDowns())
    by_hand = check_strength(SHEET, LoadCase(moment=report.moment), knock_downs=KnockDowns())
    assert report.strength_factor == pytest.approx(by_hand.first_factor, rel=1e-6)


def test_deflection_grows_with_the_pressure_and_buckling_falls_with_the_force():
    one, two = (
        check_plate(SHEET, Plate(200.0, 150.0, pressure=p * KPA, force=(-p, 0.0, 0.0)))
        for p in (1.0, 2.0)
    )
    assert two.deflection == pytest.approx(2.0 * one.deflection, rel=1e-9)
    assert two.buckling_factor == pytest.approx(one.buckling_factor / 2.0, rel=1e-9)
    assert "one without the other" in " ".join(one.limits)


def test_limits_are_said():
    assert len(check_plate(SHEET, Plate(100.0, 100.0, pressure=0.1 * KPA)).limits) == 1
    large = check_plate(SHEET, Plate(800.0, 800.0, pressure=KPA))
    assert "more than half the thickness" in " ".join(large.limits)
    uneven = check_plate(analyse(layup(TAPE, 0, 90)), Plate(100.0, 100.0, pressure=0.01 * KPA))
    assert "not symmetric" in " ".join(uneven.limits)
    thick = check_plate(CORED, Plate(60.0, 60.0, pressure=KPA))
    assert "thick for its size" in " ".join(thick.limits)


def test_coupling_of_stretch_and_bending_only_softens():
    uneven, even = (analyse(layup(TAPE, *degrees)) for degrees in ((0, 0, 90, 90), (0, 90, 90, 0)))
    plate = Plate(150.0, 150.0, pressure=0.1 * KPA)
    assert check_plate(uneven, plate).deflection > check_plate(even, plate).deflection


def test_without_pressure_only_buckling_is_judged():
    report = check_plate(SHEET, Plate(200.0, 200.0, force=(-1.0, 0.0, 0.0)))
    assert (report.deflection, report.shear_share, report.strength_factor) == (0.0, 0.0, None)
    assert 0.0 < report.buckling_factor < math.inf


def test_a_cloth_without_strengths_bends_all_the_same():
    bare = dataclasses.replace(GLASS, strengths=None)
    report = check_plate(analyse(layup(bare, 0, 0)), Plate(200.0, 200.0, pressure=KPA))
    assert report.strength_factor is None
    assert "no strengths" in report.finding
    assert report.deflection > 0.0


def test_report_survives_storage():
    report = check_plate(SHEET, Plate(200.0, 200.0, pressure=KPA))
    assert unpack(PlateReport, pack(report)) == report


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"length": 0.0}, "sides from 5 mm"),
        ({"length": 5000.0}, "shorter piece"),
        ({"pressure": 0.0}, "no load"),
        ({"pressure": math.nan}, "no load"),
        ({"pressure": 1000.0}, "1 kPa is 0.001 MPa"),
    ],
)
def test_bad_plates_are_refused(change, words):
    with pytest.raises(InputError, match=words):
        dataclasses.replace(Plate(200.0, 200.0, pressure=KPA), **change)
