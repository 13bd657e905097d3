"""From the mould's upper surface to a closed body: run-off, sides and a flat base."""

from __future__ import annotations

import numpy as np
from manifold3d import triangulate

from laywright.arrays import FloatArray, IntArray
from laywright.mould.body.run_off import Rays
from laywright.mould.clipping import signed_areas
from laywright.surface.triangles import Surface

__all__ = ["close_down", "with_run_off"]


def with_run_off(
    surface: Surface, rays: Rays, rows: FloatArray, patch: int
) -> tuple[Surface, IntArray]:
    """Return a surface with its run-off, and the outer edge as vertex indices.

    Parameters
    ----------
    surface : Surface
        The working surface; its patch names already hold the run-off's.
    rays : Rays
        Rays that leave its outline.
    rows : (r, k, 3) float, mm
        Points along the rays, row by row outwards.
    patch : int
        Patch of the run-off.
    """
    count, size = rows.shape[:2]
    first = len(surface.vertices)
    index = np.concatenate(
        [rays.vertex[None], first + np.arange(count * size).reshape(count, size)]
    )
    a, d = index[:-1].ravel(), index[1:].ravel()
    b, c = (np.roll(part, -1, axis=1).ravel() for part in (index[:-1], index[1:]))
    points = np.concatenate([surface.vertices, rows.reshape(-1, 3)])
    one = np.stack([np.stack([b, a, d], axis=1), np.stack([b, d, c], axis=1)], axis=1)
    other = np.stack([np.stack([a, d, c], axis=1), np.stack([a, c, b], axis=1)], axis=1)
    folded, open_ = (
        signed_areas(points[pair.reshape(-1, 3)][..., :2]).reshape(-1, 2).min(axis=1)
        for pair in (one, other)
    )
    better = (folded < 0.0) & (open_ > folded)
    triangles = np.where(better[:, None, None], other, one).reshape(-1, 3)
    x, y, z = triangles.T
    triangles = triangles[(x != y) & (y != z) & (z != x)]
    return (
        Surface(
            points,
            np.concatenate([surface.triangles, triangles]),
            np.concatenate([surface.patches, np.full(len(triangles), patch)]),
            surface.patch_names,
        ),
        index[-1],
    )


def close_down(top: Surface, floor: float, sides: int, base: int) -> Surface:
    """Return the closed body below a surface.

    Parameters
    ----------
    top : Surface
        In the mould's frame; it covers no place of the plan view twice.
    floor : float, mm
        Height of the base.
    sides, base : int
        Patches of the sides and of the base.
    """
    loops = top.boundary_loops
    outline = np.concatenate(loops)
    after = np.concatenate([np.roll(loop, -1) for loop in loops])
    low = np.full(len(top.vertices), -1)
    low[outline] = len(top.vertices) + np.arange(len(outline))
    foot = top.vertices[outline].copy()
    foot[:, 2] = floor
    wall = np.concatenate(
        [
            np.stack([after, outline, low[outline]], axis=1),
            np.stack([after, low[outline], low[after]], axis=1),
        ]
    )
    plan = [np.array(top.vertices[loop][:, :2]) for loop in loops]
    bottom = low[outline][np.asarray(triangulate(plan)).astype(np.int64)[:, ::-1]]
    return Surface(
        np.concatenate([top.vertices, foot]),
        np.concatenate([top.triangles, wall, bottom]),
        np.concatenate([top.patches, np.full(len(wall), sides), np.full(len(bottom), base)]),
        top.patch_names,
    )
