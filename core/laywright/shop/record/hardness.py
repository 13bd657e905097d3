"""Hardness of the cured part: a sign of how far the cure has come, and of nothing else.

Usual ranges are common practice from memory.  No modulus and no strength follows from a
hardness.
"""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum

from laywright.shop.coupons.statistics import summarise

__all__ = ["HardnessScale", "hardness_remarks"]

_CURED, _PERHAPS = 0.9, 0.8


class HardnessScale(Enum):
    """Gauge that the hardness was read with."""

    SHORE_D = "Shore D"
    BARCOL = "Barcol 934"

    @property
    def usual(self) -> tuple[float, float]:
        """Between which cured laminates of laminating epoxy usually are.

        Examples
        --------
        >>> HardnessScale.SHORE_D.usual
        (75.0, 88.0)
        """
        return (75.0, 88.0) if self is HardnessScale.SHORE_D else (35.0, 55.0)


def hardness_remarks(
    values: Sequence[float], scale: HardnessScale, full: float | None
) -> tuple[str, ...]:
    """Return what a hardness says on the cure.

    Parameters
    ----------
    values : sequence of float
        On the scale's own steps; none says nothing.
    scale : HardnessScale
    full : float or None
        Of the fully cured resin by its maker; None takes the lower end of the usual range.
    """
    if not values:
        return ()
    mean = summarise(values).mean
    if full is None:
        low, high = scale.usual
        if mean >= low:
            return ()
        return (
            f"{scale.value} {mean:.0f} is below the usual {low:.0f} to {high:.0f}: perhaps not "
            "cured through; ask the maker of the resin for the value of a full cure.",
        )
    if mean >= _CURED * full:
        return ()
    verdict = "perhaps not cured through" if mean >= _PERHAPS * full else "not cured through"
    return (
        f"{scale.value} {mean:.0f} is {mean / full:.0%} of the {full:.0f} that the resin's maker "
        f"states: {verdict}; give it time or warmth before it is loaded, sanded or sawn.",
    )
