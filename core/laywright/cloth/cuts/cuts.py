"""Cuts in a ply: darts from the edge inwards, splices from edge to edge, and how they join.

A *dart* ends inside the face; a *splice* runs from edge to edge and parts the ply into pieces;
several splices or darts that meet give *gores*.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from laywright.arrays import FloatArray, Vector
from laywright.errors import InputError, LimitError
from laywright.laminate.materials import Weave

__all__ = ["Answer", "Cut", "CutSettings", "Joint", "LaidCut", "Propose", "joint_of"]

LEAST_LAP = 12.7
"""Least lap of woven cloth, mm; common practice (half an inch), no source."""

_MOST_POINTS = 24


class Joint(Enum):
    """How the sides of a cut meet."""

    LAP = "lap"
    BUTT = "butt"


class Answer(Enum):
    """What becomes of a cut."""

    MADE = "made"
    REFUSED = "refused"


class Propose(Enum):
    """What happens where the cloth would shear or stretch past its limits."""

    NOTHING = "nothing is proposed"
    SHOWN = "proposed cuts are shown"
    MADE = "proposed cuts are made"


@dataclass(frozen=True)
class Cut:
    """A cut that somebody wants, or does not want.

    Attributes
    ----------
    ply : int
        Number of the ply; 0 for every ply.
    points : tuple of (float, float, float), mm
        On the part: from the edge inwards, or from edge to edge, straight between them.
    joint : Joint or None
        None takes what is usual for the cloth.
    answer : Answer
        A refused cut is not made, and nothing like it is proposed again.
    """

    ply: int
    points: tuple[Vector, ...]
    joint: Joint | None = None
    answer: Answer = Answer.MADE

    def __post_init__(self) -> None:
        where = f"cut in ply {self.ply}" if self.ply else "cut in every ply"
        if self.ply < 0:
            raise InputError(where, "a number below 0", "the number of a ply", "correct it")
        if len(self.points) < 2:
            raise InputError(
                where, f"{len(self.points)} points", "at least 2", "add the points of the cut"
            )
        if not all(math.isfinite(x) for point in self.points for x in point):
            raise InputError(where, "a point that is no number", "numbers in mm", "correct it")


@dataclass(frozen=True)
class CutSettings:
    """Which cuts are made and by which rules.

    Attributes
    ----------
    cuts : tuple of Cut
        Made or refused by the maker.
    propose : Propose
        Whether cuts are proposed where a limit is passed, and made.
    lap : float, mm
        Width of a lap; 25 mm is common practice, 12.7 mm the least, no source.
    stagger : float, mm
        Least distance between cuts of plies near each other.
    plies_apart : int
        How many plies further up a cut may lie over another; 4 is common practice, no source.
    shear_limit : float or None, radians
        Shear above which cuts are proposed; None takes the locking angle of each cloth.
    """

    cuts: tuple[Cut, ...] = ()
    propose: Propose = Propose.NOTHING
    lap: float = 25.0
    stagger: float = 25.0
    plies_apart: int = 4
    shear_limit: float | None = None

    def __post_init__(self) -> None:
        if not (math.isfinite(self.lap) and self.lap >= LEAST_LAP):
            raise LimitError(
                "lap of the cuts", f"{self.lap:g} mm", f"at least {LEAST_LAP} mm", "widen the lap"
            )
        if not (math.isfinite(self.stagger) and self.stagger >= 0.0):
            raise InputError(
                "stagger of the cuts", f"{self.stagger:g} mm", "0 mm or more", "correct it"
            )
        if self.plies_apart < 0:
            raise InputError(
                "plies between cuts", f"{self.plies_apart}", "0 or more", "correct the setting"
            )
        if self.shear_limit is not None and not 0.0 < self.shear_limit <= math.pi / 2.0:
            raise LimitError(
                "shear limit of the cuts",
                f"{math.degrees(self.shear_limit):g} deg",
                "more than 0 and at most 90 deg",
                "correct the limit, or leave it out for that of the cloth",
            )

    def made(self, ply: int) -> tuple[Cut, ...]:
        """Return the cuts to be made in a ply."""
        return tuple(c for c in self.cuts if c.ply in (0, ply) and c.answer is Answer.MADE)

    def refused(self, ply: int) -> tuple[Cut, ...]:
        """Return the cuts refused in a ply."""
        return tuple(c for c in self.cuts if c.ply in (0, ply) and c.answer is Answer.REFUSED)


@dataclass(frozen=True, eq=False)
class LaidCut:
    """A cut as it lies on the surface of its ply.

    Attributes
    ----------
    ply : int
        Number of the ply.
    line : (k, 3) float, mm
        From the edge inwards or from edge to edge.
    joint : Joint
        How its sides meet.
    lap : float, mm
        Width of the lap; 0 for a butt.
    length : float, mm
        Length of the cut.
    proposed : bool
        Whether it was found by search and not asked for.
    bent : bool
        Whether it runs round a bend of its own; else straight between its ends.
    """

    ply: int
    line: FloatArray
    joint: Joint
    lap: float
    length: float
    proposed: bool = False
    bent: bool = False

    @property
    def points(self) -> tuple[Vector, ...]:
        """Points between which it runs straight, mm: its ends or, bent, a few along it."""
        if not self.bent:
            return self.ends
        step = max(1, math.ceil((len(self.line) - 1) / _MOST_POINTS))
        chosen = [*range(0, len(self.line) - 1, step), len(self.line) - 1]
        return tuple((x, y, z) for x, y, z in self.line[chosen].tolist())

    @property
    def ends(self) -> tuple[Vector, Vector]:
        """First and last point, mm."""
        first, last = self.line[0].tolist(), self.line[-1].tolist()
        return (first[0], first[1], first[2]), (last[0], last[1], last[2])


def joint_of(weave: Weave) -> Joint:
    """Return how cuts in a cloth are joined: unidirectional butted, everything else lapped.

    Common practice, no source: a lap carries load from yarn to yarn; along and across
    unidirectional fibres it makes a ridge that the next fibres bend over.

    Examples
    --------
    >>> joint_of(Weave.UNIDIRECTIONAL).value
    'butt'
    """
    return Joint.BUTT if weave is Weave.UNIDIRECTIONAL else Joint.LAP
