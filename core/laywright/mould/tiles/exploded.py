"""Tiles pulled apart, for the eye: on the screen and on the sheet."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray, Vector
from laywright.mould.tiles.tiles import TileSet
from laywright.surface.triangles import Surface

__all__ = ["exploded", "shifts", "signs"]


def shifts(tiles: TileSet, gap: float) -> FloatArray:
    """Return how far each tile moves so that neighbours stand `gap` mm apart: (t, 3), mm.

    Pieces of a mould move away from its middle by twice as much.
    """
    moved = np.empty((len(tiles.tiles), 3))
    for number, tile in enumerate(tiles.tiles):
        plan = tiles.plan_of(tile)
        place = np.array([tile.column, tile.row, tile.layer], dtype=float)
        moved[number] = gap * (place - (np.array(plan.counts) - 1.0) / 2.0) @ plan.axes
    if tiles.plans:
        owner = np.array([tile.piece for tile in tiles.tiles])
        middle = np.array([tile.solid.bounds.mean(axis=0) for tile in tiles.tiles])
        for piece in range(len(tiles.plans)):
            away = middle[owner == piece].mean(axis=0) - middle.mean(axis=0)
            moved[owner == piece] += 2.0 * gap * away / max(float(np.linalg.norm(away)), 1e-9)
    return moved


def exploded(tiles: TileSet, gap: float) -> tuple[Surface, ...]:
    """Return the tiles, neighbours `gap` mm apart along the axes of the grid.

    Parameters
    ----------
    tiles : TileSet
        The tiles.
    gap : float, mm
        0 leaves them where they are in the mould.

    Returns
    -------
    tuple of Surface
        In the order of ``tiles.tiles``, in the part's coordinates.
    """
    return tuple(
        tile.solid.moved(tile.solid.vertices + shift)
        for tile, shift in zip(tiles.tiles, shifts(tiles, gap), strict=True)
    )


def signs(tiles: TileSet, gap: float) -> tuple[tuple[str, Vector], ...]:
    """Return order of assembly and name of every tile, and where to write it.

    Parameters
    ----------
    tiles : TileSet
        The tiles.
    gap : float, mm
        As for `exploded`.

    Returns
    -------
    tuple of (str, (x, y, z))
        In the order of ``tiles.tiles``; the middle of each tile's extent.
    """
    found = []
    for tile, solid in zip(tiles.tiles, exploded(tiles, gap), strict=True):
        x, y, z = solid.bounds.mean(axis=0).tolist()
        found.append((f"{tile.order}: {tile.name}", (x, y, z)))
    return tuple(found)
