"""Arithmetic of a drop test; no protection level is computed anywhere."""

from __future__ import annotations

from checks import reference
from laywright.shop.drop_test import drop_height, impact_speed


def test_saf_01_drop():
    """The limits of the two levels are left out on purpose: no level is computed or claimed."""
    reference.agree(
        "SAF-01",
        {"drop_height": drop_height(50.0, 5.0), "impact_speed": impact_speed(50.0, 5.0)},
        without=("level_1", "level_2"),
    )
