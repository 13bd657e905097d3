"""The datum and the direction of the warp."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright import values
from laywright.cloth.drape.datum import Datum, default_datum, start_place, warp_direction
from laywright.errors import InputError

PLATE = shapes.graph(lambda x, y: 0.0 * x, (-30, 30), (-10, 10), (6, 2))


def test_default_is_the_middle_and_the_longest_extent():
    datum = default_datum(PLATE)
    assert datum.origin == pytest.approx((0, 0, 0), abs=1e-9)
    assert datum.direction == pytest.approx((1, 0, 0), abs=1e-9)
    assert values.unpack(Datum, values.pack(datum)) == datum


def test_default_turns_with_the_shape():
    turn = 0.7
    c, s = math.cos(turn), math.sin(turn)
    turned = PLATE.moved(PLATE.vertices @ np.array([[c, s, 0], [-s, c, 0], [0, 0, 1]]))
    assert default_datum(turned).direction == pytest.approx((c, s, 0), abs=1e-9)


def test_default_lies_on_a_curved_face():
    trough = shapes.cylinder_patch(50, 2.0, 300, (30, 30))
    datum = default_datum(trough)
    assert datum.origin == pytest.approx((0, 0, 50), abs=0.5)
    assert datum.direction == pytest.approx((0, 1, 0), abs=1e-6)


@given(st.floats(-4.0, 4.0))
def test_angles_count_counter_clockwise_from_the_arrow(angle):
    """Seen from +z, where the normals of the plate point to."""
    warp = warp_direction(PLATE, Datum((0, 0, 0), (2, 0, 1)), angle)
    assert warp == pytest.approx((math.cos(angle), math.sin(angle), 0.0), abs=1e-9)


def test_angles_count_the_other_way_round_on_the_other_side():
    warp = warp_direction(PLATE.flipped(), Datum((0, 0, 0), (1, 0, 0)), math.pi / 2)
    assert warp == pytest.approx((0, -1, 0), abs=1e-9)


@given(st.floats(-1.0, 1.0), st.floats(-1.0, 1.0), st.floats(-4.0, 4.0))
@settings(max_examples=20)
def test_warp_is_a_unit_vector_along_the_surface(x, y, angle):
    cap = shapes.cap(100, 1.0, 20)
    datum = Datum((50 * x, 50 * y, 90.0), (1, 0.2, 0))
    warp = np.array(warp_direction(cap, datum, angle))
    normal = np.array(start_place(cap, datum).normal(cap))
    assert np.linalg.norm(warp) == pytest.approx(1.0)
    assert warp @ normal == pytest.approx(0.0, abs=1e-9)


@pytest.mark.parametrize("direction", [(0, 0, 1), (0, 0, 0), (math.nan, 0, 0)])
def test_an_arrow_that_runs_nowhere_is_refused(direction):
    with pytest.raises(InputError, match="datum arrow"):
        warp_direction(PLATE, Datum((0, 0, 0), direction), 0.0)
