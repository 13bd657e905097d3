from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.shop.fits import (
    GeneralTolerance,
    Hole,
    Pin,
    clearance,
    general_tolerance,
    hole,
    pin,
)

diameters = st.floats(1.0, 30.0)


@given(diameters, st.sampled_from(Hole), st.sampled_from(Pin))
def test_these_pins_always_go_in(diameter, hole_kind, pin_kind):
    small, large = clearance(diameter, hole_kind, pin_kind)
    assert 0.0 <= small < large
    widths = sum(high - low for low, high in (hole(diameter, hole_kind), pin(diameter, pin_kind)))
    assert large - small == pytest.approx(widths, abs=1e-9)


@given(st.floats(0.5, 2000.0), st.floats(0.5, 2000.0))
def test_tolerances_grow_with_size_and_class(first, second):
    small, large = sorted((first, second))
    for kind in GeneralTolerance:
        assert general_tolerance(small, kind) <= general_tolerance(large, kind)
    fine, medium, coarse = (general_tolerance(large, kind) for kind in GeneralTolerance)
    assert fine < medium < coarse


@pytest.mark.parametrize(
    "call",
    [
        lambda: hole(40.0, Hole.H7),
        lambda: pin(0.5, Pin.G6),
        lambda: general_tolerance(5000.0, GeneralTolerance.FINE),
    ],
)
def test_sizes_outside_the_tables(call):
    with pytest.raises(InputError):
        call()
