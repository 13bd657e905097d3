"""The body of a mould that is still to be parted: its working area may be undercut.

Beyond the trim edge the body goes on level, to a convex outline that encloses the working area
on all sides; below, it has a flat base.
"""

from __future__ import annotations

import numpy as np
import shapely
from manifold3d import triangulate
from scipy.spatial import cKDTree
from shapely.geometry.polygon import orient

from laywright.arrays import FloatArray
from laywright.errors import GeometryError
from laywright.mould.base import close_down
from laywright.mould.fill import fill_holes
from laywright.surface.triangles import Surface

__all__ = ["parted_body"]


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
