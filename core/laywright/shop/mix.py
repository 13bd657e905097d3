"""The mixing plan: how much cloth, resin and hardener, in which cups, in which order.

Everything is by mass.  A cup belongs to plies, never weighs more than the limit, and its two
scale readings are whole steps of the scale.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from laywright.errors import InputError
from laywright.laminate.materials import Resin
from laywright.shop.cups import Cup, fill_cups
from laywright.stage import stage

__all__ = ["Cup", "MixPlan", "MixSettings", "PlyCloth", "plan_mix"]

_RULE_SPAN = 15.0
_COARSE_SCALE = 0.05
_LARGE_CUP = 240.0
_MIXING_MINUTES = 8.0


@dataclass(frozen=True)
class MixSettings:
    """How the mixing is to be planned.

    Attributes
    ----------
    extra_share : float
        Resin mixed beyond what the cloth holds, as a share of it.
    fixed_loss_g : float, g
        What stays in brush, roller and cups, once for the job.
    cup_limit_g : float, g
        Most mix in one cup.
    scale_resolution_g : float, g
        Smallest step of the scale.
    temperature_c : float, degC
        Of shop, resin and hardener.
    """

    extra_share: float = 0.05
    fixed_loss_g: float = 0.0
    cup_limit_g: float = 100.0
    scale_resolution_g: float = 1.0
    temperature_c: float = 21.0

    def __post_init__(self) -> None:
        _check("extra share", self.extra_share, 0.0, 2.0, "")
        _check("fixed loss", self.fixed_loss_g, 0.0, 5000.0, " g")
        _check("cup limit", self.cup_limit_g, 5.0, 5000.0, " g")
        _check("scale resolution", self.scale_resolution_g, 0.001, 100.0, " g")
        _check("shop temperature", self.temperature_c, 5.0, 45.0, " degC")
        if self.cup_limit_g < 10.0 * self.scale_resolution_g:
            raise InputError(
                "cup limit",
                f"{self.cup_limit_g:g} g on a scale that shows steps of "
                f"{self.scale_resolution_g:g} g",
                "at least ten steps of the scale",
                "use a finer scale or larger cups",
            )


def _check(where: str, number: float, low: float, high: float, unit: str) -> None:
    if not (math.isfinite(number) and low <= number <= high):
        raise InputError(
            where, f"{number:g}{unit}", f"{low:g} to {high:g}{unit}", "correct the setting"
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
        Area of dry flat cloth.
    areal_weight : float, g/m^2
        Of the dry cloth.
    resin_share : float or None
        Share of resin in the mass of this ply, where it differs from that of the job.
    """

    ply: int
    cloth: str
    area_mm2: float
    areal_weight: float
    resin_share: float | None = None

    @property
    def mass_g(self) -> float:
        """Mass of the dry cloth, g."""
        return self.area_mm2 * 1e-6 * self.areal_weight


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
    laminate_resin_g : float, g
        Mix that the laminate shall hold.
    resin_g, hardener_g, mix_g : float, g
        To be weighed, all cups together.
    resin_share : float
        Share of mix in the mass of the laminate.
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
    laminate_resin_g: float
    resin_g: float
    hardener_g: float
    mix_g: float
    resin_share: float
    ratio_texts: tuple[str, str, str]
    cups: tuple[Cup, ...]
    steps: tuple[str, ...]
    remarks: tuple[str, ...]
    digest: str = ""


