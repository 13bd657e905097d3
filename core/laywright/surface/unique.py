"""Which rows of an array are the same, by a mixed 64-bit key that is checked."""

from __future__ import annotations

import numpy as np

from laywright.arrays import Array, IntArray

__all__ = ["unique_rows"]

# Odd numbers that scatter bits (the golden ratio and two primes; any odd numbers would do).
_MIX = (0x9E3779B97F4A7C15, 0xC2B2AE3D27D4EB4F, 0x165667B19E3779F9)


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
    _, first, index = np.unique(key, return_index=True, return_inverse=True)
    index = index.reshape(-1)
    if not np.array_equal(rows[first][index], rows):
        _, first, index = np.unique(rows, axis=0, return_index=True, return_inverse=True)
        index = index.reshape(-1)
    order = np.argsort(first, kind="stable")
    rank = np.empty(len(order), dtype=np.int64)
    rank[order] = np.arange(len(order))
    return first[order].astype(np.int64), rank[index]
