"""Many numbers as text at once.

Formatting numbers one by one is what makes mesh writers slow.  Here the rows of an array are
laid out as a matrix of characters of fixed width, digit column by digit column, and whatever
does not belong (leading zeros, the sign of a positive number) is struck out at the end.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from laywright.arrays import Array

__all__ = ["rows_as_text"]

_Characters = NDArray[np.uint8]
_Kept = NDArray[np.bool_]
_CHUNK = 65536  # rows at a time, so that the matrix stays in the cache


def rows_as_text(pieces: tuple[str, ...], values: Array, decimals: int = 0) -> bytes:
    """Return one run of text per row of `values`.

    Parameters
    ----------
    pieces : tuple of str
        What stands before, between and after the numbers of a row: one more than columns.
    values : (n, k) float or int
        The numbers; below 1e12 in size after scaling by the decimals.
    decimals : int
        Digits after the point, all of them written; 0 writes whole numbers.

    Returns
    -------
    bytes
        ASCII.

    Examples
    --------
    >>> rows_as_text(("<", " ", ">"), np.array([[1, 20], [-3, 0]]))
    b'<1 20><-3 0>'
    >>> rows_as_text(("", ";"), np.array([[1.5], [-0.25]]), decimals=2)
    b'1.50;-0.25;'
    """
    if not len(values):
        return b""
    scaled = np.rint(np.asarray(values) * 10.0**decimals) if decimals else np.asarray(values)
    whole = scaled.astype(np.int64)
    most = int(np.abs(whole).max(initial=0))
    width = max(len(str(most)), decimals + 1)
    return b"".join(
        _block(pieces, whole[start : start + _CHUNK], decimals, width)
        for start in range(0, len(whole), _CHUNK)
    )


def _block(pieces: tuple[str, ...], whole: Array, decimals: int, width: int) -> bytes:
    small = whole.astype(np.int32) if width <= 9 else whole
    columns: list[_Characters] = []
    kept: list[_Kept] = []
    everywhere = np.ones(len(small), dtype=bool)
    for index, piece in enumerate(pieces):
        for character in piece.encode("ascii"):
            columns.append(np.full(len(small), character, dtype=np.uint8))
            kept.append(everywhere)
        if index < small.shape[1]:
            _number(small[:, index], decimals, width, columns, kept)
    text = np.stack(columns, axis=1)
    return text[np.stack(kept, axis=1)].tobytes()


def _number(
    values: Array, decimals: int, width: int, columns: list[_Characters], kept: list[_Kept]
) -> None:
    """Append the sign, the digits and the point of one column of numbers."""
    columns.append(np.full(len(values), ord("-"), dtype=np.uint8))
    kept.append(values < 0)
    rest = np.abs(values)
    digits: list[_Characters] = []
    shown: list[_Kept] = []
    for place in range(width):
        shown.append(rest > 0 if place > decimals else np.ones(len(values), dtype=bool))
        over = rest // 10
        digits.append((rest - 10 * over + ord("0")).astype(np.uint8))
        rest = over
    for place in range(width - 1, -1, -1):
        columns.append(digits[place])
        kept.append(shown[place])
        if place == decimals and decimals:
            columns.append(np.full(len(values), ord("."), dtype=np.uint8))
            kept.append(np.ones(len(values), dtype=bool))
