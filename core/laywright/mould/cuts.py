"""Where the body is cut into tiles.

The tiles form a grid of boxes that may be turned about the pull.  First comes the number of
tiles: the fewest that fit the printer in an allowed pose.  Among the grids with that number
the seams are placed where they cost least (`laywright.mould.seams`).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from itertools import product

import numpy as np
import shapely
from shapely.affinity import rotate

from laywright.arrays import FloatArray, Vector, floats
from laywright.errors import LimitError
from laywright.mould.frame import upright
from laywright.mould.seams import place_seams, seam_lengths, seam_weights
from laywright.surface.triangles import Surface

__all__ = [
    "CutPlan",
    "PrintPose",
    "fewest_counts",
    "plan_cuts",
    "rotations",
    "slivers",
    "underside",
]

_TURN_STEP = math.radians(7.5)
_PLACE_STEP = 1.0
_EVENED = 6.0
_MOST_TILES = 400
_EXACT = 1e-9


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
    """

    axes: FloatArray
    turn: float
    low: Vector
    high: Vector
    cuts: tuple[tuple[float, ...], tuple[float, ...], tuple[float, ...]]
    rotation: FloatArray
    cost: float

    def __post_init__(self) -> None:
        object.__setattr__(self, "axes", floats(self.axes, 3, 3))
        object.__setattr__(self, "rotation", floats(self.rotation, 3, 3))

    @property
    def counts(self) -> tuple[int, int, int]:
        """Number of cells along each axis."""
        x, y, z = (len(cuts) + 1 for cuts in self.cuts)
        return x, y, z

    def cell(self, place: tuple[int, int, int]) -> FloatArray:
        """Return the low and high corner of a cell: (2, 3) float, mm."""
        edges = [(self.low[axis], *self.cuts[axis], self.high[axis]) for axis in range(3)]
        return np.array([[edges[a][place[a] + i] for a in range(3)] for i in (0, 1)])


def rotations(pose: PrintPose) -> tuple[FloatArray, ...]:
    """Return the turns from the grid's axes to the printer's, the preferred one first."""
    up = np.eye(3)
    quarter = np.array([[0.0, -1.0, 0.0], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]])
    if pose is PrintPose.BASE_DOWN:
        return up, quarter
    over = np.array([[1.0, 0.0, 0.0], [0.0, 0.0, -1.0], [0.0, 1.0, 0.0]])
    aside = np.array([[0.0, 0.0, 1.0], [0.0, 1.0, 0.0], [-1.0, 0.0, 0.0]])
    return up, quarter, over, quarter @ over, aside, quarter @ aside


