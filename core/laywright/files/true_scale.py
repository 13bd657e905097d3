"""Drawings on ordinary paper at true scale: pages to be taped together.

Crosses at the corners of the overlap lie on both pages and must come to lie on each other.
Every page carries a bar of 100 mm each way, because a printer that shrinks pages to fit is
the commonest way to a part of the wrong size (common practice, no source).
"""

from __future__ import annotations

import io
import math
from collections.abc import Sequence

import numpy as np
from reportlab.pdfgen.canvas import Canvas

from laywright.errors import InputError
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.framing import extent, fitted
from laywright.files.painter import FONT_BOLD, mm, paint, write
from laywright.files.paper import Paper, paper_of
from laywright.files.tiling import MARGIN, OVERLAP, Tiling, page_name, tiling

__all__ = ["drawing_pages"]

_BAR = 100.0


def drawing_pages(drawings: Drawing | Sequence[Drawing], paper: Paper | str = Paper.A4) -> bytes:
    """Return a PDF with drawings at true scale, each with a map of its pages before them.

    Parameters
    ----------
    drawings : Drawing or sequence of Drawing
        In mm.
    paper : Paper or str
        ``"A4"``, ``"Letter"`` or ``"A3"``.

    Returns
    -------
    bytes
        For each drawing one page with the map, then its windows, the top row first.

    Raises
    ------
    InputError
        If there is no drawing.
    LimitError
        If a drawing would take more than 400 pages.
    """
    several = (drawings,) if isinstance(drawings, Drawing) else tuple(drawings)
    if not several:
        raise InputError("the true-scale pages", "no drawing", "at least one", "make one first")
    chosen = paper_of(paper)
    plans = [tiling(drawing, chosen) for drawing in several]
    buffer = io.BytesIO()
    width, height = chosen.size
    canvas = Canvas(buffer, pagesize=(width * mm, height * mm), invariant=1)
    canvas.setTitle("True-scale pages: " + ", ".join(drawing.name for drawing in several)[:200])
    canvas.setCreator("Laywright")
    for drawing, plan in zip(several, plans, strict=True):
        _map_page(canvas, drawing, plan, chosen)
        for row, column in plan.kept:
            _window_page(canvas, drawing, plan, chosen, row, column)
    canvas.save()
    return buffer.getvalue()


def _map_page(canvas: Canvas, drawing: Drawing, plan: Tiling, paper: Paper) -> None:
    width, height = paper.size
    write(canvas, drawing.name, MARGIN, height - 24.0, 5.0, FONT_BOLD, width - 2.0 * MARGIN)
    reach = np.ptp(extent(drawing), axis=0)
    lines = (
        f"True scale, {reach[0]:.0f} x {reach[1]:.0f} mm, {len(plan.kept)} pages of "
        f"{plan.rows} x {plan.columns}, {paper.value} paper.",
        "Print at 100 % (actual size). Then measure both bars with a ruler:",
        f"each must be {_BAR:.0f} mm long. If one is not, do not cut from these pages.",
        f"Pages overlap by {OVERLAP:.0f} mm: lay the crosses of neighbours on each other,",
        "against the light, and tape. Pages crossed out on the map hold nothing",
        "and are not printed.",
    )
    for number, line in enumerate(lines):
        write(canvas, line, MARGIN, height - 34.0 - 6.5 * number, 3.0)
    room = (width - 2.0 * MARGIN - 10.0, height - 2.0 * MARGIN - 90.0)
    sketch = fitted(_page_map(drawing, plan), *room)
    taken = extent(sketch)[1]
    paint(canvas, sketch, 0.5 * (width - float(taken[0])), MARGIN + 8.0)
    _bars(canvas)
    canvas.showPage()


def _page_map(drawing: Drawing, plan: Tiling) -> Drawing:
    """Return the drawing with the windows and their names over it."""
    shapes: list[Line | Label] = [shape for shape in drawing.shapes if isinstance(shape, Line)]
    step_x, step_y = plan.window[0] - OVERLAP, plan.window[1] - OVERLAP
    for row in range(plan.rows):
        for column in range(plan.columns):
            x, y = plan.place(row, column)
            right = x + (plan.window[0] if column == plan.columns - 1 else step_x)
            top = y + (plan.window[1] if row == plan.rows - 1 else step_y)
            corners = np.array([[x, y], [right, y], [right, top], [x, top]])
            shapes.append(Line("window", corners, closed=True))
            if (row, column) in plan.kept:
                middle = corners.mean(axis=0)
                shapes.append(
                    Label(
                        "page",
                        page_name(plan, row, column),
                        (float(middle[0]), float(middle[1])),
                        30.0,
                    )
                )
            else:
                shapes += [Line("window", corners[[0, 2]]), Line("window", corners[[1, 3]])]
    styles = dict(drawing.styles) | {
        "window": Style(0.15, (1.5, 1.0), (0.3, 0.3, 0.3)),
        "page": Style(),
    }
    return Drawing(f"{drawing.name}: map of the pages", tuple(shapes), styles)


