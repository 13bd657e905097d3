"""Marks engraved on the hidden sides of a tile: its name, arrows, and where the pull goes.

Letters and figures are drawn with one pen on a grid four wide and six high, an alphabet of our
own that prints well at a few millimetres.  They are never drawn so small that the pen would
close the space between two strokes.
"""

from __future__ import annotations

import math

import numpy as np
import shapely
from manifold3d import Manifold
from shapely.ops import polylabel

from laywright.arrays import FloatArray
from laywright.mould.solid import extruded

__all__ = ["ARROW", "AWAY", "drawn", "engraving", "strokes"]

ARROW = "^"
AWAY = "⊗"
"""A ring with a cross, as draughtsmen show what points away from the reader; it ends a text."""

_HIGH, _STEP = 6.0, 5.5
_LEAST_PENS, _MOST = 4.5, 12.0

# Each stroke is a run of points, two figures x and y for each point; a blank lifts the pen.
_PEN = {
    "A": "0004264440 0242",
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
    "W": "0600234046",
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
    AWAY: "204062644626040220 1155 1551",
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
        Letters, figures, "-", `ARROW`, and `AWAY` at the end; it is turned round so that it
        reads right when the tile is looked at from below.
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
        None if there is no room for letters as high as 4.5 pens.
    """
    bars = drawn([line * [-1.0, 1.0] for line in strokes(text)], underside, pen)
    return None if bars is None else extruded(bars, *heights, patch)


def drawn(lines: list[FloatArray], room: shapely.Geometry, pen: float) -> list[FloatArray] | None:
    """Return strokes as outlines (8, 2), mm, as large as a room allows.

    Parameters
    ----------
    lines : list of (k, 2) float
        The strokes, letters 6 high.
    room : shapely.Geometry, mm
        Where it may stand; the widest place of its largest part is taken.
    pen : float, mm
        Width of the strokes.

    Returns
    -------
    list or None
        None if there is no room for letters as high as 4.5 pens.
    """
    pieces = [part for part in getattr(room, "geoms", [room]) if part.area > 0.0]
    pieces = [part for part in pieces if part.geom_type == "Polygon"]
    if not pieces:
        return None
    largest = max(pieces, key=lambda part: part.area)
    spot = polylabel(largest, tolerance=0.5)
    every = np.concatenate(lines)
    middle = 0.5 * (every.min(axis=0) + every.max(axis=0))
    reach = float(np.linalg.norm(np.ptp(every, axis=0))) / 2.0
    radius = float(shapely.distance(spot, room.boundary)) - pen
    scale = min(radius / reach, _MOST / _HIGH)
    if scale * _HIGH < _LEAST_PENS * pen:
        return None
    ends = [(line[:-1], line[1:]) for line in lines]
    start, end = (np.concatenate([pair[i] for pair in ends]) for i in (0, 1))
    at = np.array([spot.x, spot.y])
    return list(_bars((start - middle) * scale + at, (end - middle) * scale + at, pen))


def _bars(start: FloatArray, end: FloatArray, pen: float) -> FloatArray:
    """Return strokes as convex outlines with blunt ends, counter-clockwise: (k, 8, 2) float."""
    along = end - start
    along *= pen / 2.0 / np.linalg.norm(along, axis=1, keepdims=True)
    side = np.stack([-along[:, 1], along[:, 0]], axis=1)
    near = math.tan(math.pi / 8.0)
    outline = [
        start - along - near * side,
        start - near * along - side,
        end + near * along - side,
        end + along - near * side,
        end + along + near * side,
        end + near * along + side,
        start - near * along + side,
        start - along + near * side,
    ]
    return np.asarray(np.stack(outline, axis=1), dtype=np.float64)
