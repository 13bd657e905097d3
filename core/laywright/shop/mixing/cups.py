"""Cups of mix: what each one wets, what the scale shows, how long it lasts.

A cup is filled for a run of steps (coats and plies, in the order of laying).  Three things
bound it: the mass that may stand in one cup, what two hands lay down before it gels, and the
scale, whose steps must be fine against the hardener.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from dataclasses import dataclass

from laywright.errors import InputError
from laywright.laminate.materials import Resin

__all__ = [
    "COARSE",
    "MIXING_MINUTES",
    "Cup",
    "Need",
    "fill_cups",
    "hardener_error",
    "pot_life",
]

MIXING_MINUTES = 8.0
"""Four minutes of stirring in each of two cups; common practice, no source."""

COARSE = 0.05
"""Error of the hardener from which a cup is remarked on; common practice, no source."""

_REFUSED = 0.10
_MOST_PARTS = 4


@dataclass(frozen=True)
class Need:
    """Mix that one step of the work takes.

    Attributes
    ----------
    use : str
        For example ``"ply 3"`` or ``"seal coat"``.
    ply : int or None
        The ply that it wets, None for a coat.
    mass_g : float, g
        Of resin and hardener together.
    minutes : float, minutes
        That it takes to lay it down.
    """

    use: str
    ply: int | None
    mass_g: float
    minutes: float = 0.0


@dataclass(frozen=True)
class Cup:
    """One cup of mix.

    Attributes
    ----------
    number : int
        In the order of use, from 1.
    uses : tuple of str
        What it is for, in the order of laying.
    plies : tuple of int
        The plies that it wets.
    resin_g, hardener_g : float, g
        What goes in.
    scale_after_resin, scale_after_hardener : float, g
        What the scale shows, set to zero with the empty cup on it.
    use_by_minutes : float, minutes
        From the first stir until the cup must be empty.
    hands_minutes : float, minutes
        That it takes to mix it and to lay it down.
    stir_at_minutes : float, minutes
        When its stirring begins, counted from the first stir of the job.
    hardener_error : float
        Largest error of the hardener that the scale allows, as a share of what is right.
    """

    number: int
    uses: tuple[str, ...]
    plies: tuple[int, ...]
    resin_g: float
    hardener_g: float
    scale_after_resin: float
    scale_after_hardener: float
    use_by_minutes: float
    hands_minutes: float
    stir_at_minutes: float
    hardener_error: float

    @property
    def is_slow(self) -> bool:
        """Whether two hands need longer than the cup lasts."""
        return self.hands_minutes > self.use_by_minutes


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
    needs: Sequence[Need],
    resin: Resin,
    limit: float,
    step: float,
    temperature: float,
    start: float = 0.0,
) -> tuple[Cup, ...]:
    """Return the cups for what is laid one after the other.

    As few cups as the order of laying allows, and among those the most even ones; a need that
    is too much for a cup, by mass or by the time that it takes, is shared out evenly.  Where a
    cup would be too small for the scale, needs are shared between neighbouring cups so that
    all are large enough; what is too small even then is refused.  A cup holds at least what it
    is for.

    Parameters
    ----------
    needs : sequence of Need
        In the order of laying.
    resin : Resin
    limit : float, g
        Most mix in one cup.
    step : float, g
        Smallest step of the scale.
    temperature : float, degC
        Of shop, resin and hardener.
    start : float, minutes
        When the first of them is stirred, counted from the first stir of the job.

    Raises
    ------
    InputError
        If a cup gels before it is mixed, or the scale is too coarse for any way of sharing.
    """
    life = pot_life(resin, temperature)
    if life <= MIXING_MINUTES:
        raise InputError(
            f"pot life of {resin.name}",
            f"{life:.0f} minutes at {temperature:g} degC",
            f"more than the {MIXING_MINUTES:.0f} minutes that mixing takes",
            "take a slower hardener or a cooler shop",
        )
    choices = (
        _filled(needs, resin, limit, step, life, parts, usable, start)
        for parts in range(1, _MOST_PARTS + 1)
        for usable in (life - MIXING_MINUTES, math.inf)
    )
    best = min(choices, key=_faults)
    worst = max(best, key=lambda cup: cup.hardener_error)
    if worst.hardener_error > _REFUSED:
        enough = step / _REFUSED * (1.0 + 100.0 / resin.hardener_ratio)
        raise InputError(
            f"scale for the cup of {' and '.join(worst.uses)}",
            f"steps of {step:g} g for {worst.hardener_g:g} g of hardener, off by up to "
            f"{worst.hardener_error:.0%}",
            f"an error of {_REFUSED:.0%} at most",
            f"weigh with a finer scale, or mix {math.ceil(enough)} g or more in each cup",
        )
    return best


def _faults(cups: tuple[Cup, ...]) -> tuple[bool, int, bool]:
    """Return what speaks against these cups, the gravest first."""
    error = max(cup.hardener_error for cup in cups)
    return error > _REFUSED, sum(cup.is_slow for cup in cups), error > COARSE


def _filled(
    needs: Sequence[Need],
    resin: Resin,
    limit: float,
    step: float,
    life: float,
    parts: int,
    usable: float,
    start: float,
) -> tuple[Cup, ...]:
    """Return cups for needs whose shares are cut into so many parts each."""
    ratio = resin.hardener_ratio / 100.0
    largest = limit - step * (2.5 + 2.0 * ratio)
    portions = [
        Need(need.use, need.ply, need.mass_g / count, need.minutes / count)
        for need in needs
        for count in (
            parts * max(1, math.ceil(need.mass_g / largest), math.ceil(need.minutes / usable)),
        )
        for _ in range(count)
    ]
    cups: list[Cup] = []
    for first, last in _split(portions, largest, usable):
        inside = portions[first:last]
        mass = math.fsum(portion.mass_g for portion in inside)
        resin_steps = math.ceil(mass / (1.0 + ratio) / step - 1e-9)
        hardener_steps = max(1, round(resin_steps * ratio))
        if (resin_steps + hardener_steps) * step < mass - 1e-9:
            resin_steps += 1
            hardener_steps = max(1, round(resin_steps * ratio))
        resin_g, hardener_g = _grams(resin_steps, step), _grams(hardener_steps, step)
        hands = MIXING_MINUTES + math.fsum(portion.minutes for portion in inside)
        cups.append(
            Cup(
                number=len(cups) + 1,
                uses=tuple(dict.fromkeys(portion.use for portion in inside)),
                plies=tuple(dict.fromkeys(p.ply for p in inside if p.ply is not None)),
                resin_g=resin_g,
                hardener_g=hardener_g,
                scale_after_resin=resin_g,
                scale_after_hardener=_grams(resin_steps + hardener_steps, step),
                use_by_minutes=life,
                hands_minutes=hands,
                stir_at_minutes=start + math.fsum(cup.hands_minutes for cup in cups),
                hardener_error=hardener_error(hardener_g, resin_g * ratio, step),
            )
        )
    return tuple(cups)


def _grams(steps: int, step: float) -> float:
    return round(steps * step, 9)


def _split(portions: Sequence[Need], largest: float, usable: float) -> list[tuple[int, int]]:
    """Fewest cups in the order of laying, and among those the smallest largest cup."""
    best: list[tuple[float, int]] = [(0.0, 0)]
    count = [0]
    for last in range(1, len(portions) + 1):
        options = []
        for first in range(last - 1, -1, -1):
            inside = portions[first:last]
            mass = math.fsum(portion.mass_g for portion in inside)
            minutes = math.fsum(portion.minutes for portion in inside)
            if first < last - 1 and (mass > largest or minutes > usable * (1.0 + 1e-9)):
                break
            options.append((count[first] + 1, max(best[first][0], mass), first))
        cups, heaviest, first = min(options)
        count.append(cups)
        best.append((heaviest, first))
    borders = [len(portions)]
    while borders[-1] > 0:
        borders.append(best[borders[-1]][1])
    borders.reverse()
    return list(itertools.pairwise(borders))
