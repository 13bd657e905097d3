"""The coupon test as a whole: its plan, what the coupons gave, both held against each other."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from laywright.laminate.laminate import Laminate
from laywright.shop.coupons.bending import ChordWindow
from laywright.shop.coupons.coupon import CouponSet
from laywright.shop.coupons.coupon_compare import (
    Comparison,
    bending_prediction,
    compare,
    tension_prediction,
)
from laywright.shop.coupons.coupon_plan import CouponPlan, CouponSettings, plan_coupons
from laywright.shop.coupons.coupons import CouponReport, evaluate_bending, evaluate_tension
from laywright.stage import stage

__all__ = ["CouponLoading", "CouponTest", "assess_coupons"]


class CouponLoading(Enum):
    """How the coupons are loaded."""

    BENDING = "bent over three points"
    TENSION = "pulled along their length"


@dataclass(frozen=True, eq=False)
class CouponTest:
    """Plan, results and comparison.

    Attributes
    ----------
    loading : CouponLoading
    plan : CouponPlan
        For bending; a strip for tension is cut from the same plate.
    report : CouponReport or None
        None while nothing was tested.
    comparisons : tuple of Comparison
        Modulus and strength, predicted and measured.
    span : float or None, mm
        Mean span of the bending tests.
    digest : str
        Of its inputs.
    """

    loading: CouponLoading
    plan: CouponPlan
    report: CouponReport | None
    comparisons: tuple[Comparison, ...]
    span: float | None
    digest: str = ""

    @property
    def remarks(self) -> tuple[str, ...]:
        """What to watch: of the plan before the test, of the results after it."""
        if self.report is None:
            return self.plan.remarks
        return (*(c.finding for c in self.comparisons), *self.report.remarks)


@stage("Coupon Test", version=1)
def assess_coupons(
    laminate: Laminate,
    settings: CouponSettings,
    coupons: CouponSet,
    loading: CouponLoading = CouponLoading.BENDING,
    window: ChordWindow = ChordWindow.ISO_527,
) -> CouponTest:
    """Return how coupons of a laminate are made and what they gave.

    Parameters
    ----------
    laminate : Laminate
        Of the part, along the datum arrow.
    settings : CouponSettings
    coupons : CouponSet
        Empty before the test.
    loading : CouponLoading
        Which of the coupons count.
    window : ChordWindow
        Strains for the chord modulus.

    Raises
    ------
    InputError
        If a record cannot be evaluated; the message names it.
    """
    bent, pulled = coupons.bent, coupons.pulled
    plan = plan_coupons(laminate, settings.span, max(settings.count, 1))
    if not (bent if loading is CouponLoading.BENDING else pulled):
        return CouponTest(loading, plan, None, (), None)
    if loading is CouponLoading.TENSION:
        report = evaluate_tension(pulled, window)
        predicted = tension_prediction(laminate)
        return CouponTest(loading, plan, report, compare(report, predicted), None)
    report = evaluate_bending(bent, window)
    span = sum(coupon.span for coupon in bent) / len(bent)
    predicted = bending_prediction(laminate, span)
    return CouponTest(loading, plan, report, compare(report, predicted), span)
