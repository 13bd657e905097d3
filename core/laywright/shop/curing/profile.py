"""A temperature profile and how far a cure gets along it.

A profile is a run of corners, hours and degC, straight in between.  Times on a resin's card
hold for one temperature; along a profile they are reached when the hours, each weighted by how
much faster the cure runs at its temperature, add up to them.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.errors import InputError
from laywright.laminate.materials import Resin
from laywright.shop.kinetics import rate_ratio

__all__ = [
    "Profile",
    "TimeRule",
    "equivalent_hours",
    "room_profile",
    "speed",
    "with_post_cure",
]

_STEPS = 24  # pieces that a straight run is cut into, for each 10 degC along it


class TimeRule(Enum):
    """How the times of a resin's card are taken to another temperature."""

    TEN_DEGREES = "10 degC more halve the time"
    ARRHENIUS = "activation energy of the resin"


@dataclass(frozen=True, eq=False)
class Profile:
    """Temperature over time; after the last corner it stays.

    Attributes
    ----------
    hours : (k,) float, hours
        Of the corners, rising, from the first stir.
    temperature_c : (k,) float, degC
        At the corners.
    """

    hours: FloatArray
    temperature_c: FloatArray

    def __post_init__(self) -> None:
        object.__setattr__(self, "hours", floats(self.hours, -1))
        object.__setattr__(self, "temperature_c", floats(self.temperature_c, -1))

    def at(self, hours: FloatArray) -> FloatArray:
        """Return the temperature at these hours, degC."""
        return floats(np.interp(hours, self.hours, self.temperature_c), -1)

    def grid(self, end: float) -> FloatArray:
        """Return hours from 0 to `end`, corners included, close where temperature changes."""
        places = [0.0]
        corners = [*self.hours[(self.hours > 0.0) & (self.hours < end)].tolist(), end]
        for corner in corners:
            low, high = self.at(np.array([places[-1], corner]))
            span = corner - places[-1]
            pieces = max(_STEPS, math.ceil(2.0 * span), math.ceil(_STEPS * abs(high - low) / 10.0))
            places += np.linspace(places[-1], corner, pieces + 1)[1:].tolist()
        return floats(places, -1)

    def reached(self, hours: float, resin: Resin, rule: TimeRule) -> float:
        """Return when a time of the resin's card, in hours, is reached along the profile."""
        grid = self.grid(float(self.hours[-1])) if self.hours[-1] > 0.0 else np.zeros(1)
        done = equivalent_hours(self, grid, resin, rule)
        if hours <= done[-1]:
            return float(np.interp(hours, done, grid))
        last = float(speed(resin, self.temperature_c[-1:], rule)[0])
        return float(grid[-1] + (hours - done[-1]) / last)


def room_profile(temperature_c: float) -> Profile:
    """Return the profile of a part that stays in a shop of this temperature, degC."""
    return Profile(np.zeros(1), np.array([temperature_c]))


def with_post_cure(
    room_c: float, start: float, hold_c: float, hold_hours: float, ramp: float
) -> Profile:
    """Return a profile with a post-cure.

    Parameters
    ----------
    room_c : float, degC
        Of the shop before and after.
    start : float, hours
        When warming begins.
    hold_c, hold_hours : float, degC, hours
        Temperature of the post-cure and how long it is held.
    ramp : float, K/h
        Of warming and of cooling.

    Examples
    --------
    >>> with_post_cure(20.0, 30.0, 60.0, 8.0, 10.0).hours.tolist()
    [0.0, 30.0, 34.0, 42.0, 46.0]
    """
    rise = abs(hold_c - room_c) / ramp
    hours = np.cumsum([0.0, start, rise, hold_hours, rise])
    return Profile(hours, np.array([room_c, room_c, hold_c, hold_c, room_c]))


def speed(resin: Resin, temperature_c: FloatArray, rule: TimeRule) -> FloatArray:
    """Return how many times faster the cure runs than at the temperature of the card.

    Parameters
    ----------
    resin : Resin
    temperature_c : (n,) float, degC
    rule : TimeRule

    Raises
    ------
    InputError
        If the activation energy is wanted and the card has none.
    """
    reference = resin.cure_temperature_c
    if rule is TimeRule.TEN_DEGREES:
        return floats(2.0 ** ((temperature_c - reference) / 10.0), -1)
    if resin.activation_energy is None:
        raise InputError(
            f"times of {resin.name}",
            "no activation energy on its card",
            "one in kJ/mol",
            "add it to the card, or take the rule that 10 degC halve the time",
        )
    energy = 1000.0 * resin.activation_energy
    return floats([rate_ratio(energy, reference, t) for t in temperature_c.tolist()], -1)


def equivalent_hours(
    profile: Profile, grid: FloatArray, resin: Resin, rule: TimeRule
) -> FloatArray:
    """Return the hours at the temperature of the card that these hours are worth, (n,) float."""
    fast = speed(resin, profile.at(grid), rule)
    steps = np.diff(grid) * (fast[1:] + fast[:-1]) / 2.0
    return floats(np.concatenate([[0.0], np.cumsum(steps)]), -1)
