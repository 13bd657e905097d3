"""The mould's body: working surface, run-off and flange, scribed lines, sides, base, hollow.

The working surface is kept exactly as `laywright.surface.face.MouldedFace.working_surface`
gives it, set back by the coats that come onto the print.  The body lies below it, against the
pull, and is a closed solid.
"""

from __future__ import annotations

import numpy as np
from manifold3d import Manifold, OpType

from laywright.arrays import floats
from laywright.errors import GeometryError, LimitError
from laywright.laminate.drop_off import Buildup
from laywright.mould.body.as_printed import (
    compensations_of,
    opened_face,
    opened_remarks,
    printed_surface,
    scale_of,
)
from laywright.mould.body.feet import feet_of
from laywright.mould.body.from_cad import distance_from_cad
from laywright.mould.body.in_pieces import body_in_pieces, held_by_patch
from laywright.mould.body.inside import Hollow, hollow_of, sag_remarks
from laywright.mould.body.local_plies import thickness_throughout
from laywright.mould.body.mould import MouldBody
from laywright.mould.body.plastic import estimate_plastic
from laywright.mould.body.settings import Edge, Inside, MouldBuild, MouldSettings
from laywright.mould.body.uncut import cuts_of, uncut_body
from laywright.mould.frame import upright
from laywright.mould.solid import from_manifold, to_manifold
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage
from laywright.surface.distance import largest_distance
from laywright.surface.face import MouldedFace
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES
from laywright.wording import three_figures

__all__ = ["Edge", "Inside", "MouldBody", "MouldBuild", "MouldSettings", "build_body"]

_CRUMB = 1e-3


@stage("Mould Body", version=8)
def build_body(
    face: MouldedFace,
    thickness: float | Buildup,
    settings: MouldSettings = MouldSettings(),
    *,
    progress: Progress = silent,
) -> MouldBody:
    """Build the body of a mould, in pieces where the part cannot leave along its pull.

    Parameters
    ----------
    face : MouldedFace
        The picked faces, their pull and sides.
    thickness : float, mm, or Buildup
        Thickness of the laminate, or how it varies.
    settings : MouldSettings
        Run-off, base, scribed lines, edge, inside, allowances, plastic, marks of the datum.
    progress : Progress
        Told how far it is.

    Returns
    -------
    MouldBody
        A closed solid, checked.

    Raises
    ------
    GeometryError
        If the part leaves neither one body nor few pieces, or the body does not close.
    """
    throughout = thickness_throughout(thickness)
    if not 0.0 <= throughout <= 100.0:
        raise LimitError(
            "laminate thickness",
            f"{three_figures(throughout)} mm",
            "0 to 100 mm",
            "check the layup",
        )
    opened = opened_face(face, thickness, settings, progress=part_of(progress, 0.0, 0.2))
    working = printed_surface(face, thickness, settings, opened)
    allowed = compensations_of(face, thickness, settings, opened)
    held = held_by_patch(working, face.pull)
    if held is not None:
        return body_in_pieces(face, working, held, allowed, settings, progress=progress)
    progress(0.2, "laying the run-off")
    turn = upright(face.pull)
    frame = uncut_body(working, turn, settings)
    whole = to_manifold(frame.body, f"the mould body on {frame.where}")
    remarks: list[str] = []
    hollow = None
    if settings.inside.build is not MouldBuild.SOLID:
        progress(0.3, "hollowing")
        hollow = hollow_of(
            frame.body, frame.upper, settings.inside, frame.number["base"], frame.number["hollow"]
        )
        whole = whole - hollow.solid
    progress(0.5, "cutting lines and bores")
    cuts = cuts_of(frame, turn, settings, remarks)
    solid = whole - Manifold.batch_boolean(cuts, OpType.Add) if cuts else whole
    if settings.feet.number:
        outline = frame.upper.vertices[frame.upper.boundary_loops[0], :2]
        floor = float(frame.body.vertices[:, 2].min())
        feet = feet_of(outline, settings.feet, floor, frame.number["foot"])
        solid = Manifold.batch_boolean([solid, *feet], OpType.Add)
    kept = [part for part in solid.decompose() if part.volume() > _CRUMB]
    surface = from_manifold(Manifold.compose(kept), frame.flat.patch_names)
    surface = surface.moved(surface.vertices @ turn)
    progress(0.7, "measuring the working area")
    _check_closed(surface)
    deviation = _largest_deviation(surface, working, frame.number["run-off"])
    from_cad = distance_from_cad(face, working)
    return MouldBody(
        surface,
        working,
        floats(working.vertices[working.boundary_loops[0]], -1, 3),
        face.pull,
        allowed,
        scale_of(settings),
        deviation,
        from_cad,
        float(np.abs(from_cad).max()),
        None if hollow is None else hollow.least_wall,
        estimate_plastic((surface,), face.pull, scale_of(settings), settings.plastic),
        surface.volume,
        (*_remarks(working, settings, deviation, hollow), *opened_remarks(face, opened), *remarks),
    )


def _check_closed(surface: Surface) -> None:
    if not surface.is_closed or surface.volume <= 0.0:
        raise GeometryError(
            "the mould body",
            "a body with gaps",
            "a closed body",
            "coarsen the mesh of the picked faces a little and try again",
        )


def _largest_deviation(solid: Surface, working: Surface, first_own: int) -> float:
    area = solid.part(solid.patches < first_own)
    if len(area.triangles) == 0:
        return float("inf")
    return largest_distance(working, area)


def _remarks(
    working: Surface, settings: MouldSettings, deviation: float, hollow: Hollow | None
) -> tuple[str, ...]:
    remarks = []
    holes = len(working.boundary_loops) - 1
    if holes:
        what = "1 hole of the face is" if holes == 1 else f"{holes} holes of the face are"
        scribed = ", the edges scribed" if settings.scribe_depth > 0.0 else ""
        remarks.append(f"{what} filled{scribed}.")
    if deviation > TOLERANCES.working_area:
        remarks.append(
            f"The working area is off by {three_figures(deviation)} mm, "
            f"wanted at most {three_figures(TOLERANCES.working_area)} mm."
        )
    if hollow is not None:
        remarks += sag_remarks(settings.inside, hollow.span)
    return tuple(remarks)
