"""Reading a draped cloth: where a point of it lies, its shear there, how its yarns run.

Tests read the results with it; the product itself does not.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray
from laywright.cloth.drape.recovery import Recovery, strain_at_vertices
from laywright.cloth.drape.strain import Strain, jacobians, strain_from
from laywright.surface.triangles import Surface

__all__ = ["Reading", "principal_stretches", "read_cloth", "strain_of", "yarn_directions"]

_NEAREST = 24


@dataclass(frozen=True, eq=False)
class Reading:
    """The draped cloth at some of its points.

    Attributes
    ----------
    points : (k, 3) float, mm
        Where on the surface they lie.
    shear : (k,) float, radians
        Shear there.
    """

    points: FloatArray
    shear: FloatArray


def read_cloth(surface: Surface, uv: FloatArray, cloth_points: FloatArray) -> Reading:
    """Return where points of the cloth lie on the surface, and the shear there.

    Parameters
    ----------
    surface : Surface
        Smooth near the points, mm.
    uv : (n, 2) float, mm
        The drape's flat coordinates.
    cloth_points : (k, 2) float, mm
        Points of the cloth, within the draped region.

    Returns
    -------
    Reading

    Notes
    -----
    A cubic is fitted by least squares to the nearest vertices, weighted by nearness.
    """
    fields = np.concatenate(
        [surface.vertices, strain_at_vertices(surface, uv).shear[:, None]], axis=1
    )
    distance, nearest = cKDTree(uv).query(cloth_points, k=min(_NEAREST, len(uv)))
    size = distance[:, -1:, None]
    step = (uv[nearest] - cloth_points[:, None]) / size
    x, y = step[:, :, 0], step[:, :, 1]
    terms = np.stack(
        [np.ones_like(x), x, y, x * x, x * y, y * y, x**3, x * x * y, x * y * y, y**3], axis=2
    )
    weight = np.exp(-4.0 * (x * x + y * y))[:, :, None]
    read = np.empty((len(cloth_points), 4))
    for point in range(len(cloth_points)):
        read[point] = np.linalg.lstsq(
            terms[point] * weight[point], fields[nearest[point]] * weight[point], rcond=None
        )[0][0]
    return Reading(read[:, :3], read[:, 3])


def yarn_directions(surface: Surface, uv: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Return the directions of warp and weft at every vertex: (n, 3) float each, unit.

    These are the local angles that the ply has after draping.

    Parameters
    ----------
    surface : Surface
        The surface, mm.
    uv : (n, 2) float, mm
        The drape's flat coordinates.
    """
    recovery = Recovery(surface)
    x, y = recovery.axes
    both = recovery.gradients(uv)
    warp = both[:, 1, 1, None] * x - both[:, 1, 0, None] * y
    weft = -both[:, 0, 1, None] * x + both[:, 0, 0, None] * y
    return (
        warp / np.linalg.norm(warp, axis=1, keepdims=True),
        weft / np.linalg.norm(weft, axis=1, keepdims=True),
    )


def strain_of(surface: Surface, uv: FloatArray) -> Strain:
    """Return the strain of cloth that a flat map puts on the facets of a surface.

    Parameters
    ----------
    surface : Surface
        The surface, mm, without triangles of no area.
    uv : (n, 2) float, mm
        Flat coordinates of the vertices; no triangle turned over.

    Returns
    -------
    Strain
        With (m,) values.
    """
    return strain_from(jacobians(surface, uv))


def principal_stretches(surface: Surface, uv: FloatArray) -> FloatArray:
    """Return the largest and smallest scale of the map in every triangle.

    Returns
    -------
    (m, 2) float
        Length in the flat over length on the surface, the larger first.
    """
    scales: FloatArray = np.linalg.svd(jacobians(surface, uv), compute_uv=False)
    return scales
