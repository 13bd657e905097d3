"""A cut piece as a tile: checked, named, and placed on the printer's bed."""

from __future__ import annotations

import numpy as np
from manifold3d import Manifold

from laywright.errors import GeometryError, LimitError
from laywright.mould.cuts import CutPlan
from laywright.mould.joints import Place
from laywright.mould.printer import Printer
from laywright.mould.solid import from_manifold
from laywright.mould.tile import Tile

__all__ = ["posed_tiles", "tile_name"]

_CRUMB = 1e-6
_FITS = 1e-6


def tile_name(place: tuple[int, int, int], plan: CutPlan) -> str:
    """Return a cell's name: row letter, column number, and the layer if there are several."""
    row, letters = place[1] + 1, ""
    while row:
        row, rest = divmod(row - 1, 26)
        letters = chr(ord("A") + rest) + letters
    layer = f"-{place[2] + 1}" if plan.counts[2] > 1 else ""
    return f"{letters}{place[0] + 1}{layer}"


def posed_tiles(
    piece: Manifold,
    place: Place,
    plan: CutPlan,
    printer: Printer,
    scale: tuple[float, float, float],
    names: tuple[str, ...],
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

    Raises
    ------
    GeometryError
        If a tile does not close.
    LimitError
        If a tile does not fit the printer.
    """
    parts = [part for part in piece.decompose() if part.volume() > _CRUMB]
    turn = np.diag(scale) @ plan.rotation
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
        placed = surface.vertices @ turn.T
        low, high = placed.min(axis=0), placed.max(axis=0)
        x, y, z = (high - low).tolist()
        if (high - low > np.array(printer.usable) + _FITS).any():
            raise LimitError(
                f"tile {name}",
                f"{x:.1f} x {y:.1f} x {z:.1f} mm",
                "at most {:.1f} x {:.1f} x {:.1f} mm".format(*printer.usable),
                "choose a larger printer",
            )
        pose = np.eye(4)
        pose[:3, :3] = turn @ plan.axes
        pose[:2, 3] = 0.5 * (np.array(printer.volume[:2]) - (low + high)[:2])
        pose[2, 3] = -low[2]
        volume = surface.volume
        tiles.append(
            Tile(
                name,
                place[1],
                place[0],
                place[2],
                surface.moved(surface.vertices @ plan.axes),
                pose,
                (x, y, z),
                volume,
                printer.mass(volume * float(np.prod(scale)), surface.area),
            )
        )
    return tiles
