"""Columns of numbers out of a text table that some machine or spreadsheet wrote.

Words about the specimen may stand before the numbers and after them, the heading may have a
second line with units, columns may be parted by semicolons, tabs, commas or blanks, and the
decimal mark may be a comma.  Whatever remains in doubt is refused in one sentence that names
the line.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.errors import FileError

__all__ = ["Column", "NumberTable", "read_number_table"]

_LARGEST = 20_000_000
_FORMS: tuple[tuple[str | None, str], ...] = (
    (";", "."),
    (";", ","),
    ("\t", "."),
    ("\t", ","),
    (",", "."),
    (None, "."),
    (None, ","),
)
_NUMBER = re.compile(r"[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?")
_IN_BRACKETS = re.compile(r"^(.*?)\s*[\[(]\s*([^\[\]()]+?)\s*[\])]\s*$")
_AFTER_MARK = re.compile(r"^(.+?)\s*[,/]\s*([^\s,/]+)$")
_BEHIND = re.compile(r"^(.+?)\s+(\S+)$")
_WORDS = (
    "mm cm m um µm μm in inch inches mil n kn lbf lb lbs kgf kg g % mm/mm in/in ue µe με ustrain "
    "strain s sec min mpa psi - 1"
)
_UNITS = frozenset(_WORDS.split())

Cells = list[float | None]


@dataclass(frozen=True)
class Column:
    """The head of a column.

    Attributes
    ----------
    name : str
        Without its unit.
    unit : str
        As it is written, empty where there is none.
    """

    name: str
    unit: str = ""


@dataclass(frozen=True, eq=False)
class NumberTable:
    """Columns of numbers.

    Attributes
    ----------
    where : str
        Name of the file.
    columns : tuple of Column
    rows : (n, k) float
        Not a number where a cell holds none.
    """

    where: str
    columns: tuple[Column, ...]
    rows: FloatArray


def read_number_table(content: bytes, where: str) -> NumberTable:
    r"""Return the columns of numbers of a text table.

    Parameters
    ----------
    content : bytes
        UTF-8, UTF-16 or a western 8-bit code.
    where : str
        Name of the file, for messages.

    Raises
    ------
    FileError
        If there are no two columns of numbers, or words stand between them.

    Examples
    --------
    >>> table = read_number_table(b"Test 3\nTravel (mm);Force (N)\n0,1;2,5\n0,2;5,0", "a.csv")
    >>> [column.unit for column in table.columns], table.rows.tolist()
    (['mm', 'N'], [[0.1, 2.5], [0.2, 5.0]])
    """
    lines = _lines(content, where)
    forms = [(form, [_cells(line, *form) for line in lines]) for form in _FORMS]
    (mark, decimal), cells = max(forms, key=lambda item: _score(item[1]))
    count = _usual_count(cells)
    if count < 2:
        raise FileError(
            where,
            "no two columns of numbers",
            "a table with one line for each reading",
            "export it as text with semicolons between the columns",
        )
    numbers = [row is not None and len(row) == count for row in cells]
    first = numbers.index(True)
    last = len(numbers) - 1 - numbers[::-1].index(True)
    heads = _heads(lines[:first], mark, count)
    shown = {tuple(head) for head in heads}
    rows = []
    for place in range(first, last + 1):
        row = cells[place]
        if numbers[place] and row is not None:
            rows.append([np.nan if cell is None else cell for cell in row])
        elif lines[place].strip() and tuple(_split(lines[place], mark)) not in shown:
            raise FileError(
                f"{where}, line {place + 1}",
                f"'{lines[place].strip()[:60]}'",
                f"{count} numbers as in the lines around it",
                "take the line out, or put each test into a file of its own",
            )
    _check_heading(where, lines[:first], mark, decimal, count, heads)
    columns = tuple(_column([head[k] for head in heads], k) for k in range(count))
    return NumberTable(where, columns, floats(np.array(rows), -1, count))


def _lines(content: bytes, where: str) -> list[str]:
    if len(content) > _LARGEST:
        raise FileError(where, f"{len(content)} bytes", f"at most {_LARGEST}", "export less of it")
    if content[:2] in (b"\xff\xfe", b"\xfe\xff"):
        text = content.decode("utf-16", "replace")
    else:
        try:
            text = content.decode("utf-8-sig")
        except UnicodeDecodeError:
            text = content.decode("cp1252", "replace")
    if "\0" in text:
        raise FileError(where, "a file that is no text", "a text table", "export it as CSV or text")
    return text.splitlines()


def _split(line: str, mark: str | None) -> list[str]:
    parts = [part.strip().strip('"').strip() for part in line.split(mark)]
    while len(parts) > 1 and not parts[-1]:
        parts.pop()
    return parts


def _cells(line: str, mark: str | None, decimal: str) -> Cells | None:
    """Return the cells of a line of numbers; None where it is none."""
    found: Cells = []
    for part in _split(line, mark):
        text = part.replace(",", ".") if decimal == "," and "." not in part else part
        found.append(float(text) if _NUMBER.fullmatch(text) else None)
    held = sum(cell is not None for cell in found)
    return found if held >= 2 and 2 * held >= len(found) else None


def _usual_count(cells: Sequence[Cells | None]) -> int:
    counts = Counter(len(row) for row in cells if row is not None)
    return counts.most_common(1)[0][0] if counts else 0


def _score(cells: Sequence[Cells | None]) -> tuple[int, int]:
    """Return how many lines have the usual number of cells, and how many cells are numbers."""
    count = _usual_count(cells)
    rows = [row for row in cells if row is not None and len(row) == count]
    return len(rows), sum(cell is not None for row in rows for cell in row)


def _heads(before: Sequence[str], mark: str | None, count: int) -> list[list[str]]:
    """Return the line of names, and the line of units where there is one below it."""
    lines = [_split(line, mark) for line in before if line.strip()][-2:]
    if not lines or len(lines[-1]) != count:
        return []
    below_names = all(_is_unit(cell) for cell in lines[-1]) and len(lines) == 2
    return lines if below_names and len(lines[0]) == count else lines[-1:]


def _is_unit(text: str) -> bool:
    return text.strip("[]() ").casefold() in _UNITS


def _check_heading(
    where: str,
    before: Sequence[str],
    mark: str | None,
    decimal: str,
    count: int,
    heads: Sequence[Sequence[str]],
) -> None:
    """Refuse decimal commas between commas: the heading tells how many columns there are."""
    words = [line for line in before if line.strip()]
    if heads or not words or mark != "," or decimal != ".":
        return
    named = len(_split(words[-1], mark))
    if 1 < named < count:
        raise FileError(
            where,
            f"{count} numbers in a line below {named} headings",
            "one number below each heading",
            "decimal commas between commas cannot be told apart: export it with semicolons",
        )


def _column(words: Sequence[str], place: int) -> Column:
    """Return name and unit of a column from the lines of its heading."""
    if not words or not words[0]:
        return Column(f"column {place + 1}")
    name, unit = words[0], ""
    found = _IN_BRACKETS.match(name)
    if found is not None:
        name, unit = found[1], found[2]
    else:
        for form in (_AFTER_MARK, _BEHIND):
            found = form.match(name)
            if found is not None and _is_unit(found[2]):
                name, unit = found[1], found[2]
                break
    if len(words) > 1 and not unit:
        unit = words[1].strip("[]() ")
    if not unit and len(words) == 1 and _is_unit(name):
        name, unit = "", name
    return Column(name or f"column {place + 1}", unit)
