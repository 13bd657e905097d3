"""Coupon tests: strength and modulus from the records of flat test strips.

Coupons are cut from a flat plate of the same layup, the same cup and the same day as the part.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray
from laywright.errors import InputError
from laywright.shop.coupons.bending import (
    ChordWindow,
    bending_strain,
    bending_strain_large,
    bending_stress,
    bending_stress_iso_14125,
    chord_modulus,
)
from laywright.shop.coupons.coupon import BendCoupon, Ending, TensionCoupon
from laywright.shop.coupons.statistics import (
    A_BASIS,
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
    "Ending",
    "TensionCoupon",
    "evaluate_bending",
    "evaluate_tension",
]

_LARGE = 0.1
_LONG_SPAN = 30.0
_FEW = 5
_SCATTER = 0.10


@dataclass(frozen=True)
class CouponResult:
    """What one coupon gave.

    Attributes
    ----------
    name : str
    stress : float, MPa
        At the largest force: the strength, if it broke.
    strain : float
        Strain at the largest force.
    modulus : float, MPa
        Chord modulus.
    ending : Ending
    """

    name: str
    stress: float
    strain: float
    modulus: float
    ending: Ending

    @property
    def strength(self) -> float | None:
        """Stress at which it broke, MPa."""
        return self.stress if self.ending is Ending.BROKEN else None


@dataclass(frozen=True)
class CouponReport:
    """What a set of coupons gave.

    Attributes
    ----------
    results : tuple of CouponResult
    modulus : Summary
        MPa.
    strength : Summary or None
        MPa, of those that broke; None if none did.
    b_basis, a_basis : float or None, MPa
        Strength that 90 % (99 %) of coupons like these exceed, with 95 % confidence, if they
        scatter normally; None for fewer than five that broke.  No allowable: nothing is
        proved by it.
    remarks : tuple of str
    digest : str
        Of its inputs.
    """

    results: tuple[CouponResult, ...]
    modulus: Summary
    strength: Summary | None
    b_basis: float | None
    a_basis: float | None
    remarks: tuple[str, ...]
    digest: str = ""


@stage("Coupon Test in bending", version=2)
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
            CouponResult(
                coupon.name,
                strength,
                strain,
                _modulus(coupon.name, strains, stresses, window),
                coupon.ending,
            )
        )
        if coupon.span < _LONG_SPAN * coupon.thickness:
            remarks.append(
                f"Coupon {coupon.name}: a span of {coupon.span / coupon.thickness:.0f} times the "
                "thickness lets shear lower the modulus; 32 times or more is better."
            )
    return _report(results, remarks)


@stage("Coupon Test in tension", version=2)
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
        modulus = _modulus(coupon.name, coupon.strain, stress, window)
        results.append(
            CouponResult(
                coupon.name,
                float(stress[peak]),
                float(coupon.strain[peak]),
                modulus,
                coupon.ending,
            )
        )
    return _report(results, [])


def _modulus(name: str, strain: FloatArray, stress: FloatArray, window: ChordWindow) -> float:
    try:
        return chord_modulus(strain, stress, window)
    except InputError as problem:
        raise InputError(
            f"coupon {name}", problem.found, problem.needed, problem.remedy
        ) from problem


def _report(results: list[CouponResult], remarks: list[str]) -> CouponReport:
    if not results:
        raise InputError("coupon test", "no coupon", "at least one", "add a record")
    moduli = [result.modulus for result in results]
    broken = [result for result in results if result.ending is Ending.BROKEN]
    strengths = [result.stress for result in broken]
    strength = summarise(strengths) if strengths else None
    remarks += _outliers("strength", broken, strengths)
    remarks += _outliers("modulus", results, moduli)
    if strength is None:
        remarks.append("No coupon broke: the stresses reached are no strengths, only lower bounds.")
    elif strength.count < _FEW:
        remarks.append(
            f"{strength.count} coupons are too few for a value to rely on; test at least {_FEW}."
        )
    elif strength.variation > _SCATTER:
        remarks.append(
            f"The strengths scatter by {strength.variation:.0%}: the layups differ, or the "
            "cutting and the supports do."
        )
    enough = strength is not None and strength.count >= _FEW
    return CouponReport(
        tuple(results),
        summarise(moduli),
        strength,
        basis_value(strength, B_BASIS) if enough and strength is not None else None,
        basis_value(strength, A_BASIS) if enough and strength is not None else None,
        tuple(remarks),
    )


def _outliers(what: str, results: Sequence[CouponResult], numbers: Sequence[float]) -> list[str]:
    return [
        f"Coupon {results[place].name} lies far from the others in {what}: look for a cause at "
        "the bench before leaving it out."
        for place in outliers(numbers)
    ]
