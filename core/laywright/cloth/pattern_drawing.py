"""Drawings at true scale: one pattern, and one roll with its pieces."""

from __future__ import annotations

import math

import numpy as np
import shapely
from shapely.geometry import Polygon

from laywright.arrays import FloatArray
from laywright.cloth.pattern import Pattern
from laywright.cloth.roll import Placement, RollLayout, placed_outline
from laywright.files.drawing import Drawing, Label, Line, Style

__all__ = ["CHECK_BAR", "pattern_drawing", "roll_drawing"]

CHECK_BAR = 100.0

_STYLES = {
    "cut": Style(0.5),
    "trim": Style(0.25, (4.0, 2.0)),
    "lap": Style(0.25, (1.5, 1.5)),
    "datum": Style(0.35, (), (0.0, 0.2, 0.6)),
    "notch": Style(0.5),
    "label": Style(0.25),
    "check bar": Style(0.25, (), (0.4, 0.4, 0.4)),
    "roll": Style(0.5),
}
_SPACING = 1.7


def pattern_drawing(pattern: Pattern, job: str = "") -> Drawing:
    """Return the drawing of a pattern at true scale.

    Layers: ``cut``, ``trim``, ``lap``, ``datum`` (start point, datum arrow, warp arrow, middle),
    ``notch``, ``label`` and ``check bar`` (100 mm both ways).

    Parameters
    ----------
    pattern : Pattern
        The pattern.
    job : str
        Name of the job, printed with the label if given.

    Returns
    -------
    Drawing
    """
    shapes: list[Line | Label] = [Line("cut", pattern.cut, closed=True)]
    shapes += [Line("cut", opening, closed=True) for opening in pattern.openings]
    shapes += [Line("trim", edge, closed=True) for edge in (pattern.trim, *pattern.holes)]
    shapes += [Line("cut", slit) for slit in pattern.slits]
    shapes += [Line("lap", lap) for lap in pattern.laps]
    shapes += [Line("notch", notch) for notch in pattern.notches]
    size = float(np.clip(0.12 * np.sqrt(pattern.area), 8.0, 60.0))
    shapes += _arrow("datum", pattern.datum, pattern.datum_direction, size)
    shapes += _cross("datum", pattern.centre, 0.1 * size)
    shapes += _label(pattern, job, size)
    shapes += _check_bars(float(pattern.cut[:, 0].min()), float(pattern.cut[:, 1].min()) - 12.0)
    name = f"{job} {pattern.name}".strip()
    return Drawing(name, tuple(shapes), _used(shapes))


def roll_drawing(layout: RollLayout, patterns: tuple[Pattern, ...]) -> Drawing:
    """Return the drawing of a roll with its pieces, the roll's length along x.

    Parameters
    ----------
    layout : RollLayout
        The roll.
    patterns : tuple of Pattern
        Patterns of the job; those named by the layout's placements are drawn.

    Returns
    -------
    Drawing
    """
    corners = np.array(
        [[0.0, 0.0], [layout.length, 0.0], [layout.length, layout.width], [0.0, layout.width]]
    )
    shapes: list[Line | Label] = [Line("roll", corners, closed=True)]
    for placement in layout.placements:
        shapes += _placed(patterns[placement.pattern], placement)
    shapes.append(
        Label(
            "label",
            f"{layout.cloth}: {layout.length / 1000.0:.2f} m of a roll {layout.width:.0f} mm wide",
            (layout.length / 2.0, layout.width + 25.0),
            16.0,
        )
    )
    return Drawing(f"roll of {layout.cloth}", tuple(shapes), _used(shapes))


def _placed(pattern: Pattern, placement: Placement) -> list[Line | Label]:
    outline = placed_outline(pattern, placement)
    spot = shapely.maximum_inscribed_circle(Polygon(outline))
    (x, y), rim = shapely.get_coordinates(spot)[0], shapely.get_coordinates(spot)[1]
    height = float(np.clip(0.3 * np.hypot(*(rim - (x, y))), 4.0, 30.0))
    ahead = np.array([-1.0 if placement.turned else 1.0, 0.0])
    at = np.array([x, y - 1.5 * height])
    return [
        Line("cut", outline, closed=True),
        Label("label", pattern.name, (float(x), float(y)), height),
        *_arrow("datum", at - 1.5 * height * ahead, ahead, 3.0 * height),
    ]


def _used(shapes: list[Line | Label]) -> dict[str, Style]:
    return {shape.layer: _STYLES[shape.layer] for shape in shapes}


def _arrow(layer: str, start: FloatArray, direction: FloatArray, size: float) -> list[Line | Label]:
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


def _cross(layer: str, at: FloatArray, size: float) -> list[Line | Label]:
    x, y = np.array([size, 0.0]), np.array([0.0, size])
    return [Line(layer, np.stack([at - x, at + x])), Line(layer, np.stack([at - y, at + y]))]


def _label(pattern: Pattern, job: str, size: float) -> list[Line | Label]:
    """Return the lines of the label with the warp arrow, on the side the datum arrow leaves."""
    degrees = math.degrees(pattern.angle)
    texts = [
        *([job] if job else []),
        f"Ply {pattern.ply}"
        + ("" if pattern.name == f"ply {pattern.ply}" else f", {pattern.name}"),
        pattern.cloth,
        f"{degrees:+.0f} deg from the datum arrow" if degrees else "along the datum arrow",
        "this side up, away from the mould",
        "warp this way",
    ]
    longest = max(len(text) for text in texts)
    height = float(np.clip(1.2 * np.ptp(pattern.trim[:, 0]) / longest / 2.0, 2.5, 8.0))
    x, y = pattern.datum.tolist()
    tall = _SPACING * height * (len(texts) + 1)
    top = y + 0.3 * size + tall if pattern.datum_direction[1] < 0.0 else y - 0.3 * size
    shapes: list[Line | Label] = [
        Label("label", text, (x, top - _SPACING * height * (line + 1)), height)
        for line, text in enumerate(texts)
    ]
    low = np.array([x - 0.5 * size, top - tall])
    shapes += _arrow("label", low, np.array([1.0, 0.0]), size)
    return shapes


def _check_bars(x: float, y: float) -> list[Line | Label]:
    """Return two bars of 100 mm with end ticks, their corner at (x, y)."""
    corner = np.array([x, y - CHECK_BAR])
    shapes: list[Line | Label] = []
    for along in (np.array([1.0, 0.0]), np.array([0.0, 1.0])):
        left = 3.0 * np.array([-along[1], along[0]])
        end = corner + CHECK_BAR * along
        shapes.append(Line("check bar", np.stack([corner, end])))
        shapes += [Line("check bar", np.stack([at - left, at + left])) for at in (corner, end)]
    text = f"both bars are {CHECK_BAR:.0f} mm long: measure them before you cut"
    shapes.append(Label("check bar", text, (x + 75.0, y - CHECK_BAR + 10.0), 4.0))
    return shapes
