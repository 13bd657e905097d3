"""A clock for the whole job: what begins when, and when all is done.

The work comes in runs.  The first step of a run waits for working hours; those after it are
bound to its start, some by a window (an edge is cut with a knife only while it is firm and
not yet hard), and a run is begun at the first moment from which all its windows fall into
working hours.
"""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass

from laywright.errors import InputError

__all__ = ["Entry", "Span", "Timeline", "WorkingDay", "clock_text", "plan_timeline"]

_DAY = 1440.0
_CLOCK = re.compile(r"([01]?\d|2[0-3]):([0-5]\d)")
_TRIALS = 96  # half hours: two days


@dataclass(frozen=True)
class Span:
    """One step of a run.

    Attributes
    ----------
    what : str
    hands_minutes : float, minutes
        That somebody is busy with it.
    wait_minutes : float, minutes
        That it then needs alone: drying, curing.
    earliest : float, minutes
        It begins no sooner after the start of its run.
    latest : float or None, minutes
        It must begin by then; None where it may wait.
    """

    what: str
    hands_minutes: float
    wait_minutes: float = 0.0
    earliest: float = 0.0
    latest: float | None = None


@dataclass(frozen=True)
class WorkingDay:
    """The hours in which work is begun and ended.

    Attributes
    ----------
    begins, ends : str
        Such as ``"08:00"``.
    """

    begins: str = "08:00"
    ends: str = "20:00"

    def __post_init__(self) -> None:
        if not self.start < self.end:
            raise InputError(
                "working day",
                f"{self.begins} to {self.ends}",
                "an end after its beginning",
                "correct the two times",
            )

    @property
    def start(self) -> float:
        """Minutes after midnight at which it begins."""
        return _minutes(self.begins)

    @property
    def end(self) -> float:
        """Minutes after midnight at which it ends."""
        return _minutes(self.ends)

    def next_start(self, minutes: float, hands: float) -> float:
        """Return the first moment from `minutes` on from which `hands` fit into a day.

        Work longer than a day begins in the morning.
        """
        day, time = divmod(minutes, _DAY)
        if time < self.start:
            return day * _DAY + self.start
        fits = time + hands <= self.end or (time == self.start and hands > self.end - self.start)
        return minutes if fits else (day + 1.0) * _DAY + self.start

    def holds(self, minutes: float, hands: float) -> bool:
        """Return whether work from `minutes` on falls into a day."""
        time = minutes % _DAY
        return self.start <= time and time + hands <= self.end


@dataclass(frozen=True)
class Entry:
    """One line of the clock.

    Attributes
    ----------
    what : str
    start_minutes : float, minutes
        From midnight before the first day.
    hands_minutes : float, minutes
    ready_minutes : float, minutes
        When it is over, waiting included, from that same midnight.
    """

    what: str
    start_minutes: float
    hands_minutes: float
    ready_minutes: float


@dataclass(frozen=True)
class Timeline:
    """The clock of a job.

    Attributes
    ----------
    entries : tuple of Entry
        In order.
    hands_minutes : float, minutes
        Of work, all together.
    finish_minutes : float, minutes
        When all is done, from midnight before the first day.
    remarks : tuple of str
        What falls into the night.
    """

    entries: tuple[Entry, ...]
    hands_minutes: float
    finish_minutes: float
    remarks: tuple[str, ...]

    @property
    def finish(self) -> str:
        """The finish as day and clock."""
        return clock_text(self.finish_minutes)


def clock_text(minutes: float) -> str:
    """Return minutes from midnight before the first day as day and clock.

    Examples
    --------
    >>> clock_text(1440.0 + 545.2)
    'day 2, 09:05'
    """
    whole = round(minutes)
    day, time = divmod(whole, round(_DAY))
    return f"day {day + 1}, {time // 60:02d}:{time % 60:02d}"


def plan_timeline(runs: Sequence[Sequence[Span]], day: WorkingDay) -> Timeline:
    """Return the clock of runs of work, one after the other.

    Parameters
    ----------
    runs : sequence of sequence of Span
        The first step of each is its head.
    day : WorkingDay
    """
    clock = day.start
    entries: list[Entry] = []
    remarks: list[str] = []
    for run in runs:
        if not run:
            continue
        laid, missed = _best_run(run, clock, day)
        entries += laid
        remarks += missed
        clock = max(entry.ready_minutes for entry in laid)
    return Timeline(
        tuple(entries),
        math.fsum(entry.hands_minutes for entry in entries),
        clock,
        tuple(remarks),
    )


def _best_run(run: Sequence[Span], clock: float, day: WorkingDay) -> tuple[list[Entry], list[str]]:
    """Lay a run from the first start from which nothing is missed, or from the first at all."""
    first = day.next_start(clock, run[0].hands_minutes)
    attempt = first
    for _ in range(_TRIALS):
        laid, missed = _laid(run, attempt, day)
        if not missed:
            return laid, missed
        attempt = day.next_start(attempt + 30.0, run[0].hands_minutes)
    return _laid(run, first, day)


def _laid(run: Sequence[Span], start: float, day: WorkingDay) -> tuple[list[Entry], list[str]]:
    entries: list[Entry] = []
    missed = []
    clock = start
    for place, span in enumerate(run):
        begin = max(clock, start + span.earliest)
        if place and span.hands_minutes > 0.0:
            awake = day.next_start(begin, span.hands_minutes)
            if span.latest is None or awake <= start + span.latest:
                begin = awake
            elif not day.holds(begin, span.hands_minutes):
                missed.append(
                    f"{span.what}: this falls between {clock_text(begin)} and "
                    f"{clock_text(start + span.latest)}, outside the working day."
                )
        clock = begin + span.hands_minutes + span.wait_minutes
        entries.append(Entry(span.what, begin, span.hands_minutes, clock))
    return entries, missed


def _minutes(text: str) -> float:
    found = _CLOCK.fullmatch(text.strip())
    if found is None:
        raise InputError(
            "working day", f"'{text}'", "a time such as 08:00", "write hours and minutes"
        )
    return 60.0 * int(found[1]) + int(found[2])
