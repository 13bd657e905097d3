"""The cure plan: when the resin gels, when to trim, when to demould, and what heat it stands."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from laywright.errors import InputError
from laywright.laminate.materials import Resin
from laywright.shop.cups import pot_life
from laywright.shop.kinetics import time_at
from laywright.stage import stage

__all__ = ["CurePlan", "CureSettings", "Support", "plan_cure"]

_MARGIN = 10.0
_RULE_SPAN = 15.0
_COLD = 15.0
_POST_CURE_GAIN = 15.0
_RAMP = 10.0


class Support(Enum):
    """What holds the part during a post-cure."""

    MOULD = "the mould"
    CRADLE = "a cradle"


@dataclass(frozen=True)
class CureSettings:
    """How the part is cured.

    Attributes
    ----------
    temperature_c : float, degC
        Of the shop while the part stands.
    mould_softening_c : float, degC
        Where the mould begins to give way under load (heat deflection at 0.45 MPa, ISO 75).
    post_cure_c : float or None, degC
        Temperature of a post-cure; None for none.
    post_cure_hours : float, hours
        Its length at that temperature.
    post_cure_support : Support
        What holds the part meanwhile.
    """

    temperature_c: float = 21.0
    mould_softening_c: float = 52.0
    post_cure_c: float | None = None
    post_cure_hours: float = 8.0
    post_cure_support: Support = Support.CRADLE

    def __post_init__(self) -> None:
        bounds = (
            ("shop temperature", self.temperature_c, 5.0, 45.0, "degC"),
            ("softening temperature of the mould", self.mould_softening_c, 35.0, 300.0, "degC"),
            ("post-cure temperature", self.post_cure_c, 30.0, 150.0, "degC"),
            ("length of the post-cure", self.post_cure_hours, 0.0, 100.0, "hours"),
        )
        for where, number, low, high, unit in bounds:
            if number is not None and not (math.isfinite(number) and low <= number <= high):
                raise InputError(
                    where, f"{number:g} {unit}", f"{low:g} to {high:g} {unit}", "correct it"
                )


@dataclass(frozen=True)
class CurePlan:
    """Times from the first stir, at the temperature of the shop.

    Attributes
    ----------
    temperature_c : float, degC
        For which the times hold.
    pot_life_minutes : float, minutes
        In the cup.
    gel_hours : float, hours
        Until the film on the mould has set.
    trim_from_hours, trim_until_hours : float, hours
        While a knife cuts the edge cleanly: from gel until it is too hard.
    demould_hours : float, hours
        Before this the part stays on the mould.
    cure_hours : float, hours
        Until full cure.
    glass_transition_c : float, degC
        Where the cured resin softens, after the post-cure if there is one.
    mould_limit_c : float, degC
        Hottest that the mould may get: 10 degC below its softening.
    steps : tuple of str
        What to do, in order.
    warnings : tuple of str
        What speaks against the plan.
    digest : str
        Of its inputs.
    """

    temperature_c: float
    pot_life_minutes: float
    gel_hours: float
    trim_from_hours: float
    trim_until_hours: float
    demould_hours: float
    cure_hours: float
    glass_transition_c: float
    mould_limit_c: float
    steps: tuple[str, ...]
    warnings: tuple[str, ...]
    digest: str = ""


@stage("Cure Plan", version=1)
def plan_cure(resin: Resin, settings: CureSettings) -> CurePlan:
    """Return the times of the cure and what speaks against it.

    All times follow from the resin's card by the rule that 10 degC more halve them.

    Parameters
    ----------
    resin : Resin
    settings : CureSettings
    """
    temperature = settings.temperature_c
    gel, trim_end, demould, cure = (
        time_at(hours, resin.cure_temperature_c, temperature)
        for hours in (
            resin.gel_hours,
            resin.trim_end_hours,
            resin.demould_hours,
            resin.cure_hours,
        )
    )
    softening = resin.glass_transition_c
    if settings.post_cure_c is not None and settings.post_cure_hours > 0.0:
        reached = min(resin.glass_transition_full_c, settings.post_cure_c + _POST_CURE_GAIN)
        softening = max(softening, reached)
    plan = CurePlan(
        temperature_c=temperature,
        pot_life_minutes=pot_life(resin, temperature),
        gel_hours=gel,
        trim_from_hours=gel,
        trim_until_hours=trim_end,
        demould_hours=demould,
        cure_hours=cure,
        glass_transition_c=softening,
        mould_limit_c=settings.mould_softening_c - _MARGIN,
        steps=(
            f"Leave the part alone until it gels, about {_spoken(gel)} after the first stir.",
            f"Cut the surplus with a knife between {_spoken(gel)} and {_spoken(trim_end)}: it is "
            "firm but not yet hard. Wear gloves, it is not cured.",
            f"Demould after {_spoken(demould)} at the earliest.",
            *_post_cure_steps(settings),
            f"Full strength after {_spoken(cure)} at {temperature:g} degC. Sand and machine only "
            "then, with dust mask and extraction: dust of half-cured resin sensitises the skin "
            "for good.",
        ),
        warnings=_warnings(resin, settings, softening),
    )
    return plan


def _spoken(hours: float) -> str:
    if hours < 48.0:
        return f"{hours:.1f} hours" if hours < 10.0 else f"{hours:.0f} hours"
    return f"{hours / 24.0:.1f} days"


def _post_cure_steps(settings: CureSettings) -> tuple[str, ...]:
    if settings.post_cure_c is None:
        return ()
    return (
        f"Post-cure on {settings.post_cure_support.value}: warm by at most {_RAMP:.0f} degC an "
        f"hour to {settings.post_cure_c:g} degC, hold for {settings.post_cure_hours:g} hours, "
        "cool as slowly, and take the support away only when it is cold.",
    )


def _warnings(resin: Resin, settings: CureSettings, softening: float) -> tuple[str, ...]:
    warnings = []
    limit = settings.mould_softening_c - _MARGIN
    if settings.temperature_c > limit:
        warnings.append(
            f"The shop is at {settings.temperature_c:g} degC, but the mould softens at "
            f"{settings.mould_softening_c:g} degC and should stay below {limit:g} degC."
        )
    if settings.post_cure_c is not None:
        if settings.post_cure_support is Support.MOULD and settings.post_cure_c > limit:
            warnings.append(
                f"A post-cure at {settings.post_cure_c:g} degC is too hot for the mould, which "
                f"softens at {settings.mould_softening_c:g} degC: take the part off and hold it "
                "in a cradle, or post-cure cooler for longer."
            )
        if settings.post_cure_c > resin.glass_transition_full_c:
            warnings.append(
                f"A post-cure above {resin.glass_transition_full_c:g} degC gains nothing with "
                "this resin and lets the part sag."
            )
        elif settings.post_cure_c > resin.glass_transition_c:
            warnings.append(
                f"The part itself softens near {resin.glass_transition_c:g} degC until it is "
                "post-cured: warm it slowly and support it all over."
            )
    if settings.temperature_c < _COLD:
        warnings.append(
            f"At {settings.temperature_c:g} degC resin is thick, the layup gets heavy and many "
            f"resins never cure fully: warm the shop above {_COLD:g} degC."
        )
    if abs(settings.temperature_c - resin.cure_temperature_c) > _RULE_SPAN:
        warnings.append(
            f"{settings.temperature_c:g} degC is far from the {resin.cure_temperature_c:g} degC "
            "of the data sheet: times by the 10 degC rule are rough here."
        )
    if softening < settings.mould_softening_c:
        warnings.append(
            f"The part softens near {softening:g} degC: keep it out of the sun and out of hot "
            "cars, dark parts above all."
        )
    warnings.append(
        "Resin that collects in corners gets much hotter than the skin: brush it out before it "
        "gels. A test piece on the same mould material tells more than any number here."
    )
    return tuple(warnings)
