"""What a PDF page shows, read back from its content: straight lines, in mm."""

from __future__ import annotations

import io

import numpy as np
import pypdf

__all__ = ["lines_of", "pages_of", "texts_of"]

_MM = 25.4 / 72.0


def pages_of(content: bytes) -> list[pypdf.PageObject]:
    """Return the pages of a PDF."""
    return list(pypdf.PdfReader(io.BytesIO(content), strict=True).pages)


def texts_of(content: bytes) -> list[str]:
    """Return the text of each page."""
    return [page.extract_text().strip() for page in pages_of(content)]


def lines_of(page: pypdf.PageObject) -> np.ndarray:
    """Return every straight line of a page: (n, 2, 2) float, mm from the lower left corner."""
    matrix, kept = np.eye(3), []
    lines, here, start = [], None, None
    for operands, operator in page.get_contents().operations:
        numbers = [float(x) for x in operands] if operator in (b"cm", b"m", b"l", b"re") else []
        if operator == b"q":
            kept.append(matrix)
        elif operator == b"Q":
            matrix = kept.pop()
        elif operator == b"cm":
            a, b, c, d, e, f = numbers
            matrix = np.array([[a, b, 0], [c, d, 0], [e, f, 1]]) @ matrix
        elif operator == b"m":
            here = start = (np.array([*numbers, 1.0]) @ matrix)[:2]
        elif operator == b"l":
            there = (np.array([*numbers, 1.0]) @ matrix)[:2]
            lines.append([here, there])
            here = there
        elif operator == b"h":
            lines.append([here, start])
    return np.array(lines).reshape(-1, 2, 2) * _MM
