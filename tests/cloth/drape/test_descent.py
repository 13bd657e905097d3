"""Descent with a memory."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.cloth.drape.descent import descend


def bowl(scale):
    goal = np.arange(1.0, 1.0 + len(scale))

    def value_and_slope(x):
        return float(0.5 * scale @ (x - goal) ** 2), scale * (x - goal)

    return value_and_slope, goal


@given(st.lists(st.floats(1.0, 1e4), min_size=2, max_size=6))
@settings(max_examples=30)
def test_reaches_the_bottom_of_a_bowl_whatever_its_shape(scale):
    scale = np.array(scale)
    value_and_slope, goal = bowl(scale)
    found = descend(
        value_and_slope, lambda g: g / scale.max(), np.zeros(len(goal)), 0.0, 60, lambda _: None
    )
    assert found.place == pytest.approx(goal, abs=1e-4)


def test_the_right_curvature_takes_one_step_and_two_to_see_it():
    scale = np.array([1.0, 100.0, 1e4])
    value_and_slope, goal = bowl(scale)
    found = descend(value_and_slope, lambda g: g / scale, np.zeros(3), 1e-9, 50, lambda _: None)
    assert found.place == pytest.approx(goal)
    assert found.steps <= 4


def test_a_bent_valley_is_followed():
    """H. Rosenbrock, An automatic method for finding the greatest or least value, 1960."""

    def value_and_slope(x):
        a, b = 1.0 - x[0], x[1] - x[0] ** 2
        return a * a + 100 * b * b, np.array([-2 * a - 400 * x[0] * b, 200 * b])

    found = descend(
        value_and_slope, lambda g: g / 400, np.array([-1.2, 1.0]), 1e-10, 500, lambda _: None
    )
    assert found.at_rest
    assert found.place == pytest.approx([1.0, 1.0], abs=1e-6)


def test_never_goes_where_the_value_is_infinite_and_never_up():
    seen = []

    def value_and_slope(x):
        if x[0] <= 0.0:
            return np.inf, np.zeros(1)
        value = float(x[0] - np.log(x[0]))
        seen.append(value)
        return value, 1.0 - 1.0 / x

    found = descend(value_and_slope, lambda g: 50 * g, np.array([3.0]), 1e-9, 100, lambda _: None)
    assert found.place == pytest.approx([1.0], abs=1e-6)


def test_says_when_it_did_not_arrive():
    value_and_slope, _ = bowl(np.array([1.0, 1e4]))
    told = []
    found = descend(value_and_slope, lambda g: g / 1e4, np.zeros(2), 1e-12, 3, told.append)
    assert not found.at_rest
    assert len(told) == found.steps == 3
