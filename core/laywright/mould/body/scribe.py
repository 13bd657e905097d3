"""Scribed lines: a V groove just outside the trim edge, and one at the edge of the cloth.

The groove prints through to the laminate as a fine raised line along which the part is
trimmed; a groove of 0.3 to 0.5 mm transfers well and does not hold the part back (common
practice, no source).
"""

from __future__ import annotations

import numpy as np
from manifold3d import Manifold

from laywright.arrays import FloatArray
from laywright.mould.body.bays import free_lengths
from laywright.mould.body.run_off import Rays, rays_along
from laywright.mould.solid import tube

__all__ = ["cloth_line", "groove"]

_GAP = 0.05
_ABOVE = 0.3
_LEAST = 0.005


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


def _ring(rays: Rays, scale: FloatArray, depth: float, width: float, patch: int) -> Manifold:
    profile = ((0.0, _ABOVE), (0.0, 0.0), (0.5, -depth), (1.0, 0.0), (1.0, _ABOVE))
    corners = [
        rays.start + scale[:, None] * ((_GAP + share * width) * rays.along + height * rays.normal)
        for share, height in profile
    ]
    ring = tube(np.stack(corners, axis=1), patch)
    return ring if ring.volume() > 0.0 else tube(np.stack(corners[::-1], axis=1), patch)
