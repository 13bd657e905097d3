"""The cure plan: when the resin gels, when to trim, when to demould, and what heat it stands."""

from __future__ import annotations

from dataclasses import dataclass

from laywright.errors import InputError
from laywright.laminate.materials import Resin
from laywright.shop.curing.course import CureCourse, cure_along, glass_transition_limit
from laywright.shop.curing.cure_settings import MOULD_MARGIN, CureSettings, Support
from laywright.shop.curing.cure_words import cure_steps, cure_warnings
from laywright.shop.curing.profile import Profile, room_profile, with_post_cure
from laywright.shop.kinetics import adiabatic_rise, laminate_heat
from laywright.shop.mixing.cups import pot_life
from laywright.stage import stage

__all__ = ["CureEvent", "CurePlan", "plan_cure"]


@dataclass(frozen=True)
class CureEvent:
    """A moment of the cure.

    Attributes
    ----------
    what : str
    hours : float, hours
        From the first stir.
    cure : float or None
        Degree of cure, where the resin's card tells how it runs.
    glass_transition_c : float or None, degC
        Where the resin softens then.
    """

    what: str
    hours: float
    cure: float | None
    glass_transition_c: float | None


@dataclass(frozen=True, eq=False)
class CurePlan:
    """Times from the first stir, along the temperature of shop and post-cure.

    Attributes
    ----------
    temperature_c : float, degC
        Of the shop.
    pot_life_minutes : float, minutes
        In the cup.
    gel_hours : float, hours
        Until the film on the mould has set.
    trim_from_hours, trim_until_hours : float, hours
        While a knife cuts the edge cleanly: from gel until it is too hard.
    demould_hours : float, hours
        Before this the part stays on the mould.
    post_cure_start, post_cure_end : float or None, hours
        From the first warming until it is cold again.
    cure_hours : float, hours
        Until full cure.
    glass_transition_c : float, degC
        Where the cured resin softens, after the post-cure if there is one.
    mould_softening_c, mould_limit_c : float, degC
        Where the mould's plastic softens, and the hottest that the mould may get: 10 degC less.
    mould_peak_c : float, degC
        Hottest that shop or oven get while the part is on the mould.
    cup_bound_c, laminate_bound_c : float, degC
        What a cup and a thick laminate would reach if no heat got out: upper bounds.
    profile : Profile
        Temperature of shop and post-cure.
    course : CureCourse or None
        Degree of cure along it; None where the resin's card has no activation energy.
    events : tuple of CureEvent
        In the order of time.
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
    post_cure_start: float | None
    post_cure_end: float | None
    cure_hours: float
    glass_transition_c: float
    mould_softening_c: float
    mould_limit_c: float
    mould_peak_c: float
    cup_bound_c: float
    laminate_bound_c: float
    profile: Profile
    course: CureCourse | None
    events: tuple[CureEvent, ...]
    steps: tuple[str, ...]
    warnings: tuple[str, ...]
    digest: str = ""

    @property
    def finish_hours(self) -> float:
        """When the part may be used or machined, hours."""
        return self.cure_hours if self.post_cure_end is None else self.post_cure_end


@stage("Cure Plan", version=2)
def plan_cure(resin: Resin, settings: CureSettings, resin_share: float) -> CurePlan:
    """Return the times of the cure and what speaks against it.

    Parameters
    ----------
    resin : Resin
    settings : CureSettings
        With the softening temperature of the mould.
    resin_share : float
        Share of resin in the mass of the laminate, for the heat that it sets free.

    Raises
    ------
    InputError
        If nothing says where the mould softens, or the rule needs an activation energy that
        the resin's card does not have.
    """
    softening = settings.mould_softening_c
    if softening is None:
        raise InputError(
            "softening temperature of the mould",
            "nothing",
            "a temperature",
            "take it from the data sheet of the plastic",
        )
    profile, warm, cold = _profile(resin, settings)
    gel, trim_end, demould, cure = (
        profile.reached(hours, resin, settings.rule)
        for hours in (resin.gel_hours, resin.trim_end_hours, resin.demould_hours, resin.cure_hours)
    )
    end = max(demould, cure, cold or 0.0)
    course = (
        None if resin.activation_energy is None else cure_along(resin, profile, end, settings.rule)
    )
    glass = _final_glass(resin, settings) if course is None else course.at(end)[1]
    on_mould = cold is not None and settings.post_cure_support is Support.MOULD
    demould = cold if on_mould and cold is not None else demould
    room = settings.temperature_c
    return CurePlan(
        temperature_c=room,
        pot_life_minutes=pot_life(resin, room),
        gel_hours=gel,
        trim_from_hours=gel,
        trim_until_hours=trim_end,
        demould_hours=demould,
        post_cure_start=warm,
        post_cure_end=cold,
        cure_hours=cure,
        glass_transition_c=glass,
        mould_softening_c=softening,
        mould_limit_c=softening - MOULD_MARGIN,
        mould_peak_c=float(profile.temperature_c.max()) if on_mould else room,
        cup_bound_c=room + adiabatic_rise(resin.heat_of_cure, resin.heat_capacity),
        laminate_bound_c=room
        + adiabatic_rise(
            *laminate_heat(resin.heat_of_cure, resin.heat_capacity, 1.0 - resin_share)
        ),
        profile=profile,
        course=course,
        events=_events(gel, trim_end, demould, cure, warm, profile, course),
        steps=cure_steps(settings, gel, trim_end, demould, max(cure, cold or 0.0)),
        warnings=cure_warnings(resin, settings, softening, glass, warm, course),
    )


def _profile(resin: Resin, settings: CureSettings) -> tuple[Profile, float | None, float | None]:
    """Return the profile, and when the post-cure begins and ends."""
    room = room_profile(settings.temperature_c)
    if settings.held_c is None:
        return room, None, None
    start = room.reached(resin.demould_hours, resin, settings.rule)
    profile = with_post_cure(
        settings.temperature_c, start, settings.held_c, settings.post_cure_hours, settings.ramp
    )
    return profile, start, float(profile.hours[-1])


def _final_glass(resin: Resin, settings: CureSettings) -> float:
    """Return where the cured resin softens when its card does not tell how the cure runs."""
    if settings.held_c is None:
        return resin.glass_transition_c
    return max(resin.glass_transition_c, glass_transition_limit(resin, settings.held_c))


def _events(
    gel: float,
    trim_end: float,
    demould: float,
    cure: float,
    warm: float | None,
    profile: Profile,
    course: CureCourse | None,
) -> tuple[CureEvent, ...]:
    moments = [
        ("Gelled: the knife may cut the edge", gel),
        ("Too hard for a knife", trim_end),
        ("May leave the mould", demould),
        ("Fully cured", cure),
    ]
    if warm is not None:
        up, hold, down = profile.hours[-3:].tolist()
        moments += [
            ("Post-cure: begin to warm", warm),
            ("Post-cure: hold", up),
            ("Post-cure: begin to cool", hold),
            ("Post-cure: cold again", down),
        ]
    found = []
    for what, hours in sorted(moments, key=lambda moment: round(moment[1], 6)):
        degree, glass = (None, None) if course is None else course.at(hours)
        found.append(CureEvent(what, hours, degree, glass))
    return tuple(found)
