"""A line chart as a drawing: axes with units, lines told apart by their dashes."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.errors import InputError
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.lettering import width_of

__all__ = ["Curve", "Level", "line_chart", "round_steps"]

_LETTER = 2.6
_ROW = 1.5  # letters from one name above the field to the next
_DOT = 0.6
_CROSS = np.array([[[-1.0, -1.0], [1.0, 1.0]], [[-1.0, 1.0], [1.0, -1.0]]])
_DASHES: tuple[tuple[float, ...], ...] = ((), (4.0, 1.5), (1.0, 1.5), (6.0, 1.5, 1.0, 1.5))


@dataclass(frozen=True, eq=False)
class Curve:
    """A line of a chart.

    Attributes
    ----------
    name : str
        What it shows.
    points : (k, 2) float
        Values along and up, in the units of the axes.
    """

    name: str
    points: FloatArray

    def __post_init__(self) -> None:
        object.__setattr__(self, "points", floats(self.points, -1, 2))


@dataclass(frozen=True)
class Level:
    """A line across the whole chart.

    Attributes
    ----------
    name : str
        What it means.
    at : float
        Where it crosses its axis, in the unit of that axis.
    """

    name: str
    at: float


def line_chart(
    name: str,
    along: str,
    up: str,
    curves: Sequence[Curve],
    levels: Sequence[Level] = (),
    marks: Sequence[Level] = (),
    *,
    dots: Sequence[Curve] = (),
    size: tuple[float, float] = (150.0, 75.0),
) -> Drawing:
    """Return a line chart.

    Parameters
    ----------
    name : str
        Title of the drawing.
    along, up : str
        Titles of the axes, each with its unit, for example ``"time, h"``.
    curves : sequence of Curve
        At least one, in order of importance.
    levels : sequence of Level
        Drawn across the chart at a height; their names stand above it.
    marks : sequence of Level
        Drawn upright at a place along; their names stand above the field.
    dots : sequence of Curve
        Points that no line joins, drawn as small crosses without a name.
    size : tuple of 2 float, mm
        Width and height of the field inside the axes.

    Returns
    -------
    Drawing
        In mm; the lower left corner of the field is the origin.

    Raises
    ------
    InputError
        If there is no curve with two points of finite numbers.
    """
    if not any(len(curve.points) > 1 for curve in curves) or not all(
        np.isfinite(curve.points).all() for curve in curves
    ):
        raise InputError(
            f"the chart '{name}'", "no curve of finite points", "two points or more", "check them"
        )
    every = np.concatenate([curve.points for curve in (*curves, *dots)])
    heights = np.append(every[:, 1], [level.at for level in levels])
    places = np.append(every[:, 0], [mark.at for mark in marks])
    steps_x = round_steps(float(places.min()), float(places.max()))
    steps_y = round_steps(float(heights.min()), float(heights.max()))
    origin = np.array([steps_x[0], steps_y[0]])
    scale = np.array(size) / np.array([steps_x[-1] - steps_x[0], steps_y[-1] - steps_y[0]])
    shapes = _field(steps_x, steps_y, origin, scale, size)
    shapes += _titles(along, up, steps_y, size)
    styles = {
        "grid": Style(0.1, (), (0.7, 0.7, 0.7)),
        "axis": Style(0.3),
        "level": Style(0.3, (1.0, 1.0)),
        "dot": Style(0.15, (), (0.35, 0.35, 0.35)),
    }
    for level in levels:
        y = (level.at - origin[1]) * scale[1]
        shapes.append(Line("level", np.array([[0.0, y], [size[0], y]])))
    shapes += _marks(marks, origin, scale, size)
    for cloud in dots:
        for place in (cloud.points - origin) * scale:
            shapes += [Line("dot", place + _DOT * cross) for cross in _CROSS]
    for number, curve in enumerate(curves):
        layer = f"curve {number + 1}"
        styles[layer] = Style(0.6, _DASHES[number % len(_DASHES)])
        if len(curve.points) > 1:
            shapes.append(Line(layer, (curve.points - origin) * scale))
    named = [level for level in levels if level.name]
    rows = sum(1 for mark in marks if mark.name)
    shapes += _key(curves, named, size[1] + (1.8 + _ROW * rows) * _LETTER)
    return Drawing(name, tuple(shapes), styles)


def round_steps(low: float, high: float, about: int = 6) -> tuple[float, ...]:
    """Return evenly spaced round numbers from at or below `low` to at or above `high`.

    Examples
    --------
    >>> round_steps(18.0, 61.0)
    (10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0)
    """
    if not high > low:
        low, high = low - 0.5, low + 0.5
    rough = (high - low) / about
    power = 10.0 ** math.floor(math.log10(rough))
    step = next(power * f for f in (1.0, 2.0, 5.0, 10.0) if power * f >= rough * (1.0 - 1e-9))
    first, last = math.floor(low / step + 1e-9), math.ceil(high / step - 1e-9)
    return tuple(round(step * k, 12) for k in range(first, last + 1))


def _field(
    steps_x: tuple[float, ...],
    steps_y: tuple[float, ...],
    origin: FloatArray,
    scale: FloatArray,
    size: tuple[float, float],
) -> list[Line | Label]:
    shapes: list[Line | Label] = []
    for step in steps_x:
        x = (step - origin[0]) * scale[0]
        shapes.append(Line("grid", np.array([[x, 0.0], [x, size[1]]])))
        shapes.append(Label("axis", f"{step:g}", (float(x), -1.2 * _LETTER), _LETTER))
    for step in steps_y:
        y = (step - origin[1]) * scale[1]
        text = f"{step:g}"
        shapes.append(Line("grid", np.array([[0.0, y], [size[0], y]])))
        shapes.append(
            Label("axis", text, (-0.5 * width_of(text, _LETTER) - 1.5, float(y)), _LETTER)
        )
    shapes.append(Line("axis", np.array([[0.0, size[1]], [0.0, 0.0], [size[0], 0.0]])))
    return shapes


def _titles(
    along: str, up: str, steps_y: tuple[float, ...], size: tuple[float, float]
) -> list[Line | Label]:
    widest = max(width_of(f"{step:g}", _LETTER) for step in steps_y)
    return [
        Label("axis", along, (0.5 * size[0], -3.2 * _LETTER), 1.1 * _LETTER),
        Label("axis", up, (-widest - 5.5, 0.5 * size[1]), 1.1 * _LETTER, 0.5 * math.pi),
    ]


def _marks(
    marks: Sequence[Level], origin: FloatArray, scale: FloatArray, size: tuple[float, float]
) -> list[Line | Label]:
    """Return upright lines, their names above the field, the first one highest.

    So no name lies on a curve, nor on the line of another mark.
    """
    shapes: list[Line | Label] = []
    left = sum(1 for mark in marks if mark.name)
    for mark in sorted(marks, key=lambda mark: mark.at):
        x = float((mark.at - origin[0]) * scale[0])
        top = size[1]
        if mark.name:
            top += _ROW * left * _LETTER
            left -= 1
            middle = x + 0.5 * width_of(mark.name, _LETTER) + 1.0
            shapes.append(Label("level", mark.name, (middle, top - 0.5 * _LETTER), _LETTER))
        shapes.append(Line("level", np.array([[x, 0.0], [x, top]])))
    return shapes


def _key(curves: Sequence[Curve], levels: Sequence[Level], y: float) -> list[Line | Label]:
    """Return the names of curves and levels above the field, each with a piece of its line."""
    named = [(f"curve {number}", curve.name) for number, curve in enumerate(curves, start=1)]
    named += [("level", level.name) for level in levels]
    if len(named) < 2:
        return []
    shapes: list[Line | Label] = []
    x = 0.0
    for layer, name in named:
        shapes.append(Line(layer, np.array([[x, y], [x + 12.0, y]])))
        width = width_of(name, _LETTER)
        shapes.append(Label("axis", name, (x + 13.5 + 0.5 * width, y), _LETTER))
        x += width + 20.0
    return shapes
