"""What a cure plan says in words: the steps, and what speaks against it."""

from __future__ import annotations

from laywright.laminate.materials import Resin
from laywright.shop.curing.course import CureCourse, cure_along
from laywright.shop.curing.cure_settings import MOULD_MARGIN, CureSettings, Support
from laywright.shop.curing.profile import with_post_cure
from laywright.shop.mixing.mix_words import RULE_SPAN

__all__ = ["cure_steps", "cure_warnings", "spoken"]

_COLD = 15.0
_SLOWEST = 1.0
_FIRM = 0.5  # degC by which a part may be warmer than its glass transition for a moment


def spoken(hours: float) -> str:
    """Return a span of time as people say it.

    Examples
    --------
    >>> spoken(7.98), spoken(30.2), spoken(168.0)
    ('8.0 hours', '30 hours', '7.0 days')
    """
    if hours < 48.0:
        return f"{hours:.1f} hours" if hours < 10.0 else f"{hours:.0f} hours"
    return f"{hours / 24.0:.1f} days"


def cure_steps(
    settings: CureSettings, gel: float, trim_end: float, demould: float, done: float
) -> tuple[str, ...]:
    """Return what to do, in order.

    Parameters
    ----------
    settings : CureSettings
    gel, trim_end, demould, done : float, hours
        From the first stir: gel, too hard for a knife, off the mould, fully cured and cold.
    """
    return (
        f"Leave the part alone until it gels, about {spoken(gel)} after the first stir.",
        f"Cut the surplus with a knife between {spoken(gel)} and {spoken(trim_end)}: it is "
        "firm but not yet hard. Wear gloves, it is not cured.",
        *_post_cure_steps(settings, demould),
        f"Full strength after {spoken(done)}. Sand and machine only then, with dust mask and "
        "extraction: dust of half-cured resin sensitises the skin for good.",
    )


def _post_cure_steps(settings: CureSettings, demould: float) -> tuple[str, ...]:
    off = f"Demould after {spoken(demould)} at the earliest."
    if settings.held_c is None:
        return (off,)
    warm = (
        f"Post-cure on {settings.post_cure_support.value}: warm by at most {settings.ramp:g} degC "
        f"an hour to {settings.held_c:g} degC, hold for {settings.post_cure_hours:g} hours, "
        "cool as slowly, and take the support away only when it is cold."
    )
    return (off, warm) if settings.post_cure_support is Support.CRADLE else (warm, off)


def cure_warnings(
    resin: Resin,
    settings: CureSettings,
    softening: float,
    glass: float,
    warm: float | None,
    course: CureCourse | None,
) -> tuple[str, ...]:
    """Return what speaks against a plan.

    Parameters
    ----------
    resin : Resin
    settings : CureSettings
    softening : float, degC
        Of the mould's plastic.
    glass : float, degC
        Where the cured resin softens.
    warm : float or None, hours
        When the post-cure begins.
    course : CureCourse or None
        Degree of cure along the profile.
    """
    warnings = []
    limit = softening - MOULD_MARGIN
    if settings.temperature_c > limit:
        warnings.append(
            f"The shop is at {settings.temperature_c:g} degC, but the mould softens at "
            f"{softening:g} degC and should stay below {limit:g} degC."
        )
    warnings += _of_post_cure(resin, settings, softening, warm, course)
    if settings.temperature_c < _COLD:
        warnings.append(
            f"At {settings.temperature_c:g} degC resin is thick, the layup gets heavy and many "
            f"resins never cure fully: warm the shop above {_COLD:g} degC."
        )
    reference = resin.cure_temperature_c
    used = [t for t in (settings.temperature_c, settings.post_cure_c) if t is not None]
    furthest = max(used, key=lambda t: abs(t - reference))
    if abs(furthest - reference) > RULE_SPAN:
        warnings.append(
            f"{furthest:g} degC is far from the {reference:g} degC of the data "
            "sheet: times there are rough."
        )
    if glass < softening:
        warnings.append(
            f"The part softens near {glass:.0f} degC: keep it out of the sun and out of hot "
            "cars, dark parts above all."
        )
    warnings.append(
        "Corners full of resin get much hotter than the skin; a test piece on the same mould "
        "material tells more than any number here."
    )
    return tuple(warnings)


def _of_post_cure(
    resin: Resin,
    settings: CureSettings,
    softening: float,
    warm: float | None,
    course: CureCourse | None,
) -> list[str]:
    if settings.post_cure_c is None or warm is None:
        return []
    warnings = []
    limit = softening - MOULD_MARGIN
    if settings.post_cure_support is Support.MOULD and settings.post_cure_c > limit:
        warnings.append(
            f"A post-cure at {settings.post_cure_c:g} degC is too hot for the mould, which "
            f"softens at {softening:g} degC: take the part off and hold it in a cradle, or "
            "post-cure cooler for longer."
        )
    if settings.post_cure_c > resin.glass_transition_full_c:
        warnings.append(
            f"A post-cure above {resin.glass_transition_full_c:g} degC gains nothing with "
            "this resin and lets the part sag."
        )
    elif course is None:
        if settings.post_cure_c > resin.glass_transition_c:
            warnings.append(
                f"The part itself softens near {resin.glass_transition_c:g} degC until it is "
                "post-cured: warm it slowly and support it all over."
            )
    else:
        margin, hour = course.least_margin(warm)
        if margin < -_FIRM:
            slower = _slow_enough(resin, settings, settings.post_cure_c, warm)
            advice = (
                "post-cure cooler first"
                if slower is None
                else f"warm by {slower:g} degC an hour or less"
            )
            warnings.append(
                f"{spoken(hour)} after the first stir the oven is {-margin:.0f} degC hotter than "
                f"what the part stands by then: it sags. Support it all over and {advice}."
            )
    return warnings


def _slow_enough(resin: Resin, settings: CureSettings, hold_c: float, warm: float) -> float | None:
    """Return a slower warming along which the part stays firm, K/h."""
    ramp = settings.ramp / 2.0
    while ramp >= _SLOWEST:
        profile = with_post_cure(
            settings.temperature_c, warm, hold_c, settings.post_cure_hours, ramp
        )
        course = cure_along(resin, profile, float(profile.hours[-1]), settings.rule)
        if course.least_margin(warm)[0] >= -_FIRM:
            return ramp
        ramp /= 2.0
    return None
