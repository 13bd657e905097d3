"""What the search of the cuts asks of a body, gathered once: extents, seam costs, outlines."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

import numpy as np
import shapely
from scipy.spatial import ConvexHull

from laywright.arrays import FloatArray, Vector
from laywright.mould.frame import upright
from laywright.mould.tiles.cuts import PrintPose, fewest_counts, underside
from laywright.mould.tiles.seam_cost import SeamCost
from laywright.mould.tiles.wishes import Stretch, obstacles
from laywright.surface.triangles import Surface

__all__ = ["CutLimits", "Ground", "Line", "ground_of"]

Line = tuple[tuple[float, ...], float]
"""Cuts along one axis, and what they cost."""

_SMOOTH = 0.05
_PLACE_STEP = 1.0


@dataclass(frozen=True)
class CutLimits:
    """What every tile must keep.

    Attributes
    ----------
    room : tuple of 3 float, mm
        Largest tile along the printer's axes.
    least_tile : float, mm
        No cut leaves less than this along its axis.
    pose : PrintPose
        Allowed poses.
    tongue : float, mm
        How far tongues stand out of a tile into its neighbour.
    ear : float, mm
        How far ears stand out of the sides of the mould.
    wall : float, mm
        Material left between a cut and what no cut may pass through.
    """

    room: Vector
    least_tile: float
    pose: PrintPose = PrintPose.BASE_DOWN
    tongue: float = 0.0
    ear: float = 0.0
    wall: float = 2.5


@dataclass(frozen=True, eq=False)
class Ground:
    """What the search asks of a body.

    Attributes
    ----------
    frame : (3, 3) float
        Rows are the axes of the grid that is not turned; the third is the pull.
    hull, face : (k, 3) float, mm
        Points that reach as far as the body, and as its working surface, at every turn.
    cost : SeamCost
        What a seam costs anywhere.
    foot, trimmed : shapely.Geometry, mm
        Plan outline of the body's foot, and of the part inside the trim line.
    things : list of (k, 3) float, mm
        Points of what no cut may pass through.
    limits : CutLimits
        What every tile must keep.
    lines : dict
        Cuts along an axis that were found before.
    costs : dict
        Costs along an axis that were worked out before.
    """

    frame: FloatArray
    hull: FloatArray
    face: FloatArray
    cost: SeamCost
    foot: shapely.Geometry
    trimmed: shapely.Geometry
    things: list[FloatArray]
    limits: CutLimits
    lines: dict[tuple[object, ...], Line | None] = field(default_factory=dict)
    costs: dict[tuple[float, int], tuple[FloatArray, FloatArray]] = field(default_factory=dict)

    def axes(self, turn: float) -> FloatArray:
        """Return the axes of the grid at a turn about the pull, in its own frame: (3, 3)."""
        cos, sin = math.cos(turn), math.sin(turn)
        about = np.array([[cos, sin, 0.0], [-sin, cos, 0.0], [0.0, 0.0, 1.0]])
        return np.asarray(about, dtype=np.float64)

    def extents(self, turn: float) -> list[Stretch]:
        """Return from where to where the body reaches along each axis, mm."""
        return [_extent(self.hull, axis) for axis in self.axes(turn)]

    def working_extent(self, turn: float, axis: int) -> Stretch:
        """Return from where to where the working surface reaches along one axis, mm."""
        return _extent(self.face, self.axes(turn)[axis])

    def fewest(self, turn: float) -> int:
        """Return a number of tiles that no grid of this turn can be below."""
        x, y, z = (high - low for low, high in self.extents(turn))
        limits = self.limits
        return math.prod(fewest_counts((x, y, z), limits.room, limits.pose, limits.tongue)[0])

    def seam_costs(self, turn: float, axis: int) -> tuple[FloatArray, FloatArray]:
        """Return places a millimetre apart along an axis, and what a seam costs there, mm."""
        key = (turn, axis)
        if key not in self.costs:
            way = self.axes(turn)[axis]
            low, high = _extent(self.hull, way)
            reach = math.floor((high - low) / 2.0 / _PLACE_STEP)
            steps = 0.5 * (low + high) + _PLACE_STEP * np.arange(-reach, reach + 1)
            self.costs[key] = (steps, self.cost.along(way @ self.frame, steps))
        return self.costs[key]


def ground_of(
    solid: Surface,
    working: Surface,
    trim_line: FloatArray,
    pull: Vector,
    limits: CutLimits,
) -> Ground:
    """Return what the search asks of a body.

    Parameters
    ----------
    solid, working : Surface
        The body and its working surface, mm.
    trim_line : (k, 3) float, mm
        The trim edge.
    pull : tuple of 3 float
        Unit pull.
    limits : CutLimits
        What every tile must keep.
    """
    frame = upright(pull)
    edges = [trim_line]
    if "filled hole" in solid.patch_names:
        filled = solid.patches == solid.patch_names.index("filled hole")
        edges.append(solid.vertices[np.unique(solid.triangles[filled])])
    outline = shapely.Polygon((trim_line @ frame.T)[:, :2]).buffer(0.0)
    return Ground(
        frame,
        _hull(solid, frame),
        _hull(working, frame),
        SeamCost.of(working, np.concatenate(edges)),
        shapely.simplify(underside(solid, frame), _SMOOTH),
        shapely.simplify(outline, _SMOOTH),
        obstacles(solid),
        limits,
    )


def _hull(surface: Surface, frame: FloatArray) -> FloatArray:
    """Return points that reach as far as a surface at every turn about the pull: (k, 3)."""
    flat = surface.vertices @ frame.T
    around = flat[ConvexHull(flat[:, :2]).vertices] if len(flat) > 3 else flat
    ends = flat[[int(np.argmin(flat[:, 2])), int(np.argmax(flat[:, 2]))]]
    return np.concatenate([around, ends])


def _extent(points: FloatArray, axis: FloatArray) -> Stretch:
    along = points @ axis
    return float(along.min()), float(along.max())
