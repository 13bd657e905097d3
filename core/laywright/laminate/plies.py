"""Plies and layups: what is laid, in which order, at which angle, with how much resin.

Ply 1 touches the mould; a core lies between two plies and is not counted among them.  An angle
runs from the layup's datum arrow to the warp (for unidirectional cloth to the fibres), positive
counter-clockwise seen from the side away from the mould.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from enum import Enum

from laywright.errors import InputError
from laywright.laminate.card_files import Card
from laywright.laminate.constituents import Cloth, Resin, Weave
from laywright.laminate.cores import CoreSheet
from laywright.laminate.extents import Extent

__all__ = ["Core", "DropOff", "Layup", "Ply", "Process", "usual_resin_share"]

_CORE_THICKNESS = (0.5, 200.0)
_WIDEST_DROP = 500.0


class Process(Enum):
    """How the resin gets into the cloth and how the surplus gets out."""

    HAND = "hand"
    BAGGED = "bagged"
    INFUSED = "infused"


_USUAL = {
    Process.HAND: (0.50, 2.0 / 3.0),
    Process.BAGGED: (0.40, 0.60),
    Process.INFUSED: (0.35, 0.55),
}


def usual_resin_share(process: Process, weave: Weave) -> float:
    """Return the usual share of resin in the mass of a ply; common practice, no source.

    Mat soaks up more than woven cloth: two parts of resin to one of glass by hand.

    Examples
    --------
    >>> usual_resin_share(Process.HAND, Weave.TWILL)
    0.5
    """
    woven, mat = _USUAL[process]
    return mat if weave is Weave.MAT else woven


@dataclass(frozen=True)
class Ply:
    """One layer of cloth.

    Attributes
    ----------
    cloth : Cloth
        What it is cut from.
    angle : float, radians
        From the datum arrow to the warp, counter-clockwise seen from away from the mould.
    name : str
        A name of its own; without one it is known by its number.
    extent : Extent or None
        What it covers; None for the whole face.
    """

    cloth: Cloth
    angle: float
    name: str = ""
    extent: Extent | None = None

    def __post_init__(self) -> None:
        if not math.isfinite(self.angle):
            raise InputError(
                f"ply {self.name}".strip(), f"an angle of {self.angle}", "a number", "set the angle"
            )


@dataclass(frozen=True)
class Core:
    """A core sheet in a layup, its marked direction along the datum arrow.

    Attributes
    ----------
    sheet : CoreSheet
        What it is cut from.
    thickness : float, mm
    after : int
        Number of the ply that it lies on: plies 1 to `after` lie between mould and core.
    """

    sheet: CoreSheet
    thickness: float
    after: int

    def __post_init__(self) -> None:
        low, high = _CORE_THICKNESS
        if not (math.isfinite(self.thickness) and low <= self.thickness <= high):
            raise InputError(
                "core thickness",
                f"{self.thickness:g} mm",
                f"{low:g} to {high:g} mm",
                "correct the thickness",
            )


class DropOff(Enum):
    """Where the further plies of one reinforcement, plies of the same extent, end."""

    IN = "further in"
    OUT = "further out"


@dataclass(frozen=True)
class Layup:
    """The plies in the order in which they are laid, and their resin.

    Attributes
    ----------
    plies : tuple of Ply
        The first touches the mould.
    resin : Resin
        One resin for all of them.
    process : Process
        How it is worked.
    resin_share : float or None
        Share of resin in the mass of the laminate; None takes the usual share of the process
        for each cloth.
    void_share : float
        Share of air in the volume of the laminate.
    core : Core or None
        Between two plies.
    cards : tuple of Card
        The cards that the materials were taken from, with the ranges of their values; they go
        with the layup, so that it stays what it was when a card changes.
    drop_off : float or None, mm
        By how much each further ply of the same extent ends off the one before, so that the
        thickness does not drop at one line; None takes what is usual, see
        `laywright.laminate.drop_off`.
    drop_way : DropOff
        Whether further in or out.
    """

    plies: tuple[Ply, ...]
    resin: Resin
    process: Process = Process.HAND
    resin_share: float | None = None
    void_share: float = 0.0
    core: Core | None = None
    cards: tuple[Card, ...] = field(default=())
    drop_off: float | None = None
    drop_way: DropOff = DropOff.IN

    def __post_init__(self) -> None:
        if not self.plies:
            raise InputError("layup", "no ply", "at least one", "add a ply")
        if self.resin_share is not None and not 0.05 <= self.resin_share <= 0.95:
            raise InputError(
                "resin share",
                f"{self.resin_share:.3g}",
                "a share of the laminate's mass from 0.05 to 0.95",
                "40 parts of resin to 60 of cloth is a share of 0.40",
            )
        if not 0.0 <= self.void_share <= 0.3:
            raise InputError(
                "void share", f"{self.void_share:.3g}", "0 to 0.3", "give it as a share of volume"
            )
        if self.core is not None and not 1 <= self.core.after < len(self.plies):
            raise InputError(
                "core",
                f"a place after ply {self.core.after} of {len(self.plies)}",
                "at least one ply on each side",
                "lay it between two plies",
            )
        self._check_extents()

    def _check_extents(self) -> None:
        through = [number for number, ply in enumerate(self.plies, 1) if ply.extent is None]
        if not through:
            raise InputError(
                "layup",
                "no ply that covers the whole face",
                "at least one",
                "leave out the extent of a ply",
            )
        if self.core is not None and not through[0] <= self.core.after < through[-1]:
            raise InputError(
                "core",
                f"a place after ply {self.core.after} with no ply that covers the whole face on "
                "one of its sides",
                "such a ply on each side",
                "lay it between two plies that cover the whole face",
            )
        if self.drop_off is not None and not 0.0 <= self.drop_off <= _WIDEST_DROP:
            raise InputError(
                "drop-off of the plies",
                f"{self.drop_off:g} mm",
                f"0 to {_WIDEST_DROP:g} mm",
                "correct it",
            )

    @property
    def throughout(self) -> tuple[int, ...]:
        """Numbers of the plies that cover the whole face, counted from 1."""
        return tuple(n for n, ply in enumerate(self.plies, 1) if ply.extent is None)

    @property
    def local(self) -> tuple[int, ...]:
        """Numbers of the plies that cover a part of the face, counted from 1."""
        return tuple(n for n, ply in enumerate(self.plies, 1) if ply.extent is not None)

    @property
    def main(self) -> Layup:
        """The layup of the plies that cover the whole face, each named as it is here."""
        if not self.local:
            return self
        numbers = self.throughout
        core = self.core
        if core is not None:
            core = replace(core, after=sum(number <= core.after for number in numbers))
        plies = tuple(replace(self.plies[n - 1], name=self.ply_name(n)) for n in numbers)
        return replace(self, plies=plies, core=core)

    def at(self, numbers: Iterable[int]) -> Layup:
        """Return the layup of a place that these plies cover, each named as it is here."""
        here = set(numbers)
        plies = tuple(
            replace(ply, name=self.ply_name(number), extent=None if number in here else ply.extent)
            for number, ply in enumerate(self.plies, 1)
        )
        return replace(self, plies=plies).main

    def ply_name(self, number: int) -> str:
        """Return the name of ply `number`, counted from 1."""
        return self.plies[number - 1].name or f"ply {number}"

    def ply_resin_share(self, number: int) -> float:
        """Return the share of resin in the mass of ply `number`, counted from 1."""
        if self.resin_share is not None:
            return self.resin_share
        return usual_resin_share(self.process, self.plies[number - 1].cloth.weave)
