"""The record of one test strip, bent or pulled."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import numpy as np

from laywright.arrays import FloatArray
from laywright.errors import InputError

__all__ = ["BendCoupon", "Ending", "TensionCoupon"]


class Ending(Enum):
    """How a test ended."""

    BROKEN = "the coupon broke"
    STOPPED = "stopped before it broke"


@dataclass(frozen=True, eq=False)
class BendCoupon:
    """Record of one three-point bending test.

    Attributes
    ----------
    name : str
    width, thickness, span : float, mm
    deflection : (n,) float, mm
        Of the middle, rising, from the first contact.
    force : (n,) float, N
    ending : Ending
        Only what broke has a strength.
    """

    name: str
    width: float
    thickness: float
    span: float
    deflection: FloatArray
    force: FloatArray
    ending: Ending = Ending.BROKEN

    def __post_init__(self) -> None:
        _check_size(self.name, self.width, self.thickness)
        _check_record(self.name, "deflection", self.deflection, self.force)
        if not self.span > 4.0 * self.thickness:
            raise InputError(
                f"coupon {self.name}: span",
                f"{self.span:g} mm",
                f"well above the thickness of {self.thickness:g} mm",
                "16, 32 or 40 times the thickness is usual",
            )


@dataclass(frozen=True, eq=False)
class TensionCoupon:
    """Record of one tension test.

    Attributes
    ----------
    name : str
    width, thickness : float, mm
    strain : (n,) float
        Rising.
    force : (n,) float, N
    ending : Ending
        Only what broke has a strength.
    """

    name: str
    width: float
    thickness: float
    strain: FloatArray
    force: FloatArray
    ending: Ending = Ending.BROKEN

    def __post_init__(self) -> None:
        _check_size(self.name, self.width, self.thickness)
        _check_record(self.name, "strain", self.strain, self.force)


def _check_size(name: str, width: float, thickness: float) -> None:
    for what, number, low, high in (
        ("width", width, 1.0, 200.0),
        ("thickness", thickness, 0.05, 50.0),
    ):
        if not low <= number <= high:
            raise InputError(
                f"coupon {name}: {what}",
                f"{number:g} mm",
                f"{low:g} to {high:g} mm",
                "measure it again",
            )


def _check_record(name: str, what: str, travel: FloatArray, force: FloatArray) -> None:
    travel, force = np.asarray(travel), np.asarray(force)
    sound = (
        travel.ndim == 1
        and travel.shape == force.shape
        and len(travel) >= 3
        and bool(np.isfinite(travel).all() and np.isfinite(force).all())
        and bool((np.diff(travel) > 0.0).all())
        and float(force.max()) > 0.0
    )
    if not sound:
        raise InputError(
            f"coupon {name}",
            f"a record whose {what} does not rise throughout",
            f"at least three pairs of rising {what} and force",
            "clean the record",
        )
