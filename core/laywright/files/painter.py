"""A drawing put on a PDF page, as vectors, in mm."""

from __future__ import annotations

import bisect
import math

from reportlab.lib.units import mm
from reportlab.pdfbase.pdfmetrics import stringWidth
from reportlab.pdfgen.canvas import Canvas

from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.lettering import CAPITAL, latin

__all__ = ["FONT", "FONT_BOLD", "mm", "paint", "shortened", "write"]

FONT = "Helvetica"
FONT_BOLD = "Helvetica-Bold"


def paint(canvas: Canvas, drawing: Drawing, left: float = 0.0, bottom: float = 0.0) -> None:
    """Paint a drawing at true scale.

    Parameters
    ----------
    canvas : Canvas
        Its unit is the point, 1/72 inch.
    drawing : Drawing
        In mm.
    left, bottom : float, mm
        Where the origin of the drawing comes to lie on the canvas.
    """
    canvas.saveState()
    canvas.translate(left * mm, bottom * mm)
    canvas.setLineJoin(1)
    canvas.setLineCap(1)
    for shape in drawing.shapes:
        style = drawing.styles.get(shape.layer, Style())
        if isinstance(shape, Line):
            _line(canvas, shape, style)
        else:
            _label(canvas, shape, style)
    canvas.restoreState()


def write(
    canvas: Canvas,
    text: str,
    x: float,
    y: float,
    capital: float,
    font: str = FONT,
    room: float = math.inf,
) -> None:
    """Write a line of text, cut short where it would leave its room.

    Parameters
    ----------
    canvas : Canvas
        The page.
    text : str
        The text.
    x, y : float, mm
        Where it begins, on the base line.
    capital : float, mm
        Height of the capital letters.
    font : str
        Name of the font.
    room : float, mm
        Largest width.
    """
    size = capital * mm / CAPITAL
    canvas.setFont(font, size)
    canvas.drawString(x * mm, y * mm, shortened(text, font, size, room * mm))


def shortened(text: str, font: str, size: float, room: float) -> str:
    """Return a line of text as it can be printed, cut short to a width in points."""
    line = latin(text)
    if stringWidth(line, font, size) <= room:
        return line
    fits = bisect.bisect_right(
        range(len(line)), room, key=lambda n: stringWidth(f"{line[:n]}…", font, size)
    )
    return f"{line[: max(fits - 1, 0)].rstrip()}…"


def _line(canvas: Canvas, line: Line, style: Style) -> None:
    canvas.setLineWidth(style.width * mm)
    canvas.setDash([length * mm for length in style.dashes])
    canvas.setStrokeColorRGB(*style.colour)
    path = canvas.beginPath()
    points = (line.points * mm).tolist()
    path.moveTo(*points[0])
    for point in points[1:]:
        path.lineTo(*point)
    if line.closed:
        path.close()
    if line.fill is not None:
        canvas.setFillColorRGB(*line.fill)
    canvas.drawPath(path, stroke=1, fill=int(line.fill is not None), fillMode=0)


def _label(canvas: Canvas, label: Label, style: Style) -> None:
    canvas.saveState()
    canvas.setFillColorRGB(*style.colour)
    canvas.translate(label.at[0] * mm, label.at[1] * mm)
    canvas.rotate(math.degrees(label.turn))
    canvas.setFont(FONT, label.height * mm / CAPITAL)
    canvas.drawCentredString(0.0, -0.5 * label.height * mm, latin(label.text))
    canvas.restoreState()
