"""The mixing plan: how much cloth, resin and hardener, in which cups, in which order.

Everything is by mass.  A cup belongs to plies or coats, never weighs more than the limit, lasts
as long as hands need for it where that can be had, and its two scale readings are whole steps
of the scale.
"""

from __future__ import annotations

import dataclasses
import math
from collections.abc import Sequence
from dataclasses import dataclass

from laywright.errors import InputError
from laywright.laminate.materials import Resin
from laywright.shop.kinetics import time_at
from laywright.shop.mixing.cups import Cup, Need, fill_cups
from laywright.shop.mixing.mix_settings import MixSettings, PlyCloth, check_setting
from laywright.shop.mixing.mix_words import mixing_remarks, mixing_steps, ratio_texts
from laywright.stage import stage

__all__ = ["Cup", "MixPlan", "MixSettings", "PlyCloth", "plan_mix"]


@dataclass(frozen=True)
class MixPlan:
    """What to weigh and to mix.

    Attributes
    ----------
    cloth_g : float, g
        Dry cloth of the whole job.
    ply_numbers : tuple of int
        The plies, in the order of laying.
    ply_cloth_g, ply_resin_g : tuple of float, g
        Dry cloth of each ply, and the mix that it shall hold.
    ply_minutes : tuple of float, minutes
        That hands take to lay each ply.
    laminate_resin_g : float, g
        Mix that the laminate shall hold, without coats.
    coats_g : float, g
        Mix that seal and fill coats shall hold.
    coupon_g : float, g
        Mix that a plate of test pieces shall hold, laid ply by ply from the same cups.
    resin_g, hardener_g, mix_g : float, g
        To be weighed, all cups together.
    resin_share : float
        Share of mix in the mass of the laminate, without coats.
    laying_minutes : float, minutes
        From the first stir until the last ply lies.
    square_metre_minutes, piece_minutes : float, minutes
        The pace that was counted on: for a square metre of one ply, and for a piece besides.
    ratio_texts : tuple of str
        The same ratio in three ways: percent of the laminate, parts per 100 parts of cloth,
        grams.
    cups : tuple of Cup
        In the order of use.
    steps : tuple of str
        What to do, in order.
    remarks : tuple of str
        What to look out for.
    digest : str
        Of its inputs.
    """

    cloth_g: float
    ply_numbers: tuple[int, ...]
    ply_cloth_g: tuple[float, ...]
    ply_resin_g: tuple[float, ...]
    ply_minutes: tuple[float, ...]
    laminate_resin_g: float
    coats_g: float
    coupon_g: float
    resin_g: float
    hardener_g: float
    mix_g: float
    resin_share: float
    laying_minutes: float
    square_metre_minutes: float
    piece_minutes: float
    ratio_texts: tuple[str, str, str]
    cups: tuple[Cup, ...]
    steps: tuple[str, ...]
    remarks: tuple[str, ...]
    digest: str = ""

    @property
    def untrimmed_g(self) -> float:
        """Mass of the part before it is trimmed, without a core, g."""
        return self.cloth_g + self.laminate_resin_g + self.coats_g


