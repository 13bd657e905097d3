"""The body before anything is cut out of it, and what is cut out beyond the trim line."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from manifold3d import Manifold

from laywright.arrays import FloatArray
from laywright.errors import GeometryError
from laywright.mould.body.base import close_down, with_run_off
from laywright.mould.body.bays import with_bay_run_off
from laywright.mould.body.datum_marks import datum_marks
from laywright.mould.body.edge import edge_cuts, inscription
from laywright.mould.body.fill import fill_holes
from laywright.mould.body.ground import Ground
from laywright.mould.body.run_off import Rays, RunOff, rays_of, run_off_rows
from laywright.mould.body.scribe import cloth_line, groove
from laywright.mould.body.settings import MouldSettings
from laywright.mould.release.visibility import is_one_layer
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = ["OWN", "Uncut", "cuts_of", "uncut_body"]

OWN = (
    "run-off",
    "filled hole",
    "sides",
    "base",
    "scribe line",
    "cloth line",
    "pry pocket",
    "air port",
    "bolt hole",
    "inscription",
    "hollow",
    "foot",
    "datum tick",
    "datum figure",
)
"""Patches that a body has of its own, in this order after those of the picked faces."""

_SLACK = 1e-5
_UP = (0.0, 0.0, 1.0)


@dataclass(frozen=True, eq=False)
class Uncut:
    """The body in the mould's frame, before anything is cut out.

    Attributes
    ----------
    flat : Surface
        The working surface.
    rims : list of Rays
        Rays that leave each of its boundary loops.
    lines : (rows, k, 3) float, mm
        Points along the rays of the first loop, the first row on the trim edge.
    upper, body : Surface
        The upper surface with its run-off, and the closed body.
    number : dict of str to int
        Numbers of the body's own patches.
    where : str
        Names of the faces, for messages.
    """

    flat: Surface
    rims: list[Rays]
    lines: FloatArray
    upper: Surface
    body: Surface
    number: dict[str, int]
    where: str


def uncut_body(working: Surface, turn: FloatArray, settings: MouldSettings) -> Uncut:
    """Return the body of a working surface in the mould's frame, nothing cut out yet.

    Parameters
    ----------
    working : Surface
        As it is printed, in the part's coordinates.
    turn : (3, 3) float
        Rotation that turns the pull upwards.
    settings : MouldSettings
        Run-off, flange and base.

    Raises
    ------
    GeometryError
        If the run-off cannot be laid open in the plan view.
    """
    names = (*working.patch_names, *OWN)
    number = {name: len(working.patch_names) + i for i, name in enumerate(OWN)}
    where = ", ".join(working.patch_names)
    flat = Surface(working.vertices @ turn.T, working.triangles, working.patches, names)
    rims = [rays_of(flat, loop) for loop in flat.boundary_loops]
    top = fill_holes(flat, number["filled hole"])
    profile = RunOff(settings.run_off, settings.edge.flange, settings.edge.blend)
    rows = run_off_rows(rims[0], profile)
    upper, _ = with_run_off(top, rims[0], rows, number["run-off"])
    if not is_one_layer(upper, _UP, _SLACK):
        upper = with_bay_run_off(top, profile, number["run-off"], where)
    if not is_one_layer(upper, _UP, _SLACK):
        raise GeometryError(
            where,
            f"a run-off of {three_figures(settings.run_off + settings.edge.flange)} mm that "
            "folds over",
            "an outline along which the run-off lies open",
            "shorten the run-off or smooth the edge of the face",
        )
    floor = float(upper.vertices[np.unique(upper.triangles), 2].min()) - settings.base
    body = close_down(upper, floor, number["sides"], number["base"])
    lines = np.concatenate([rims[0].start[None], rows])
    return Uncut(flat, rims, lines, upper, body, number, where)


def cuts_of(
    frame: Uncut, turn: FloatArray, settings: MouldSettings, remarks: list[str]
) -> list[Manifold]:
    """Return all that is cut out of the body; what finds no room is told in the remarks.

    Parameters
    ----------
    frame : Uncut
        The body.
    turn : (3, 3) float
        Rotation that turned the pull upwards.
    settings : MouldSettings
        What is cut.
    remarks : list of str
        What is left out is added.
    """
    flat, number, edge = frame.flat, frame.number, settings.edge
    floor = float(frame.body.vertices[:, 2].min())
    depth, width = settings.scribe_depth, settings.scribe_width
    cuts = []
    if depth > 0.0:
        for loop, rays in zip(flat.boundary_loops, frame.rims, strict=True):
            cuts.append(groove(rays, flat.vertices[loop], depth, width, number["scribe line"]))
    trim = flat.vertices[flat.boundary_loops[0]]
    if depth > 0.0 and edge.cloth_margin > 0.0:
        line = cloth_line(
            frame.rims[0],
            frame.lines,
            trim,
            edge.cloth_margin,
            depth,
            width,
            number["cloth line"],
        )
        if line is None:
            remarks.append(
                "The line at the edge of the cloth is left out: the outline comes back nearer "
                f"than {three_figures(edge.cloth_margin)} mm."
            )
        else:
            cuts.append(line)
    cuts += _marks(frame, turn, settings, remarks)
    cuts += edge_cuts(frame.rims[0], frame.lines, edge, floor, number)
    if edge.inscription:
        outline = frame.upper.vertices[frame.upper.boundary_loops[0]]
        text = inscription(edge.inscription, outline, floor, settings.base, number["inscription"])
        if text is None:
            remarks.append(
                f"'{edge.inscription}' is not engraved: the sides leave no room for letters "
                "3 mm high; a base of 8 mm carries them."
            )
        else:
            cuts.append(text)
    return cuts


def _marks(
    frame: Uncut, turn: FloatArray, settings: MouldSettings, remarks: list[str]
) -> list[Manifold]:
    """Return the marks of the datum, where they are wanted."""
    datum, number = settings.datum, frame.number
    if datum is None:
        return []
    if settings.scribe_depth <= 0.0:
        remarks.append("The datum is not marked: scribed lines have no depth.")
        return []
    ground = Ground(
        frame.flat,
        frame.upper,
        number["run-off"],
        settings.edge.cloth_margin,
        settings.scribe_depth,
        settings.scribe_width,
    )
    return datum_marks(
        ground,
        turn @ np.array(datum.point),
        turn @ np.array(datum.direction),
        (number["datum tick"], number["datum figure"]),
        remarks,
    )
