"""The moulded face: the faces of a part that the cloth is laid against or onto.

Two choices fix everything that follows.  The *laminate side* says whether the skin lies inside
the part's envelope (the CAD face is the outside of the finished skin) or outside of it.  The
*mould side* says on which side of the skin the mould stands: outside (a cavity, for a part
that is seen from outside) or inside (a plug).  From them comes the *working surface*: the
mould's surface that cloth touches, its normals pointing from the mould into the laminate.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

import numpy as np
import shapely

from laywright.arrays import FloatArray, Vector, unit_vector
from laywright.errors import GeometryError, InputError, UnitError
from laywright.stage import stage
from laywright.surface.cap import smallest_cap
from laywright.surface.offset import offset
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES
from laywright.wording import three_figures

__all__ = ["LaminateSide", "MouldSide", "MouldedFace", "take_face"]


_AS_GOOD = math.radians(0.25)
_FOLD = math.radians(0.5)


class LaminateSide(Enum):
    """Side of the CAD face on which the laminate lies."""

    INSIDE = "inside the part"
    OUTSIDE = "outside the part"


class MouldSide(Enum):
    """Side of the laminate on which the mould stands."""

    OUTSIDE = "outside (cavity)"
    INSIDE = "inside (plug)"


@dataclass(frozen=True, eq=False)
class MouldedFace:
    """The picked faces and how they are moulded.

    Attributes
    ----------
    surface : Surface
        The picked CAD faces, normals out of the part.
    pull : tuple of 3 float
        Unit direction in which the part leaves the mould.
    laminate_side : LaminateSide
        Where the laminate lies.
    mould_side : MouldSide
        Where the mould stands.
    deviation : float, mm
        Largest measured distance between the CAD faces and the triangles.
    digest : str
        Digest of the inputs.
    """

    surface: Surface
    pull: Vector
    laminate_side: LaminateSide
    mould_side: MouldSide
    deviation: float
    digest: str = ""

    @property
    def set_back(self) -> bool:
        """Whether the laminate lies between the mould and the picked faces."""
        inside = self.mould_side is MouldSide.INSIDE
        return inside == (self.laminate_side is LaminateSide.INSIDE)

    def working_surface(self, thickness: float = 0.0) -> Surface:
        """Return the mould's surface for a laminate of `thickness` mm.

        Normals point from the mould into the laminate; plies are stacked along them.
        """
        inside = self.mould_side is MouldSide.INSIDE
        surface = self.surface if inside else self.surface.flipped()
        return offset(surface, -thickness if self.set_back else 0.0)


@stage("Moulded Face", version=1)
def take_face(
    surface: Surface,
    pull: Vector | None,
    laminate_side: LaminateSide = LaminateSide.INSIDE,
    mould_side: MouldSide = MouldSide.OUTSIDE,
    deviation: float = 0.0,
) -> MouldedFace:
    """Check the picked faces and fix the pull direction.

    Parameters
    ----------
    surface : Surface
        The picked faces, normals out of the part, mm.
    pull : tuple of 3 float or None
        Direction in which the part leaves the mould, any length; None takes the direction
        with the largest least draft (the centre of the smallest cap around the normals), or a
        coordinate axis whose least draft comes within a quarter of a degree of it.
    laminate_side, mould_side : LaminateSide, MouldSide
        See the module's head.
    deviation : float, mm
        Largest measured distance between CAD faces and triangles.

    Returns
    -------
    MouldedFace
        With a unit pull direction.

    Raises
    ------
    GeometryError
        If there is no area, if the faces close into a shell, hang together nowhere or lie folded
        on themselves, or if their outline crosses itself seen along the pull.
    InputError
        If the pull has no direction, or the size speaks for another unit.
    """
    name = ", ".join(surface.patch_names)
    if surface.area <= TOLERANCES.zero_area:
        raise GeometryError(
            name,
            f"an area of {three_figures(surface.area)} mm^2",
            "a face with area",
            "pick another face",
        )
    used = np.bincount(surface.patches, minlength=len(surface.patch_names)) > 0
    for patch in np.flatnonzero(used & (surface.patch_areas <= TOLERANCES.zero_area)):
        raise GeometryError(
            surface.patch_names[patch], "no area", "a face with area", "pick the others only"
        )
    thin = surface.areas <= TOLERANCES.zero_area
    if thin.any():
        surface = surface.part(~thin)
    if not surface.boundary_loops:
        raise GeometryError(
            name,
            "faces that close into a shell",
            "faces with an open edge, so that the part can leave the mould",
            "pick fewer faces",
        )
    _refuse_other_unit(surface, name)
    _refuse_folded(surface)
    pieces = int(surface.components.max()) + 1
    if pieces > 1:
        raise GeometryError(
            name,
            f"{pieces} pieces that do not hang together along an edge",
            "one connected piece",
            "pick the faces between them too, or make one Moulded Face for each",
        )
    toward_laminate = 1.0 if mould_side is MouldSide.INSIDE else -1.0
    if pull is None:
        direction = _best_pull(surface.normals * toward_laminate)
    else:
        try:
            direction = unit_vector(pull)
        except ValueError as problem:
            raise InputError(
                "pull direction", str(pull), "a direction such as (0, 0, 1)", "set the direction"
            ) from problem
    if np.isclose(np.abs(surface.normals @ np.array(direction)), 0.0, atol=1e-9).all():
        raise InputError(
            f"pull direction on {name}",
            "a direction that lies in the face everywhere",
            "a direction that leaves the face",
            "set another pull direction or pick other faces",
        )
    _refuse_crossing_outline(surface, direction, name)
    return MouldedFace(surface, direction, laminate_side, mould_side, deviation)


def _refuse_other_unit(surface: Surface, name: str) -> None:
    size = float(np.ptp(surface.vertices[surface.triangles.ravel()], axis=0).max())
    if not TOLERANCES.least_part <= size <= TOLERANCES.largest_part:
        raise UnitError(
            name,
            f"a face {three_figures(size)} mm long",
            f"{TOLERANCES.least_part:g} mm to {TOLERANCES.largest_part / 1000:g} m",
            "check the unit of the part: millimetres, metres or inches",
        )


def _refuse_folded(surface: Surface) -> None:
    """Refuse facets that lie flat on their neighbours, turned over."""
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    left, right = table.left[inner], table.right[inner]
    turn = np.einsum("ij,ij->i", surface.normals[left], surface.normals[right])
    folded = turn < -math.cos(_FOLD)
    if folded.any():
        worst = int(np.flatnonzero(folded)[0])
        x, y, z = surface.vertices[table.ends[inner][worst]].mean(axis=0)
        raise GeometryError(
            surface.patch_names[surface.patches[left[worst]]],
            f"a fold at ({x:.1f}, {y:.1f}, {z:.1f}) mm, the face lying on itself",
            "a face that turns by less than half a circle at every edge",
            "mend the face in the part or pick fewer faces",
        )


def _refuse_crossing_outline(surface: Surface, pull: Vector, name: str) -> None:
    """Refuse an outline that crosses itself on a face that is wholly seen along the pull."""
    tilt = surface.normals @ np.array(pull)
    if tilt.min() <= 0.0 <= tilt.max():
        return
    up = np.array(pull)
    side = np.cross(up, np.eye(3)[int(np.argmin(np.abs(up)))])
    plan = np.stack([side, np.cross(up, side)], axis=1)
    for loop in surface.boundary_loops:
        ring = shapely.LinearRing(surface.vertices[loop] @ plan)
        if not ring.is_simple:
            raise GeometryError(
                name,
                "an outline that crosses itself, seen along the pull",
                "an outline that passes each place once",
                "mend the edge of the face, set another pull or split the face into two moulds",
            )


def _best_pull(normals: FloatArray) -> Vector:
    """Return the pull with the largest least draft, an axis where one is as good."""
    best = smallest_cap(normals)
    axes = np.concatenate([np.eye(3), -np.eye(3)])
    least = np.arcsin(np.clip((axes @ normals.T).min(axis=1), -1.0, 1.0))
    if least.max() >= best.least_draft - _AS_GOOD:
        return unit_vector(axes[int(np.argmax(least))])
    return best.axis
