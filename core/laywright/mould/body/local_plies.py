"""The working surface set back where local plies make the laminate thicker.

The surface is divided into small triangles where their thickness runs out, so that the step is a
slope and not a wall; everywhere else its triangles stay.
"""

from __future__ import annotations

from functools import partial

import numpy as np

from laywright.arrays import FloatArray
from laywright.errors import GeometryError
from laywright.laminate.drop_off import Buildup, LocalPly
from laywright.mould.body.compensation import Allowance, Allowances, Compensation
from laywright.surface.along import Along
from laywright.surface.face import MouldedFace
from laywright.surface.offset import offset
from laywright.surface.refined import refined_between
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = ["local_items", "set_back_locally", "thickness_throughout"]

_STEPS = 2.0


def thickness_throughout(thickness: float | Buildup) -> float:
    """Return the thickness of what covers the whole face, mm."""
    return thickness.throughout if isinstance(thickness, Buildup) else thickness


def set_back_locally(
    face: MouldedFace, working: Surface, thickness: float | Buildup, allowances: Allowances
) -> Surface:
    """Return a working surface set back by the local plies, where it is set back at all.

    Parameters
    ----------
    face : MouldedFace
        Tells on which side of the mould the laminate lies.
    working : Surface
        Set back by the plies that cover the whole face, mm.
    thickness : float or Buildup
        Of the laminate.
    allowances : Allowances
        Whether the laminate is allowed for.

    Raises
    ------
    GeometryError
        If an inside radius is smaller than what the plies add there.
    """
    left_out = Allowance.LAMINATE in allowances.left_out
    if not isinstance(thickness, Buildup) or not face.set_back or left_out:
        return working
    surface = working
    for ply in thickness.local:
        depth = partial(_depth, ply)
        surface = refined_between(surface, depth, -ply.ramp, 0.0, ply.ramp / _STEPS)
    extra = thickness.extra(Along(surface))
    try:
        return offset(surface, -extra)
    except GeometryError as problem:
        raise GeometryError(
            f"{problem.where}, set back by local plies",
            problem.found,
            problem.needed,
            "end the plies before the bend, or switch the allowance for the laminate off",
        ) from problem


def local_items(
    face: MouldedFace, thickness: float | Buildup, allowances: Allowances
) -> tuple[Compensation, ...]:
    """Return what is allowed for local plies, one item for each; none without them."""
    if not isinstance(thickness, Buildup):
        return ()
    items = []
    for ply in thickness.local:
        if not face.set_back:
            size, where = 0.0, "not applied: the mould touches the CAD face"
        elif Allowance.LAMINATE in allowances.left_out:
            size, where = 0.0, "not applied: switched off"
        else:
            size = ply.thickness
            where = (
                "working surface under the ply, running out over "
                f"{three_figures(ply.ramp)} mm beyond its end"
            )
        items.append(Compensation(f"thickness of local ply {ply.ply}", size, "mm", where))
    return tuple(items)


def _depth(ply: LocalPly, surface: Surface) -> FloatArray:
    return np.asarray(ply.depth(Along(surface)))
