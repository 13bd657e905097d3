"""How far the printed surface lies from the CAD faces, measured, and in steps of colour."""

from __future__ import annotations

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import Array, FloatArray, IntArray, floats, ints
from laywright.files.scale import Scale, stepped
from laywright.surface.distance import distances
from laywright.surface.face import MouldedFace
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["distance_from_cad", "distance_steps"]


def distance_from_cad(face: MouldedFace, working: Surface) -> FloatArray:
    """Return how far the working surface's points lie from the CAD faces: (n,) mm.

    Laminate and coats both set the mould back, against its working surface's normals.
    """
    return floats(-distances(working.vertices, face.surface), -1)


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
        the tolerance of the working area.
    steps : (m,) int
        Of every triangle of the solid; -1 off the working area.
    """
    away = np.abs(from_cad)
    middle = float(np.median(away))
    half = max(0.1 * middle, TOLERANCES.working_area)
    limits = (max(middle - half, 0.5 * half), middle + half)
    scale = stepped("mm", tuple(round(limit, 2) for limit in limits))
    near = cKDTree(working.centroids).query(solid.centroids[on_working])[1]
    steps = np.full(len(solid.triangles), -1)
    steps[on_working] = scale.steps(away[working.triangles].mean(axis=1)[near])
    return scale, ints(steps, -1)
