import pytest
from hypothesis import given
from hypothesis import strategies as st
from reportlab.pdfbase.pdfmetrics import stringWidth

from laywright.files.table_widths import column_widths

ROWS = st.integers(1, 6).flatmap(
    lambda n: st.lists(
        st.lists(st.text("abc ", max_size=30), min_size=n, max_size=n), min_size=1, max_size=5
    )
)


@given(ROWS, st.floats(100.0, 600.0))
def test_widths_fill_the_table(rows, width):
    widths = column_widths(rows, width, "Helvetica", 10.0)
    assert sum(widths) == pytest.approx(width)
    assert min(widths) > 0.0


def test_a_monster_of_a_word_leaves_the_others_their_room():
    widths = column_widths([["Ply", "x" * 4000], ["1", ""]], 300.0, "Helvetica", 10.0)
    assert widths[0] > stringWidth("Ply", "Helvetica", 10.0)
    assert sum(widths) == pytest.approx(300.0)


def test_a_column_to_be_filled_in_has_room_to_write():
    widths = column_widths([["At", "What", "By"], ["1", "word " * 40, ""]], 400.0, "Helvetica", 10)
    assert widths[2] > 50.0


def test_no_word_is_broken_while_there_is_room():
    rows = [["Ply", "Scale after hardener, g"], ["1", "Thermalexpansioncoefficient of it all"]]
    widths = column_widths(rows, 300.0, "Helvetica", 10.0)
    assert widths[1] > stringWidth("Thermalexpansioncoefficient", "Helvetica", 10.0)
    assert widths[0] > stringWidth("Ply", "Helvetica", 10.0)
