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
from laywright.mould.base import close_down
from laywright.mould.fill import fill_holes
from laywright.mould.run_off import Rays, rays_of
from laywright.mould.scribe import groove
from laywright.surface.triangles import Surface

__all__ = ["parted_body", "trim_groove"]

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
    level = np.column_stack([rays.outward, np.zeros(len(rays.outward))])
    upward = np.tile([0.0, 0.0, 1.0], (len(level), 1))
    flat = Rays(rays.vertex, rays.start, floats(level, -1, 3), upward, rays.outward)
    return groove(flat, surface.vertices[loop], depth, width, patch)


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
