"""The frame of a mould: its third axis is the pull direction."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray, Vector, unit_vector

__all__ = ["upright"]


def upright(pull: Vector) -> FloatArray:
    """Return the rotation that turns `pull` upwards: (3, 3) float.

    Its rows are the mould's axes in the part's coordinates: the first is the part's x axis
    (or y, where the pull runs along x) laid into the plane across the pull.

    Examples
    --------
    >>> upright((0.0, 0.0, 1.0)).tolist()
    [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]]
    """
    up = np.array(unit_vector(pull))
    start = np.array([1.0, 0.0, 0.0]) if abs(up[0]) < 0.9 else np.array([0.0, 1.0, 0.0])
    first = np.array(unit_vector(start - (start @ up) * up))
    return np.asarray(np.stack([first, np.cross(up, first), up]) + 0.0, dtype=np.float64)
