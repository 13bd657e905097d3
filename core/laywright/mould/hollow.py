"""The body of an outline with hollow corners, where neighbouring rays of the run-off cross.

Seen along the pull, every place beyond the outline belongs to the part of the outline that is
nearest.  A ray therefore ends where another part of the outline comes nearer, a hair later so
that no gap stays.  Each stretch between two rays becomes a column of its own down to the base,
and the columns are joined.
"""

from __future__ import annotations

import numpy as np
import shapely
from manifold3d import Manifold, OpType, triangulate

from laywright.arrays import FloatArray, IntArray
from laywright.errors import GeometryError
from laywright.mould.base import close_down
from laywright.mould.clipping import signed_areas
from laywright.mould.run_off import Rays, run_off_rows, square_rays_of, unit_rows
from laywright.mould.solid import to_manifold
from laywright.surface.triangles import Surface

__all__ = ["joined_columns"]

_THIN = 1e-9
_FOLD = 1e-3
_HALVINGS = 40
_SPACING = 1.5
_OVERLAP = 0.8
_INSIDE = 0.3


def joined_columns(
    top: Surface,
    loop: IntArray,
    where: str,
    length: float,
    base: float,
    patches: tuple[int, int, int],
) -> Manifold:
    """Return the body below a working surface and its run-off.

    Parameters
    ----------
    top : Surface
        The working surface in the mould's frame, its holes filled.
    loop : (k,) int
        Its outline, the surface on its left.
    where : str
        Name of the face, for messages.
    length : float, mm
        Of the run-off.
    base : float, mm
        Height of the base below the lowest point.
    patches : tuple of 3 int
        Patches of the run-off, the sides and the base.
    """
    rays = _denser(square_rays_of(top, loop))
    lines = np.concatenate([rays.start[None], run_off_rows(rays, length)])
    lines = _ended(lines, rays, top.vertices[loop])
    floor = min(float(lines[..., 2].min()), float(top.vertices[:, 2].min())) - base
    lines = np.concatenate([_inner(rays)[None], lines])
    columns = [
        _column(lines[:, [index, after]], floor, patches, top.patch_names, where)
        for index, after in enumerate(np.roll(np.arange(len(rays.vertex)), -1).tolist())
    ]
    core = to_manifold(close_down(top, loop, floor, patches[1], patches[2]), where)
    inside = _upright(top.vertices[loop], floor - 1.0, float(lines[..., 2].max()) + 1.0, patches[1])
    return core + (Manifold.batch_boolean(columns, OpType.Add) - inside)


def _denser(rays: Rays) -> Rays:
    """Return the rays with more of them in between, none farther apart than the spacing."""
    after = np.roll(np.arange(len(rays.vertex)), -1)
    apart = np.linalg.norm(rays.start[after] - rays.start, axis=1)
    pieces = np.maximum(1, np.ceil(apart / _SPACING).astype(np.int64))
    first = np.repeat(np.arange(len(pieces)), pieces)
    step = np.arange(len(first)) - np.repeat(np.cumsum(pieces) - pieces, pieces)
    share = (step / pieces[first])[:, None]

    def between(values: FloatArray) -> FloatArray:
        return np.asarray((1.0 - share) * values[first] + share * values[after[first]])

    along = unit_rows(between(rays.along))
    return Rays(
        np.where(step == 0, rays.vertex[first], -1 - np.arange(len(first))),
        between(rays.start),
        along,
        unit_rows(between(rays.normal)),
        unit_rows(between(rays.outward)),
    )


def _inner(rays: Rays) -> FloatArray:
    """Return a point just inside of the outline for every ray, one for all rays of a fan."""
    _, fan = np.unique(rays.vertex, return_inverse=True)
    fan = fan.reshape(-1)
    mean = np.stack([np.bincount(fan, weights=column) for column in rays.along.T], axis=1)
    return np.asarray(rays.start - _INSIDE * unit_rows(mean)[fan], dtype=np.float64)


