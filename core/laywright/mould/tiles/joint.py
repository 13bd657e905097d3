"""One joint between two tiles: its kind, its place, and the solids that make it.

A dowel is a loose round rod in a hole on either side.  A tongue belongs to the lower tile and
stands in a groove of the upper one; its section is a square that stands on a corner, so that
neither tongue nor groove needs support when the pull points up on the printer.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

import numpy as np
from scipy.spatial import ConvexHull

from laywright.arrays import FloatArray, IntArray, Vector
from laywright.mould.solid import prism_mesh

__all__ = ["Joint", "JointKind", "Mesh", "Place", "hole", "tongue"]

Place = tuple[int, int, int]
Mesh = tuple[FloatArray, IntArray]

_SIDES = 32
_OVERLAP = 0.5


class JointKind(Enum):
    """How tiles are held in place against each other while the glue sets."""

    DOWELS = "dowels"
    TONGUES = "keyed tongues"
    CLAMP_EARS = "flat with clamp ears"
    PLAIN = "flat"


@dataclass(frozen=True)
class Joint:
    """One dowel or tongue between two tiles.

    Attributes
    ----------
    lower, upper : tuple of 3 int
        Cells that it joins, the one with the lower place along the axis first.
    axis : int
        Axis of the grid that it runs along.
    point : tuple of 3 float, mm
        Where its middle lies, in the grid's axes.
    diameter : float, mm
        Of the hole, or of the circle around the groove's section: clearance included.
    depth : float, mm
        Of the hole in each tile, or of the groove in the upper one.
    slot : tuple of 3 float, mm
        How far, and where to, the hole in the upper tile is drawn out to both sides; zero for
        a round hole.
    kind : JointKind
        `JointKind.DOWELS` or `JointKind.TONGUES`.
    clearance : float, mm
        Room on every side between tongue and groove, or dowel and hole.
    """

    lower: Place
    upper: Place
    axis: int
    point: Vector
    diameter: float
    depth: float
    slot: Vector
    kind: JointKind = JointKind.DOWELS
    clearance: float = 0.15


def hole(joint: Joint, side: int) -> Mesh | None:
    """Return the closed mesh of what is cut out of one tile, in the grid's axes.

    Parameters
    ----------
    joint : Joint
        The joint.
    side : int
        -1 for the lower tile, which a tongue leaves whole (None), 1 for the upper one, which
        gets the slot.
    """
    if joint.kind is JointKind.TONGUES and side < 0:
        return None
    first, second = (joint.axis + 1) % 3, (joint.axis + 2) % 3
    reach = np.array([joint.slot[first], joint.slot[second]]) if side > 0 else np.zeros(2)
    level = joint.point[joint.axis]
    low, high = (level - joint.depth, level) if side < 0 else (level, level + joint.depth)
    return _standing(joint, _section(joint, reach, 0.0), low, high)


def tongue(joint: Joint, face: float) -> Mesh:
    """Return the closed mesh of the tongue of a joint, in the grid's axes.

    Parameters
    ----------
    joint : Joint
        Of the kind `JointKind.TONGUES`.
    face : float, mm
        Where the lower tile ends along the joint's axis.
    """
    tip = joint.point[joint.axis] + joint.depth - joint.clearance
    return _standing(joint, _section(joint, np.zeros(2), joint.clearance), face - _OVERLAP, tip)


def _standing(joint: Joint, outline: FloatArray, low: float, high: float) -> Mesh:
    order = [(joint.axis + 1) % 3, (joint.axis + 2) % 3, joint.axis]
    points, triangles = prism_mesh(outline + np.array(joint.point)[order[:2]], low, high)
    placed = np.empty_like(points)
    placed[:, order] = points
    return placed, triangles


def _section(joint: Joint, reach: FloatArray, inset: float) -> FloatArray:
    """Return a joint's section, drawn out by `reach` to both sides, its sides moved in."""
    if joint.kind is JointKind.TONGUES:
        radius = joint.diameter / 2.0 - math.sqrt(2.0) * inset
        turn = 0.5 * math.pi * np.arange(4)
        return _drawn(radius * np.stack([np.cos(turn), np.sin(turn)], axis=1), reach)
    radius = (joint.diameter / 2.0 - inset) / math.cos(math.pi / _SIDES)
    start = math.atan2(reach[1], reach[0]) - math.pi / 2.0
    turn = start + math.pi * (2.0 * np.arange(_SIDES) + 1.0) / _SIDES
    return _drawn(radius * np.stack([np.cos(turn), np.sin(turn)], axis=1), reach)


def _drawn(outline: FloatArray, reach: FloatArray) -> FloatArray:
    """Return a convex outline drawn out by `reach` to both sides, counter-clockwise: (k, 2)."""
    if not reach.any():
        return outline
    points = np.concatenate([outline + reach, outline - reach])
    return np.asarray(points[ConvexHull(points).vertices], dtype=np.float64)
