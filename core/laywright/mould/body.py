"""The mould's body: working surface, run-off and flange, scribed lines, sides, base, hollow.

The working surface is kept exactly as `laywright.surface.face.MouldedFace.working_surface`
gives it, set back by the coats that come onto the print.  The body lies below it, against the
pull, and is a closed solid.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from manifold3d import Manifold, OpType

from laywright.arrays import Array, FloatArray, Vector, floats
from laywright.errors import GeometryError, LimitError
from laywright.mould.compensation import (
    Allowance,
    Compensation,
    growth_scale,
    print_scale,
    scale_items,
    spring_in_items,
    surface_items,
)
from laywright.mould.frame import upright
from laywright.mould.from_cad import distance_from_cad
from laywright.mould.inside import Hollow, deflection, hollow_of
from laywright.mould.plastic import PlasticEstimate, estimate_plastic
from laywright.mould.settings import Edge, Inside, MouldBuild, MouldSettings
from laywright.mould.solid import from_manifold, to_manifold
from laywright.mould.uncut import OWN, cuts_of, uncut_body
from laywright.mould.visibility import STANDING, hidden_share
from laywright.progress import Progress, silent
from laywright.stage import stage
from laywright.surface.distance import largest_distance
from laywright.surface.face import LaminateSide, MouldedFace, MouldSide
from laywright.surface.offset import offset
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES
from laywright.wording import three_figures

__all__ = ["Edge", "Inside", "MouldBody", "MouldBuild", "MouldSettings", "build_body"]

_HELD = 1e-6
_CRUMB = 1e-3


@dataclass(frozen=True, eq=False)
class MouldBody:
    """A mould's body, in the part's coordinates.

    Attributes
    ----------
    solid : Surface
        Closed, normals outwards.  Its patches are the faces of the working surface by their
        own names, then ``"run-off"``, ``"filled hole"``, ``"sides"``, ``"base"``,
        ``"scribe line"``, ``"cloth line"``, ``"pry pocket"``, ``"air port"``,
        ``"bolt hole"``, ``"inscription"`` and ``"hollow"``.
    working : Surface
        The wanted working surface, as it is printed.
    trim_line : (k, 3) float, mm
        The outer trim edge, a closed line.
    pull : tuple of 3 float
        Unit direction in which the part leaves.
    compensations : tuple of Compensation
        What was added to the CAD face, and what the print will add.
    print_scale : tuple of 3 float
        Scale of the tiles along the printer's axes; the body itself has nominal size.
    largest_deviation : float, mm
        Largest distance measured between the body and the wanted working surface.
    from_cad : (n,) float, mm
        Distance of every point of the working surface from the CAD faces, measured; negative,
        because laminate and coats set the mould back against its normals.
    largest_from_cad : float, mm
        The largest of these, without its sign.
    least_wall : float or None, mm
        Least wall measured around the hollow; None for a solid body.
    plastic : PlasticEstimate
        Mass, time and cost of printing.
    volume : float, mm^3
        Of the solid.
    remarks : tuple of str
        What the maker should know.
    digest : str
        Digest of the inputs.
    """

    solid: Surface
    working: Surface
    trim_line: FloatArray
    pull: Vector
    compensations: tuple[Compensation, ...]
    print_scale: Vector
    largest_deviation: float
    from_cad: FloatArray
    largest_from_cad: float
    least_wall: float | None
    plastic: PlasticEstimate
    volume: float
    remarks: tuple[str, ...]
    digest: str = ""

    def patch(self, name: str) -> int:
        """Return the number of a patch of the solid."""
        return self.solid.patch_names.index(name)

    @property
    def on_working_area(self) -> Array:
        """Whether each triangle of the solid lies on the working surface: (m,) bool."""
        return np.asarray(self.solid.patches < self.patch(OWN[0]))


@stage("Mould Body", version=2)
def build_body(
    face: MouldedFace,
    thickness: float,
    settings: MouldSettings = MouldSettings(),
    *,
    progress: Progress = silent,
) -> MouldBody:
    """Build the body of a mould.

    Parameters
    ----------
    face : MouldedFace
        The picked faces, their pull and sides.
    thickness : float, mm
        Thickness of the laminate.
    settings : MouldSettings
        Run-off, base, scribed lines, edge, inside, allowances, plastic.
    progress : Progress
        Told how far it is.

    Returns
    -------
    MouldBody
        A closed solid, checked.

    Raises
    ------
    GeometryError
        If the part cannot leave the mould along the pull, or the body does not close.
    """
    if not 0.0 <= thickness <= 100.0:
        raise LimitError(
            "laminate thickness", f"{three_figures(thickness)} mm", "0 to 100 mm", "check the layup"
        )
    working = _printed_surface(face, thickness, settings)
    _refuse_undercut(working, face.pull)
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
    cuts = cuts_of(frame, settings, remarks)
    solid = whole - Manifold.batch_boolean(cuts, OpType.Add) if cuts else whole
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
        (
            *surface_items(thickness, _moved(face, thickness), settings.allowances),
            *scale_items(settings.shrinkage, settings.allowances),
            *spring_in_items(settings.allowances),
        ),
        _scale(settings),
        deviation,
        from_cad,
        float(np.abs(from_cad).max()),
        None if hollow is None else hollow.least_wall,
        estimate_plastic(surface.volume, surface.area, settings.plastic),
        surface.volume,
        (*_remarks(working, settings, deviation, hollow), *remarks),
    )


def _printed_surface(face: MouldedFace, thickness: float, settings: MouldSettings) -> Surface:
    """Return the working surface as it is printed: coats still to come."""
    allowances = settings.allowances
    laid = allowances.size_of(Allowance.LAMINATE, thickness)
    working = face.working_surface(laid)
    return offset(working, -allowances.size_of(Allowance.COATS, allowances.coats))


def _scale(settings: MouldSettings) -> Vector:
    """Return the scale of the print: shrinkage and growth made up for."""
    allowances = settings.allowances
    growth = growth_scale(allowances.expansion, allowances.warming)
    if Allowance.GROWTH in allowances.left_out:
        growth = 1.0
    scale = print_scale(settings.shrinkage)
    if Allowance.SHRINKAGE in allowances.left_out:
        scale = (1.0, 1.0, 1.0)
    x, y, z = (growth * part for part in scale)
    return x, y, z


def _refuse_undercut(working: Surface, pull: Vector) -> None:
    tilt = working.normals @ np.array(pull)
    held = np.where(tilt < -STANDING, 1.0, hidden_share(working, pull)) * working.areas
    if held.sum() <= _HELD * working.area:
        return
    by_patch = np.bincount(working.patches, weights=held)
    worst = int(np.argmax(by_patch))
    raise GeometryError(
        working.patch_names[worst],
        f"{three_figures(by_patch[worst])} mm^2 that hold the part back along the pull",
        "a face that is seen whole along the pull",
        "set another pull direction, add draft or split the face into two moulds",
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


def _moved(face: MouldedFace, thickness: float) -> float:
    """Return how far the laminate moves the working surface off the CAD face, mm."""
    inside = face.mould_side is MouldSide.INSIDE
    return thickness if inside == (face.laminate_side is LaminateSide.INSIDE) else 0.0


def _sag_words(sag: float, wall: float) -> str:
    return "more than its thickness" if sag > wall else f"{three_figures(sag)} mm"


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
        inside, wanted = settings.inside, TOLERANCES.working_area
        sag = deflection(inside, hollow.span)
        if sag > wanted:
            remarks.append(
                f"Under a vacuum of {three_figures(inside.vacuum)} MPa a flat wall of "
                f"{three_figures(inside.wall)} mm "
                f"gives way by {_sag_words(sag, inside.wall)} over {hollow.span:.0f} mm, "
                f"wanted at most {three_figures(wanted)} mm: thicken the wall, set the ribs "
                "closer or keep "
                "the bag off it."
            )
    return tuple(remarks)
