"""Tables as comma-separated text, for spreadsheets."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence

from laywright.errors import InputError

__all__ = ["csv_bytes"]

Cell = str | int | float | bool | None

_MARK = "\ufeff"  # tells spreadsheets that the text is UTF-8, so that m² and ° stay what they are


def csv_bytes(columns: Sequence[str], rows: Iterable[Sequence[Cell]]) -> bytes:
    r"""Return a table as comma-separated text (RFC 4180, UTF-8, a point as decimal mark).

    Parameters
    ----------
    columns : sequence of str
        Column heads, each with its unit.
    rows : iterable of sequence of str, int, float, bool or None
        Cells; None leaves a cell empty, a float is written with the fewest digits that give
        it back exactly.

    Raises
    ------
    InputError
        If a row has another number of cells than there are columns.

    Notes
    -----
    A text that a spreadsheet would take for a formula gets an apostrophe in front.

    Examples
    --------
    >>> csv_bytes(["ply", "mass, g"], [["1, warp", 12.5]]).decode("utf-8-sig").split("\r\n")
    ['ply,"mass, g"', '"1, warp",12.5', '']
    """
    buffer = io.StringIO(newline="")
    buffer.write(_MARK)
    writer = csv.writer(buffer, lineterminator="\r\n")
    writer.writerow([_cell(column) for column in columns])
    for number, row in enumerate(rows, start=1):
        if len(row) != len(columns):
            raise InputError(
                f"row {number} of the table",
                f"{len(row)} cells",
                f"{len(columns)} cells",
                "give one cell per column",
            )
        writer.writerow([_cell(cell) for cell in row])
    return buffer.getvalue().encode("utf-8", "replace")


def _cell(cell: Cell) -> str:
    if cell is None:
        return ""
    if isinstance(cell, bool):
        return "yes" if cell else "no"
    if isinstance(cell, str):
        return f"'{cell}" if cell[:1] in tuple("=+-@\t\r") else cell
    return repr(float(cell)) if isinstance(cell, float) else str(int(cell))
