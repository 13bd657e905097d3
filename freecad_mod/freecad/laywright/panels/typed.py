"""What people type into a field, read as a number with its unit.

A point and a comma both are a decimal mark, whatever the language of the window: a comma that
is taken for a separator of thousands would make 95 mm of "9,5 mm".  Where both occur, the last
one is the decimal mark.
"""

import re

import FreeCAD

from laywright.errors import InputError, UnitError
from laywright.quantities import magnitude

__all__ = ["number", "quantity", "with_point"]

_PLAIN = re.compile(r"[-+]?(\d+\.?\d*|\.\d+)")
_NUMBER = re.compile(r"\d[\d.,]*|[.,]\d+")
# How a tooltip writes a unit: how the units at the door write it
_UNITS = {
    "°C": "degC",
    "°": "deg",
    "degrees": "deg",
    "g/m²": "g/m^2",
    "min": "minute",
    "h": "hour",
    "s": "second",
    "%": "percent",
    "1e-6 per K": "1e-6/K",
}


def with_point(text):
    """Return a text with a point as the decimal mark of every number in it."""
    return _NUMBER.sub(lambda found: _pointed(found[0]), text.replace("−", "-"))


def _pointed(text):
    marks = [mark for mark in text if mark in ",."]
    if len(set(marks)) == 2:
        grouping = marks[0]
        return text.replace(grouping, "").replace(",", ".")
    if len(marks) > 1:  # 1.234.567
        return text.replace(marks[0], "")
    return text.replace(",", ".")


def quantity(text, name, like):
    """Return a typed length, angle or the like as a FreeCAD quantity.

    Parameters
    ----------
    text : str
        Such as ``"3/8 in"`` or ``"9,5 mm"``; a plain number has the unit that the window shows.
    name : str
        Of the field, for the message.
    like : FreeCAD.Units.Quantity
        Of the same dimension.
    """
    shown = with_point(text.strip())
    unit = like.getUserPreferred()[2]
    if _PLAIN.fullmatch(shown):
        shown = f"{shown} {unit}"
    try:
        found = FreeCAD.Units.Quantity(shown)
    except (ValueError, ArithmeticError) as problem:
        raise _not_understood(text, name, unit) from problem
    if found.Unit != like.Unit:
        raise _not_understood(text, name, unit)
    return found


def number(text, name, unit=""):
    """Return a typed number, in the unit that its tooltip names; another unit is converted."""
    shown = with_point(text.strip())
    known = _UNITS.get(unit, unit)
    if _PLAIN.fullmatch(shown):
        return float(shown)
    typed = shown.removesuffix(unit).strip() if unit else shown
    if _PLAIN.fullmatch(typed):
        return float(typed)
    try:
        return magnitude(shown.replace("°F", "degF").replace("°C", "degC"), known, name)
    except UnitError as problem:
        raise _not_understood(text, name, unit) from problem


def _not_understood(text, name, unit):
    example = f"a number such as 1.5 {unit}".strip()
    return InputError(name, f"'{text}'", example, "correct what is typed")
