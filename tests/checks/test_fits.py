"""Fits and general tolerances against the ISO tables."""

from __future__ import annotations

from checks import reference
from laywright.shop.fits import (
    GeneralTolerance,
    Hole,
    Pin,
    clearance,
    general_tolerance,
    hole,
    pin,
)


def test_spl_07_holes_and_pins():
    small, large = clearance(10.0, Hole.H7, Pin.G6)
    reference.agree(
        "SPL-07",
        {
            "H7_6_upper": 1e3 * hole(6.0, Hole.H7)[1],
            "H7_10_upper": 1e3 * hole(10.0, Hole.H7)[1],
            "H7_16_upper": 1e3 * hole(16.0, Hole.H7)[1],
            "H8_10_upper": 1e3 * hole(10.0, Hole.H8)[1],
            "h6_10_lower": 1e3 * pin(10.0, Pin.H6)[0],
            "H7g6_10_min_clearance": 1e3 * small,
            "H7g6_10_max_clearance": 1e3 * large,
        },
    )


def test_spl_08_general_tolerances():
    kinds = {
        "f": GeneralTolerance.FINE,
        "m": GeneralTolerance.MEDIUM,
        "c": GeneralTolerance.COARSE,
    }
    for item in reference.row("SPL-08")["expected"]:
        found = [
            general_tolerance(length, kinds[item["name"]])
            for length in (5.0, 20.0, 100.0, 300.0, 800.0)
        ]
        assert found == item["value"]
