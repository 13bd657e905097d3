"""Offset of an open surface: every vertex moves so that its facets move by the distance.

At a vertex with facet normals ``n_i`` the shift ``s`` is the shortest one with
``n_i . s = d`` for all facets in the least-squares sense, so that a sharp edge stays sharp and
flat faces keep their exact distance.  The result is checked: no triangle may turn over, which
happens where the offset exceeds the radius of curvature.
"""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray
from laywright.errors import GeometryError
from laywright.surface.triangles import Surface

__all__ = ["offset"]

_SINGULAR = 1e-4


def offset(surface: Surface, distance: float) -> Surface:
    """Return `surface` moved by `distance` mm along its normals.

    Parameters
    ----------
    surface : Surface
        Open or closed, mm.
    distance : float, mm
        Positive to the side that the normals point to.

    Returns
    -------
    Surface
        Same triangles and patches on moved points.

    Raises
    ------
    GeometryError
        If a triangle turns over: the distance exceeds the radius of curvature there.
    """
    if distance == 0.0:
        return surface
    moved = surface.moved(surface.vertices + distance * _shifts(surface))
    usable = surface.areas > 0.0
    turned = usable & (np.einsum("ij,ij->i", surface.normals, moved.normals) <= 0.0)
    if turned.any():
        worst = int(np.flatnonzero(turned)[0])
        x, y, z = surface.centroids[worst]
        raise GeometryError(
            surface.patch_names[surface.patches[worst]],
            f"{int(turned.sum())} triangles that turn over when offset by {distance:.3g} mm, "
            f"one at ({x:.1f}, {y:.1f}, {z:.1f}) mm",
            f"an inside radius of more than {abs(distance):.3g} mm",
            "enlarge the fillet there or put the laminate on the other side",
        )
    return moved


def _shifts(surface: Surface) -> FloatArray:
    """Return the shift of every vertex for a distance of 1: (n, 3) float."""
    count = len(surface.vertices)
    matrix = np.zeros((count, 3, 3))
    right = np.zeros((count, 3))
    normals = surface.normals
    outer = normals[:, :, None] * normals[:, None, :]
    for corner in range(3):
        weight, at = surface.angles[:, corner], surface.triangles[:, corner]
        for i in range(3):
            right[:, i] += np.bincount(at, weights=normals[:, i] * weight, minlength=count)
            for j in range(3):
                term = outer[:, i, j] * weight
                matrix[:, i, j] += np.bincount(at, weights=term, minlength=count)
    value, vector = np.linalg.eigh(matrix)
    kept = value > _SINGULAR * value[:, -1:]
    inverse = np.where(kept, 1.0 / np.where(kept, value, 1.0), 0.0)
    local = np.einsum("nji,nj->ni", vector, right)
    shift: FloatArray = np.einsum("nij,nj->ni", vector, inverse * local)
    return shift
