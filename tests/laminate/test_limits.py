from __future__ import annotations

import pytest

from laywright.errors import LimitError
from laywright.laminate.lamina import Strengths
from laywright.laminate.limits import limits_of
from laywright.laminate.materials import Cloth, Fibre, Resin


@pytest.mark.parametrize("kind", [Fibre, Resin, Cloth, Strengths])
def test_bounds_are_narrower_than_a_slip_of_a_thousand(kind):
    """A plausible positive value a thousand times too large or small is never plausible."""
    for name, limits in limits_of(kind).items():
        if limits.unit in ("MPa", "g/cm^3", "g/m^2", "mm", "minute", "hour", "g"):
            assert limits.low * 1000.0 >= limits.high * 0.1, name


def test_message_names_material_field_and_unit():
    with pytest.raises(LimitError) as caught:
        Strengths(220.0, 160.0, 220.0, 0.0, 45.0)
    assert caught.value.where == "strengths: compression_2"
    assert (caught.value.found, caught.value.needed) == ("0 MPa", "1 to 9000 MPa")
