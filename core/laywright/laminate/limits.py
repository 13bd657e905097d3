"""Plausible bounds of a value, written beside its type.

A field is declared as ``density: Annotated[float, Limits("g/cm^3", 0.5, 5.0)]``: its unit and
the bounds outside which a number is taken for a slip.  The bounds are narrower than a factor
of 1000, so that a density in kg/m^3 or a modulus in GPa cannot pass for the right one.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache
from typing import Any, get_type_hints

from laywright.errors import LimitError

__all__ = ["Limits", "check_limits", "limits_of"]


@dataclass(frozen=True)
class Limits:
    """Unit of a value and the bounds outside which it is taken for a slip.

    Attributes
    ----------
    unit : str
        Unit in which the value is kept; ``"1"`` for a plain ratio.
    low, high : float
        Smallest and largest plausible value, in that unit.
    """

    unit: str
    low: float
    high: float


def limits_of(kind: Any) -> dict[str, Limits]:
    """Return the limits of each field of a dataclass that states some.

    Examples
    --------
    >>> from laywright.laminate.constituents import Fibre
    >>> limits_of(Fibre)["density"].unit
    'g/cm^3'
    """
    return _limits_of(kind)


@cache
def _limits_of(kind: Any) -> dict[str, Limits]:
    hints = get_type_hints(kind, include_extras=True)
    return {name: note for name, hint in hints.items() for note in _notes(hint)}


def _notes(hint: Any) -> list[Limits]:
    notes = [note for note in getattr(hint, "__metadata__", ()) if isinstance(note, Limits)]
    for inner in getattr(hint, "__args__", ()):
        notes += _notes(inner)
    return notes


def check_limits(value: Any, where: str) -> None:
    """Check every field of a dataclass that states limits; None stands for "not known".

    Raises
    ------
    LimitError
        If a number is not finite or outside its limits.
    """
    for name, limits in limits_of(type(value)).items():
        number = getattr(value, name)
        if number is None:
            continue
        if not (math.isfinite(number) and limits.low <= number <= limits.high):
            unit = "" if limits.unit == "1" else f" {limits.unit}"
            raise LimitError(
                f"{where}: {name}",
                f"{number:g}{unit}",
                f"{limits.low:g} to {limits.high:g}{unit}",
                "check the number and its unit",
            )
