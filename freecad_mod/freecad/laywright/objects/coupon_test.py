"""Coupon Test: how test pieces are made, what they gave, and what was predicted."""

from datetime import date
from pathlib import Path

from freecad.laywright import preferences
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from freecad.laywright.objects.kept_value import read_value, store_value
from laywright.errors import InputError
from laywright.files.number_table import read_number_table
from laywright.laminate.own_cards import keep_card
from laywright.shop.coupons.bending import ChordWindow
from laywright.shop.coupons.coupon import CouponSet, Ending
from laywright.shop.coupons.coupon_assessment import CouponLoading, CouponTest, assess_coupons
from laywright.shop.coupons.coupon_plan import CouponSettings, SpanRule
from laywright.shop.coupons.coupon_records import ReadingColumns, bend_coupon, tension_coupon
from laywright.shop.record.coupon_cards import with_fibre_modulus, with_tension_strength

__all__ = ["CouponTestObject", "add_coupon", "remove_coupon", "resize_coupon", "take_measured"]

_BY_HEADING = ReadingColumns()
_WINDOWS = {
    "strains 0.05 to 0.25 % (ISO 527)": ChordWindow.ISO_527,
    "strains 0.1 to 0.3 % (ASTM D3039)": ChordWindow.ASTM_D3039,
}


class CouponTestObject(StageObject):
    """Plan of the coupons, their records, modulus, strength and basis values."""

    stage = assess_coupons
    result_type = CouponTest
    icon = "coupon_test.svg"
    properties = (
        Property("Layup", "Link", "The Layup that the coupons are of"),
        Property(
            "Loading",
            "Enumeration",
            "How the coupons are loaded",
            [loading.value for loading in CouponLoading],
        ),
        Property("Count", "Integer", "Number of coupons that are planned", 5),
        Property(
            "Span", "Enumeration", "Distance of the supports", [rule.value for rule in SpanRule]
        ),
        Property("Chord", "Enumeration", "Between which strains the modulus is taken", [*_WINDOWS]),
        Property("Date", "String", "Date of the test, for the cards"),
        Property("Coupons", "FileIncluded", "The records of the coupons"),
    )
    reports = (
        Property("Tested", "StringList", "What each coupon gave"),
        Property("Modulus", "Pressure", "Mean modulus"),
        Property("Strength", "Pressure", "Mean strength of those that broke, 0 if none did"),
        Property("BBasis", "Pressure", "Strength that 90 % exceed, with 95 % confidence"),
        Property("ABasis", "Pressure", "Strength that 99 % exceed, with 95 % confidence"),
        Property("Plan", "StringList", "Sizes, weights and what they should do"),
        Property("Remarks", "StringList", "What to watch, and how it compares with the prediction"),
    )

    def __init__(self, obj):
        super().__init__(obj)
        if not obj.Date:
            obj.Date = date.today().isoformat()

    def ensure_properties(self, obj):
        super().ensure_properties(obj)
        obj.setEditorMode("Coupons", 2)

    def inputs(self, obj):
        return (
            fresh_result(obj.Layup, "a Layup", obj.Label),
            CouponSettings(obj.Count, SpanRule(obj.Span)),
            self.coupons(obj),
            CouponLoading(obj.Loading),
            _WINDOWS[obj.Chord],
        )

    @staticmethod
    def coupons(obj):
        """Return the records of the coupons."""
        return read_value(obj, "Coupons", CouponSet) or CouponSet()

    def show(self, obj, result):
        report, plan = result.report, result.plan
        obj.Tested = [] if report is None else [_tested(found) for found in report.results]
        strength = None if report is None else report.strength
        for name, found in (
            ("Modulus", None if report is None else report.modulus.mean),
            ("Strength", None if strength is None else strength.mean),
            ("BBasis", None if report is None else report.b_basis),
            ("ABasis", None if report is None else report.a_basis),
        ):
            setattr(obj, name, f"{found or 0.0} MPa")
        obj.Plan = [
            f"{plan.count} coupons of {plan.length:.0f} x {plan.width:.0f} mm from a plate of "
            f"{plan.plate[0]:.0f} x {plan.plate[1]:.0f} mm, {plan.thickness:.2f} mm thick",
            f"supports {plan.span:.0f} mm apart",
            f"{plan.cloth_g:.1f} g of cloth and {plan.resin_g:.1f} g of mix for the plate",
            *(f"{step.mass_g:g} g should bend it {step.deflection:.2f} mm" for step in plan.steps),
        ]
        obj.Remarks = list(result.remarks)


