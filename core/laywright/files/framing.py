"""The room a drawing takes, and a drawing made to fit a place on a page."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.lettering import width_of

__all__ = ["extent", "fitted"]

_SMALLEST_LETTER = 2.2  # mm, still read at arm's length
_LARGEST_LETTER = 4.5


def extent(drawing: Drawing) -> FloatArray:
    """Return the corners of the box that holds all lines and letters: (2, 2) float, mm."""
    corners = [drawing.bounds]
    for label in (shape for shape in drawing.shapes if isinstance(shape, Label)):
        half = 0.5 * np.array([width_of(label.text, label.height), 1.7 * label.height])
        c, s = abs(np.cos(label.turn)), abs(np.sin(label.turn))
        reach = np.array([c * half[0] + s * half[1], s * half[0] + c * half[1]])
        corners.append(np.array([label.at - reach, label.at + reach]))
    pen = max((drawing.styles.get(layer, Style()).width for layer in drawing.layers), default=0.0)
    every = np.concatenate(corners)
    return np.stack([every.min(axis=0) - pen, every.max(axis=0) + pen])


def fitted(drawing: Drawing, width: float, height: float) -> Drawing:
    """Return a drawing scaled to fit a box, its lowest corner at the origin.

    Pens and dashes keep their widths, and letters stay readable, so that a large thing drawn
    small is still clear.  A drawing is never enlarged more than tenfold.

    Parameters
    ----------
    drawing : Drawing
        Any drawing.
    width, height : float, mm
        The box.
    """
    labels = [shape for shape in drawing.shapes if isinstance(shape, Label)]
    low, high = drawing.bounds
    size = np.maximum(high - low, 1e-9)
    scale = float(min(np.min(np.array([width, height]) / size), 10.0))
    for _ in range(3):  # letters do not shrink with the rest: leave them their room
        scaled = _scaled(drawing, scale)
        taken = np.ptp(extent(scaled), axis=0)
        share = float(np.min(np.array([width, height]) / np.maximum(taken, 1e-9)))
        if not labels or share >= 1.0:
            break
        scale *= max(share, 0.2)
    if share < 1.0 and not labels:
        scaled = _scaled(drawing, scale * share)
    corner = extent(scaled)[0]
    return scaled.moved(-float(corner[0]), -float(corner[1]))


def _scaled(drawing: Drawing, scale: float) -> Drawing:
    shapes = tuple(
        Line(shape.layer, shape.points * scale, shape.closed, shape.fill)
        if isinstance(shape, Line)
        else Label(
            shape.layer,
            shape.text,
            (shape.at[0] * scale, shape.at[1] * scale),
            min(max(shape.height * scale, _SMALLEST_LETTER), _LARGEST_LETTER),
            shape.turn,
        )
        for shape in drawing.shapes
    )
    return Drawing(drawing.name, shapes, drawing.styles)
