"""A guide to trim by: the part's edge on paper at true scale, or as a printed ring.

The paper is the part laid flat and lies on a part that is curved one way; the ring lies on
the laminate of any part, its outer edge above the trim line.
"""

from __future__ import annotations

import math

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray, IntArray, ints
from laywright.cloth.patterns.pattern import Pattern
from laywright.cloth.plies.lay import DrapedPly
from laywright.errors import GeometryError
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.surface.offset import offset
from laywright.surface.triangles import Surface

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
        If the part is too tightly curved for a ring.
    """
    surface = ply.uncut
    edge = surface.vertices[surface.boundary_loops[0]]
    points = np.concatenate([edge, 0.5 * (edge + np.roll(edge, -1, axis=0))])
    near = cKDTree(points).query(surface.centroids)[0] <= width
    band = surface.part(near)
    low = offset(surface, 0.5 * thickness + _CLEARANCE)
    high = offset(surface, 0.5 * thickness + _CLEARANCE + height)
    return _closed(band, low.part(near).vertices, high.part(near).vertices)


def _closed(band: Surface, low: FloatArray, high: FloatArray) -> Surface:
    """Return the solid between a band on two levels."""
    count = len(low)
    walls: list[IntArray] = []
    for loop in band.boundary_loops:
        start, end = loop, np.roll(loop, -1)
        walls.append(ints(np.stack([start, end, end + count], axis=1), -1, 3))
        walls.append(ints(np.stack([start, end + count, start + count], axis=1), -1, 3))
    triangles = np.concatenate([band.triangles[:, ::-1], band.triangles + count, *walls])
    solid = Surface.single(np.concatenate([low, high]), triangles, "trim guide")
    if not solid.is_closed:
        raise GeometryError(
            "trim guide", "a ring that does not close", "a closed solid", "take the paper guide"
        )
    return solid
