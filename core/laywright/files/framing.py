"""The room a drawing takes, and a drawing made to fit a place on a page."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.lettering import width_of

__all__ = ["extent", "fitted", "gathered"]

_SMALLEST_LETTER = 2.2  # mm, still read at arm's length
_LARGEST_LETTER = 4.5
_GAP = 6.0


def extent(drawing: Drawing) -> FloatArray:
    """Return the corners of the box that holds all lines and letters: (2, 2) float, mm."""
    corners = [drawing.bounds]
    for label in (shape for shape in drawing.shapes if isinstance(shape, Label)):
        reach = _reach(label)
        corners.append(np.array([label.at - reach, label.at + reach]))
    pen = max((drawing.styles.get(layer, Style()).width for layer in drawing.layers), default=0.0)
    every = np.concatenate(corners)
    return np.stack([every.min(axis=0) - pen, every.max(axis=0) + pen])


def fitted(drawing: Drawing, width: float, height: float) -> Drawing:
    """Return a drawing scaled to fit a box, its lowest corner at the origin.

    Pens and dashes keep their widths, and letters stay readable, so that a large thing drawn
    small is still clear: a label that had to be enlarged moves away from the lines that it
    stood beside, and is left out where it would cover another.  A drawing is never enlarged
    more than tenfold.

    Parameters
    ----------
    drawing : Drawing
        Any drawing.
    width, height : float, mm
        The box.
    """
    low, high = drawing.bounds
    room = np.array([width, height])
    scale = float(min(np.min(room / np.maximum(high - low, 1e-9)), 10.0))
    scaled = _scaled(drawing, scale)
    for _ in range(8):  # letters do not shrink with the rest: leave them their room
        share = float(np.min(room / np.maximum(np.ptp(extent(scaled), axis=0), 1e-9)))
        if share >= 1.0:
            break
        scale *= max(share, 0.2)
        scaled = _scaled(drawing, scale)
    corner = extent(scaled)[0]
    return scaled.moved(-float(corner[0]), -float(corner[1]))


def gathered(
    name: str,
    drawings: Sequence[Drawing],
    across: int = 2,
    cell: tuple[float, float] = (85.0, 58.0),
) -> Drawing:
    """Return several drawings as one picture: in rows, each with its name below it.

    Parameters
    ----------
    name : str
        Title of the picture.
    drawings : sequence of Drawing
        In reading order; a layer has the style that the first drawing with it gives it.
    across : int
        Drawings in a row.
    cell : tuple of 2 float, mm
        Box for each.
    """
    shapes: list[Line | Label] = []
    styles: dict[str, Style] = {"name": Style()}
    for number, drawing in enumerate(drawings):
        row, column = divmod(number, across)
        small = fitted(drawing, cell[0], cell[1])
        taken = extent(small)[1]
        left = column * (cell[0] + _GAP) + 0.5 * (cell[0] - float(taken[0]))
        bottom = -row * (cell[1] + 2.0 * _GAP) + 0.5 * (cell[1] - float(taken[1]))
        shapes += small.moved(left, bottom).shapes
        middle = column * (cell[0] + _GAP) + 0.5 * cell[0]
        at = (middle, -row * (cell[1] + 2.0 * _GAP) - 0.7 * _GAP)
        shapes.append(Label("name", drawing.name, at, 2.6))
        styles = dict(drawing.styles) | styles
    return Drawing(name, tuple(shapes), styles)


def _scaled(drawing: Drawing, scale: float) -> Drawing:
    lines = [shape.points for shape in drawing.shapes if isinstance(shape, Line)]
    every = np.concatenate(lines) if lines else np.zeros((1, 2))
    low, high = every.min(axis=0) * scale, every.max(axis=0) * scale
    shapes: list[Line | Label] = []
    boxes: list[FloatArray] = []
    for shape in drawing.shapes:
        if isinstance(shape, Line):
            shapes.append(Line(shape.layer, shape.points * scale, shape.closed, shape.fill))
            continue
        letter = min(max(shape.height * scale, _SMALLEST_LETTER), _LARGEST_LETTER)
        at = np.array(shape.at) * scale
        label = Label(shape.layer, shape.text, (float(at[0]), float(at[1])), letter, shape.turn)
        if letter > shape.height * scale:
            reach = _reach(label)
            at = np.where(at < low, np.minimum(at, low - reach), at)
            at = np.where(at > high, np.maximum(at, high + reach), at)
            label = replace(label, at=(float(at[0]), float(at[1])))
            box = np.stack([at - reach, at + reach])
            if any((box[0] < other[1]).all() and (other[0] < box[1]).all() for other in boxes):
                continue
        reach = _reach(label)
        boxes.append(np.stack([label.at - reach, label.at + reach]))
        shapes.append(label)
    return Drawing(drawing.name, tuple(shapes), drawing.styles)


def _reach(label: Label) -> FloatArray:
    """Return half the width and half the height of the box around a label: (2,) float, mm."""
    half = 0.5 * np.array([width_of(label.text, label.height), 1.7 * label.height])
    c, s = abs(np.cos(label.turn)), abs(np.sin(label.turn))
    return floats([c * half[0] + s * half[1], s * half[0] + c * half[1]], 2)
