"""The body of a mould that is still to be parted: its working area may be undercut.

Beyond the trim edge the body goes on level, to a convex outline that encloses the working area
on all sides; below, it has a flat base.
"""

from __future__ import annotations

import numpy as np
import shapely
from manifold3d import Manifold, triangulate
from scipy.spatial import cKDTree
from shapely.geometry.polygon import orient

from laywright.arrays import FloatArray, floats
from laywright.errors import GeometryError
from laywright.mould.body.base import close_down
from laywright.mould.body.fill import fill_holes
from laywright.mould.body.run_off import Rays, rays_of
from laywright.mould.body.scribe import cloth_line, groove
from laywright.surface.triangles import Surface

__all__ = ["cloth_groove", "parted_body", "trim_groove"]

_COMES_BACK = 0.6


def parted_body(working: Surface, margin: float, patches: tuple[int, int, int, int]) -> Surface:
    """Return the closed body round a working area.

    Parameters
    ----------
    working : Surface
        In the mould's frame (the mouth upwards), mm; its names hold those of the other patches.
    margin : float, mm
        Least thickness of the body beside and below the working area, and beyond its trim edge.
    patches : tuple of 4 int
        Numbers of the run-off, of filled holes, of the sides and of the base.

    Raises
    ------
    GeometryError
        If the trim edge crosses itself in the plan view.
    """
    run_off, filled, sides, base = patches
    used = working.vertices[np.unique(working.triangles)]
    top = _with_level_ring(fill_holes(working, filled), used, margin, run_off)
    return close_down(top, float(used[:, 2].min()) - margin, sides, base)


def trim_groove(surface: Surface, depth: float, width: float, patch: int) -> Manifold | None:
    """Return the solid that cuts a trim line into the level ring round a working surface.

    Parameters
    ----------
    surface : Surface
        The working surface in the mould's frame, mm.
    depth, width : float, mm
        Of the groove.
    patch : int
        Patch of the groove's sides.

    Returns
    -------
    Manifold or None
        None where the surface comes back so flat below its trim edge that the groove would
        cut into it.
    """
    loop = surface.boundary_loops[0]
    rays = rays_of(surface, loop)
    if (rays.normal[:, 2] < -_COMES_BACK).any():
        return None
    return groove(_level(rays), surface.vertices[loop], depth, width, patch)


def cloth_groove(
    surface: Surface, distance: float, ring: float, depth: float, width: float, patch: int
) -> Manifold | None:
    """Return the solid that cuts the line at the edge of the cloth into the level ring.

    Parameters
    ----------
    surface : Surface
        The working surface in the mould's frame, mm.
    distance, ring : float, mm
        From the trim edge, and width of the ring.
    depth, width : float, mm
        Of the groove.
    patch : int
        Patch of the groove's sides.

    Returns
    -------
    Manifold or None
        None where the ring or a bay of the outline leaves no room for it.
    """
    if distance + 2.0 * width > ring:
        return None
    loop = surface.boundary_loops[0]
    rays = _level(rays_of(surface, loop))
    lines = floats(np.stack([rays.start, rays.start + ring * rays.along]), 2, -1, 3)
    return cloth_line(rays, lines, surface.vertices[loop], distance, depth, width, patch)


def _level(rays: Rays) -> Rays:
    """Return rays that leave a trim edge level instead."""
    level = np.column_stack([rays.outward, np.zeros(len(rays.outward))])
    upward = np.tile([0.0, 0.0, 1.0], (len(level), 1))
    return Rays(rays.vertex, rays.start, floats(level, -1, 3), upward, rays.outward)


def _with_level_ring(surface: Surface, used: FloatArray, margin: float, patch: int) -> Surface:
    """Return a surface with a ring round its trim edge that reaches past all of it."""
    loop = surface.boundary_loops[0]
    edge = surface.vertices[loop]
    if not shapely.Polygon(edge[:, :2]).is_valid:
        names = dict.fromkeys(surface.patch_names[p] for p in np.unique(surface.patches))
        raise GeometryError(
            ", ".join(names),
            "a trim edge that crosses itself seen along the pull",
            "a trim edge that encloses a clear area, its mouth along the pull",
            "set the Moulded Face's pull along the mouth of the part",
        )
    whole = shapely.MultiPoint(used[:, :2]).convex_hull.buffer(margin, quad_segs=6)
    rim = np.array(orient(whole.segmentize(margin / 3.0)).exterior.coords)[:-1]
    _, nearest = cKDTree(edge[:, :2]).query(rim)
    points = np.concatenate([surface.vertices, np.column_stack([rim, edge[nearest, 2]])])
    number = np.concatenate([len(surface.vertices) + np.arange(len(rim)), loop[::-1]])
    plan = [np.array(rim), np.array(edge[::-1, :2])]
    ring = number[np.asarray(triangulate(plan)).astype(np.int64)]
    return Surface(
        points,
        np.concatenate([surface.triangles, ring]),
        np.concatenate([surface.patches, np.full(len(ring), patch)]),
        surface.patch_names,
    )
