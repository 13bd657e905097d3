"""From a card to the material that it describes, field by field.

What a field holds is read off the dataclass: a number with limits, a word of an enum, another
material by its name, or a group of numbers.
"""

from __future__ import annotations

import dataclasses
import difflib
from collections.abc import Mapping
from enum import Enum
from typing import Any, TypeVar, get_args, get_type_hints

from laywright.errors import LimitError, MaterialError
from laywright.laminate.card_files import Card, convert
from laywright.laminate.limits import limits_of

__all__ = ["CardField", "card_fields", "from_card", "named"]

T = TypeVar("T")


@dataclasses.dataclass(frozen=True)
class CardField:
    """What may stand in one field of a card.

    Attributes
    ----------
    name : str
        As on the card, such as ``"strengths.shear"``.
    unit : str
        Unit in which its limits are given, ``"1"`` for a plain ratio; empty for a word.
    low, high : float or None
        Limits of the number; None for a word.
    words : tuple of str
        Words to choose from; empty for a number.
    needed : bool
        Whether a card cannot do without it.
    """

    name: str
    unit: str
    low: float | None
    high: float | None
    words: tuple[str, ...]
    needed: bool


def card_fields(
    kind: type, shelves: Mapping[str, Mapping[str, object]] | None = None
) -> tuple[CardField, ...]:
    """Return every field that a card of a kind of material may have.

    Parameters
    ----------
    kind : type
        The dataclass of the material.
    shelves : mapping, optional
        For each field that names another material, those materials by name.

    Examples
    --------
    >>> from laywright.laminate.constituents import Fibre
    >>> card_fields(Fibre)[0]
    CardField(name='density', unit='g/cm^3', low=0.5, high=5.0, words=(), needed=True)
    """
    found: list[CardField] = []
    hints = get_type_hints(kind)
    limits = limits_of(kind)
    for field in dataclasses.fields(kind):
        needed = field.default is dataclasses.MISSING
        group = _group(kind, field.name)
        if field.name in (shelves or {}):
            names = tuple((shelves or {})[field.name])
            found.append(CardField(field.name, "", None, None, names, needed))
        elif field.name in limits:
            bounds = limits[field.name]
            found.append(CardField(field.name, bounds.unit, bounds.low, bounds.high, (), needed))
        elif group is not None:
            found += [
                dataclasses.replace(inner, name=f"{field.name}.{inner.name}", needed=False)
                for inner in card_fields(group)
            ]
        elif isinstance(hints[field.name], type) and issubclass(hints[field.name], Enum):
            words = tuple(str(member.value) for member in hints[field.name])
            found.append(CardField(field.name, "", None, None, words, needed))
    return tuple(found)


def named(shelf: Mapping[str, T], name: str, kind: str) -> T:
    """Return the material of this name.

    Raises
    ------
    MaterialError
        If there is none; the message offers the nearest names.
    """
    if name not in shelf:
        offer = " or ".join(f"'{other}'" for other in _nearest(name, list(shelf)))
        raise MaterialError(
            kind,
            f"'{name}', which is on no card",
            offer or "a card for it",
            "choose one of these or add a card",
        )
    return shelf[name]


def _nearest(name: str, known: list[str]) -> list[str]:
    words = name.casefold().split()
    holding = [other for other in known if all(word in other.casefold() for word in words)]
    folded = {other.casefold(): other for other in known}
    close = difflib.get_close_matches(name.casefold(), folded, n=3, cutoff=0.3)
    near = dict.fromkeys([*holding, *(folded[other] for other in close)])
    return list(near)[:3] or known[:3]


def from_card(
    kind: type[T], card: Card, shelves: Mapping[str, Mapping[str, object]] | None = None
) -> T:
    """Return the material that a card describes.

    Parameters
    ----------
    kind : type
        The dataclass of the material.
    card : Card
    shelves : mapping, optional
        For each field that names another material, those materials by name.

    Raises
    ------
    MaterialError
        If a field is missing, unknown or implausible; the message names the file and the field.
    """
    fields: dict[str, Any] = {"name": card.name}
    for name, text in card.texts.items():
        fields[name] = _worded(kind, card, name, text, (shelves or {}).get(name))
    groups: dict[str, dict[str, float]] = {}
    for name, value in card.values.items():
        group, _, inner = name.rpartition(".")
        owner = _group(kind, group) if group else kind
        limits = limits_of(owner).get(inner) if owner is not None else None
        if limits is None:
            raise _unknown(kind, card, name)
        number = convert(value, limits.unit, f"{card.file}: {name}")
        (groups.setdefault(group, {}) if group else fields)[inner] = number
    for group, numbers in groups.items():
        fields[group] = _built(_group(kind, group), numbers, card, f"{group}.")
    made: T = _built(kind, fields, card)
    return made


def _group(kind: type, name: str) -> type | None:
    """Return the dataclass of a group of numbers, such as strengths."""
    hint = get_type_hints(kind).get(name)
    for option in (hint, *get_args(hint)):
        if isinstance(option, type) and dataclasses.is_dataclass(option):
            return option
    return None


def _worded(
    kind: type, card: Card, name: str, text: str, shelf: Mapping[str, object] | None
) -> object:
    where = f"{card.file}: {name}"
    if shelf is not None:
        try:
            return named(shelf, text, name)
        except MaterialError as problem:
            raise MaterialError(where, problem.found, problem.needed, problem.remedy) from problem
    option = get_type_hints(kind).get(name)
    if not (isinstance(option, type) and issubclass(option, Enum)):
        raise _unknown(kind, card, name)
    words = [member.value for member in option]
    if text not in words:
        raise MaterialError(where, f"'{text}'", ", ".join(words), "choose one of these")
    return option(text)


def _built(kind: Any, fields: dict[str, Any], card: Card, prefix: str = "") -> Any:
    for field in dataclasses.fields(kind):
        if field.default is dataclasses.MISSING and field.name not in fields:
            raise MaterialError(
                f"{card.file}: {prefix}{field.name}", "nothing", "a value", "add it to the card"
            )
    try:
        return kind(**fields)
    except LimitError as problem:
        where = f"{card.file}: {prefix}{problem.where.rsplit(': ', 1)[-1]}"
        raise MaterialError(where, problem.found, problem.needed, problem.remedy) from problem


def _unknown(kind: Any, card: Card, name: str) -> MaterialError:
    known = ", ".join(field.name for field in dataclasses.fields(kind))
    where = f"{card.file}: {name}"
    return MaterialError(where, "a field that a card does not have", known, "rename or remove it")
