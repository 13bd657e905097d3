"""Which share of every facet is hidden when a surface is looked at along the pull.

A point is hidden if a straight line from it along the pull meets the surface again: there a
part cannot leave.  The method is exact for the triangles given, up to rounding:

- Visibility changes only below a *rim*: an edge where the surface turns from facing the pull
  to facing away, or where it ends (Appel, "The notion of quantitative invisibility", 1967).
- Facets that no rim crosses in the plan view are wholly visible or wholly hidden, and
  neighbours among them share the answer: one line of sight for each connected patch of them.
- Facets that a rim crosses are cut against every facet above them in the plan view.

Facets that stand along the pull have no plan area; for them the plan line a hair outside is
cut against the facets above it.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components
from shapely import STRtree

from laywright.arrays import Array, FloatArray, IntArray, Vector
from laywright.errors import GeometryError
from laywright.mould.clipping import overlaps, signed_areas, union_area
from laywright.mould.frame import upright
from laywright.mould.standing import hidden_standing
from laywright.surface.triangles import Surface

__all__ = ["STANDING", "hidden_share", "is_one_layer"]

STANDING = 1e-5
"""Sine of the draft below which a facet counts as standing along the pull.

Single-precision files tilt upright walls by about a tenth of this.
"""


_CLOSE = 1e-9


@dataclass(frozen=True, eq=False)
class _Plan:
    """The surface in the mould's frame.

    Attributes
    ----------
    points : (n, 3) float, mm
        Vertices, pull upwards.
    corners : (m, 3, 3) float, mm
        Corners of the facets, counter-clockwise in the plan view.
    kind : (m,) int
        1 for facets that face the pull, -1 for those that face away, 0 for standing ones.
    blockers : (b,) int
        Facets that can hide others.
    tree : STRtree
        Plan boxes of the blockers.
    close : float, mm
        Distance that counts as touching.
    """

    points: FloatArray
    corners: FloatArray
    kind: IntArray
    blockers: IntArray
    tree: STRtree
    close: float

    def boxes(self, facets: IntArray) -> Array:
        """Plan boxes of facets."""
        low, high = self.corners[facets].min(axis=1), self.corners[facets].max(axis=1)
        return np.asarray(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))


def hidden_share(surface: Surface, pull: Vector) -> FloatArray:
    """Return the share of every facet that is hidden along the pull.

    Parameters
    ----------
    surface : Surface
        Open or closed, its pieces not passing through each other, mm.
    pull : tuple of 3 float
        Unit direction.

    Returns
    -------
    (m,) float
        0 to 1; 0 for facets that face away, which are undercut by their tilt alone.
    """
    tilt = surface.normals @ np.array(pull)
    share = np.zeros(len(tilt))
    if len(tilt) == 0 or ((tilt > STANDING).all() and is_one_layer(surface, pull)):
        return share
    plan = _plan(surface, pull, tilt)
    crossed = _crossed(surface, plan)
    _share_by_patch(surface, plan, (plan.kind == 1) & ~crossed, share)
    facets = np.flatnonzero(crossed)
    share[facets] = _share_by_cutting(surface, plan, pull, facets)
    standing = np.flatnonzero((plan.kind == 0) & (surface.areas > 0.0))
    outward = (surface.normals[standing] @ upright(pull).T)[:, :2]
    share[standing] = hidden_standing(
        plan.corners[standing], outward, plan.corners[plan.blockers], plan.tree, plan.close
    )
    return share


def is_one_layer(surface: Surface, pull: Vector, slack: float = 1e-9) -> bool:
    """Whether the plan view along `pull` covers no point twice.

    True only where that is certain: the outline, with its holes, is a simple shape whose area
    is the sum of the facets' plan areas within the relative `slack`.
    """
    try:
        loops = surface.boundary_loops
    except GeometryError:
        return False
    if not loops:
        return False
    flat = surface.vertices @ upright(pull)[:2].T
    shape = shapely.Polygon(flat[loops[0]], [flat[loop] for loop in loops[1:]])
    covered = float(np.abs(surface.areas * (surface.normals @ np.array(pull))).sum())
    return bool(shape.is_valid) and abs(shape.area - covered) <= slack * covered


def _plan(surface: Surface, pull: Vector, tilt: FloatArray) -> _Plan:
    points = surface.vertices @ upright(pull).T
    corners = points[surface.triangles]
    corners[tilt < 0] = corners[tilt < 0][:, ::-1]
    kind = np.where(tilt > STANDING, 1, np.where(tilt < -STANDING, -1, 0))
    blockers = np.flatnonzero(kind == -1 if surface.is_closed else kind != 0)
    low, high = corners[blockers].min(axis=1), corners[blockers].max(axis=1)
    tree = STRtree(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))
    close = _CLOSE * float(np.ptp(points, axis=0).max())
    return _Plan(points, corners, kind, blockers, tree, close)


def _crossed(surface: Surface, plan: _Plan) -> Array:
    """Return which facets that face the pull lie below a rim: (m,) bool."""
    table = surface.edges
    outer = (table.left < 0) | (table.right < 0)
    rim = outer | (plan.kind[table.left] != plan.kind[table.right])
    ends = plan.points[table.ends[rim]]
    crossed = np.zeros(len(plan.kind), dtype=bool)
    targets = np.flatnonzero(plan.kind == 1)
    low, high = ends.min(axis=1) - plan.close, ends.max(axis=1) + plan.close
    boxes = shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1])
    edge, target = STRtree(plan.boxes(targets)).query(boxes)
    facet = targets[target]
    above = high[edge, 2] >= plan.corners[facet, :, 2].min(axis=1)
    edge, facet = edge[above], facet[above]
    met = _meets(ends[edge, :, :2], plan.corners[facet, :, :2], plan.close)
    crossed[facet[met]] = True
    return crossed


def _meets(segments: FloatArray, triangles: FloatArray, close: float) -> Array:
    """Return whether segments (p, 2, 2) come closer than `close` to triangles: (p,) bool."""
    apart = np.zeros(len(segments), dtype=bool)
    sides = np.roll(triangles, -1, axis=1) - triangles
    lines = np.concatenate([sides, segments[:, 1:] - segments[:, :1]], axis=1)
    for side in range(4):
        across = np.stack([lines[:, side, 1], -lines[:, side, 0]], axis=1)
        length = np.linalg.norm(across, axis=1)
        one = np.einsum("pij,pj->pi", segments, across)
        other = np.einsum("pij,pj->pi", triangles, across)
        gap = np.maximum(one.min(axis=1) - other.max(axis=1), other.min(axis=1) - one.max(axis=1))
        apart |= gap > close * length
    return ~apart


def _share_by_patch(surface: Surface, plan: _Plan, whole: Array, share: FloatArray) -> None:
    """Set the share of facets that no rim crosses: one line of sight for each patch."""
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    left, right = table.left[inner], table.right[inner]
    joined = whole[left] & whole[right]
    size = len(whole)
    graph = coo_matrix((np.ones(joined.sum()), (left[joined], right[joined])), (size, size))
    label = connected_components(graph, directed=False)[1]
    facets = np.flatnonzero(whole)
    if len(facets) == 0:
        return
    largest = facets[np.lexsort((-surface.areas[facets], label[facets]))]
    _, first = np.unique(label[largest], return_index=True)
    seeds = largest[first]
    points = plan.corners[seeds].mean(axis=1)
    seed, blocker = plan.tree.query(shapely.points(points[:, :2]))
    hidden = np.zeros(size, dtype=bool)
    facet = plan.blockers[blocker]
    height, inside = _height_above(plan.corners[facet], points[seed, :2])
    blocked = inside & (height > points[seed, 2] + plan.close) & (facet != seeds[seed])
    hidden[label[seeds[seed[blocked]]]] = True
    share[facets] = hidden[label[facets]]


def _share_by_cutting(surface: Surface, plan: _Plan, pull: Vector, facets: IntArray) -> FloatArray:
    """Return the hidden share of `facets`, cut against every facet above them."""
    which, blocker = plan.tree.query(plan.boxes(facets))
    subject, other = facets[which], plan.blockers[blocker]
    possible = (subject != other) & (
        plan.corners[other, :, 2].max(axis=1) > plan.corners[subject, :, 2].min(axis=1)
    )
    which, subject, other = which[possible], subject[possible], other[possible]
    polygons, areas = overlaps(plan.corners[subject, :, :2], plan.corners[other, :, :2])
    middle = polygons.mean(axis=1)
    above = _height_above(plan.corners[other], middle)[0]
    below = _height_above(plan.corners[subject], middle)[0]
    plan_areas = np.abs(signed_areas(plan.corners[facets, :, :2]))
    blocked = (areas > 1e-9 * plan_areas[which]) & (above > below + plan.close)
    which, other = which[blocked], other[blocked]
    polygons, areas = polygons[blocked], areas[blocked]
    total = np.bincount(which, weights=areas, minlength=len(facets))
    for facet in _several_layers(surface, plan, pull, which, other, len(facets)):
        total[facet] = union_area(polygons[which == facet])
    return np.asarray(np.clip(total / plan_areas, 0.0, 1.0), dtype=np.float64)


def _several_layers(
    surface: Surface, plan: _Plan, pull: Vector, which: IntArray, other: IntArray, count: int
) -> IntArray:
    """Return the facets (by place) whose blockers may overlap each other in the plan view."""
    mask = np.zeros(len(plan.kind), dtype=bool)
    mask[plan.blockers] = True
    layer = np.full(len(mask), -1)
    sheet = surface.part(mask)
    layer[mask] = sheet.components
    single = np.array(
        [is_one_layer(sheet.part(sheet.components == i), pull) for i in np.unique(layer[other])],
        dtype=bool,
    )
    number = np.unique(layer[other], return_inverse=True)[1].reshape(-1)
    lowest = np.full(count, len(single) + 1)
    highest = np.full(count, -1)
    np.minimum.at(lowest, which, number)
    np.maximum.at(highest, which, number)
    touched = highest >= 0
    alone = touched & (lowest == highest)
    alone[alone] = single[highest[alone]]
    return np.flatnonzero(touched & ~alone)


def _height_above(triangles: FloatArray, points: FloatArray) -> tuple[FloatArray, Array]:
    """Return the height of triangles' planes at plan points, and whether these lie inside."""
    a, b, c = triangles[:, 0], triangles[:, 1], triangles[:, 2]
    whole = signed_areas(triangles[:, :, :2])
    near_b = signed_areas(np.stack([a[:, :2], points, c[:, :2]], axis=1)) / whole
    near_c = signed_areas(np.stack([a[:, :2], b[:, :2], points], axis=1)) / whole
    height = a[:, 2] + near_b * (b[:, 2] - a[:, 2]) + near_c * (c[:, 2] - a[:, 2])
    inside = (near_b >= 0.0) & (near_c >= 0.0) & (near_b + near_c <= 1.0)
    return height, inside
