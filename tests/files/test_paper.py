import pytest

from laywright.errors import InputError
from laywright.files.paper import Paper, paper_of


def test_papers_by_name():
    assert paper_of("A4") is Paper.A4
    assert Paper.A4.size[1] / Paper.A4.size[0] == pytest.approx(2**0.5, rel=1e-3)
    assert Paper.LETTER.size == pytest.approx((8.5 * 25.4, 11 * 25.4))
    with pytest.raises(InputError, match="'A4' or 'Letter'"):
        paper_of("napkin")