def fewest_counts(
    extent: Vector, room: Vector, pose: PrintPose = PrintPose.BASE_DOWN
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

    Examples
    --------
    >>> fewest_counts((512.0, 310.0, 140.0), (256.0, 256.0, 256.0))
    ((2, 2, 1), 0)
    """
    options = []
    for index, rotation in enumerate(rotations(pose)):
        limit = np.abs(rotation).T @ np.array(room)
        x, y, z = (
            max(1, math.ceil(length / most - _EXACT))
            for length, most in zip(extent, limit.tolist(), strict=True)
        )
        options.append((x * y * z, index, (x, y, z)))
    _, index, counts = min(options)
    return counts, index


def plan_cuts(
    solid: Surface,
    working: Surface,
    trim_line: FloatArray,
    pull: Vector,
    room: Vector,
    least_tile: float,
    pose: PrintPose = PrintPose.BASE_DOWN,
) -> CutPlan:
    """Return the best grid.

    Parameters
    ----------
    solid : Surface
        The body, mm.
    working : Surface
        Its working surface, where seams cost.
    trim_line : (k, 3) float, mm
        The trim edge.
    pull : tuple of 3 float
        Unit pull.
    room : tuple of 3 float, mm
        Largest tile along the printer's axes.
    least_tile : float, mm
        No cut leaves less than this along its axis.
    pose : PrintPose
        Allowed poses.

    Raises
    ------
    LimitError
        If tiles of the least size do not fit, or far too many are needed.
    """
    if min(room) < least_tile:
        raise LimitError(
            "printer",
            f"room for {min(room):.4g} mm",
            f"at least the least tile of {least_tile:.4g} mm",
            "choose a larger printer or allow smaller tiles",
        )
    frames = [_frame(pull, turn) for turn in np.arange(0.0, math.pi / 2 - 1e-6, _TURN_STEP)]
    points = [solid.vertices @ axes.T for axes in frames]
    options = []
    for place, flat in enumerate(points):
        low, high = flat.min(axis=0), flat.max(axis=0)
        counts, rotation = fewest_counts(_three(high - low), room, pose)
        options.append((int(np.prod(counts)), place, counts, rotation))
    fewest = min(option[0] for option in options)
    if fewest > _MOST_TILES:
        raise LimitError(
            "printer",
            f"{fewest} tiles for this mould",
            f"at most {_MOST_TILES}",
            "choose a larger printer",
        )
    weights = seam_weights(working, trim_line)
    outline = underside(solid, frames[0])
    plans = []
    for number, place, counts, rotation in options:
        if number > fewest:
            continue
        limit = np.abs(rotations(pose)[rotation]).T @ np.array(room)
        corners = working.corners @ frames[place].T
        found = _grid(points[place], corners, weights, counts, limit, least_tile)
        if found is not None:
            cuts, cost = found
            low, high = points[place].min(axis=0), points[place].max(axis=0)
            plan = CutPlan(
                frames[place],
                float(place * _TURN_STEP),
                _three(low),
                _three(high),
                cuts,
                rotations(pose)[rotation],
                cost,
            )
            plans.append((slivers(outline, plan, least_tile), cost, place, plan))
    if not plans:
        raise LimitError(
            "least tile",
            f"{least_tile:.4g} mm",
            "a size that the cuts of this mould can keep",
            "allow smaller tiles or choose another printer",
        )
    return min(plans, key=lambda item: item[:3])[3]


def underside(solid: Surface, axes: FloatArray) -> shapely.Geometry:
    """Return the plan outline of what lies flat below a solid, in the first two axes, mm."""
    flat = solid.vertices @ axes.T
    down = solid.normals @ axes[2] < -0.5
    return shapely.union_all(shapely.polygons(flat[solid.triangles[down]][:, :, :2]))


def slivers(outline: shapely.Geometry, plan: CutPlan, least_tile: float) -> int:
    """Return how many tiles would be thinner than `least_tile` in the plan view.

    Parameters
    ----------
    outline : shapely.Geometry, mm
        Underside of the body in the axes of a grid that is not turned.
    plan : CutPlan
        The grid.
    least_tile : float, mm
        The limit.
    """
    turned = rotate(outline, -plan.turn, origin=(0.0, 0.0), use_radians=True)
    count = 0
    for i, j in product(range(plan.counts[0]), range(plan.counts[1])):
        low, high = plan.cell((i, j, 0))
        part = shapely.intersection(turned, shapely.box(low[0], low[1], high[0], high[1]))
        if part.is_empty or part.area < 1e-6:
            continue
        x0, y0, x1, y1 = part.bounds
        count += min(x1 - x0, y1 - y0) < least_tile - _EXACT
    return count


def _grid(
    points: FloatArray,
    corners: FloatArray,
    weights: FloatArray,
    counts: tuple[int, int, int],
    limit: FloatArray,
    least_tile: float,
) -> tuple[tuple[tuple[float, ...], tuple[float, ...], tuple[float, ...]], float] | None:
    cuts, cost = [], 0.0
    for axis in range(3):
        low, high = float(points[:, axis].min()), float(points[:, axis].max())
        places = _candidates(low, high, counts[axis])
        costs = _evened(places, seam_lengths(corners, weights, axis, places))
        shortest = least_tile if counts[axis] > 1 else 0.0
        found = place_seams(
            places, costs, (low, high), counts[axis] - 1, float(limit[axis]), shortest
        )
        if found is None:
            return None
        cuts.append(found[0])
        cost += found[1]
    return (cuts[0], cuts[1], cuts[2]), cost


def _candidates(low: float, high: float, count: int) -> FloatArray:
    """Return candidate cuts: one every millimetre from the middle, and the even ones."""
    middle = 0.5 * (low + high)
    reach = math.floor((high - low) / 2.0 / _PLACE_STEP)
    steps = middle + _PLACE_STEP * np.arange(-reach, reach + 1)
    even = low + (high - low) * np.arange(1, count) / count
    every = np.unique(np.concatenate([steps, even]))
    return np.asarray(every[(every > low) & (every < high)], dtype=np.float64)


def _evened(places: FloatArray, costs: FloatArray) -> FloatArray:
    """Return the mean cost within a few millimetres, free of the triangles' own pattern."""
    if len(places) < 2:
        return costs
    total = np.concatenate([[0.0], np.cumsum(0.5 * (costs[1:] + costs[:-1]) * np.diff(places))])
    low = np.maximum(places - _EVENED, places[0])
    high = np.minimum(places + _EVENED, places[-1])
    return np.asarray(
        (np.interp(high, places, total) - np.interp(low, places, total)) / (high - low)
    )


def _frame(pull: Vector, turn: float) -> FloatArray:
    cos, sin = math.cos(turn), math.sin(turn)
    about = np.array([[cos, sin, 0.0], [-sin, cos, 0.0], [0.0, 0.0, 1.0]])
    return np.asarray(about @ upright(pull), dtype=np.float64)


def _three(values: FloatArray) -> Vector:
    x, y, z = np.asarray(values).tolist()
    return x, y, z
