"""The section [roll]: widths, offcuts and faults of the cloth at hand, number of parts, time."""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from typing import TypeVar

from laywright.cloth.roll.roll import Fault, Offcut, RollSettings
from laywright.errors import InputError
from laywright.job.sections import Section
from laywright.job.setting_values import settings_of

__all__ = ["read_roll"]

T = TypeVar("T")
_TEXTS = ("offcuts", "faults")


def read_roll(section: Section) -> RollSettings:
    """Return the settings of the roll plan; each offcut and each fault is one line of text."""
    for key in ("parts", "mirrored_parts"):
        count = section.get(key, 1)
        if isinstance(count, bool) or not isinstance(count, int):
            raise InputError(
                f"[roll] {key}", repr(count), "a whole number", "write it without quotes"
            )
    return dataclasses.replace(
        settings_of(RollSettings, section, "roll", besides=_TEXTS),
        offcuts=_read(section.get("offcuts", []), "offcuts", Offcut.read),
        faults=_read(section.get("faults", []), "faults", Fault.read),
    )


def _read(lines: object, key: str, read: Callable[[str], T]) -> tuple[T, ...]:
    if not isinstance(lines, list) or not all(isinstance(line, str) for line in lines):
        raise InputError(
            f"[roll] {key}", repr(lines), "a list of texts in quotes", "write one text for each"
        )
    return tuple(read(line) for line in lines)
