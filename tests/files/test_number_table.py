import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import FileError
from laywright.files.number_table import Column, NumberTable, read_number_table
from laywright.values import pack, unpack

ROWS = np.array([[0.0, 0.5], [0.25, 12.75], [1.5, -30.125]])


def table(text: str, code: str = "utf-8") -> NumberTable:
    return read_number_table(text.encode(code), "test.csv")


@pytest.mark.parametrize("mark", [";", "\t", " ", "  ", " ; "])
@pytest.mark.parametrize("decimal", [".", ","])
def test_marks_and_decimal_commas_are_told_apart(mark, decimal):
    text = "\n".join(mark.join(f"{cell:g}".replace(".", decimal) for cell in row) for row in ROWS)
    assert table(text).rows.tolist() == ROWS.tolist()
    assert table(f"Travel{mark}Force\n{text}\n").columns == (Column("Travel"), Column("Force"))


def test_commas_between_columns():
    made = table("Travel (mm),Force (N)\n0,0.5\n0.25,12.75\n1.5,-30.125\n")
    assert made.rows.tolist() == ROWS.tolist()
    assert made.columns == (Column("Travel", "mm"), Column("Force", "N"))


@given(
    st.lists(
        st.tuples(*[st.floats(-1e6, 1e6, allow_subnormal=False)] * 3), min_size=1, max_size=20
    ),
    st.sampled_from([(";", ","), (";", "."), ("\t", ","), ("\t", "."), (",", "."), (" ", ",")]),
    st.sampled_from(["utf-8", "utf-8-sig", "utf-16", "cp1252"]),
)
def test_what_was_written_is_read(rows, form, code):
    mark, decimal = form
    lines = [mark.join(f"{cell!r}".replace(".", decimal) for cell in row) for row in rows]
    text = "\r\n".join([mark.join(("a", "b", "c")), *lines])
    assert table(text, code).rows.tolist() == [list(row) for row in rows]


@pytest.mark.parametrize(
    ("head", "columns"),
    [
        ("Travel [mm];Force [kN]", (Column("Travel", "mm"), Column("Force", "kN"))),
        ("Travel, mm;Force, lbf", (Column("Travel", "mm"), Column("Force", "lbf"))),
        ("Travel / in;Force / N", (Column("Travel", "in"), Column("Force", "N"))),
        ("Dial gauge mm;Weight g", (Column("Dial gauge", "mm"), Column("Weight", "g"))),
        ("Travel;Force\n[mm];[N]", (Column("Travel", "mm"), Column("Force", "N"))),
        ("mm;N", (Column("column 1", "mm"), Column("column 2", "N"))),
        ("Specimen;A1\nTravel;Force", (Column("Travel"), Column("Force"))),
        ('"Travel (mm)";"Force (N)"', (Column("Travel", "mm"), Column("Force", "N"))),
        ("", (Column("column 1"), Column("column 2"))),
    ],
)
def test_headings_with_and_without_units(head, columns):
    assert table(f"{head}\n0,1;2,5\n0,2;5\n").columns == columns


def test_words_about_the_specimen_stand_before_and_after():
    before = "Tester;bench 2\nDate;25.11.2026\nWidth;15,2;mm\n\n"
    made = table(f"{before}Travel;Force\n0,1;2,5\n0,2;5\n\nEnd of test")
    assert made.rows.tolist() == [[0.1, 2.5], [0.2, 5.0]]
    assert [column.name for column in made.columns] == ["Travel", "Force"]


def test_a_heading_that_is_repeated_in_the_middle_is_passed_over():
    assert table("a;b\n1;2\n3;4\n\na;b\n5;6\n").rows.tolist() == [[1, 2], [3, 4], [5, 6]]


def test_a_clock_column_is_no_number_and_keeps_its_place():
    rows = table("time;x;y\n10:01:02;1,5;2\n10:01:03;1,75;4\n").rows
    assert np.isnan(rows[:, 0]).all()
    assert rows[:, 1:].tolist() == [[1.5, 2.0], [1.75, 4.0]]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("a;b\n1;2\n3;4\nSpecimen 2\n5;6\n7;8", "line 4: found 'Specimen 2'"),
        ("a;b\n1;2\n3;4\n5;oops\n7;8", "line 4: found '5;oops'"),
        ("Travel,Force\n0,1,2,5\n0,2,5,0\n", "decimal commas between commas"),
        ("only words", "no two columns"),
        ("1\n2\n3\n", "no two columns"),
        ("", "no two columns"),
        ("a\0b", "no text"),
    ],
)
def test_what_is_in_doubt_is_refused_in_one_sentence(text, words):
    with pytest.raises(FileError, match=words) as caught:
        table(text)
    assert str(caught.value).startswith("test.csv")
    assert "\n" not in str(caught.value)


def test_a_table_survives_storage():
    made = table("a;b\n1;2\n")
    assert pack(unpack(NumberTable, pack(made))) == pack(made)
