"""The plan of a coupon test: how large, how long a span, which weights, how much to lay up.

Coupons are cut from one flat plate, laid the same day from the same cup as the part.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from laywright.errors import InputError
from laywright.laminate.laminate import Laminate
from laywright.shop.coupons.bending import STANDARD_GRAVITY, bending_stress
from laywright.shop.coupons.coupon_compare import bending_prediction
from laywright.stage import stage

__all__ = [
    "GENERAL_REMARKS",
    "CouponPlan",
    "CouponSettings",
    "LoadStep",
    "SpanRule",
    "plan_coupons",
]

GENERAL_REMARKS = (
    "Cut all coupons from one flat plate of the same layup, laid the same day from the same "
    "cup; mark the datum arrow on each and measure width and thickness at three places.",
    "Wear eye protection when you load to the end: splinters fly.",
)
"""What holds for every coupon test."""

_MOST = 100
_WIDTH = 15.0
_OVERHANG = 0.1  # of the span, beyond each support
_SAW = 2.0
_RIM = 15.0
_STRAIN = 0.003  # to which weights are hung: past the window of the chord modulus
_STEPS = 9
_ROUND_GRAMS = (1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0, 5000.0)
_GAUGE = 0.01  # mm, of a dial gauge
_LEAST_READING = 50.0  # steps of the gauge over the window


class SpanRule(Enum):
    """Span over thickness, by the standard that asks for it."""

    ASTM_D7264 = "32 times the thickness (ASTM D7264)"
    ASTM_D790 = "16 times the thickness (ASTM D790)"
    ISO_14125_CARBON = "40 times the thickness (ISO 14125, carbon)"

    @property
    def ratio(self) -> float:
        """Span over thickness."""
        return _RATIOS[self.name]


_RATIOS = {"ASTM_D7264": 32.0, "ASTM_D790": 16.0, "ISO_14125_CARBON": 40.0}


@dataclass(frozen=True)
class CouponSettings:
    """Bending coupons that are laid up beside the part.

    Attributes
    ----------
    count : int
        Zero for none; five or more for a value to rely on.
    span : SpanRule
        A longer span leaves less shear in the modulus.
    """

    count: int = 0
    span: SpanRule = SpanRule.ASTM_D7264

    def __post_init__(self) -> None:
        if not 0 <= self.count <= _MOST:
            raise InputError(
                "number of coupons", f"{self.count}", f"0 to {_MOST}", "correct the number"
            )


@dataclass(frozen=True)
class LoadStep:
    """One weight and what it should do.

    Attributes
    ----------
    mass_g : float, g
        Hung on the middle, all together.
    deflection : float, mm
        That the prediction gives.
    """

    mass_g: float
    deflection: float


@dataclass(frozen=True)
class CouponPlan:
    """How a bending test is made.

    Attributes
    ----------
    count : int
    thickness : float, mm
        As predicted; measure each coupon.
    width, length, span : float, mm
        Of a coupon, and between the supports.
    plate : tuple of 2 float, mm
        Flat plate that they are sawn from, length along the datum arrow.
    cloth_g, resin_g : float, g
        For the plate.
    steps : tuple of LoadStep
        Weights that reach past the strains between which the modulus is taken.
    modulus : float, MPa
        That the test should find, with the shear of this span in it.
    strength : float or None, MPa
        At which the first ply should fail.
    break_g : float or None, g
        Weight at which it should break.
    remarks : tuple of str
    digest : str
        Of its inputs.
    """

    count: int
    thickness: float
    width: float
    length: float
    span: float
    plate: tuple[float, float]
    cloth_g: float
    resin_g: float
    steps: tuple[LoadStep, ...]
    modulus: float
    strength: float | None
    break_g: float | None
    remarks: tuple[str, ...]
    digest: str = ""


@stage("Coupon Plan", version=2)
def plan_coupons(
    laminate: Laminate, rule: SpanRule = SpanRule.ASTM_D7264, count: int = 5
) -> CouponPlan:
    """Return how to make and load bending coupons of a laminate, along the datum arrow.

    Parameters
    ----------
    laminate : Laminate
        The layup of the part.
    rule : SpanRule
        A longer span leaves less shear in the modulus.
    count : int
        Five or more for a value to rely on.
    """
    if not 1 <= count <= _MOST:
        raise InputError("number of coupons", f"{count}", f"1 to {_MOST}", "correct the number")
    thick = laminate.thickness
    span = float(math.ceil(rule.ratio * thick))
    length = float(math.ceil(span * (1.0 + 2.0 * _OVERHANG)))
    predicted = bending_prediction(laminate, span)
    plate = (length + 2.0 * _RIM, count * (_WIDTH + _SAW) + 2.0 * _RIM)
    area = plate[0] * plate[1] * 1e-6
    stiffness = 4.0 * predicted.modulus * _WIDTH * thick**3 / span**3
    farthest = _STRAIN * span**2 / (6.0 * thick)
    breaking = (
        None
        if predicted.strength is None
        else predicted.strength / bending_stress(1.0, span, _WIDTH, thick)
    )
    return CouponPlan(
        count,
        thick,
        _WIDTH,
        length,
        span,
        plate,
        laminate.cloth_areal * area,
        laminate.resin_areal * area,
        _weights(stiffness, farthest),
        predicted.modulus,
        predicted.strength,
        None if breaking is None else breaking / STANDARD_GRAVITY * 1000.0,
        _remarks(span, thick, farthest, laminate),
    )


def _weights(stiffness: float, farthest: float) -> tuple[LoadStep, ...]:
    """Return round weights up to a deflection, as even steps."""
    most = stiffness * farthest / STANDARD_GRAVITY * 1000.0
    step = next((grams for grams in _ROUND_GRAMS if grams * _STEPS >= most), _ROUND_GRAMS[-1])
    grams = [step * k for k in range(1, math.ceil(most / step) + 1)]
    return tuple(LoadStep(g, g / 1000.0 * STANDARD_GRAVITY / stiffness) for g in grams)


def _remarks(span: float, thick: float, farthest: float, laminate: Laminate) -> tuple[str, ...]:
    remarks = list(GENERAL_REMARKS)
    if farthest / _GAUGE < _LEAST_READING:
        remarks.append(
            f"The middle moves only {farthest:.2f} mm: a dial gauge of {_GAUGE:g} mm reads that "
            "coarsely. Take a longer span or more plies."
        )
    if span < 20.0:
        remarks.append(
            f"A span of {span:.0f} mm is short for supports made by hand: lay the coupons up "
            f"with the plies twice, {2.0 * thick:.1f} mm thick."
        )
    if laminate.layup.core is not None:
        remarks.append(
            "With a core the stress at the surface is only apparent; test the skins alone as well."
        )
    return tuple(remarks)
