import csv
import io

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.files.csv import csv_bytes


def _read(content):
    return list(csv.reader(io.StringIO(content.decode("utf-8-sig"), newline="")))


@given(st.lists(st.floats(allow_nan=False, allow_infinity=False), min_size=1))
def test_floats_come_back_exactly(values):
    rows = _read(csv_bytes(["x, mm"], [[v] for v in values]))[1:]
    assert [float(row[0]) for row in rows] == values


@given(st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=30))
def test_texts_come_back_and_never_as_formulas(text):
    (row,) = _read(csv_bytes(["name", "n"], [[text, 1]]))[1:]
    assert row == [f"'{text}" if text[:1] in tuple("=+-@\t\r") else text, "1"]
    assert row[0][:1] not in tuple("=+-@")


def test_other_cells():
    rows = _read(csv_bytes(["a", "b", "c", "d"], [[None, True, np.int64(3), np.float64(-2.5)]]))
    assert rows[1] == ["", "yes", "3", "-2.5"]


def test_heads_keep_their_units_in_a_spreadsheet():
    assert csv_bytes(["area, m²"], []).startswith(b"\xef\xbb\xbf")


def test_a_short_row_is_named():
    with pytest.raises(InputError, match="row 2"):
        csv_bytes(["a", "b"], [[1, 2], [3]])
