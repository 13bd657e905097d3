from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.shop.coupons.bending import (
    ChordWindow,
    apparent_modulus_ratio,
    bending_strain,
    bending_strain_large,
    bending_stress,
    bending_stress_iso_14125,
    chord_modulus,
)

lengths = st.floats(20.0, 200.0)


@given(lengths, st.floats(5.0, 30.0), st.floats(0.5, 5.0), st.floats(1.0, 500.0))
def test_modulus_is_stress_over_strain(span, width, thickness, slope):
    """A beam of modulus E on two supports gives way as F L^3 / (48 E I)."""
    stress = bending_stress(slope, span, width, thickness)
    strain = bending_strain(1.0, span, thickness)
    inertia = width * thickness**3 / 12.0
    assert stress / strain == pytest.approx(slope * span**3 / (48.0 * inertia), rel=1e-12)


@given(lengths, st.floats(0.5, 5.0))
def test_corrections_vanish_with_the_deflection(span, thickness):
    size, small = (span, 10.0, thickness), 1e-6 * span
    plain = bending_stress(10.0, *size)
    assert bending_stress_iso_14125(10.0, *size, small) == pytest.approx(plain, rel=1e-5)
    assert bending_strain_large(small, span, thickness) == pytest.approx(
        bending_strain(small, span, thickness), rel=1e-5
    )


@given(st.floats(10e3, 200e3), st.sampled_from(ChordWindow))
def test_chord_of_a_straight_line_is_its_slope(modulus, window):
    strain = np.linspace(0.0, 0.004, 23)
    assert chord_modulus(strain, modulus * strain + 3.0, window) == pytest.approx(modulus, rel=1e-9)


@given(st.floats(2.0, 60.0))
def test_shear_matters_less_at_longer_spans(ratio):
    found = [apparent_modulus_ratio(ratio, span) for span in (10.0, 20.0, 40.0, 80.0)]
    assert found == sorted(found)
    assert found[-1] < 1.0


@pytest.mark.parametrize(
    "strain", [[0.0, 0.001, 0.002], [0.001, 0.002, 0.003], [0.0, 0.002, 0.001, 0.004], [0.001]]
)
def test_records_that_do_not_reach_over_the_window(strain):
    with pytest.raises(InputError, match="test record"):
        chord_modulus(strain, [1.0] * len(strain), ChordWindow.ISO_527)
