"""What one room hands to another, where the two do not know each other."""

from __future__ import annotations

from laywright.cloth.pattern import PatternSet
from laywright.laminate.laminate import Laminate
from laywright.shop.mix import PlyCloth

__all__ = ["ply_cloths"]


def ply_cloths(patterns: PatternSet, laminate: Laminate) -> tuple[PlyCloth, ...]:
    """Return the cloth of every pattern as the shop needs it: by its real cut area."""
    layup = laminate.layup
    return tuple(
        PlyCloth(
            pattern.ply,
            pattern.cloth,
            pattern.area,
            layup.plies[pattern.ply - 1].cloth.areal_weight,
            layup.ply_resin_share(pattern.ply),
        )
        for pattern in patterns.patterns
    )
