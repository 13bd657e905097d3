"""The outline of a local ply: with margin at the edge of the part, none where it ends inside."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import shapely
from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry
from shapely.geometry.polygon import orient

from laywright.arrays import FloatArray, IntArray
from laywright.cloth.cuts.strips import healed, margin_strip
from laywright.surface.triangles import Surface

__all__ = ["local_outline"]


def local_outline(
    region: Polygon, surface: Surface, uv: FloatArray, ends: IntArray, margin: float
) -> Polygon:
    """Return what to cut for a local ply.

    Parameters
    ----------
    region : shapely.Polygon, mm
        What it covers, flat.
    surface : Surface
        The piece, by the vertex numbers of `ends`.
    uv : (n, 2) float, mm
        Flat coordinates.
    ends : (e, 2) int
        Boundary edges at which the ply ends inside the face.
    margin : float, mm
        Cloth beyond the edge of the part.
    """
    known = {(int(a), int(b)) for a, b in ends}
    grown: BaseGeometry = region
    closed: list[FloatArray] = []
    inner: list[FloatArray] = []
    for loop in surface.boundary_loops:
        runs = _runs(loop.tolist(), known)
        for is_end, vertices in runs:
            points = uv[vertices]
            if not is_end:
                grown = shapely.union(grown, margin_strip(points, margin))
            elif len(runs) == 1:
                closed.append(points)
            else:
                inner.append(points)
    for points in closed:
        ring = Polygon(points)
        outside = not ring.exterior.is_ccw
        grown = grown.difference(ring) if outside else grown.intersection(ring)
    for points in inner:
        far = 3.0 * margin + 1.0
        line = LineString(_extended(points, far))
        grown = grown.difference(line.buffer(-far, single_sided=True))
    whole = healed(shapely.union(grown, region))
    parts = [part for part in shapely.get_parts(whole) if part.intersects(region)]
    return orient(max(parts, key=lambda part: float(part.area)))


def _runs(loop: list[int], known: set[tuple[int, int]]) -> list[tuple[bool, list[int]]]:
    """Return the runs of a loop along ends and along edges, each with its last vertex."""
    keys = [edge in known for edge in pairwise([*loop, loop[0]])]
    breaks = [k for k in range(len(loop)) if keys[k] != keys[k - 1]]
    if not breaks:
        return [(keys[0], [*loop, loop[0]])]
    return [
        (keys[start], [loop[k % len(loop)] for k in range(start, stop + 1)])
        for start, stop in zip(breaks, [*breaks[1:], breaks[0] + len(loop)], strict=True)
    ]


def _extended(points: FloatArray, by: float) -> FloatArray:
    """Return a line made longer straight ahead at both ends."""
    ends = []
    for line in (points[::-1], points):
        way = line[-1] - line[-2]
        ends.append((line[-1] + by * way / np.linalg.norm(way))[None])
    return np.concatenate([ends[0], points, ends[1]])
