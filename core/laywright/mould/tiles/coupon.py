"""The joint coupon: small pieces to print first, which show what clearance the printer needs.

For dowels it is a bar with five holes, for tongues a bar with five grooves and a piece with one
tongue.  The clearances step about the wanted one; each hole is numbered on the underside.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely

from laywright.mould.marks import engraving
from laywright.mould.solid import block, from_manifold, joined, side_by_side
from laywright.mould.tiles.joint import Joint, JointKind, hole, tongue
from laywright.mould.tiles.joints import JointSize
from laywright.surface.triangles import Surface

__all__ = ["CouponPiece", "joint_coupon"]

_STEP = 0.05
_COUNT = 5
_NAMES = ("coupon", "mark")


@dataclass(frozen=True, eq=False)
class CouponPiece:
    """A piece of the coupon.

    Attributes
    ----------
    name : str
        Name of the object in the files.
    solid : Surface
        Closed, mm, as it stands on the bed.
    clearances : tuple of float, mm
        Clearance per side of hole 1, 2, ...; empty for the piece with the tongue.
    """

    name: str
    solid: Surface
    clearances: tuple[float, ...]


def joint_coupon(size: JointSize | None, pen: float, mark_depth: float) -> tuple[CouponPiece, ...]:
    """Return the coupon of a joint; flat joints need none.

    Parameters
    ----------
    size : JointSize or None
        The joint; None for flat ones.
    pen : float, mm
        Width of the numbers' strokes.
    mark_depth : float, mm
        Their depth.
    """
    if size is None:
        return ()
    clearances = tuple(
        round(max(0.0, size.clearance + _STEP * (step - _COUNT // 2)), 4) for step in range(_COUNT)
    )
    grows = 2.0 * (2.0**0.5 if size.kind is JointKind.TONGUES else 1.0)
    bare = size.diameter - grows * size.clearance
    pitch = bare + grows * clearances[-1] + 2.0 * max(size.wall, 1.0)
    depth = size.depth
    height = depth + max(size.wall, mark_depth + 1.0)
    bar = block(np.zeros(3), np.array([_COUNT * pitch, pitch, height]), 0)
    cuts, holes = [], []
    for step, clearance in enumerate(clearances):
        joint = Joint(
            (0, 0, 0),
            (0, 0, 1),
            2,
            ((step + 0.5) * pitch, pitch / 2.0, height - depth),
            bare + grows * clearance,
            depth + 1.0,
            (0.0, 0.0, 0.0),
            size.kind,
            clearance,
        )
        groove = hole(joint, 1)
        holes += [] if groove is None else [groove]
        if mark_depth > 0.0:
            under = shapely.box(step * pitch, 0.0, (step + 1) * pitch, pitch)
            mark = engraving(str(step + 1), under, (-1.0, mark_depth), pen, 1)
            cuts += [] if mark is None else [mark]
    bored = from_manifold(bar - joined([side_by_side(holes, 0), *cuts]), _NAMES)
    pieces = [CouponPiece("joint coupon", bored, clearances)]
    if size.kind is JointKind.TONGUES:
        base = max(size.wall, 3.0)
        foot = block(np.zeros(3), np.array([pitch, pitch, base]), 0)
        key = Joint(
            (0, 0, 0),
            (0, 0, 1),
            2,
            (pitch / 2.0, pitch / 2.0, base),
            size.diameter,
            depth,
            (0.0, 0.0, 0.0),
            size.kind,
            size.clearance,
        )
        solid = from_manifold(foot + side_by_side([tongue(key, base)], 0), _NAMES)
        pieces.append(CouponPiece("joint coupon tongue", solid, ()))
    return tuple(pieces)
