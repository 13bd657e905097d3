"""Marks engraved on the hidden side of a tile: its name and an arrow.

Letters and figures are drawn with one pen on a grid four wide and six high, an alphabet of our
own that prints well at a few millimetres.
"""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import shapely
from manifold3d import Manifold
from shapely.ops import polylabel

from laywright.arrays import FloatArray
from laywright.mould.solid import extruded

__all__ = ["ARROW", "engraving", "strokes"]

ARROW = "^"

_HIGH, _STEP = 6.0, 5.5
_LEAST, _MOST = 3.0, 12.0

# Each stroke is a run of points, two figures x and y for each point; a blank lifts the pen.
_PEN = {
    "A": "002640 1232",
    "B": "00063645443303 3342413000",
    "C": "46060040",
    "D": "00062644422000",
    "E": "46060040 0333",
    "F": "460600 0333",
    "G": "460600404323",
    "H": "0006 4640 0343",
    "I": "2026",
    "J": "4641301001",
    "K": "0006 460340",
    "L": "060040",
    "M": "0006234640",
    "N": "00064046",
    "O": "0006464000",
    "P": "0006464303",
    "Q": "0006464000 2240",
    "R": "0006464303 2340",
    "S": "45361605143341301001",
    "T": "0646 2620",
    "U": "06004046",
    "V": "062046",
    "W": "0610233046",
    "X": "0046 0640",
    "Y": "062346 2320",
    "Z": "06460040",
    "0": "0006464000 0046",
    "1": "152620 1030",
    "2": "064643030040",
    "3": "06464000 1343",
    "4": "30360242",
    "5": "460603434000",
    "6": "460600404303",
    "7": "064610",
    "8": "0006464000 0343",
    "9": "4046060343",
    "-": "1333",
    ARROW: "2026 042644",
}


def strokes(text: str) -> list[FloatArray]:
    """Return the strokes of a text as lines (k, 2), letters 6 high, the first at the origin.

    Examples
    --------
    >>> [line.tolist() for line in strokes("I-")]
    [[[2.0, 0.0], [2.0, 6.0]], [[6.5, 3.0], [8.5, 3.0]]]
    """
    lines = []
    for place, letter in enumerate(text.upper()):
        for run in _PEN[letter].split():
            points = np.array([int(figure) for figure in run], dtype=np.float64).reshape(-1, 2)
            lines.append(points + np.array([_STEP * place, 0.0]))
    return lines


def engraving(
    text: str,
    underside: shapely.Geometry,
    heights: tuple[float, float],
    pen: float,
    patch: int,
) -> Manifold | None:
    """Return the solid that engraves a text into the underside of a tile.

    Parameters
    ----------
    text : str
        Letters, figures, "-" and `ARROW`; it is turned round so that it reads right when the
        tile is looked at from below.
    underside : shapely.Geometry, mm
        Flat area to write on, in the grid's x and y.
    heights : tuple of 2 float, mm
        Where the strokes start, at or below the underside, and where they end.
    pen : float, mm
        Width of the strokes.
    patch : int
        Patch of the engraved faces.

    Returns
    -------
    Manifold or None
        None if there is no room for letters 3 mm high.
    """
    pieces = [part for part in getattr(underside, "geoms", [underside]) if part.area > 0.0]
    pieces = [part for part in pieces if part.geom_type == "Polygon"]
    if not pieces:
        return None
    spot = polylabel(max(pieces, key=lambda part: part.area), tolerance=0.5)
    lines = strokes(text)
    every = np.concatenate(lines)
    middle = 0.5 * (every.min(axis=0) + every.max(axis=0))
    reach = float(np.linalg.norm(np.ptp(every, axis=0))) / 2.0
    radius = float(shapely.distance(spot, underside.boundary)) - pen
    scale = min(radius / reach, _MOST / _HIGH)
    if scale * _HIGH < _LEAST:
        return None
    mirror = np.array([-scale, scale])
    bars = [
        _bar((start - middle) * mirror, (end - middle) * mirror, pen, np.array([spot.x, spot.y]))
        for line in lines
        for start, end in pairwise(line)
    ]
    return extruded(bars, *heights, patch)


def _bar(start: FloatArray, end: FloatArray, pen: float, at: FloatArray) -> FloatArray:
    """Return a stroke as a convex outline with blunt ends, counter-clockwise: (8, 2) float."""
    along = (end - start) / np.linalg.norm(end - start) * pen / 2.0
    side = np.array([-along[1], along[0]])
    near, far = math.tan(math.pi / 8.0), 1.0
    corners = [
        start - far * along - near * side,
        start - near * along - far * side,
        end + near * along - far * side,
        end + far * along - near * side,
        end + far * along + near * side,
        end + near * along + far * side,
        start - near * along + far * side,
        start - far * along + near * side,
    ]
    return np.asarray(np.stack(corners) + at, dtype=np.float64)
