"""A sheet as a PDF: one station per page, vectors only, the same bytes for the same sheet.

reportlab was chosen because it draws vectors and flows tables without any program beside it
and can leave dates and random identities out of the file.
"""

from __future__ import annotations

import io
from collections.abc import Iterator
from typing import Any
from xml.sax.saxutils import escape

from reportlab.lib import colors
from reportlab.lib.styles import ParagraphStyle
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import (
    BaseDocTemplate,
    CondPageBreak,
    Flowable,
    Frame,
    NextPageTemplate,
    PageBreak,
    PageTemplate,
    Paragraph,
    Spacer,
)
from reportlab.platypus import Table as Grid

from laywright.errors import InputError
from laywright.files.framing import fitted
from laywright.files.lettering import latin
from laywright.files.page import Cards, Note, Picture, Sheet, Station, Steps, Table, version_note
from laywright.files.painter import FONT, FONT_BOLD, mm, shortened, write
from laywright.files.paper import Paper, paper_of
from laywright.files.pdf_cards import Box, Vectors, card_grid
from laywright.files.pdf_stack import Shrunk, stacked_height
from laywright.files.table_widths import column_widths

__all__ = ["pdf_bytes"]

_MARGIN = 12.0
_HEAD = 7.0
_FOOT = 20.0
_CONTINUED = 9.0  # mm, for the title on a further page of a station
_LEAST_TABLE = 35.0  # mm that must be left on a page for a table to begin there
_LEAST_CARDS = 50.0  # mm, for the first row of cards and their heading
_Size = tuple[float, float]
_SIZES: tuple[_Size, ...] = (
    (1.0, 1.0),
    (1.0, 0.85),
    (1.0, 0.7),
    (0.95, 0.7),
    (0.91, 0.7),  # letters of ten points are still read at arm's length
    (0.91, 0.55),
)  # of letters, and of pictures besides
_BLANK_CELL = 5.5  # mm, room to write by hand
_BODY = ParagraphStyle("body", fontName=FONT, fontSize=12, leading=14.5, spaceAfter=4)
_CELL = ParagraphStyle("cell", fontName=FONT, fontSize=11, leading=13)
_CELL_HEAD = ParagraphStyle("cell head", fontName=FONT_BOLD, fontSize=11, leading=12.5)
_TITLE = ParagraphStyle("title", fontName=FONT_BOLD, fontSize=22, leading=27, spaceAfter=6)
_HEADING = ParagraphStyle(
    "heading", fontName=FONT_BOLD, fontSize=13, leading=16, spaceBefore=8, spaceAfter=4
)
_CAPTION = ParagraphStyle("caption", parent=_CELL, alignment=1, spaceBefore=3, spaceAfter=6)
_CAUTION_HEAD = ParagraphStyle(
    "caution head", fontName=FONT_BOLD, fontSize=13, leading=16, textColor=colors.white
)
_CAUTION = ParagraphStyle("caution", parent=_BODY, spaceAfter=0, leftIndent=10, firstLineIndent=-10)
_FINE = ParagraphStyle("fine", fontName=FONT, fontSize=8.5, leading=10.5)


def pdf_bytes(sheet: Sheet, paper: Paper | str = Paper.A4) -> bytes:
    """Return a sheet as a PDF file.

    Parameters
    ----------
    sheet : Sheet
        The sheet.
    paper : Paper or str
        ``"A4"`` or ``"Letter"``.

    Returns
    -------
    bytes
        Each station begins on a page of its own, its letters down to ten points and its
        pictures down to about half of their size where that saves it a second one; a further
        page begins with the station's title, "continued".  Every page carries the title of its
        station, its number among all pages, the version of the sheet and the sheet's foot.

    Raises
    ------
    InputError
        If the sheet has no station, or there is no such paper.
    """
    if not sheet.stations:
        raise InputError(sheet.title, "no station", "at least one", "fill the sheet first")
    chosen = paper_of(paper)
    width, height = (length * mm for length in chosen.size)
    room = (width - 2.0 * _MARGIN * mm, height - (2.0 * _MARGIN + _HEAD + _FOOT - 10.0) * mm)
    sizes = [_size_for(title, station, room) for title, station in _titled(sheet)]
    pages = _build(sheet, chosen, room, sizes, 0)[1]
    return _build(sheet, chosen, room, sizes, pages)[0]


def _titled(sheet: Sheet) -> list[tuple[str, Station]]:
    """Return the stations with their numbers in their titles."""
    return [(f"{n}. {station.title}", station) for n, station in enumerate(sheet.stations, 1)]


