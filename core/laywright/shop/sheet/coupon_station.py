"""The page of the test pieces that are laid up beside the part."""

from __future__ import annotations

from laywright.files.page import Station, Steps, Table
from laywright.shop.coupons.coupon_plan import GENERAL_REMARKS, CouponPlan
from laywright.shop.sheet import cautions
from laywright.shop.sheet.station_parts import BY_HAND, remarks_of

__all__ = ["coupon_station"]

_SIDE_BY_SIDE = 5


def coupon_station(plan: CouponPlan) -> Station:
    """Return the page on which coupons are planned, measured and loaded."""
    facts = (
        ("Coupons", f"{plan.count}, each {plan.length:.0f} x {plan.width:.0f} mm"),
        ("Supports apart", f"{plan.span:.0f} mm"),
        ("Flat plate, length along the arrow", f"{plan.plate[0]:.0f} x {plan.plate[1]:.0f} mm"),
        ("Cloth and mix for the plate", f"{plan.cloth_g:.1f} g and {plan.resin_g:.1f} g"),
        ("Modulus that should be found", f"{plan.modulus / 1000.0:.1f} GPa"),
        (
            "First ply should fail at",
            "no strengths on the cards"
            if plan.strength is None or plan.break_g is None
            else f"{plan.strength:.0f} MPa, {plan.break_g / 1000.0:.1f} kg hung on",
        ),
    )
    special = tuple(remark for remark in plan.remarks if remark not in GENERAL_REMARKS)
    return Station(
        "Coupons",
        cautions.COUPONS,
        (
            Table("Test pieces of this layup", ("What", "Value"), facts),
            *remarks_of(special),
            Steps(
                (
                    "Lay the plate on a flat board ply by ply beside the part, each ply from the "
                    "cup of that ply; weigh its cloth and the cured plate.",
                    "Saw the coupons when fully cured, along the datum arrow, and number them.",
                    "Set the gauge to zero under the middle, hang on one weight after the other "
                    "and read it each time.",
                )
            ),
            *(
                _readings(plan, range(first, min(first + _SIDE_BY_SIDE, plan.count + 1)))
                for first in range(1, plan.count + 1, _SIDE_BY_SIDE)
            ),
        ),
    )


def _readings(plan: CouponPlan, numbers: range) -> Table:
    """Return the table to fill in for a few coupons side by side."""
    blanks = (BY_HAND,) * len(numbers)
    return Table(
        "Size, and deflection of the middle",
        ("What", "Planned", *(f"No. {number}" for number in numbers)),
        (
            ("Width, mm", f"{plan.width:.0f} mm", *blanks),
            ("Thickness, mm", f"{plan.thickness:.2f} mm", *blanks),
            *(
                (f"With {step.mass_g:g} g, mm", f"{step.deflection:.2f} mm", *blanks)
                for step in plan.steps
            ),
            ("Broke at, kg", "-", *blanks),
        ),
    )
