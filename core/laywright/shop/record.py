"""The weigh-in: what was really made, held against the plan.

Fibre content comes out twice, from the mass and from the thickness; where the two differ there
is air in the laminate, or a reading is wrong.  What was learnt goes into the next plan.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from laywright.errors import InputError
from laywright.laminate.laminate import Laminate
from laywright.laminate.micromechanics import fibre_volume_fraction
from laywright.shop.fibre_content import by_thickness, by_weighing
from laywright.shop.mix import MixPlan
from laywright.shop.statistics import Summary, summarise
from laywright.stage import stage

__all__ = ["BAND", "ClothReading", "ClothWeight", "Readings", "Record", "weigh_in"]

BAND = 0.09
"""Share by which a part may be heavier or lighter than planned: good work by hand."""

_CARD_BAND = 0.03
_VOIDS = 0.05


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
    """What was read from scale and calliper.

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
    """

    cloth_g: float
    mix_g: float
    part_g: float
    thicknesses_mm: tuple[float, ...] = ()
    cloths: tuple[ClothReading, ...] = ()

    def __post_init__(self) -> None:
        for where, number in (
            ("weighed cloth", self.cloth_g),
            ("weighed mix", self.mix_g),
            ("weighed part", self.part_g),
        ):
            _check(where, number, 0.1, 1e5, "g")
        for thickness in self.thicknesses_mm:
            _check("measured thickness", thickness, 0.02, 100.0, "mm")
        for piece in self.cloths:
            _check(f"{piece.cloth}: area", piece.area_mm2, 1e2, 1e8, "mm^2")
            _check(f"{piece.cloth}: mass", piece.mass_g, 0.01, 1e5, "g")
        if self.part_g > self.cloth_g + self.mix_g:
            raise InputError(
                "weighed part",
                f"{self.part_g:g} g",
                f"at most the {self.cloth_g + self.mix_g:g} g of cloth and mix that went in",
                "weigh again, and take off filler and paint",
            )


def _check(where: str, number: float, low: float, high: float, unit: str) -> None:
    if not (math.isfinite(number) and low <= number <= high):
        raise InputError(
            where, f"{number:g} {unit}", f"{low:g} to {high:g} {unit}", "read it again"
        )


@dataclass(frozen=True)
class ClothWeight:
    """Areal weight of a cloth as weighed.

    Attributes
    ----------
    cloth : str
    written, weighed : float, g/m^2
        On its card, and from the scale.
    """

    cloth: str
    written: float
    weighed: float


@dataclass(frozen=True)
class Record:
    """What was made, beside what was planned.

    Attributes
    ----------
    planned_part_g, part_g : float, g
        The part before it is trimmed, cloth as planned, and as weighed.
    planned_resin_share, resin_share : float
        Share of resin in the mass; the second is the one to plan with next time.
    fraction_by_mass : float
        Fibre volume over laminate volume from the weighing, as if there were no air.
    fraction_by_thickness : float or None
        The same from the measured thickness.
    void_share : float or None
        Air over laminate volume, from both.
    thickness : Summary or None
        Measured, mm.
    lost_g, lost_share : float, g
        Mix that is not in the part, and as a share of what is: plan with it next time.
    cloths : tuple of ClothWeight
    remarks : tuple of str
    digest : str
        Of its inputs.
    """

    planned_part_g: float
    part_g: float
    planned_resin_share: float
    resin_share: float
    fraction_by_mass: float
    fraction_by_thickness: float | None
    void_share: float | None
    thickness: Summary | None
    lost_g: float
    lost_share: float
    cloths: tuple[ClothWeight, ...]
    remarks: tuple[str, ...]
    digest: str = ""


@stage("Weigh-in", version=1)
def weigh_in(laminate: Laminate, mix: MixPlan, readings: Readings) -> Record:
    """Return what was made, beside what was planned.

    Parameters
    ----------
    laminate : Laminate
        As planned.
    mix : MixPlan
        As planned.
    readings : Readings

    Raises
    ------
    InputError
        If the readings contradict each other.
    """
    resin_share = 1.0 - by_weighing(readings.cloth_g, readings.part_g)
    fibre_density = _fibre_density(laminate)
    by_mass = fibre_volume_fraction(1.0 - resin_share, fibre_density, laminate.layup.resin.density)
    thickness = summarise(readings.thicknesses_mm) if readings.thicknesses_mm else None
    by_gauge = void = None
    if thickness is not None:
        areal = laminate.cloth_areal * readings.cloth_g / mix.cloth_g
        by_gauge = by_thickness(areal, fibre_density, thickness.mean)
        void = 1.0 - by_gauge / by_mass
    planned = mix.cloth_g + mix.laminate_resin_g
    held = readings.part_g - readings.cloth_g
    lost = readings.mix_g - held
    cloths = _cloth_weights(laminate, readings)
    return Record(
        planned_part_g=planned,
        part_g=readings.part_g,
        planned_resin_share=mix.resin_share,
        resin_share=resin_share,
        fraction_by_mass=by_mass,
        fraction_by_thickness=by_gauge,
        void_share=void,
        thickness=thickness,
        lost_g=lost,
        lost_share=lost / held,
        cloths=cloths,
        remarks=(
            *_mass_remarks(planned, readings.part_g, mix.resin_share, resin_share),
            *_void_remarks(void),
            *_card_remarks(cloths),
        ),
    )


def _fibre_density(laminate: Laminate) -> float:
    """Density of all fibre together, by mass."""
    cloths = [ply.cloth for ply in laminate.layup.plies]
    volume = math.fsum(cloth.areal_weight / cloth.fibre.density for cloth in cloths)
    return laminate.cloth_areal / volume


def _cloth_weights(laminate: Laminate, readings: Readings) -> tuple[ClothWeight, ...]:
    written = {ply.cloth.name: ply.cloth.areal_weight for ply in laminate.layup.plies}
    found = []
    for name in dict.fromkeys(piece.cloth for piece in readings.cloths):
        if name not in written:
            raise InputError(
                "weighed cloth", f"'{name}'", " or ".join(written), "choose a cloth of the layup"
            )
        pieces = [piece for piece in readings.cloths if piece.cloth == name]
        area = math.fsum(piece.area_mm2 for piece in pieces) * 1e-6
        mass = math.fsum(piece.mass_g for piece in pieces)
        found.append(ClothWeight(name, written[name], mass / area))
    return tuple(found)


def _mass_remarks(planned: float, part: float, wanted: float, got: float) -> list[str]:
    remarks = []
    off = part / planned - 1.0
    if abs(off) > BAND:
        remarks.append(
            f"The part is {abs(off):.0%} {'heavier' if off > 0.0 else 'lighter'} than planned; "
            f"within {BAND:.0%} is good work by hand."
        )
    if abs(got - wanted) > 0.02:
        remarks.append(
            f"It holds {got:.0%} resin where {wanted:.0%} was planned: plan the next one with "
            f"{got:.0%}, or change how the surplus is taken off."
        )
    return remarks


def _void_remarks(void: float | None) -> list[str]:
    if void is None or abs(void) <= _VOIDS:
        return []
    if void < 0.0:
        return [
            "The thickness is less than cloth and resin without any air would give: a weighing, "
            "a thickness or a density is wrong."
        ]
    return [
        f"Thickness and mass differ by {void:.0%} of air: more working in with the roller, or a "
        "bag, or the gauge sat on a lap."
    ]


def _card_remarks(cloths: tuple[ClothWeight, ...]) -> list[str]:
    return [
        f"{cloth.cloth} weighs {cloth.weighed:.0f} g/m^2 where its card says "
        f"{cloth.written:.0f}: correct the card."
        for cloth in cloths
        if abs(cloth.weighed / cloth.written - 1.0) > _CARD_BAND
    ]
