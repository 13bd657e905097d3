"""The marks of cloth drawings: layers with their pens, arrows, crosses, check bars."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from laywright.arrays import FloatArray
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.lettering import width_of

__all__ = ["CHECK_BAR", "STYLES", "arrow", "check_bars", "cross", "drawing_of"]

CHECK_BAR = 100.0
"""Length of a check bar, mm."""

STYLES = {
    "cut": Style(0.5),
    "trim": Style(0.25, (4.0, 2.0)),
    "lap": Style(0.25, (1.5, 1.5)),
    "local": Style(0.35, (3.0, 1.5), (0.1, 0.45, 0.25)),
    "seam": Style(0.35, (8.0, 2.0, 1.5, 2.0)),
    "datum": Style(0.35, (), (0.0, 0.2, 0.6)),
    "warp": Style(0.35, (1.0, 1.0)),
    "notch": Style(0.5),
    "label": Style(0.25),
    "check bar": Style(0.25, (), (0.4, 0.4, 0.4)),
    "roll": Style(0.5),
    "unused edge": Style(0.18, (6.0, 3.0), (0.4, 0.4, 0.4)),
    "fault": Style(0.25, (), (0.6, 0.1, 0.1)),
    "left over": Style(0.18, (2.0, 2.0), (0.4, 0.4, 0.4)),
}
"""Pen of every layer of a cloth drawing."""


def drawing_of(name: str, shapes: Iterable[Line | Label]) -> Drawing:
    """Return a drawing with the pens of its layers."""
    every = tuple(shapes)
    return Drawing(name, every, {shape.layer: STYLES[shape.layer] for shape in every})


def arrow(layer: str, start: FloatArray, direction: FloatArray, size: float) -> list[Line | Label]:
    """Return an arrow of length `size` with a ring at its start."""
    along = np.asarray(direction)
    left = np.array([-along[1], along[0]])
    tip = start + size * along
    head = np.stack(
        [tip - 0.2 * size * (along - 0.4 * left), tip, tip - 0.2 * size * (along + 0.4 * left)]
    )
    turn = 2.0 * np.pi * np.arange(16) / 16
    circle = start + 0.06 * size * np.stack([np.cos(turn), np.sin(turn)], axis=1)
    return [
        Line(layer, np.stack([start, tip])),
        Line(layer, head),
        Line(layer, circle, closed=True),
    ]


def cross(layer: str, at: FloatArray, size: float) -> list[Line | Label]:
    """Return an upright cross with arms of length `size`."""
    x, y = np.array([size, 0.0]), np.array([0.0, size])
    return [Line(layer, np.stack([at - x, at + x])), Line(layer, np.stack([at - y, at + y]))]


def check_bars(x: float, y: float) -> list[Line | Label]:
    """Return two bars of 100 mm with end ticks, below and to the right of (x, y)."""
    corner = np.array([x, y - CHECK_BAR])
    shapes: list[Line | Label] = []
    for along in (np.array([1.0, 0.0]), np.array([0.0, 1.0])):
        left = 3.0 * np.array([-along[1], along[0]])
        end = corner + CHECK_BAR * along
        shapes.append(Line("check bar", np.stack([corner, end])))
        shapes += [Line("check bar", np.stack([at - left, at + left])) for at in (corner, end)]
    text = f"both bars are {CHECK_BAR:.0f} mm long: measure them before you cut"
    shapes.append(
        Label("check bar", text, (x + 8.0 + 0.5 * width_of(text, 4.0), y - CHECK_BAR + 10.0), 4.0)
    )
    return shapes
