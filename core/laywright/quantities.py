"""Units at the door: people write quantities, kernels get plain numbers.

Kernels work in mm, N, MPa, g, degrees Celsius, radians, seconds.  A person's number comes in
as a string such as ``"200 g/m^2"`` or as a `pint.Quantity`, is checked for its dimension here,
once, and goes on as a float in the unit that the kernel's docstring states.
"""

from __future__ import annotations

import math
import re
from functools import cache, lru_cache

import pint

from laywright.errors import UnitError

__all__ = ["Quantity", "QuantityLike", "magnitude", "registry"]

Quantity = pint.Quantity[float]
QuantityLike = str | pint.Quantity[float]

_NUMBER = re.compile(r"\s*([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)\s*(.*?)\s*")

_LONGEST_UNIT = 60
_POWER = r"(?:\*\*|\^)"
_RAISED = "[⁰¹²³⁴-⁹]"
# What would be worked out to a number of millions of digits before anybody looks at it.
_TOWER = re.compile(
    rf"\d{{4}}|\d_|{_RAISED}{{4}}|{_POWER}\s*[-+]?\s*\(|\)\s*(?:{_POWER}|{_RAISED})"
    rf"|{_POWER}\s*[-+]?\s*[\d.]+\s*(?:{_POWER}|{_RAISED})|{_RAISED}\s*{_POWER}"
)


@cache
def registry() -> pint.UnitRegistry[float]:
    """Return the one unit registry of Laywright."""
    units: pint.UnitRegistry[float] = pint.UnitRegistry(autoconvert_offset_to_baseunit=False)
    units.define("gsm = gram / meter ** 2")
    return units


def magnitude(value: QuantityLike, unit: str, name: str) -> float:
    """Return `value` as a plain number in `unit`.

    Parameters
    ----------
    value : str or pint.Quantity
        What the person gave, for example ``"200 g/m^2"`` or ``"21 degC"``.
    unit : str
        The unit that is wanted, for example ``"g/m^2"``.
    name : str
        Name of the setting, for the message.

    Returns
    -------
    float
        The number, in `unit`.

    Raises
    ------
    UnitError
        If there is no number, no unit where one is needed, or a unit of another dimension.

    Examples
    --------
    >>> magnitude("50 in", "mm", "roll width")
    1270.0
    >>> magnitude("70 degF", "degC", "shop temperature")  # doctest: +ELLIPSIS
    21.11...
    >>> magnitude("5 %", "1", "extra share")
    0.05
    """
    return _read(value, unit, name) if isinstance(value, str) else _converted(value, unit, name)


@lru_cache(maxsize=4096)
def _read(text: str, unit: str, name: str) -> float:
    """Return a text as a number; material cards say the same ones again and again."""
    return _converted(_parsed(text, unit, name), unit, name, text)


def _converted(quantity: Quantity, unit: str, name: str, text: str = "") -> float:
    value = text or quantity
    try:
        result = float(quantity.to(unit).magnitude)
    except (pint.PintError, ArithmeticError, AttributeError) as problem:
        raise UnitError(
            name, f"'{value}'", f"a quantity in {_spoken(unit)}", "give the number with such a unit"
        ) from problem
    if not math.isfinite(result):
        raise UnitError(name, f"'{value}'", "a finite number", "correct the number")
    return float(f"{result:.15g}")


def _parsed(text: str, unit: str, name: str) -> Quantity:
    match = _NUMBER.fullmatch(text)
    if match is None or match[2].startswith(","):
        raise UnitError(
            name,
            f"'{text}'",
            f"a number and a unit such as '1.5 {_spoken(unit)}'",
            "write it that way, with a point as the decimal mark",
        )
    number, unit_text = match.groups()
    try:
        if len(unit_text) > _LONGEST_UNIT or _TOWER.search(unit_text):
            raise ValueError(unit_text)
        return registry().Quantity(float(number), unit_text or "dimensionless")
    except Exception as problem:  # pint's parser ends in a dozen ways on what is no unit
        raise UnitError(
            name,
            f"the unit '{unit_text[:_LONGEST_UNIT]}'",
            f"a unit such as {_spoken(unit)}",
            "correct the unit",
        ) from problem


def _spoken(unit: str) -> str:
    return {"1": "percent or a plain ratio", "": "percent or a plain ratio"}.get(unit, unit)
