"""Names of tiles."""

from __future__ import annotations

from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.joint import Place

__all__ = ["tile_name"]


def tile_name(place: Place, plan: CutPlan) -> str:
    """Return a cell's name: row letter, column number, and the layer if there are several.

    The number of the mould's piece stands before it if there are several.
    """
    row, letters = place[1] + 1, ""
    while row:
        row, rest = divmod(row - 1, 26)
        letters = chr(ord("A") + rest) + letters
    layer = f"-{place[2] + 1}" if plan.counts[2] > 1 else ""
    piece = f"{plan.piece}" if plan.piece else ""
    return f"{piece}{letters}{place[0] + 1}{layer}"
