"""Choosing a layup: every symmetric and balanced one is tried, and the best are ranked."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

import numpy as np

from laywright.arrays import FloatArray, IntArray, floats
from laywright.errors import InputError
from laywright.laminate.candidates import Candidates, Choices, candidates
from laywright.stage import stage

__all__ = ["RULES_OF_THUMB", "Aim", "Candidate", "Ranking", "Wish", "rank_layups"]

RULES_OF_THUMB = (
    "Three to six plies of cloth are laid against light knocks, six to ten against hard ones: "
    "common practice, no source.",
    "No number of plies certifies a protection. A part that protects a person needs tests by an "
    "accredited laboratory; no protection level is computed or claimed here.",
)
_FRONT = 400
_SAME = 1e-9


class Aim(Enum):
    """What the layups are ranked by."""

    MASS = "least mass"
    THICKNESS = "least thickness"
    COST = "least cost"
    BENDING = "most bending stiffness"


@dataclass(frozen=True)
class Wish:
    """What a layup must reach, and what it is ranked by; zero or None asks for nothing.

    Attributes
    ----------
    aim : Aim
    bending_along, bending_across : float, N mm
        Least bending stiffness of a strip, per width.
    pull_along, pull_across : float, N/mm
        Least stiffness when pulled, per width.
    mass, thickness, cost : float or None, g/m^2, mm, the maker's currency per m^2
        The most that is allowed.
    """

    aim: Aim = Aim.MASS
    bending_along: float = 0.0
    bending_across: float = 0.0
    pull_along: float = 0.0
    pull_across: float = 0.0
    mass: float | None = None
    thickness: float | None = None
    cost: float | None = None

    def __post_init__(self) -> None:
        for name, value in vars(self).items():
            if isinstance(value, float) and not (math.isfinite(value) and value >= 0.0):
                raise InputError(
                    f"wish: {name}", f"{value:g}", "zero or more", "correct the number"
                )


@dataclass(frozen=True)
class Candidate:
    """A layup that fulfils the wish.

    Attributes
    ----------
    cloths : tuple of str
        Cloth of each ply, the one at the mould first.
    angles : tuple of float, radians
    thickness, areal_mass, cost : float, mm, g/m^2, the maker's currency per m^2
    bending_along, bending_across : float, N mm
    pull_along, pull_across : float, N/mm
    """

    cloths: tuple[str, ...]
    angles: tuple[float, ...]
    thickness: float
    areal_mass: float
    cost: float
    bending_along: float
    bending_across: float
    pull_along: float
    pull_across: float


@dataclass(frozen=True, eq=False)
class Ranking:
    """The best layups, and what is to be had at all.

    Attributes
    ----------
    best : tuple of Candidate
        The best first.
    tried, fitting : int
        Number of symmetric and balanced layups, and of those that fulfil the wish.
    cloud : (n, 2) float
        Mass (g/m^2) and the weaker bending stiffness (N mm) of layups that were tried; some of
        them, where there are many.
    front : (m, 2) float
        The same of those than which none is both lighter and stiffer, the lightest first.
    notes : tuple of str
        Rules of thumb, marked as such, with the caution.
    digest : str
        Of its inputs.
    """

    best: tuple[Candidate, ...]
    tried: int
    fitting: int
    cloud: FloatArray
    front: FloatArray
    notes: tuple[str, ...]
    digest: str = ""


@stage("Layup Choice", version=2)
def rank_layups(choices: Choices, wish: Wish, count: int = 10) -> Ranking:
    """Return the best layups of the allowed cloths and angles.

    Of layups that have the same cloths and the same figures, such as those in which a balanced
    weave is turned by a right angle, the first stands for all.

    Parameters
    ----------
    choices : Choices
        Cloths, angles, resin and the most plies.
    wish : Wish
    count : int
        How many of the best are given.

    Raises
    ------
    InputError
        If no layup fulfils the wish, or there are too many to be tried.
    """
    found = candidates(choices)
    weaker = np.minimum(found.bending[:, 0], found.bending[:, 1])
    fits = (
        (found.bending >= [wish.bending_along, wish.bending_across]).all(axis=1)
        & (found.pull >= [wish.pull_along, wish.pull_across]).all(axis=1)
        & _below(found.mass, wish.mass)
        & _below(found.thickness, wish.thickness)
        & _below(found.cost, wish.cost)
    )
    if wish.aim is Aim.COST and not found.cost.any():
        raise InputError("cost", "no prices", "a price for each cloth and the resin", "give them")
    if not fits.any():
        raise InputError(
            "wish for a layup",
            f"none of {len(weaker)} layups that fulfils it; they weigh {found.mass.min():.0f} to "
            f"{found.mass.max():.0f} g/m^2 and reach {weaker.max():.3g} N mm in bending",
            "at least one",
            "ask for less, or allow more plies, other cloths or a core",
        )
    key = {
        Aim.MASS: found.mass,
        Aim.THICKNESS: found.thickness,
        Aim.COST: found.cost,
        Aim.BENDING: -weaker,
    }[wish.aim]
    # Among equals the stiffer one comes first, then the one with fewer plies.
    order = np.lexsort((found.plies, -np.round(weaker, 6), np.round(key, 9)))
    return Ranking(
        _distinct(found, choices, order[fits[order]], count),
        len(weaker),
        int(fits.sum()),
        _cloud(found.mass, weaker),
        _front(found.mass, weaker),
        RULES_OF_THUMB,
    )


def _below(values: FloatArray, most: float | None) -> FloatArray:
    allowed = np.inf if most is None else most * (1.0 + _SAME)
    return np.asarray(values <= allowed)


def _distinct(
    found: Candidates, choices: Choices, order: IntArray, count: int
) -> tuple[Candidate, ...]:
    """Return the first layups of an order that differ from each other in cloths or figures."""
    best: dict[tuple[object, ...], Candidate] = {}
    for index in order.tolist():
        layup = _candidate(found, choices, index)
        figures = (
            *(layup.thickness, layup.areal_mass, layup.cost),
            *(layup.bending_along, layup.bending_across, layup.pull_along, layup.pull_across),
        )
        best.setdefault((layup.cloths, *(f"{figure:.7g}" for figure in figures)), layup)
        if len(best) == count:
            break
    return tuple(best.values())


def _candidate(found: Candidates, choices: Choices, index: int) -> Candidate:
    options = choices.options
    chosen = [options[number] for number in found.stack(index)]
    return Candidate(
        tuple(cloth.name for cloth, _ in chosen),
        tuple(angle for _, angle in chosen),
        float(found.thickness[index]),
        float(found.mass[index]),
        float(found.cost[index]),
        *found.bending[index].tolist(),
        *found.pull[index].tolist(),
    )


def _cloud(mass: FloatArray, weaker: FloatArray) -> FloatArray:
    step = max(1, len(mass) // _FRONT)
    return floats(np.column_stack([mass, weaker])[::step], -1, 2)


def _front(mass: FloatArray, weaker: FloatArray) -> FloatArray:
    order = np.lexsort((-weaker, mass))
    highest = np.maximum.accumulate(weaker[order])
    kept = np.concatenate([[True], highest[1:] > highest[:-1] * (1.0 + _SAME)])
    return floats(np.column_stack([mass, weaker])[order][kept], -1, 2)
