"""From a table of readings to a coupon: which columns, which units, where the test begins.

Hanging weights and a dial gauge give a few pairs of mass and travel; a machine exports
hundreds.  Units come from the heading or from the person; where neither says them, they are
asked for, for a wrong one gives a plausible wrong modulus.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.errors import InputError
from laywright.files.number_table import NumberTable
from laywright.shop.coupons.bending import STANDARD_GRAVITY
from laywright.shop.coupons.coupon import BendCoupon, Ending, TensionCoupon

__all__ = [
    "FORCE_UNITS",
    "LENGTH_UNITS",
    "STRAIN_UNITS",
    "ReadingColumns",
    "bend_coupon",
    "from_contact",
    "tension_coupon",
]

_FORCE = {
    "N": 1.0,
    "kN": 1000.0,
    "lbf": 4.4482216152605,
    "lb": 4.4482216152605,
    "lbs": 4.4482216152605,
    "kgf": STANDARD_GRAVITY,
    "kg": STANDARD_GRAVITY,
    "g": STANDARD_GRAVITY / 1000.0,
}
_LENGTH = {
    "mm": 1.0,
    "cm": 10.0,
    "m": 1000.0,
    "um": 0.001,
    "µm": 0.001,
    "in": 25.4,
    "inch": 25.4,
    "inches": 25.4,
    "mil": 0.0254,
}
_STRAIN = {
    "strain": 1.0,
    "mm/mm": 1.0,
    "in/in": 1.0,
    "-": 1.0,
    "1": 1.0,
    "%": 0.01,
    "µe": 1e-6,
    "ue": 1e-6,
    "με": 1e-6,
    "ustrain": 1e-6,
}
FORCE_UNITS, LENGTH_UNITS, STRAIN_UNITS = tuple(_FORCE), tuple(_LENGTH), tuple(_STRAIN)
"""Units that a column may be in."""

_FORCE_WORDS = ("force", "load", "weight", "mass", "kraft", "last", "gewicht")
_LENGTH_WORDS = ("deflection", "travel", "displacement", "gauge", "position", "stroke", "weg")
_STRAIN_WORDS = ("strain", "dehnung", "extenso")
_STANDSTILL = 1e-9  # of the largest travel
_TOE = (0.05, 0.25)  # of the largest force: where the straight part is looked for


@dataclass(frozen=True)
class ReadingColumns:
    """Where force and travel stand in a table, and in which units; empty takes the heading's.

    Attributes
    ----------
    force, travel : str
        Name of a column or its number, from 1.
    force_unit, travel_unit : str
        Such as ``"N"`` or ``"kg"``, ``"mm"`` or ``"in"``; strains in ``"%"`` or ``"1"``.
    """

    force: str = ""
    travel: str = ""
    force_unit: str = ""
    travel_unit: str = ""


def bend_coupon(
    table: NumberTable,
    name: str,
    size: tuple[float, float, float],
    columns: ReadingColumns,
    ending: Ending = Ending.BROKEN,
) -> BendCoupon:
    """Return the coupon of a bending test.

    Parameters
    ----------
    table : NumberTable
    name : str
    size : tuple of 3 float, mm
        Width, thickness and span.
    columns : ReadingColumns
    ending : Ending

    Raises
    ------
    InputError
        If a column or a unit is missing or contradicts the heading, or nothing is left.
    """
    force = _column(table, columns.force, columns.force_unit, "force", _FORCE_WORDS, _FORCE)
    travel = _column(
        table, columns.travel, columns.travel_unit, "deflection", _LENGTH_WORDS, _LENGTH
    )
    travel, force = from_contact(travel, force)
    return BendCoupon(name, *size, travel, force, ending)


def tension_coupon(
    table: NumberTable,
    name: str,
    size: tuple[float, float],
    columns: ReadingColumns,
    gauge_length: float | None = None,
    ending: Ending = Ending.BROKEN,
) -> TensionCoupon:
    """Return the coupon of a tension test.

    Parameters
    ----------
    table : NumberTable
    name : str
    size : tuple of 2 float, mm
        Width and thickness.
    columns : ReadingColumns
    gauge_length : float or None, mm
        Over which the travel was measured; None where the column holds strains.
    ending : Ending
    """
    force = _column(table, columns.force, columns.force_unit, "force", _FORCE_WORDS, _FORCE)
    if gauge_length is None:
        travel = _column(
            table, columns.travel, columns.travel_unit, "strain", _STRAIN_WORDS, _STRAIN
        )
    else:
        if not 1.0 <= gauge_length <= 1000.0:
            raise InputError(
                "gauge length", f"{gauge_length:g} mm", "1 to 1000 mm", "measure it again"
            )
        words = (*_LENGTH_WORDS, "extension")
        travel = (
            _column(table, columns.travel, columns.travel_unit, "extension", words, _LENGTH)
            / gauge_length
        )
    travel, force = from_contact(travel, force)
    return TensionCoupon(name, *size, travel, force, ending)


def from_contact(travel: FloatArray, force: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Return a record that rises from zero: what came before the contact is taken off.

    The straight part between 5 and 25 % of the largest force is drawn back to zero force (toe
    compensation as in ASTM D790, annex), and readings at which the travel does not rise are
    left out.

    Parameters
    ----------
    travel, force : (n,) float
        As they were read; either may count downwards.
    """
    sound = np.isfinite(travel) & np.isfinite(force)
    x, y = (_upwards(values[sound]) for values in (travel, force))
    if len(x) == 0:
        return floats(x, -1), floats(y, -1)
    peak = int(np.argmax(y))
    low, high = (share * y[peak] for share in _TOE)
    straight = (y[: peak + 1] >= low) & (y[: peak + 1] <= high)
    if straight.sum() >= 3 and np.ptp(x[: peak + 1][straight]) > 0.0:
        slope, rest = np.polyfit(x[: peak + 1][straight], y[: peak + 1][straight], 1)
        if slope > 0.0:
            x = x + rest / slope
    least = _STANDSTILL * float(np.abs(x).max())
    forward = x > np.maximum.accumulate(np.concatenate([[0.0], x[:-1]])) + least
    x, y = x[forward], y[forward]
    return floats(np.concatenate([[0.0], x]), -1), floats(np.concatenate([[0.0], y]), -1)


