"""The drawing of a length of cloth with its pieces at true scale."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry import Polygon

from laywright.arrays import FloatArray
from laywright.cloth.patterns.drawing_marks import arrow, check_bars, drawing_of
from laywright.cloth.patterns.pattern import Pattern
from laywright.cloth.roll.bottom_left import Rectangle
from laywright.cloth.roll.roll_layout import Placement, RollLayout, placed_openings, placed_outline
from laywright.files.drawing import Drawing, Label, Line

__all__ = ["roll_drawing"]

_LETTER = 16.0
_LONGEST_NAME = 14


def roll_drawing(layout: RollLayout, patterns: Sequence[Pattern]) -> Drawing:
    """Return the drawing of a roll or an offcut, the warp along x.

    Layers: ``roll``, ``unused edge``, ``fault``, ``left over``, ``cut``, ``label`` (number in
    the order of cutting, and name), ``warp`` (arrow as on the pattern), ``check bar``
    (100 mm both ways).

    Parameters
    ----------
    layout : RollLayout
        The roll.
    patterns : sequence of Pattern
        All patterns of the job; those named by the layout's placements are drawn.

    Returns
    -------
    Drawing
    """
    shapes: list[Line | Label] = [Line("roll", layout.edge, closed=True)]
    if layout.unused > 0.0:
        shapes += [
            Line("unused edge", np.array([[0.0, y], [layout.length, y]]))
            for y in (layout.unused, layout.width - layout.unused)
        ]
    for fault in layout.faults:
        shapes += _fault(fault)
    for rest in layout.left_over:
        shapes += _rest(rest)
    for number, placement in enumerate(layout.placements, 1):
        shapes += _placed(patterns[placement.pattern], placement, number)
    if layout.to_buy > layout.length:
        past = np.array([[layout.length, 0.0], [layout.to_buy, 0.0]])
        top = np.array([0.0, layout.width])
        shapes.append(Line("left over", np.concatenate([past, past[::-1] + top])))
    shapes += _titles(layout)
    shapes += check_bars(120.0, -1.0)
    return drawing_of(layout.title, shapes)


def _titles(layout: RollLayout) -> list[Line | Label]:
    bought = f", buy {layout.to_buy / 1000.0:.2f} m" if layout.to_buy > 0.0 else ""
    of = "a roll" if layout.name == "roll" else "an offcut"
    middle = 0.5 * layout.length
    return [
        Label("label", layout.title, (middle, layout.width + 2.2 * _LETTER), _LETTER),
        Label(
            "label",
            f"{layout.length / 1000.0:.2f} m of {of} {layout.width:.0f} mm wide{bought}; "
            f"{100.0 * layout.share_used:.0f} % used; warp this way",
            (middle, layout.width + 0.9 * _LETTER),
            0.6 * _LETTER,
        ),
        *arrow("warp", np.array([4.0, -_LETTER]), np.array([1.0, 0.0]), 60.0),
    ]


def _fault(fault: Rectangle) -> list[Line | Label]:
    low_x, high_x, low_y, high_y = fault
    corners = np.array([[low_x, low_y], [high_x, low_y], [high_x, high_y], [low_x, high_y]])
    return [
        Line("fault", corners, closed=True),
        Line("fault", corners[[0, 2]]),
        Line("fault", corners[[1, 3]]),
    ]


def _rest(rest: Rectangle) -> list[Line | Label]:
    low_x, high_x, low_y, high_y = rest
    corners = np.array([[low_x, low_y], [high_x, low_y], [high_x, high_y], [low_x, high_y]])
    wide, high = high_x - low_x, high_y - low_y
    text = f"rest {wide:.0f} x {high:.0f} mm"
    letter = float(
        np.clip(min(0.2 * min(wide, high), 1.2 * max(wide, high) / len(text)), 4.0, 12.0)
    )
    turn = 0.5 * np.pi if high > wide else 0.0
    at = (0.5 * (low_x + high_x), 0.5 * (low_y + high_y))
    return [Line("left over", corners, closed=True), Label("left over", text, at, letter, turn)]


def _placed(pattern: Pattern, placement: Placement, number: int) -> list[Line | Label]:
    outline = placed_outline(pattern, placement)
    at, room = _middle(outline)
    text = f"{number}: {placement.name}"
    lines = [text] if len(text) <= _LONGEST_NAME else [f"{number}:", placement.name]
    if placement.face_down:
        lines.append("face down")
    longest = max(len(line) for line in lines)
    letter = float(np.clip(min(2.4 * room / longest, 0.3 * room), 3.0, 30.0))
    ahead = np.array([-1.0 if placement.turned else 1.0, 0.0])
    low = at - np.array([0.0, 1.4 * letter * (len(lines) - 1) + 1.3 * letter])
    cuts = [outline, *placed_openings(pattern, placement)]
    shapes: list[Line | Label] = [Line("cut", cut, closed=True) for cut in cuts]
    shapes += [Line("cut", placement.spot.on(slit)) for slit in _slits(pattern, placement)]
    shapes += [
        Label("label", line, (float(at[0]), float(at[1]) - 1.4 * letter * row), letter)
        for row, line in enumerate(lines)
    ]
    return [*shapes, *arrow("warp", low - 1.5 * letter * ahead, ahead, 3.0 * letter)]


def _slits(pattern: Pattern, placement: Placement) -> tuple[FloatArray, ...]:
    return pattern.slits if placement.strip is None else ()


def _middle(outline: FloatArray) -> tuple[FloatArray, float]:
    """Return the middle of the largest circle in an outline, and its radius, mm."""
    points = shapely.get_coordinates(shapely.maximum_inscribed_circle(Polygon(outline)))
    return points[0], float(np.hypot(*(points[1] - points[0])))