@stage("Mix Plan", version=1)
def plan_mix(
    plies: tuple[PlyCloth, ...], resin: Resin, resin_share: float, settings: MixSettings
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

    Returns
    -------
    MixPlan
        Its cups add up to its totals.

    Raises
    ------
    InputError
        If there is no cloth, or a share that is none.
    """
    cloth, needs = _needs(plies, resin_share)
    held = math.fsum(needs.values())
    total = held * (1.0 + settings.extra_share) + settings.fixed_loss_g
    wanted = {number: need * total / held for number, need in needs.items()}
    filled = fill_cups(
        wanted,
        resin,
        settings.cup_limit_g,
        settings.scale_resolution_g,
        settings.temperature_c,
    )
    cloth_g = math.fsum(cloth.values())
    resin_g = math.fsum(cup.resin_g for cup in filled)
    hardener_g = math.fsum(cup.hardener_g for cup in filled)
    share = held / (held + cloth_g)
    return MixPlan(
        cloth_g=cloth_g,
        ply_numbers=tuple(cloth),
        ply_cloth_g=tuple(cloth.values()),
        ply_resin_g=tuple(needs.values()),
        laminate_resin_g=held,
        resin_g=resin_g,
        hardener_g=hardener_g,
        mix_g=math.fsum((resin_g, hardener_g)),
        resin_share=share,
        ratio_texts=(
            f"{share:.0%} resin and {1.0 - share:.0%} cloth, by mass of the laminate",
            f"{100.0 * held / cloth_g:.1f} parts of resin to 100 parts of cloth, by mass",
            f"{held:.0f} g of resin for {cloth_g:.0f} g of cloth",
        ),
        cups=filled,
        steps=_steps(filled, resin),
        remarks=_remarks(filled, resin, settings, total - held),
    )


def _needs(
    plies: tuple[PlyCloth, ...], resin_share: float
) -> tuple[dict[int, float], dict[int, float]]:
    if not plies:
        raise InputError("mixing plan", "no ply", "at least one", "add plies to the layup")
    cloth: dict[int, float] = {}
    needs: dict[int, float] = {}
    for piece in sorted(plies, key=lambda piece: piece.ply):
        name = f"ply {piece.ply}"
        _check(f"{name}: area", piece.area_mm2, 1.0, 1e9, " mm^2")
        _check(f"{name}: areal weight", piece.areal_weight, 5.0, 3000.0, " g/m^2")
        share = resin_share if piece.resin_share is None else piece.resin_share
        _check(f"{name}: resin share", share, 0.05, 0.95, "")
        cloth[piece.ply] = cloth.get(piece.ply, 0.0) + piece.mass_g
        needs[piece.ply] = needs.get(piece.ply, 0.0) + piece.mass_g * share / (1.0 - share)
    return cloth, needs


def _steps(cups: tuple[Cup, ...], resin: Resin) -> tuple[str, ...]:
    steps = [
        "Gloves, sleeves and eye protection on; windows open. Read the data sheet of the resin.",
        "Weigh the cut cloth and compare it with the plan before any resin is poured.",
        "Set out cups, sticks, brush, roller and the plies in the order of laying.",
    ]
    for cup in cups:
        plies = ", ".join(str(number) for number in cup.plies)
        minutes = math.floor(cup.use_by_minutes)
        steps.append(
            f"Cup {cup.number}, for ply {plies}: empty cup on the scale, set to zero; resin to "
            f"{cup.scale_after_resin:g} g, then hardener to {cup.scale_after_hardener:g} g. Mix it "
            f"only when its ply is next, and use it up within {minutes} minutes of the first stir."
        )
    steps.append(
        "Mixing: stir for four minutes, scraping wall and bottom; pour into a second cup and stir "
        "for another four. Spread it out early rather than late."
    )
    steps.append(
        f"Never add hardener to make it faster: {resin.hardener_ratio:g} parts to 100 parts of "
        "resin is the only right ratio. Left-overs go outdoors, spread flat, until they are hard."
    )
    return tuple(steps)


def _remarks(
    cups: tuple[Cup, ...], resin: Resin, settings: MixSettings, extra: float
) -> tuple[str, ...]:
    remarks = [f"{extra:.0f} g of the mix are meant for brush, cups and drips."]
    worst = max(cups, key=lambda cup: cup.hardener_error)
    if worst.hardener_error > _COARSE_SCALE:
        remarks.append(
            f"The scale is too coarse for cup {worst.number}: in steps of "
            f"{settings.scale_resolution_g:g} g the hardener can be off by "
            f"{worst.hardener_error:.0%}. Use a finer scale, or fewer and larger cups."
        )
    heaviest = max(cups, key=lambda cup: cup.scale_after_hardener)
    if heaviest.scale_after_hardener > resin.pot_life_mass_g:
        remarks.append(
            f"Cup {heaviest.number} holds {heaviest.scale_after_hardener:g} g, but the pot life "
            f"is known for {resin.pot_life_mass_g:g} g: a fuller cup sets sooner and runs hotter. "
            "Use smaller cups or pour it into a flat tray at once."
        )
    if heaviest.scale_after_hardener >= _LARGE_CUP:
        remarks.append(
            "A cup of this size can get hot enough to smoke, melt and burn. Move a hot cup "
            "outdoors; do not hold it."
        )
    if abs(settings.temperature_c - resin.pot_life_temperature_c) > _RULE_SPAN:
        remarks.append(
            f"{settings.temperature_c:g} degC is far from the {resin.pot_life_temperature_c:g} "
            "degC of the data sheet: times by the 10 degC rule are rough here."
        )
    if heaviest.use_by_minutes < 2.0 * _MIXING_MINUTES:
        remarks.append(
            f"Mixing alone takes {_MIXING_MINUTES:.0f} minutes of the "
            f"{heaviest.use_by_minutes:.0f} that a cup lasts: take a slower hardener or a cooler "
            "shop."
        )
    return tuple(remarks)
