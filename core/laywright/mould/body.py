"""The mould's body: working surface, run-off, scribed trim line, sides and base.

The working surface is kept exactly as `laywright.surface.face.MouldedFace.working_surface`
gives it.  The body lies below it, against the pull, and is a closed solid.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from manifold3d import Manifold

from laywright.arrays import Array, FloatArray, Vector, floats
from laywright.errors import GeometryError, LimitError
from laywright.mould.base import close_down, with_run_off
from laywright.mould.compensation import (
    Compensation,
    print_scale,
    shrinkage_items,
    thickness_item,
)
from laywright.mould.fill import fill_holes
from laywright.mould.frame import upright
from laywright.mould.hollow import with_hollow_run_off
from laywright.mould.run_off import Rays, rays_of, run_off_rows
from laywright.mould.scribe import groove
from laywright.mould.solid import from_manifold, to_manifold
from laywright.mould.visibility import STANDING, hidden_share, is_one_layer
from laywright.mould.wording import three_figures
from laywright.progress import Progress, silent
from laywright.stage import stage
from laywright.surface.distance import largest_distance
from laywright.surface.face import LaminateSide, MouldedFace, MouldSide
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["MouldBody", "MouldSettings", "build_body"]

_OWN = ("run-off", "filled hole", "sides", "base", "scribe line")
_HELD = 1e-6
_SLACK = 1e-5
_CRUMB = 1e-3
_UP = (0.0, 0.0, 1.0)


@dataclass(frozen=True)
class MouldSettings:
    """How the body is built.

    Attributes
    ----------
    run_off : float, mm
        Length of the surface beyond the trim line; 25 mm carries the trim margin (common
        practice, no source).
    base : float, mm
        Material below the lowest point of the upper surface.
    scribe_depth, scribe_width : float, mm
        The groove outside of the trim edge; depth 0 leaves it out.
    shrinkage : tuple of 3 float
        Share by which a print is shorter than its file along the printer's x, y, z.
    """

    run_off: float = 25.0
    base: float = 8.0
    scribe_depth: float = 0.4
    scribe_width: float = 0.8
    shrinkage: Vector = (0.0, 0.0, 0.0)

    def __post_init__(self) -> None:
        for name, value, least in (
            ("run-off", self.run_off, 2.0 * self.scribe_width + 1.0),
            ("base height", self.base, 1.0),
            ("scribe depth", self.scribe_depth, 0.0),
            ("scribe width", self.scribe_width, 0.1),
        ):
            if not least <= value <= 1e4:
                raise LimitError(
                    name, f"{value:.3g} mm", f"at least {least:.3g} mm", "set a larger value"
                )
        print_scale(self.shrinkage)


@dataclass(frozen=True, eq=False)
class MouldBody:
    """A mould's body, in the part's coordinates.

    Attributes
    ----------
    solid : Surface
        Closed, normals outwards.  Its patches are the faces of the working surface by their
        own names, then ``"run-off"``, ``"filled hole"``, ``"sides"``, ``"base"`` and
        ``"scribe line"``.
    working : Surface
        The wanted working surface.
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
    volume: float
    remarks: tuple[str, ...]
    digest: str = ""

    def patch(self, name: str) -> int:
        """Return the number of a patch of the solid."""
        return self.solid.patch_names.index(name)

    @property
    def on_working_area(self) -> Array:
        """Whether each triangle of the solid lies on the working surface: (m,) bool."""
        return np.asarray(self.solid.patches < self.patch(_OWN[0]))


@stage("Mould Body", version=1)
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
        Run-off, base, scribed line, shrinkage.
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
            "laminate thickness", f"{thickness:.3g} mm", "0 to 100 mm", "check the layup"
        )
    working = face.working_surface(thickness)
    _refuse_undercut(working, face.pull)
    progress(0.2, "laying the run-off")
    turn = upright(face.pull)
    names = (*working.patch_names, *_OWN)
    number = {name: len(working.patch_names) + i for i, name in enumerate(_OWN)}
    flat = Surface(working.vertices @ turn.T, working.triangles, working.patches, names)
    rims = [rays_of(flat, loop) for loop in flat.boundary_loops]
    top = fill_holes(flat, number["filled hole"])
    solid = _body(top, rims[0], settings, number, ", ".join(working.patch_names))
    progress(0.5, "cutting the scribed line")
    if settings.scribe_depth > 0.0:
        for loop, rays in zip(flat.boundary_loops, rims, strict=True):
            solid = solid - groove(
                rays,
                flat.vertices[loop],
                settings.scribe_depth,
                settings.scribe_width,
                number["scribe line"],
            )
    whole = [part for part in solid.decompose() if part.volume() > _CRUMB]
    surface = from_manifold(Manifold.compose(whole), names)
    surface = surface.moved(surface.vertices @ turn)
    progress(0.7, "measuring the working area")
    _check_closed(surface)
    deviation = _largest_deviation(surface, working, number["run-off"])
    return MouldBody(
        surface,
        working,
        floats(working.vertices[working.boundary_loops[0]], -1, 3),
        face.pull,
        (thickness_item(_moved(face, thickness)), *shrinkage_items(settings.shrinkage)),
        print_scale(settings.shrinkage),
        deviation,
        surface.volume,
        _remarks(working, settings, deviation),
    )


def _body(
    top: Surface, rays: Rays, settings: MouldSettings, number: dict[str, int], where: str
) -> Manifold:
    rows = run_off_rows(rays, settings.run_off)
    upper, _ = with_run_off(top, rays, rows, number["run-off"])
    if not is_one_layer(upper, _UP, _SLACK):
        upper = with_hollow_run_off(top, settings.run_off, number["run-off"], where)
    if not is_one_layer(upper, _UP, _SLACK):
        raise GeometryError(
            where,
            f"a run-off of {settings.run_off:.3g} mm that folds over",
            "an outline along which the run-off lies open",
            "shorten the run-off or smooth the edge of the face",
        )
    floor = float(upper.vertices[np.unique(upper.triangles), 2].min()) - settings.base
    body = close_down(upper, floor, number["sides"], number["base"])
    return to_manifold(body, f"the mould body on {where}")


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


def _remarks(working: Surface, settings: MouldSettings, deviation: float) -> tuple[str, ...]:
    remarks = []
    holes = len(working.boundary_loops) - 1
    if holes:
        what = "1 hole of the face is" if holes == 1 else f"{holes} holes of the face are"
        scribed = ", the edges scribed" if settings.scribe_depth > 0.0 else ""
        remarks.append(f"{what} filled{scribed}.")
    if deviation > TOLERANCES.working_area:
        remarks.append(
            f"The working area is off by {deviation:.3g} mm, "
            f"wanted at most {TOLERANCES.working_area:.3g} mm."
        )
    return tuple(remarks)
