"""Where plies of one reinforcement end, one after the other, and how thick the laminate is there.

Plies of the same extent are one reinforcement.  Each further one ends some way off the one before
it, so that the thickness does not drop at one line: as usual 20 times its own thickness, and at
least 6 mm; common practice, no source.  Beyond the end of a ply its thickness runs out over the
same way, in resin and in what lies over it: a slope of 1 in 20 or gentler.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.errors import InputError
from laywright.laminate.extents import Extent, Measure, extent_text
from laywright.laminate.laminate import Laminate
from laywright.laminate.plies import DropOff

__all__ = [
    "Buildup",
    "LocalPly",
    "buildup_of",
    "drop_off_words",
    "drop_offs",
    "local_plies",
]

_SLOPE = 20.0
_LEAST = 6.0


@dataclass(frozen=True)
class LocalPly:
    """A ply that covers a part of the face.

    Attributes
    ----------
    ply : int
        Its number.
    extent : Extent
    setback : float, mm
        How far inside its extent it ends; negative outside.
    thickness : float, mm
    ramp : float, mm
        Over which its thickness runs out beyond its end.
    """

    ply: int
    extent: Extent
    setback: float
    thickness: float
    ramp: float

    def depth(self, along: Measure) -> FloatArray:
        """Return how far every place lies within the end of this ply, mm; negative outside."""
        return self.extent.depth(along) - self.setback

    def check(self, depth: FloatArray) -> None:
        """Refuse a ply that covers nothing.

        Raises
        ------
        InputError
            If no place lies within its end.
        """
        if (depth > 0.0).any():
            return
        further = self.setback > 0.0
        inwards = f", {self.setback:.3g} mm further in" if further else ""
        raise InputError(
            f"ply {self.ply}, {extent_text(self.extent)}",
            f"an end that lies nowhere on the face{inwards}",
            "a part of the face that it covers",
            "widen its extent or shorten the drop-off"
            if further
            else "widen its extent or move it onto the face",
        )

    def laid(self, depth: FloatArray) -> FloatArray:
        """Return its thickness at every place, mm: in full within its end, and running out."""
        share = np.clip(1.0 + np.minimum(depth, 0.0) / self.ramp, 0.0, 1.0)
        return floats(self.thickness * share, -1)


@dataclass(frozen=True)
class Buildup:
    """How thick a laminate is from place to place.

    Attributes
    ----------
    throughout : float, mm
        Of the plies that cover the whole face, and the core.
    local : tuple of LocalPly
    """

    throughout: float
    local: tuple[LocalPly, ...]

    def extra(self, along: Measure) -> FloatArray:
        """Return what local plies add at every place: (n,) float, mm.

        Raises
        ------
        InputError
            If a ply covers no place.
        """
        total = []
        for ply in self.local:
            depth = ply.depth(along)
            ply.check(depth)
            total.append(ply.laid(depth))
        return floats(np.sum(total, axis=0), -1)


def drop_offs(laminate: Laminate) -> tuple[float, ...]:
    """Return by how much each ply would end off one of the same extent before it, mm."""
    asked = laminate.layup.drop_off
    return tuple(
        max(_LEAST, _SLOPE * thickness) if asked is None else asked
        for thickness in laminate.ply_thicknesses.tolist()
    )


def local_plies(laminate: Laminate) -> tuple[LocalPly, ...]:
    """Return the plies that cover a part of the face, in the order in which they are laid."""
    layup = laminate.layup
    sign = 1.0 if layup.drop_way is DropOff.IN else -1.0
    ends: dict[Extent, float] = {}
    found = []
    for number, drop in enumerate(drop_offs(laminate), 1):
        extent = layup.plies[number - 1].extent
        if extent is None:
            continue
        ends[extent] = ends[extent] + sign * drop if extent in ends else 0.0
        thickness = float(laminate.ply_thicknesses[number - 1])
        ramp = max(drop, _SLOPE * thickness)
        found.append(LocalPly(number, extent, ends[extent], thickness, ramp))
    return tuple(found)


def buildup_of(laminate: Laminate) -> float | Buildup:
    """Return the thickness of a laminate, mm, or how it varies where there are local plies."""
    found = local_plies(laminate)
    return Buildup(laminate.thickness, found) if found else laminate.thickness


def drop_off_words(laminate: Laminate) -> tuple[str, ...]:
    """Return where local plies end, in plain words, one line for each reinforcement."""
    found = local_plies(laminate)
    layup = laminate.layup
    lines = []
    for extent in dict.fromkeys(ply.extent for ply in found):
        own = [ply for ply in found if ply.extent == extent]
        names = ", ".join(layup.ply_name(ply.ply) for ply in own)
        total = sum(ply.thickness for ply in own)
        ends = ""
        if len(own) > 1:
            steps = ", ".join(f"{abs(ply.setback):.3g}" for ply in own)
            ends = f", they end {steps} mm {layup.drop_way.value} than that"
        lines.append(
            f"{names}: {extent_text(extent)}{ends}; up to {total:.3g} mm more than elsewhere."
        )
    return tuple(lines)