def _window_page(
    canvas: Canvas, drawing: Drawing, plan: Tiling, paper: Paper, row: int, column: int
) -> None:
    height = paper.size[1]
    x, y = plan.place(row, column)
    window = plan.window
    canvas.saveState()
    clip = canvas.beginPath()
    clip.rect(MARGIN * mm, MARGIN * mm, window[0] * mm, window[1] * mm)
    canvas.clipPath(clip, stroke=0, fill=0)
    paint(canvas, drawing, MARGIN - x, MARGIN - y)
    canvas.restoreState()
    paint(canvas, _marks(plan, row, column), MARGIN, MARGIN)
    name = page_name(plan, row, column)
    write(canvas, name, MARGIN, height - 11.0, 5.0, FONT_BOLD)
    write(canvas, "True scale: print at 100 %", MARGIN + 18.0, height - 11.0, 2.6)
    write(canvas, drawing.name, MARGIN + 75.0, height - 11.0, 2.6, room=window[0] - 75.0)
    _bars(canvas)
    canvas.showPage()


def _marks(plan: Tiling, row: int, column: int) -> Drawing:
    """Return the frame of a window, its overlap lines, crosses and neighbours' names."""
    width, height = plan.window
    shapes: list[Line | Label] = [
        Line("frame", np.array([[0, 0], [width, 0], [width, height], [0, height]]), closed=True)
    ]
    half = 0.5 * OVERLAP
    sides = (
        (column > 0, (row, column - 1), [[OVERLAP, 0], [OVERLAP, height]], (half, 0.5 * height)),
        (
            column < plan.columns - 1,
            (row, column + 1),
            [[width - OVERLAP, 0], [width - OVERLAP, height]],
            (width - half, 0.5 * height),
        ),
        (row > 0, (row - 1, column), [[0, OVERLAP], [width, OVERLAP]], (0.5 * width, half)),
        (
            row < plan.rows - 1,
            (row + 1, column),
            [[0, height - OVERLAP], [width, height - OVERLAP]],
            (0.5 * width, height - half),
        ),
    )
    for there, neighbour, ends, at in sides:
        if there:
            shapes.append(Line("overlap", np.array(ends, dtype=float)))
            printed = neighbour in plan.kept
            text = f"to {page_name(plan, *neighbour)}" if printed else "no page"
            turn = 0.5 * math.pi if ends[0][0] == ends[1][0] else 0.0
            shapes.append(Label("overlap", text, at, 2.6, turn))
    for cx in (half, width - half):
        for cy in (half, height - half):
            shapes.append(Line("cross", np.array([[cx - 4.0, cy], [cx + 4.0, cy]])))
            shapes.append(Line("cross", np.array([[cx, cy - 4.0], [cx, cy + 4.0]])))
    return Drawing(
        "marks",
        tuple(shapes),
        {
            "frame": Style(0.1, (), (0.4, 0.4, 0.4)),
            "overlap": Style(0.15, (2.0, 2.0), (0.3, 0.3, 0.3)),
            "cross": Style(0.15),
        },
    )


def _bars(canvas: Canvas) -> None:
    """Paint the two check bars into the lower and the left margin."""
    low = 0.6 * MARGIN
    shapes: list[Line | Label] = []
    for turned in (False, True):
        points = [
            [[0, 0], [_BAR, 0]],
            *([[d, -1.2], [d, 1.2]] for d in np.arange(0.0, _BAR + 1, 10.0)),
        ]
        for ends in points:
            line = np.array(ends, dtype=float)
            line = line[:, ::-1] if turned else line
            offset = np.array([low, MARGIN + 10.0] if turned else [MARGIN + 10.0, low])
            shapes.append(Line("bar", line + offset))
        middle = MARGIN + 10.0 + 0.5 * _BAR
        at = (low - 3.2, middle) if turned else (middle, low - 3.2)
        shapes.append(
            Label("bar", f"this bar is {_BAR:.0f} mm long", at, 2.0, 0.5 * math.pi * turned)
        )
    paint(canvas, Drawing("check bars", tuple(shapes), {"bar": Style(0.25)}))
