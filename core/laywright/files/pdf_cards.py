"""Boxes to tick and cards with pictures, on the pages of a PDF."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any
from xml.sax.saxutils import escape

from reportlab.lib import colors
from reportlab.lib.styles import ParagraphStyle
from reportlab.pdfbase.pdfmetrics import stringWidth
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
_LINE = ParagraphStyle("card line", fontName=FONT, fontSize=11, leading=12.5)


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
    """A line to write on, after what is asked for."""

    def __init__(self, asked: str, width: float) -> None:
        super().__init__()
        self.asked = asked
        self.width, self.height = width, 6.5 * mm

    def draw(self) -> None:
        """Paint both."""
        style = _LINE.fontName, _LINE.fontSize
        self.canv.setFont(*style)
        self.canv.drawString(0, 1.0 * mm, self.asked)
        self.canv.setLineWidth(0.4)
        start = stringWidth(self.asked, *style) + 1.0 * mm if self.asked else 0.0
        self.canv.line(start, 0.5 * mm, self.width, 0.5 * mm)


def card_grid(cards: tuple[Card, ...], width: float, pictures: float = 1.0) -> Flowable:
    """Return cards two in a row, within a width in points; a row is never torn apart.

    Pictures are shown at a share of their size.
    """
    column = width / _ACROSS
    shown: list[Any] = [_card(card, column, pictures) for card in cards]
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


def _card(card: Card, width: float, pictures: float) -> Flowable:
    wide, high = (pictures * side for side in _PICTURE)
    picture = (
        Vectors(fitted(card.drawing, wide, high))
        if card.drawing is not None
        else Paragraph("", _LINE)
    )
    across = wide * mm + 8.0
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
    return Grid(
        [[picture, [head, *_lines(card.lines, text)]]],
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


def _lines(lines: tuple[str, ...], width: float) -> Iterator[Flowable]:
    """Yield the lines of a card; what ends in a colon stands on the line to write on below it."""
    style = _LINE.fontName, _LINE.fontSize
    asked = ""
    for line in lines:
        text = latin(line.strip())
        if not text:
            yield _Blank(asked, width)
            asked = ""
            continue
        if asked:
            yield Paragraph(escape(asked), _LINE)
        asked = text if text.endswith(":") and stringWidth(text, *style) < 0.5 * width else ""
        if not asked:
            yield Paragraph(escape(text), _LINE)
    if asked:
        yield Paragraph(escape(asked), _LINE)
