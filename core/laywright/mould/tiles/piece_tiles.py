"""The tiles of a mould in pieces: each piece is cut by a grid of its own."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from laywright.mould.body.mould import MouldBody
from laywright.mould.tiles.printer import Printer
from laywright.mould.tiles.tile import Tile, TileSet, TileSettings
from laywright.progress import Progress, part_of

__all__ = ["tiles_of_pieces"]

_FASTENING = (
    "A tile's name begins with the number of its piece. Glue each piece by itself, then put the "
    "pieces together, cones in their holes, and bolt them."
)


def tiles_of_pieces(
    body: MouldBody,
    printer: Printer,
    settings: TileSettings,
    cut: Callable[..., TileSet],
    progress: Progress,
) -> TileSet:
    """Return the tiles of all pieces of a mould as one set.

    Parameters
    ----------
    body : MouldBody
        With its pieces.
    printer : Printer
        The machine.
    settings : TileSettings
        Joints, gaps, marks, poses, wishes.
    cut : callable
        Cuts one body; takes body, printer, settings and progress.
    progress : Progress
        Told how far it is.
    """
    parts = body.parts()
    count = len(parts)
    sets = [
        cut(part, printer, settings, progress=part_of(progress, i / count, (i + 1) / count))
        for i, part in enumerate(parts)
    ]
    tiles: list[Tile] = []
    for piece, part in enumerate(sets):
        first = len(tiles)
        tiles += [replace(tile, order=first + tile.order, piece=piece) for tile in part.tiles]
    steps = [step for part in sets for step in part.steps]
    names = " and ".join((", ".join(p.name for p in body.pieces[:-1]), body.pieces[-1].name))
    x, y, z = (max(part.glue_gaps[axis] for part in sets) for axis in range(3))
    return replace(
        sets[0],
        tiles=tuple(tiles),
        joints=tuple(joint for part in sets for joint in part.joints),
        ears=tuple(ear for part in sets for ear in part.ears),
        glue_area=sum(part.glue_area for part in sets),
        glue_g=sum(part.glue_g for part in sets),
        glue_gaps=(x, y, z),
        volume_error=max((part.volume_error for part in sets), key=abs),
        steps=(*steps, f"Put {names} together and bolt them."),
        coupon=next((part.coupon for part in sets if part.coupon), ()),
        remarks=(
            *body.remarks,
            _FASTENING,
            *dict.fromkeys(remark for part in sets for remark in part.remarks),
        ),
        plans=tuple(part.plan for part in sets),
    )
