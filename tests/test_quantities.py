"""Units at the door: exact conversions, and one clear sentence for everything else."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import UnitError
from laywright.quantities import magnitude, registry

# The inch is exactly 25.4 mm, the avoirdupois pound exactly 0.45359237 kg, the yard 0.9144 m and
# the US gallon 231 cubic inches: NIST Special Publication 811 (2008), appendix B.
EXACT = [
    ("50 in", "mm", 1270.0),
    ("1 yd", "mm", 914.4),
    ("1 lb", "g", 453.59237),
    ("1 oz", "g", 28.349523125),
    ("1 gallon", "cm^3", 3785.411784),
    ("6 oz/yd^2", "g/m^2", 6 * 28.349523125 / 0.9144**2),
    ("1 psi", "MPa", 0.45359237 * 9.80665 / 25.4**2),
    ("72.4 GPa", "MPa", 72400.0),
    ("1.2 g/cm^3", "kg/m^3", 1200.0),
    ("0 degC", "kelvin", 273.15),
    ("212 degF", "degC", 100.0),
    ("-40 degF", "degC", -40.0),
    ("90 deg", "rad", math.pi / 2),
    ("25 min", "s", 1500.0),
    ("200 gsm", "g/m^2", 200.0),
    ("5 %", "1", 0.05),
    ("0.4", "1", 0.4),
]


@pytest.mark.parametrize(("text", "unit", "number"), EXACT)
def test_conversions_are_exact(text, unit, number):
    assert magnitude(text, unit, "setting") == pytest.approx(number, rel=1e-14)


@pytest.mark.parametrize(
    "text", ["200 g/m^2", "200 g/m**2", " 200 g / m^2 ", "2e2 g/m^2", "+200.0 g/m^2", "200. g/m^2"]
)
def test_ways_to_write_the_same(text):
    assert magnitude(text, "g/m^2", "areal weight") == 200.0


def test_number_may_start_with_the_point():
    assert magnitude(".5 mm", "mm", "gap") == 0.5
    assert magnitude("-.5 mm", "mm", "gap") == -0.5


@given(st.floats(-1e9, 1e9), st.sampled_from(["mm", "inch", "g/m^2", "MPa", "minute"]))
def test_same_unit_changes_no_digit_that_a_person_writes(number, unit):
    written = float(f"{number:.12g}")
    assert magnitude(f"{written!r} {unit}", unit, "setting") == written


@given(st.floats(1e-6, 1e6))
def test_there_and_back_again(number):
    inches = magnitude(f"{number!r} mm", "inch", "length")
    assert magnitude(f"{inches!r} inch", "mm", "length") == pytest.approx(number, rel=1e-13)


def test_pint_quantities_are_taken_as_they_are():
    assert magnitude(registry().Quantity(2.0, "inch"), "mm", "length") == 50.8
    assert magnitude(registry().Quantity(25.0, "degC"), "kelvin", "shop") == 298.15


def test_there_is_one_registry():
    assert registry() is registry()


@pytest.mark.parametrize(
    ("text", "unit", "found"),
    [
        ("200 g", "g/m^2", "'200 g'"),
        ("200", "g/m^2", "'200'"),
        ("21 degC", "mm", "'21 degC'"),
        ("3 mm", "1", "'3 mm'"),
        ("3 cubits_of_noah", "mm", "the unit 'cubits_of_noah'"),
        ("3 mm^", "mm", "the unit 'mm^'"),
        ("3 (mm", "mm", "the unit '(mm'"),
        ("3 :", "mm", "the unit ':'"),
        ("21 degC*mm", "mm", "'21 degC*mm'"),
        ("3 km^999", "mm^999", "'3 km^999'"),
        ("thick", "mm", "'thick'"),
        ("", "mm", "''"),
        ("1,5 mm", "mm", None),
        ("1e999 mm", "mm", "'1e999 mm'"),
        ("nan mm", "mm", "'nan mm'"),
    ],
)
def test_bad_input_ends_in_one_sentence_that_names_the_setting(text, unit, found):
    with pytest.raises(UnitError) as caught:
        magnitude(text, unit, "roll width")
    error = caught.value
    assert error.where == "roll width"
    assert found is None or error.found == found
    assert str(error).startswith("roll width: found ")
    assert "\n" not in str(error)


def test_ratio_is_asked_for_in_plain_words():
    with pytest.raises(UnitError, match="needed a quantity in percent or a plain ratio"):
        magnitude("3 mm", "1", "extra share")


@pytest.mark.parametrize(
    "unit",
    [
        "mm**9**9**9",
        "mm ^ 9 ^ 9 ^ 9",
        "mm*9**-9**9",
        "mm*99999999**99999999",
        "mm*999_999_999**999_999_999",
        "mm*9⁹⁹⁹⁹⁹⁹⁹⁹⁹",
        "mm*9⁹**9",
        "mm*9**9⁹",
        "mm*9**(9*9**9)",
        "mm*((9**9)**9)**9",
        "mm" + "*999**999" * 1000,
    ],
)
def test_a_tower_of_powers_is_refused_and_not_worked_out(unit):
    with pytest.raises(UnitError, match="the unit 'mm") as caught:
        magnitude(f"1 {unit}", "mm", "gap")
    assert len(str(caught.value)) < 200


@pytest.mark.parametrize("value", [5, 5.0, None, ["5 mm"]])
def test_a_bare_number_has_no_unit_and_is_refused(value):
    with pytest.raises(UnitError, match="give the number with such a unit"):
        magnitude(value, "mm", "roll width")


@given(st.text(max_size=20) | st.text("0123456789.eE+-^*/()% mdegCkin", max_size=20))
def test_whatever_is_typed_gives_a_finite_number_or_an_error_of_ours(text):
    try:
        number = magnitude(text, "mm", "gap")
    except UnitError:
        return
    assert math.isfinite(number)
