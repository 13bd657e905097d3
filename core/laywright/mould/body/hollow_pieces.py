"""The pieces of a parted mould made hollow from below, walls kept everywhere.

Each piece is hollowed as a whole mould is, from its part of the base upwards, its other faces
all taken for outer ones; around bolts and registration it stays full.
"""

from __future__ import annotations

import dataclasses
import math
from dataclasses import dataclass

import numpy as np
from manifold3d import Manifold

from laywright.arrays import FloatArray
from laywright.errors import GeometryError
from laywright.mould.body.inside import Hollow, hollow_of
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.body.settings import Inside
from laywright.mould.solid import ball, from_manifold, joined

__all__ = ["HollowPiece", "hollowed"]

_LEAST_BASE = 4.0


@dataclass(frozen=True, eq=False)
class HollowPiece:
    """A piece, hollow where that was possible.

    Attributes
    ----------
    solid : Manifold
        In the part's coordinates.
    hollow : Hollow or None
        What was taken out, in the mould's frame; None where it stays full.
    remark : str
        Why it stays full; empty where it does not.
    """

    solid: Manifold
    hollow: Hollow | None
    remark: str = ""


def hollowed(
    name: str,
    solid: Manifold,
    names: tuple[str, ...],
    turn: FloatArray,
    fastenings: FloatArray,
    inside: Inside,
    settings: PieceSettings,
) -> HollowPiece:
    """Return a piece made hollow.

    Parameters
    ----------
    name : str
        Of the piece, for the remark.
    solid : Manifold
        The piece in the part's coordinates.
    names : tuple of str
        Patch names, ``"base"`` and ``"hollow"`` among them.
    turn : (3, 3) float
        Rotation that turns the mouth of the mould upwards.
    fastenings : (k, 3) float, mm
        Centres of bolts and cones, in the part's coordinates.
    inside : Inside
        Wall, ribs and bottom.
    settings : PieceSettings
        Sizes of bolts and cones.
    """
    base, patch = names.index("base"), names.index("hollow")
    upright = solid.transform(np.column_stack([turn, np.zeros(3)]))
    body = from_manifold(upright, names)
    footing = float(body.areas[body.patches == base].sum())
    if footing < _LEAST_BASE * inside.wall**2:
        return HollowPiece(solid, None, f"{name} stays full: it has no base to be hollowed from.")
    try:
        hollow = hollow_of(body, body.part(body.patches != base), inside, base, patch)
    except GeometryError as problem:
        return HollowPiece(solid, None, f"{name} stays full: {problem.found}.")
    reach = math.hypot(settings.clamped, settings.pocket) + inside.wall
    full = [ball(place, reach, patch) for place in fastenings @ turn.T]
    taken = hollow.solid - joined(full) if full else hollow.solid
    made = upright - taken
    return HollowPiece(
        made.transform(np.column_stack([turn.T, np.zeros(3)])),
        dataclasses.replace(hollow, solid=taken),
    )
