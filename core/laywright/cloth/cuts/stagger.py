"""Whether the cuts of neighbouring plies keep apart, so that laps never lie on laps."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray, Vector
from laywright.cloth.cuts.cuts import CutSettings, LaidCut

__all__ = ["Clash", "clashes"]

_STEP = 1.0


@dataclass(frozen=True)
class Clash:
    """Two cuts that lie too near each other.

    Attributes
    ----------
    ply, other : int
        The plies, the lower number first.
    distance : float, mm
        Between the cuts.
    needed : float, mm
        What they should keep.
    place : tuple of 3 float, mm
        Where they come nearest.
    """

    ply: int
    other: int
    distance: float
    needed: float
    place: Vector


def clashes(plies: Sequence[Sequence[LaidCut]], settings: CutSettings) -> tuple[Clash, ...]:
    """Return every pair of plies whose cuts come too near each other.

    Parameters
    ----------
    plies : sequence of sequence of LaidCut
        Cuts of each ply, ply 1 first.
    settings : CutSettings
        Stagger, and how many plies further up it counts.

    Returns
    -------
    tuple of Clash
        The nearest place of each pair of plies; distances are those of the lines through
        points 1 mm apart.
    """
    found = []
    for upper in range(1, len(plies)):
        for lower in range(max(0, upper - settings.plies_apart), upper):
            pairs = [
                _nearest(one, other, settings) for one in plies[lower] for other in plies[upper]
            ]
            near = [clash for clash in pairs if clash.distance < clash.needed]
            if near:
                found.append(min(near, key=lambda clash: clash.distance))
    return tuple(found)


def _nearest(one: LaidCut, other: LaidCut, settings: CutSettings) -> Clash:
    first, second = _dense(one.line), _dense(other.line)
    distance, _ = cKDTree(first).query(second)
    at = int(np.argmin(distance))
    x, y, z = second[at].tolist()
    needed = max(settings.stagger, min(one.lap, other.lap))
    return Clash(one.ply, other.ply, float(distance[at]), needed, (x, y, z))


def _dense(line: FloatArray) -> FloatArray:
    """Return a line with a point about every millimetre."""
    length = np.concatenate([[0.0], np.cumsum(np.linalg.norm(np.diff(line, axis=0), axis=1))])
    at = np.linspace(0.0, length[-1], max(2, int(np.ceil(length[-1] / _STEP)) + 1))
    return np.stack([np.interp(at, length, line[:, axis]) for axis in range(3)], axis=1)