def _build(
    sheet: Sheet, paper: Paper, room: tuple[float, float], sizes: list[_Size], pages: int
) -> tuple[bytes, int]:
    """Return the file and the number of its pages, `pages` written as their total."""
    buffer = io.BytesIO()
    width, height = (length * mm for length in paper.size)
    document = BaseDocTemplate(
        buffer,
        pagesize=(width, height),
        title=latin(sheet.title),
        author="Laywright",
        creator="Laywright",
        invariant=1,
    )
    templates: list[PageTemplate] = []
    story: list[Flowable] = []
    for number, ((title, station), size) in enumerate(zip(_titled(sheet), sizes, strict=True), 1):
        first, further = f"station {number}", f"station {number}, continued"
        for name, high in ((first, room[1]), (further, room[1] - _CONTINUED * mm)):
            frame = Frame(_MARGIN * mm, (_MARGIN + _FOOT - 10.0) * mm, room[0], high, 0, 0, 0, 0)
            above = f"{title}, continued" if name == further else ""
            painter = _furniture(sheet, title, above, pages)
            templates.append(PageTemplate(name, [frame], onPage=painter))
        if number > 1:
            story += [NextPageTemplate(first), PageBreak()]
        story += [NextPageTemplate(further), *_at_size(title, station, room, size)]
    document.addPageTemplates(templates)
    document.build(story)
    return buffer.getvalue(), document.page


def _size_for(title: str, station: Station, room: tuple[float, float]) -> _Size:
    """Return the largest size at which a station takes one page; full size where none does."""
    if not _fits(title, station, room, _SIZES[-1]):
        return _SIZES[0]
    return next(size for size in _SIZES if _fits(title, station, room, size))


def _fits(title: str, station: Station, room: tuple[float, float], size: _Size) -> bool:
    wide = (room[0] / size[0], room[1] / size[0])
    return stacked_height(list(_station(title, station, wide, size[1])), wide[0]) <= wide[1]


def _at_size(
    title: str, station: Station, room: tuple[float, float], size: _Size
) -> list[Flowable]:
    """Return a station, its letters and pictures at a size."""
    letters, pictures = size
    wide = (room[0] / letters, room[1] / letters)
    flowables = list(_station(title, station, wide, pictures))
    return flowables if letters == 1.0 else [Shrunk(flowables, letters)]


def _furniture(sheet: Sheet, station: str, above: str, pages: int) -> Any:
    """Return the painter of what stands outside the frame of a station's pages."""
    foot = Paragraph(
        f"<b>{escape(latin(version_note(sheet)))}</b><br/>{escape(latin(sheet.foot))}", _FINE
    )

    def paint_page(canvas: Canvas, document: Any) -> None:
        width, height = document.pagesize
        inner = width - 2.0 * _MARGIN * mm
        top, rule = height / mm - _MARGIN, _MARGIN + _FOOT - 12.0
        canvas.saveState()
        write(canvas, sheet.title, _MARGIN, top, 3.2, FONT_BOLD, 0.55 * inner / mm)
        canvas.setFont(FONT, 11)
        line = shortened(station, FONT, 11, 0.4 * inner)
        canvas.drawRightString(width - _MARGIN * mm, top * mm, line)
        canvas.setLineWidth(0.6)
        canvas.line(_MARGIN * mm, (top - 2.5) * mm, width - _MARGIN * mm, (top - 2.5) * mm)
        write(canvas, above, _MARGIN, top - 10.0, 4.8, FONT_BOLD, inner / mm)
        canvas.line(_MARGIN * mm, rule * mm, width - _MARGIN * mm, rule * mm)
        _, taken = foot.wrap(inner - 25.0 * mm, 15.0 * mm)
        foot.drawOn(canvas, _MARGIN * mm, (rule - 1.5) * mm - taken)
        canvas.setFont(FONT_BOLD, 10)
        number = f"{document.page} / {pages}"
        canvas.drawRightString(width - _MARGIN * mm, (rule - 4.5) * mm, number)
        canvas.restoreState()

    return paint_page


class _Heading(Paragraph):  # type: ignore[misc]
    """The title of a station, which is also its entry among the reader's bookmarks."""

    def draw(self) -> None:
        """Paint it and mark the place."""
        key = f"station {self.canv.getPageNumber()}"
        self.canv.bookmarkPage(key)
        self.canv.addOutlineEntry(self.getPlainText(), key, 0)
        super().draw()


