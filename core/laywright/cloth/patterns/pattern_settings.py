"""How patterns are drawn: margin, notches, outlines, and what is cut besides cloth."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from laywright.cloth.drape.fabric import Sheeting, Start
from laywright.cloth.drape.start_search import FindStart
from laywright.cloth.patterns.margins import check_margins
from laywright.errors import InputError
from laywright.tolerances import TOLERANCES

__all__ = ["PatternSettings"]

_FEWEST = 200


@dataclass(frozen=True)
class PatternSettings:
    """How patterns are drawn and how the cloth is laid.

    Attributes
    ----------
    margin : float, mm
        Cloth beyond the edge of the part; 20 mm is common practice, no source.
    notch : float, mm
        Length of the notches where the threads through the start point meet the cut edge, and
        of those that meet across seams.
    deviation : float, mm
        Largest distance between the drawn outlines and the computed ones.
    start : Start or None
        What the hand lays straight first; None takes what is usual for each cloth.
    triangles : int
        Number of even triangles that the face is meshed with for the drape.
    find : FindStart
        Where the datum comes from when none is set.
    margins : dict of str to float, mm
        Margin by side, where it differs: ``ahead``, ``left``, ``behind`` and ``right`` as seen
        along the datum arrow, and ``holes``.  A local ply takes `margin` where it reaches the
        edge of the part, and none where it ends inside.
    also_cut : tuple of Sheeting
        Plain sheets that are cut besides and laid over the last ply, such as peel ply.
    """

    margin: float = 20.0
    notch: float = 6.0
    deviation: float = TOLERANCES.outline
    start: Start | None = None
    triangles: int = 8000
    find: FindStart = FindStart.MIDDLE
    margins: dict[str, float] = field(default_factory=dict)
    also_cut: tuple[Sheeting, ...] = ()

    def __post_init__(self) -> None:
        check_margins(self.margins)
        for name, least in (("margin", 0.0), ("notch", 0.0), ("deviation", 1e-6)):
            value = getattr(self, name)
            if not (math.isfinite(value) and value >= least):
                raise InputError(
                    f"{name} of the patterns",
                    f"{value:g} mm",
                    f"at least {least:g} mm",
                    "correct the setting",
                )
        if self.triangles < _FEWEST:
            raise InputError(
                "triangles for the drape",
                f"{self.triangles}",
                f"at least {_FEWEST}",
                "correct the setting",
            )
