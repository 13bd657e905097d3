"""Rings around what faces one way, such as the floor of a tray: it is cut out whole.

Where a wall stands on a floor, no dart from the edge helps much.  The hand cuts the floor for
itself and lays the wall as a strip.  So the parts of the face whose normals lie near its mean
normal are outlined; each outline that does not run along the edge is a ring, and one cut from
the edge to the innermost ring slits the strips between them.
"""

from __future__ import annotations

import numpy as np
import shapely
import shapely.ops
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from laywright.arrays import FloatArray
from laywright.cloth.cuts.trial import Ground

__all__ = ["ring_cuts"]

_SMALLEST = 0.03
_SMOOTH = 1.5
_POINTS = 2.5


def ring_cuts(ground: Ground, tilt: float, moved: float = 0.0) -> list[FloatArray]:
    """Return the cuts that part the face at the rings around what faces one way.

    Parameters
    ----------
    ground : Ground
        The face.
    tilt : float, radians
        Largest angle between the normals of such a part and the mean normal of the face.
    moved : float, mm
        How far the rings are moved outwards, and the slit along the innermost one.

    Returns
    -------
    list of (k, 2) float, mm
        In the flat map: the slit from the edge inwards, then each ring as two halves from the
        slit around; empty where there is no ring.
    """
    rings = _rings(ground, tilt, moved)
    if not rings:
        return []
    inner = min(rings, key=lambda ring: ring.area)
    nested = [ring for ring in rings if ring.contains(inner.representative_point())]
    edge = shapely.boundary(ground.region)
    outer = min(shapely.get_parts(edge), key=lambda line: -line.length)
    near = shapely.ops.nearest_points(outer, inner.exterior)[1]
    along = shapely.line_locate_point(inner.exterior, near) + moved
    end = shapely.line_interpolate_point(inner.exterior, along % inner.exterior.length)
    start = shapely.ops.nearest_points(outer, end)[0]
    slit = np.array([*start.coords, *end.coords])
    line = shapely.LineString(slit)
    cuts = [slit]
    for ring in nested:
        met = line.intersection(ring.exterior)
        at = end if met.is_empty else shapely.Point(shapely.get_coordinates(met)[0])
        cuts += _halves(ring.exterior, at, _POINTS * ground.spacing)
    return cuts


def _rings(ground: Ground, tilt: float, moved: float) -> list[shapely.Polygon]:
    """Return what the rings enclose in the flat map, smoothed."""
    surface = ground.surface
    mean = surface.areas @ surface.normals
    mean = mean / max(float(np.linalg.norm(mean)), 1e-12)
    facing = surface.normals @ mean > np.cos(tilt)
    table = surface.edges
    both = (table.left >= 0) & (table.right >= 0)
    left, right = table.left[both], table.right[both]
    alike = facing[left] == facing[right]
    count = len(facing)
    graph = coo_matrix((np.ones(int(alike.sum())), (left[alike], right[alike])), (count, count))
    _, label = connected_components(graph, directed=False)
    found: list[shapely.Polygon] = []
    flat = shapely.polygons(ground.flat[surface.triangles])
    reach = _SMOOTH * ground.spacing
    inside = ground.region.buffer(-reach)
    for number in np.unique(label[facing]):
        mine = label == number
        if surface.areas[mine].sum() < _SMALLEST * surface.area:
            continue
        part = shapely.union_all(flat[mine]).buffer(0.0)
        if not isinstance(part, shapely.Polygon):
            continue
        for loop in (part.exterior, *part.interiors):
            whole = shapely.Polygon(loop)
            smooth = whole.buffer(-reach).buffer(2.0 * reach).buffer(moved - reach)
            if not isinstance(smooth, shapely.Polygon) or not inside.contains(smooth):
                continue
            if smooth.area > _SMALLEST * ground.region.area:
                found.append(smooth)
    return found


def _halves(ring: shapely.LinearRing, at: shapely.Point, step: float) -> list[FloatArray]:
    """Return a ring as two lines from the point nearest to `at`, a point about every `step`."""
    first = shapely.line_locate_point(ring, at)
    count = max(4, 2 * round(ring.length / step / 2.0))
    places = (first + ring.length * np.arange(count + 1) / count) % ring.length
    points = shapely.get_coordinates(shapely.line_interpolate_point(ring, places))
    half = count // 2
    return [points[: half + 1], points[half:][::-1]]
