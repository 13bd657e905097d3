from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.laminate.micromechanics import fibre_volume_fraction
from laywright.shop.record.fibre_content import by_thickness, by_weighing


@given(st.floats(0.2, 0.8), st.floats(50.0, 2000.0))
def test_weighing_and_thickness_agree_without_voids(mass_fraction, cloth_areal):
    fibre = fibre_volume_fraction(mass_fraction, 2.56, 1.15)
    thickness = cloth_areal / (1000.0 * 2.56 * fibre)
    share = by_weighing(cloth_areal, cloth_areal / mass_fraction)
    assert share == pytest.approx(mass_fraction, rel=1e-12)
    assert by_thickness(cloth_areal, 2.56, thickness) == pytest.approx(fibre, rel=1e-9)


@pytest.mark.parametrize(
    "call",
    [
        lambda: by_weighing(100.0, 80.0),
        lambda: by_weighing(0.0, 80.0),
        lambda: by_thickness(200.0, 2.56, 0.0),
    ],
)
def test_impossible_readings_are_refused(call):
    with pytest.raises(InputError):
        call()
