"""The drawing of a pattern at true scale."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from laywright.cloth.patterns.drawing_marks import arrow, check_bars, cross, drawing_of
from laywright.cloth.patterns.pattern import Pattern
from laywright.files.drawing import Drawing, Label, Line

__all__ = ["pattern_drawing"]

_SPACING = 1.7


def pattern_drawing(
    pattern: Pattern,
    job: str = "",
    plies: Sequence[int] = (),
    quantity: int = 1,
    seams: Sequence[float] = (),
) -> Drawing:
    """Return the drawing of a pattern at true scale.

    Layers: ``cut``, ``trim`` (edge of the part), ``seam`` and ``lap`` (where it is split, and
    up to where it laps), ``datum`` (start point, datum arrow, centre mark), ``warp``, ``notch``,
    ``label`` and ``check bar`` (100 mm both ways).

    Parameters
    ----------
    pattern : Pattern
        The pattern.
    job : str
        Name of the job, printed with the label if given.
    plies : sequence of int
        Plies that are cut by it, where they are several.
    quantity : int
        How many pieces are cut by it.
    seams : sequence of float, mm
        Where it is split along the warp to fit its roll: y of every cut.

    Returns
    -------
    Drawing
    """
    shapes: list[Line | Label] = [Line("cut", pattern.cut, closed=True)]
    shapes += [Line("cut", opening, closed=True) for opening in pattern.openings]
    shapes += [Line("trim", edge, closed=True) for edge in (pattern.trim, *pattern.holes)]
    shapes += [Line("cut", slit) for slit in pattern.slits]
    shapes += [Line("lap", lap) for lap in pattern.laps]
    shapes += [Line("notch", notch) for notch in pattern.notches]
    ends = [float(pattern.cut[:, 0].min()), float(pattern.cut[:, 0].max())]
    shapes += [Line("seam", np.array([[ends[0], y], [ends[1], y]])) for y in seams]
    size = float(np.clip(0.12 * np.sqrt(pattern.area), 8.0, 60.0))
    shapes += arrow("datum", pattern.datum, pattern.datum_direction, size)
    shapes += cross("datum", pattern.centre, 0.1 * size)
    shapes += _label(pattern, [*([job] if job else []), *_words(pattern, plies, quantity)], size)
    shapes += check_bars(float(pattern.cut[:, 0].min()), float(pattern.cut[:, 1].min()) - 12.0)
    name = f"{job} {pattern.name}".strip()
    return drawing_of(name, shapes)


def _words(pattern: Pattern, plies: Sequence[int], quantity: int) -> list[str]:
    degrees = math.degrees(pattern.angle)
    if len(plies) > 1:
        named = sorted(plies)
        first = f"Plies {', '.join(map(str, named[:-1]))} and {named[-1]}"
    elif not pattern.ply:
        first = f"Over the last ply: {pattern.name}"
    else:
        own = pattern.name == f"ply {pattern.ply}"
        first = f"Ply {pattern.ply}" if own else f"Ply {pattern.ply}, {pattern.name}"
    return [
        first,
        f"cut {quantity}",
        *([pattern.cloth] if pattern.ply else []),
        f"{degrees:+.0f} deg from the datum arrow" if degrees else "along the datum arrow",
        "this side up, away from the mould",
        f"outline drawn within {pattern.deviation:g} mm",
        "warp this way",
    ]


def _label(pattern: Pattern, texts: list[str], size: float) -> list[Line | Label]:
    """Return the lines of the label with the warp arrow, on the side the datum arrow leaves."""
    longest = max(len(text) for text in texts)
    height = float(np.clip(1.2 * np.ptp(pattern.trim[:, 0]) / longest / 2.0, 2.5, 8.0))
    x, y = pattern.datum.tolist()
    tall = _SPACING * height * (len(texts) + 1)
    top = y + 0.3 * size + tall if pattern.datum_direction[1] < 0.0 else y - 0.3 * size
    shapes: list[Line | Label] = [
        Label("label", text, (x, top - _SPACING * height * (line + 1)), height)
        for line, text in enumerate(texts)
    ]
    low = np.array([x - 0.5 * size, top - tall])
    shapes += arrow("warp", low, np.array([1.0, 0.0]), size)
    return shapes