@stage("Mix Plan", version=3)
def plan_mix(
    plies: tuple[PlyCloth, ...],
    resin: Resin,
    resin_share: float,
    settings: MixSettings,
    coupon_g: float = 0.0,
) -> MixPlan:
    """Return what to weigh and to mix for these plies.

    Parameters
    ----------
    plies : tuple of PlyCloth
        In any order; pieces of one ply are taken together.
    resin : Resin
    resin_share : float
        Share of mix in the mass of the laminate, for plies that state none of their own.
    settings : MixSettings
    coupon_g : float, g
        Mix for a plate of test pieces, taken from the cups of the plies.

    Returns
    -------
    MixPlan
        Its cups add up to its totals.

    Raises
    ------
    InputError
        If there is no cloth, a share that is none, a cup that gels before it is mixed, or a
        scale that is too coarse for the smallest cup.
    """
    pieces = _checked(plies, resin_share)
    numbers = tuple(dict.fromkeys(piece.ply for piece in pieces))
    cloth = {n: math.fsum(p.mass_g for p in pieces if p.ply == n) for n in numbers}
    resins = {n: math.fsum(p.resin_g(resin_share) for p in pieces if p.ply == n) for n in numbers}
    minutes = {n: math.fsum(_hands(p, settings) for p in pieces if p.ply == n) for n in numbers}
    check_setting("mix for coupons", coupon_g, 0.0, 1e4, " g")
    laminate_g = math.fsum(resins.values())
    with_coupons = 1.0 + coupon_g / laminate_g
    laid = [Need(f"ply {n}", n, resins[n] * with_coupons, minutes[n]) for n in numbers]
    seals, fills = _coats(pieces, settings)
    held = math.fsum(need.mass_g for need in (*seals, *laid, *fills))
    total = held * (1.0 + settings.extra_share) + settings.fixed_loss_g
    cups = _all_cups((*seals, *laid), fills, total / held, resin, settings)
    last = max(cup.number for cup in cups if cup.plies)
    laying = math.fsum(cup.hands_minutes for cup in cups[:last])
    cloth_g = math.fsum(cloth.values())
    resin_g = math.fsum(cup.resin_g for cup in cups)
    hardener_g = math.fsum(cup.hardener_g for cup in cups)
    return MixPlan(
        cloth_g=cloth_g,
        ply_numbers=numbers,
        ply_cloth_g=tuple(cloth.values()),
        ply_resin_g=tuple(resins.values()),
        ply_minutes=tuple(minutes.values()),
        laminate_resin_g=laminate_g,
        coats_g=math.fsum(need.mass_g for need in (*seals, *fills)),
        coupon_g=coupon_g,
        resin_g=resin_g,
        hardener_g=hardener_g,
        mix_g=math.fsum((resin_g, hardener_g)),
        resin_share=laminate_g / (laminate_g + cloth_g),
        laying_minutes=laying,
        square_metre_minutes=settings.square_metre_minutes,
        piece_minutes=settings.ply_minutes,
        ratio_texts=ratio_texts(cloth_g, laminate_g),
        cups=cups,
        steps=mixing_steps(resin),
        remarks=mixing_remarks(
            cups,
            resin,
            settings.scale_resolution_g,
            settings.temperature_c,
            total - held,
            laying,
        ),
    )


def _checked(plies: tuple[PlyCloth, ...], resin_share: float) -> list[PlyCloth]:
    """Return the pieces in the order of laying."""
    if not plies:
        raise InputError("mixing plan", "no ply", "at least one", "add plies to the layup")
    pieces = []
    for piece in sorted(plies, key=lambda piece: piece.ply):
        name = f"ply {piece.ply}"
        share = resin_share if piece.resin_share is None else piece.resin_share
        check_setting(f"{name}: area", piece.area_mm2, 1.0, 1e9, " mm^2")
        check_setting(
            f"{name}: covered area", piece.covered_mm2, 0.0, piece.area_mm2 * 1.5, " mm^2"
        )
        check_setting(f"{name}: areal weight", piece.areal_weight, 5.0, 3000.0, " g/m^2")
        check_setting(f"{name}: resin share", share, 0.05, 0.95, "")
        pieces.append(piece)
    return pieces


def _hands(piece: PlyCloth, settings: MixSettings) -> float:
    return settings.ply_minutes + settings.square_metre_minutes * piece.area_mm2 * 1e-6


def _coats(pieces: Sequence[PlyCloth], settings: MixSettings) -> tuple[list[Need], list[Need]]:
    """Return the needs of seal coats and of fill coats."""

    def coats(name: str, count: int, weight: float, ply: int) -> list[Need]:
        area = math.fsum(p.covered_mm2 for p in pieces if p.ply == ply) * 1e-6
        minutes = settings.square_metre_minutes * area / 2.0
        names = [name if count == 1 else f"{name} {k}" for k in range(1, count + 1)]
        return [Need(each, None, weight * area, minutes) for each in names]

    first, last = pieces[0].ply, pieces[-1].ply
    return (
        coats("seal coat", settings.seal_coats, settings.seal_coat_weight, first),
        coats("fill coat", settings.fill_coats, settings.fill_coat_weight, last),
    )


def _all_cups(
    laid: Sequence[Need],
    fills: Sequence[Need],
    growth: float,
    resin: Resin,
    settings: MixSettings,
) -> tuple[Cup, ...]:
    """Return all cups; a fill coat waits until what lies below it has gelled."""
    gel = 60.0 * time_at(resin.gel_hours, resin.cure_temperature_c, settings.temperature_c)
    cups: list[Cup] = []
    for run in (laid, *([fill] for fill in fills)):
        start = cups[-1].stir_at_minutes + cups[-1].hands_minutes + gel if cups else 0.0
        filled = fill_cups(
            [dataclasses.replace(need, mass_g=need.mass_g * growth) for need in run],
            resin,
            settings.cup_limit_g,
            settings.scale_resolution_g,
            settings.temperature_c,
            start,
        )
        cups += [
            dataclasses.replace(cup, number=len(cups) + place)
            for place, cup in enumerate(filled, start=1)
        ]
    return tuple(cups)
