"""Mass, time and cost follow the printed formula."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import LimitError
from laywright.mould.body.plastic import PlasticSettings, estimate_plastic


@given(st.floats(1.0, 1e8), st.floats(1.0, 1e7), st.floats(0.0, 1.0))
def test_between_infill_and_solid(volume, area, infill):
    found = estimate_plastic(volume, area, PlasticSettings(infill=infill))
    assert infill * volume * (1 - 1e-12) <= found.printed <= volume * (1 + 1e-12)
    assert found.mass_g == pytest.approx(1.27e-3 * found.printed)
    assert found.hours == pytest.approx(found.printed / 8.0 / 3600.0)
    assert found.cost == pytest.approx(0.025 * found.mass_g)


def test_all_solid_is_the_volume():
    assert estimate_plastic(500.0, 600.0, PlasticSettings(infill=0.0)).printed == 500.0
    assert estimate_plastic(1e6, 600.0, PlasticSettings(infill=1.0)).printed == 1e6


def test_out_of_reason_is_refused():
    for wrong in ({"infill": 1.1}, {"skin": 0.0}, {"rate": 0.0}, {"price": float("nan")}):
        with pytest.raises(LimitError):
            PlasticSettings(**wrong)
