"""Mass and time of a print, and numbers that no printer has."""

from __future__ import annotations

import pytest

from laywright.errors import LimitError
from laywright.mould.machine import Printer


def test_mass_lies_between_the_infill_and_the_solid():
    printer = Printer("P", (200.0, 200.0, 200.0), infill_share=0.2, density=1.25)
    solid = 1.25e-3 * 1e6
    # three lines of 0.44 mm, as wide in the skin as in the flow
    assert printer.skin == pytest.approx(1.32)
    assert printer.mass(1e6, 0.0) == pytest.approx(0.2 * solid)
    assert printer.mass(1e6, 6e4) == pytest.approx(1.25e-3 * (79200 + 0.2 * 920800))
    assert printer.mass(1e6, 1e9) == pytest.approx(solid)


def test_time_grows_with_plastic_and_layers():
    printer = Printer("P", (200.0, 200.0, 200.0), speed=50.0)
    # 100 % solid: 8000 mm3 over a line of 0.44 x 0.2 mm at 50 mm/s, and 100 layers of 1.5 s
    assert printer.hours(8000.0, 1e6, 20.0) == pytest.approx((8000 / 4.4 + 150) / 3600)


@pytest.mark.parametrize(
    ("wrong", "where", "found"),
    [
        ({"border": 100.0}, "printer P", "a volume of 200 x 180 x 150 mm with a border of 100 mm"),
        ({"border": -1.0}, "printer P", "a volume of 200 x 180 x 150 mm with a border of -1 mm"),
        ({"nozzle": 0.0}, "nozzle of printer P", "0"),
        ({"layer_height": -0.2}, "layer height of printer P", "-0.2"),
        ({"walls": 0}, "walls of printer P", "0"),
        ({"speed": 1e6}, "speed of printer P", "1e+06"),
        ({"density": float("nan")}, "density of printer P", "nan"),
        ({"infill_share": 1.2}, "infill share of printer P", "120 %"),
    ],
)
def test_a_printer_that_cannot_be(wrong, where, found):
    with pytest.raises(LimitError) as caught:
        Printer("P", (200.0, 180.0, 150.0), **wrong)
    assert (caught.value.where, caught.value.found) == (where, found)
