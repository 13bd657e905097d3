"""Distance from points to straight pieces of lines, exact."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray

__all__ = ["away_from_lines"]

_CHUNK = 200_000


def away_from_lines(points: FloatArray, lines: FloatArray) -> FloatArray:
    """Return the distance of every point to the nearest of some straight pieces.

    Parameters
    ----------
    points : (n, 3) float, mm
    lines : (k, 2, 3) float, mm
        Both ends of each piece.

    Returns
    -------
    (n,) float, mm

    Examples
    --------
    >>> import numpy as np
    >>> piece = np.array([[[0.0, 0.0, 0.0], [4.0, 0.0, 0.0]]])
    >>> away_from_lines(np.array([[2.0, 3.0, 4.0], [-3.0, 0.0, 0.0]]), piece).tolist()
    [5.0, 3.0]
    """
    points = np.asarray(points, dtype=np.float64)
    start, way = lines[:, 0], lines[:, 1] - lines[:, 0]
    squared = np.einsum("ki,ki->k", way, way)
    squared = np.where(squared > 0.0, squared, 1.0)
    found = np.empty(len(points))
    step = max(1, _CHUNK // len(lines))
    for first in range(0, len(points), step):
        offset = points[first : first + step, None] - start
        share = np.clip(np.einsum("nki,ki->nk", offset, way) / squared, 0.0, 1.0)
        rest = offset - share[:, :, None] * way
        found[first : first + step] = np.sqrt(np.einsum("nki,nki->nk", rest, rest).min(axis=1))
    return found
