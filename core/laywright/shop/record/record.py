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
from laywright.shop.coupons.statistics import Summary, summarise
from laywright.shop.mixing.cups import MIXING_MINUTES
from laywright.shop.plan import ShopPlan
from laywright.shop.record.fibre_content import by_thickness, by_weighing
from laywright.shop.record.hardness import hardness_remarks
from laywright.shop.record.readings import ClothReading, Readings
from laywright.shop.record.record_words import (
    BAND,
    ClothWeight,
    Verdict,
    card_remarks,
    mass_remarks,
    void_remarks,
)
from laywright.stage import stage

__all__ = [
    "BAND",
    "ClothReading",
    "ClothWeight",
    "Readings",
    "Record",
    "RecordLine",
    "Verdict",
    "weigh_in",
]


@dataclass(frozen=True)
class RecordLine:
    """One thing planned and made.

    Attributes
    ----------
    what, unit : str
    planned, made : float or None
        None where nothing was planned or read.
    """

    what: str
    unit: str
    planned: float | None
    made: float | None


@dataclass(frozen=True)
class Record:
    """What was made, beside what was planned.

    Attributes
    ----------
    date : str
        Of the layup.
    verdict : Verdict
        Mass of the untrimmed part against the plan.
    planned_part_g, part_g : float, g
        The part before it is trimmed, as planned and as weighed.
    least_g, most_g : float, g
        Between which it is good work by hand.
    planned_resin_share, resin_share : float
        Share of resin in the mass of the laminate, without core and coats; the second is the
        one to plan with next time.
    fraction_by_mass : float
        Fibre volume over laminate volume from the weighing, as if there were no air.
    fraction_by_thickness : float or None
        The same from the measured thickness.
    void_share : float or None
        Air over laminate volume, from both.
    thickness : Summary or None
        Measured, mm.
    lost_g, lost_share : float, g
        Mix that is neither in the part nor in coupons, and as a share of what is.
    unseen_g : float or None, g
        Of it what is not among the weighed left-overs either.
    pace : float or None
        Hands-on time of the laying over the planned one, mixing left out.
    square_metre_minutes, piece_minutes : float or None, minutes
        What the plan counted on, at this pace: for a square metre of a ply, for a piece.
    hardness : Summary or None
        On the scale of the readings.
    lines : tuple of RecordLine
        All of it side by side.
    cloths : tuple of ClothWeight
    remarks : tuple of str
    digest : str
        Of its inputs.
    """

    date: str
    verdict: Verdict
    planned_part_g: float
    part_g: float
    least_g: float
    most_g: float
    planned_resin_share: float
    resin_share: float
    fraction_by_mass: float
    fraction_by_thickness: float | None
    void_share: float | None
    thickness: Summary | None
    lost_g: float
    lost_share: float
    unseen_g: float | None
    pace: float | None
    square_metre_minutes: float | None
    piece_minutes: float | None
    hardness: Summary | None
    lines: tuple[RecordLine, ...]
    cloths: tuple[ClothWeight, ...]
    remarks: tuple[str, ...]
    digest: str = ""


@stage("Record of a part", version=3)
def weigh_in(laminate: Laminate, shop: ShopPlan, readings: Readings) -> Record:
    """Return what was made, beside what was planned.

    Parameters
    ----------
    laminate : Laminate
        As planned.
    shop : ShopPlan
        As planned.
    readings : Readings

    Raises
    ------
    InputError
        If the readings contradict each other.
    """
    mix = shop.mix
    aside = mix.coats_g + shop.core_g
    bare = readings.part_g - aside
    _check_balance(readings, shop.core_g, aside)
    resin_share = 1.0 - by_weighing(readings.cloth_g, bare)
    fibre_density = _fibre_density(laminate)
    by_mass = fibre_volume_fraction(1.0 - resin_share, fibre_density, laminate.layup.resin.density)
    thickness = summarise(readings.thicknesses_mm) if readings.thicknesses_mm else None
    by_gauge = None if thickness is None else _by_gauge(laminate, shop, readings, thickness.mean)
    void = None if by_gauge is None else 1.0 - by_gauge / by_mass
    planned = mix.untrimmed_g + shop.core_g
    held = readings.part_g - readings.cloth_g - shop.core_g
    lost = readings.mix_g - held - mix.coupon_g
    unseen = None if readings.left_g is None else lost - readings.left_g
    off = readings.part_g / planned - 1.0
    verdict = Verdict.GOOD if abs(off) <= BAND else Verdict.HEAVY if off > 0.0 else Verdict.LIGHT
    cloths = _cloth_weights(laminate, readings)
    pace = _pace(shop, readings)
    return Record(
        date=readings.date,
        verdict=verdict,
        planned_part_g=planned,
        part_g=readings.part_g,
        least_g=planned * (1.0 - BAND),
        most_g=planned * (1.0 + BAND),
        planned_resin_share=mix.resin_share,
        resin_share=resin_share,
        fraction_by_mass=by_mass,
        fraction_by_thickness=by_gauge,
        void_share=void,
        thickness=thickness,
        lost_g=lost,
        lost_share=lost / (held + mix.coupon_g),
        unseen_g=unseen,
        pace=pace,
        square_metre_minutes=None if pace is None else pace * mix.square_metre_minutes,
        piece_minutes=None if pace is None else pace * mix.piece_minutes,
        hardness=summarise(readings.hardness) if readings.hardness else None,
        lines=_lines(laminate, shop, readings, resin_share, by_mass, thickness),
        cloths=cloths,
        remarks=(
            *mass_remarks(
                planned, readings.part_g, mix.resin_share, resin_share, unseen, readings.mix_g
            ),
            *void_remarks(void),
            *hardness_remarks(readings.hardness, readings.hardness_scale, readings.hardness_full),
            *card_remarks(cloths),
        ),
    )


