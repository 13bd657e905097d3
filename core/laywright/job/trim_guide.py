"""A guide to trim by: the part's edge on paper at true scale, or as a printed ring.

The paper is the part laid flat and lies on a part that is curved one way; the ring lies on
the laminate of any part, its outer edge above the trim line.
"""

from __future__ import annotations

import math

import numpy as np

from laywright.arrays import FloatArray, IntArray, ints
from laywright.cloth.patterns.pattern import Pattern
from laywright.cloth.plies.lay import DrapedPly
from laywright.errors import GeometryError
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.surface.along import Along
from laywright.surface.level_line import above, divided_along
from laywright.surface.offset import offset
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = ["trim_paper", "trim_ring"]

_STYLES = {"trim": Style(0.35), "hole": Style(0.35), "centre": Style(0.18), "label": Style(0.25)}
_CLEARANCE = 0.2  # mm between laminate and ring


def trim_paper(pattern: Pattern, job: str) -> Drawing:
    """Return the part's edge and holes laid flat, at true scale.

    Parameters
    ----------
    pattern : Pattern
        Of the last ply.
    job : str
        Name and version, printed on it.
    """
    shapes: list[Line | Label] = [Line("trim", pattern.trim, closed=True)]
    for hole in pattern.holes:
        shapes.append(Line("hole", hole, closed=True))
        x, y = hole.mean(axis=0).tolist()
        reach = 0.7 * float(np.ptp(hole, axis=0).max())
        shapes += [
            Line("centre", np.array([[x - reach, y], [x + reach, y]])),
            Line("centre", np.array([[x, y - reach], [x, y + reach]])),
        ]
    x, y = pattern.centre.tolist()
    shear = math.degrees(pattern.largest_shear)
    for number, text in enumerate(
        (
            f"Trim guide, {job}",
            "this side up, away from the mould; outline of the part, not of the cloth",
            f"the part is laid flat: it is true to {shear:.0f} deg of shear, less is better",
        )
    ):
        shapes.append(Label("label", text, (x, y - 8.0 * number), 4.0))
    return Drawing("trim guide", tuple(shapes), _STYLES)


def trim_ring(
    ply: DrapedPly, thickness: float, width: float = 15.0, height: float = 2.5
) -> Surface:
    """Return a ring to be printed: it lies on the laminate, along the outer trim line.

    Parameters
    ----------
    ply : DrapedPly
        The last ply, by the surface of its middle.
    thickness : float, mm
        Of that ply.
    width, height : float, mm
        Of the ring, inwards from the trim line and away from the laminate.

    Returns
    -------
    Surface
        Closed, normals outwards.

    Raises
    ------
    GeometryError
        If the edge is too tightly curved, or the part too narrow, for a ring.
    """
    surface = ply.uncut
    within = width - Along(surface).from_edge()
    near = (within[surface.triangles] > 0.0).any(axis=1)
    strip = surface.part(near)
    within = within[np.unique(surface.triangles[near])]
    away = 0.5 * thickness + _CLEARANCE
    try:
        return _ring(strip, within, away, away + height)
    except GeometryError as problem:
        raise GeometryError(
            "trim guide",
            f"no room for a ring {three_figures(width)} mm wide, but {problem.found}",
            "an edge that is less tightly curved",
            "take the paper guide",
        ) from problem


def _ring(strip: Surface, within: FloatArray, low: float, high: float) -> Surface:
    """Return the ring between two levels above a strip, cut where `within` (n,) is zero."""
    levels = [offset(strip, low), offset(strip, high)]
    if any(len(level.vertices) != len(strip.vertices) for level in levels):
        needed = f"more than {three_figures(high)} mm"
        raise GeometryError("trim guide", "too small an inside radius", needed, "enlarge it")
    carried = np.hstack([level.vertices for level in levels])
    divided, within, carried = divided_along(strip, within, carried)
    inside = above(divided, within)
    carried = carried[np.unique(divided.triangles[inside])]
    return _closed(divided.part(inside), carried[:, :3], carried[:, 3:])


def _closed(band: Surface, low: FloatArray, high: FloatArray) -> Surface:
    """Return the solid between a band on two levels."""
    count = len(low)
    walls: list[IntArray] = []
    for loop in band.boundary_loops:
        start, end = loop, np.roll(loop, -1)
        walls.append(ints(np.stack([start, end, end + count], axis=1), -1, 3))
        walls.append(ints(np.stack([start, end + count, start + count], axis=1), -1, 3))
    triangles = np.concatenate([band.triangles[:, ::-1], band.triangles + count, *walls])
    return Surface.single(np.concatenate([low, high]), triangles, "trim guide")
