"""What else stands on cards: release agents, consumables, and plain sheets to compare with."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Annotated

from laywright.laminate.limits import Limits, check_limits

__all__ = ["Consumable", "PlainSheet", "ReleaseAgent", "ReleaseKind", "Use"]


class ReleaseKind(Enum):
    """What keeps the part from sticking to the mould."""

    WAX = "wax"
    FILM = "film"
    TAPE = "tape"


class Use(Enum):
    """What a consumable is for."""

    PEEL_PLY = "peel ply"
    RELEASE_FILM = "release film"
    BREATHER = "breather"
    BAG_FILM = "bag film"
    FLOW_MESH = "flow mesh"
    SEALANT_TAPE = "sealant tape"


@dataclass(frozen=True)
class ReleaseAgent:
    """A release agent.

    Attributes
    ----------
    name : str
        Name on its card.
    kind : ReleaseKind
    coats_new, coats_second, coats_later : float
        Coats on a new mould, before the second part, before a later part.
    wait_minutes : float or None, minutes
        After each coat of wax, after the last spray of a film; None where there is nothing to
        wait for.
    use_per_coat : float or None, g/m^2
        None for tape.
    """

    name: str
    kind: ReleaseKind
    coats_new: Annotated[float, Limits("1", 1.0, 20.0)]
    coats_second: Annotated[float, Limits("1", 0.0, 20.0)]
    coats_later: Annotated[float, Limits("1", 0.0, 20.0)]
    wait_minutes: Annotated[float, Limits("minute", 1.0, 600.0)] | None = None
    use_per_coat: Annotated[float, Limits("g/m^2", 1.0, 500.0)] | None = None

    def __post_init__(self) -> None:
        check_limits(self, self.name)


@dataclass(frozen=True)
class Consumable:
    """Something of the bag that is thrown away afterwards.

    Attributes
    ----------
    name : str
        Name on its card.
    use : Use
    allowance : float
        Amount bought for each unit that is cut: area, or length for tape.
    largest_temperature_c : float, degC
        Up to which it may be heated.
    resin_uptake : float or None, g/m^2
        Mix that it may take up on each square metre of the part; None for none.
    """

    name: str
    use: Use
    allowance: Annotated[float, Limits("1", 1.0, 5.0)]
    largest_temperature_c: Annotated[float, Limits("degC", 40.0, 400.0)]
    resin_uptake: Annotated[float, Limits("g/m^2", 5.0, 1000.0)] | None = None

    def __post_init__(self) -> None:
        check_limits(self, self.name)


@dataclass(frozen=True)
class PlainSheet:
    """A sheet of metal or plastic, the same in every direction.

    Attributes
    ----------
    name : str
        Name on its card.
    density : float, g/cm^3
    modulus : float, MPa
    poisson : float
    """

    name: str
    density: Annotated[float, Limits("g/cm^3", 0.5, 20.0)]
    modulus: Annotated[float, Limits("MPa", 500.0, 4.5e5)]
    poisson: Annotated[float, Limits("1", 0.0, 0.499)]

    def __post_init__(self) -> None:
        check_limits(self, self.name)
