"""Distance from points to straight pieces of lines: triangles without a width."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.surface.distance import distances
from laywright.surface.triangles import Surface

__all__ = ["away_from_lines"]


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
    ends = np.arange(2 * len(lines)).reshape(-1, 2)
    narrow = Surface.single(floats(lines, -1, 2, 3).reshape(-1, 3), ends[:, [0, 1, 1]])
    return distances(points, narrow)
