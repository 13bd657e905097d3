"""Coupons held against the laminate that was computed."""

from __future__ import annotations

import math
from dataclasses import dataclass

from laywright.errors import MaterialError
from laywright.laminate.knock_downs import KnockDowns
from laywright.laminate.laminate import Laminate
from laywright.laminate.loads import LoadCase
from laywright.laminate.strength import check_strength
from laywright.shop.coupons.bending import apparent_modulus_ratio
from laywright.shop.coupons.coupons import CouponReport
from laywright.shop.coupons.statistics import Summary

__all__ = [
    "Comparison",
    "Prediction",
    "bending_prediction",
    "compare",
    "tension_prediction",
]

_NEAR = 0.15


@dataclass(frozen=True)
class Prediction:
    """What a coupon test should find.

    Attributes
    ----------
    modulus : float, MPa
        In bending with the shear of the span in it.
    strength : float or None, MPa
        Stress at which the first ply fails, no knock-downs; None where a card states no
        strengths.
    """

    modulus: float
    strength: float | None


@dataclass(frozen=True)
class Comparison:
    """One property, predicted and measured.

    Attributes
    ----------
    what : str
    predicted : float, MPa
    measured : Summary
        MPa.
    finding : str
        In words.
    """

    what: str
    predicted: float
    measured: Summary
    finding: str

    @property
    def ratio(self) -> float:
        """Measured over predicted."""
        return self.measured.mean / self.predicted


def bending_prediction(laminate: Laminate, span: float) -> Prediction:
    """Return what three-point bending along the datum arrow should find.

    Shear through the thickness adds to the deflection, see
    `laywright.shop.coupons.bending.apparent_modulus_ratio`.

    Parameters
    ----------
    laminate : Laminate
    span : float, mm
    """
    thick = laminate.thickness
    shear = float(laminate.shear[0]) / (5.0 / 6.0 * thick)
    ratio = apparent_modulus_ratio(laminate.bending.e_x / shear, span / thick)
    load = LoadCase(moment=(1.0, 0.0, 0.0))
    return Prediction(laminate.bending.e_x * ratio, _failing(laminate, load, 6.0 / thick**2))


def tension_prediction(laminate: Laminate) -> Prediction:
    """Return what tension along the datum arrow should find."""
    load = LoadCase(force=(1.0, 0.0, 0.0))
    return Prediction(laminate.in_plane.e_x, _failing(laminate, load, 1.0 / laminate.thickness))


def _failing(laminate: Laminate, load: LoadCase, stress: float) -> float | None:
    """Return the apparent stress at which the first ply fails under a unit load, MPa."""
    try:
        factor = check_strength(laminate, load, knock_downs=KnockDowns()).first_factor
    except MaterialError:
        return None
    return factor * stress if math.isfinite(factor) else None


def compare(report: CouponReport, predicted: Prediction) -> tuple[Comparison, ...]:
    """Return modulus and strength, predicted and measured.

    Parameters
    ----------
    report : CouponReport
    predicted : Prediction
    """
    pairs = [("modulus", predicted.modulus, report.modulus)]
    if predicted.strength is not None and report.strength is not None:
        pairs.append(("strength", predicted.strength, report.strength))
    return tuple(Comparison(*pair, _finding(*pair)) for pair in pairs)


def _finding(what: str, predicted: float, measured: Summary) -> str:
    off = measured.mean / predicted - 1.0
    head = (
        f"The {what} of {measured.count} coupon{'s' if measured.count > 1 else ''} is "
        f"{measured.mean:.0f} MPa, predicted were {predicted:.0f}: "
    )
    if abs(off) <= _NEAR:
        return head + f"within {_NEAR:.0%}, as good as cards and hands allow."
    spread = measured.deviation / math.sqrt(measured.count)
    if measured.count > 1 and abs(measured.mean - predicted) < 2.0 * spread:
        return head + f"{off:+.0%}, but the coupons scatter as much; test more of them."
    side = "stiffer" if what == "modulus" else "stronger"
    if off > 0.0:
        return head + f"{off:+.0%}, {side} than the cards; check width, thickness and units first."
    return head + f"{off:+.0%}: too much resin, air, turned fibres or a thickness misread."
