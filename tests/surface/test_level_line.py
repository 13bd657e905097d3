"""A surface divided along a level line keeps its area and gives each side its own."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import shapes
from laywright.surface.level_line import above, divided_along

PLATE = shapes.graph(lambda x, y: 0.0 * x, (-100, 100), (-60, 60), (7, 5))


@given(st.floats(-95.0, 95.0), st.floats(-1.0, 1.0))
def test_a_straight_line_divides_a_rectangle_exactly(place, slope):
    x, y, _ = PLATE.vertices.T
    value = x - place - slope * y
    found, new, others = divided_along(PLATE, value, value[:, None])
    assert found.area == pytest.approx(PLATE.area, rel=1e-12)
    assert found.euler_characteristic == 1
    assert found.boundary_loops
    np.testing.assert_allclose(others[:, 0], new, atol=0.05)
    right = found.areas[above(found, new)].sum()
    ends = np.clip(place + slope * np.linspace(-60.0, 60.0, 20001), -100.0, 100.0)
    assert right == pytest.approx(120.0 * (100.0 - ends.mean()), abs=6.0)
    signs = np.sign(new[found.triangles])
    assert (np.ptp(signs, axis=1) < 2.0).all()  # no triangle lies on both sides


def test_nothing_is_divided_where_the_value_keeps_its_sign():
    found, value, _ = divided_along(PLATE, np.ones(len(PLATE.vertices)), np.empty((48, 0)))
    assert len(found.triangles) == len(PLATE.triangles)
    assert above(found, value).all()
