"""Edge tape: it is laid over the cut line and cut through, so that the edge does not fray."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry import LinearRing

from laywright.arrays import FloatArray

__all__ = ["TAPES", "cut_length", "tape_length"]

TAPES = (20.0, 50.0)
"""Usual widths of tape, mm; common practice, no source."""


def cut_length(lines: Sequence[FloatArray]) -> float:
    """Return the length of closed lines, each (k, 2) float, mm."""
    return float(
        sum(np.linalg.norm(np.roll(line, -1, axis=0) - line, axis=1).sum() for line in lines)
    )


def tape_length(lines: Sequence[FloatArray], width: float) -> float:
    """Return how much tape covers closed cut lines once, half of its width on either side.

    The cloth that lies within half the width of any cut line is measured and divided by the
    width: a lone line takes its own length, and two that run side by side closer than the
    width share the tape between them.

    Parameters
    ----------
    lines : sequence of (k, 2) float, mm
        Closed cut lines.
    width : float, mm
        Width of the tape.

    Returns
    -------
    float
        mm.

    Examples
    --------
    >>> square = np.array([[0.0, 0.0], [500.0, 0.0], [500.0, 500.0], [0.0, 500.0]])
    >>> round(tape_length([square], 20.0))
    2000
    """
    covered = shapely.union_all(
        [LinearRing(line).buffer(width / 2, join_style="mitre") for line in lines]
    )
    return float(covered.area) / width
