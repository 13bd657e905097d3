"""What the maker should know about a set of tiles, in plain sentences."""

from __future__ import annotations

import math
from collections.abc import Sequence

from laywright.arrays import Vector
from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.naming import tile_name
from laywright.mould.tiles.seam_joints import SeamJoints
from laywright.mould.tiles.tile import TileSettings

__all__ = ["remarks_on"]


def remarks_on(
    plan: CutPlan,
    settings: TileSettings,
    joints: SeamJoints,
    unmarked: Sequence[str],
    gaps: Vector,
) -> tuple[str, ...]:
    """Return the remarks on a set of tiles.

    Parameters
    ----------
    plan : CutPlan
        The grid.
    settings : TileSettings
        How the body was cut.
    joints : SeamJoints
        What holds the tiles in place.
    unmarked : sequence of str
        Tiles without a mark.
    gaps : tuple of 3 float, mm
        Sum of the glue gaps along each axis.
    """
    remarks = []
    if not plan.is_whole_search:
        remarks.append("The search of the cuts was ended early; these are the best so far.")
    if plan.free_count:
        remarks.append(_cost_of_wishes(plan))
    if plan.slivers:
        remarks.append(f"Corners where a cut leaves less than was asked for: {plan.slivers}.")
    if joints.bare:
        remarks.append(_bare(plan, settings, joints))
    if unmarked and settings.mark_depth > 0.0:
        remarks.append(f"No room for a mark on {', '.join(unmarked)}.")
    if any(gaps):
        remarks.append(
            "Glue gaps of {:.2f}, {:.2f} and {:.2f} mm in all are taken off the tiles.".format(
                *gaps
            )
        )
    return tuple(remarks)


def _cost_of_wishes(plan: CutPlan) -> str:
    count = math.prod(plan.counts)
    return (
        f"With the pinned and forbidden cuts: {count} tiles, weighted seams of {plan.cost:.0f} mm; "
        f"without them: {plan.free_count} tiles, {plan.free_cost:.0f} mm."
    )


def _bare(plan: CutPlan, settings: TileSettings, joints: SeamJoints) -> str:
    names = ", ".join(
        f"{tile_name(seam.lower, plan)} to {tile_name(seam.upper, plan)}" for seam in joints.bare
    )
    if settings.joint is JointKind.CLAMP_EARS:
        return f"No ears at {names}: hold these by hand or by straps."
    thinnest = min(seam.width for seam in joints.bare)
    size = settings.joint_size
    needed = 0.0 if size is None else size.needed
    return (
        f"No {settings.joint.value} at {names}: {thinnest:.3g} mm of section, "
        f"{needed:.3g} mm needed; glued flat."
    )
