"""The figures of a length of cloth with its pieces: what is used, left over, cut and taped."""

from __future__ import annotations

from collections.abc import Sequence

from shapely.geometry import Polygon

from laywright.cloth.patterns.pattern import Pattern
from laywright.cloth.roll.bottom_left import Rectangle
from laywright.cloth.roll.leftover import free_rectangles
from laywright.cloth.roll.roll_layout import Placement, RollLayout, placed_openings, placed_outline
from laywright.cloth.roll.tape import TAPES, cut_length, tape_length

__all__ = ["layout_of"]


def layout_of(
    cloth: str,
    name: str,
    size: tuple[float, float],
    to_buy: float,
    unused: float,
    placed: Sequence[tuple[Pattern, Placement]],
    faults: tuple[Rectangle, ...],
) -> RollLayout:
    """Return the layout of a piece of cloth, its pieces in the order of cutting.

    Parameters
    ----------
    cloth, name : str
        Which cloth, and which piece of it.
    size : tuple of 2 float, mm
        Length that is used up, and width.
    to_buy : float, mm
        Length that is bought.
    unused : float, mm
        Strip along both edges that is not used.
    placed : sequence of (Pattern, Placement)
        The pieces.
    faults : tuple of Rectangle
        Places that are not used.
    """
    length, width = size
    lines = [placed_outline(pattern, placement) for pattern, placement in placed]
    openings = [line for pair in placed for line in placed_openings(*pair)]
    order = sorted(
        range(len(placed)),
        key=lambda i: (round(float(lines[i][:, 0].min())), float(lines[i][:, 1].min())),
    )
    area = sum(Polygon(line).area for line in lines) - sum(Polygon(o).area for o in openings)
    tape_20, tape_50 = (tape_length([*lines, *openings], tape) for tape in TAPES)
    return RollLayout(
        cloth,
        name,
        width,
        length,
        to_buy,
        float(area) / (length * width),
        tuple(placed[i][1] for i in order),
        unused,
        faults,
        free_rectangles(lines, max(length, to_buy), width, faults),
        cut_length([*lines, *openings]),
        tape_20,
        tape_50,
    )
