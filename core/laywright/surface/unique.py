"""Which rows or numbers of an array are the same, by scattering them into a table.

Every row is sent to a place of the table by a mixed 64-bit key; those that meet an equal row
there are settled, the others are sent again by another key until none is left.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from scipy.sparse import csr_matrix

from laywright.arrays import Array, IntArray, ints

__all__ = ["order_of", "unique_keys", "unique_rows"]

# Odd numbers that scatter bits (the golden ratio and two primes; any odd numbers would do).
_MIX = (0x9E3779B97F4A7C15, 0xC2B2AE3D27D4EB4F, 0x165667B19E3779F9)

# Numpy sorts numbers of 16 bits by counting.
_SHORT = 1 << 16


def unique_rows(rows: Array) -> tuple[IntArray, IntArray]:
    """Return where each different row first stands, and which of these every row is.

    Parameters
    ----------
    rows : (k, 3) float or int
        Rows; minus zero is not the same as zero.

    Returns
    -------
    first : (u,) int
        Places of the different rows, in the order of their first places.
    index : (k,) int
        ``rows[first][index]`` is ``rows``.

    Examples
    --------
    >>> unique_rows(np.array([[2, 1, 0], [5, 5, 5], [2, 1, 0]]))
    (array([0, 1]), array([0, 1, 0]))
    """
    bits = np.ascontiguousarray(rows, dtype=rows.dtype).view(np.uint64).reshape(-1, 3)
    key = np.zeros(len(bits), dtype=np.uint64)
    for column, factor in enumerate(_MIX):
        key = (key ^ bits[:, column]) * np.uint64(factor)
        key ^= key >> np.uint64(29)
    columns = [np.ascontiguousarray(bits[:, column]) for column in range(3)]

    def same(one: Array, other: Array) -> Array:
        alike = columns[0][one] == columns[0][other]
        for column in columns[1:]:
            alike &= column[one] == column[other]
        return np.asarray(alike)

    return _settled(key, same)


def unique_keys(keys: Array) -> tuple[IntArray, IntArray]:
    """Return where each different number first stands, and which of these every number is.

    Parameters
    ----------
    keys : (k,) int
        Numbers.

    Returns
    -------
    first : (u,) int
        Places of the different numbers, in the order of their first places.
    index : (k,) int
        ``keys[first][index]`` is ``keys``.

    Examples
    --------
    >>> unique_keys(np.array([7, 3, 7]))
    (array([0, 1]), array([0, 1, 0]))
    """
    bits = np.ascontiguousarray(keys, dtype=np.int64).view(np.uint64)
    return _settled(bits, lambda one, other: np.asarray(bits[one] == bits[other]))


def order_of(numbers: IntArray, below: int) -> Array:
    """Return the places of small numbers in their order, equal ones as they stood: (k,) int.

    Sorted by counting, in a time that does not depend on how they are mixed.

    Parameters
    ----------
    numbers : (k,) int
        From 0 to `below` - 1.
    below : int
        What all are smaller than.

    Examples
    --------
    >>> order_of(np.array([2, 0, 2, 1]), 3).tolist()
    [1, 3, 0, 2]
    """
    if below <= _SHORT:
        return np.argsort(numbers.astype(np.uint16), kind="stable")
    count = len(numbers)
    table = (np.ones(count, dtype=bool), numbers, np.arange(count + 1))
    return np.asarray(csr_matrix(table, shape=(count, below)).tocsc().indices)


def _settled(key: Array, same: Callable[[Array, Array], Array]) -> tuple[IntArray, IntArray]:
    size = len(key)
    bits = max(4, (2 * size).bit_length())
    kind = np.int32 if size < 2**31 else np.int64
    table: Array = np.empty(1 << bits, dtype=kind)
    shown_by: Array = np.empty(size, dtype=kind)
    left: Array = np.arange(size, dtype=kind)
    turn = 0
    while len(left):
        factor = np.uint64(_MIX[turn % 3] + 2 * turn)
        place = (
            ((key[left] ^ (key[left] >> np.uint64(31))) * factor) >> np.uint64(64 - bits)
        ).view(np.int64)
        table[place[::-1]] = left[::-1]
        shown = table[place]
        alike = same(left, shown)
        shown_by[left[alike]] = shown[alike]
        left = left[~alike]
        turn += 1
    own = shown_by == np.arange(size)
    return ints(np.flatnonzero(own), -1), ints((np.cumsum(own) - 1)[shown_by], -1)
