"""What accepted records teach the next plan: resin share, losses, pace.

Nothing is taken over by itself.  A lesson says what the plan uses now, what the records say and
how many there are; a person takes it or leaves it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from laywright.shop.coupons.statistics import Summary, summarise
from laywright.shop.mixing.mix_settings import MixSettings
from laywright.shop.record.record import Record

__all__ = ["Learnt", "Lesson", "learn"]

_SAME = 0.02
_LEAST_SHARE, _MOST_SHARE = 0.05, 0.95


@dataclass(frozen=True)
class Lesson:
    """What the records say on one setting.

    Attributes
    ----------
    what : str
        The setting in words.
    unit : str
    present, proposed : float
        What the plan uses, and what the records say.
    records : Summary
        Number of records, their mean and scatter, in `unit`.
    """

    what: str
    unit: str
    present: float
    proposed: float
    records: Summary

    @property
    def differs(self) -> bool:
        """Whether the proposal is worth taking."""
        scale = max(abs(self.present), abs(self.proposed))
        return abs(self.proposed - self.present) > _SAME * scale

    def __str__(self) -> str:
        count = self.records.count
        spread = f" +- {self.records.deviation:.2g}" if count > 1 else ""
        return (
            f"{self.what}: {self.proposed:.3g}{spread} {self.unit} from {count} "
            f"record{'s' if count > 1 else ''}, the plan has {self.present:.3g} {self.unit}"
        )


@dataclass(frozen=True)
class Learnt:
    """What the records say on all settings; None where they say nothing.

    Attributes
    ----------
    resin_share : Lesson or None
        Percent of the laminate's mass.
    extra_share : Lesson or None
        Percent of the mix that cloth and coats hold.
    square_metre_minutes, ply_minutes : Lesson or None
        Minutes.
    """

    resin_share: Lesson | None
    extra_share: Lesson | None
    square_metre_minutes: Lesson | None
    ply_minutes: Lesson | None

    @property
    def lessons(self) -> tuple[Lesson, ...]:
        """Those that there are and that differ from the plan."""
        every = (self.resin_share, self.extra_share, self.square_metre_minutes, self.ply_minutes)
        return tuple(lesson for lesson in every if lesson is not None and lesson.differs)


def learn(records: Sequence[Record], resin_share: float, settings: MixSettings) -> Learnt:
    """Return what accepted records say.

    Parameters
    ----------
    records : sequence of Record
        Of parts that were accepted, all made with the same process and like cloth.
    resin_share : float
        Of the present plan.
    settings : MixSettings
        Of the present plan.
    """
    if not records:
        return Learnt(None, None, None, None)
    shares = summarise([100.0 * record.resin_share for record in records])
    extras = summarise(
        [
            100.0
            * max(record.lost_g - settings.fixed_loss_g, 0.0)
            / (record.lost_g / record.lost_share)
            if record.lost_share > 0.0
            else 0.0
            for record in records
        ]
    )
    return Learnt(
        Lesson(
            "resin share",
            "%",
            100.0 * resin_share,
            min(max(shares.mean, 100.0 * _LEAST_SHARE), 100.0 * _MOST_SHARE),
            shares,
        ),
        Lesson("extra for losses", "%", 100.0 * settings.extra_share, extras.mean, extras),
        _pace(
            "laying a square metre",
            settings.square_metre_minutes,
            [record.square_metre_minutes for record in records],
        ),
        _pace(
            "handling a piece", settings.ply_minutes, [record.piece_minutes for record in records]
        ),
    )


def _pace(what: str, present: float, minutes: Sequence[float | None]) -> Lesson | None:
    known = [number for number in minutes if number is not None]
    if not known:
        return None
    found = summarise(known)
    return Lesson(what, "min", present, found.mean, found)
