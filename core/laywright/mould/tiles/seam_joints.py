"""The joints of all seams of a grid as the solids that make them: holes, tongues, ears."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, field

from manifold3d import Manifold

from laywright.errors import LimitError
from laywright.mould.solid import side_by_side
from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.ears import Ear, EarSize, ear_solid, ears_of
from laywright.mould.tiles.joint import Joint, JointKind, Mesh, Place, hole, tongue
from laywright.mould.tiles.joints import BareSeam, Rooms, joints_of, seams_of
from laywright.mould.tiles.tile import TileSettings

__all__ = ["SeamJoints", "joints_for"]


@dataclass(frozen=True)
class SeamJoints:
    """What joints do to the tiles.

    Attributes
    ----------
    joints : tuple of Joint
        Dowels or tongues.
    ears : tuple of Ear
        Clamp ears.
    area : float, mm^2
        Area of all seams together.
    bare : tuple of BareSeam
        Seams without a joint though one was asked for.
    rooms : dict
        What the joints leave of every seam's face; see `laywright.mould.tiles.joints.Rooms`.
    holes, lugs : dict of place to Manifold
        What is taken off the tile in a cell, and what is put on.
    """

    joints: tuple[Joint, ...]
    ears: tuple[Ear, ...]
    area: float
    bare: tuple[BareSeam, ...]
    rooms: Rooms
    holes: dict[Place, Manifold] = field(default_factory=dict)
    lugs: dict[Place, Manifold] = field(default_factory=dict)


def joints_for(whole: Manifold, plan: CutPlan, settings: TileSettings, patch: int) -> SeamJoints:
    """Return the joints of a body's seams.

    Parameters
    ----------
    whole : Manifold
        The body in the grid's axes.
    plan : CutPlan
        The grid.
    settings : TileSettings
        Which joints, and how large.
    patch : int
        Patch of the joints' faces.

    Raises
    ------
    LimitError
        If there are seams and none of them has room for a joint.
    """
    if settings.joint is JointKind.CLAMP_EARS:
        return _eared(whole, plan, settings, patch)
    size = settings.joint_size
    if size is None:
        flat = seams_of(whole, plan, settings.mark_depth)
        return SeamJoints((), (), flat.area, (), flat.rooms)
    found = joints_of(whole, plan, size)
    if found.bare and not found.joints:
        width = max(seam.width for seam in found.bare)
        raise LimitError(
            f"{settings.joint.value} in the seams",
            f"a body {width:.4g} mm thick where its seams are thickest",
            f"{size.needed:.4g} mm for the joint and a wall of {size.wall:.4g} mm around it",
            "make the body thicker, the joints smaller, or glue the tiles flat",
        )
    holes: dict[Place, list[Mesh]] = defaultdict(list)
    lugs: dict[Place, list[Mesh]] = defaultdict(list)
    for joint in found.joints:
        for side, place in ((-1, joint.lower), (1, joint.upper)):
            cut = hole(joint, side)
            if cut is not None:
                holes[place].append(cut)
        if joint.kind is JointKind.TONGUES:
            face = joint.point[joint.axis] - settings.glue_gap / 2.0
            lugs[joint.lower].append(tongue(joint, face))
    return SeamJoints(
        found.joints,
        (),
        found.area,
        found.bare,
        found.rooms,
        {place: side_by_side(meshes, patch) for place, meshes in holes.items()},
        {place: side_by_side(meshes, patch) for place, meshes in lugs.items()},
    )


def _eared(whole: Manifold, plan: CutPlan, settings: TileSettings, patch: int) -> SeamJoints:
    size = EarSize(settings.ear_reach, settings.ear_thickness, settings.ear_height)
    ears, bare, area = ears_of(whole, plan, size, settings.glue_gap)
    lugs: dict[Place, Manifold] = {}
    for ear in ears:
        solid = ear_solid(ear, patch)
        lugs[ear.place] = lugs[ear.place] + solid if ear.place in lugs else solid
    seams = tuple(BareSeam(lower, upper, 0.0) for lower, upper in bare)
    rooms = seams_of(whole, plan, settings.mark_depth).rooms
    return SeamJoints((), ears, area, seams, rooms, {}, lugs)
