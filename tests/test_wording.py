"""Numbers as people write them: the value to three figures, never a power of ten."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from laywright.wording import three_figures


@given(value=st.floats(-1e9, 1e9).filter(lambda value: value == 0.0 or abs(value) > 1e-9))
def test_three_figures_are_within_half_a_unit_of_the_third(value):
    text = three_figures(value)
    assert "e" not in text
    assert abs(float(text) - value) <= 0.5000001e-2 * abs(value)
    assert len(text.replace(".", "").replace("-", "").strip("0")) <= 3
