"""Decimal commas on sheets: every fraction, and nothing that only looks like one."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.files.decimal_mark import DecimalMark, marked, with_comma
from laywright.files.drawing import Drawing, Label, Line
from laywright.files.page import Card, Cards, Note, Picture, Sheet, Station, Steps, Table


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("0.76 mm in 3 plies", "0,76 mm in 3 plies"),
        ("51.8 x 173.8 x 230.5", "51,8 x 173,8 x 230,5"),
        ("gaps of 0.10, 0.10 and 0.00 mm", "gaps of 0,10; 0,10 and 0,00 mm"),
        ("the direction (0, 0, -1)", "the direction (0, 0, -1)"),
        ("the direction (0.1, 0, -0.9)", "the direction (0,1; 0; -0,9)"),
        ("wait 2.5. Then sand.", "wait 2,5. Then sand."),
        ("day 1, 12:10", "day 1, 12:10"),
        ("4.3 | 4.1", "4,3 | 4,1"),
        ("50% of 92.2 g", "50% of 92,2 g"),
        ("tile 1.stl, part 1.3mf", "tile 1.stl, part 1.3mf"),
        ("Laywright 0.9.1", "Laywright 0.9.1"),
        ("A1 + A2.", "A1 + A2."),
        ("of 0.5 mm.", "of 0,5 mm."),
    ],
)
def test_fractions_get_a_comma_and_names_do_not(text, wanted):
    assert with_comma(text) == wanted


@given(st.lists(st.decimals(-1000, 1000, places=2), min_size=1, max_size=5))
def test_every_number_is_read_back_from_a_list(numbers):
    text = with_comma(", ".join(f"{number:f}" for number in numbers))
    assert [float(part.replace(",", ".")) for part in text.split("; ")] == [
        float(number) for number in numbers
    ]


@given(st.text(alphabet=st.sampled_from("ab 0123456789.,;:x-()"), max_size=40))
def test_nothing_but_marks_changes(text):
    found = with_comma(text)
    assert len(found) == len(text)
    changed = {(a, b) for a, b in zip(text, found, strict=True) if a != b}
    assert changed <= {(".", ","), (",", ";")}


def test_all_words_of_a_sheet_get_the_mark_and_nothing_else_changes():
    line = Line("cut 0.5", np.array([[0.0, 0.0], [1.5, 2.5]]))
    drawing = Drawing("d 0.5", (line, Label("cut 0.5", "0.5 mm", (0.5, 1.5))))
    sheet = Sheet(
        "Cowl 0.5",
        "3F2A",
        (
            Station(
                "Mix",
                ("below 0.5 m",),
                (
                    Note("0.5 g"),
                    Steps(("0.5 h",)),
                    Table("0.5 mm", ("0.5",), (("0.5",), ("",))),
                    Picture("0.5 mm", drawing),
                    Cards("0.5", (Card("0.5", ("0.5", ""), drawing), Card("-", ()))),
                ),
            ),
        ),
        "0.5",
    )
    assert marked(sheet, DecimalMark.POINT) is sheet
    found = marked(sheet, DecimalMark.COMMA)
    assert (found.title, found.version, found.foot) == ("Cowl 0.5", "3F2A", "0.5")
    (station,) = found.stations
    note, steps, table, picture, cards = station.blocks
    assert station.cautions == ("below 0,5 m",)
    assert note.text == "0,5 g"
    assert steps.items == ("0,5 h",)
    assert (table.heading, table.columns, table.rows) == ("0,5 mm", ("0,5",), (("0,5",), ("",)))
    assert picture.caption == "0,5 mm"
    for seen in (picture.drawing, cards.cards[0].drawing):
        assert seen.shapes[0] is line
        assert (seen.shapes[1].text, seen.shapes[1].layer) == ("0,5 mm", "cut 0.5")
        assert seen.shapes[1].at == (0.5, 1.5)
    assert (cards.heading, cards.cards[0].title, cards.cards[0].lines) == (
        "0,5",
        "0,5",
        ("0,5", ""),
    )
    assert cards.cards[1].drawing is None
