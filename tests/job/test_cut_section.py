"""The section [cuts]."""

import math

import pytest

from laywright.cloth.cuts.cuts import Answer, Cut, CutSettings, Joint, Propose
from laywright.errors import InputError, LimitError
from laywright.job.cut_section import read_cuts

POINTS = [[0, -100, 9], [0, -58, 81]]
PLACES = ((0.0, -100.0, 9.0), (0.0, -58.0, 81.0))


def test_nothing_means_no_cuts():
    assert read_cuts({}) == CutSettings()


def test_everything_can_be_said():
    found = read_cuts(
        {
            "propose": "proposed cuts are made",
            "lap": "30 mm",
            "stagger": "2 cm",
            "plies_apart": 3,
            "shear_limit": "35 deg",
            "list": [
                {"ply": 2, "points": POINTS, "joint": "butt"},
                {"points": POINTS, "answer": "refused"},
            ],
        }
    )
    assert found.propose is Propose.MADE
    assert (found.lap, found.stagger, found.plies_apart) == (30.0, 20.0, 3)
    assert found.shear_limit == pytest.approx(math.radians(35.0))
    assert found.cuts == (Cut(2, PLACES, Joint.BUTT), Cut(0, PLACES, answer=Answer.REFUSED))


@pytest.mark.parametrize(
    ("section", "where"),
    [
        ({"list": 3}, r"\[cuts\] list"),
        ({"list": [7]}, r"\[cuts\] cut 1"),
        ({"list": [{"ply": 1}]}, r"\[cuts\] cut 1 points"),
        ({"list": [{"ply": "a", "points": POINTS}]}, r"\[cuts\] cut 1 ply"),
        ({"list": [{"points": POINTS, "joint": "glue"}]}, r"\[cuts\] cut 1 joint"),
        ({"propose": "maybe"}, r"\[cuts\] propose"),
        ({"depth": "3 mm"}, r"\[cuts\]"),
    ],
)
def test_slips_are_named(section, where):
    with pytest.raises(InputError, match=where):
        read_cuts(section)


def test_a_lap_too_narrow_is_refused():
    with pytest.raises(LimitError, match="lap of the cuts"):
        read_cuts({"lap": "10 mm"})
