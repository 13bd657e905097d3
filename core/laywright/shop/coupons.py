"""Coupon tests: strength and modulus from the records of flat test strips.

Coupons are cut from a flat plate of the same layup, the same cup and the same day as the part.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray
from laywright.errors import InputError
from laywright.shop.bending import (
    ChordWindow,
    bending_strain,
    bending_strain_large,
    bending_stress,
    bending_stress_iso_14125,
    chord_modulus,
)
from laywright.shop.statistics import (
    B_BASIS,
    Summary,
    basis_value,
    outliers,
    summarise,
)
from laywright.stage import stage

__all__ = [
    "BendCoupon",
    "CouponReport",
    "CouponResult",
    "TensionCoupon",
    "evaluate_bending",
    "evaluate_tension",
]

_LARGE = 0.1
_LONG_SPAN = 30.0
_FEW = 5
_SCATTER = 0.10


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
    """

    name: str
    width: float
    thickness: float
    span: float
    deflection: FloatArray
    force: FloatArray

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
    """

    name: str
    width: float
    thickness: float
    strain: FloatArray
    force: FloatArray

    def __post_init__(self) -> None:
        _check_size(self.name, self.width, self.thickness)
        _check_record(self.name, "strain", self.strain, self.force)


@dataclass(frozen=True)
class CouponResult:
    """What one coupon gave.

    Attributes
    ----------
    name : str
    strength : float, MPa
        Stress at the largest force.
    strain : float
        Strain at the largest force.
    modulus : float, MPa
        Chord modulus.
    """

    name: str
    strength: float
    strain: float
    modulus: float


@dataclass(frozen=True)
class CouponReport:
    """What a set of coupons gave.

    Attributes
    ----------
    results : tuple of CouponResult
    strength, modulus : Summary
        MPa.
    b_basis : float or None, MPa
        Strength that 90 % of coupons like these exceed, with 95 % confidence; None for fewer
        than five coupons.
    remarks : tuple of str
    digest : str
        Of its inputs.
    """

    results: tuple[CouponResult, ...]
    strength: Summary
    modulus: Summary
    b_basis: float | None
    remarks: tuple[str, ...]
    digest: str = ""


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


@stage("Coupon Test in bending", version=1)
def evaluate_bending(
    coupons: tuple[BendCoupon, ...], window: ChordWindow = ChordWindow.ISO_527
) -> CouponReport:
    """Return strength and modulus of coupons bent over three points.

    Stress and strain by ISO 14125, corrected for large deflection beyond a tenth of the span.

    Parameters
    ----------
    coupons : tuple of BendCoupon
    window : ChordWindow
        Strains for the chord modulus.
    """
    results = []
    remarks = []
    for coupon in coupons:
        size = (coupon.span, coupon.width, coupon.thickness)
        peak = int(np.argmax(coupon.force))
        travel, force = float(coupon.deflection[peak]), float(coupon.force[peak])
        large = travel > _LARGE * coupon.span
        strength = (
            bending_stress_iso_14125(force, *size, travel)
            if large
            else bending_stress(force, *size)
        )
        strain = (bending_strain_large if large else bending_strain)(
            travel, coupon.span, coupon.thickness
        )
        strains = coupon.deflection * bending_strain(1.0, coupon.span, coupon.thickness)
        stresses = coupon.force * bending_stress(1.0, *size)
        results.append(
            CouponResult(coupon.name, strength, strain, chord_modulus(strains, stresses, window))
        )
        if coupon.span < _LONG_SPAN * coupon.thickness:
            remarks.append(
                f"Coupon {coupon.name}: a span of {coupon.span / coupon.thickness:.0f} times the "
                "thickness lets shear lower the modulus; 32 times or more is better."
            )
    return _report(results, remarks)


@stage("Coupon Test in tension", version=1)
def evaluate_tension(
    coupons: tuple[TensionCoupon, ...], window: ChordWindow = ChordWindow.ISO_527
) -> CouponReport:
    """Return strength and modulus of coupons pulled along their length.

    Parameters
    ----------
    coupons : tuple of TensionCoupon
    window : ChordWindow
        Strains for the chord modulus.
    """
    results = []
    for coupon in coupons:
        stress = coupon.force / (coupon.width * coupon.thickness)
        peak = int(np.argmax(stress))
        modulus = chord_modulus(coupon.strain, stress, window)
        results.append(
            CouponResult(coupon.name, float(stress[peak]), float(coupon.strain[peak]), modulus)
        )
    return _report(results, [])


def _report(results: list[CouponResult], remarks: list[str]) -> CouponReport:
    if not results:
        raise InputError("coupon test", "no coupon", "at least one", "add a record")
    strengths = [result.strength for result in results]
    strength = summarise(strengths)
    modulus = summarise([result.modulus for result in results])
    for place in outliers(strengths):
        remarks.append(
            f"Coupon {results[place].name} lies far from the others: look for a cause at the "
            "bench before leaving it out."
        )
    if strength.count < _FEW:
        remarks.append(
            f"{strength.count} coupons are too few for a value to rely on; test at least {_FEW}."
        )
    elif strength.variation > _SCATTER:
        remarks.append(
            f"The strengths scatter by {strength.variation:.0%}: the layups differ, or the "
            "cutting and the supports do."
        )
    basis = basis_value(strength, B_BASIS) if strength.count >= _FEW else None
    return CouponReport(tuple(results), strength, modulus, basis, tuple(remarks))
