from __future__ import annotations

import tomllib

import pytest

from laywright.errors import InputError, UnitError
from laywright.job.load_section import read_load
from laywright.laminate.criteria import Criterion
from laywright.laminate.knock_downs import KnockDowns
from laywright.laminate.loads import LoadCase, Patch, StrainCase
from laywright.laminate.plate import Plate, Support

WHOLE = """
pull_along = "0.5 kN/m"
shear = "-1 N/mm"
bend_along = "2 N"
through_along = "3 N/mm"
pressed_force = "0.7 kN"
pressed_area = "10 cm^2"
criterion = "Tsai-Wu"

[strain]
along = "0.1 %"
twist = "0.001 1/mm"

[panel]
length = "0.4 m"
width = "300 mm"
edges = "clamped"
pressure = "1 kPa"
pull_along = "-2 N/mm"

[counted_on]
tension = "60 %"
"""


def test_every_kind_of_load_is_read_with_its_units():
    found = read_load(tomllib.loads(WHOLE))
    assert found.load == LoadCase(
        (0.5, 0.0, -1.0), (2.0, 0.0, 0.0), (3.0, 0.0), Patch(700.0, 1000.0)
    )
    assert found.strain == StrainCase((0.001, 0.0, 0.0), (0.0, 0.0, 0.001))
    assert found.plate == Plate(400.0, 300.0, Support.CLAMPED, 0.001, (-2.0, 0.0, 0.0))
    assert found.criterion is Criterion.TSAI_WU
    assert found.knock_downs == KnockDowns(tension=0.6)


def test_no_section_is_no_load():
    assert read_load({}) is None


@pytest.mark.parametrize(
    ("text", "error", "words"),
    [
        ('criterion = "Tsai-Wu"', InputError, "forces, strains or a panel"),
        ('pull_along = "5 N"', UnitError, "a quantity in N/mm"),
        ("pull_along = 5", InputError, "a text in quotes"),
        ('pull_along = "0 N/mm"', InputError, "a load of finite size"),
        ('push = "5 N/mm"', InputError, "the key 'push'"),
        ('pressed_force = "5 N"', InputError, r"\[load\] pressed_area"),
        ('[panel]\nlength = "4 m"', InputError, r"\[load.panel\] width"),
        ('[strain]\nalong = "1 mm"', UnitError, r"\[load.strain\] along"),
        ('[panel]\nlength = "4"\nwidth = "3 m"', UnitError, r"\[load.panel\] length"),
    ],
)
def test_what_cannot_be_used_is_named(text, error, words):
    with pytest.raises(error, match=words):
        read_load(tomllib.loads(text))
