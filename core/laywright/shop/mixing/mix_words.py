"""What a mixing plan says in words: the ratio in three ways, the steps, the warnings."""

from __future__ import annotations

import math

from laywright.laminate.materials import Resin
from laywright.shop.kinetics import adiabatic_rise, time_at
from laywright.shop.mixing.cups import COARSE, MIXING_MINUTES, Cup

__all__ = ["RULE_SPAN", "mixing_remarks", "mixing_steps", "ratio_texts"]

RULE_SPAN = 15.0
"""Degrees beyond which the rule of 10 degC is rough."""

_LARGE_CUP = 240.0


def ratio_texts(cloth_g: float, resin_g: float) -> tuple[str, str, str]:
    """Return a ratio of resin to cloth in three ways.

    Examples
    --------
    >>> for text in ratio_texts(100.0, 200.0 / 3.0):
    ...     print(text)
    40% resin and 60% cloth, by mass of the laminate
    66.7 parts of resin to 100 parts of cloth, by mass
    67 g of resin for 100 g of cloth
    """
    share = resin_g / (resin_g + cloth_g)
    return (
        f"{share:.0%} resin and {1.0 - share:.0%} cloth, by mass of the laminate",
        f"{100.0 * resin_g / cloth_g:.1f} parts of resin to 100 parts of cloth, by mass",
        f"{resin_g:.0f} g of resin for {cloth_g:.0f} g of cloth",
    )


def mixing_steps(resin: Resin) -> tuple[str, ...]:
    """Return what to do at the scale, in order."""
    return (
        "Weigh the cut cloth and compare it with the plan before any resin is poured.",
        "Set out cups, sticks, brush, roller and the plies in the order of laying.",
        "One cup at a time, when what it is for comes next: empty cup on the scale, set to zero, "
        "resin to the first reading, then hardener to the second.",
        "Stir for four minutes, scraping wall and bottom; pour into a second cup and stir for "
        "another four. Write down the time of the first stir. Spread it out early.",
        f"Never add hardener to make it faster: {resin.hardener_ratio:g} parts to 100 parts of "
        "resin, by mass, is the only right ratio. Left-overs go outdoors, spread flat, until "
        "they are hard.",
    )


def mixing_remarks(
    cups: tuple[Cup, ...],
    resin: Resin,
    step: float,
    temperature: float,
    extra: float,
    laying_minutes: float,
) -> tuple[str, ...]:
    """Return what to look out for.

    Parameters
    ----------
    cups : tuple of Cup
    resin : Resin
    step : float, g
        Smallest step of the scale.
    temperature : float, degC
        Of the shop.
    extra : float, g
        Mix that is meant for losses.
    laying_minutes : float, minutes
        From the first stir until the last ply lies.
    """
    remarks = [f"{extra:.0f} g of the mix are meant for brush, cups and drips."]
    remarks += _slow_hands(cups, resin, temperature, laying_minutes)
    worst = max(cups, key=lambda cup: cup.hardener_error)
    if worst.hardener_error > COARSE:
        remarks.append(
            f"The scale is coarse for cup {worst.number}: in steps of {step:g} g the hardener can "
            f"be off by {worst.hardener_error:.0%}. Use a finer scale, or fewer and larger cups."
        )
    remarks += _hot_cups(cups, resin, temperature)
    if abs(temperature - resin.pot_life_temperature_c) > RULE_SPAN:
        remarks.append(
            f"{temperature:g} degC is far from the {resin.pot_life_temperature_c:g} degC of the "
            "data sheet: times by the 10 degC rule are rough here."
        )
    return tuple(remarks)


def _slow_hands(
    cups: tuple[Cup, ...], resin: Resin, temperature: float, laying_minutes: float
) -> list[str]:
    remarks = []
    slow = [cup for cup in cups if cup.is_slow]
    if slow:
        first = slow[0]
        remarks.append(
            f"Hands are slower than the cup: what cup {first.number} holds takes "
            f"{first.hands_minutes:.0f} minutes with mixing, but it lasts "
            f"{first.use_by_minutes:.0f}. Take a slower hardener, a cooler shop, more hands or a "
            "finer scale for smaller cups."
        )
    gel = 60.0 * time_at(resin.gel_hours, resin.cure_temperature_c, temperature)
    if laying_minutes > gel:
        remarks.append(
            f"Hands are slower than the gel: laying takes {laying_minutes / 60.0:.1f} h, but the "
            f"first ply gels after {gel / 60.0:.1f} h. Take a slower hardener or more hands, or "
            "stop with peel ply and lay the rest another day."
        )
    life = cups[0].use_by_minutes
    if life < 2.0 * MIXING_MINUTES:
        remarks.append(
            f"Mixing alone takes {MIXING_MINUTES:.0f} minutes of the {life:.0f} that a cup lasts: "
            "take a slower hardener or a cooler shop."
        )
    return remarks


def _hot_cups(cups: tuple[Cup, ...], resin: Resin, temperature: float) -> list[str]:
    remarks = []
    heaviest = max(cups, key=lambda cup: cup.scale_after_hardener)
    if heaviest.scale_after_hardener > resin.pot_life_mass_g:
        remarks.append(
            f"Cup {heaviest.number} holds {heaviest.scale_after_hardener:g} g, but the pot life "
            f"is known for {resin.pot_life_mass_g:g} g: a fuller cup sets sooner and runs hotter. "
            "Use smaller cups or pour it into a flat tray at once."
        )
    bound = temperature + adiabatic_rise(resin.heat_of_cure, resin.heat_capacity)
    remarks.append(
        f"A full cup that loses no heat would reach {math.floor(bound)} degC: an upper bound, "
        "no forecast, but the reason never to leave one standing."
    )
    if heaviest.scale_after_hardener >= _LARGE_CUP:
        remarks.append(
            "A cup of this size can get hot enough to smoke, melt and burn. Move a hot cup "
            "outdoors; do not hold it."
        )
    return remarks
