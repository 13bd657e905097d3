"""The body cut into tiles that fit the printer, with dowel holes and marks.

Every tile is a closed solid.  The account is kept: the tiles, and what the dowel holes, the
marks and the glue gaps took away, add up to the body.
"""

from __future__ import annotations

import numpy as np
import shapely
from manifold3d import Manifold, OpType

from laywright.errors import GeometryError, LimitError
from laywright.mould.body import MouldBody
from laywright.mould.cells import cells_of, glue_gaps
from laywright.mould.cuts import CutPlan, plan_cuts, slivers
from laywright.mould.joints import Place, hole, joints_of, sections
from laywright.mould.marks import ARROW, engraving
from laywright.mould.printer import Printer
from laywright.mould.solid import from_manifold, to_manifold
from laywright.mould.tile import Tile, TileSet, TileSettings
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage

__all__ = ["Tile", "TileSet", "TileSettings", "cut_tiles"]

_OWN = ("seam", "dowel hole", "mark")
_CRUMB = 1e-6
_USUAL = TileSettings()


@stage("Print Tiles", version=1)
def cut_tiles(
    body: MouldBody,
    printer: Printer,
    settings: TileSettings = _USUAL,
    *,
    progress: Progress = silent,
) -> TileSet:
    """Cut a mould's body into tiles.

    Parameters
    ----------
    body : MouldBody
        The body.
    printer : Printer
        The machine.
    settings : TileSettings
        Joints, gaps, marks.
    progress : Progress
        Told how far it is.

    Returns
    -------
    TileSet
        Closed tiles that fit the printer.

    Raises
    ------
    LimitError
        If the printer is too small for any tile or for the dowels.
    GeometryError
        If a tile does not close.
    """
    _check_room(printer, settings)
    progress(0.0, "placing the cuts")
    x, y, z = printer.usable
    sx, sy, sz = body.print_scale
    plan = plan_cuts(
        body.solid,
        body.working,
        body.trim_line,
        body.pull,
        (x / sx, y / sy, z / sz),
        settings.least_tile,
        settings.pose,
    )
    progress(0.3, "cutting")
    names = (*body.solid.patch_names, *_OWN)
    first = len(body.solid.patch_names)
    upright_body = body.solid.moved(body.solid.vertices @ plan.axes.T)
    whole = to_manifold(upright_body, "the mould body")
    cells = cells_of(whole, plan, first)
    joints, glue_area, bare = (
        joints_of(
            whole,
            plan,
            settings.dowel_diameter + 2.0 * settings.clearance,
            settings.dowel_depth,
            settings.wall,
            max(0.5, settings.clearance * 4.0),
        )
        if settings.dowel_diameter > 0.0
        else ((), _seam_area(whole, plan), 0)
    )
    tiles: list[Tile] = []
    kept, taken, unmarked = 0.0, 0.0, []
    inner = part_of(progress, 0.4, 0.95)
    for index, (place, raw) in enumerate(cells):
        name = _name(place, plan)
        inner(index / len(cells), f"tile {name}")
        cutters = [
            hole(joint, side, first + 1)
            for joint in joints
            for side, cell in ((-1, joint.lower), (1, joint.upper))
            if cell == place
        ]
        cutters += glue_gaps(plan, place, settings.glue_gap, first)
        mark = _mark(raw, name, plan, place, settings, printer, first + 2)
        if mark is not None:
            cutters.append(mark)
        elif settings.mark_depth > 0.0:
            unmarked.append(name)
        piece = raw
        if cutters:
            cutter = Manifold.batch_boolean(cutters, OpType.Add)
            away, piece = raw.split(cutter)
            taken += away.volume()
        kept += piece.volume()
        tiles += _tiles(piece, name, place, plan, body, printer, names)
    error = (whole.volume() - kept - taken) / whole.volume()
    gaps = [len(cuts) * settings.glue_gap for cuts in plan.cuts]
    return TileSet(
        tuple(sorted(tiles, key=lambda tile: (tile.layer, tile.row, tile.column, tile.name))),
        plan,
        printer.name,
        settings.glue_gap,
        plan.cuts,
        joints,
        glue_area,
        (gaps[0], gaps[1], gaps[2]),
        error,
        _remarks(body, plan, settings, len(tiles), bare, unmarked, gaps),
    )


