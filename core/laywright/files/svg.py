"""SVG at true scale: one user unit is one millimetre.

Sizes carry their unit, for a bare number would be taken as 1/96 inch (CSS absolute units).
SVG counts y downwards; every point is turned once, here, and text is never mirrored.
"""

from __future__ import annotations

import math
from itertools import groupby
from xml.sax.saxutils import escape, quoteattr

import numpy as np

from laywright.arrays import FloatArray
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.framing import extent
from laywright.files.lettering import CAPITAL, clean

__all__ = ["svg_bytes", "svg_element"]

_MARGIN = 2.0  # mm around the drawing


def svg_bytes(drawing: Drawing) -> bytes:
    """Return an SVG file of the drawing at true scale.

    Parameters
    ----------
    drawing : Drawing
        In mm; a point (x, y) of it lies x - left to the right and top - y down from the
        corner of the page, where left and top are the extent of the drawing with a margin.

    Returns
    -------
    bytes
        UTF-8; width and height in mm, the view box in mm.
    """
    head = '<?xml version="1.0" encoding="UTF-8" standalone="no"?>\n'
    return f"{head}{svg_element(drawing, _MARGIN)}\n".encode()


def svg_element(drawing: Drawing, margin: float = 0.0) -> str:
    """Return the ``<svg>`` element alone, for a page that holds it."""
    low, high = extent(drawing)
    left, top = float(low[0]) - margin, float(high[1]) + margin
    width, height = (max(float(v) + 2.0 * margin, 1.0) for v in high - low)
    name = escape(clean(drawing.name))
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{_mm(width)}mm" height="{_mm(height)}mm" '
        f'viewBox="0 0 {_mm(width)} {_mm(height)}" role="img" fill="none" '
        'stroke-linejoin="round" stroke-linecap="round">',
        f"<title>{name}</title>",
    ]
    corner = np.array([left, top])
    for layer, shapes in groupby(drawing.shapes, key=lambda shape: shape.layer):
        style = drawing.styles.get(layer, Style())
        parts.append(f"<g data-layer={quoteattr(clean(layer))} {_pen(style)}>")
        parts.extend(
            _path(shape, corner) if isinstance(shape, Line) else _text(shape, style, corner)
            for shape in shapes
        )
        parts.append("</g>")
    parts.append("</svg>")
    return "\n".join(parts)


def _pen(style: Style) -> str:
    dashes = " ".join(_mm(length) for length in style.dashes)
    dashed = f' stroke-dasharray="{dashes}"' if dashes else ""
    return f'stroke="{_colour(style.colour)}" stroke-width="{_mm(style.width)}"{dashed}'


def _path(line: Line, corner: FloatArray) -> str:
    points = (line.points - corner) * np.array([1.0, -1.0])
    steps = "L".join(f"{_mm(x)} {_mm(y)}" for x, y in points.tolist())
    end = "Z" if line.closed else ""
    fill = f' fill="{_colour(line.fill)}"' if line.fill is not None else ""
    return f'<path d="M{steps}{end}"{fill}/>'


def _text(label: Label, style: Style, corner: FloatArray) -> str:
    x, y = label.at[0] - float(corner[0]), float(corner[1]) - label.at[1]
    drop = 0.5 * label.height
    at = f'x="{_mm(x)}" y="{_mm(y + drop)}"'
    degrees = -math.degrees(label.turn)
    turned = f' transform="rotate({_mm(degrees)} {_mm(x)} {_mm(y)})"' if label.turn else ""
    return (
        f'<text {at}{turned} fill="{_colour(style.colour)}" stroke="none" text-anchor="middle" '
        f'font-family="Helvetica, Arial, sans-serif" font-size="{_mm(label.height / CAPITAL)}">'
        f"{escape(clean(label.text))}</text>"
    )


def _mm(value: float) -> str:
    return f"{round(value, 4) + 0.0:.4f}".rstrip("0").rstrip(".")


def _colour(colour: tuple[float, float, float]) -> str:
    channels = (round(255 * min(max(part, 0.0), 1.0)) for part in colour)
    return "#" + "".join(f"{channel:02x}" for channel in channels)
