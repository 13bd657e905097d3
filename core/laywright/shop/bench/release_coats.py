"""Putting release agent on a mould: coats, waits, and when the layup may start.

Numbers of coats, waits and amounts stand on the cards of the release agents; the data sheet of
the product goes first.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from laywright.errors import InputError
from laywright.laminate import supplies
from laywright.shop.bench.bench_supplies import BenchSupplies
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


_UNDER_FILM = 1  # coat of wax more on a new mould that is sprayed; common practice, no source
_BETWEEN_SPRAYS = 5.0
_TAPING = 3.0  # times as long as a coat


@dataclass(frozen=True)
class CoatingSettings:
    """How the mould is made ready.

    Attributes
    ----------
    agent : ReleaseAgent
    state : MouldState
    wait_minutes : float or None, minutes
        After each coat of wax, before it is buffed; None takes that of its card.
    dry_minutes : float or None, minutes
        After the last spray of film; None takes that of its card.
    square_metre_minutes : float, minutes
        Hands-on time for a coat on a square metre, buffing included.
    """

    agent: ReleaseAgent = ReleaseAgent.WAX
    state: MouldState = MouldState.NEW
    wait_minutes: float | None = None
    dry_minutes: float | None = None
    square_metre_minutes: float = 20.0

    def __post_init__(self) -> None:
        for where, minutes in (
            ("wait after a coat", self.wait_minutes),
            ("drying of the film", self.dry_minutes),
            ("time for a square metre", self.square_metre_minutes),
        ):
            if minutes is not None and not 0.0 <= minutes <= 1440.0:
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
    wax_g, film_g : float, g
        About what is used up.
    tape_layers : int
        Layers of tape to be laid.
    digest : str
        Of its inputs.
    """

    agent: ReleaseAgent
    steps: tuple[CoatStep, ...]
    ready_minutes: float
    wax_g: float
    film_g: float
    tape_layers: int
    digest: str = ""


@stage("Release Coats", version=3)
def plan_coats(area_mm2: float, settings: CoatingSettings, shelf: BenchSupplies) -> CoatingPlan:
    """Return the clock of the release agent for a mould.

    Parameters
    ----------
    area_mm2 : float, mm^2
        Moulded face with run-off and flange.
    settings : CoatingSettings
    shelf : BenchSupplies
        Wax, film and tape as they stand on their cards.
    """
    if not 1.0 <= area_mm2 <= 1e9:
        raise InputError(
            "mould area", f"{area_mm2:g} mm^2", "1 mm^2 to 1000 m^2", "check the mould"
        )
    square_metres = area_mm2 * 1e-6
    work = max(2.0, settings.square_metre_minutes * square_metres)
    coats, sprays, layers = _coats(settings, shelf)
    clock, steps = 0.0, []
    steps.append(
        CoatStep(
            clock,
            "Clean the mould. A test piece with the same plastic, sealer, release agent and resin "
            "must have come off first. Air the room; gloves.",
        )
    )
    clock += work
    wait = _minutes(settings.wait_minutes, shelf.wax)
    for coat in range(1, coats + 1):
        steps.append(CoatStep(clock, f"Wax, coat {coat} of {coats}: thin, the other way round."))
        clock += work + wait
        steps.append(CoatStep(clock, f"Buff coat {coat} and look along it against a lamp."))
        clock += work
    dry = _minutes(settings.dry_minutes, shelf.film)
    for spray in range(1, sprays + 1):
        how = "a mist only" if spray == 1 else "an even wet coat, no puddles"
        steps.append(CoatStep(clock, f"Film, spray {spray} of {sprays}: {how}."))
        clock += work + (dry if spray == sprays else _BETWEEN_SPRAYS)
    for _ in range(layers):
        steps.append(CoatStep(clock, "Lay the tape edge to edge, without bubbles or gaps."))
        clock += _TAPING * work + (shelf.tape.wait_minutes or 0.0)
    steps.append(CoatStep(clock, "The layup may start. Touch the mould only with clean gloves."))
    return CoatingPlan(
        settings.agent,
        tuple(steps),
        clock,
        coats * (shelf.wax.use_per_coat or 0.0) * square_metres,
        sprays * (shelf.film.use_per_coat or 0.0) * square_metres,
        layers,
    )


def _coats(settings: CoatingSettings, shelf: BenchSupplies) -> tuple[int, int, int]:
    """Return coats of wax, sprays of film and layers of tape."""
    state = settings.state
    if settings.agent is ReleaseAgent.TAPE:
        return 0, 0, _on_card(shelf.tape, state)
    if settings.agent is ReleaseAgent.WAX:
        return _on_card(shelf.wax, state), 0, 0
    more = _UNDER_FILM if state is MouldState.NEW else 0
    return _on_card(shelf.wax, state) + more, _on_card(shelf.film, state), 0


def _on_card(agent: supplies.ReleaseAgent, state: MouldState) -> int:
    coats = {
        MouldState.NEW: agent.coats_new,
        MouldState.SECOND: agent.coats_second,
        MouldState.LATER: agent.coats_later,
    }
    return round(coats[state])


def _minutes(stated: float | None, agent: supplies.ReleaseAgent) -> float:
    return (agent.wait_minutes or 0.0) if stated is None else stated
