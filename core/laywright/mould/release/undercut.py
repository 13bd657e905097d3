"""Which share of every facet holds the part back along a pull, or lets it leave with little draft.

A facet's share is undercut where it faces away from the pull or is hidden; both edges cut
facets, the one where the smooth draft changes its sign (`laywright.mould.release.smooth`), the
other where the shadow ends (`laywright.mould.release.visibility`).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import Array, FloatArray, Vector
from laywright.mould.release.smooth import shares_below
from laywright.mould.release.visibility import STANDING, hidden_share
from laywright.surface.triangles import Surface

__all__ = ["Undercut", "undercut_of"]

_STEPS = 3


@dataclass(frozen=True, eq=False)
class Undercut:
    """Shares of every facet, 0 to 1.

    Attributes
    ----------
    hidden : (m,) float
        Faces the pull but has something above it.
    undercut : (m,) float
        Holds the part back.
    steep : (m,) float
        Lets it leave, with less draft than wanted.
    """

    hidden: FloatArray
    undercut: FloatArray
    steep: FloatArray


def undercut_of(surface: Surface, pull: Vector, least: float = 0.0) -> Undercut:
    """Return how every facet releases along a pull.

    Parameters
    ----------
    surface : Surface
        Normals point to the side that the part leaves to, mm.
    pull : tuple of 3 float
        Unit direction.
    least : float
        Sine of the wanted draft.
    """
    tilt = surface.normals @ np.array(pull)
    hidden = hidden_share(surface, pull)
    away, below = shares_below(surface, pull, (-STANDING, least - STANDING))
    facing = tilt > STANDING
    turning = ~facing & (away > 0.0) & (away < 1.0)
    hanging = _from_beside(surface, hidden, turning, facing)
    undercut = np.clip(away + np.minimum(hanging, 1.0 - away), 0.0, 1.0)
    steep = np.minimum((below - away) * (1.0 - hanging), 1.0 - undercut)
    return Undercut(hidden, undercut, steep)


def _from_beside(surface: Surface, share: FloatArray, unknown: Array, known: Array) -> FloatArray:
    """Return the shares with the unknown ones taken from known neighbours, step by step."""
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    inner &= unknown[table.left] | unknown[table.right]
    here = np.concatenate([table.left[inner], table.right[inner]])
    there = np.concatenate([table.right[inner], table.left[inner]])
    share, known, size = share.copy(), known.copy(), len(share)
    for _ in range(_STEPS):
        used = unknown[here] & ~known[here] & known[there]
        number = np.bincount(here[used], minlength=size)
        total = np.bincount(here[used], weights=share[there[used]], minlength=size)
        found = number > 0
        share[found] = total[found] / number[found]
        known |= found
    return share
