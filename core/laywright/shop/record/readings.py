"""What is read from scale, calliper, clock and thermometer when a part is made."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

from laywright.errors import InputError
from laywright.shop.record.hardness import HardnessScale

__all__ = ["ClothReading", "Readings"]

_DATE = re.compile(r"\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])")


@dataclass(frozen=True)
class ClothReading:
    """A weighed piece of dry cloth of known area.

    Attributes
    ----------
    cloth : str
        Name on its card.
    area_mm2 : float, mm^2
    mass_g : float, g
    """

    cloth: str
    area_mm2: float
    mass_g: float


@dataclass(frozen=True)
class Readings:
    """What was read; None where it was not.

    Attributes
    ----------
    cloth_g : float, g
        All cut cloth, dry.
    mix_g : float, g
        All resin and hardener that was mixed.
    part_g : float, g
        The cured part before it is trimmed.
    thicknesses_mm : tuple of float, mm
        At several places, away from laps; empty if not measured.
    cloths : tuple of ClothReading
        Pieces of known area, to check the cards; may be empty.
    trimmed_g : float or None, g
        The part after it is trimmed.
    left_g : float or None, g
        Mix left over in cups and tools, weighed.
    temperature_c : float or None, degC
        Of the shop.
    laying_minutes : float or None, minutes
        From the first stir until the last ply lay.
    gel_hours, demould_hours : float or None, hours
        From the first stir until it gelled, and until it left the mould.
    date : str
        Of the layup, such as ``"2026-11-25"``; may be empty.
    humidity : float or None, percent
        Relative, of the shop.
    hardness : tuple of float
        At several places of the cured part, on `hardness_scale`; empty if not measured.
    hardness_scale : HardnessScale
    hardness_full : float or None
        Of the fully cured resin by its maker.
    notes : tuple of str
        What passes: batch numbers, leaks, dry spots, who did it.
    """

    cloth_g: float
    mix_g: float
    part_g: float
    thicknesses_mm: tuple[float, ...] = ()
    cloths: tuple[ClothReading, ...] = ()
    trimmed_g: float | None = None
    left_g: float | None = None
    temperature_c: float | None = None
    laying_minutes: float | None = None
    gel_hours: float | None = None
    demould_hours: float | None = None
    date: str = ""
    humidity: float | None = None
    hardness: tuple[float, ...] = ()
    hardness_scale: HardnessScale = HardnessScale.SHORE_D
    hardness_full: float | None = None
    notes: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        for where, number, low, high, unit in (
            ("weighed cloth", self.cloth_g, 0.1, 1e5, "g"),
            ("weighed mix", self.mix_g, 0.1, 1e5, "g"),
            ("weighed part", self.part_g, 0.1, 1e5, "g"),
            ("weighed trimmed part", self.trimmed_g, 0.1, 1e5, "g"),
            ("weighed left-over mix", self.left_g, 0.0, 1e5, "g"),
            ("temperature of the shop", self.temperature_c, 0.0, 50.0, "degC"),
            ("time of laying", self.laying_minutes, 1.0, 6000.0, "minutes"),
            ("time until gel", self.gel_hours, 0.05, 500.0, "hours"),
            ("time until demould", self.demould_hours, 0.1, 2000.0, "hours"),
            ("humidity of the shop", self.humidity, 1.0, 100.0, "percent"),
            ("hardness of the cured resin", self.hardness_full, 1.0, 100.0, "steps"),
            *(("hardness of the part", h, 0.0, 100.0, "steps") for h in self.hardness),
            *(("measured thickness", t, 0.02, 100.0, "mm") for t in self.thicknesses_mm),
            *((f"{piece.cloth}: area", piece.area_mm2, 1e2, 1e8, "mm^2") for piece in self.cloths),
            *((f"{piece.cloth}: mass", piece.mass_g, 0.01, 1e5, "g") for piece in self.cloths),
        ):
            if number is not None and not (math.isfinite(number) and low <= number <= high):
                raise InputError(
                    where, f"{number:g} {unit}", f"{low:g} to {high:g} {unit}", "read it again"
                )
        if self.date and not _DATE.fullmatch(self.date):
            raise InputError(
                "date", f"'{self.date}'", "a date such as 2026-11-25", "write it that way"
            )
        if self.trimmed_g is not None and self.trimmed_g > self.part_g:
            raise InputError(
                "weighed trimmed part",
                f"{self.trimmed_g:g} g",
                f"at most the {self.part_g:g} g before trimming",
                "weigh again, and perhaps change the two",
            )
