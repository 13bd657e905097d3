from __future__ import annotations

import pytest

from laywright.shop.record.hardness import HardnessScale, hardness_remarks


@pytest.mark.parametrize("scale", list(HardnessScale))
def test_the_usual_range_decides_where_the_maker_says_nothing(scale):
    low, high = scale.usual
    assert low < high
    assert hardness_remarks([low], scale, None) == ()
    (said,) = hardness_remarks([low - 5.0], scale, None)
    assert f"below the usual {low:.0f} to {high:.0f}" in said


def test_the_value_of_the_maker_goes_first():
    """A soft but fully cured resin is no matter."""
    assert hardness_remarks([60.0, 62.0], HardnessScale.SHORE_D, 62.0) == ()
    (said,) = hardness_remarks([70.0], HardnessScale.SHORE_D, 85.0)
    assert "82% of the 85" in said
    assert "perhaps not cured through" in said
    (said,) = hardness_remarks([60.0], HardnessScale.SHORE_D, 85.0)
    assert ": not cured through" in said


def test_nothing_measured_says_nothing():
    assert hardness_remarks([], HardnessScale.BARCOL, 50.0) == ()
