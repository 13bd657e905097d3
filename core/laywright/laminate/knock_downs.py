"""Knock-downs: what is left of a coupon's strength in a part that was laid up by hand.

A coupon is small, flat, dry and young; a part has waves in its yarns, thin and thick places,
takes up water and grows old.  The shares below are common practice with no source, meant to be
changed by whoever knows better; that for voids is published.
"""

from __future__ import annotations

from dataclasses import dataclass

from laywright.errors import InputError
from laywright.laminate.lamina import Strengths
from laywright.laminate.plies import Process

__all__ = ["KnockDowns", "knocked_down", "usual_knock_downs", "void_factor"]

_PER_VOID = 0.07 / 0.01
_LEAST_LEFT = 0.3


@dataclass(frozen=True)
class KnockDowns:
    """Shares of the card's strengths that are counted on; 1 counts on all of it.

    Attributes
    ----------
    tension, compression, shear : float
        Of a ply.
    core : float
        Of a core, and of the resistance of a face to wrinkling.
    """

    tension: float = 1.0
    compression: float = 1.0
    shear: float = 1.0
    core: float = 1.0

    def __post_init__(self) -> None:
        for name in ("tension", "compression", "shear", "core"):
            share = getattr(self, name)
            if not 0.05 <= share <= 1.0:
                raise InputError(
                    f"knock-down in {name}",
                    f"{share:g}",
                    "a share from 0.05 to 1",
                    "give the share of the strength that is left",
                )


_USUAL = {
    Process.HAND: KnockDowns(0.8, 0.7, 0.75, 0.75),
    Process.BAGGED: KnockDowns(0.85, 0.75, 0.8, 0.8),
    Process.INFUSED: KnockDowns(0.85, 0.8, 0.8, 0.8),
}


def usual_knock_downs(process: Process) -> KnockDowns:
    """Return what is usually counted on after a process; common practice, no source.

    Examples
    --------
    >>> usual_knock_downs(Process.HAND).compression
    0.7
    """
    return _USUAL[process]


def void_factor(void_share: float) -> float:
    """Return the share of the strength in shear that voids leave.

    7 % are lost for each percent of voids (Judd and Wright 1978, up to 4 % of voids; from
    memory), but no less than 0.3 is left.
    """
    return max(_LEAST_LEFT, 1.0 - _PER_VOID * void_share)


def knocked_down(
    strengths: Strengths, knock_downs: KnockDowns, void_share: float = 0.0
) -> Strengths:
    """Return the strengths that are counted on in a part."""
    return Strengths(
        strengths.tension_1 * knock_downs.tension,
        strengths.compression_1 * knock_downs.compression,
        strengths.tension_2 * knock_downs.tension,
        strengths.compression_2 * knock_downs.compression,
        strengths.shear * knock_downs.shear * void_factor(void_share),
    )
