"""Marks that meet across a seam, so that its two sides are laid together place by place."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from shapely.geometry import LineString, Point, Polygon
from shapely.ops import nearest_points

from laywright.arrays import Array, FloatArray, floats
from laywright.cloth.cuts.cutting import Seam
from laywright.cloth.patterns.seam_runs import Run, Side

__all__ = ["APART", "seam_marks"]

APART = 100.0
"""Marks along a seam lie about this far apart, mm; common practice, no source."""

_AT_EDGE = 0.1


def seam_marks(
    runs: Sequence[Run],
    seams: Sequence[Seam],
    laps: Sequence[float],
    cut: Polygon,
    length: float,
) -> tuple[FloatArray, ...]:
    """Return the marks of one piece along the cuts that part it from others, or from itself.

    A mark on the left side runs from its cut edge inwards.  On the right side it starts where
    that edge will lie, so that the two form one line; both are measured along the cut on the
    part.  Darts have none: their mouth and their tip do.

    Parameters
    ----------
    runs : sequence of Run
        Edges of the piece.
    seams : sequence of Seam
        Cuts of the ply.
    laps : sequence of float, mm
        Width of the lap at each cut.
    cut : shapely.Polygon
        The cut line.
    length : float, mm
        Of each mark; 0 for none.

    Returns
    -------
    tuple of (2, 2) float, mm
    """
    found: dict[tuple[int, int], list[FloatArray]] = {}
    lost: set[tuple[int, int]] = set()
    sided = [run for run in runs if run.side is not None and length > 0.0]
    for run in sided:
        seam, lap = seams[run.cut], laps[run.cut]
        if np.array_equal(seam.left[-1, 1], seam.right[-1, 1]):
            continue
        smooth = LineString(run.points)
        for number, (step, share) in enumerate(_places(seam)):
            at = np.flatnonzero(run.steps == step)
            if not len(at):
                continue
            start, end = run.mesh[at[0]], run.mesh[at[0] + 1]
            along = share if run.side is Side.LEFT else 1.0 - share
            place = nearest_points(smooth, Point(start + along * (end - start)))[0]
            way = (end - start) / np.linalg.norm(end - start)
            outwards = np.array([way[1], -way[0]])
            shift = lap if run.side is Side.LEFT else -lap
            outside = np.array([place.x, place.y]) + shift * outwards
            mark = floats([outside, outside - length * outwards], 2, 2)
            if _fits(mark, cut, run.side, lap):
                found.setdefault((run.cut, number), []).append(mark)
            else:
                lost.add((run.cut, number))
    return tuple(mark for key, marks in found.items() if key not in lost for mark in marks)


def _places(seam: Seam) -> list[tuple[int, float]]:
    """Return the step of a cut on which each mark lies, and where on it, 0 to 1."""
    length: Array = np.linalg.norm(np.diff(seam.line, axis=0), axis=1)
    total = np.concatenate([[0.0], np.cumsum(length)])
    count = max(1, round(total[-1] / APART))
    at = (np.arange(count) + 0.5) / count * total[-1]
    steps = np.clip(np.searchsorted(total, at, side="right") - 1, 0, len(length) - 1)
    shares = (at - total[steps]) / length[steps]
    return list(zip(steps.tolist(), shares.tolist(), strict=True))


def _fits(mark: FloatArray, cut: Polygon, side: Side | None, lap: float) -> bool:
    """Return whether a mark lies on the cloth, and starts at its edge where it has to."""
    at_edge = side is Side.LEFT or lap == 0.0
    near = cut.exterior.distance(Point(mark[0])) <= _AT_EDGE
    return bool(cut.buffer(_AT_EDGE).covers(LineString(mark))) and (near or not at_edge)
