"""Arrays at the door: copied, read-only, of the shape and type that was asked for."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra import numpy as shapes_of

from laywright.arrays import floats, ints, unit_vector

NUMBERS = st.floats(allow_nan=False, allow_infinity=False, width=32)
POINTS = shapes_of.arrays(
    np.float64, st.tuples(st.integers(0, 20), st.just(3)), elements=st.floats(-1e6, 1e6)
)


@given(POINTS)
def test_floats_keeps_every_number(points):
    kept = floats(points, -1, 3)
    assert kept.dtype == np.float64
    assert kept.shape == points.shape
    np.testing.assert_array_equal(kept, points)


def test_result_is_read_only_and_a_copy():
    source = np.zeros((2, 3))
    kept = floats(source, -1, 3)
    source[0, 0] = 7.0
    assert kept[0, 0] == 0.0
    with pytest.raises(ValueError, match="read-only"):
        kept[0, 0] = 1.0
    assert source.flags.writeable


def test_result_lies_row_by_row_in_memory():
    column_wise = np.asfortranarray(np.arange(6.0).reshape(2, 3))
    assert floats(column_wise, 2, 3).flags.c_contiguous


def test_ints_are_64_bits_wide():
    kept = ints(np.array([[0, 1, 2]], dtype=np.int32), -1, 3)
    assert kept.dtype == np.int64
    assert kept.tolist() == [[0, 1, 2]]


@pytest.mark.parametrize("empty", [[], (), np.zeros((0, 3)), np.zeros(0)])
def test_nothing_gets_the_shape_that_was_asked_for(empty):
    assert floats(empty, -1, 3).shape == (0, 3)
    assert ints(empty, -1).shape == (0,)


@pytest.mark.parametrize(
    ("values", "shape"),
    [
        ([1.0, 2.0], (-1, 3)),
        ([[1.0, 2.0]], (-1, 3)),
        ([[1.0, 2.0, 3.0]], (-1,)),
        ([[1.0, 2.0, 3.0]], (2, 3)),
        (1.0, (-1,)),
    ],
)
def test_another_shape_is_refused(values, shape):
    with pytest.raises(ValueError, match="an array of shape"):
        floats(values, *shape)


def test_a_single_number_is_an_array_of_no_dimension():
    assert floats(2.5).shape == ()


@given(st.tuples(NUMBERS, NUMBERS, NUMBERS).filter(lambda v: math.hypot(*v) > 1e-12))
def test_unit_vector_has_length_one_and_keeps_the_direction(vector):
    unit = unit_vector(vector)
    assert all(type(component) is float for component in unit)
    assert math.hypot(*unit) == pytest.approx(1.0, abs=1e-12)
    assert np.dot(unit, vector) == pytest.approx(math.hypot(*vector), rel=1e-12)


@pytest.mark.parametrize("vector", [(0, 0, 0), (math.nan, 0, 1), (math.inf, 0, 0), (1, 0), 1.0])
def test_no_direction_is_refused(vector):
    with pytest.raises(ValueError, match="no direction"):
        unit_vector(vector)
