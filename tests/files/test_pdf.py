import numpy as np
import pytest

from laywright.errors import InputError
from laywright.files.drawing import Drawing, Label, Line
from laywright.files.page import (
    Card,
    Cards,
    Note,
    Picture,
    Sheet,
    Station,
    Steps,
    Table,
    version_note,
)
from laywright.files.paper import Paper
from laywright.files.pdf import pdf_bytes
from pdf_reading import lines_of, pages_of, texts_of

SQUARE = np.array([[0, 0], [1000, 0], [1000, 500], [0, 500]], float)
SHEET = Sheet(
    "Cowl",
    "3F2A77C0",
    (
        Station("Mix", ("Wear gloves.",), (Note("Stir it well."), Steps(("Weigh.", "Pour.")))),
        Station(
            "Cut",
            (),
            (
                Picture("Roll", Drawing("roll", (Line("cut", SQUARE, True),)), 60.0),
                Table("Weigh-in", ("Ply", "Found, g"), tuple((str(k), "") for k in range(60))),
            ),
        ),
    ),
    "Estimates only.",
)


@pytest.mark.parametrize("paper", list(Paper))
def test_pages_have_the_size_of_the_paper(paper):
    for page in pages_of(pdf_bytes(SHEET, paper.value)):
        size = [float(v) * 25.4 / 72 for v in page.mediabox[2:]]
        assert size == pytest.approx(paper.size, abs=1e-3)


def test_each_station_begins_a_page_and_every_page_carries_version_foot_and_number():
    texts = texts_of(pdf_bytes(SHEET))
    assert "1. Mix" in texts[0]
    assert "CAUTION" in texts[0]
    assert texts[0].index("CAUTION") < texts[0].index("Stir it well.")
    assert "2. Cut" in texts[1]
    assert len(texts) == 4
    assert ["2. Cut, continued" in text for text in texts] == [False, False, True, True]
    for number, text in enumerate(texts, start=1):
        words = " ".join(text.split())
        assert version_note(SHEET) in words
        assert "Estimates only." in words
        assert f"{number} / 4" in words
        assert "Cowl" in words


def test_a_long_table_repeats_its_head_and_loses_no_row():
    texts = texts_of(pdf_bytes(SHEET))
    assert "Found, g" in texts[1]
    assert "Found, g" in texts[2]
    assert "Found, g" in texts[3]
    words = " ".join(texts[1:]).split()
    assert all(str(k) in words for k in range(60))


def test_pictures_are_vectors_inside_the_margins():
    page = pages_of(pdf_bytes(SHEET))[1]
    assert "/XObject" not in page["/Resources"]
    lines = lines_of(page)
    assert lines[:, :, 0].min() > 11.9
    assert lines[:, :, 0].max() < 198.1
    lengths = np.linalg.norm(lines[:, 1] - lines[:, 0], axis=1)
    assert np.abs(lengths - 120.0).min() < 1.0


def test_boxes_to_tick_stand_before_the_steps():
    (page, *_) = pages_of(pdf_bytes(SHEET))
    boxes = [
        [float(v) for v in operands[2:]]
        for operands, operator in page.get_contents().operations
        if operator == b"re"
    ]
    side = 5.0 * 72 / 25.4
    assert sum(np.allclose(box, side, atol=0.01) for box in boxes) == 2


def test_hostile_texts_are_shown_as_they_are():
    name = "<b>&amp;</para><img src='x'/>"
    sheet = Sheet(
        name,
        name,
        (
            Station(
                name,
                (name,),
                (
                    Note(name),
                    Steps((name,)),
                    Table(name, (name,), ((name,),)),
                    Picture(name, Drawing(name, (Label(name, name, (0.0, 0.0)),))),
                ),
            ),
        ),
        name,
    )
    text = "".join(texts_of(pdf_bytes(sheet))[0].split())
    assert text.count("".join(name.split())) >= 8


def test_an_empty_sheet_is_refused_and_bytes_repeat():
    with pytest.raises(InputError, match="no station"):
        pdf_bytes(Sheet("x", "1", ()))
    with pytest.raises(InputError, match="A4"):
        pdf_bytes(SHEET, "A0")
    assert pdf_bytes(SHEET) == pdf_bytes(SHEET)


def test_texts_longer_than_a_page_flow_on():
    long = "word " * 700
    unbroken = "x" * 2000
    blocks = (Note(long), Steps((long, unbroken)), Table(unbroken, ("a", "b"), ((long, unbroken),)))
    texts = texts_of(pdf_bytes(Sheet(unbroken, "1", (Station(long, (long,), blocks),))))
    assert " ".join(texts).split().count("word") >= 4 * 700


@pytest.mark.parametrize("lines", range(20, 60, 3))
def test_a_heading_of_cards_stays_with_its_first_card(lines):
    """However much stands above it, the heading is never the last thing on a page."""
    notes = tuple(Note(f"Line {number}.") for number in range(lines))
    cards = Cards("In the order of laying", (Card("Ply 1", ("glass", "")), Card("Ply 2", ("", ""))))
    texts = texts_of(pdf_bytes(Sheet("cowl", "1", (Station("Lay up", (), (*notes, cards)),))))
    (page,) = (text for text in texts if "In the order of laying" in text)
    assert "Ply 1" in page
