"""Boxes to tick and cards with pictures, on the pages of a PDF."""

from __future__ import annotations

from typing import Any
from xml.sax.saxutils import escape

from reportlab.lib import colors
from reportlab.lib.styles import ParagraphStyle
from reportlab.platypus import Flowable, Paragraph
from reportlab.platypus import Table as Grid

from laywright.files.drawing import Drawing
from laywright.files.framing import extent, fitted
from laywright.files.lettering import latin
from laywright.files.page import Card
from laywright.files.painter import FONT, FONT_BOLD, mm, paint

__all__ = ["Box", "Vectors", "card_grid"]

_ACROSS = 2
_PICTURE = (38.0, 33.0)  # mm
_TITLE = ParagraphStyle("card title", fontName=FONT_BOLD, fontSize=13, leading=15)
_LINE = ParagraphStyle("card line", fontName=FONT, fontSize=10.5, leading=12.5)


class Box(Flowable):  # type: ignore[misc]
    """An empty box to tick."""

    def __init__(self) -> None:
        super().__init__()
        self.width = self.height = 5.0 * mm

    def draw(self) -> None:
        """Paint the box."""
        self.canv.setLineWidth(1.0)
        self.canv.rect(0, 0, self.width, self.height)


class Vectors(Flowable):  # type: ignore[misc]
    """A drawing at the scale it has."""

    def __init__(self, drawing: Drawing) -> None:
        super().__init__()
        self.drawing = drawing
        self.width, self.height = (float(length) * mm for length in extent(drawing)[1])
        self.hAlign = "CENTER"

    def draw(self) -> None:
        """Paint the drawing."""
        paint(self.canv, self.drawing)


class _Blank(Flowable):  # type: ignore[misc]
    """A line to write on."""

    def __init__(self, width: float) -> None:
        super().__init__()
        self.width, self.height = width, 6.5 * mm

    def draw(self) -> None:
        """Paint the line."""
        self.canv.setLineWidth(0.4)
        self.canv.line(0, 0.5 * mm, self.width, 0.5 * mm)


def card_grid(cards: tuple[Card, ...], width: float) -> Flowable:
    """Return cards two in a row, within a width in points; a row is never torn apart."""
    column = width / _ACROSS
    shown: list[Any] = [_card(card, column) for card in cards]
    shown += [""] * (-len(shown) % _ACROSS)
    rows = [shown[start : start + _ACROSS] for start in range(0, len(shown), _ACROSS)]
    return Grid(
        rows,
        colWidths=[column] * _ACROSS,
        style=[
            ("GRID", (0, 0), (-1, -1), 0.8, colors.black),
            ("VALIGN", (0, 0), (-1, -1), "TOP"),
            ("LEFTPADDING", (0, 0), (-1, -1), 0),
            ("RIGHTPADDING", (0, 0), (-1, -1), 0),
            ("TOPPADDING", (0, 0), (-1, -1), 0),
            ("BOTTOMPADDING", (0, 0), (-1, -1), 0),
        ],
    )


def _card(card: Card, width: float) -> Flowable:
    picture = (
        Vectors(fitted(card.drawing, *_PICTURE))
        if card.drawing is not None
        else Paragraph("", _LINE)
    )
    across = _PICTURE[0] * mm + 8.0
    text = width - across - 8.0
    head = Grid(
        [[Box(), Paragraph(escape(latin(card.title)), _TITLE)]],
        colWidths=[8.0 * mm, text - 8.0 * mm],
        style=[
            ("VALIGN", (0, 0), (-1, -1), "MIDDLE"),
            ("LEFTPADDING", (0, 0), (-1, -1), 0),
            ("TOPPADDING", (0, 0), (-1, -1), 1),
            ("BOTTOMPADDING", (0, 0), (-1, -1), 2),
        ],
    )
    lines = [
        Paragraph(escape(latin(line)), _LINE) if line.strip() else _Blank(text)
        for line in card.lines
    ]
    return Grid(
        [[picture, [head, *lines]]],
        colWidths=[across, width - across],
        style=[
            ("VALIGN", (0, 0), (-1, -1), "MIDDLE"),
            ("ALIGN", (0, 0), (0, 0), "CENTER"),
            ("LEFTPADDING", (0, 0), (-1, -1), 4),
            ("RIGHTPADDING", (0, 0), (-1, -1), 4),
            ("TOPPADDING", (0, 0), (-1, -1), 3),
            ("BOTTOMPADDING", (0, 0), (-1, -1), 3),
        ],
    )
