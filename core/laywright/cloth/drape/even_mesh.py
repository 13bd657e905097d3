"""An even mesh for draping: triangles of one size and good shape on a given surface.

A CAD face arrives as long thin triangles that follow its curvature; a drape wants triangles of
one size, because the cloth's strain is constant in each.  The surface is laid flat once, a
triangular lattice is cut out of the flat, and its points are carried back.
"""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import shapely
from scipy.spatial import Delaunay

from laywright.arrays import FloatArray, IntArray
from laywright.cloth.drape.flatten import flatten
from laywright.errors import GeometryError
from laywright.progress import Progress, silent
from laywright.surface.triangles import Surface

__all__ = ["carried", "even_mesh", "spacing_for"]

_CLEAR = 0.6
_CORNER = 0.35
_SMOOTH = 0.97
_TRIES = 4
_NEEDLE = 1e-6


def spacing_for(surface: Surface, triangles: int) -> float:
    """Return the side (mm) at which `surface` takes about that many even triangles."""
    return float(np.sqrt(surface.area / triangles * 4.0 / np.sqrt(3.0)))


def even_mesh(surface: Surface, spacing: float, *, progress: Progress = silent) -> Surface:
    """Return a surface of even triangles that stands for the same shape.

    Parameters
    ----------
    surface : Surface
        One piece with an open edge, holes allowed, mm.
    spacing : float, mm
        Wanted side of the triangles.
    progress : Progress
        Told how far it is.

    Returns
    -------
    Surface
        Points on the given surface, corners of its outline kept; a patch for each triangle
        as at its middle.

    Raises
    ------
    GeometryError
        If the surface cannot be laid flat, or is narrower than can be meshed evenly.

    Notes
    -----
    Points inside a smooth facet are moved onto the curved surface that its corner normals
    suggest (T. Boubekeur, M. Alexa, Phong tessellation, ACM Trans. Graph. 27 (2008) 141), so
    that the chord error of the given triangles is not printed into the net.
    """
    uv = flatten(surface, progress=progress)
    for _ in range(_TRIES):
        rims = [_rim(surface, uv, loop, spacing) for loop in surface.boundary_loops]
        result = _cut_out(surface, uv, rims, spacing)
        if result is not None:
            return result
        spacing *= 0.6
    raise GeometryError(
        ", ".join(surface.patch_names),
        f"a face narrower than {spacing:.2g} mm somewhere",
        "a face that even triangles fit into",
        "pick faces without slivers or repair the part",
    )


def _rim(
    surface: Surface, uv: FloatArray, loop: IntArray, spacing: float
) -> tuple[FloatArray, FloatArray]:
    """Return points along a boundary loop: flat (k, 2) and in space (k, 3), mm."""
    flat, space = uv[loop], surface.vertices[loop]
    step = np.roll(space, -1, axis=0) - space
    length = np.linalg.norm(step, axis=1)
    along = np.concatenate([[0.0], np.cumsum(length)])
    before = np.roll(step, 1, axis=0)
    cosine = np.einsum("ij,ij->i", step, before) / (length * np.roll(length, 1))
    corners = np.flatnonzero(np.arccos(np.clip(cosine, -1.0, 1.0)) > _CORNER)
    if len(corners) == 0:
        corners = np.array([0])
    stops = []
    for first, last in zip(corners, np.append(corners[1:], corners[0] + len(loop)), strict=True):
        end = along[last] if last < len(along) else along[-1] + along[last - len(loop)]
        pieces = max(1, round(float(end - along[first]) / spacing))
        stops.append(along[first] + (end - along[first]) * np.arange(pieces) / pieces)
    at = np.sort(np.concatenate(stops) % along[-1])
    ring = np.concatenate([flat, flat[:1]]), np.concatenate([space, space[:1]])
    points = [
        np.stack([np.interp(at, along, side[:, axis]) for axis in range(side.shape[1])], axis=1)
        for side in ring
    ]
    return points[0], points[1]


