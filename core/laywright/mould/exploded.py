"""Tiles pulled apart, for the eye: on the screen and on the sheet."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray
from laywright.mould.tiles import TileSet
from laywright.surface.triangles import Surface

__all__ = ["exploded", "shifts"]


def shifts(tiles: TileSet, gap: float) -> FloatArray:
    """Return how far each tile moves so that neighbours stand `gap` mm apart: (t, 3), mm."""
    place = np.array([(tile.column, tile.row, tile.layer) for tile in tiles.tiles], dtype=float)
    middle = (np.array(tiles.plan.counts) - 1.0) / 2.0
    moved: FloatArray = gap * (place - middle) @ tiles.plan.axes
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
