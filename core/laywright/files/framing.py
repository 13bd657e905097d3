"""The room a drawing takes, and a drawing made to fit a place on a page."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
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
    labels = (shape for shape in drawing.shapes if isinstance(shape, Label))
    return _box(drawing.bounds, labels, _widest_pen(drawing))


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
    points = [shape.points for shape in drawing.shapes if isinstance(shape, Line)]
    frame = np.array([[p.min(axis=0), p.max(axis=0)] for p in points]).reshape(-1, 2)
    labels = [(n, s) for n, s in enumerate(drawing.shapes) if isinstance(s, Label)]
    if not len(frame):
        frame = np.array([label.at for _, label in labels] or [(0.0, 0.0)])
    bounds = np.stack([frame.min(axis=0), frame.max(axis=0)])
    pen = _widest_pen(drawing)
    room = np.array([width, height])
    scale = float(min(np.min(room / np.maximum(np.ptp(bounds, axis=0), 1e-9)), 10.0))
    for _ in range(8):  # letters do not shrink with the rest: leave them their room
        kept = _scaled_labels(labels, bounds, scale)
        box = _box(bounds * scale, kept.values(), pen)
        share = float(np.min(room / np.maximum(np.ptp(box, axis=0), 1e-9)))
        if share >= 1.0:
            break
        scale *= max(share, 0.2)
    kept = _scaled_labels(labels, bounds, scale)
    corner = _box(bounds * scale, kept.values(), pen)[0]
    shapes: list[Line | Label] = []
    for number, shape in enumerate(drawing.shapes):
        if isinstance(shape, Line):
            shapes.append(
                Line(shape.layer, shape.points * scale - corner, shape.closed, shape.fill)
            )
        elif number in kept:
            x, y = (np.array(kept[number].at) - corner).tolist()
            shapes.append(replace(kept[number], at=(x, y)))
    return Drawing(drawing.name, tuple(shapes), drawing.styles)


def gathered(
    name: str,
    drawings: Sequence[Drawing],
    across: int = 2,
    cell: tuple[float, float] = (85.0, 50.0),
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


def _scaled_labels(
    labels: list[tuple[int, Label]], bounds: FloatArray, scale: float
) -> dict[int, Label]:
    """Return the labels that stay when the lines within `bounds` are scaled, by their numbers."""
    low, high = bounds * scale
    kept: dict[int, Label] = {}
    boxes: list[FloatArray] = []
    for number, label in labels:
        letter = min(max(label.height * scale, _SMALLEST_LETTER), _LARGEST_LETTER)
        at = np.array(label.at) * scale
        scaled = replace(label, height=letter)
        reach = _reach(scaled)
        if letter > label.height * scale:
            at = np.where(at < low, np.minimum(at, low - reach), at)
            at = np.where(at > high, np.maximum(at, high + reach), at)
            covers = (
                (at - reach < other[1]).all() and (other[0] < at + reach).all() for other in boxes
            )
            if any(covers):
                continue
        boxes.append(np.stack([at - reach, at + reach]))
        kept[number] = replace(scaled, at=(float(at[0]), float(at[1])))
    return kept


def _box(bounds: FloatArray, labels: Iterable[Label], pen: float) -> FloatArray:
    """Return the corners of the box around lines within `bounds` and labels: (2, 2) float."""
    corners = [bounds]
    for label in labels:
        reach = _reach(label)
        corners.append(np.array([label.at - reach, label.at + reach]))
    every = np.concatenate(corners)
    return np.stack([every.min(axis=0) - pen, every.max(axis=0) + pen])


def _widest_pen(drawing: Drawing) -> float:
    return max((drawing.styles.get(layer, Style()).width for layer in drawing.layers), default=0.0)


def _reach(label: Label) -> FloatArray:
    """Return half the width and half the height of the box around a label: (2,) float, mm."""
    half = 0.5 * np.array([width_of(label.text, label.height), 1.7 * label.height])
    c, s = abs(np.cos(label.turn)), abs(np.sin(label.turn))
    return floats([c * half[0] + s * half[1], s * half[0] + c * half[1]], 2)
