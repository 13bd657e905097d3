"""The mould of a part that cannot leave along one direction: parted, and built in pieces."""

from __future__ import annotations

import dataclasses

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.errors import GeometryError
from laywright.mould.body.as_printed import scale_of
from laywright.mould.body.compensation import Compensation
from laywright.mould.body.from_cad import distance_from_cad
from laywright.mould.body.inside import sag_remarks
from laywright.mould.body.mould import MouldBody
from laywright.mould.body.pieces import MouldPieces, build_pieces, together
from laywright.mould.body.plastic import estimate_plastic
from laywright.mould.body.settings import MouldSettings
from laywright.mould.release.parting import Parting, PartingSettings, part_surface
from laywright.mould.release.release import ReleaseSettings
from laywright.mould.release.visibility import STANDING, hidden_share
from laywright.progress import Progress, part_of
from laywright.surface.face import MouldedFace, MouldSide
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = ["body_in_pieces", "held_by_patch"]

_HELD = 1e-6


def held_by_patch(working: Surface, pull: tuple[float, float, float]) -> FloatArray | None:
    """Return the area of each patch that is held back along a pull, mm^2; None if there is none.

    Parameters
    ----------
    working : Surface
        The working surface, normals into the laminate.
    pull : tuple of 3 float
        Unit direction.
    """
    tilt = working.normals @ np.array(pull)
    held = np.where(tilt < -STANDING, 1.0, hidden_share(working, pull)) * working.areas
    if held.sum() <= _HELD * working.area:
        return None
    return floats(np.bincount(working.patches, held, len(working.patch_names)), -1)


def body_in_pieces(
    face: MouldedFace,
    working: Surface,
    held: FloatArray,
    allowed: tuple[Compensation, ...],
    settings: MouldSettings,
    *,
    progress: Progress,
) -> MouldBody:
    """Build a mould in the fewest pieces that the part leaves.

    Parameters
    ----------
    face : MouldedFace
        The picked faces; their pull is the mouth of the mould.
    working : Surface
        The working surface as it is printed.
    held : (patches,) float, mm^2
        What is held back along the pull.
    allowed : tuple of Compensation
        What was allowed for on the way to it.
    settings : MouldSettings
        Pieces, allowances, plastic.
    progress : Progress
        Told how far it is.

    Raises
    ------
    GeometryError
        If one piece would do along another pull, or no few pieces let the part leave.
    """
    asked = settings.pieces.asked(ReleaseSettings())
    most = asked.most_pieces
    if most < 2:
        raise _refused(working, held, "")
    wanted = PartingSettings(most, asked.least_draft)
    try:
        parting = part_surface(working, face.pull, wanted, progress=part_of(progress, 0.2, 0.5))
        if len(parting.pulls) == 1:
            x, y, z = (round(part, 3) + 0.0 for part in parting.pulls[0])
            raise _refused(working, held, f"; it leaves along ({x:g}, {y:g}, {z:g})")
        if parting.undercut_area > 0.0 or len(parting.pulls) > most:
            why = f"; {' '.join(parting.remarks).rstrip('.')}"
            raise _refused(working, held, why, _other_side(face, wanted))
        pieces = build_pieces(
            parting,
            face.pull,
            settings.pieces,
            (settings.scribe_depth, settings.scribe_width, settings.edge.cloth_margin),
            settings.inside,
            progress=part_of(progress, 0.5, 0.9),
        )
    except GeometryError as problem:
        if problem.needed == _NEEDED:
            raise
        why = f"; in pieces: {str(problem).rstrip('.')}"
        raise _refused(working, held, why, _other_side(face, wanted)) from problem
    progress(0.9, "measuring the working area")
    solid = together(tuple(piece.solid for piece in pieces.pieces))
    from_cad = distance_from_cad(face, parting.surface)
    return MouldBody(
        solid,
        parting.surface,
        floats(parting.surface.vertices[parting.surface.boundary_loops[0]], -1, 3),
        face.pull,
        allowed,
        scale_of(settings),
        pieces.largest_deviation,
        from_cad,
        float(np.abs(from_cad).max()),
        pieces.least_wall,
        estimate_plastic(
            tuple(piece.solid for piece in pieces.pieces),
            face.pull,
            scale_of(settings),
            settings.plastic,
        ),
        solid.volume,
        _remarks(parting, pieces, settings),
        pieces.pieces,
        parting.lines,
    )


_NEEDED = "a face that is seen whole along the pull"


def _refused(working: Surface, held: FloatArray, why: str, remedy: str = "") -> GeometryError:
    worst = int(np.argmax(held))
    return GeometryError(
        working.patch_names[worst],
        f"{three_figures(held[worst])} mm^2 that hold the part back along the pull{why}",
        _NEEDED,
        remedy or "set another pull direction, add draft or split the face into two moulds",
    )


def _other_side(face: MouldedFace, wanted: PartingSettings) -> str:
    """Return what helps where the part closes round a plug: a cavity, if few pieces of it do."""
    if face.mould_side is not MouldSide.INSIDE:
        return ""
    x, y, z = face.pull
    cavity = dataclasses.replace(face, pull=(-x, -y, -z), mould_side=MouldSide.OUTSIDE)
    parting = part_surface(cavity.working_surface(), cavity.pull, wanted)
    count = len(parting.pulls)
    if parting.undercut_area > 0.0 or count > wanted.most_pieces:
        return ""
    pieces = f"a mould in {count} pieces" if count > 1 else "one mould"
    return (
        f"set the Moulded Face's mould side to '{MouldSide.OUTSIDE.value}' and turn its pull "
        f"round: the part closes round a plug, but {pieces} outside of it releases it"
    )


def _remarks(parting: Parting, pieces: MouldPieces, settings: MouldSettings) -> tuple[str, ...]:
    remarks = [
        f"The part is held back along one direction, so the mould is built in "
        f"{len(pieces.pieces)} pieces."
    ]
    for piece in pieces.pieces:
        x, y, z = (round(part, 3) + 0.0 for part in piece.pull)
        remarks.append(f"The part leaves {piece.name} along ({x:g}, {y:g}, {z:g}).")
    remarks += [*parting.remarks, *pieces.remarks]
    if pieces.least_wall is not None:
        remarks += sag_remarks(settings.inside, pieces.span)
    return (*remarks, *_left_out(settings))


def _left_out(settings: MouldSettings) -> list[str]:
    """Return what is not made on a mould in pieces, with the reason."""
    edge, ring = settings.edge, three_figures(settings.pieces.flange)
    reasons = (
        (edge.flange, f"No flange of its own: the level ring round the trim line, {ring} mm wide."),
        (edge.pry_pockets, "No pry pockets: unbolted, the pieces are wedged apart at their joint."),
        (edge.air_port, "No air port: drawing the pieces away one by one lets the air in."),
        (edge.bolt_holes, "No bolt holes beside those that join the pieces."),
        (edge.inscription, "No inscription: a joint between pieces could cut through it."),
        (settings.datum, "No marks of the datum: a joint between pieces could cut through them."),
        (settings.feet.number, "No feet: one could stand across a joint; put strips below."),
    )
    return [sentence for wanted, sentence in reasons if wanted]
