"""Column widths of a printed table, from what stands in it."""

from __future__ import annotations

from collections.abc import Sequence

from reportlab.pdfbase.pdfmetrics import stringWidth

__all__ = ["column_widths"]

_PADDING = 8.0
_LEAST = 24.0
_LEAST_BLANK = 54.0  # room to write a name or a time by hand


def column_widths(
    rows: Sequence[Sequence[str]], width: float, font: str, size: float
) -> list[float]:
    """Return the widths of the columns so that they fill a width and break few words.

    Parameters
    ----------
    rows : sequence of sequence of str
        Cells, the column heads first.
    width : float, points
        Width of the table.
    font : str
        Name of the font, the bold one to be on the safe side.
    size : float, points
        Its size.

    Returns
    -------
    list of float, points
        Every column holds its longest word where the width allows it; what is left goes to
        the columns in proportion to what their longest line still misses.

        A column with empty cells is wide enough to be written in.

    Examples
    --------
    >>> narrow, wide = column_widths([["ply", "a longer remark"]], 200.0, "Helvetica", 10.0)
    >>> narrow < wide, round(narrow + wide, 6)
    (True, 200.0)
    """
    words, lines = [], []
    for column in zip(*rows, strict=True):
        longest_words = [max(cell.split() or [""], key=len) for cell in column]
        least = _LEAST if all(cell.strip() for cell in column) else _LEAST_BLANK
        words.append(max(least, max(stringWidth(w, font, size) for w in longest_words) + _PADDING))
        line = max(stringWidth(cell, font, size) for cell in column) + _PADDING
        lines.append(max(words[-1], line))
    if sum(words) >= width:
        return _shared(words, width)
    missing = [line - word for word, line in zip(words, lines, strict=True)]
    spare = width - sum(words)
    if sum(missing) >= spare:
        return [w + spare * m / sum(missing) for w, m in zip(words, missing, strict=True)]
    left = width - sum(lines)
    return [line + left * line / sum(lines) for line in lines]


def _shared(wishes: Sequence[float], width: float) -> list[float]:
    """Return widths that fill the table: small wishes are met, large ones share the rest."""
    given = [0.0] * len(wishes)
    left = width
    order = sorted(range(len(wishes)), key=lambda column: wishes[column])
    for done, column in enumerate(order):
        given[column] = min(wishes[column], left / (len(order) - done))
        left -= given[column]
    return given
