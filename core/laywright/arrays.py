"""Array types shared by all rooms, and the door that makes them read-only."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

__all__ = [
    "Array",
    "FloatArray",
    "IntArray",
    "Vector",
    "floats",
    "ints",
    "line_length",
    "ring_area",
    "ring_length",
    "unit_vector",
]

Array = NDArray[Any]
FloatArray = NDArray[np.float64]
IntArray = NDArray[np.int64]
Vector = tuple[float, float, float]


def floats(values: ArrayLike, *shape: int) -> FloatArray:
    """Return a read-only float64 copy of `values`, its shape checked.

    Parameters
    ----------
    values : array_like
        Numbers.
    *shape : int
        Expected shape; -1 stands for any length.

    Returns
    -------
    numpy.ndarray
        Read-only, C-ordered, float64.

    Raises
    ------
    ValueError
        If the shape differs.

    Examples
    --------
    >>> floats([[0, 0, 1]], -1, 3).flags.writeable
    False
    """
    return _frozen(np.array(values, dtype=np.float64, order="C"), shape)


def ints(values: ArrayLike, *shape: int) -> IntArray:
    """Return a read-only int64 copy of `values`, its shape checked; see `floats`."""
    return _frozen(np.array(values, dtype=np.int64, order="C"), shape)


def _frozen(array: NDArray[Any], shape: tuple[int, ...]) -> NDArray[Any]:
    if array.size == 0 and shape:
        array = array.reshape([0 if length == -1 else length for length in shape])
    matches = len(array.shape) == len(shape) and all(
        wanted in (-1, length) for wanted, length in zip(shape, array.shape, strict=False)
    )
    if not matches:
        raise ValueError(f"an array of shape {array.shape} came where {shape} was needed")
    array.flags.writeable = False
    return array


def unit_vector(vector: ArrayLike) -> Vector:
    """Return `vector` scaled to length 1 as three floats.

    Raises
    ------
    ValueError
        If the vector has no length or a component that is not a finite number.

    Examples
    --------
    >>> unit_vector((0, 0, 2))
    (0.0, 0.0, 1.0)
    """
    array = np.asarray(vector, dtype=np.float64)
    length = float(np.linalg.norm(array))
    if array.shape != (3,) or not np.isfinite(length) or length == 0.0:
        raise ValueError(f"no direction in {vector!r}")
    x, y, z = (array / length + 0.0).tolist()
    return x, y, z


def line_length(points: FloatArray) -> float:
    """Return the length of an open line, (k, d).

    Examples
    --------
    >>> line_length(np.array([[0.0, 0.0], [3.0, 0.0], [3.0, 4.0]]))
    7.0
    """
    return float(np.linalg.norm(np.diff(points, axis=0), axis=1).sum())


def ring_length(points: FloatArray) -> float:
    """Return the length of a closed line, (k, d), its first point not repeated.

    Examples
    --------
    >>> ring_length(np.array([[0.0, 0.0], [3.0, 0.0], [3.0, 4.0]]))
    12.0
    """
    return float(np.linalg.norm(np.roll(points, -1, axis=0) - points, axis=1).sum())


def ring_area(points: FloatArray) -> float:
    """Return the area in a closed flat line, (k, 2): below zero where it runs clockwise.

    Examples
    --------
    >>> ring_area(np.array([[0.0, 0.0], [3.0, 0.0], [3.0, 4.0]]))
    6.0
    """
    x, y = points.T
    return 0.5 * float((x * np.roll(y, -1) - np.roll(x, -1) * y).sum())
