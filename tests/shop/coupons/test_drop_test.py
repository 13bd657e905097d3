from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.shop.coupons.drop_test import STANDARD_GRAVITY, drop_height, impact_speed


@given(st.floats(1.0, 200.0), st.floats(0.1, 20.0))
def test_speed_is_that_of_free_fall_from_the_height(energy, mass):
    speed = impact_speed(energy, mass)
    height = drop_height(energy, mass)
    assert speed**2 == pytest.approx(2.0 * STANDARD_GRAVITY * height, rel=1e-12)
