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

Rims are few beside facets.  What lies near them is sifted out on a grid first, so that the
work on single facets grows with the length of the shadow's edge and not with the surface.
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
from laywright.mould.clipping import apart, overlaps, signed_areas, union_area
from laywright.mould.frame import upright
from laywright.mould.release.plan_marks import boxes_near
from laywright.mould.release.standing import hidden_standing
from laywright.surface.triangles import Surface

__all__ = ["STANDING", "TRACE", "hidden_share", "is_one_layer"]

STANDING = 1e-5
"""Sine of the draft below which a facet counts as standing along the pull.

Single-precision files tilt upright walls by about a tenth of this.
"""

TRACE = 1e-6
"""Share of an area, of a facet or of the whole surface, too small to count.

Rounding makes less of it; our own choice.
"""


_CLOSE = 1e-9
_BESIDE = 1e4


@dataclass(frozen=True, eq=False)
class _Plan:
    """The surface in the mould's frame.

    Attributes
    ----------
    points : (n, 3) float, mm
        Vertices, pull upwards.
    triangles : (m, 3) int
        Vertices of the facets, counter-clockwise in the plan view.
    kind : (m,) int
        1 for facets that face the pull, -1 for those that face away, 0 for standing ones.
    low, high : (3, m) float, mm
        Bounds of the facets.
    close : float, mm
        Distance that counts as touching.
    """

    points: FloatArray
    triangles: IntArray
    kind: IntArray
    low: FloatArray
    high: FloatArray
    close: float

    def corners(self, facets: IntArray) -> FloatArray:
        """Corners of facets: (k, 3, 3) float, mm."""
        return np.asarray(self.points[self.triangles[facets]])

    def tree(self, facets: IntArray) -> STRtree:
        """Tree of the plan boxes of facets."""
        return STRtree(self.boxes(facets))

    def boxes(self, facets: IntArray) -> Array:
        """Plan boxes of facets."""
        return _boxes(self.low[:, facets], self.high[:, facets])


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
    cut = np.flatnonzero(crossed)
    whole = np.flatnonzero((plan.kind == 1) & ~crossed)
    patch, seeds = _patches(plan, whole, surface.areas)
    standing = np.flatnonzero((plan.kind == 0) & (surface.areas > 0.0))
    blockers = _blockers(surface, plan, np.concatenate([cut, seeds, standing]))
    tree = plan.tree(blockers)
    share[whole] = _is_hidden(plan, seeds, blockers, tree)[patch]
    share[cut] = _share_by_cutting(plan, cut, blockers, tree)
    outward = (surface.normals[standing] @ upright(pull).T)[:, :2]
    share[standing] = hidden_standing(
        plan.corners(standing), outward, plan.corners(blockers), tree, plan.close
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
    triangles = surface.triangles.copy()
    triangles[tilt < 0] = triangles[tilt < 0][:, ::-1]
    kind = (tilt > STANDING).astype(np.int64) - (tilt < -STANDING)
    low, high = np.empty((3, len(kind))), np.empty((3, len(kind)))
    a, b, c = (np.ascontiguousarray(triangles[:, corner]) for corner in range(3))
    for axis, along in enumerate(np.ascontiguousarray(points.T)):
        one, two, three = along[a], along[b], along[c]
        np.minimum(np.minimum(one, two), three, out=low[axis])
        np.maximum(np.maximum(one, two), three, out=high[axis])
    close = _CLOSE * float(np.ptp(points, axis=0).max())
    return _Plan(points, triangles, kind, low, high, close)


def _boxes(low: FloatArray, high: FloatArray) -> Array:
    return np.asarray(shapely.box(low[0], low[1], high[0], high[1]))


def _crossed(surface: Surface, plan: _Plan) -> Array:
    """Return which facets that face the pull lie below a rim: (m,) bool."""
    table = surface.edges
    outer = (table.left < 0) | (table.right < 0)
    rim = outer | (plan.kind[table.left] != plan.kind[table.right])
    ends = plan.points[table.ends[rim]]
    low, high = (ends.min(axis=1) - plan.close).T, (ends.max(axis=1) + plan.close).T
    crossed = np.zeros(len(plan.kind), dtype=bool)
    targets = np.flatnonzero(plan.kind == 1)
    near = boxes_near(plan.low[:2, targets], plan.high[:2, targets], (low[:2], high[:2]))
    targets = targets[near]
    edge, target = plan.tree(targets).query(_boxes(low, high))
    facet = targets[target]
    above = high[2, edge] >= plan.low[2, facet]
    edge, facet = edge[above], facet[above]
    met = ~apart(ends[edge, :, :2], plan.corners(facet)[:, :, :2], plan.close)
    crossed[facet[met]] = True
    return crossed


def _patches(plan: _Plan, facets: IntArray, areas: FloatArray) -> tuple[IntArray, IntArray]:
    """Return the patch of every facet that no rim crosses, and the largest facet of each.

    Facets that share a point belong to one patch: a rim through the point would cross them.
    """
    a, b, c = plan.triangles[facets].T
    size = len(plan.points)
    links = (np.concatenate([a, b]), np.concatenate([b, c]))
    graph = coo_matrix((np.ones(len(links[0]), dtype=bool), links), (size, size))
    count, label = connected_components(graph, directed=False)
    patch = label[a]
    order = np.argsort(areas[facets], kind="stable")
    seeds = np.full(count, -1)
    seeds[patch[order]] = facets[order]
    used = seeds >= 0
    return (np.cumsum(used) - 1)[patch], seeds[used]


def _blockers(surface: Surface, plan: _Plan, subjects: IntArray) -> IntArray:
    """Return the facets that may hang over others."""
    blockers = np.flatnonzero(plan.kind == -1 if surface.is_closed else plan.kind != 0)
    hair = _BESIDE * plan.close
    marks = plan.low[:2, subjects] - hair, plan.high[:2, subjects] + hair
    near = boxes_near(plan.low[:2, blockers], plan.high[:2, blockers], marks)
    return np.asarray(blockers[near])


def _is_hidden(plan: _Plan, seeds: IntArray, blockers: IntArray, tree: STRtree) -> Array:
    """Return whether something hangs over the middle of each of some facets: (k,) bool."""
    hidden = np.zeros(len(seeds), dtype=bool)
    points = plan.corners(seeds).mean(axis=1)
    seed, place = tree.query(shapely.points(points[:, :2]))
    facet = blockers[place]
    height, inside = _height_above(plan.corners(facet), points[seed, :2])
    blocked = inside & (height > points[seed, 2] + plan.close) & (facet != seeds[seed])
    hidden[seed[blocked]] = True
    return hidden


def _share_by_cutting(
    plan: _Plan, facets: IntArray, blockers: IntArray, tree: STRtree
) -> FloatArray:
    """Return the hidden share of `facets`, cut against every facet above them."""
    which, place = tree.query(plan.boxes(facets))
    subject, other = facets[which], blockers[place]
    possible = (subject != other) & (plan.high[2, other] > plan.low[2, subject])
    which, subject, other = which[possible], subject[possible], other[possible]
    below, above = plan.corners(subject), plan.corners(other)
    met = ~apart(below[:, :, :2], above[:, :, :2], -plan.close)
    which, other, below, above = which[met], other[met], below[met], above[met]
    polygons, areas = overlaps(below[:, :, :2], above[:, :, :2])
    middle = polygons.mean(axis=1)
    over = _height_above(above, middle)[0] > _height_above(below, middle)[0] + plan.close
    plan_areas = np.abs(signed_areas(plan.corners(facets)[:, :, :2]))
    blocked = (areas > 1e-9 * plan_areas[which]) & over
    which, other, above = which[blocked], other[blocked], above[blocked]
    polygons, areas = polygons[blocked], areas[blocked]
    total = np.bincount(which, weights=areas, minlength=len(facets))
    sheet = 2 * which + (plan.kind[other] > 0)
    one, two = _overlapping(which, above[:, :, :2], plan.close)
    laid = np.bincount(sheet, weights=areas, minlength=2 * len(facets))
    laid[sheet[one[sheet[one] == sheet[two]]]] = 0.0
    whole = laid.reshape(-1, 2).max(axis=1) >= (1.0 - 1e-9) * plan_areas
    total[whole] = plan_areas[whole]
    twice = np.isin(which, which[one]) & ~whole[which]
    order = np.flatnonzero(twice)[np.argsort(which[twice], kind="stable")]
    for some in np.split(order, np.flatnonzero(np.diff(which[order])) + 1):
        if len(some):
            total[which[some[0]]] = union_area(polygons[some])
    return np.asarray(np.clip(total / plan_areas, 0.0, 1.0), dtype=np.float64)


def _overlapping(which: IntArray, triangles: FloatArray, close: float) -> tuple[IntArray, IntArray]:
    """Return the pairs of blockers (k, 3, 2) over the same facet that overlap in the plan view."""
    low, high = triangles.min(axis=1).T, triangles.max(axis=1).T
    aside = which * (2.0 * float(np.ptp(triangles[..., 0], axis=None)) if len(which) else 0.0)
    boxes = shapely.box(low[0] + aside, low[1], high[0] + aside, high[1])
    one, other = STRtree(boxes).query(boxes)
    pair = (one < other) & (which[one] == which[other])
    one, other = one[pair], other[pair]
    over = ~apart(triangles[one], triangles[other], -close)
    return one[over], other[over]


def _height_above(triangles: FloatArray, points: FloatArray) -> tuple[FloatArray, Array]:
    """Return the height of triangles' planes at plan points, and whether these lie inside."""
    a, b, c = triangles[:, 0], triangles[:, 1], triangles[:, 2]
    whole = signed_areas(triangles[:, :, :2])
    near_b = signed_areas(np.stack([a[:, :2], points, c[:, :2]], axis=1)) / whole
    near_c = signed_areas(np.stack([a[:, :2], b[:, :2], points], axis=1)) / whole
    height = a[:, 2] + near_b * (b[:, 2] - a[:, 2]) + near_c * (c[:, 2] - a[:, 2])
    inside = (near_b >= 0.0) & (near_c >= 0.0) & (near_b + near_c <= 1.0)
    return height, inside
