"""Drawings at true scale on sheets as large as they are: for a plotter with paper on a roll."""

from __future__ import annotations

import io
from collections.abc import Sequence

import numpy as np
from reportlab.pdfgen.canvas import Canvas

from laywright.arrays import FloatArray, floats
from laywright.errors import InputError, LimitError
from laywright.files.drawing import Drawing
from laywright.files.framing import extent
from laywright.files.painter import FONT, mm, paint, write

__all__ = ["LARGEST_SHEET", "fits_a_sheet", "whole_sheets"]

LARGEST_SHEET = 5080.0
"""Largest side of a page, mm: 14400 points (ISO 32000-1:2008, annex C.2)."""

_EDGE = 15.0
_FOOT = 10.0
_WORDS = "True scale: plot at 100 %, then measure the check bars"


def fits_a_sheet(drawing: Drawing) -> bool:
    """Return whether a drawing fits the largest sheet that a PDF can have."""
    return bool((_size(drawing) <= LARGEST_SHEET).all())


def whole_sheets(drawings: Drawing | Sequence[Drawing]) -> bytes:
    """Return a PDF with each drawing at true scale on a sheet of its own size.

    Parameters
    ----------
    drawings : Drawing or sequence of Drawing
        In mm.

    Raises
    ------
    InputError
        If there is no drawing.
    LimitError
        If a drawing is larger than a page can be.
    """
    several = (drawings,) if isinstance(drawings, Drawing) else tuple(drawings)
    if not several:
        raise InputError("the plotter sheets", "no drawing", "at least one", "make one first")
    for drawing in several:
        if not fits_a_sheet(drawing):
            wide, high = _size(drawing)
            raise LimitError(
                drawing.name,
                f"a sheet of {wide:.0f} x {high:.0f} mm",
                f"at most {LARGEST_SHEET:.0f} mm each way",
                "check that the drawing is in mm, or use its DXF or SVG file",
            )
    buffer = io.BytesIO()
    canvas = Canvas(buffer, invariant=1)
    canvas.setTitle("Whole sheets: " + ", ".join(drawing.name for drawing in several)[:200])
    canvas.setCreator("Laywright")
    for drawing in several:
        wide, high = _size(drawing).tolist()
        low = extent(drawing)[0]
        canvas.setPageSize((wide * mm, high * mm))
        paint(canvas, drawing, _EDGE - float(low[0]), _EDGE + _FOOT - float(low[1]))
        write(canvas, f"{_WORDS}. {drawing.name}", _EDGE, _EDGE - 5.0, 3.0, FONT, wide - 2 * _EDGE)
        canvas.showPage()
    canvas.save()
    return buffer.getvalue()


def _size(drawing: Drawing) -> FloatArray:
    reach = np.ptp(extent(drawing), axis=0)
    return floats(reach + 2.0 * _EDGE + np.array([0.0, _FOOT]), 2)