def _check_room(printer: Printer, settings: TileSettings) -> None:
    needed = max(
        settings.least_tile, settings.dowel_diameter + 2.0 * (settings.clearance + settings.wall)
    )
    room = min(printer.usable)
    if room < needed:
        raise LimitError(
            f"printer {printer.name}",
            f"{room:.4g} mm of usable room",
            f"at least {needed:.4g} mm for the least tile and its dowels",
            "choose a larger printer, smaller tiles or thinner dowels",
        )


def _mark(
    raw: Manifold,
    name: str,
    plan: CutPlan,
    place: Place,
    settings: TileSettings,
    printer: Printer,
    patch: int,
) -> Manifold | None:
    if settings.mark_depth <= 0.0:
        return None
    low = raw.bounding_box()[2]
    under = sections(raw, 2, [low + 1e-3])[0]
    if place[2] > 0 and settings.dowel_diameter > 0.0:
        under = shapely.buffer(under, -(settings.dowel_diameter + settings.wall))
    level = low + (settings.glue_gap / 2.0 if place[2] > 0 else 0.0)
    pen = max(0.8, 2.0 * printer.nozzle)
    return engraving(name + ARROW, under, level, settings.mark_depth, pen, patch)


def _tiles(
    piece: Manifold,
    name: str,
    place: Place,
    plan: CutPlan,
    body: MouldBody,
    printer: Printer,
    names: tuple[str, ...],
) -> list[Tile]:
    """Return the pieces of one cell as tiles."""
    parts = [part for part in piece.decompose() if part.volume() > _CRUMB]
    tiles = []
    for index, part in enumerate(parts):
        full = name + (chr(ord("a") + index) if len(parts) > 1 else "")
        surface = from_manifold(part, names)
        if not surface.is_closed:
            raise GeometryError(
                f"tile {full}",
                "a tile with gaps",
                "a closed tile",
                "change the least tile size a little and try again",
            )
        turn = np.diag(body.print_scale) @ plan.rotation
        placed = surface.vertices @ turn.T
        low, high = placed.min(axis=0), placed.max(axis=0)
        size = high - low
        if (size > np.array(printer.usable) + 1e-6).any():
            raise LimitError(
                f"tile {full}",
                "{:.1f} x {:.1f} x {:.1f} mm".format(*size),
                "at most {:.1f} x {:.1f} x {:.1f} mm".format(*printer.usable),
                "choose a larger printer",
            )
        shift = np.array([*(0.5 * (np.array(printer.volume[:2]) - (low + high)[:2])), -low[2]])
        pose = np.eye(4)
        pose[:3, :3] = turn @ plan.axes
        pose[:3, 3] = shift
        volume = surface.volume
        tiles.append(
            Tile(
                full,
                place[1],
                place[0],
                place[2],
                surface.moved(surface.vertices @ plan.axes),
                pose,
                (float(size[0]), float(size[1]), float(size[2])),
                volume,
                printer.mass(volume * float(np.prod(body.print_scale)), surface.area),
            )
        )
    return tiles


def _seam_area(whole: Manifold, plan: CutPlan) -> float:
    return sum(
        float(shape.area) for axis in range(3) for shape in sections(whole, axis, plan.cuts[axis])
    )


def _name(place: Place, plan: CutPlan) -> str:
    row, letters = place[1] + 1, ""
    while row:
        row, rest = divmod(row - 1, 26)
        letters = chr(ord("A") + rest) + letters
    layer = f"-{place[2] + 1}" if plan.counts[2] > 1 else ""
    return f"{letters}{place[0] + 1}{layer}"


def _remarks(
    body: MouldBody,
    plan: CutPlan,
    settings: TileSettings,
    count: int,
    bare: int,
    unmarked: list[str],
    gaps: list[float],
) -> tuple[str, ...]:
    remarks = []
    thin = slivers(body.solid, plan, settings.least_tile) if count > 1 else 0
    if thin:
        remarks.append(f"{thin} tiles are thinner than {settings.least_tile:.3g} mm at a corner.")
    if bare:
        remarks.append(f"Seams without room for a dowel, glued butt to butt: {bare}.")
    if unmarked:
        remarks.append(f"No room for a mark on {', '.join(unmarked)}.")
    if any(gaps):
        remarks.append(
            "Glue gaps of {:.2f}, {:.2f} and {:.2f} mm in all are taken off the tiles.".format(
                *gaps
            )
        )
    return tuple(remarks)
