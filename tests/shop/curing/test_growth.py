from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.shop.curing.growth import shrinkage_scale, thermal_growth


@given(st.floats(1.0, 1000.0), st.floats(-0.04, 0.04))
def test_a_scaled_print_shrinks_to_size(length, shrinkage):
    printed = length * shrinkage_scale(shrinkage)
    assert printed * (1.0 - shrinkage) == pytest.approx(length, rel=1e-12)


@given(st.floats(1.0, 1000.0), st.floats(0.0, 1e-4), st.floats(-50.0, 50.0))
def test_growth_there_and_back(length, expansion, change):
    there = thermal_growth(length, expansion, change)
    assert there == -thermal_growth(length, expansion, -change)


def test_a_percentage_given_as_a_number_is_refused():
    with pytest.raises(InputError, match="print shrinkage"):
        shrinkage_scale(0.3)
