"""The run-off of an outline with bays, where rays of different edges would cross.

Seen along the pull, every place beyond the outline belongs to the part of the outline that is
nearest.  The outline is first divided finely; a ray then ends a little before another part of
the outline comes nearer, so that the strips between rays never overlap.  The narrow gap that
is left along the middle line is filled between the ends of the rays.
"""

from __future__ import annotations

import numpy as np
import shapely
from manifold3d import triangulate
from shapely.geometry.polygon import orient

from laywright.arrays import Array, FloatArray, IntArray
from laywright.errors import GeometryError
from laywright.mould.body.base import with_run_off
from laywright.mould.body.divide import divided_outline
from laywright.mould.body.run_off import (
    Rays,
    RunOff,
    at_distance,
    rays_of,
    run_off_rows,
    travelled,
)
from laywright.surface.triangles import Surface

__all__ = ["free_lengths", "with_bay_run_off"]

_SPACING = 2.0
_BEFORE = 0.5
_HALVINGS = 40
_TINY = 1e-6
_CLOSE = 1e-7


def with_bay_run_off(surface: Surface, profile: RunOff, patch: int, where: str) -> Surface:
    """Return a surface with a run-off whose strips end where they would meet.

    Parameters
    ----------
    surface : Surface
        The working surface in the mould's frame, its holes filled.
    profile : RunOff
        Of the run-off and its flange.
    patch : int
        Patch of the run-off.
    where : str
        Name of the face, for messages.

    Raises
    ------
    GeometryError
        If the run-off cannot be laid open in the plan view.
    """
    fine = divided_outline(surface, _SPACING)
    loop = fine.boundary_loops[0]
    rays = rays_of(fine, loop)
    full = run_off_rows(rays, profile)
    rows = _ended(np.concatenate([rays.start[None], full]), rays, fine.vertices[loop])[1:]
    strips, outline = with_run_off(fine, rays, rows, patch)
    strips, outline = _merged(strips, outline)
    tips = strips.vertices[outline]
    inside = shapely.Polygon(tips[:, :2])
    if not inside.is_valid:
        raise GeometryError(
            where,
            f"a run-off of {profile.length + profile.flange:.3g} mm that runs into itself",
            "an outline along which the run-off lies open",
            "shorten the run-off or widen the bays of the outline",
        )
    reach = _reached(rays.start, full[-1])
    gaps = shapely.difference(reach, inside)
    ends = {(x, y): int(at) for (x, y, _), at in zip(tips.tolist(), outline, strict=True)}
    fillings = [_filling(gap, ends) for gap in getattr(gaps, "geoms", [gaps])]
    triangles = np.concatenate([strips.triangles, *fillings])
    added = len(triangles) - len(strips.triangles)
    return Surface(
        strips.vertices,
        triangles,
        np.concatenate([strips.patches, np.full(added, patch)]),
        strips.patch_names,
    )


def free_lengths(lines: FloatArray, rays: Rays, outline: FloatArray) -> FloatArray:
    """Return how far every ray goes before another part of the outline comes nearer: (k,) mm.

    Parameters
    ----------
    lines : (rows, k, 3) float, mm
        Points along the rays, the first row on the outline.
    rays : Rays
        The rays.
    outline : (k, 3) float, mm
        The closed outline that they leave.
    """
    gone = travelled(lines)
    ring = shapely.LinearRing(outline[:, :2])

    def nearest(place: FloatArray, which: IntArray) -> Array:
        tip = at_distance(lines[:, which], gone[:, which], place)[:, :2]
        own = np.einsum("ij,ij->i", tip - lines[0, which, :2], rays.outward[which])
        return np.asarray(shapely.distance(ring, shapely.points(tip)) >= own - _CLOSE)

    free: FloatArray = gone[-1].copy()
    ended = np.flatnonzero(~nearest(free, np.arange(len(free))))
    low, high = np.zeros(len(ended)), free[ended]
    for _ in range(_HALVINGS if len(ended) else 0):
        middle = 0.5 * (low + high)
        reached = nearest(middle, ended)
        low, high = np.where(reached, middle, low), np.where(reached, high, middle)
    free[ended] = low
    return free


def _ended(lines: FloatArray, rays: Rays, outline: FloatArray) -> FloatArray:
    """Return the rays (rows, k, 3) ended before another part of the outline comes nearer."""
    gone = travelled(lines)
    free = free_lengths(lines, rays, outline)
    reach = np.where(free == gone[-1], free, np.maximum(free - _BEFORE, 0.0))
    return np.stack([at_distance(lines, gone, np.minimum(row, reach)) for row in gone])


def _merged(surface: Surface, outline: IntArray) -> tuple[Surface, IntArray]:
    """Return the surface with equal points made one, and its outline without repeats."""
    points, index = np.unique(surface.vertices, axis=0, return_inverse=True)
    index = index.reshape(-1)
    triangles = index[surface.triangles]
    x, y, z = triangles.T
    whole = (x != y) & (y != z) & (z != x)
    ring = index[outline]
    merged = Surface(points, triangles[whole], surface.patches[whole], surface.patch_names)
    return merged, ring[ring != np.roll(ring, 1)]


def _reached(start: FloatArray, tips: FloatArray) -> shapely.Geometry:
    """Return the plan area that whole rays would cover, strip by strip."""
    after = np.roll(np.arange(len(start)), -1)
    quads = np.stack([start, start[after], tips[after], tips], axis=1)[..., :2]
    return shapely.union_all(shapely.convex_hull(shapely.multipoints(quads)))


def _filling(gap: shapely.Geometry, ends: dict[tuple[float, float], int]) -> IntArray:
    """Return triangles over a gap, between those of its corners that are ends of rays."""
    nothing = np.empty((0, 3), dtype=np.int64)
    if gap.geom_type != "Polygon" or gap.area < _TINY:
        return nothing
    gap = orient(gap)
    rings = [
        [point for point in ring.coords[:-1] if point in ends]
        for ring in (gap.exterior, *gap.interiors)
    ]
    if len(rings[0]) < 3 or not shapely.Polygon(rings[0]).is_valid:
        return nothing
    rings = [ring for ring in rings if len(ring) > 2]
    number = np.array([ends[point] for ring in rings for point in ring], dtype=np.int64)
    facets = np.asarray(triangulate([np.array(ring) for ring in rings])).astype(np.int64)
    return number[facets]
