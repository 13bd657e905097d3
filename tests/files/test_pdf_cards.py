import numpy as np

from laywright.files.drawing import Drawing, Line
from laywright.files.page import Card, Cards, Note, Sheet, Station
from laywright.files.pdf import pdf_bytes
from pdf_reading import lines_of, pages_of, texts_of

SQUARE = Drawing("ply", (Line("cut", np.array([[0, 0], [500, 0], [500, 300], [0, 300]]), True),))


def sheet(count: int) -> Sheet:
    cards = tuple(
        Card(f"Ply {k}", ("glass <twill> & co", "Laid at, by:", ""), SQUARE if k % 2 else None)
        for k in range(1, count + 1)
    )
    return Sheet("Cowl", "3F2A", (Station("Lay up", (), (Note("n"), Cards("Order", cards))),))


def test_every_card_has_its_lines_as_text():
    words = " ".join(" ".join(texts_of(pdf_bytes(sheet(5)))).split())
    assert words.count("glass <twill> & co") == 5
    assert [f"Ply {k}" in words for k in range(1, 6)] == [True] * 5


def test_many_cards_go_on_to_the_next_page_whole():
    pages = texts_of(pdf_bytes(sheet(41)))
    assert len(pages) > 1
    for page in pages:
        titles = sum(f"Ply {k}" in page.split("\n") for k in range(1, 42))
        assert page.count("Laid at, by:") == titles


def test_every_card_has_a_box_of_five_millimetres_and_pictures_stay_inside_the_page():
    (page,) = pages_of(pdf_bytes(sheet(3)))
    boxes = [
        [float(v) for v in operands[2:]]
        for operands, operator in page.get_contents().operations
        if operator == b"re"
    ]
    side = 5.0 * 72 / 25.4
    assert sum(np.allclose(box, side, atol=0.01) for box in boxes) == 3
    lines = lines_of(page)
    assert lines[:, :, 0].min() >= 12.0 - 0.1
    assert lines[:, :, 0].max() <= 198.0 + 0.1
