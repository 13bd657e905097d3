"""Plain sheets that are laid over the last ply and cut besides: film, peel ply, adhesive tape."""

from __future__ import annotations

import numpy as np

from laywright.cloth.cuts.pieces import Piece
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.drape import drape
from laywright.cloth.drape.fabric import Sheeting, fabric_for
from laywright.cloth.patterns.flat_pattern import Goods, Pattern, flat_pattern
from laywright.cloth.patterns.pattern_settings import PatternSettings
from laywright.cloth.plies.draped_ply import DrapedPly
from laywright.laminate.materials import Weave
from laywright.surface.triangles import Surface

__all__ = ["lay_sheets"]

_TELLING = 0.005  # share of the area past a limit from which on it is said
_WEAVES = {Sheeting.PEEL_PLY: Weave.PLAIN}  # the others are alike in all directions, as mat is


def lay_sheets(
    top: Surface, datum: Datum, settings: PatternSettings
) -> tuple[tuple[Pattern, ...], tuple[str, ...]]:
    """Return the patterns of the sheets that are cut besides, and what to know about them.

    Parameters
    ----------
    top : Surface
        The surface of the laminate away from the mould, in even triangles, mm.
    datum : Datum
        Start point and arrow of the plies.
    settings : PatternSettings
        Which sheets, and how their patterns are drawn.

    Raises
    ------
    GeometryError
        If the surface cannot be laid flat in one piece.
    """
    patterns, remarks = [], []
    for kind in settings.also_cut:
        fabric = fabric_for(kind)
        laid = drape(top, fabric, datum)
        whole = Piece(np.arange(len(top.triangles)), datum)
        goods = Goods(
            0,
            kind.value,
            kind.value,
            _WEAVES.get(kind, Weave.MAT),
            0.0,
            fabric.locking_angle,
            0.0,
        )
        patterns.append(flat_pattern(goods, DrapedPly(top, laid, (whole,)), 0, settings))
        past = (
            (np.abs(laid.shear) > fabric.locking_angle)
            | (np.abs(laid.warp_stretch) > fabric.warp_limit)
            | (np.abs(laid.weft_stretch) > fabric.weft_limit)
        )
        share = float(top.areas[past].sum() / top.area)
        if share > _TELLING:
            remarks.append(
                f"{kind.value}: {100.0 * share:.0f} % of it does not lie down by itself; lay it "
                "in strips or with pleats there."
            )
    return tuple(patterns), tuple(remarks)
