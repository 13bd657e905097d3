import pytest

from laywright.errors import InputError
from laywright.files.paper import Paper, paper_of


def test_papers_by_name():
    assert paper_of("A4") is Paper.A4
    assert Paper.A4.size[1] / Paper.A4.size[0] == pytest.approx(2**0.5, rel=1e-3)
    assert Paper.LETTER.size == pytest.approx((8.5 * 25.4, 11 * 25.4))
    with pytest.raises(InputError, match="'A4', 'Letter' or 'A3'"):
        paper_of("napkin")


def test_two_a4_make_an_a3_and_sheets_to_be_read_stay_on_a4():
    assert Paper.A3.size == (Paper.A4.size[1], 2.0 * Paper.A4.size[0])
    assert [paper.sheets for paper in (Paper.A4, Paper.LETTER, Paper.A3)] == [
        Paper.A4,
        Paper.LETTER,
        Paper.A4,
    ]
