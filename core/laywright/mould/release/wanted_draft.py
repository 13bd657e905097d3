"""How much draft is wanted, by the surface that the mould will have.

A smooth, sealed mould lets go at a small draft; every ridge across the pull is a small
undercut of its own and asks for more.  All numbers are common practice, no source.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from laywright.errors import LimitError
from laywright.wording import three_figures

__all__ = ["LAYER_RIDGE", "MouldFinish", "WantedDraft", "check_wanted_draft", "wanted_draft"]

LAYER_RIDGE = 0.05
"""Depth of the ridges between printed layers that are not sanded, mm (common practice)."""

_SMOOTH = math.radians(2.0)
_PER_DEPTH = math.radians(1.5) / 0.025
_DEEPEST = 0.5


class MouldFinish(Enum):
    """Surface of the mould as the part meets it."""

    SMOOTH = "smooth, sealed"
    LAYERED = "layer lines across the pull"
    TEXTURED = "textured"


@dataclass(frozen=True)
class WantedDraft:
    """A wanted draft and why.

    Attributes
    ----------
    angle : float, radians
        The draft.
    reason : str
        Why, as a part of a sentence.
    """

    angle: float
    reason: str


def check_wanted_draft(angle: float) -> None:
    """Refuse a wanted draft, radians, that is no angle from 0 to less than 90 degrees.

    Raises
    ------
    LimitError
    """
    if not 0.0 <= angle < math.pi / 2:
        raise LimitError(
            "wanted draft",
            f"{three_figures(math.degrees(angle))} deg",
            "0 to 90 deg",
            "set an angle such as 2 deg",
        )


def wanted_draft(finish: MouldFinish, depth: float | None = None) -> WantedDraft:
    """Return the draft that a surface asks for.

    Parameters
    ----------
    finish : MouldFinish
        The mould's surface.
    depth : float or None, mm
        Depth of ridges or texture; None takes `LAYER_RIDGE`.  A smooth surface has none.

    Returns
    -------
    WantedDraft
        2 degrees for a smooth, sealed surface (1 at least, 2 to 3 preferred), and 1.5 degrees
        more for each 0.025 mm of depth (1 to 1.5 are usual); common practice, no source.

    Raises
    ------
    LimitError
        If the depth is not between 0 and 0.5 mm.

    Examples
    --------
    >>> round(math.degrees(wanted_draft(MouldFinish.LAYERED).angle), 3)
    5.0
    """
    if finish is MouldFinish.SMOOTH:
        return WantedDraft(
            _SMOOTH,
            "a smooth, sealed mould lets go from 1 deg on, and 2 to 3 deg are preferred "
            "(common practice)",
        )
    depth = LAYER_RIDGE if depth is None else depth
    if not 0.0 <= depth <= _DEEPEST:
        raise LimitError(
            "depth of the texture",
            f"{three_figures(depth)} mm",
            f"0 to {three_figures(_DEEPEST)} mm",
            "measure it, or smooth and seal the mould",
        )
    what = (
        f"layer lines {three_figures(depth)} mm deep run across the pull and are neither "
        "sanded nor sealed"
        if finish is MouldFinish.LAYERED
        else f"the texture is {three_figures(depth)} mm deep"
    )
    return WantedDraft(
        _SMOOTH + _PER_DEPTH * depth,
        f"{what}, which asks for 1.5 deg more for each 0.025 mm (common practice)",
    )
