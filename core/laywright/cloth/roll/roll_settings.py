"""What a roll plan starts from: rolls, offcuts, faults, the number of parts, the time."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, field
from enum import Enum

from laywright.errors import InputError
from laywright.laminate.materials import Weave
from laywright.quantities import magnitude

__all__ = [
    "Fault",
    "Offcut",
    "RollSettings",
    "TurnOver",
    "WidePatterns",
    "lap_of",
    "reversible",
    "roll_width",
]

_LAP = 25.0
_REVERSIBLE = (Weave.PLAIN, Weave.UNIDIRECTIONAL, Weave.MAT)


def reversible(weave: Weave) -> bool:
    """Return whether both faces of a cloth are alike, so that a piece may be cut face down.

    The faces of a twill, a satin or a stitched cloth differ; those of a plain weave, parallel
    yarns and mat do not (common practice, no source).
    """
    return weave in _REVERSIBLE


def lap_of(weave: Weave) -> float:
    """Return how far two strips of a split ply lap each other, mm.

    Woven cloth and mat are lapped by 25 mm, parallel yarns lie edge to edge (common practice,
    no source).
    """
    return 0.0 if weave is Weave.UNIDIRECTIONAL else _LAP


def roll_width(text: str) -> tuple[str, float]:
    """Return the cloth and the width of its roll, mm, that a text describes.

    Examples
    --------
    >>> roll_width("E-glass twill weave 200 g/m^2: 1.27 m")
    ('E-glass twill weave 200 g/m^2', 1270.0)
    """
    cloth, colon, width = text.rpartition(":")
    if not (colon and cloth.strip()):
        raise InputError(
            "a roll width", f"'{text}'", "cloth: width", 'write for example "my cloth: 1.27 m"'
        )
    return cloth.strip(), magnitude(width.strip(), "mm", f"width of the roll of {cloth.strip()}")


class TurnOver(Enum):
    """Whether a piece may be cut with the cloth lying face down."""

    WHERE_ALIKE = "where both faces of the cloth are alike"
    NEVER = "never"


class WidePatterns(Enum):
    """What happens to a pattern that is wider than its roll."""

    REFUSE = "refused, with a split proposed"
    SPLIT = "split along the warp"


@dataclass(frozen=True)
class Offcut:
    """A rectangular piece of cloth at hand, which is used before any roll.

    Attributes
    ----------
    cloth : str
        Name of the cloth.
    length, width : float, mm
        Along the warp and across it.
    """

    cloth: str
    length: float
    width: float

    def __post_init__(self) -> None:
        for name, value in (("length", self.length), ("width", self.width)):
            if not (math.isfinite(value) and value > 0.0):
                raise InputError(
                    f"{name} of the offcut of {self.cloth}",
                    f"{value:g} mm",
                    "more than 0 mm",
                    "measure it again",
                )

    @classmethod
    def read(cls, text: str) -> Offcut:
        """Return the offcut that a text describes.

        Examples
        --------
        >>> Offcut.read("E-glass twill weave 200 g/m^2: 600 mm x 40 cm")
        Offcut(cloth='E-glass twill weave 200 g/m^2', length=600.0, width=400.0)
        """
        found = re.fullmatch(r"\s*(.+?)\s*:\s*([^:]+?)\s+x\s+([^:]+?)\s*", text)
        if found is None:
            raise InputError(
                "an offcut",
                f"'{text}'",
                "cloth: length along the warp x width",
                'write for example "my cloth: 600 mm x 400 mm"',
            )
        cloth, length, width = found.groups()
        where = f"offcut of {cloth}"
        return cls(cloth, magnitude(length, "mm", where), magnitude(width, "mm", where))


@dataclass(frozen=True)
class Fault:
    """A place on a roll that is not used: a crease, a stain, a missing yarn.

    Attributes
    ----------
    cloth : str
        Name of the cloth.
    start, end : float, mm
        Where it begins and ends along the roll, from the roll's free end.
    low, high : float, mm
        Where it begins and ends across the roll; by default it crosses all of it.
    """

    cloth: str
    start: float
    end: float
    low: float = 0.0
    high: float = 1e4

    def __post_init__(self) -> None:
        numbers = (self.start, self.end, self.low, self.high)
        if not (
            all(math.isfinite(value) and value >= 0.0 for value in numbers)
            and self.end > self.start
            and self.high > self.low
        ):
            raise InputError(
                f"a fault in the roll of {self.cloth}",
                f"{self.start:g} to {self.end:g} mm along, {self.low:g} to {self.high:g} mm across",
                "an end behind its start, both 0 mm or more",
                "measure it again from the free end of the roll",
            )

    @classmethod
    def read(cls, text: str) -> Fault:
        """Return the fault that a text describes.

        Examples
        --------
        >>> Fault.read("my cloth: 1200 mm to 1230 mm")
        Fault(cloth='my cloth', start=1200.0, end=1230.0, low=0.0, high=10000.0)
        >>> Fault.read("my cloth: 1.2 m to 1.3 m, across 0 mm to 80 mm").high
        80.0
        """
        found = re.fullmatch(
            r"\s*(.+?)\s*:\s*([^:]+?)\s+to\s+([^:]+?)(?:\s*,\s*across\s+([^:]+?)\s+to\s+([^:]+?))?\s*",
            text,
        )
        if found is None:
            raise InputError(
                "a fault in a roll",
                f"'{text}'",
                "cloth: start to end, and where wanted: across low to high",
                'write for example "my cloth: 1200 mm to 1230 mm"',
            )
        cloth, *places = found.groups()
        where = f"fault in the roll of {cloth}"
        return cls(cloth, *(magnitude(place, "mm", where) for place in places if place))


@dataclass(frozen=True)
class RollSettings:
    """The cloth at hand and how long to search.

    Attributes
    ----------
    widths : dict of str to float, mm
        Width of the roll by the name of its cloth, where it differs from the cloth's card.
    edge : float, mm
        Strip along both edges of a roll that is not used.
    gap : float, mm
        Smallest distance between two pieces.
    seconds : float
        Time budget of the search, for all rolls together.
    seed : int
        Start of the search: the same seed searches the same way, as far as the time allows.
    offcuts : tuple of Offcut
        Pieces at hand, used before any roll; they have no edge strip.
    faults : tuple of Fault
        Places on the rolls that are not used.
    turn_over : TurnOver
        Whether a piece may be cut face down.
    wide : WidePatterns
        What happens to a pattern that is wider than its roll.
    parts, mirrored_parts : int
        How many parts are cut at once, and how many of the mirrored part besides.
    sold_by : float, mm
        Lengths that cloth is sold by; what is bought is rounded up to it.
    """

    widths: dict[str, float] = field(default_factory=dict)
    edge: float = 10.0
    gap: float = 5.0
    seconds: float = 5.0
    seed: int = 1
    offcuts: tuple[Offcut, ...] = ()
    faults: tuple[Fault, ...] = ()
    turn_over: TurnOver = TurnOver.WHERE_ALIKE
    wide: WidePatterns = WidePatterns.REFUSE
    parts: int = 1
    mirrored_parts: int = 0
    sold_by: float = 100.0

    def __post_init__(self) -> None:
        named = {"unused edge": self.edge, "gap": self.gap, "time budget": self.seconds}
        for name, value in named.items():
            if not (math.isfinite(value) and value >= 0.0):
                raise InputError(
                    f"{name} of the roll plan", f"{value:g}", "0 or more", "correct the setting"
                )
        if not (math.isfinite(self.sold_by) and self.sold_by > 0.0):
            raise InputError(
                "length that cloth is sold by",
                f"{self.sold_by:g} mm",
                "more than 0 mm",
                "correct it",
            )
        if self.parts < 0 or self.mirrored_parts < 0 or self.parts + self.mirrored_parts < 1:
            raise InputError(
                "number of parts that are cut",
                f"{self.parts} and {self.mirrored_parts} mirrored",
                "at least one in all",
                "correct the setting",
            )
        for cloth, width in self.widths.items():
            if not (math.isfinite(width) and width > 2.0 * self.edge):
                raise InputError(
                    f"width of the roll of {cloth}",
                    f"{width:g} mm",
                    f"more than twice the unused edge of {self.edge:g} mm",
                    "set the width of the roll",
                )
