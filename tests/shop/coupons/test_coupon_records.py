from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.files.number_table import read_number_table
from laywright.shop.coupons.coupon import Ending
from laywright.shop.coupons.coupon_records import (
    ReadingColumns,
    bend_coupon,
    from_contact,
    tension_coupon,
)
from laywright.shop.coupons.coupons import evaluate_bending, evaluate_tension

SIZE = (15.0, 2.0, 64.0)
SLOPE = 50.0  # N/mm
MODULUS = SIZE[2] ** 3 * SLOPE / (4.0 * SIZE[0] * SIZE[1] ** 3)


def table(text: str):
    return read_number_table(text.encode(), "bend.csv")


HEADED = ReadingColumns()


def modulus(text: str, columns: ReadingColumns = HEADED) -> float:
    coupon = bend_coupon(table(text), "a", SIZE, columns)
    return evaluate_bending((coupon,)).modulus.mean


def rows(travel_scale: float, force_scale: float, mark: str = ";", decimal: str = ".") -> str:
    return "\n".join(
        f"{0.1 * k * travel_scale!r}{mark}{0.1 * k * SLOPE * force_scale!r}".replace(".", decimal)
        for k in range(25)
    )


@pytest.mark.parametrize(
    ("head", "travel", "force"),
    [
        ("Deflection (mm);Force (N)", 1.0, 1.0),
        ("Deflection (in);Load (lbf)", 1.0 / 25.4, 1.0 / 4.4482216152605),
        ("Dial gauge [mm];Weight [g]", 1.0, 1000.0 / 9.80665),
        ("Travel [mm];Mass [kg]", 1.0, 1.0 / 9.80665),
        ("Weg [mm];Kraft [kN]", 1.0, 0.001),
        ("Deflection;Force\nmm;N", 1.0, 1.0),
    ],
)
@pytest.mark.parametrize("decimal", [".", ","])
def test_every_unit_gives_the_same_modulus(head, travel, force, decimal):
    text = f"{head}\n{rows(travel, force, ';', decimal)}"
    assert modulus(text) == pytest.approx(MODULUS, rel=1e-9)


def test_units_that_are_not_written_are_asked_for_and_taken():
    text = f"Deflection;Force\n{rows(1.0, 1.0)}"
    with pytest.raises(InputError, match="unit of the force: found nothing"):
        modulus(text)
    said = ReadingColumns(force_unit="N", travel_unit="mm")
    assert modulus(text, said) == pytest.approx(MODULUS)
    assert modulus(text, ReadingColumns(force_unit="kN", travel_unit="mm")) == pytest.approx(
        1000.0 * MODULUS
    )


def test_a_unit_that_contradicts_the_heading_is_refused():
    text = f"Deflection (in);Force (N)\n{rows(1.0, 1.0)}"
    with pytest.raises(InputError, match="'in' in the heading and 'mm' in the settings"):
        modulus(text, ReadingColumns(travel_unit="mm"))


def test_columns_are_found_by_name_by_number_or_asked_for():
    text = f"a;b\n{rows(1.0, 1.0)}"
    units = {"force_unit": "N", "travel_unit": "mm"}
    with pytest.raises(InputError, match="one of 1 'a', 2 'b'"):
        modulus(text, ReadingColumns(**units))
    for columns in (ReadingColumns("b", "a", **units), ReadingColumns("2", "1", **units)):
        assert modulus(text, columns) == pytest.approx(MODULUS)
    with pytest.raises(InputError, match="column of the force: found '3'"):
        modulus(text, ReadingColumns("3", "1", **units))
    twice = "Force 1 (N);Force 2 (N);Travel (mm)\n1;2;3\n2;3;4"
    with pytest.raises(InputError, match="no heading that says it once"):
        modulus(twice)


@given(st.floats(0.0, 2.0), st.integers(0, 20))
def test_slack_before_the_contact_is_taken_off(slack, lead):
    travel = np.concatenate(
        [np.linspace(0.0, slack, lead, endpoint=False), slack + np.arange(60) * 0.05]
    )
    force = np.concatenate([np.zeros(lead), np.arange(60) * 0.05 * SLOPE])
    x, y = from_contact(travel, force)
    assert x[0] == y[0] == 0.0
    assert (np.diff(x) > 0.0).all()
    assert x[1:] * SLOPE == pytest.approx(y[1:], abs=1e-6)


def test_a_machine_that_counts_downwards_and_stutters():
    travel = -np.repeat(np.arange(30) * 0.1, 2)
    x, y = from_contact(travel, travel * SLOPE)
    assert x == pytest.approx(np.arange(30) * 0.1)
    assert y == pytest.approx(x * SLOPE)


def test_tension_by_strain_or_by_extension_over_a_gauge_length():
    area = 15.0 * 2.0
    strains = "\n".join(f"{0.01 * k};{20e3 * 1e-4 * k * area}" for k in range(40))
    by_strain = tension_coupon(
        table(f"Strain (%);Force (N)\n{strains}"), "a", SIZE[:2], ReadingColumns()
    )
    extension = "\n".join(f"{0.005 * k};{20e3 * 1e-4 * k * area}" for k in range(40))
    by_gauge = tension_coupon(
        table(f"Extension (mm);Force (N)\n{extension}"), "b", SIZE[:2], ReadingColumns(), 50.0
    )
    for coupon in (by_strain, by_gauge):
        assert evaluate_tension((coupon,)).modulus.mean == pytest.approx(20e3, rel=1e-6)
    with pytest.raises(InputError, match="gauge length"):
        tension_coupon(
            table("Extension (mm);Force (N)\n0;0\n1;1"), "c", SIZE[:2], ReadingColumns(), 0.0
        )


def test_hanging_weights_need_no_break():
    text = "Weight (kg);Dial gauge (mm)\n0;0\n" + "\n".join(
        f"{0.5 * k};{0.5 * k * 9.80665 / SLOPE}" for k in range(1, 30)
    )
    coupon = bend_coupon(table(text), "a", SIZE, ReadingColumns(), Ending.STOPPED)
    report = evaluate_bending((coupon,))
    assert report.modulus.mean == pytest.approx(MODULUS)
    assert report.strength is None
