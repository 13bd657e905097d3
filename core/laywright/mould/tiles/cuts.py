"""The grid that a body is cut along, and what fits the printer.

The tiles form a grid of boxes that may be turned about the pull; `laywright.mould.tiles.cut_search`
finds the best one.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

import numpy as np
import shapely

from laywright.arrays import FloatArray, Vector, floats
from laywright.surface.triangles import Surface

__all__ = [
    "CutPlan",
    "PrintPose",
    "count_along",
    "fewest_counts",
    "rotations",
    "underside",
]

_EXACT = 1e-9
_LEVEL = 1.0


class PrintPose(Enum):
    """How tiles may stand on the bed."""

    BASE_DOWN = "base on the bed"
    ANY_SIDE = "base or a side on the bed"


@dataclass(frozen=True, eq=False)
class CutPlan:
    """The grid that the body is cut along.

    Attributes
    ----------
    axes : (3, 3) float
        Rows are the grid's axes in the part's coordinates; the third is the pull.
    turn : float, radians
        Turn of the grid about the pull.
    low, high : tuple of 3 float, mm
        Extent of the body along the axes.
    cuts : tuple of 3 tuples of float, mm
        Positions of the cuts along each axis.
    rotation : (3, 3) float
        Turns the grid's axes to the printer's.
    cost : float
        Weighted seam length, mm.
    slivers : int
        Tiles that are thinner than wanted, or carry a sliver of the working face, at a corner.
    free_count : int
        Number of cells without the maker's wishes; 0 if there were none.
    free_cost : float
        Weighted seam length without them, mm.
    is_whole_search : bool
        Whether every turn was tried before the time was up or somebody stopped the search.
    piece : int
        Which piece of a mould it cuts, from 1; 0 for a mould that is one body.
    """

    axes: FloatArray
    turn: float
    low: Vector
    high: Vector
    cuts: tuple[tuple[float, ...], tuple[float, ...], tuple[float, ...]]
    rotation: FloatArray
    cost: float
    slivers: int = 0
    free_count: int = 0
    free_cost: float = 0.0
    is_whole_search: bool = True
    piece: int = 0

    def __post_init__(self) -> None:
        object.__setattr__(self, "axes", floats(self.axes, 3, 3))
        object.__setattr__(self, "rotation", floats(self.rotation, 3, 3))

    @property
    def counts(self) -> tuple[int, int, int]:
        """Number of cells along each axis."""
        x, y, z = (len(cuts) + 1 for cuts in self.cuts)
        return x, y, z

    @property
    def more_tiles(self) -> int:
        """How many cells more the maker's wishes cost; 0 if there were none."""
        return math.prod(self.counts) - self.free_count if self.free_count else 0

    @property
    def more_cost(self) -> float:
        """How much longer the weighted seams are for the maker's wishes, mm; may be negative."""
        return self.cost - self.free_cost if self.free_count else 0.0

    def cell(self, place: tuple[int, int, int]) -> FloatArray:
        """Return the low and high corner of a cell: (2, 3) float, mm."""
        edges = [(self.low[axis], *self.cuts[axis], self.high[axis]) for axis in range(3)]
        return np.array([[edges[a][place[a] + i] for a in range(3)] for i in (0, 1)])


def rotations(pose: PrintPose) -> tuple[FloatArray, ...]:
    """Return the turns from the grid's axes to the printer's, those with the base down first."""
    up = np.eye(3)
    quarter = np.array([[0.0, -1.0, 0.0], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]])
    if pose is PrintPose.BASE_DOWN:
        return up, quarter
    over = np.array([[1.0, 0.0, 0.0], [0.0, 0.0, -1.0], [0.0, 1.0, 0.0]])
    aside = np.array([[0.0, 0.0, 1.0], [0.0, 1.0, 0.0], [-1.0, 0.0, 0.0]])
    sides = (over, aside, over.T, aside.T)
    return up, quarter, *sides, *(quarter @ side for side in sides)


def fewest_counts(
    extent: Vector, room: Vector, pose: PrintPose = PrintPose.BASE_DOWN, reach: float = 0.0
) -> tuple[tuple[int, int, int], int]:
    """Return the fewest boxes that a box is cut into, and the place of the rotation used.

    Parameters
    ----------
    extent : tuple of 3 float, mm
        The box along the grid's axes.
    room : tuple of 3 float, mm
        Largest box that can be printed, along the printer's axes.
    pose : PrintPose
        Allowed poses.
    reach : float, mm
        How far every box but the last of a row stands out into the next.

    Examples
    --------
    >>> fewest_counts((512.0, 310.0, 140.0), (256.0, 256.0, 256.0))
    ((2, 2, 1), 0)
    """
    options = []
    for index, rotation in enumerate(rotations(pose)):
        limit = np.abs(rotation).T @ np.array(room)
        x, y, z = (
            count_along(length, most, reach)
            for length, most in zip(extent, limit.tolist(), strict=True)
        )
        options.append((x * y * z, index, (x, y, z)))
    _, index, counts = min(options)
    return counts, index


def count_along(length: float, most: float, reach: float = 0.0) -> int:
    """Return how many pieces of at most `most` make up a length; see `fewest_counts`."""
    return max(1, math.ceil((length - reach) / (most - reach) - _EXACT))


def underside(solid: Surface, axes: FloatArray) -> shapely.Geometry:
    """Return the plan outline of a solid's foot, in the first two axes, mm; hollows are filled."""
    flat = solid.vertices @ axes.T
    low = flat[:, 2].min() + _LEVEL
    under = (flat[:, 2] < low)[solid.triangles].all(axis=1)
    corners = flat[solid.triangles[under]]
    a, b = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    down = a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0] < 0.0
    shape = shapely.union_all(shapely.polygons(corners[down][:, :, :2]))
    parts = [part for part in getattr(shape, "geoms", [shape]) if part.geom_type == "Polygon"]
    return shapely.union_all([shapely.Polygon(part.exterior) for part in parts])
