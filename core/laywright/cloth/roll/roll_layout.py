"""What a roll plan gives: where every piece lies, what is bought and what is left over."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import Polygon
from shapely.geometry.polygon import orient

from laywright.arrays import FloatArray, floats
from laywright.cloth.patterns.pattern import Pattern, PatternSet
from laywright.cloth.roll.bottom_left import Rectangle
from laywright.cloth.roll.spot import Spot

__all__ = [
    "Placement",
    "RollLayout",
    "RollPlan",
    "Strip",
    "placed_openings",
    "placed_outline",
    "strip_outline",
]

Strip = tuple[float, float]
"""Lowest and highest y of the strip of a pattern that is one piece, mm."""


@dataclass(frozen=True)
class Placement:
    """Where a piece lies on its cloth.

    Attributes
    ----------
    pattern : int
        Which pattern, counted from 0 as in `PatternSet.patterns`.
    ply : int
        Number of its ply.
    name : str
        What is written on the piece.
    x, y : float, mm
        Shift of the pattern along the cloth and across it, from its corner.
    turned : bool
        Whether it is turned by 180 degrees about zero before it is shifted.
    mirrored : bool
        Whether it is mirrored about its x axis before that.
    face_down : bool
        Whether the written side of the piece lies downwards on the table.
    strip : Strip or None
        Which strip of the pattern it is, None for all of it.
    """

    pattern: int
    ply: int
    name: str
    x: float
    y: float
    turned: bool
    mirrored: bool = False
    face_down: bool = False
    strip: Strip | None = None

    @property
    def spot(self) -> Spot:
        """Where it lies."""
        return Spot(self.x, self.y, self.turned, self.mirrored)


@dataclass(frozen=True)
class RollLayout:
    """A length of a roll, or an offcut, with its pieces.

    Attributes
    ----------
    cloth : str
        Name of the cloth.
    name : str
        ``"roll"`` or ``"offcut 1"``.
    width, length : float, mm
        Width of the cloth and length that is used up; of an offcut its whole length.
    to_buy : float, mm
        Length rounded up to what is sold; 0 for an offcut.
    share_used : float
        Share of width x length that becomes pieces.
    placements : tuple of Placement
        One for each piece, in the order of cutting: from the free end of the roll.
    unused : float, mm
        Width of the strip along both edges that is not used.
    faults : tuple of Rectangle
        Places that are not used, mm.
    left_over : tuple of Rectangle
        The largest rectangles that remain, mm.
    cut_length : float, mm
        Length of all cut lines.
    tape_20, tape_50 : float, mm
        Edge tape of 20 and of 50 mm width that covers all cut lines once, on one face; where
        cut lines run side by side below one tape, it counts once.
    """

    cloth: str
    name: str
    width: float
    length: float
    to_buy: float
    share_used: float
    placements: tuple[Placement, ...]
    unused: float
    faults: tuple[Rectangle, ...]
    left_over: tuple[Rectangle, ...]
    cut_length: float
    tape_20: float
    tape_50: float

    @property
    def title(self) -> str:
        """Cloth, and which piece of it."""
        return self.cloth if self.name == "roll" else f"{self.name} of {self.cloth}"

    @property
    def edge(self) -> FloatArray:
        """Outline of the cloth: (4, 2) float, mm."""
        x, y = self.length, self.width
        return floats([[0.0, 0.0], [x, 0.0], [x, y], [0.0, y]], 4, 2)

    def outlines(self, patterns: PatternSet) -> list[tuple[FloatArray, bool]]:
        """Return the cloth's edge and every cut line, (k, 2) float, mm, and whether it closes."""
        found = [(self.edge, True)]
        for placement in self.placements:
            pattern = patterns.patterns[placement.pattern]
            found.append((placed_outline(pattern, placement), True))
            found += [(opening, True) for opening in placed_openings(pattern, placement)]
        return found


@dataclass(frozen=True)
class RollPlan:
    """All cloth of a job.

    Attributes
    ----------
    rolls : tuple of RollLayout
        What is bought, in the order in which the layup first uses the cloths.
    offcuts : tuple of RollLayout
        Offcuts at hand that are used, cut before the rolls.
    remarks : tuple of str
        What a maker should know about it.
    parts : int
        Number of parts that all of it is for, mirrored ones included.
    digest : str
        Of the inputs.
    """

    rolls: tuple[RollLayout, ...]
    offcuts: tuple[RollLayout, ...] = ()
    remarks: tuple[str, ...] = ()
    parts: int = 1
    digest: str = ""

    @property
    def layouts(self) -> tuple[RollLayout, ...]:
        """Everything that is cut from, in the order of cutting."""
        return (*self.offcuts, *self.rolls)


def strip_outline(pattern: Pattern, strip: Strip | None) -> FloatArray:
    """Return the outline of a piece as its pattern is drawn: (k, 2) float, mm."""
    if strip is None:
        return pattern.cut
    whole = Polygon(pattern.cut)
    left, _, right, _ = whole.bounds
    cut = shapely.intersection(whole, shapely.box(left, strip[0], right, strip[1]))
    largest = max(shapely.get_parts(cut), key=lambda part: float(part.area))
    points = np.asarray(orient(largest).exterior.coords)[:-1]
    return floats(points, -1, 2)


def placed_outline(pattern: Pattern, placement: Placement) -> FloatArray:
    """Return the cut line of a piece where it lies on the cloth: (k, 2) float, mm."""
    return placement.spot.on(strip_outline(pattern, placement.strip))


def placed_openings(pattern: Pattern, placement: Placement) -> list[FloatArray]:
    """Return the openings of a piece where they lie on the cloth, each (i, 2) float, mm."""
    inside = (
        pattern.openings
        if placement.strip is None
        else [o for o in pattern.openings if _within(o, placement.strip)]
    )
    return [placement.spot.on(opening) for opening in inside]


def _within(points: FloatArray, strip: Strip) -> bool:
    return bool(points[:, 1].min() >= strip[0] and points[:, 1].max() <= strip[1])
