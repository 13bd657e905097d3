"""Scribed lines: a V groove just outside the trim edge, one at the edge of the cloth, and marks.

The groove prints through to the laminate as a fine raised line along which the part is
trimmed; a groove of 0.3 to 0.5 mm transfers well and does not hold the part back (common
practice, no source).
"""

from __future__ import annotations

import numpy as np
from manifold3d import Manifold

from laywright.arrays import FloatArray
from laywright.mould.body.bays import free_lengths
from laywright.mould.body.run_off import Rays, rays_along, unit_rows
from laywright.mould.solid import side_by_side, tube

__all__ = ["clear_of_groove", "cloth_line", "groove", "straight_groove"]

_GAP = 0.05
_ABOVE = 0.3
_LEAST = 0.005
_BETWEEN = 0.5


def groove(rays: Rays, outline: FloatArray, depth: float, width: float, patch: int) -> Manifold:
    """Return the solid that cuts the groove.

    Parameters
    ----------
    rays : Rays
        Rays that leave the trim edge.
    outline : (k, 3) float, mm
        That edge; where it comes back nearer than the groove is wide, the groove narrows.
    depth, width : float, mm
        Of the groove, measured square to the surface and along it.
    patch : int
        Patch of the groove's sides.

    Returns
    -------
    Manifold
        A ring that starts 0.05 mm outside of the trim edge.
    """
    reach = _GAP + width
    lines = np.stack([rays.start, rays.start + reach * rays.along])
    scale = np.maximum(free_lengths(lines, rays, outline) / reach, _LEAST)
    return _ring(rays, scale, depth, width, patch)


def cloth_line(
    rays: Rays,
    lines: FloatArray,
    outline: FloatArray,
    distance: float,
    depth: float,
    width: float,
    patch: int,
) -> Manifold | None:
    """Return the solid that cuts a line at a distance from the trim edge.

    Parameters
    ----------
    rays : Rays
        Rays that leave the trim edge.
    lines : (rows, k, 3) float, mm
        Points along them, the first row on the edge.
    outline : (k, 3) float, mm
        The trim edge.
    distance, depth, width : float, mm
        Along the rays, and of the groove.
    patch : int
        Patch of the groove's sides.

    Returns
    -------
    Manifold or None
        None where the outline comes back nearer than the line needs.
    """
    if free_lengths(lines, rays, outline).min() < distance + _GAP + width:
        return None
    there = rays_along(rays, lines, distance)
    return _ring(there, np.ones(len(there.start)), depth, width, patch)


def clear_of_groove(width: float) -> float:
    """Return how far from a scribed line's place the middle of another groove may lie, mm."""
    return _GAP + 1.5 * width + _BETWEEN


def straight_groove(
    points: FloatArray, normals: FloatArray, depth: float, width: float, patch: int
) -> Manifold:
    """Return the solid that cuts a groove along an open line, its ends square.

    Parameters
    ----------
    points : (k, 3) float, mm
        The line, on the surface.
    normals : (k, 3) float
        Of the surface there.
    depth, width : float, mm
        Of the groove, as for `groove`.
    patch : int
        Patch of the groove's sides.
    """
    along = unit_rows(np.gradient(points, axis=0))
    side = unit_rows(np.cross(along, normals))
    up = np.cross(side, along)
    sections = np.stack(
        [points + (share - 0.5) * width * side + height * up for share, height in _profile(depth)],
        axis=1,
    )
    count, size = sections.shape[:2]
    here, step = np.arange(size), size * np.arange(count - 1)[:, None]
    after = (here + 1) % size
    a, b, c, d = ((step + corner).ravel() for corner in (here, here + size, after + size, after))
    fan = np.stack([np.zeros(size - 2, dtype=np.int64), here[1:-1], after[1:-1]], axis=1)
    triangles = np.concatenate(
        [
            np.stack([a, b, c], axis=1),
            np.stack([a, c, d], axis=1),
            fan,
            fan[:, ::-1] + size * (count - 1),
        ]
    )
    corners = sections.reshape(-1, 3)
    solid = side_by_side([(corners, triangles)], patch)
    return solid if solid.volume() > 0.0 else side_by_side([(corners, triangles[:, ::-1])], patch)


def _profile(depth: float) -> tuple[tuple[float, float], ...]:
    """Return the groove's section: share of its width, and height above the surface in mm."""
    return ((0.0, _ABOVE), (0.0, 0.0), (0.5, -depth), (1.0, 0.0), (1.0, _ABOVE))


def _ring(rays: Rays, scale: FloatArray, depth: float, width: float, patch: int) -> Manifold:
    corners = [
        rays.start + scale[:, None] * ((_GAP + share * width) * rays.along + height * rays.normal)
        for share, height in _profile(depth)
    ]
    ring = tube(np.stack(corners, axis=1), patch)
    return ring if ring.volume() > 0.0 else tube(np.stack(corners[::-1], axis=1), patch)
