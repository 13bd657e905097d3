"""Colour scales: steps, shares, and lightness that falls all along."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.files.scale import Ramp, Scale, shades, stepped


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
    assert [text for _, text in painted.rows(values, weights)] == [
        text for _, text in plain.rows(values, weights)
    ]
    assert tuple(colour for colour, _ in painted.rows(values, weights)) == shades(ramp, 4)


@given(st.lists(st.floats(-50, 50), min_size=1, max_size=40))
def test_shares_add_up_to_the_whole(values):
    rows = stepped("deg", (0.0, 10.0, 30.0)).rows(np.array(values), np.ones(len(values)))
    shares = [float(text.rsplit(":", 1)[1].rstrip(" %")) for _, text in rows]
    assert sum(shares) == pytest.approx(100.0, abs=0.21)


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
