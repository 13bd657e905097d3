import pytest
from reportlab.lib.styles import ParagraphStyle
from reportlab.platypus import Paragraph, Spacer

from laywright.files.page import Note, Sheet, Station, Steps
from laywright.files.pdf import pdf_bytes
from laywright.files.pdf_stack import Shrunk, stacked_height
from pdf_reading import texts_of

STYLE = ParagraphStyle("p", leading=12, spaceBefore=8, spaceAfter=6)


def test_the_larger_of_two_spaces_stands_between_two_paragraphs():
    one = [Paragraph("a", STYLE)]
    assert stacked_height(one, 100.0) == pytest.approx(12.0)
    assert stacked_height([*one, Paragraph("b", STYLE)], 100.0) == pytest.approx(32.0)
    assert stacked_height([*one, Spacer(0, 5)], 100.0) == pytest.approx(12.0 + 6.0 + 5.0)


def test_shrunk_takes_less_room_in_both_directions():
    flowables = [Paragraph("word " * 40, STYLE) for _ in range(3)]
    full = stacked_height(flowables, 400.0)
    width, height = Shrunk(flowables, 0.9).wrap(360.0, 1e6)
    assert width == 360.0
    assert height == pytest.approx(0.9 * full)


def lines(count: int) -> Sheet:
    items = tuple(f"step {k} of the work" for k in range(count))
    return Sheet("Cowl", "3F2A", (Station("Mix", ("Hot.",), (Note("n"), Steps(items))),))


def test_a_station_that_is_a_little_too_long_shrinks_and_a_longer_one_flows_on():
    pages = [len(texts_of(pdf_bytes(lines(count)))) for count in range(20, 50)]
    assert pages == sorted(pages)
    assert set(pages) == {1, 2}
    turn = pages.index(2) + 20
    for count in (turn - 1, turn):
        words = " ".join(" ".join(texts_of(pdf_bytes(lines(count)))).split())
        assert all(f"step {k} of" in words for k in range(count))
