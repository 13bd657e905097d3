"""Putting release agent on a mould: coats, waits, and when the layup may start.

Numbers of coats and waits are common practice, no source; the data sheet of the product goes
first.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from laywright.errors import InputError
from laywright.stage import stage

__all__ = ["CoatStep", "CoatingPlan", "CoatingSettings", "MouldState", "ReleaseAgent", "plan_coats"]


class ReleaseAgent(Enum):
    """What keeps the part from sticking."""

    WAX = "wax"
    WAX_AND_FILM = "wax and film"
    TAPE = "release tape"


class MouldState(Enum):
    """How often the mould has been used."""

    NEW = "new or refinished"
    SECOND = "before the second part"
    LATER = "before a later part"


_WAX_COATS = {
    ReleaseAgent.WAX: {MouldState.NEW: 4, MouldState.SECOND: 2, MouldState.LATER: 1},
    ReleaseAgent.WAX_AND_FILM: {MouldState.NEW: 5, MouldState.SECOND: 2, MouldState.LATER: 1},
    ReleaseAgent.TAPE: {MouldState.NEW: 0, MouldState.SECOND: 0, MouldState.LATER: 0},
}
_WAX_PER_COAT = 12.0
_FILM_SPRAYS = 3
_FILM_PER_SPRAY = 60.0


@dataclass(frozen=True)
class CoatingSettings:
    """How the mould is made ready.

    Attributes
    ----------
    agent : ReleaseAgent
    state : MouldState
    wait_minutes : float, minutes
        After each coat of wax, before it is buffed.
    dry_minutes : float, minutes
        After the last spray of film.
    square_metre_minutes : float, minutes
        Hands-on time for a coat on a square metre, buffing included.
    """

    agent: ReleaseAgent = ReleaseAgent.WAX
    state: MouldState = MouldState.NEW
    wait_minutes: float = 30.0
    dry_minutes: float = 30.0
    square_metre_minutes: float = 20.0

    def __post_init__(self) -> None:
        for where, minutes in (
            ("wait after a coat", self.wait_minutes),
            ("drying of the film", self.dry_minutes),
            ("time for a square metre", self.square_metre_minutes),
        ):
            if not 0.0 <= minutes <= 1440.0:
                raise InputError(
                    where, f"{minutes:g} minutes", "0 to 1440 minutes", "correct the setting"
                )


@dataclass(frozen=True)
class CoatStep:
    """One step.

    Attributes
    ----------
    start_minutes : float, minutes
        From the start.
    what : str
    """

    start_minutes: float
    what: str


@dataclass(frozen=True)
class CoatingPlan:
    """The clock of the release agent.

    Attributes
    ----------
    agent : ReleaseAgent
    steps : tuple of CoatStep
    ready_minutes : float, minutes
        From the start until the layup may begin.
    wax_g, film_g, tape_mm2 : float, g, g, mm^2
        About what is used up.
    digest : str
        Of its inputs.
    """

    agent: ReleaseAgent
    steps: tuple[CoatStep, ...]
    ready_minutes: float
    wax_g: float
    film_g: float
    tape_mm2: float
    digest: str = ""


@stage("Release Coats", version=2)
def plan_coats(area_mm2: float, settings: CoatingSettings) -> CoatingPlan:
    """Return the clock of the release agent for a mould.

    Parameters
    ----------
    area_mm2 : float, mm^2
        Moulded face with run-off and flange.
    settings : CoatingSettings
    """
    if not 1.0 <= area_mm2 <= 1e9:
        raise InputError(
            "mould area", f"{area_mm2:g} mm^2", "1 mm^2 to 1000 m^2", "check the mould"
        )
    square_metres = area_mm2 * 1e-6
    work = max(2.0, settings.square_metre_minutes * square_metres)
    coats = _WAX_COATS[settings.agent][settings.state]
    clock, steps = 0.0, []
    steps.append(
        CoatStep(
            clock,
            "Clean the mould. A test piece with the same plastic, sealer, release agent and resin "
            "must have come off first. Air the room; gloves.",
        )
    )
    clock += work
    for coat in range(1, coats + 1):
        steps.append(CoatStep(clock, f"Wax, coat {coat} of {coats}: thin, the other way round."))
        clock += work + settings.wait_minutes
        steps.append(CoatStep(clock, f"Buff coat {coat} and look along it against a lamp."))
        clock += work
    film = settings.agent is ReleaseAgent.WAX_AND_FILM
    if film:
        for spray in range(1, _FILM_SPRAYS + 1):
            how = "a mist only" if spray == 1 else "an even wet coat, no puddles"
            steps.append(CoatStep(clock, f"Film, spray {spray} of {_FILM_SPRAYS}: {how}."))
            clock += work + (settings.dry_minutes if spray == _FILM_SPRAYS else 5.0)
    tape = settings.agent is ReleaseAgent.TAPE
    if tape:
        steps.append(CoatStep(clock, "Lay the tape edge to edge, without bubbles or gaps."))
        clock += 3.0 * work
    steps.append(CoatStep(clock, "The layup may start. Touch the mould only with clean gloves."))
    return CoatingPlan(
        settings.agent,
        tuple(steps),
        clock,
        coats * _WAX_PER_COAT * square_metres,
        (_FILM_SPRAYS * _FILM_PER_SPRAY * square_metres) if film else 0.0,
        1.15 * area_mm2 if tape else 0.0,
    )
