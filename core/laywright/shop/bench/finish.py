"""From printed tiles to a smooth, tight mould: filler, grits, primer, sealer.

Amounts and waits are common practice, no source; the data sheet of the product goes first.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from laywright.errors import InputError
from laywright.shop.bench.timeline import Span
from laywright.stage import stage

__all__ = ["FinishPlan", "FinishSettings", "plan_finish"]

_LEAST_MINUTES = 5.0
_FILLER_WEIGHT = 150.0  # g/m^2
_PRIMER_WEIGHT = 120.0  # g/m^2 of one coat
_SEALER_WEIGHT = 60.0  # g/m^2 of one coat
_PRIMER_SOLIDS, _SEALER_SOLIDS = 0.6, 1.0
_DRY_DENSITY = 1.4  # g/cm^3 of dry primer; sealer is resin, a little lighter
_SHEETS_PER_SQUARE_METRE = 4.0
_COAT_MINUTES = 15.0  # for a coat on a square metre
_FLASH_MINUTES = 15.0


@dataclass(frozen=True)
class FinishSettings:
    """How the mould is made smooth and tight.

    Attributes
    ----------
    grits : tuple of int
        Sanding, coarse to fine; the first half before the primer, the rest after it.
    primer_coats, sealer_coats : int
    filler_hours, primer_hours, sealer_hours : float, hours
        Until filler, primer and each coat of sealer can be sanded or coated.
    sanding_minutes : float, minutes
        For one grit on a square metre.
    """

    grits: tuple[int, ...] = (80, 120, 240, 400)
    primer_coats: int = 2
    sealer_coats: int = 2
    filler_hours: float = 4.0
    primer_hours: float = 6.0
    sealer_hours: float = 4.0
    sanding_minutes: float = 60.0

    def __post_init__(self) -> None:
        if list(self.grits) != sorted(self.grits) or not all(24 <= g <= 5000 for g in self.grits):
            raise InputError(
                "grits",
                ", ".join(str(grit) for grit in self.grits),
                "24 to 5000, coarse to fine",
                "put them in order",
            )
        for where, number, high in (
            ("coats of primer", self.primer_coats, 10),
            ("coats of sealer", self.sealer_coats, 10),
            ("hours of the filler", self.filler_hours, 200.0),
            ("hours of the primer", self.primer_hours, 200.0),
            ("hours of the sealer", self.sealer_hours, 200.0),
            ("time for sanding", self.sanding_minutes, 1000.0),
        ):
            if not 0 <= number <= high:
                raise InputError(where, f"{number:g}", f"0 to {high:g}", "correct the setting")


@dataclass(frozen=True)
class FinishPlan:
    """What makes a printed mould smooth and tight.

    Attributes
    ----------
    spans : tuple of Span
        The steps with their waits, in order.
    filler_g, primer_g, sealer_g : float, g
        About what is used up.
    sheets : dict of str to int
        Sheets of abrasive paper by grit.
    build_mm : float, mm
        By how much primer and sealer raise the surface, about.
    digest : str
        Of its inputs.
    """

    spans: tuple[Span, ...]
    filler_g: float
    primer_g: float
    sealer_g: float
    sheets: dict[str, int]
    build_mm: float
    digest: str = ""


@stage("Mould Finish", version=1)
def plan_finish(area_mm2: float, settings: FinishSettings) -> FinishPlan:
    """Return the steps that make a printed mould smooth and tight.

    Parameters
    ----------
    area_mm2 : float, mm^2
        Moulded face with run-off and flange.
    settings : FinishSettings
    """
    if not 1.0 <= area_mm2 <= 1e9:
        raise InputError(
            "mould area", f"{area_mm2:g} mm^2", "1 mm^2 to 1000 m^2", "check the mould"
        )
    area = area_mm2 * 1e-6
    coat = max(_LEAST_MINUTES, _COAT_MINUTES * area)
    sanding = max(_LEAST_MINUTES, settings.sanding_minutes * area)
    half = (len(settings.grits) + 1) // 2
    spans = [
        Span("Fill seams and layer lines", 2.0 * coat, 60.0 * settings.filler_hours),
        *(Span(f"Sand with {grit} grit", sanding) for grit in settings.grits[:half]),
        *_coats("Primer", settings.primer_coats, coat, 60.0 * settings.primer_hours),
        *(Span(f"Sand with {grit} grit, wet", sanding) for grit in settings.grits[half:]),
        *(
            Span(
                f"Sealer, coat {number} of {settings.sealer_coats}",
                coat,
                60.0 * settings.sealer_hours,
            )
            for number in range(1, settings.sealer_coats + 1)
        ),
    ]
    primer = settings.primer_coats * _PRIMER_WEIGHT
    sealer = settings.sealer_coats * _SEALER_WEIGHT
    dry = primer * _PRIMER_SOLIDS + sealer * _SEALER_SOLIDS
    return FinishPlan(
        tuple(spans),
        _FILLER_WEIGHT * area,
        primer * area,
        sealer * area,
        {f"{g}": max(1, math.ceil(_SHEETS_PER_SQUARE_METRE * area)) for g in settings.grits},
        dry / _DRY_DENSITY / 1000.0,
    )


def _coats(name: str, count: int, minutes: float, dry: float) -> list[Span]:
    return [
        Span(
            f"{name}, coat {number} of {count}",
            minutes,
            dry if number == count else _FLASH_MINUTES,
        )
        for number in range(1, count + 1)
    ]
