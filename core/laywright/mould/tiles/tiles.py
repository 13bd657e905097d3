"""The body cut into tiles that fit the printer, with joints and marks.

Every tile is a closed solid.  The account is kept: the tiles without their tongues and ears,
and what holes, marks and glue gaps took away, add up to the body.
"""

from __future__ import annotations

from dataclasses import replace

from laywright.errors import LimitError
from laywright.mould.body.body import MouldBody
from laywright.mould.solid import joined, to_manifold
from laywright.mould.tiles.assembly import order_of, steps_of
from laywright.mould.tiles.cells import cell_block, cells_of, places
from laywright.mould.tiles.coupon import joint_coupon
from laywright.mould.tiles.cut_search import plan_cuts
from laywright.mould.tiles.naming import tile_name
from laywright.mould.tiles.piece_tiles import tiles_of_pieces
from laywright.mould.tiles.posed import posed_tiles
from laywright.mould.tiles.printer import Printer
from laywright.mould.tiles.seam_joints import joints_for
from laywright.mould.tiles.tile import Tile, TileSet, TileSettings
from laywright.mould.tiles.tile_account import gap_volume, taken_inside
from laywright.mould.tiles.tile_marks import marks_of, pull_arrows
from laywright.mould.tiles.tile_remarks import remarks_on
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage

__all__ = ["Tile", "TileSet", "TileSettings", "cut_tiles"]

_OWN = ("seam", "joint", "mark")
_USUAL = TileSettings()


@stage("Print Tiles", version=4)
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
        Joints, gaps, marks, poses, wishes.
    progress : Progress
        Told how far it is; `laywright.errors.Cancelled` raised from it during the search of
        the cuts takes the best cuts so far, later it ends the stage.

    Returns
    -------
    TileSet
        Closed tiles that fit the printer.

    Raises
    ------
    LimitError
        If the printer is too small for any tile or joint, or the body too thin for the joints.
    GeometryError
        If a tile does not close.
    """
    _check_room(printer, settings)
    if body.pieces:
        return tiles_of_pieces(body, printer, settings, cut_tiles, progress)
    x, y, z = printer.usable
    sx, sy, sz = body.print_scale
    plan = plan_cuts(
        body.solid,
        body.working,
        body.trim_line,
        body.pull,
        settings.limits((x / sx, y / sy, z / sz)),
        settings.wishes,
        settings.plan_seconds,
        progress=part_of(progress, 0.0, 0.3),
    )
    plan = replace(plan, piece=body.number)
    progress(0.3, "placing joints and marks")
    seam = len(body.solid.patch_names)
    gridded = body.solid.moved(body.solid.vertices @ plan.axes.T)
    whole = to_manifold(gridded, "the mould body")
    joints = joints_for(whole, plan, settings, seam + 1)
    gap, depth = settings.glue_gap, settings.mark_depth
    pen = max(0.8, 2.0 * printer.nozzle)
    marks = marks_of(whole, plan, depth, gap, settings.joint_size, pen, seam + 2)
    arrows = pull_arrows(joints.rooms, plan, depth, gap, pen, seam + 2)
    progress(0.4, "cutting")
    cutters = {}
    account = whole.volume() - gap_volume(gridded, whole, plan, gap)
    for place in places(plan):
        mark = marks.get(place)
        off = [cuts[place] for cuts in (joints.holes, arrows) if place in cuts]
        off += [] if mark is None else [mark.solid]
        cutter = cell_block(plan, place, gap, seam)
        cutters[place] = cutter - joined(off) if off else cutter
        outside = 0.0 if mark is None else mark.outside
        account -= taken_inside(plan, place, gap, cutters[place], outside) if off else 0.0
    cells = cells_of(whole, plan, cutters)
    tiles: list[Tile] = []
    names = (*body.solid.patch_names, *_OWN)
    faces = len(body.working.patch_names)
    inner = part_of(progress, 0.5, 0.95)
    for index, (place, piece) in enumerate(cells):
        inner(index / len(cells), f"tile {tile_name(place, plan)}")
        account -= piece.volume()
        finished = piece + joints.lugs[place] if place in joints.lugs else piece
        tiles += posed_tiles(
            finished, place, plan, printer, body.print_scale, names, faces, settings.pose
        )
    placed = [(tile.layer, tile.row, tile.column, tile.name) for tile in tiles]
    tiles = [
        replace(tile, order=order) for tile, order in zip(tiles, order_of(placed), strict=True)
    ]
    tiles.sort(key=lambda tile: tile.order)
    gx, gy, gz = (len(cuts) * settings.glue_gap for cuts in plan.cuts)
    unmarked = [tile_name(place, plan) for place, _ in cells if place not in marks]
    return TileSet(
        tuple(tiles),
        plan,
        printer.name,
        settings.glue_gap,
        plan.cuts,
        joints.joints,
        joints.ears,
        joints.area,
        joints.area * settings.glue_gap * settings.glue_density / 1000.0,
        (gx, gy, gz),
        account / whole.volume(),
        steps_of(placed),
        joint_coupon(settings.joint_size, pen, settings.mark_depth) if joints.joints else (),
        remarks_on(plan, settings, joints, unmarked, (gx, gy, gz)),
    )


def _check_room(printer: Printer, settings: TileSettings) -> None:
    size = settings.joint_size
    needed = max(settings.least_tile, 0.0 if size is None else size.needed)
    room = min(printer.usable)
    if room < needed:
        raise LimitError(
            f"printer {printer.name}",
            f"{room:.4g} mm of usable room",
            f"at least {needed:.4g} mm for the least tile and its {settings.joint.value}",
            "choose a larger printer, smaller tiles or smaller joints",
        )
