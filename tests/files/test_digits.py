import numpy as np
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays

from laywright.files.digits import rows_as_text

PIECES = ("", " ", "\n")


def _read(text, columns):
    return np.array([line.split() for line in text.decode().splitlines()]).reshape(-1, columns)


@given(
    arrays(
        np.int64, st.tuples(st.integers(1, 40), st.just(2)), elements=st.integers(-(10**12), 10**12)
    )
)
def test_whole_numbers_are_written_as_python_writes_them(values):
    found = _read(rows_as_text(PIECES, values), 2)
    assert found.tolist() == [[str(v) for v in row] for row in values.tolist()]


@given(
    arrays(
        np.float64,
        st.tuples(st.integers(1, 40), st.just(2)),
        elements=st.floats(-1e5, 1e5, allow_nan=False),
    )
)
def test_floats_come_back_to_half_the_last_digit(values):
    found = _read(rows_as_text(PIECES, values, 5), 2)
    assert np.abs(found.astype(float) - values).max() <= 0.5000001e-5
    assert all(len(text.split(".")[1]) == 5 for text in found.ravel())


def test_no_sign_is_left_on_zero():
    assert rows_as_text(("", ","), np.array([[-0.0], [-1e-9], [0.4]]), 1) == b"0.0,0.0,0.4,"


def test_long_arrays_are_written_in_order():
    values = np.arange(3 * 70000).reshape(-1, 3)
    found = rows_as_text(("", " ", " ", "\n"), values)
    read = np.array(found.split(), dtype=np.int64).reshape(-1, 3)
    assert np.array_equal(read, values)
