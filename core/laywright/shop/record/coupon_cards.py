"""A measured value goes onto the card of its material, with the number of coupons behind it.

A laminate of one cloth tells about that cloth: its strength is the cloth's own, and its
modulus is what the fibre must have for the computed laminate to come out as measured.
"""

from __future__ import annotations

import dataclasses
import math

from scipy.optimize import brentq

from laywright.errors import InputError, MaterialError
from laywright.laminate.card_files import Card, corrected
from laywright.laminate.laminate import Laminate, analyse
from laywright.laminate.materials import Materials
from laywright.shop.coupons.coupon_compare import bending_prediction
from laywright.shop.coupons.coupons import CouponReport
from laywright.shop.coupons.statistics import Summary

__all__ = ["fibre_modulus", "with_fibre_modulus", "with_tension_strength"]

_AXIS = 1e-3


def with_tension_strength(
    materials: Materials, laminate: Laminate, report: CouponReport, date: str
) -> Card:
    """Return the card of the cloth with the tension strength that was measured along its warp.

    Parameters
    ----------
    materials : Materials
        Where the card is.
    laminate : Laminate
        Of the coupons: one cloth, every ply along the datum arrow.
    report : CouponReport
        Of a tension test.
    date : str
        Of the test, for the source.

    Raises
    ------
    InputError
        If the laminate is not of one cloth along the arrow, or nothing broke.
    MaterialError
        If the cloth is on no card.
    """
    cloth = _one_cloth(laminate)
    if any(abs(math.sin(ply.angle)) > _AXIS for ply in laminate.layup.main.plies):
        raise InputError(
            "coupon test",
            "plies at several angles",
            "every ply along the datum arrow",
            "test a laminate of the one cloth at 0 degrees",
        )
    if report.strength is None:
        raise InputError("coupon test", "no coupon that broke", "one or more", "load to the end")
    card = _card(materials, cloth)
    source = _source(report.strength, "tension", date)
    fraction = laminate.fibre_volume_fraction
    card = corrected(card, "strengths.tension_1", report.strength.mean, "MPa", source)
    return corrected(card, "strength_fibre_fraction", 100.0 * fraction, "percent", source)


def fibre_modulus(laminate: Laminate, measured: float, *, bent_over: float | None = None) -> float:
    """Return the axial fibre modulus for which the laminate comes out as measured, MPa.

    Parameters
    ----------
    laminate : Laminate
        Of one fibre.
    measured : float, MPa
        Along the datum arrow.
    bent_over : float or None, mm
        Span of a bending test; None for tension.

    Raises
    ------
    InputError
        If there are several fibres, or no plausible modulus gives what was measured.
    """
    fibres = {ply.cloth.fibre.name: ply.cloth.fibre for ply in laminate.layup.main.plies}
    if len(fibres) != 1:
        raise InputError(
            "coupon test", f"fibres {' and '.join(fibres)}", "one fibre", "test them one by one"
        )
    (fibre,) = fibres.values()

    def found(modulus: float) -> float:
        changed = dataclasses.replace(fibre, axial_modulus=modulus)
        plies = tuple(
            dataclasses.replace(ply, cloth=dataclasses.replace(ply.cloth, fibre=changed))
            for ply in laminate.layup.main.plies
        )
        other = analyse(dataclasses.replace(laminate.layup.main, plies=plies))
        if bent_over is None:
            return other.in_plane.e_x - measured
        return bending_prediction(other, bent_over).modulus - measured

    low, high = 0.2 * fibre.axial_modulus, 3.0 * fibre.axial_modulus
    if not found(low) < 0.0 < found(high):
        raise InputError(
            "coupon test",
            f"a modulus of {measured:.0f} MPa",
            f"one that a fibre of {low / 1e3:.0f} to {high / 1e3:.0f} GPa can give",
            "check width, thickness, span and units",
        )
    return float(brentq(found, low, high, rtol=1e-6))


def with_fibre_modulus(
    materials: Materials,
    laminate: Laminate,
    report: CouponReport,
    date: str,
    *,
    bent_over: float | None = None,
) -> Card:
    """Return the card of the fibre with the modulus that follows from coupons."""
    fibre = laminate.layup.main.plies[0].cloth.fibre.name
    value = fibre_modulus(laminate, report.modulus.mean, bent_over=bent_over)
    test = "tension" if bent_over is None else f"bending over {bent_over:g} mm"
    source = _source(report.modulus, f"{test} of a laminate, from its modulus", date)
    return corrected(_card(materials, fibre), "axial_modulus", value, "MPa", source)


def _one_cloth(laminate: Laminate) -> str:
    names = {ply.cloth.name for ply in laminate.layup.main.plies}
    if len(names) != 1 or laminate.layup.core is not None:
        what = " and ".join(sorted(names)) + (" with a core" if laminate.layup.core else "")
        raise InputError("coupon test", what, "one cloth and no core", "test it by itself")
    return names.pop()


def _card(materials: Materials, name: str) -> Card:
    card = materials.cards.get(name)
    if card is None:
        raise MaterialError(name, "no card", "a card of that name", "write one first")
    return card


def _source(found: Summary, test: str, date: str) -> str:
    return (
        f"own {test}, {found.count} coupon{'s' if found.count > 1 else ''}, standard deviation "
        f"{found.deviation:.3g} MPa, {date or 'no date'}"
    )
