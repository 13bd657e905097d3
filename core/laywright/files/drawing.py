"""A flat drawing at true scale: lines, areas and labels on named layers.

Patterns, roll plans, section drawings and pictures of solids are all built as one such value
and then written as SVG, DXF or PDF by the modules beside this one.  Coordinates are mm, x to
the right, y upwards; writers whose format counts downwards turn them themselves.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from laywright.arrays import FloatArray, floats

__all__ = ["Drawing", "Label", "Line", "Style"]


@dataclass(frozen=True)
class Style:
    """How a layer is drawn.

    Attributes
    ----------
    width : float, mm
        Pen width.
    dashes : tuple of float, mm
        Lengths of stroke and gap in turn; empty for a solid line.
    colour : tuple of 3 float
        Red, green, blue, each 0 to 1; every sheet is also readable in black and white.
    """

    width: float = 0.25
    dashes: tuple[float, ...] = ()
    colour: tuple[float, float, float] = (0.0, 0.0, 0.0)


@dataclass(frozen=True, eq=False)
class Line:
    """A run of straight pieces.

    Attributes
    ----------
    layer : str
        Layer, in plain words, for example ``"cut"``.
    points : (k, 2) float, mm
        The points, at least two.
    closed : bool
        Whether the last point joins the first.
    fill : tuple of 3 float or None
        Colour that the closed area is filled with, None for none.
    """

    layer: str
    points: FloatArray
    closed: bool = False
    fill: tuple[float, float, float] | None = None

    def __post_init__(self) -> None:
        object.__setattr__(self, "points", floats(self.points, -1, 2))


@dataclass(frozen=True)
class Label:
    """A line of text.

    Attributes
    ----------
    layer : str
        Layer it lies on.
    text : str
        The text.
    at : tuple of 2 float, mm
        Where its middle stands.
    height : float, mm
        Height of the capital letters.
    turn : float, radians
        Counter-clockwise from the x axis.
    """

    layer: str
    text: str
    at: tuple[float, float]
    height: float = 4.0
    turn: float = 0.0


@dataclass(frozen=True, eq=False)
class Drawing:
    """A named drawing.

    Attributes
    ----------
    name : str
        Title.
    shapes : tuple of Line or Label
        In drawing order: later ones lie on top.
    styles : dict of str to Style
        Style by layer; a layer without one gets the default.
    """

    name: str
    shapes: tuple[Line | Label, ...]
    styles: dict[str, Style] = field(default_factory=dict)

    @property
    def bounds(self) -> FloatArray:
        """Lowest and highest corner of all lines and label places: (2, 2) float, mm."""
        points = [
            shape.points if isinstance(shape, Line) else np.array([shape.at])
            for shape in self.shapes
        ]
        every = np.concatenate(points) if points else np.zeros((1, 2))
        return np.stack([every.min(axis=0), every.max(axis=0)])

    @property
    def layers(self) -> tuple[str, ...]:
        """Names of the layers in use, in the order of first use."""
        return tuple(dict.fromkeys(shape.layer for shape in self.shapes))

    def without(self, *layers: str) -> Drawing:
        """Return the drawing without these layers."""
        kept = tuple(shape for shape in self.shapes if shape.layer not in layers)
        return Drawing(self.name, kept, self.styles)

    def moved(self, x: float, y: float) -> Drawing:
        """Return the drawing shifted by (x, y) mm."""
        shapes = tuple(
            Line(s.layer, s.points + np.array([x, y]), s.closed, s.fill)
            if isinstance(s, Line)
            else Label(s.layer, s.text, (s.at[0] + x, s.at[1] + y), s.height, s.turn)
            for s in self.shapes
        )
        return Drawing(self.name, shapes, self.styles)
