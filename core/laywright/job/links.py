"""What one room hands to another, where the two do not know each other."""

from __future__ import annotations

import dataclasses

from laywright.cloth.pattern import PatternSet
from laywright.laminate.laminate import Laminate
from laywright.mould.printer import Printer
from laywright.shop.mix import PlyCloth
from laywright.shop.plan import ShopSettings

__all__ = ["ply_cloths", "with_mould_of"]


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
            pattern.net_area,
        )
        for pattern in patterns.patterns
    )


def with_mould_of(settings: ShopSettings, printer: Printer) -> ShopSettings:
    """Return the settings with the softening of the printer's plastic where they name none."""
    if settings.cure.mould_softening_c is not None:
        return settings
    cure = dataclasses.replace(settings.cure, mould_softening_c=printer.softening_c)
    return dataclasses.replace(settings, cure=cure)
