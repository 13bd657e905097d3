"""Reading a section of the job description: every slip is named by section and key."""

from __future__ import annotations

from collections.abc import Mapping
from enum import Enum
from typing import Any, TypeVar

from laywright.errors import InputError

__all__ = ["Section", "choice", "only", "text_of"]

E = TypeVar("E", bound=Enum)
Section = Mapping[str, Any]


def only(section: Section, known: set[str], where: str) -> None:
    """Refuse a section that holds a key which is not known."""
    unknown = sorted(set(section) - known)
    if unknown:
        raise InputError(
            where,
            f"the key '{unknown[0]}'",
            f"one of {', '.join(sorted(known))}",
            "correct the key",
        )


def text_of(section: Section, key: str, where: str) -> str:
    """Return the text of a key that must be there."""
    value = section.get(key)
    if not isinstance(value, str) or not value.strip():
        raise InputError(
            f"{where} {key}",
            "nothing" if value is None else repr(value),
            "a text in quotes",
            f'add {key} = "..."',
        )
    return value


def choice(kind: type[E], value: object, where: str) -> E:
    """Return the option that a value names; the first one where there is none."""
    options = list(kind)
    if value is None:
        return options[0]
    for option in options:
        if option.value == value:
            return option
    raise InputError(
        where,
        repr(value),
        " or ".join(f"'{option.value}'" for option in options),
        "choose one of them",
    )
