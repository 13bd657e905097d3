"""Dowel holes between tiles: a round hole and a slot in every seam.

A round hole fixes the place; a slot along the line between the two fixes the turn without
forcing both distances to agree.  The dowels are loose rods, glued in.  Holes are placed as far
apart as the seam's section allows with a wall left on every side and at their ends, measured
on nine sections from end to end.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from manifold3d import Manifold

from laywright.arrays import FloatArray, Vector
from laywright.mould.cuts import CutPlan
from laywright.mould.solid import prism

__all__ = ["Joint", "Place", "hole", "joints_of", "sections"]

Place = tuple[int, int, int]

_SIDES = 48
_LEVELS = 4


@dataclass(frozen=True)
class Joint:
    """One dowel between two tiles.

    Attributes
    ----------
    lower, upper : tuple of 3 int
        Cells that it joins, the one with the lower place along the axis first.
    axis : int
        Axis of the grid that it runs along.
    point : tuple of 3 float, mm
        Where its middle lies, in the grid's axes.
    diameter : float, mm
        Of the dowel.
    depth : float, mm
        Of the hole in each tile.
    slot : tuple of 3 float, mm
        How far, and where to, the hole in the upper tile is drawn out to both sides; zero for
        a round hole.
    """

    lower: Place
    upper: Place
    axis: int
    point: Vector
    diameter: float
    depth: float
    slot: Vector


def joints_of(
    body: Manifold,
    plan: CutPlan,
    diameter: float,
    depth: float,
    wall: float,
    slot: float,
) -> tuple[tuple[Joint, ...], float, int]:
    """Return the dowels of all seams.

    Parameters
    ----------
    body : Manifold
        In the grid's axes.
    plan : CutPlan
        The grid.
    diameter, depth : float, mm
        Diameter of the hole, and its depth in each tile.
    wall : float, mm
        Material left around a hole on every side.
    slot : float, mm
        How far a slot is drawn out to both sides.

    Returns
    -------
    joints : tuple of Joint
        A round one and a slot per seam where both find room, else a round one or none.
    area : float, mm^2
        Area of all seams together.
    bare : int
        Number of seams without room for a dowel.
    """
    joints: list[Joint] = []
    total, bare = 0.0, 0
    margin = wall + diameter / 2.0 + slot
    for axis in range(3):
        for index, cut in enumerate(plan.cuts[axis]):
            reach = (depth + wall) * np.arange(-_LEVELS, _LEVELS + 1) / _LEVELS
            levels = sections(body, axis, (cut + reach).tolist())
            solid = levels[_LEVELS]
            total += solid.area
            free = shapely.intersection_all(np.array(levels)).buffer(-margin)
            for lower in _cells(plan, axis, index):
                window = _window(plan, lower, axis, 0.0, 0.0)
                if shapely.intersection(solid, window).area < 1e-6:
                    continue
                inner = _window(plan, lower, axis, margin, depth)
                room = shapely.intersection(free, inner)
                found = _two_points(room, diameter)
                bare += not found
                drawn = np.zeros(2)
                for point in found:
                    joints.append(_joint(plan, lower, axis, cut, point, drawn, diameter, depth))
                    drawn = _towards(found, slot)
    return tuple(joints), total, bare


def sections(body: Manifold, axis: int, places: Sequence[float]) -> list[shapely.Geometry]:
    """Return the sections across an axis, in the coordinates of the two axes that follow."""
    order = [(axis + 1) % 3, (axis + 2) % 3, axis]
    matrix = np.zeros((3, 4))
    for row, column in enumerate(order):
        matrix[row, column] = 1.0
    turned = body.transform(matrix)
    shapes = []
    for place in places:
        loops = turned.slice(place).to_polygons()
        rings = [shapely.Polygon(np.asarray(loop)) for loop in loops if len(loop) > 2]
        shape: shapely.Geometry = shapely.Polygon()
        for ring in rings:
            shape = shapely.symmetric_difference(shape, ring.buffer(0.0))
        shapes.append(shape)
    return shapes


def hole(joint: Joint, side: int, patch: int) -> Manifold:
    """Return the solid that cuts a dowel's hole into one tile, in the grid's axes.

    Parameters
    ----------
    joint : Joint
        The dowel.
    side : int
        -1 for the lower tile, 1 for the upper one, which gets the slot.
    patch : int
        Patch of the hole's sides.
    """
    radius = joint.diameter / 2.0 / math.cos(math.pi / _SIDES)
    first, second = (joint.axis + 1) % 3, (joint.axis + 2) % 3
    middle = np.array([joint.point[first], joint.point[second]])
    reach = np.array([joint.slot[first], joint.slot[second]]) if side > 0 else np.zeros(2)
    outline = middle + _slot_outline(radius, reach)
    level = joint.point[joint.axis]
    low, high = (level - joint.depth, level) if side < 0 else (level, level + joint.depth)
    matrix = np.zeros((3, 4))
    for column, row in enumerate((first, second, joint.axis)):
        matrix[row, column] = 1.0
    return prism(outline, low, high, patch).transform(matrix)


def _slot_outline(radius: float, reach: FloatArray) -> FloatArray:
    """Return a circle drawn out by `reach` to both sides, counter-clockwise: (k, 2) float."""
    start = math.atan2(reach[1], reach[0]) - math.pi / 2.0
    turn = start + math.pi * (2.0 * np.arange(_SIDES) + 1.0) / _SIDES
    circle = radius * np.stack([np.cos(turn), np.sin(turn)], axis=1)
    ahead = np.arange(_SIDES) < _SIDES // 2
    return np.where(ahead[:, None], circle + reach, circle - reach)


def _cells(plan: CutPlan, axis: int, index: int) -> list[Place]:
    """Return the cells just below a cut."""
    ranges = [range(count) for count in plan.counts]
    ranges[axis] = range(index, index + 1)
    return [(i, j, k) for i in ranges[0] for j in ranges[1] for k in ranges[2]]


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


def _joint(
    plan: CutPlan,
    lower: Place,
    axis: int,
    cut: float,
    point: FloatArray,
    slot: FloatArray,
    diameter: float,
    depth: float,
) -> Joint:
    at, drawn = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
    for i in (0, 1):
        at[(axis + 1 + i) % 3] = float(point[i])
        drawn[(axis + 1 + i) % 3] = float(slot[i])
    at[axis] = cut
    upper = [*lower]
    upper[axis] += 1
    return Joint(
        lower,
        (upper[0], upper[1], upper[2]),
        axis,
        (at[0], at[1], at[2]),
        diameter,
        depth,
        (drawn[0], drawn[1], drawn[2]),
    )
