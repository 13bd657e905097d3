"""Where a piece lies."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.cloth.roll.spot import STRAIGHT, Spot, end_of

WEDGE = np.array([[0, 0], [40, 0], [0, 30]], float)


def signed_area(points):
    x, y = points.T
    return 0.5 * float((x * np.roll(y, -1) - np.roll(x, -1) * y).sum())


@given(st.floats(-500, 500), st.floats(-500, 500), st.booleans(), st.booleans())
def test_area_sense_of_rotation_and_warp_stay(x, y, turned, mirrored):
    placed = Spot(x, y, turned, mirrored).on(WEDGE)
    assert signed_area(placed) == pytest.approx(600.0)
    assert np.ptp(placed, axis=0) == pytest.approx([40.0, 30.0])


def test_mirrored_first_then_turned_then_shifted():
    assert Spot(10.0, 5.0, True, True).on(np.array([[1.0, 2.0]])).tolist() == [[9.0, 7.0]]
    assert [spot.turned for spot in STRAIGHT] == [False, True]


def test_the_end_is_that_of_the_last_piece():
    assert end_of([WEDGE, WEDGE], [Spot(5.0, 0.0), Spot(100.0, 0.0, True)]) == 100.0
    assert end_of([], []) == 0.0
