"""Sentences of the core find their templates; in English nothing changes."""

import pytest

from freecad.laywright import translated as subject
from freecad.laywright.translated import translated
from laywright.errors import GeometryError, InputError

pytestmark = pytest.mark.freecad


@pytest.fixture
def shouting(monkeypatch):
    """A language that says every template in capitals."""

    def shout(context, text):
        return text.upper()

    monkeypatch.setattr(subject, "translate", shout)


def test_in_english_nothing_changes():
    problem = InputError("roll width", "0 mm", "more than 0 mm", "set the width of the roll")
    assert translated(problem) == str(problem)
    assert translated("no such words in the core: 3 of them.") == (
        "no such words in the core: 3 of them."
    )


def test_numbers_and_names_stay_while_words_change(shouting):
    problem = GeometryError("Face3", "a face narrower than 2.5 mm somewhere", "none", "check it")
    assert translated(problem) == (
        "Face3: FOUND A FACE NARROWER THAN 2.5 MM SOMEWHERE, NEEDED NONE; CHECK IT."
    )


def test_several_sentences_and_parts_in_gaps_are_said_one_by_one(shouting):
    both = "Glue A1 to A2. The working area is off by 0.2 mm, wanted at most 0.1 mm."
    assert translated(both) == (
        "GLUE A1 TO A2. THE WORKING AREA IS OFF BY 0.2 MM, WANTED AT MOST 0.1 MM."
    )
    assert translated("laminate thickness: 0.5 mm, not applied: switched off") == (
        "LAMINATE THICKNESS: 0.5 MM, NOT APPLIED: SWITCHED OFF"
    )
    assert translated("out of date: waits for Mould") == "OUT OF DATE: WAITS FOR Mould"


def test_a_gap_may_be_empty(shouting):
    one = "The modulus of 1 coupon is 13445 MPa, predicted were 14938: within 15%, as good as "
    assert translated(f"{one}cards and hands allow.") == (
        "THE modulus OF 1 COUPON IS 13445 MPA, PREDICTED WERE 14938: WITHIN 15%, AS GOOD AS "
        "CARDS AND HANDS ALLOW."
    )


def test_what_is_unknown_stays(shouting):
    assert translated("Carbon twill weave 200 g/m^2") == "Carbon twill weave 200 g/m^2"
    assert translated("") == ""