def _tested(found):
    ended = "broke at" if found.ending is Ending.BROKEN else "held at least"
    return f"{found.name}: modulus {found.modulus:.0f} MPa, {ended} {found.stress:.0f} MPa"


def add_coupon(
    obj,
    content,
    name,
    width,
    thickness,
    span=None,
    *,
    gauge_length=None,
    columns=_BY_HEADING,
    ending=Ending.STOPPED,
    where="the readings",
):
    """Add the record of one coupon to a Coupon Test, for the loading that the test has.

    Parameters
    ----------
    obj : DocumentObject
        Not recomputed by this.
    content : bytes
        A text table: weights and gauge, or a machine's export.
    name : str
    width, thickness : float, mm
        As measured.
    span : float, mm
        Between the supports; for bending.
    gauge_length : float or None, mm
        For tension: over which the travel was measured, None where the column holds strains.
    columns : ReadingColumns
        Where force and travel stand and in which units; empty takes the heading's.
    ending : Ending
        Only what broke has a strength.
    where : str
        Name of the file, for messages.

    Raises
    ------
    FileError, InputError
        If the table cannot be read; the coupons stay as they were.
    """
    table = read_number_table(content, where)
    if CouponLoading(obj.Loading) is CouponLoading.BENDING:
        if span is None:
            raise InputError(f"coupon {name}", "no span", "the distance of the supports", "give it")
        coupon = bend_coupon(table, name, (width, thickness, span), columns, ending)
    else:
        coupon = tension_coupon(table, name, (width, thickness), columns, gauge_length, ending)
    store_value(obj, "Coupons", obj.Proxy.coupons(obj).with_coupon(coupon))


def remove_coupon(obj, name):
    """Take the record of one coupon out of a Coupon Test."""
    store_value(obj, "Coupons", obj.Proxy.coupons(obj).without(name))


def resize_coupon(obj, name, width=None, thickness=None):
    """Correct the width or the thickness, mm, of one coupon; its readings stay."""
    store_value(obj, "Coupons", obj.Proxy.coupons(obj).resized(name, width, thickness))


def take_measured(obj, folder, what):
    """Write a card with the value that the coupons gave and return its path.

    Parameters
    ----------
    obj : DocumentObject
        A Coupon Test that is up to date.
    folder : path
        Of the person's own cards.
    what : str
        ``"modulus"`` for that of the fibre, ``"strength"`` for that of the cloth in tension.

    Raises
    ------
    InputError
        If nothing was tested, or the coupons do not tell about one material.
    """
    test = fresh_result(obj, "a Coupon Test", obj.Label)
    if test.report is None:
        raise InputError(obj.Label, "no coupon", "one or more", "add records of coupons")
    laminate = fresh_result(obj.Layup, "a Layup", obj.Label)
    materials = preferences.materials()
    if what == "modulus":
        card = with_fibre_modulus(materials, laminate, test.report, obj.Date, bent_over=test.span)
    elif test.loading is CouponLoading.TENSION:
        card = with_tension_strength(materials, laminate, test.report, obj.Date)
    else:
        raise InputError(
            obj.Label,
            "a strength in bending",
            "one in tension",
            "cards hold strengths in tension, compression and shear: pull coupons as well",
        )
    return keep_card(card, Path(folder), materials)