def _ended(lines: FloatArray, rays: Rays, outline: FloatArray) -> FloatArray:
    """Return the rays (rows, k, 3) ended where another part of the outline comes nearer."""
    steps = np.linalg.norm(np.diff(lines, axis=0), axis=2)
    travelled = np.concatenate([np.zeros((1, lines.shape[1])), np.cumsum(steps, axis=0)])
    whole = travelled[-1]
    ring = shapely.LinearRing(outline[:, :2])
    low, high = np.zeros(len(whole)), whole.copy()
    for _ in range(_HALVINGS):
        middle = 0.5 * (low + high)
        tip = _at(lines, travelled, middle)[:, :2]
        own = np.einsum("ij,ij->i", tip - lines[0, :, :2], rays.outward)
        nearest = shapely.distance(ring, shapely.points(tip)) >= 0.999 * own - 1e-6
        low, high = np.where(nearest, middle, low), np.where(nearest, high, middle)
    reach = np.minimum(low + _OVERLAP, whole)
    return np.stack([_at(lines, travelled, np.minimum(row, reach)) for row in travelled])


def _at(lines: FloatArray, travelled: FloatArray, place: FloatArray) -> FloatArray:
    """Return the point of every ray at a distance along it: (k, 3) float."""
    ray = np.arange(lines.shape[1])
    after = np.clip((travelled < place).sum(axis=0), 1, len(travelled) - 1)
    start, end = travelled[after - 1, ray], travelled[after, ray]
    share = np.clip((place - start) / np.maximum(end - start, 1e-300), 0.0, 1.0)[:, None]
    return np.asarray((1.0 - share) * lines[after - 1, ray] + share * lines[after, ray])


def _column(
    stretch: FloatArray,
    floor: float,
    patches: tuple[int, int, int],
    names: tuple[str, ...],
    where: str,
) -> Manifold:
    """Return the column below one stretch (rows, 2, 3) of the run-off."""
    points, index = np.unique(stretch.reshape(-1, 3), axis=0, return_inverse=True)
    grid = index.reshape(-1, 2)
    triangles = _triangles(grid)
    areas = signed_areas(points[triangles][..., :2])
    if areas.sum() <= _THIN or ((stretch[1, 0] == stretch[1, 1]).all() and areas.min() < 0.0):
        return Manifold()
    if (areas < -_FOLD).any():
        x, y, z = stretch[1, 0]
        raise GeometryError(
            where,
            f"a run-off that folds over at ({x:.1f}, {y:.1f}, {z:.1f}) mm in the mould's axes",
            "an edge along which the run-off lies open",
            "shorten the run-off or smooth the edge of the face there",
        )
    outline = np.concatenate([grid[:1, 1], grid[:, 0], grid[:0:-1, 1]])
    outline = outline[outline != np.roll(outline, 1)]
    top = Surface(points, triangles, np.full(len(triangles), patches[0]), names)
    return to_manifold(close_down(top, outline, floor, patches[1], patches[2]), where)


def _triangles(grid: IntArray) -> IntArray:
    a, b, d, c = grid[:-1, 0], grid[:-1, 1], grid[1:, 0], grid[1:, 1]
    triangles = np.concatenate([np.stack([b, a, d], axis=1), np.stack([b, d, c], axis=1)])
    x, y, z = triangles.T
    return np.asarray(triangles[(x != y) & (y != z) & (z != x)], dtype=np.int64)


def _upright(outline: FloatArray, low: float, high: float, patch: int) -> Manifold:
    """Return the prism over any plan outline, counter-clockwise."""
    flat = np.column_stack([outline[:, :2], np.full(len(outline), high)])
    facets = np.asarray(triangulate([np.array(flat[:, :2])])).astype(np.int64)
    names = tuple(str(number) for number in range(patch + 1))
    top = Surface(flat, facets, np.full(len(facets), patch), names)
    return to_manifold(close_down(top, np.arange(len(flat)), low, patch, patch), "the outline")
