"""What a weigh-in says in words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

__all__ = ["BAND", "ClothWeight", "Verdict", "card_remarks", "mass_remarks", "void_remarks"]

BAND = 0.09
"""Share by which a part may be heavier or lighter than planned: good work by hand."""

_CARD_BAND = 0.03
_VOIDS = 0.05
_SHARE_SLACK = 0.02
_UNSEEN = 0.05  # of the mix that may get lost without being weighed


class Verdict(Enum):
    """How the mass of the part compares with the plan."""

    GOOD = "within the band"
    HEAVY = "too heavy"
    LIGHT = "too light"


@dataclass(frozen=True)
class ClothWeight:
    """Areal weight of a cloth as weighed.

    Attributes
    ----------
    cloth : str
    written, weighed : float, g/m^2
        On its card, and from the scale.
    """

    cloth: str
    written: float
    weighed: float

    @property
    def is_off(self) -> bool:
        """Whether its card should be corrected."""
        return abs(self.weighed / self.written - 1.0) > _CARD_BAND


def mass_remarks(
    planned: float, part: float, wanted: float, got: float, unseen: float | None, mix: float
) -> list[str]:
    """Return what the masses say.

    Parameters
    ----------
    planned, part : float, g
        Of the untrimmed part.
    wanted, got : float
        Share of resin in the laminate, planned and made.
    unseen : float or None, g
        Mix that is neither in the part nor among the left-overs.
    mix : float, g
        All mix.
    """
    remarks = []
    off = part / planned - 1.0
    if abs(off) > BAND:
        remarks.append(
            f"The part is {abs(off):.0%} {'heavier' if off > 0.0 else 'lighter'} than planned; "
            f"within {BAND:.0%} is good work by hand."
        )
    if abs(got - wanted) > _SHARE_SLACK:
        remarks.append(
            f"It holds {got:.0%} resin where {wanted:.0%} was planned: plan the next one with "
            f"{got:.0%}, or change how the surplus is taken off."
        )
    if unseen is not None and unseen > _UNSEEN * mix:
        remarks.append(
            f"{unseen:.0f} g of the mix are neither in the part nor among the left-overs: look "
            "for drips, gloves and rags, or weigh again."
        )
    return remarks


def void_remarks(void: float | None) -> list[str]:
    """Return what the share of air says."""
    if void is None or abs(void) <= _VOIDS:
        return []
    if void < 0.0:
        return [
            "The thickness is less than cloth and resin without any air would give: a weighing, "
            "a thickness or a density is wrong."
        ]
    return [
        f"Thickness and mass differ by {void:.0%} of air: more working in with the roller, or a "
        "bag, or the gauge sat on a lap."
    ]


def card_remarks(cloths: Sequence[ClothWeight]) -> list[str]:
    """Return which cards should be corrected."""
    return [
        f"{cloth.cloth} weighs {cloth.weighed:.0f} g/m^2 where its card says "
        f"{cloth.written:.0f}: correct the card."
        for cloth in cloths
        if cloth.is_off
    ]
