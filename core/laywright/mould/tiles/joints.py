"""Where the joints of a grid lie: two in every seam that has room for them.

A round hole fixes the place; a slot along the line between the two fixes the turn without
forcing both distances to agree.  They are placed as far apart as the seam's section allows with
a wall left on every side and at their ends, measured on nine sections from end to end.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np
import shapely
from manifold3d import Manifold
from shapely.ops import polylabel

from laywright.arrays import FloatArray
from laywright.mould.tiles.cells import place_after, places_below
from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.joint import Joint, JointKind, Place

__all__ = ["BareSeam", "JointSize", "Rooms", "Seams", "joints_of", "seams_of", "sections"]

Rooms = dict[tuple[Place, int], shapely.Geometry]
"""Free face of every seam, by its lower cell and its axis, in the two axes that follow it."""

_LEVELS = 4
_SMOOTH = 0.01


@dataclass(frozen=True)
class JointSize:
    """How large joints are.

    Attributes
    ----------
    diameter, depth : float, mm
        Of the hole, or of the groove: clearance included.
    wall : float, mm
        Material left around it on every side.
    slot : float, mm
        How far a slot is drawn out to both sides.
    kind : JointKind
        `JointKind.DOWELS` or `JointKind.TONGUES`.
    clearance : float, mm
        Room on every side.
    """

    diameter: float
    depth: float
    wall: float
    slot: float
    kind: JointKind = JointKind.DOWELS
    clearance: float = 0.15

    @property
    def needed(self) -> float:
        """Width of section that a joint needs, mm."""
        return self.diameter + 2.0 * (self.wall + self.slot + _SMOOTH)


@dataclass(frozen=True)
class BareSeam:
    """A seam without room for a joint.

    Attributes
    ----------
    lower, upper : tuple of 3 int
        Cells that it lies between.
    width : float, mm
        Diameter of the largest circle inside all its sections, clear of other seams' joints.
    """

    lower: Place
    upper: Place
    width: float


@dataclass(frozen=True)
class Seams:
    """All seams of a grid.

    Attributes
    ----------
    joints : tuple of Joint
        A round one and a slot per seam where both find room, else a round one or none.
    area : float, mm^2
        Area of all seams together.
    bare : tuple of BareSeam
        Seams without a joint.
    rooms : dict
        What the joints leave of every seam's face, a wall around each joint left out.
    """

    joints: tuple[Joint, ...]
    area: float
    bare: tuple[BareSeam, ...]
    rooms: Rooms = field(default_factory=dict)


def joints_of(body: Manifold, plan: CutPlan, size: JointSize) -> Seams:
    """Return the joints of all seams.

    Parameters
    ----------
    body : Manifold
        In the grid's axes.
    plan : CutPlan
        The grid.
    size : JointSize
        How large they are.
    """
    joints: list[Joint] = []
    bare: list[BareSeam] = []
    rooms: Rooms = {}
    total = 0.0
    margin = size.needed / 2.0
    for axis in range(3):
        turned = _turned(body, axis) if plan.cuts[axis] else body
        for index, cut in enumerate(plan.cuts[axis]):
            reach = (size.depth + size.wall) * np.arange(-_LEVELS, _LEVELS + 1) / _LEVELS
            levels = [_slice(turned, cut + step) for step in reach.tolist()]
            solid = levels[_LEVELS]
            total += solid.area
            common = shapely.intersection_all([shapely.simplify(s, _SMOOTH) for s in levels])
            free = common.buffer(-margin)
            for lower in places_below(plan, axis, index):
                window = _window(plan, lower, axis, 0.0, 0.0)
                if shapely.intersection(solid, window).area < 1e-6:
                    continue
                face = shapely.intersection(common, window)
                inner = _window(plan, lower, axis, margin, size.depth)
                found = _two_points(shapely.intersection(free, inner), size.diameter)
                drawn = np.zeros(2)
                for point in found:
                    joints.append(_joint(lower, axis, cut, point, drawn, size))
                    drawn = _towards(found, size.slot)
                if not found:
                    clear = _window(plan, lower, axis, 0.0, size.depth)
                    width = _width(shapely.intersection(face, clear))
                    bare.append(BareSeam(lower, place_after(lower, axis), width))
                else:
                    taken = shapely.buffer(shapely.multipoints(found), margin)
                    face = shapely.difference(face, taken)
                rooms[lower, axis] = face
    return Seams(tuple(joints), total, tuple(bare), rooms)


def seams_of(body: Manifold, plan: CutPlan, depth: float) -> Seams:
    """Return seams that have no joints.

    Parameters
    ----------
    body : Manifold
        In the grid's axes.
    plan : CutPlan
        The grid.
    depth : float, mm
        What is free is free as deep as that on both sides.
    """
    rooms: Rooms = {}
    total = 0.0
    for axis in range(3):
        turned = _turned(body, axis) if plan.cuts[axis] else body
        for index, cut in enumerate(plan.cuts[axis]):
            levels = [_slice(turned, cut + step) for step in (-depth, 0.0, depth)]
            total += levels[1].area
            common = shapely.intersection_all(levels)
            for lower in places_below(plan, axis, index):
                window = _window(plan, lower, axis, 0.0, 0.0)
                if shapely.intersection(levels[1], window).area >= 1e-6:
                    rooms[lower, axis] = shapely.intersection(common, window)
    return Seams((), total, (), rooms)


def sections(body: Manifold, axis: int, places: Sequence[float]) -> list[shapely.Geometry]:
    """Return the sections across an axis, in the coordinates of the two axes that follow."""
    turned = _turned(body, axis)
    return [_slice(turned, place) for place in places]


def _turned(body: Manifold, axis: int) -> Manifold:
    order = [(axis + 1) % 3, (axis + 2) % 3, axis]
    matrix = np.zeros((3, 4))
    for row, column in enumerate(order):
        matrix[row, column] = 1.0
    return body.transform(matrix)


def _slice(turned: Manifold, place: float) -> shapely.Geometry:
    loops = turned.slice(place).to_polygons()
    shape: shapely.Geometry = shapely.Polygon()
    for loop in loops:
        if len(loop) > 2:
            ring = shapely.Polygon(np.asarray(loop)).buffer(0.0)
            shape = shapely.symmetric_difference(shape, ring)
    return shape


def _window(plan: CutPlan, lower: Place, axis: int, wall: float, depth: float) -> shapely.Geometry:
    """Return the part of a seam plane that belongs to one cell, kept off its other seams.

    Towards a seam of an axis that comes first, the holes of that seam need their depth too.
    """
    low, high = plan.cell(lower)
    sides = []
    for other in ((axis + 1) % 3, (axis + 2) % 3):
        margin = wall + depth if other < axis else wall
        start = low[other] + (margin if lower[other] > 0 else -1.0)
        end = high[other] - (margin if lower[other] < plan.counts[other] - 1 else -1.0)
        sides.append((start, end))
    (x0, x1), (y0, y1) = sides
    return shapely.box(x0, y0, x1, y1) if x1 > x0 and y1 > y0 else shapely.Polygon()


def _two_points(room: shapely.Geometry, diameter: float) -> list[FloatArray]:
    """Return the two points of a shape farthest apart, one if it is small, none if empty."""
    if room.is_empty or room.area <= 0.0:
        return []
    points = np.asarray(shapely.get_coordinates(shapely.convex_hull(room)))
    apart = np.linalg.norm(points[:, None] - points[None], axis=2)
    one, other = np.unravel_index(int(np.argmax(apart)), apart.shape)
    if apart[one, other] < 3.0 * diameter:
        inside = room.representative_point()
        return [np.array([inside.x, inside.y])]
    return [points[one], points[other]]


def _towards(points: list[FloatArray], length: float) -> FloatArray:
    """Return the way from the first to the last of a seam's points, of a given length."""
    way = points[-1] - points[0]
    return np.asarray(length * way / max(float(np.linalg.norm(way)), 1e-12))


def _width(shape: shapely.Geometry) -> float:
    """Return the diameter of the largest circle in a shape, mm."""
    parts = [part for part in getattr(shape, "geoms", [shape]) if part.geom_type == "Polygon"]
    parts = [part for part in parts if part.area > 0.0]
    return max((_inscribed(part) for part in parts), default=0.0)


def _inscribed(part: shapely.Polygon) -> float:
    return 2.0 * float(shapely.distance(polylabel(part, tolerance=0.05), part.exterior))


def _joint(
    lower: Place, axis: int, cut: float, point: FloatArray, slot: FloatArray, size: JointSize
) -> Joint:
    at, drawn = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
    for i in (0, 1):
        at[(axis + 1 + i) % 3] = float(point[i])
        drawn[(axis + 1 + i) % 3] = float(slot[i])
    at[axis] = cut
    return Joint(
        lower,
        place_after(lower, axis),
        axis,
        (at[0], at[1], at[2]),
        size.diameter,
        size.depth,
        (drawn[0], drawn[1], drawn[2]),
        size.kind,
        size.clearance,
    )
