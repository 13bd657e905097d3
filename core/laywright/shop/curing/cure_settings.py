"""How a part is cured: shop, post-cure, mould."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from laywright.errors import InputError
from laywright.shop.curing.profile import TimeRule

__all__ = ["MOULD_MARGIN", "CureSettings", "Support"]

MOULD_MARGIN = 10.0
"""Kelvin between the hottest that a mould may get and the softening of its plastic."""


class Support(Enum):
    """What holds the part during a post-cure."""

    MOULD = "the mould"
    CRADLE = "a cradle"


@dataclass(frozen=True)
class CureSettings:
    """How the part is cured.

    Attributes
    ----------
    temperature_c : float, degC
        Of the shop while the part stands.
    mould_softening_c : float or None, degC
        Where the mould begins to give way under load (heat deflection at 0.45 MPa, ISO 75);
        None takes that of the printer's plastic.
    post_cure_c : float or None, degC
        Temperature of a post-cure; None for none.
    post_cure_hours : float, hours
        Its length at that temperature.
    post_cure_support : Support
        What holds the part meanwhile.
    ramp : float, K/h
        Of warming and cooling; 10 is common practice.
    rule : TimeRule
        How times are taken to another temperature.
    """

    temperature_c: float = 21.0
    mould_softening_c: float | None = None
    post_cure_c: float | None = None
    post_cure_hours: float = 8.0
    post_cure_support: Support = Support.CRADLE
    ramp: float = 10.0
    rule: TimeRule = TimeRule.TEN_DEGREES

    def __post_init__(self) -> None:
        bounds = (
            ("shop temperature", self.temperature_c, 5.0, 45.0, "degC"),
            ("softening temperature of the mould", self.mould_softening_c, 35.0, 300.0, "degC"),
            ("post-cure temperature", self.post_cure_c, 30.0, 150.0, "degC"),
            ("length of the post-cure", self.post_cure_hours, 0.0, 100.0, "hours"),
            ("warming of the post-cure", self.ramp, 1.0, 120.0, "K/h"),
        )
        for where, number, low, high, unit in bounds:
            if number is not None and not (math.isfinite(number) and low <= number <= high):
                raise InputError(
                    where, f"{number:g} {unit}", f"{low:g} to {high:g} {unit}", "correct it"
                )

    @property
    def held_c(self) -> float | None:
        """Temperature of the post-cure, degC; None where there is none or it lasts no time."""
        return self.post_cure_c if self.post_cure_hours > 0.0 else None
