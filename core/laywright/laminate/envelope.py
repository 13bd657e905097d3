"""The failure envelope: which pairs of loads a laminate carries, all round."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.laminate.criteria import Criterion
from laywright.laminate.failure import last_failure, ply_factors
from laywright.laminate.knock_downs import KnockDowns, usual_knock_downs
from laywright.laminate.laminate import Laminate
from laywright.laminate.strength import strength_plies
from laywright.stage import stage

__all__ = ["Envelope", "LoadPair", "failure_envelope"]

_FIRST = 181
_LAST = 73


class LoadPair(Enum):
    """Which two loads are varied against each other."""

    PULLS = "pull along and across"
    PULL_AND_SHEAR = "pull along and shear"
    BENDINGS = "bending along and across"


_PLACES = {LoadPair.PULLS: (0, 1), LoadPair.PULL_AND_SHEAR: (0, 2), LoadPair.BENDINGS: (3, 4)}


@dataclass(frozen=True, eq=False)
class Envelope:
    """Closed curves of the two loads.

    Attributes
    ----------
    pair : LoadPair
    unit : str
        Of both loads: N/mm for pulls and shear, N for bending (moment per width).
    first, last : (n, 2) float
        Where the first ply fails and where the last one does; the last point is the first.
    ply : (n,) float
        Number of the ply that fails first, for each point of `first`.
    criterion : Criterion
    digest : str
        Of its inputs.
    """

    pair: LoadPair
    unit: str
    first: FloatArray
    last: FloatArray
    ply: FloatArray
    criterion: Criterion
    digest: str = ""


@stage("Failure Envelope", version=1)
def failure_envelope(
    laminate: Laminate,
    pair: LoadPair = LoadPair.PULLS,
    criterion: Criterion = Criterion.MAX_STRESS,
    knock_downs: KnockDowns | None = None,
) -> Envelope:
    """Return the pairs of loads at which the first and the last ply of a laminate fail.

    A core is not judged; see `laywright.laminate.sandwich_check`.

    Parameters
    ----------
    laminate : Laminate
    pair : LoadPair
    criterion, knock_downs
        As for `laywright.laminate.strength.check_strength`.

    Raises
    ------
    MaterialError
        If the card of a cloth states no strengths.
    """
    plies = strength_plies(laminate, knock_downs or usual_knock_downs(laminate.layup.process))
    directions = _directions(pair, _FIRST)
    factors = ply_factors(plies, directions[:, :3], directions[:, 3:], criterion).min(axis=-1)
    numbers = np.cumsum([ply.strengths is not None for ply in plies])
    least = factors.min(axis=1)
    along = _directions(pair, _LAST)
    last = np.array([last_failure(plies, load[:3], load[3:], criterion) for load in along])
    places = _PLACES[pair]
    return Envelope(
        pair,
        "N" if pair is LoadPair.BENDINGS else "N/mm",
        floats(least[:, None] * directions[:, places], -1, 2),
        floats(last[:, None] * along[:, places], -1, 2),
        floats(numbers[factors.argmin(axis=1)], -1),
        criterion,
    )


def _directions(pair: LoadPair, count: int) -> FloatArray:
    """Return unit loads all round, (count, 6) float."""
    turn = np.linspace(0.0, 2.0 * np.pi, count)
    loads = np.zeros((count, 6))
    first, second = _PLACES[pair]
    loads[:, first], loads[:, second] = np.cos(turn), np.sin(turn)
    return loads
