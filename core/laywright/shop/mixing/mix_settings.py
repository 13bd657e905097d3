"""What a mixing plan starts from: the cloth of each ply, and how the shop mixes."""

from __future__ import annotations

import math
from dataclasses import dataclass

from laywright.errors import InputError

__all__ = ["MixSettings", "PlyCloth", "check_setting"]


def check_setting(where: str, number: float, low: float, high: float, unit: str) -> None:
    """Raise InputError unless `low <= number <= high`."""
    if not (math.isfinite(number) and low <= number <= high):
        raise InputError(
            where, f"{number:g}{unit}", f"{low:g} to {high:g}{unit}", "correct the setting"
        )


@dataclass(frozen=True)
class MixSettings:
    """How the mixing is to be planned.

    Attributes
    ----------
    extra_share : float
        Resin mixed beyond what cloth and coats hold, as a share of it; 5 % is common practice.
    fixed_loss_g : float, g
        What stays in brush, roller and cups, once for the job.
    cup_limit_g : float, g
        Most mix in one cup; 100 g is common practice.
    scale_resolution_g : float, g
        Smallest step of the scale.
    temperature_c : float, degC
        Of shop, resin and hardener.
    seal_coats, fill_coats : int
        Coats of mix brushed onto the mould before ply 1, and rolled over the last ply when it
        has gelled, to fill the weave.
    seal_coat_weight, fill_coat_weight : float, g/m^2
        Mix in one such coat; common practice, no source.
    square_metre_minutes : float, minutes
        That hands take to lay and wet out a square metre of one ply; common practice without a
        source until records of one's own say better.
    ply_minutes : float, minutes
        That a piece of cloth takes besides, whatever its size.
    """

    extra_share: float = 0.05
    fixed_loss_g: float = 0.0
    cup_limit_g: float = 100.0
    scale_resolution_g: float = 1.0
    temperature_c: float = 21.0
    seal_coats: int = 0
    seal_coat_weight: float = 60.0
    fill_coats: int = 0
    fill_coat_weight: float = 90.0
    square_metre_minutes: float = 60.0
    ply_minutes: float = 5.0

    def __post_init__(self) -> None:
        check_setting("extra share", self.extra_share, 0.0, 2.0, "")
        check_setting("fixed loss", self.fixed_loss_g, 0.0, 5000.0, " g")
        check_setting("cup limit", self.cup_limit_g, 5.0, 5000.0, " g")
        check_setting("scale resolution", self.scale_resolution_g, 0.001, 100.0, " g")
        check_setting("shop temperature", self.temperature_c, 5.0, 45.0, " degC")
        check_setting("seal coats", self.seal_coats, 0, 20, "")
        check_setting("fill coats", self.fill_coats, 0, 20, "")
        check_setting("weight of a seal coat", self.seal_coat_weight, 5.0, 1000.0, " g/m^2")
        check_setting("weight of a fill coat", self.fill_coat_weight, 5.0, 1000.0, " g/m^2")
        check_setting("time for a square metre", self.square_metre_minutes, 0.0, 1000.0, " minutes")
        check_setting("time for a ply", self.ply_minutes, 0.0, 600.0, " minutes")
        if self.cup_limit_g < 10.0 * self.scale_resolution_g:
            raise InputError(
                "cup limit",
                f"{self.cup_limit_g:g} g on a scale that shows steps of "
                f"{self.scale_resolution_g:g} g",
                "at least ten steps of the scale",
                "use a finer scale or larger cups",
            )


@dataclass(frozen=True)
class PlyCloth:
    """The cloth of one ply, or of one piece of it, as it is laid.

    Attributes
    ----------
    ply : int
        Number of the ply, 1 touches the mould; pieces of one ply share the number.
    cloth : str
        Name of the cloth.
    area_mm2 : float, mm^2
        Area of dry flat cloth as it is cut, margins and laps included.
    areal_weight : float, g/m^2
        Of the dry cloth.
    resin_share : float or None
        Share of resin in the mass of this ply, where it differs from that of the job.
    part_area_mm2 : float or None, mm^2
        Area of the part that it covers, for coats; None where that is all of it.
    """

    ply: int
    cloth: str
    area_mm2: float
    areal_weight: float
    resin_share: float | None = None
    part_area_mm2: float | None = None

    @property
    def mass_g(self) -> float:
        """Mass of the dry cloth, g."""
        return self.area_mm2 * 1e-6 * self.areal_weight

    def resin_g(self, resin_share: float) -> float:
        """Return the mix that it shall hold, g, at a share of its mass unless it has its own."""
        share = resin_share if self.resin_share is None else self.resin_share
        return self.mass_g * share / (1.0 - share)

    @property
    def covered_mm2(self) -> float:
        """Area of the part that it covers, mm^2."""
        return self.area_mm2 if self.part_area_mm2 is None else self.part_area_mm2
