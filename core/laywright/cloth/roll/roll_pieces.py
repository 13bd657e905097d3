"""The pieces that are cut from a cloth: patterns, or strips of them, for every part."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from shapely.geometry import Polygon

from laywright.arrays import FloatArray
from laywright.cloth.patterns.pattern import Pattern
from laywright.cloth.roll.roll_layout import Placement, Strip, strip_outline
from laywright.cloth.roll.roll_settings import RollSettings, TurnOver, WidePatterns, reversible
from laywright.cloth.roll.spot import STRAIGHT, Spot
from laywright.cloth.roll.wide import proposal, strips_for
from laywright.errors import LimitError

__all__ = ["Piece", "pieces_of", "ways_of"]


@dataclass(frozen=True, eq=False)
class Piece:
    """One piece to be cut.

    Attributes
    ----------
    index : int
        Which pattern it is cut by, counted from 0.
    pattern : Pattern
        That pattern.
    strip : Strip or None
        Which strip of it, None for all of it.
    name : str
        What is written on it.
    opposite : bool
        Whether it belongs to the mirrored part.
    outline : (k, 2) float, mm
        Its cut line as the pattern is drawn.
    """

    index: int
    pattern: Pattern
    strip: Strip | None
    name: str
    opposite: bool
    outline: FloatArray

    def placed(self, spot: Spot) -> Placement:
        """Return where it lies, for the plan."""
        return Placement(
            self.index,
            self.pattern.ply,
            self.name,
            spot.x,
            spot.y,
            spot.turned,
            spot.mirrored,
            spot.mirrored != self.opposite,
            self.strip,
        )


def pieces_of(
    cloth: str,
    found: Sequence[tuple[int, Pattern]],
    settings: RollSettings,
    remarks: list[str],
) -> list[Piece]:
    """Return the pieces to be cut from a cloth.

    Parameters
    ----------
    cloth : str
        Name of the cloth.
    found : sequence of (int, Pattern)
        Its patterns with their places among all.
    settings : RollSettings
        Width of the roll, number of parts, what happens to wide patterns.
    remarks : list of str
        What a maker should know about them is added here.

    Raises
    ------
    LimitError
        If a pattern is wider than its roll and is not, or cannot be, split.
    """
    width = settings.widths.get(cloth, found[0][1].roll_width)
    usable = width - 2.0 * settings.edge
    hands = [False] * settings.parts + [True] * settings.mirrored_parts
    pieces = []
    for index, pattern in found:
        across = float(np.ptp(pattern.cut[:, 1]))
        strips: tuple[Strip | None, ...] = (None,)
        if across > usable:
            split = proposal(pattern, usable)
            if settings.wide is WidePatterns.REFUSE:
                raise LimitError(
                    f"{pattern.name} on the roll of {cloth}",
                    f"a pattern that is {across:.0f} mm wide across the warp",
                    f"at most {usable:.0f} mm",
                    f"take a wider roll, turn the ply, or have it split: {split}",
                )
            strips = strips_for(pattern, usable)
            remarks.append(f"{pattern.name} is wider than its roll and is cut as {split}")
        for part, opposite in enumerate(hands, 1):
            for number, strip in enumerate(strips):
                name = pattern.name + ("" if strip is None else f" {'abcdefgh'[number % 8]}")
                if opposite:
                    name += f", mirrored part {part - settings.parts}"
                elif len(hands) > 1:
                    name += f", part {part}"
                if strip is not None:
                    _check_whole(pattern, strip, cloth)
                outline = strip_outline(pattern, strip)
                pieces.append(Piece(index, pattern, strip, name, opposite, outline))
    return pieces


def _check_whole(pattern: Pattern, strip: Strip, cloth: str) -> None:
    """Refuse a strip that would be in two pieces."""
    whole = Polygon(pattern.cut)
    left, _, right, _ = whole.bounds
    cut = shapely.intersection(whole, shapely.box(left, strip[0], right, strip[1]))
    if sum(part.area > 1.0 for part in shapely.get_parts(cut)) > 1:
        raise LimitError(
            f"{pattern.name} on the roll of {cloth}",
            "a pattern that falls into loose pieces when it is split along the warp",
            "a pattern that fits the roll",
            "take a wider roll, turn the ply, or divide the face into two Moulded Faces",
        )


def ways_of(piece: Piece, settings: RollSettings) -> tuple[Spot, ...]:
    """Return the ways round in which a piece may lie."""
    flipped = tuple(replace(way, mirrored=True) for way in STRAIGHT)
    if settings.turn_over is TurnOver.WHERE_ALIKE and reversible(piece.pattern.weave):
        return (*flipped, *STRAIGHT) if piece.opposite else (*STRAIGHT, *flipped)
    return flipped if piece.opposite else STRAIGHT
