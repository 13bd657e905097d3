"""The records of test strips, bent or pulled."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from typing import TypeVar

import numpy as np

from laywright.arrays import FloatArray
from laywright.errors import InputError

__all__ = ["BendCoupon", "CouponSet", "Ending", "TensionCoupon"]


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


_Record = TypeVar("_Record", BendCoupon, TensionCoupon)


@dataclass(frozen=True, eq=False)
class CouponSet:
    """All records of a coupon test; a name stands for one coupon.

    Attributes
    ----------
    bent : tuple of BendCoupon
    pulled : tuple of TensionCoupon
    """

    bent: tuple[BendCoupon, ...] = ()
    pulled: tuple[TensionCoupon, ...] = ()

    @property
    def names(self) -> tuple[str, ...]:
        """Names of all coupons."""
        return (
            *(coupon.name for coupon in self.bent),
            *(coupon.name for coupon in self.pulled),
        )

    def with_coupon(self, coupon: BendCoupon | TensionCoupon) -> CouponSet:
        """Return the set with one more record.

        Raises
        ------
        InputError
            If the name is empty or taken.
        """
        if not coupon.name.strip():
            raise InputError("coupon", "no name", "a name such as A1", "give it a name")
        if coupon.name in self.names:
            raise InputError(
                f"coupon {coupon.name}",
                "a name that is taken",
                "a name of its own",
                "take the other record out first, or choose another name",
            )
        if isinstance(coupon, BendCoupon):
            return CouponSet((*self.bent, coupon), self.pulled)
        return CouponSet(self.bent, (*self.pulled, coupon))

    def without(self, name: str) -> CouponSet:
        """Return the set without the record of that name."""
        return CouponSet(
            tuple(coupon for coupon in self.bent if coupon.name != name),
            tuple(coupon for coupon in self.pulled if coupon.name != name),
        )

    def resized(
        self, name: str, width: float | None = None, thickness: float | None = None
    ) -> CouponSet:
        """Return the set with another width or thickness, mm, of the record of that name.

        Raises
        ------
        InputError
            If there is no such record, or the size is none of a coupon.
        """
        if name not in self.names:
            raise InputError("coupon", f"no {name}", "the name of a record", "choose one")

        def corrected(coupon: _Record) -> _Record:
            if coupon.name != name:
                return coupon
            return replace(
                coupon,
                width=coupon.width if width is None else width,
                thickness=coupon.thickness if thickness is None else thickness,
            )

        return CouponSet(
            tuple(corrected(coupon) for coupon in self.bent),
            tuple(corrected(coupon) for coupon in self.pulled),
        )


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
