"""From the mould's upper surface to a closed body: run-off, sides and a flat base."""

from __future__ import annotations

import numpy as np
from manifold3d import triangulate

from laywright.arrays import FloatArray, IntArray
from laywright.mould.run_off import Rays
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
    triangles = np.concatenate([np.stack([b, a, d], axis=1)[a != b], np.stack([b, d, c], axis=1)])
    return (
        Surface(
            np.concatenate([surface.vertices, rows.reshape(-1, 3)]),
            np.concatenate([surface.triangles, triangles]),
            np.concatenate([surface.patches, np.full(len(triangles), patch)]),
            surface.patch_names,
        ),
        index[-1],
    )


def close_down(top: Surface, outline: IntArray, floor: float, sides: int, base: int) -> Surface:
    """Return the closed body below a surface.

    Parameters
    ----------
    top : Surface
        In the mould's frame, one boundary loop.
    outline : (k,) int
        That loop, the surface on its left.
    floor : float, mm
        Height of the base.
    sides, base : int
        Patches of the sides and of the base.
    """
    size = len(outline)
    first = len(top.vertices)
    foot = top.vertices[outline].copy()
    foot[:, 2] = floor
    here, after = np.arange(size), (np.arange(size) + 1) % size
    low, high = first + here, outline
    low_after, high_after = first + after, outline[after]
    wall = np.concatenate(
        [
            np.stack([high_after, high, low], axis=1),
            np.stack([high_after, low, low_after], axis=1),
        ]
    )
    bottom = first + np.asarray(triangulate([foot[:, :2]])).astype(np.int64)[:, ::-1]
    return Surface(
        np.concatenate([top.vertices, foot]),
        np.concatenate([top.triangles, wall, bottom]),
        np.concatenate([top.patches, np.full(len(wall), sides), np.full(len(bottom), base)]),
        top.patch_names,
    )