def _check_balance(readings: Readings, core_g: float, aside: float) -> None:
    """Refuse weights that do not add up: nothing comes from nowhere."""
    given = readings.cloth_g + readings.mix_g + core_g
    found = readings.part_g + (readings.left_g or 0.0)
    if found > given:
        left = "" if readings.left_g is None else f" with {readings.left_g:g} g of left-overs"
        raise InputError(
            "weighed part",
            f"{readings.part_g:g} g{left}",
            f"at most the {given:g} g of cloth, mix and core that went in",
            "weigh again, and take off filler and paint",
        )
    if readings.part_g - aside <= readings.cloth_g:
        raise InputError(
            "weighed part",
            f"{readings.part_g:g} g, {aside:g} g of it coats and core",
            f"more than the {readings.cloth_g:g} g of its dry cloth",
            "weigh again: cloth and part may have been changed",
        )


def _fibre_density(laminate: Laminate) -> float:
    """Density of all fibre together, by mass."""
    cloths = [ply.cloth for ply in laminate.layup.main.plies]
    volume = math.fsum(cloth.areal_weight / cloth.fibre.density for cloth in cloths)
    return laminate.cloth_areal / volume


def _by_gauge(laminate: Laminate, shop: ShopPlan, readings: Readings, thickness: float) -> float:
    """Return the fibre fraction from the thickness of the plies alone."""
    core = laminate.layup.core
    plies = thickness - (0.0 if core is None else core.thickness)
    areal = laminate.cloth_areal * readings.cloth_g / shop.mix.cloth_g
    return by_thickness(areal, _fibre_density(laminate), plies)


def _pace(shop: ShopPlan, readings: Readings) -> float | None:
    planned = math.fsum(shop.mix.ply_minutes)
    if readings.laying_minutes is None or planned <= 0.0:
        return None
    mixing = MIXING_MINUTES * sum(1 for cup in shop.mix.cups if cup.plies)
    return max(readings.laying_minutes - mixing, 1.0) / planned


def _lines(
    laminate: Laminate,
    shop: ShopPlan,
    readings: Readings,
    resin_share: float,
    by_mass: float,
    thickness: Summary | None,
) -> tuple[RecordLine, ...]:
    mix, cure = shop.mix, shop.cure
    planned = mix.untrimmed_g + shop.core_g
    over = mix.mix_g - mix.laminate_resin_g - mix.coats_g - mix.coupon_g
    return (
        RecordLine("dry cloth", "g", mix.cloth_g, readings.cloth_g),
        RecordLine("mix", "g", mix.mix_g, readings.mix_g),
        RecordLine("part before trimming", "g", planned, readings.part_g),
        RecordLine("part after trimming", "g", None, readings.trimmed_g),
        RecordLine("mix left over", "g", over, readings.left_g),
        RecordLine("resin share", "%", 100.0 * mix.resin_share, 100.0 * resin_share),
        RecordLine("fibre volume", "%", 100.0 * laminate.fibre_volume_fraction, 100.0 * by_mass),
        RecordLine(
            "thickness", "mm", laminate.thickness, None if thickness is None else thickness.mean
        ),
        RecordLine("shop", "degC", cure.temperature_c, readings.temperature_c),
        RecordLine("laying", "min", mix.laying_minutes, readings.laying_minutes),
        RecordLine("gelled after", "h", cure.gel_hours, readings.gel_hours),
        RecordLine("off the mould after", "h", cure.demould_hours, readings.demould_hours),
        RecordLine("humidity", "%", None, readings.humidity),
        RecordLine(
            "hardness",
            readings.hardness_scale.value,
            None,
            summarise(readings.hardness).mean if readings.hardness else None,
        ),
    )


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
