"""Cups of mix: which plies each one wets, what the scale shows, how long it lasts."""

from __future__ import annotations

import itertools
import math
from dataclasses import dataclass

from laywright.laminate.materials import Resin

__all__ = ["Cup", "fill_cups", "hardener_error", "pot_life"]


@dataclass(frozen=True)
class Cup:
    """One cup of mix.

    Attributes
    ----------
    number : int
        In the order of use, from 1.
    plies : tuple of int
        The plies that it wets.
    resin_g, hardener_g : float, g
        What goes in.
    scale_after_resin, scale_after_hardener : float, g
        What the scale shows, set to zero with the empty cup on it.
    use_by_minutes : float, minutes
        From the first stir until the cup must be empty.
    hardener_error : float
        Largest error of the hardener that the scale allows, as a share of what is right.
    """

    number: int
    plies: tuple[int, ...]
    resin_g: float
    hardener_g: float
    scale_after_resin: float
    scale_after_hardener: float
    use_by_minutes: float
    hardener_error: float


def pot_life(resin: Resin, temperature: float) -> float:
    """Return the time in the cup at `temperature` (degC), minutes.

    It halves for each 10 degC more (common rule of resin suppliers) and holds for the mass
    that the resin's card states; a larger mass has less time, by how much only a data sheet
    can say.

    Examples
    --------
    >>> from laywright.laminate.materials import load_materials
    >>> resin = load_materials().resin("Laminating epoxy, slow hardener")
    >>> pot_life(resin, 33.0)
    30.0
    """
    return float(
        resin.pot_life_minutes * 2.0 ** ((resin.pot_life_temperature_c - temperature) / 10.0)
    )


def hardener_error(hardener_g: float, wanted_g: float, resolution_g: float) -> float:
    """Return the largest error of a weighed amount of hardener, as a share of what is right.

    Half a step of the scale, and the difference between the reading aimed at and the right
    amount.
    """
    return (abs(hardener_g - wanted_g) + resolution_g / 2.0) / wanted_g


def fill_cups(
    needs: dict[int, float], resin: Resin, limit: float, step: float, temperature: float
) -> tuple[Cup, ...]:
    """Return the cups for plies that need so much mix each.

    As few cups as the order of laying allows, and among those the most even ones; a ply that
    needs more than a cup is shared out evenly.  A cup holds at least what its plies need.

    Parameters
    ----------
    needs : dict of int to float, g
        Mix by ply, in the order of laying.
    resin : Resin
    limit : float, g
        Most mix in one cup.
    step : float, g
        Smallest step of the scale.
    temperature : float, degC
        Of shop, resin and hardener.
    """
    ratio = resin.hardener_ratio / 100.0
    largest = limit - step * (2.5 + 2.0 * ratio)
    portions = [
        (number, mass / parts)
        for number, mass in needs.items()
        for parts in (math.ceil(mass / largest),)
        for _ in range(parts)
    ]
    cups: list[Cup] = []
    for first, last in _split([mass for _, mass in portions], largest):
        mass = math.fsum(mass for _, mass in portions[first:last])
        resin_steps = math.ceil(mass / (1.0 + ratio) / step - 1e-9)
        hardener_steps = max(1, round(resin_steps * ratio))
        if (resin_steps + hardener_steps) * step < mass - 1e-9:
            resin_steps += 1
            hardener_steps = max(1, round(resin_steps * ratio))
        resin_g, hardener_g = _grams(resin_steps, step), _grams(hardener_steps, step)
        cups.append(
            Cup(
                number=len(cups) + 1,
                plies=tuple(dict.fromkeys(number for number, _ in portions[first:last])),
                resin_g=resin_g,
                hardener_g=hardener_g,
                scale_after_resin=resin_g,
                scale_after_hardener=_grams(resin_steps + hardener_steps, step),
                use_by_minutes=pot_life(resin, temperature),
                hardener_error=hardener_error(hardener_g, resin_g * ratio, step),
            )
        )
    return tuple(cups)


def _grams(steps: int, step: float) -> float:
    return round(steps * step, 9)


def _split(masses: list[float], largest: float) -> list[tuple[int, int]]:
    """Fewest cups in the order of laying, and among those the smallest largest cup."""
    best: list[tuple[float, int]] = [(0.0, 0)]
    count = [0]
    for last in range(1, len(masses) + 1):
        options = []
        for first in range(last - 1, -1, -1):
            mass = math.fsum(masses[first:last])
            if mass > largest and first < last - 1:
                break
            options.append((count[first] + 1, max(best[first][0], mass), first))
        cups, heaviest, first = min(options)
        count.append(cups)
        best.append((heaviest, first))
    borders = [len(masses)]
    while borders[-1] > 0:
        borders.append(best[borders[-1]][1])
    borders.reverse()
    return list(itertools.pairwise(borders))
