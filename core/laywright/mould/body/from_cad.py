"""How far the printed surface lies from the CAD faces, measured, and in steps of colour."""

from __future__ import annotations

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import Array, FloatArray, IntArray, floats, ints
from laywright.files.scale import Scale, stepped
from laywright.surface.distance import nearest_triangles
from laywright.surface.face import MouldedFace, MouldSide
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["distance_from_cad", "distance_steps"]

_WIDE = 4.0


def distance_from_cad(face: MouldedFace, working: Surface) -> FloatArray:
    """Return how far the working surface's points lie from the CAD faces: (n,) mm.

    Negative where the mould is set back, against its working surface's normals: laminate and
    coats do that everywhere, opened bends in places.
    """
    facet, away = nearest_triangles(working.vertices, face.surface)
    toward = 1.0 if face.mould_side is MouldSide.INSIDE else -1.0
    offset = working.vertices - face.surface.corners[facet, 0]
    side = toward * np.einsum("ij,ij->i", face.surface.normals[facet], offset)
    return floats(np.where(side > 0.0, away, -away), -1)


def distance_steps(
    from_cad: FloatArray, working: Surface, solid: Surface, on_working: Array
) -> tuple[Scale, IntArray]:
    """Return a colour scale for the distance from the CAD faces, and each facet's step.

    Parameters
    ----------
    from_cad : (n,) float, mm
        Of every point of the working surface.
    working, solid : Surface
        The working surface and the body that bears it.
    on_working : (m,) bool
        Which triangles of the solid lie on the working surface.

    Returns
    -------
    scale : Scale
        Three steps about the median; the middle one is a fifth of it wide, and at least twice
        the tolerance of the working area.  Where distances spread over more than four such
        widths, five even steps.
    steps : (m,) int
        Of every triangle of the solid; -1 off the working area.
    """
    away = np.abs(from_cad)
    middle = float(np.median(away))
    half = max(0.1 * middle, TOLERANCES.working_area)
    limits = (max(middle - half, 0.5 * half), middle + half)
    low, high = float(away.min()), float(away.max())
    if high - low > 2.0 * _WIDE * half:
        limits = tuple((low + (high - low) * np.arange(1, 5) / 5.0).tolist())
    scale = stepped("mm", tuple(round(limit, 2) for limit in limits))
    near = cKDTree(working.centroids).query(solid.centroids[on_working])[1]
    steps = np.full(len(solid.triangles), -1)
    steps[on_working] = scale.steps(away[working.triangles].mean(axis=1)[near])
    return scale, ints(steps, -1)
