"""The body cut into tiles that fit the printer, with dowel holes and marks.

The mark on a tile's underside is its name and an arrow, read from below with the arrow up; the
arrow points from row A towards row B, so that all arrows of a mould point the same way.

Every tile is a closed solid.  The account is kept: the tiles, and what the dowel holes, the
marks and the glue gaps took away, add up to the body.
"""

from __future__ import annotations

import shapely
from manifold3d import Manifold, OpType

from laywright.errors import LimitError
from laywright.mould.body import MouldBody
from laywright.mould.cells import cell_block, cells_of, gap_blocks, places
from laywright.mould.cuts import CutPlan, plan_cuts, slivers, underside
from laywright.mould.frame import upright
from laywright.mould.joints import Joint, Place, hole, joints_of, sections
from laywright.mould.marks import ARROW, engraving
from laywright.mould.posed import posed_tiles, tile_name
from laywright.mould.printer import Printer
from laywright.mould.solid import to_manifold
from laywright.mould.tile import Tile, TileSet, TileSettings
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage

__all__ = ["Tile", "TileSet", "TileSettings", "cut_tiles"]

_OWN = ("seam", "dowel hole", "mark")
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
    progress(0.3, "placing dowels and marks")
    first = len(body.solid.patch_names)
    whole = to_manifold(body.solid.moved(body.solid.vertices @ plan.axes.T), "the mould body")
    joints, glue_area, bare = _joints(whole, plan, settings)
    marks = _marks(whole, plan, settings, printer, first + 2)
    holes = {
        place: [
            hole(joint, side, first + 1)
            for joint in joints
            for side, cell in ((-1, joint.lower), (1, joint.upper))
            if cell == place
        ]
        for place in places(plan)
    }
    cutters = {
        place: cell_block(plan, place, settings.glue_gap, first)
        - Manifold.batch_boolean([Manifold(), *holes[place], *marks.get(place, ())], OpType.Add)
        for place in places(plan)
    }
    progress(0.4, "cutting")
    cells = cells_of(whole, plan, cutters)
    tiles: list[Tile] = []
    names = (*body.solid.patch_names, *_OWN)
    inner = part_of(progress, 0.6, 0.95)
    for index, (place, piece) in enumerate(cells):
        inner(index / len(cells), f"tile {tile_name(place, plan)}")
        tiles += posed_tiles(piece, place, plan, printer, body.print_scale, names)
    away = [gap_blocks(plan, settings.glue_gap)]
    away += [cutter for place in places(plan) for cutter in (*holes[place], *marks.get(place, ()))]
    taken = (whole ^ Manifold.batch_boolean(away, OpType.Add)).volume()
    kept = sum(piece.volume() for _, piece in cells)
    gaps = [len(cuts) * settings.glue_gap for cuts in plan.cuts]
    wanting = [tile_name(place, plan) for place, _ in cells if place not in marks]
    return TileSet(
        tuple(sorted(tiles, key=lambda tile: (tile.layer, tile.row, tile.column, tile.name))),
        plan,
        printer.name,
        settings.glue_gap,
        plan.cuts,
        joints,
        glue_area,
        (gaps[0], gaps[1], gaps[2]),
        (whole.volume() - kept - taken) / whole.volume(),
        _remarks(body, plan, settings, len(tiles), bare, wanting, gaps),
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


def _joints(
    whole: Manifold, plan: CutPlan, settings: TileSettings
) -> tuple[tuple[Joint, ...], float, int]:
    if settings.dowel_diameter > 0.0:
        return joints_of(
            whole,
            plan,
            settings.dowel_diameter + 2.0 * settings.clearance,
            settings.dowel_depth,
            settings.wall,
            max(0.5, 4.0 * settings.clearance),
        )
    seams = [shape for axis in range(3) for shape in sections(whole, axis, plan.cuts[axis])]
    return (), float(sum(shape.area for shape in seams)), 0


def _marks(
    whole: Manifold, plan: CutPlan, settings: TileSettings, printer: Printer, patch: int
) -> dict[Place, tuple[Manifold, ...]]:
    """Return the engraving of every cell whose underside has room for one."""
    if settings.mark_depth <= 0.0:
        return {}
    levels = [plan.low[2], *(cut + settings.glue_gap / 2.0 for cut in plan.cuts[2])]
    unders = sections(whole, 2, [level + 1e-3 for level in levels])
    marks = {}
    for place in places(plan):
        low, high = plan.cell(place)
        under = shapely.intersection(
            unders[place[2]], shapely.box(low[0] + 1.0, low[1] + 1.0, high[0] - 1.0, high[1] - 1.0)
        )
        if place[2] > 0 and settings.dowel_diameter > 0.0:
            under = shapely.buffer(under, -(settings.dowel_diameter + settings.wall))
        pen = max(0.8, 2.0 * printer.nozzle)
        text = tile_name(place, plan) + ARROW
        level = levels[place[2]]
        start = level - (settings.glue_gap / 2.0 if place[2] > 0 else 1.0)
        mark = engraving(text, under, (start, level + settings.mark_depth), pen, patch)
        if mark is not None:
            marks[place] = (mark,)
    return marks


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
    outline = underside(body.solid, upright(body.pull))
    thin = slivers(outline, plan, settings.least_tile) if count > 1 else 0
    if thin:
        remarks.append(f"Tiles thinner than {settings.least_tile:.3g} mm at a corner: {thin}.")
    if bare:
        remarks.append(f"Seams without room for a dowel, glued butt to butt: {bare}.")
    if unmarked and settings.mark_depth > 0.0:
        remarks.append(f"No room for a mark on {', '.join(unmarked)}.")
    if any(gaps):
        remarks.append(
            "Glue gaps of {:.2f}, {:.2f} and {:.2f} mm in all are taken off the tiles.".format(
                *gaps
            )
        )
    return tuple(remarks)
