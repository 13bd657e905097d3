"""The roll plan: where each pattern is cut from its roll, with the grain kept.

The warp of every pattern lies along the roll, so a pattern may be turned by half a turn and
not otherwise.  A packing library searches within a time budget; a simple packing by lanes is
always made beside it, and the shorter of the two is taken.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field

import numpy as np

from laywright.arrays import FloatArray
from laywright.cloth.packing import fits, search
from laywright.cloth.pattern import Pattern, PatternSet
from laywright.cloth.skyline import Spot, place_by_lanes
from laywright.errors import InputError, LimitError
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage

__all__ = ["Placement", "RollLayout", "RollPlan", "RollSettings", "placed_outline", "plan_roll"]


@dataclass(frozen=True)
class RollSettings:
    """The rolls at hand and how long to search.

    Attributes
    ----------
    widths : dict of str to float, mm
        Width of the roll by the name of its cloth, where it differs from the cloth's card.
    edge : float, mm
        Strip along both edges of the roll that is not used.
    gap : float, mm
        Smallest distance between two pieces.
    seconds : float
        Time budget of the search, for all rolls together.
    seed : int
        Start of the search: the same seed searches the same way, as far as the time allows.
    """

    widths: dict[str, float] = field(default_factory=dict)
    edge: float = 10.0
    gap: float = 5.0
    seconds: float = 5.0
    seed: int = 1

    def __post_init__(self) -> None:
        named = {"unused edge": self.edge, "gap": self.gap, "time budget": self.seconds}
        for name, value in named.items():
            if not (math.isfinite(value) and value >= 0.0):
                raise InputError(
                    f"{name} of the roll plan", f"{value:g}", "0 or more", "correct the setting"
                )
        for cloth, width in self.widths.items():
            if not (math.isfinite(width) and width > 2.0 * self.edge):
                raise InputError(
                    f"width of the roll of {cloth}",
                    f"{width:g} mm",
                    f"more than twice the unused edge of {self.edge:g} mm",
                    "set the width of the roll",
                )


@dataclass(frozen=True)
class Placement:
    """Where a pattern lies on its roll.

    Attributes
    ----------
    ply : int
        Number of the ply.
    x, y : float, mm
        Shift of the pattern along the roll and across it, from the roll's corner.
    turned : bool
        Whether it is turned by 180 degrees about zero before it is shifted.
    piece : int
        Number of the piece where the ply is laid in several.
    """

    ply: int
    x: float
    y: float
    turned: bool
    piece: int = 0


@dataclass(frozen=True)
class RollLayout:
    """One roll with its pieces.

    Attributes
    ----------
    cloth : str
        Name of the cloth.
    width, length : float, mm
        Width of the roll and length that is used up.
    share_used : float
        Share of that cloth that becomes pieces.
    placements : tuple of Placement
        One for each piece.
    """

    cloth: str
    width: float
    length: float
    share_used: float
    placements: tuple[Placement, ...]

    def outlines(self, patterns: PatternSet) -> list[tuple[FloatArray, bool]]:
        """Return the roll's edge and every cut line, (k, 2) float, mm, and whether it closes."""
        known = {(pattern.ply, pattern.piece): pattern for pattern in patterns.patterns}
        edge = np.array([[0, 0], [self.length, 0], [self.length, self.width], [0, self.width]])
        return [
            (edge, True),
            *(
                (placed_outline(known[place.ply, place.piece], place), True)
                for place in self.placements
            ),
        ]


@dataclass(frozen=True)
class RollPlan:
    """All rolls of a job.

    Attributes
    ----------
    rolls : tuple of RollLayout
        In the order in which the layup first uses the cloths.
    digest : str
        Of the inputs.
    """

    rolls: tuple[RollLayout, ...]
    digest: str = ""


def placed_outline(pattern: Pattern, placement: Placement) -> FloatArray:
    """Return the cut line of a pattern where it lies on the roll: (k, 2) float, mm."""
    return Spot(placement.x, placement.y, placement.turned).on(pattern.cut)


@stage("Roll Plan", version=1)
def plan_roll(
    patterns: PatternSet,
    settings: RollSettings = RollSettings(),
    *,
    progress: Progress = silent,
) -> RollPlan:
    """Place all patterns on their rolls.

    Parameters
    ----------
    patterns : PatternSet
        The patterns.
    settings : RollSettings
        Rolls, gaps, time budget.
    progress : Progress
        Told how far it is; may raise `laywright.errors.Cancelled`.

    Returns
    -------
    RollPlan

    Raises
    ------
    LimitError
        If a pattern is wider than its roll.
    """
    by_cloth: dict[str, list[Pattern]] = {}
    for pattern in patterns.patterns:
        by_cloth.setdefault(pattern.cloth, []).append(pattern)
    total = len(patterns.patterns)
    done = 0
    rolls = []
    for cloth, pieces in by_cloth.items():
        inner = part_of(progress, done / total, (done + len(pieces)) / total)
        inner(0.0, f"placing {len(pieces)} pieces on the roll of {cloth}")
        rolls.append(
            _lay_out(cloth, pieces, settings, settings.seconds * len(pieces) / total, inner)
        )
        done += len(pieces)
    progress(1.0)
    return RollPlan(tuple(rolls))


def _lay_out(
    cloth: str, pieces: list[Pattern], settings: RollSettings, seconds: float, progress: Progress
) -> RollLayout:
    width = settings.widths.get(cloth, pieces[0].roll_width)
    usable = width - 2.0 * settings.edge
    outlines = [piece.cut for piece in pieces]
    for piece in pieces:
        across = float(np.ptp(piece.cut[:, 1]))
        if across > usable:
            raise LimitError(
                f"{piece.name} on the roll of {cloth}",
                f"a pattern that is {across:.0f} mm wide across the warp",
                f"at most {usable:.0f} mm",
                "take a wider roll, turn the ply, or split the face into two Moulded Faces",
            )
    best = place_by_lanes(outlines, usable, settings.gap)
    if len(pieces) > 1 and seconds >= 1.0:
        found = search(outlines, usable, settings.gap, seconds, settings.seed, progress)
        if (
            found is not None
            and _end(outlines, found) < _end(outlines, best)
            and fits(outlines, found, usable, settings.gap)
        ):
            best = found
    length = _end(outlines, best)
    return RollLayout(
        cloth,
        width,
        length,
        sum(piece.area for piece in pieces) / (length * width),
        tuple(
            Placement(piece.ply, spot.x, spot.y + settings.edge, spot.turned, piece.piece)
            for piece, spot in zip(pieces, best, strict=True)
        ),
    )


def _end(outlines: list[FloatArray], spots: list[Spot]) -> float:
    """Return where the last piece ends along the roll, mm."""
    return max(
        float(spot.on(outline)[:, 0].max()) for outline, spot in zip(outlines, spots, strict=True)
    )
