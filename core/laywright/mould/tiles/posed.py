"""A cut piece as a tile: checked, named, and placed on the printer's bed."""

from __future__ import annotations

import numpy as np
from manifold3d import Manifold

from laywright.errors import GeometryError, LimitError
from laywright.mould.solid import from_manifold
from laywright.mould.tiles.cuts import CutPlan, PrintPose
from laywright.mould.tiles.joint import Place
from laywright.mould.tiles.naming import tile_name
from laywright.mould.tiles.pose import stand
from laywright.mould.tiles.printer import Printer
from laywright.mould.tiles.tile import Tile

__all__ = ["posed_tiles"]

_CRUMB = 1e-6


def posed_tiles(
    piece: Manifold,
    place: Place,
    plan: CutPlan,
    printer: Printer,
    scale: tuple[float, float, float],
    names: tuple[str, ...],
    face_patches: int = 0,
    pose: PrintPose = PrintPose.BASE_DOWN,
) -> list[Tile]:
    """Return the pieces of one cell as tiles.

    Parameters
    ----------
    piece : Manifold
        What the cell holds, in the grid's axes.
    place : tuple of 3 int
        The cell.
    plan : CutPlan
        The grid.
    printer : Printer
        The machine.
    scale : tuple of 3 float
        Print scale along the printer's axes.
    names : tuple of str
        Names of all patches.
    face_patches : int
        How many of them, from the first, lie on the working face.
    pose : PrintPose
        Allowed poses.

    Raises
    ------
    GeometryError
        If a tile does not close.
    LimitError
        If a tile does not fit the printer.
    """
    parts = [part for part in piece.decompose() if part.volume() > _CRUMB]
    tiles = []
    for index, part in enumerate(parts):
        name = tile_name(place, plan) + (chr(ord("a") + index) if len(parts) > 1 else "")
        surface = from_manifold(part, names)
        if not surface.is_closed:
            raise GeometryError(
                f"tile {name}",
                "a tile with gaps",
                "a closed tile",
                "change the least tile size a little and try again",
            )
        standing = stand(surface, surface.patches < face_patches, pose, printer.usable, scale)
        if standing is None:
            extent = np.abs(plan.rotation) @ (surface.bounds[1] - surface.bounds[0])
            raise LimitError(
                f"tile {name}",
                "{:.1f} x {:.1f} x {:.1f} mm".format(*(extent * np.array(scale))),
                "at most {:.1f} x {:.1f} x {:.1f} mm".format(*printer.usable),
                "choose a larger printer",
            )
        turn = np.diag(scale) @ standing.rotation
        placed = surface.vertices @ turn.T
        low, high = placed.min(axis=0), placed.max(axis=0)
        x, y, z = (high - low).tolist()
        matrix = np.eye(4)
        matrix[:3, :3] = turn @ plan.axes
        matrix[:2, 3] = 0.5 * (np.array(printer.volume[:2]) - (low + high)[:2])
        matrix[2, 3] = -low[2]
        printed = surface.moved(placed)
        volume, area = printed.volume, printed.area
        tiles.append(
            Tile(
                name,
                place[1],
                place[0],
                place[2],
                surface.moved(surface.vertices @ plan.axes),
                matrix,
                (x, y, z),
                surface.volume,
                printer.mass(volume, area),
                printer.hours(volume, area, z),
                0,
                standing,
            )
        )
    return tiles
