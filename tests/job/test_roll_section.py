"""The section [roll] of a job."""

import pytest

from laywright.cloth.roll.roll import Fault, Offcut, RollSettings, TurnOver, WidePatterns
from laywright.errors import LaywrightError
from laywright.job.roll_section import read_roll


def test_nothing_said_gives_the_defaults():
    assert read_roll({}) == RollSettings()


def test_every_key_is_read_with_its_unit():
    found = read_roll(
        {
            "widths": {"mat": "1.27 m"},
            "edge": "1 cm",
            "gap": "4 mm",
            "seconds": "0.5 min",
            "sold_by": "0.5 m",
            "parts": 2,
            "mirrored_parts": 1,
            "turn_over": "never",
            "wide": "split along the warp",
            "offcuts": ["mat: 60 cm x 400 mm"],
            "faults": ["mat: 1.2 m to 1.3 m, across 0 mm to 80 mm"],
        }
    )
    assert found == RollSettings(
        {"mat": 1270.0},
        10.0,
        4.0,
        30.0,
        offcuts=(Offcut("mat", 600.0, 400.0),),
        faults=(Fault("mat", 1200.0, 1300.0, 0.0, 80.0),),
        turn_over=TurnOver.NEVER,
        wide=WidePatterns.SPLIT,
        parts=2,
        mirrored_parts=1,
        sold_by=500.0,
    )


@pytest.mark.parametrize(
    ("wrong", "words"),
    [
        ({"offcuts": "mat: 60 cm x 40 cm"}, "[roll] offcuts: found"),
        ({"offcuts": ["mat 60 x 40"]}, "cloth: length along the warp x width"),
        ({"faults": [3]}, "[roll] faults: found"),
        ({"parts": "two"}, "[roll] parts: found 'two', needed a whole number"),
        ({"turn_over": "always"}, "'never'"),
        ({"width": "1 m"}, "the key 'width'"),
        ({"gap": 5}, "a number with its unit in quotes"),
    ],
)
def test_a_slip_is_named(wrong, words):
    with pytest.raises(LaywrightError) as caught:
        read_roll(wrong)
    assert words in str(caught.value)
