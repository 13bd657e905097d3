from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from laminate.stacks import CARBON, TAPE, layup
from laywright.laminate.directions import bent_moduli, pulled_moduli
from laywright.laminate.laminate import analyse


@settings(max_examples=20)
@given(st.lists(st.floats(-90.0, 90.0), min_size=1, max_size=4), st.floats(-180.0, 180.0))
def test_a_direction_is_the_axis_of_the_laminate_that_is_turned_back(degrees, direction):
    made = analyse(layup(TAPE, *degrees))
    turned = analyse(layup(TAPE, *(angle - direction for angle in degrees)))
    at = math.radians(direction)
    assert pulled_moduli(made, [at])[0] == pytest.approx(turned.in_plane.e_x, rel=1e-9)
    assert bent_moduli(made, [at])[0] == pytest.approx(turned.bending.e_x, rel=1e-9)


def test_tape_is_stiffest_along_its_fibres():
    directions = np.radians(np.arange(0.0, 180.0, 5.0))
    found = pulled_moduli(analyse(layup(TAPE, 30)), directions)
    assert math.degrees(directions[found.argmax()]) == pytest.approx(30.0)


def test_a_quasi_isotropic_stack_is_the_same_all_round_when_pulled():
    made = analyse(layup(TAPE, 0, 60, -60, -60, 60, 0))
    found = pulled_moduli(made, np.linspace(0.0, math.pi, 20))
    assert np.ptp(found) < 1e-9 * found.max()
    assert np.ptp(bent_moduli(made, np.linspace(0.0, math.pi, 20))) > 0.1 * found.max()


def test_balanced_cloth_has_four_equal_ends():
    made = analyse(layup(CARBON, 0, 0))
    along, across = pulled_moduli(made, [0.0, math.pi / 2.0])
    assert along == pytest.approx(across, rel=1e-9)