def _station(
    title: str, station: Station, room: tuple[float, float], pictures: float
) -> Iterator[Flowable]:
    """Yield a station for a room in points, its pictures at a share of their size."""
    yield _Heading(escape(latin(title)), _TITLE)
    if station.cautions:
        yield _cautions(station.cautions, room[0])
        yield Spacer(0, 8)
    for block in station.blocks:
        if isinstance(block, Note):
            yield Paragraph(escape(latin(block.text)), _BODY)
        elif isinstance(block, Steps):
            yield _steps(block, room[0])
            yield Spacer(0, 6)
        elif isinstance(block, Picture):
            height = min(pictures * block.height, room[1] / mm - 60.0)
            picture = Vectors(fitted(block.drawing, room[0] / mm, height))
            caption = f"{escape(latin(block.caption))} (picture not to scale)"
            yield Grid(
                [[picture], [Paragraph(caption, _CAPTION)]],
                colWidths=[room[0]],
                style=[("ALIGN", (0, 0), (-1, -1), "CENTER"), ("NOSPLIT", (0, 0), (0, 1))],
            )
        elif isinstance(block, Cards):
            yield CondPageBreak(_LEAST_CARDS * mm)
            yield Paragraph(escape(latin(block.heading)), _HEADING)
            yield card_grid(block.cards, room[0], pictures)
            yield Spacer(0, 6)
        else:
            yield from _table(block, room[0])


def _cautions(cautions: tuple[str, ...], width: float) -> Flowable:
    lines: list[list[Any]] = [[Paragraph("CAUTION", _CAUTION_HEAD)]]
    lines += [[Paragraph(f"• {escape(latin(caution))}", _CAUTION)] for caution in cautions]
    return Grid(
        lines,
        colWidths=[width],
        splitInRow=1,
        style=[
            ("BOX", (0, 0), (-1, -1), 2.0, colors.black),
            ("BACKGROUND", (0, 0), (-1, 0), colors.black),
            ("TOPPADDING", (0, 0), (-1, -1), 2),
            ("BOTTOMPADDING", (0, 0), (-1, -1), 3),
        ],
    )


def _steps(steps: Steps, width: float) -> Flowable:
    rows = [
        [Box(), Paragraph(f"{number}.", _BODY), Paragraph(escape(latin(item)), _BODY)]
        for number, item in enumerate(steps.items, start=1)
    ]
    if not rows:
        return Spacer(0, 0)
    return Grid(
        rows,
        colWidths=[9.0 * mm, 9.0 * mm, width - 18.0 * mm],
        splitInRow=1,
        style=[
            ("VALIGN", (0, 0), (-1, -1), "TOP"),
            ("LEFTPADDING", (0, 0), (-1, -1), 0),
            ("TOPPADDING", (0, 0), (-1, -1), 2),
            ("BOTTOMPADDING", (0, 0), (-1, -1), 1),
        ],
    )


def _table(table: Table, width: float) -> Iterator[Flowable]:
    heading = Paragraph(escape(latin(table.heading)), _HEADING)
    if not table.columns:
        yield heading
        return
    shown = [tuple(latin(cell) for cell in row) for row in (table.columns, *table.rows)]
    body = [[Paragraph(escape(cell), _CELL_HEAD) for cell in shown[0]]]
    body += [[_cell(cell) for cell in row] for row in shown[1:]]
    grid = Grid(
        body,
        colWidths=column_widths(shown, width, FONT_BOLD, _CELL.fontSize),
        repeatRows=1,
        splitInRow=1,
        style=[
            ("GRID", (0, 0), (-1, -1), 0.6, colors.black),
            ("LINEBELOW", (0, 0), (-1, 0), 1.6, colors.black),
            ("VALIGN", (0, 0), (-1, -1), "MIDDLE"),
            ("LEFTPADDING", (0, 0), (-1, -1), 3),
            ("RIGHTPADDING", (0, 0), (-1, -1), 3),
            ("TOPPADDING", (0, 0), (-1, -1), 2),
            ("BOTTOMPADDING", (0, 0), (-1, -1), 3),
        ],
    )
    yield CondPageBreak(_LEAST_TABLE * mm)
    yield heading
    yield grid
    yield Spacer(0, 6)


def _cell(text: str) -> Flowable:
    """Return a cell; an empty one leaves room to write by hand."""
    return Paragraph(escape(text), _CELL) if text.strip() else Spacer(0, _BLANK_CELL * mm)
