"""How cloth is strained by a map from the surface to the flat.

A map gives flat coordinates (u, v) at the vertices; u counts along the warp, v along the weft.
With the gradients ``grad u = (a, b)`` and ``grad v = (c, d)`` in a facet and ``det = ad - bc``,
a warp yarn (v constant) has the length ``|grad v| / det`` on the surface for each mm in the
flat, a weft yarn ``|grad u| / det``, and the yarns cross at an angle whose cosine is
``-(grad u . grad v) / (|grad u| |grad v|)``.  Shear is what that angle lacks to 90 degrees:
positive where the angle between +warp and +weft has closed.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import Array, FloatArray, Vector
from laywright.cloth.drape.place import nearest_place
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = [
    "Strain",
    "facet_axes",
    "facet_gradients",
    "image_of",
    "jacobians",
    "smooth_facets",
    "strain_from",
    "turned_over",
]


@dataclass(frozen=True, eq=False)
class Strain:
    """Strain of the cloth in every triangle, or at other places.

    Attributes
    ----------
    warp, weft : (m,) float
        Stretch of the yarns: length on the surface over length in the flat, less 1.
    shear : (m,) float, radians
        90 degrees less the angle between +warp and +weft.
    """

    warp: FloatArray
    weft: FloatArray
    shear: FloatArray

    @property
    def cover(self) -> FloatArray:
        """Flat cloth per area of surface, (m,) float: areal weight over that of the roll.

        Shear alone makes it ``1 / cos(shear)``.
        """
        cover: FloatArray = 1.0 / ((1.0 + self.warp) * (1.0 + self.weft) * np.cos(self.shear))
        return cover


def facet_axes(surface: Surface) -> tuple[FloatArray, FloatArray]:
    """Return the axes of each triangle, (m, 3) float each: its first side, and left of it.

    The facet's normal points to the eye.
    """
    side = surface.corners[:, 1] - surface.corners[:, 0]
    x = side / np.linalg.norm(side, axis=1, keepdims=True)
    return x, np.cross(surface.normals, x)


def smooth_facets(surface: Surface) -> Array:
    """Return which triangles lie beside no sharp edge: (m,) bool.

    There the normals at the corners are those of a smooth surface through them.
    """
    corner_normals = surface.vertex_normals[surface.triangles]
    tilt = np.einsum("mki,mi->mk", corner_normals, surface.normals)
    smooth: Array = tilt.min(axis=1) > np.cos(TOLERANCES.sharp_edge)
    return smooth


def facet_gradients(surface: Surface) -> FloatArray:
    """Return the gradients of the corners' hat functions in the axes of each triangle.

    Returns
    -------
    (m, 2, 3) float, 1/mm
    """
    corners = surface.corners
    x, y = facet_axes(surface)
    length = np.linalg.norm(corners[:, 1] - corners[:, 0], axis=1)
    last = corners[:, 2] - corners[:, 0]
    along, up = np.einsum("ij,ij->i", last, x), np.einsum("ij,ij->i", last, y)
    gradients = np.zeros((len(corners), 2, 3))
    gradients[:, 0, 0] = -1.0 / length
    gradients[:, 0, 1] = 1.0 / length
    gradients[:, 1, 0] = (along / length - 1.0) / up
    gradients[:, 1, 1] = -along / (length * up)
    gradients[:, 1, 2] = 1.0 / up
    return gradients


def jacobians(surface: Surface, uv: FloatArray) -> FloatArray:
    """Return d(u, v)/d(x, y) of every triangle: (m, 2, 2) float."""
    jacobian: FloatArray = np.einsum(
        "mxk,mkw->mwx", facet_gradients(surface), uv[surface.triangles]
    )
    return jacobian


def turned_over(surface: Surface, uv: FloatArray) -> int:
    """Return how many triangles the map turns over or crushes to nothing."""
    return int((np.linalg.det(jacobians(surface, uv)) <= 0.0).sum())


def strain_from(jacobians: FloatArray) -> Strain:
    """Return the strain from d(u, v)/d(x, y): (k, 2, 2) float, with positive determinants."""
    u, v = jacobians[:, 0], jacobians[:, 1]
    det = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
    return Strain(
        np.linalg.norm(v, axis=1) / det - 1.0,
        np.linalg.norm(u, axis=1) / det - 1.0,
        np.arctan2(-np.einsum("ij,ij->i", u, v), det),
    )


def image_of(surface: Surface, uv: FloatArray, origin: Vector, direction: Vector) -> FloatArray:
    """Return the unit direction in the flat of a direction along the surface at a point.

    Parameters
    ----------
    surface : Surface
        The surface, mm.
    uv : (n, 2) float, mm
        Flat coordinates of the vertices.
    origin : tuple of 3 float, mm
        The nearest point of the surface is taken.
    direction : tuple of 3 float
        Its part along the surface counts.

    Returns
    -------
    (2,) float
    """
    triangle = nearest_place(surface, np.array(origin)).triangle
    along = np.array([axis[triangle] @ np.array(direction) for axis in facet_axes(surface)])
    image: FloatArray = jacobians(surface, uv)[triangle] @ along
    return image / np.linalg.norm(image)
