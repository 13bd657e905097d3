"""Degree of cure and glass transition along a temperature profile.

The degree of cure a follows d a/dt = k(T) (1 - a)^n.  Because the temperature only stretches
time, the closed form for constant temperature holds with weighted hours; k comes from the gel
time on the resin's card.  A resin that has become a glass hardly cures on: its glass
transition does not rise past a limit that depends on the temperature.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.laminate.materials import Resin
from laywright.shop.curing.profile import Profile, TimeRule, equivalent_hours
from laywright.shop.kinetics import glass_transition, nth_order_cure

__all__ = ["CureCourse", "cure_along", "cure_at", "glass_transition_limit"]

_POST_CURE_GAIN = 15.0  # K that a full cure softens above its post-cure; common practice, no source
# DiBenedetto's ratio of the segment mobilities when cured and when fresh (Pascault and Williams
# 1990, the form used here); the value for epoxies is from memory and our own choice.
_SHAPE = 0.4


@dataclass(frozen=True, eq=False)
class CureCourse:
    """How far the cure gets along a profile.

    Attributes
    ----------
    hours : (n,) float, hours
        From the first stir, rising.
    temperature_c : (n,) float, degC
        Of shop or oven.
    cure : (n,) float
        Degree of cure, 0 fresh to 1 full.
    glass_transition_c : (n,) float, degC
        Where the resin softens at that degree of cure.
    """

    hours: FloatArray
    temperature_c: FloatArray
    cure: FloatArray
    glass_transition_c: FloatArray

    def at(self, hours: float) -> tuple[float, float]:
        """Return degree of cure and glass transition (degC) at a time."""
        return (
            float(np.interp(hours, self.hours, self.cure)),
            float(np.interp(hours, self.hours, self.glass_transition_c)),
        )

    def least_margin(self, start: float) -> tuple[float, float]:
        """Return by how much the resin is least short of softening after `start`, K, and when."""
        later = np.flatnonzero(self.hours >= start)
        margin = (self.glass_transition_c - self.temperature_c)[later]
        worst = int(np.argmin(margin))
        return float(margin[worst]), float(self.hours[later[worst]])


def glass_transition_limit(resin: Resin, temperature: float) -> float:
    """Return how high the glass transition gets by curing at one temperature, degC.

    A straight line through the two values on the card: at the temperature of the card's cure,
    and at 15 degC below the fullest post-cure (common practice, no source).

    Examples
    --------
    >>> from laywright.laminate.materials import load_materials
    >>> resin = load_materials().resin("Laminating epoxy, slow hardener")
    >>> [round(glass_transition_limit(resin, t), 1) for t in (21.0, 50.0, 90.0)]
    [55.0, 72.8, 85.0]
    """
    full = resin.glass_transition_full_c
    low = resin.cure_temperature_c
    high = max(full - _POST_CURE_GAIN, low + 1.0)
    slope = (full - resin.glass_transition_c) / (high - low)
    line = resin.glass_transition_c + slope * (temperature - low)
    return min(max(line, resin.glass_transition_fresh_c), full)


def cure_at(resin: Resin, glass: float) -> float:
    """Return the degree of cure at which the resin softens at `glass` degC (DiBenedetto)."""
    fresh = resin.glass_transition_fresh_c
    share = (glass - fresh) / (resin.glass_transition_full_c - fresh)
    return share / (_SHAPE + (1.0 - _SHAPE) * share)


def cure_along(resin: Resin, profile: Profile, end: float, rule: TimeRule) -> CureCourse:
    """Return the degree of cure and the glass transition along a profile.

    Parameters
    ----------
    resin : Resin
        With an activation energy on its card.
    profile : Profile
    end : float, hours
    rule : TimeRule
    """
    order = resin.reaction_order
    rate = _weighted_time(resin.gel_conversion, 1.0, order) / resin.gel_hours
    hours = profile.grid(end)
    temperature = profile.at(hours)
    worth = np.diff(equivalent_hours(profile, hours, resin, rule)).tolist()
    reached, time = [0.0], 0.0
    for step, warmth in zip(worth, temperature[1:].tolist(), strict=True):
        time += step
        free = nth_order_cure(rate, time, order)
        bound = cure_at(resin, glass_transition_limit(resin, warmth))
        if free > bound:
            free = max(bound, reached[-1])
            time = _weighted_time(free, rate, order)
        reached.append(free)
    cure = np.array(reached)
    glass = [
        glass_transition(a, resin.glass_transition_fresh_c, resin.glass_transition_full_c, _SHAPE)
        for a in reached
    ]
    return CureCourse(hours, temperature, floats(cure, -1), floats(glass, -1))


def _weighted_time(cure: float, rate: float, order: float) -> float:
    """Return the time after which `nth_order_cure` gives this degree of cure."""
    left = max(1.0 - cure, 1e-12)
    if order == 1.0:
        return float(-np.log(left) / rate)
    return float((left ** (1.0 - order) - 1.0) / ((order - 1.0) * rate))
