"""What one room hands to another, where the two do not know each other."""

from __future__ import annotations

import dataclasses

from laywright.cloth.drape.datum import start_place, warp_direction
from laywright.cloth.patterns.pattern import PatternSet
from laywright.laminate.laminate import Laminate
from laywright.laminate.plies import Layup
from laywright.laminate.spring_in import closing_share
from laywright.mould.body.settings import MarkedDatum, MouldSettings
from laywright.mould.machine import Printer
from laywright.mould.release.release import ReleaseSettings
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.mixing.mix import PlyCloth
from laywright.shop.plan import ShopSettings
from laywright.surface.face import MouldedFace

__all__ = [
    "ply_cloths",
    "with_closing",
    "with_marked_datum",
    "with_mould_of",
    "with_printer",
    "with_release",
]


def ply_cloths(patterns: PatternSet, laminate: Laminate) -> tuple[PlyCloth, ...]:
    """Return the cloth of every pattern as the shop needs it: by its real cut area.

    The two plies on a core hold the resin that bonds it as well.
    """
    layup = laminate.layup
    return tuple(
        PlyCloth(
            pattern.ply,
            pattern.cloth,
            pattern.area,
            layup.plies[pattern.ply - 1].cloth.areal_weight,
            _resin_share(layup, pattern.ply),
            pattern.net_area,
        )
        for pattern in patterns.patterns
    )


def _resin_share(layup: Layup, ply: int) -> float:
    share = layup.ply_resin_share(ply)
    if layup.core is None or ply - layup.core.after not in (0, 1):
        return share
    cloth = layup.plies[ply - 1].cloth.areal_weight
    resin = cloth * share / (1.0 - share) + layup.core.sheet.bond_resin
    return resin / (cloth + resin)


def with_marked_datum(
    settings: MouldSettings, face: MouldedFace, patterns: PatternSet
) -> MouldSettings:
    """Return settings of a mould that carries the marks of the datum the cloth is laid from."""
    if patterns.datum is None:
        return settings
    x, y, z = start_place(face.surface, patterns.datum).point(face.surface).tolist()
    arrow = warp_direction(face.surface, patterns.datum, 0.0)
    return dataclasses.replace(settings, datum=MarkedDatum((x, y, z), arrow))


def with_mould_of(settings: ShopSettings, printer: Printer) -> ShopSettings:
    """Return the settings with the softening of the printer's plastic where they name none."""
    if settings.cure.mould_softening_c is not None:
        return settings
    cure = dataclasses.replace(settings.cure, mould_softening_c=printer.softening_c)
    return dataclasses.replace(settings, cure=cure)


def with_printer(settings: MouldSettings, printer: Printer) -> MouldSettings:
    """Return the settings with the printer that the tiles are printed on, where they name none."""
    if settings.plastic.printer is not None:
        return settings
    plastic = dataclasses.replace(settings.plastic, printer=printer)
    return dataclasses.replace(settings, plastic=plastic)


def with_release(settings: MouldSettings, release: ReleaseSettings) -> MouldSettings:
    """Return the settings with draft and number of pieces of the Release Check, if unset."""
    asked = settings.pieces.asked(release)
    pieces = dataclasses.replace(
        settings.pieces, most_pieces=asked.most_pieces, least_draft=asked.least_draft
    )
    return dataclasses.replace(settings, pieces=pieces)


def with_closing(settings: MouldSettings, laminate: Laminate, cure: CureSettings) -> MouldSettings:
    """Return the settings with the share by which bends close, where they name none.

    The resin sets at the temperature of the shop, or of the post-cure where there is one.
    """
    if settings.allowances.closing != 0.0:
        return settings
    hottest = max(cure.temperature_c, cure.held_c or cure.temperature_c)
    closing = closing_share(laminate, cure.temperature_c - hottest)
    return dataclasses.replace(
        settings, allowances=dataclasses.replace(settings.allowances, closing=closing)
    )
