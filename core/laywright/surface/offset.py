"""Offset of an open surface: every vertex moves so that its facets move by the distance.

At a vertex with facet normals ``n_i`` the shift ``s`` is the shortest one with
``n_i . s = d`` for all facets in the least-squares sense, so that a sharp edge stays sharp and
flat faces keep their exact distance.  The result is checked: where a triangle turns over, the
offset exceeds the radius of curvature, and the envelope of a rolling ball takes its place (see
`laywright.surface.rolled`), provided that one direction sees the whole surface.
"""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray
from laywright.errors import GeometryError
from laywright.surface.cap import smallest_cap
from laywright.surface.rolled import rolled_offset
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = ["offset"]

_SINGULAR = 1e-4
_UPRIGHT = 1e-5


def offset(surface: Surface, distance: float | FloatArray) -> Surface:
    """Return `surface` moved by `distance` mm along its normals.

    Parameters
    ----------
    surface : Surface
        Open or closed, mm.
    distance : float or (n,) float, mm
        Positive to the side that the normals point to; one for every vertex where it varies.

    Returns
    -------
    Surface
        Same triangles and patches on moved points; other triangles where folds are cut away.

    Raises
    ------
    GeometryError
        If a triangle turns over, and no direction sees the whole surface or the fold takes an
        edge of it along.
    """
    if not np.any(distance):
        return surface
    moved = surface.moved(surface.vertices + np.reshape(distance, (-1, 1)) * _shifts(surface))
    usable = surface.areas > 0.0
    turned = usable & (np.einsum("ij,ij->i", surface.normals, moved.normals) <= 0.0)
    if turned.any():
        even = np.ndim(distance) == 0
        far = float(np.asarray(distance).flat[int(np.argmax(np.abs(distance)))])
        rolled = _rolled(surface, moved, far) if even else None
        if rolled is not None:
            return rolled
        worst = int(np.flatnonzero(turned)[0])
        x, y, z = surface.centroids[worst]
        raise GeometryError(
            surface.patch_names[surface.patches[worst]],
            f"{int(turned.sum())} triangles that turn over when offset by "
            f"{three_figures(far)} mm, "
            f"one at ({x:.1f}, {y:.1f}, {z:.1f}) mm",
            f"an inside radius of more than {three_figures(abs(far))} mm",
            "enlarge the fillet there or put the laminate on the other side",
        )
    return moved


def _rolled(surface: Surface, moved: Surface, distance: float) -> Surface | None:
    """Return the offset with its folds cut away, or None where that cannot be done."""
    cap = smallest_cap(surface.normals)
    if surface.is_closed or cap.least_draft < -_UPRIGHT:
        return None
    up = np.array(cap.axis)
    side = np.cross(up, np.eye(3)[int(np.argmin(np.abs(up)))])
    side /= np.linalg.norm(side)
    turn = np.stack([side, np.cross(up, side), up])
    one, other = (s.moved(s.vertices @ turn.T) for s in (surface, moved))
    if distance > 0.0:
        found = rolled_offset(one, other, distance)
        return None if found is None else found.moved(found.vertices @ turn)
    mirror = np.array([1.0, 1.0, -1.0])
    one, other = (s.moved(s.vertices * mirror) for s in (one, other))
    found = rolled_offset(one, other, -distance)
    return None if found is None else found.moved(found.vertices * mirror @ turn)


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