def _upwards(values: FloatArray) -> FloatArray:
    """Return a column that counts upwards."""
    if len(values) and abs(float(values.min())) > abs(float(values.max())):
        return floats(-values, -1)
    return values


def _column(
    table: NumberTable,
    wanted: str,
    unit: str,
    role: str,
    words: tuple[str, ...],
    factors: Mapping[str, float],
) -> FloatArray:
    """Return a column in the kernel's unit."""
    place = _place(table, wanted.strip(), role, words, factors)
    head = table.columns[place]
    where = f"{table.where}, column '{head.name}'"
    written, said = head.unit.casefold(), unit.strip().casefold()
    used = said or written
    known = {name.casefold(): factor for name, factor in factors.items()}
    if used not in known:
        raise InputError(
            f"{where}: unit of the {role}",
            f"'{unit or head.unit}'" if unit or head.unit else "nothing",
            "one of " + ", ".join(factors),
            "say the unit, or write it into the heading",
        )
    if said and written in known and known[said] != known[written]:
        raise InputError(
            f"{where}: unit of the {role}",
            f"'{head.unit}' in the heading and '{unit}' in the settings",
            "one and the same",
            "correct one of the two",
        )
    return floats(table.rows[:, place] * known[used], -1)


def _place(
    table: NumberTable,
    wanted: str,
    role: str,
    words: tuple[str, ...],
    factors: Mapping[str, float],
) -> int:
    names = [column.name.casefold() for column in table.columns]
    known = {name.casefold() for name in factors}
    if wanted:
        if wanted.isdigit() and 1 <= int(wanted) <= len(names):
            return int(wanted) - 1
        found = [k for k, name in enumerate(names) if name == wanted.casefold()]
    else:
        found = [k for k, name in enumerate(names) if any(word in name for word in words)]
        if not found:
            found = [k for k, c in enumerate(table.columns) if c.unit.casefold() in known]
    if len(found) != 1:
        listed = ", ".join(f"{k} '{column.name}'" for k, column in enumerate(table.columns, 1))
        raise InputError(
            f"{table.where}: column of the {role}",
            f"'{wanted}'" if wanted else "no heading that says it once",
            f"one of {listed}",
            "name the column or give its number",
        )
    return found[0]
