"""A chart all round: how large something is in each direction of a plane."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from laywright.errors import InputError
from laywright.files.charts import Curve, round_steps
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.lettering import width_of

__all__ = ["polar_chart"]

_LETTER = 2.6
_DASHES: tuple[tuple[float, ...], ...] = ((), (4.0, 1.5), (1.0, 1.5))
_SPOKE = 30


def polar_chart(
    name: str, unit: str, curves: Sequence[Curve], *, arrow: str = "", radius: float = 27.0
) -> Drawing:
    """Return a chart all round.

    Parameters
    ----------
    name : str
        Title of the drawing.
    unit : str
        Of the values.
    curves : sequence of Curve
        Each point is a direction (radians, counter-clockwise from the right) and a value.
    arrow : str
        What stands at the arrow to the right, direction zero.
    radius : float, mm
        Of the outermost ring.

    Returns
    -------
    Drawing
        In mm, the middle at the origin; rings at round values with their numbers.

    Raises
    ------
    InputError
        If there is no curve of finite positive values.
    """
    if not curves or not all(
        len(curve.points) > 1
        and np.isfinite(curve.points).all()
        and (curve.points[:, 1] >= 0.0).all()
        for curve in curves
    ):
        raise InputError(
            f"the chart '{name}'", "no curve of positive values", "two points or more", "check them"
        )
    rings = round_steps(0.0, max(float(curve.points[:, 1].max()) for curve in curves), 4)[1:]
    scale = radius / rings[-1]
    styles = {"grid": Style(0.1, (), (0.7, 0.7, 0.7)), "axis": Style(0.3)}
    shapes: list[Line | Label] = []
    turn = np.radians(np.arange(0.0, 360.0, 3.0))
    circle = np.column_stack([np.cos(turn), np.sin(turn)])
    shapes += [Line("grid", ring * scale * circle, closed=True) for ring in rings]
    for degrees in range(0, 360, _SPOKE):
        angle = math.radians(degrees)
        end = radius * np.array([math.cos(angle), math.sin(angle)])
        shapes.append(Line("grid", np.stack([np.zeros(2), end])))
        if degrees:
            x, y = (end * (1.0 + 2.2 * _LETTER / radius)).tolist()
            shapes.append(Label("axis", f"{degrees}°", (x, y), _LETTER))
    for number, curve in enumerate(curves):
        layer = f"curve {number + 1}"
        styles[layer] = Style(0.6, _DASHES[number % len(_DASHES)])
        direction, value = curve.points.T
        points = scale * value[:, None] * np.column_stack([np.cos(direction), np.sin(direction)])
        shapes.append(Line(layer, points))
    # Numbers of the rings stand between two spokes, where no curve ends.
    at = math.radians(_SPOKE * 2.5)
    for ring in rings:
        place = (ring * scale * math.cos(at), ring * scale * math.sin(at))
        shapes.append(Label("axis", f"{ring:g}", place, 0.9 * _LETTER))
    shapes += _arrow(arrow, radius)
    shapes += _key(curves, unit, radius)
    return Drawing(name, tuple(shapes), styles)


def _arrow(text: str, radius: float) -> list[Line | Label]:
    tip = np.array([radius + 6.0, 0.0])
    barb = np.array([[-2.5, 1.2], [0.0, 0.0], [-2.5, -1.2]]) + tip
    shapes: list[Line | Label] = [
        Line("axis", np.stack([np.zeros(2), tip])),
        Line("axis", barb),
    ]
    if text:
        middle = float(tip[0]) + 2.0 + 0.5 * width_of(text, _LETTER)
        shapes.append(Label("axis", text, (middle, 0.0), _LETTER))
    return shapes


def _key(curves: Sequence[Curve], unit: str, radius: float) -> list[Line | Label]:
    """Return the names of the curves below the chart, each with a piece of its line."""
    shapes: list[Line | Label] = []
    for number, curve in enumerate(curves):
        y = -radius - (4.0 + 2.0 * number) * _LETTER
        shapes.append(Line(f"curve {number + 1}", np.array([[-radius, y], [-radius + 12.0, y]])))
        text = f"{curve.name}, {unit}"
        middle = -radius + 14.0 + 0.5 * width_of(text, _LETTER)
        shapes.append(Label("axis", text, (middle, y), _LETTER))
    return shapes
