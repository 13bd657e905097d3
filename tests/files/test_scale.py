"""Colour scales: steps, shares, and lightness that falls all along."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.files.scale import Ramp, Scale, round_step, shades, stepped


def lightness(rgb):
    """CIE lightness L* of sRGB colours (IEC 61966-2-1 and CIE 15, from memory)."""
    linear = np.where(rgb <= 0.04045, rgb / 12.92, ((rgb + 0.055) / 1.055) ** 2.4)
    luminance = linear @ np.array([0.2126, 0.7152, 0.0722])
    return 116.0 * np.cbrt(luminance) - 16.0


@pytest.mark.parametrize("steps", [2, 3, 4, 5, 6])
@pytest.mark.parametrize("ramp", Ramp)
def test_steps_are_told_apart_in_grey(ramp, steps):
    scale = stepped("deg", tuple(float(limit) for limit in range(1, steps)), ramp)
    falls = -np.diff(lightness(scale.colours))
    assert falls.min() > 8.0


@given(st.sampled_from(Ramp), st.tuples(*[st.floats(0.01, 1.0)] * 3))
def test_every_eye_sees_the_same_order(ramp, weights):
    # Whatever cones an eye lacks, what it sees is a mixture of the three with weights above zero.
    seen = np.array(shades(ramp, 12)) @ np.array(weights)
    assert (np.diff(seen) < 0.0).all()


@pytest.mark.parametrize("ramp", Ramp)
def test_another_ramp_changes_nothing_but_the_colours(ramp):
    plain = stepped("deg", (5.0, 10.0, 20.0))
    painted = plain.painted(ramp)
    values, weights = np.array([1.0, 7.0, 30.0]), np.ones(3)
    assert painted.limits.tolist() == plain.limits.tolist()
    assert painted.shares(values, weights) == plain.shares(values, weights)
    assert tuple(map(tuple, painted.colours.tolist())) == shades(ramp, 4)


@given(st.lists(st.floats(-50, 50), min_size=1, max_size=40))
def test_shares_add_up_to_the_whole(values):
    shares = stepped("deg", (0.0, 10.0, 30.0)).shares(np.array(values), np.ones(len(values)))
    assert sum(shares) == pytest.approx(1.0)


@given(st.floats(1e-3, 1e3), st.integers(2, 9))
def test_a_round_step_reaches_and_the_next_smaller_one_does_not(reach, most):
    step = round_step(reach, most)
    figure = f"{step:e}"[0]
    assert figure in "125"
    assert most * step >= reach * (1.0 - 1e-6)
    smaller = step * {"1": 0.5, "2": 0.5, "5": 0.4}[figure]
    assert most * smaller < reach * (1.0 + 1e-6)


def test_a_value_on_a_limit_belongs_below_it():
    assert stepped("deg", (10.0, 20.0)).steps(np.array([10.0, 10.001, 20.0, 99.0])).tolist() == [
        0,
        1,
        1,
        2,
    ]


def test_a_scale_that_contradicts_itself_is_refused():
    with pytest.raises(ValueError, match="ascending"):
        Scale("deg", np.array([2.0, 1.0]), np.zeros((3, 3)))
