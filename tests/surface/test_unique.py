"""Equal rows are found, and only those."""

from __future__ import annotations

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from laywright.surface.unique import order_of, unique_rows


@given(st.lists(st.tuples(*[st.integers(-2, 2)] * 3), min_size=1, max_size=60))
def test_as_numpy_finds_them(rows):
    for kind in (np.int64, np.float64):
        array = np.array(rows, dtype=kind) + kind(0)
        first, index = unique_rows(array)
        np.testing.assert_array_equal(array[first][index], array)
        assert len(first) == len(np.unique(array, axis=0))
        assert (np.diff(first) > 0).all()


@given(st.lists(st.integers(0, 9), max_size=60))
def test_the_order_is_that_of_a_stable_sort(numbers):
    array = np.array(numbers, dtype=np.int64)
    for below in (10, 10**6):
        np.testing.assert_array_equal(order_of(array, below), np.argsort(array, kind="stable"))
