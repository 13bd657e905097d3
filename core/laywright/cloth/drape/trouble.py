"""Where a draped cloth passes its limits, and by how much."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from laywright.arrays import FloatArray, IntArray
from laywright.cloth.drape.drape import Drape
from laywright.cloth.drape.fabric import Fabric
from laywright.surface.triangles import Surface

__all__ = ["CLEAR", "Limits", "excess", "limits_of", "past", "spots"]

CLEAR = 0.002
"""Share of the area past a limit that counts as none: the tips of darts are always strained."""


@dataclass(frozen=True)
class Limits:
    """What a cloth stands.

    Attributes
    ----------
    shear : float, radians
    warp, weft : float
        Stretch or gathering.
    """

    shear: float
    warp: float
    weft: float


def limits_of(fabric: Fabric, shear: float | None = None) -> Limits:
    """Return the limits of a fabric; a shear limit of one's own may lie below its locking."""
    own = fabric.locking_angle if shear is None else min(shear, fabric.locking_angle)
    return Limits(own, fabric.warp_limit, fabric.weft_limit)


def excess(drape: Drape, limits: Limits) -> FloatArray:
    """Return by which multiple of its limit each triangle is strained: (m,) float."""
    most: FloatArray = np.maximum.reduce(
        [
            np.abs(drape.shear) / limits.shear,
            np.abs(drape.warp_stretch) / limits.warp,
            np.abs(drape.weft_stretch) / limits.weft,
        ]
    )
    return most


def past(surface: Surface, drape: Drape, limits: Limits) -> float:
    """Return the share of the area that is past a limit."""
    beyond = excess(drape, limits) > 1.0
    return float(surface.areas[beyond].sum() / surface.area)


def spots(surface: Surface, over: FloatArray) -> list[IntArray]:
    """Return the triangles that are past a limit, spot by spot, the worst spot first.

    Parameters
    ----------
    surface : Surface
    over : (m,) float
        By how much each triangle is past its limits; 0 where it is not.
    """
    weight = over * surface.areas
    beyond = over > 0.0
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    left, right = table.left[inner], table.right[inner]
    both = beyond[left] & beyond[right]
    count = len(over)
    graph = coo_matrix((np.ones(int(both.sum())), (left[both], right[both])), shape=(count, count))
    _, label = connected_components(graph, directed=False)
    found = [np.flatnonzero(label == number) for number in np.unique(label[beyond])]
    return sorted(found, key=lambda spot: -float(weight[spot].sum()))
