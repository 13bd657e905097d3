"""What a roll plan starts from."""

import math

import pytest

from laywright import values
from laywright.cloth.roll.roll_settings import (
    Fault,
    Offcut,
    RollSettings,
    lap_of,
    reversible,
    roll_width,
)
from laywright.errors import InputError
from laywright.laminate.materials import Weave


def test_offcuts_and_faults_are_read_from_text_with_units():
    assert Offcut.read("carbon twill 200: 0.6 m x 35 cm") == Offcut("carbon twill 200", 600, 350)
    assert Fault.read("glass: 1.2 m to 1230 mm") == Fault("glass", 1200.0, 1230.0)
    assert Fault.read("glass: 0 mm to 1 m, across 900 mm to 1 m") == Fault(
        "glass", 0, 1000, 900, 1000
    )


def test_a_roll_width_is_read_from_text():
    assert roll_width("my cloth: 1.27 m") == ("my cloth", 1270.0)
    for wrong in ("1.27 m", "my cloth: 3 kg", ": 1 m", ""):
        with pytest.raises(InputError):
            roll_width(wrong)


@pytest.mark.parametrize(
    "wrong",
    ["glass 600 x 400", "glass: 600 x 400", "glass: 0 mm x 400 mm", "glass: 3 kg x 400 mm", ""],
)
def test_an_offcut_without_cloth_size_or_unit_is_refused(wrong):
    with pytest.raises(InputError):
        Offcut.read(wrong)


@pytest.mark.parametrize(
    "wrong", ["glass: 600 mm", "glass: 600 mm to 500 mm", "glass: 1 to 2", "glass: -1 mm to 2 mm"]
)
def test_a_fault_that_cannot_be_is_refused(wrong):
    with pytest.raises(InputError):
        Fault.read(wrong)


@pytest.mark.parametrize(
    "wrong",
    [
        {"edge": -1.0},
        {"gap": math.nan},
        {"seconds": -1.0},
        {"widths": {"mat": 10.0}},
        {"parts": 0},
        {"mirrored_parts": -1},
        {"sold_by": 0.0},
    ],
)
def test_settings_that_cannot_be_are_refused(wrong):
    with pytest.raises(InputError):
        RollSettings(**wrong)


def test_settings_are_stored_and_read_back():
    settings = RollSettings(
        {"mat": 1270.0}, 12.0, 4.0, 0.0, 7, (Offcut("mat", 300, 200),), (Fault("mat", 10, 20),)
    )
    assert values.unpack(RollSettings, values.pack(settings)) == settings


def test_cloth_with_two_like_faces_may_be_turned_over():
    assert [weave for weave in Weave if reversible(weave)] == [
        Weave.PLAIN,
        Weave.UNIDIRECTIONAL,
        Weave.MAT,
    ]
    assert lap_of(Weave.UNIDIRECTIONAL) == 0.0
    assert min(lap_of(w) for w in Weave if w is not Weave.UNIDIRECTIONAL) >= 12.7
