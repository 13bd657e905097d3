"""The datum: the point and the arrow on the mould from which all ply angles are measured."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, Vector, unit_vector
from laywright.cloth.drape.place import Place, nearest_place
from laywright.errors import InputError
from laywright.surface.triangles import Surface

__all__ = ["Datum", "default_datum", "start_place", "warp_direction"]


@dataclass(frozen=True)
class Datum:
    """Where the cloth is laid first, and the arrow for its angle.

    Attributes
    ----------
    origin : tuple of 3 float, mm
        Start point; the nearest point of the surface is taken.
    direction : tuple of 3 float
        Arrow, any length; its part along the surface counts.
    """

    origin: Vector
    direction: Vector


def default_datum(surface: Surface) -> Datum:
    """Return the middle of a surface with an arrow along its longest extent.

    The origin is the point of the surface nearest to its centroid.  The arrow is the longest
    principal axis of the area, laid into the surface at the origin, pointing to the positive
    side of the axis that it follows most.

    Parameters
    ----------
    surface : Surface
        The working surface.

    Returns
    -------
    Datum
    """
    weight = surface.areas / surface.area
    centre = weight @ surface.centroids
    place = nearest_place(surface, centre)
    normal = surface.normals[place.triangle]
    spread = _second_moment(surface, centre)
    across = np.eye(3) - np.outer(normal, normal)
    _, axes = np.linalg.eigh(across @ spread @ across)
    arrow = across @ axes[:, -1]
    if arrow[int(np.argmax(np.abs(np.round(arrow, 6))))] < 0.0:
        arrow = -arrow
    x, y, z = place.point(surface).tolist()
    return Datum((x, y, z), unit_vector(arrow))


def _second_moment(surface: Surface, centre: FloatArray) -> FloatArray:
    """Return the second moment of the area about `centre`: (3, 3) float, mm^2 per area."""
    corners = surface.corners - centre
    middle = corners.mean(axis=1)
    weight = surface.areas / surface.area
    # exact for a triangle: (9 c c^T + sum of corner outer products) / 12, c the centroid
    moment: FloatArray = (
        9.0 * np.einsum("m,mi,mj->ij", weight, middle, middle)
        + np.einsum("m,mki,mkj->ij", weight, corners, corners)
    ) / 12.0
    return moment


def start_place(surface: Surface, datum: Datum) -> Place:
    """Return the place on `surface` that is nearest to the datum's origin."""
    return nearest_place(surface, np.array(datum.origin))


def warp_direction(surface: Surface, datum: Datum, angle: float) -> Vector:
    """Return the direction of the warp at the datum's origin.

    Parameters
    ----------
    surface : Surface
        Working surface, its normals pointing from the mould into the laminate.
    datum : Datum
        Start point and arrow.
    angle : float, radians
        Ply angle from the arrow, positive counter-clockwise seen from the side that the
        normals point to (the side away from the mould).

    Returns
    -------
    tuple of 3 float
        Unit vector across the surface's normal at the origin.

    Raises
    ------
    InputError
        If the arrow stands upright on the surface there.
    """
    normal = np.array(start_place(surface, datum).normal(surface))
    try:
        arrow = np.array(unit_vector(datum.direction))
        along = arrow - (arrow @ normal) * normal
        if np.linalg.norm(along) < 1e-3:
            raise ValueError("the arrow stands upright")
    except ValueError as problem:
        raise InputError(
            "datum arrow",
            f"the direction {datum.direction}, which does not run along the face at its origin",
            "a direction along the face",
            "turn the arrow",
        ) from problem
    along /= np.linalg.norm(along)
    left = np.cross(normal, along)
    return unit_vector(math.cos(angle) * along + math.sin(angle) * left)