def _cut_out(
    surface: Surface, uv: FloatArray, rims: list[tuple[FloatArray, FloatArray]], spacing: float
) -> Surface | None:
    outlines = [shapely.Polygon(flat) for flat, _ in rims if len(flat) >= 3]
    if len(outlines) != len(rims) or not all(outline.is_valid for outline in outlines):
        return None
    region = outlines[0]
    for hole in outlines[1:]:
        region = region.difference(hole)
    inside = region.buffer(-_CLEAR * spacing)
    lattice = _lattice(region.bounds, spacing)
    lattice = lattice[shapely.contains_xy(inside, lattice[:, 0], lattice[:, 1])]
    inner, _ = carried(surface, uv, lattice)
    flat = np.concatenate([*(rim[0] for rim in rims), lattice])
    space = np.concatenate([*(rim[1] for rim in rims), inner])
    triangles = Delaunay(flat).simplices.astype(np.int64)
    middles = flat[triangles].mean(axis=1)
    triangles = triangles[shapely.contains_xy(region, middles[:, 0], middles[:, 1])]
    a, b, c = (flat[triangles[:, corner]] for corner in range(3))
    doubled = (b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0]
    triangles = np.where((doubled < 0.0)[:, None], triangles[:, ::-1], triangles)
    triangles = triangles[np.abs(doubled) > _NEEDLE * spacing**2]  # none along a straight rim
    _, owner = carried(surface, uv, flat[triangles].mean(axis=1))
    result = Surface(space, triangles, surface.patches[owner], surface.patch_names)
    return result if _rims_kept(result, [len(rim[0]) for rim in rims]) else None


def _lattice(bounds: tuple[float, float, float, float], spacing: float) -> FloatArray:
    left, low, right, high = bounds
    rows = np.arange(low, high, spacing * np.sqrt(3.0) / 2.0)
    columns = np.arange(left - spacing, right + spacing, spacing)
    x, y = np.meshgrid(columns, rows)
    x = x + spacing / 2.0 * (np.arange(len(rows)) % 2)[:, None]
    return np.stack([x.ravel(), y.ravel()], axis=1)


def carried(surface: Surface, uv: FloatArray, points: FloatArray) -> tuple[FloatArray, IntArray]:
    """Return the places in space of flat points, and the facet that each lies in."""
    flat = uv[surface.triangles]
    tree = shapely.STRtree(shapely.polygons(flat))
    owner = np.asarray(tree.nearest(shapely.points(points)), dtype=np.int64)
    a, b, c = flat[owner, 0], flat[owner, 1], flat[owner, 2]
    matrix = np.stack([b - a, c - a], axis=2)
    share = np.linalg.solve(matrix, (points - a)[:, :, None])[:, :, 0]
    share = np.concatenate([1.0 - share.sum(axis=1, keepdims=True), share], axis=1)
    corners = surface.corners[owner]
    place: FloatArray = np.einsum("ni,nij->nj", share, corners)
    normals = surface.vertex_normals[surface.triangles[owner]]
    smooth = np.einsum("nij,nj->ni", normals, surface.normals[owner]).min(axis=1) > _SMOOTH
    height = np.einsum("nij,nij->ni", place[:, None] - corners, normals)
    curved = place - 0.75 * np.einsum("ni,ni,nij->nj", share, height, normals)
    return np.where(smooth[:, None], curved, place), owner


def _rims_kept(surface: Surface, counts: list[int]) -> bool:
    """Return whether the outline of the mesh runs through the rim points and no others."""
    try:
        loops = surface.boundary_loops
    except GeometryError:
        return False
    starts = np.cumsum([0, *counts])
    wanted = [set(range(first, last)) for first, last in pairwise(starts)]
    return len(loops) == len(wanted) and all(set(loop.tolist()) in wanted for loop in loops)
