"""Tolerances for pins, holes and checked dimensions, as far as a bench needs them.

Dowel pins are bought to h6 or g6 and holes reamed to H7 or H8 (ISO 286); a dimension without a
tolerance of its own is judged by ISO 2768-1.
"""

from __future__ import annotations

from enum import Enum

from laywright.errors import InputError

__all__ = ["GeneralTolerance", "Hole", "Pin", "clearance", "general_tolerance", "hole", "pin"]

_STEPS = (3.0, 6.0, 10.0, 18.0, 30.0)
_GRADES = {6: (6, 8, 9, 11, 13), 7: (10, 12, 15, 18, 21), 8: (14, 18, 22, 27, 33)}
_G_DEVIATION = (2, 4, 5, 6, 7)


class Hole(Enum):
    """Tolerance class of a hole: lower limit at the nominal size, and its grade."""

    H7 = 7
    H8 = 8


class Pin(Enum):
    """Tolerance class of a pin, grade 6."""

    H6 = "h6"
    G6 = "g6"


class GeneralTolerance(Enum):
    """Class of ISO 2768-1, with the permitted deviations (mm) of its size steps."""

    FINE = (0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5)
    MEDIUM = (0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2)
    COARSE = (0.2, 0.3, 0.5, 0.8, 1.2, 2.0, 3.0)


_GENERAL_STEPS = (3.0, 6.0, 30.0, 120.0, 400.0, 1000.0, 2000.0)


def _step(diameter: float) -> int:
    for place, upper in enumerate(_STEPS):
        if 1.0 <= diameter <= upper:
            return place
    raise InputError("fit", f"{diameter:g} mm", "1 to 30 mm", "choose another pin")


def hole(diameter: float, kind: Hole) -> tuple[float, float]:
    """Return lower and upper deviation of a hole, mm (ISO 286-2).

    Examples
    --------
    >>> hole(10.0, Hole.H7)
    (0.0, 0.015)
    """
    return 0.0, _GRADES[kind.value][_step(diameter)] / 1000.0


def pin(diameter: float, kind: Pin) -> tuple[float, float]:
    """Return lower and upper deviation of a pin, mm (ISO 286-2)."""
    place = _step(diameter)
    upper = -_G_DEVIATION[place] if kind is Pin.G6 else 0
    return (upper - _GRADES[6][place]) / 1000.0, upper / 1000.0


def clearance(diameter: float, hole_kind: Hole, pin_kind: Pin) -> tuple[float, float]:
    """Return the smallest and the largest clearance of a pin in a hole, mm."""
    (hole_low, hole_high), (pin_low, pin_high) = hole(diameter, hole_kind), pin(diameter, pin_kind)
    return round(hole_low - pin_high, 6), round(hole_high - pin_low, 6)


def general_tolerance(length: float, kind: GeneralTolerance) -> float:
    """Return the permitted deviation of a linear size, plus or minus mm (ISO 2768-1, table 1)."""
    for upper, deviation in zip(_GENERAL_STEPS, kind.value, strict=True):
        if 0.5 <= length <= upper:
            return deviation
    raise InputError(
        "general tolerance", f"{length:g} mm", "0.5 to 2000 mm", "state a tolerance of its own"
    )
