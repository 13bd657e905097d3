"""Material cards as files: one TOML file per card, each value with its unit and its source.

A card looks like this::

    card = "cloth"
    name = "E-glass plain weave 163 g/m^2"
    fibre = "E-glass"
    weave = "plain"

    [areal_weight]
    value = 163
    unit = "g/m^2"
    low = 155
    high = 171
    source = "weighed, 5 pieces of 0.1 m^2"
    kind = "measured"

``low`` and ``high`` may be left out where no range is known.  ``kind`` is one of "measured",
"handbook" and "common practice".
"""

from __future__ import annotations

import dataclasses
import json
import re
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum
from functools import partial
from pathlib import Path
from typing import Any

from laywright.errors import LaywrightError, MaterialError
from laywright.quantities import magnitude
from laywright.saving import is_card_of, own_place, write_beside

__all__ = [
    "Card",
    "CardValue",
    "Knowledge",
    "card_text",
    "convert",
    "corrected",
    "parse_card",
    "read_cards",
    "write_card",
]

_KEYS = {"value", "unit", "low", "high", "source", "kind"}
_LONGEST_STEM = 120


class Knowledge(Enum):
    """How a value on a card is known."""

    MEASURED = "measured"
    HANDBOOK = "handbook"
    COMMON_PRACTICE = "common practice"


@dataclass(frozen=True)
class CardValue:
    """One value on a card, as it is written there.

    Attributes
    ----------
    value : float
        The number, in `unit`.
    unit : str
        Its unit.
    low, high : float or None
        The range in which it is usually found, in `unit`.
    source : str
        Where it comes from.
    kind : Knowledge
        How it is known.
    """

    value: float
    unit: str
    low: float | None
    high: float | None
    source: str
    kind: Knowledge


@dataclass(frozen=True)
class Card:
    """A material card as it is written in its file.

    Attributes
    ----------
    file : str
        Name of the file.
    card : str
        What it describes: ``"fibre"``, ``"resin"`` or ``"cloth"``.
    name : str
        Name of the material.
    texts : dict of str to str
        Plain words, for example the weave.
    values : dict of str to CardValue
        Values by field; a field of a group is written ``"strengths.shear"``.
    """

    file: str
    card: str
    name: str
    texts: dict[str, str]
    values: dict[str, CardValue]


def read_cards(folder: Path) -> Iterator[Card]:
    """Read every ``*.toml`` file of a folder, in the order of their names.

    Raises
    ------
    MaterialError
        If a file is not a card; the message names the file and the field.
    """
    for path in sorted(folder.glob("*.toml")):
        yield _read(path)


def _read(path: Path) -> Card:
    try:
        return parse_card(path.read_text(encoding="utf-8"), path.name)
    except (OSError, UnicodeDecodeError) as problem:
        if isinstance(problem, LaywrightError):
            raise
        raise MaterialError(
            path.name, f"a file that cannot be read ({problem})", "a card in TOML", "correct it"
        ) from problem


def parse_card(text: str, file: str) -> Card:
    """Return the card that a TOML text describes.

    Parameters
    ----------
    text : str
    file : str
        Name of its file, for messages.

    Raises
    ------
    MaterialError
        If the text is no card; the message names the file and the field.
    """
    try:
        tree = tomllib.loads(text)
    except tomllib.TOMLDecodeError as problem:
        raise MaterialError(
            file, f"a text that cannot be read ({problem})", "a card in TOML", "correct it"
        ) from problem
    texts: dict[str, str] = {}
    values: dict[str, CardValue] = {}
    for field, entry in tree.items():
        if isinstance(entry, str):
            texts[field] = entry
        elif isinstance(entry, dict) and entry and not set(entry) & _KEYS:
            for inner, inner_entry in entry.items():
                values[f"{field}.{inner}"] = _value(inner_entry, f"{file}: {field}.{inner}")
        else:
            values[field] = _value(entry, f"{file}: {field}")
    for needed in ("card", "name"):
        if needed not in texts:
            raise MaterialError(f"{file}: {needed}", "nothing", "a text", "add the line")
    return Card(file, texts.pop("card"), texts.pop("name"), texts, values)


def _value(entry: Any, where: str) -> CardValue:
    if not isinstance(entry, dict):
        raise MaterialError(
            where, f"a bare {entry!r}", "value, unit, source and kind", "write them as a table"
        )
    missing = {"value", "unit", "source", "kind"} - set(entry)
    if missing or set(entry) - _KEYS:
        odd = sorted(missing) or sorted(set(entry) - _KEYS)
        raise MaterialError(
            where,
            f"{'no ' if missing else ''}{', '.join(odd)}",
            "value, unit, source and kind, perhaps low and high",
            "add what is missing and take out the rest",
        )
    numbers = {key: _number(entry[key], where) for key in ("value", "low", "high") if key in entry}
    value, low, high = numbers["value"], numbers.get("low"), numbers.get("high")
    if (low is not None and low > value) or (high is not None and high < value):
        bounds = f"{'-' if low is None else low} to {'-' if high is None else high}"
        raise MaterialError(
            where,
            f"{value:g} outside its own range {bounds}",
            "low, value and high in rising order",
            "correct the value or the range",
        )
    for key in ("unit", "source"):
        if not isinstance(entry[key], str) or not entry[key].strip():
            raise MaterialError(f"{where}: {key}", "no text", "a text in quotes", "fill it in")
    kinds = [kind.value for kind in Knowledge]
    if entry["kind"] not in kinds:
        raise MaterialError(
            f"{where}: kind", repr(entry["kind"]), " or ".join(kinds), "say how the value is known"
        )
    return CardValue(value, entry["unit"], low, high, entry["source"], Knowledge(entry["kind"]))


def _number(entry: Any, where: str) -> float:
    if isinstance(entry, bool) or not isinstance(entry, (int, float)):
        raise MaterialError(where, repr(entry), "a number", "write it without quotes or unit")
    return float(entry)


def convert(value: CardValue, unit: str, where: str) -> float:
    """Return the number of a card value in the wanted unit.

    Raises
    ------
    MaterialError
        If its unit does not measure the same thing.
    """
    try:
        written = "" if value.unit == "1" else value.unit
        return magnitude(f"{value.value!r} {written}", unit, where)
    except LaywrightError as problem:
        raise MaterialError(where, problem.found, problem.needed, problem.remedy) from problem


def corrected(card: Card, field: str, value: float, unit: str, source: str) -> Card:
    """Return the card with one value replaced by a measured one.

    Parameters
    ----------
    card : Card
    field : str
        For example ``"areal_weight"``.
    value : float
        The measured value.
    unit : str
        Its unit.
    source : str
        How, when and by whom it was measured.
    """
    measured = CardValue(value, unit, None, None, source, Knowledge.MEASURED)
    return dataclasses.replace(card, values={**card.values, field: measured})


def card_text(card: Card) -> str:
    """Return the TOML text of a card, from which `read_cards` makes the same card."""
    lines = [f"card = {_quoted(card.card)}", f"name = {_quoted(card.name)}"]
    lines += [f"{name} = {_quoted(text)}" for name, text in card.texts.items()]
    for name, value in card.values.items():
        lines += ["", f"[{name}]", f"value = {value.value!r}", f"unit = {_quoted(value.unit)}"]
        lines += [
            f"{bound} = {number!r}"
            for bound, number in (("low", value.low), ("high", value.high))
            if number is not None
        ]
        lines += [f"source = {_quoted(value.source)}", f"kind = {_quoted(value.kind.value)}"]
    return "\n".join(lines) + "\n"


def _quoted(text: str) -> str:
    return json.dumps(text, ensure_ascii=False).replace("\x7f", "\\u007f")


def write_card(card: Card, folder: Path) -> Path:
    """Write a card into a folder of one's own, named after the material; an older one goes.

    Raises
    ------
    FileError
        If the folder cannot be written to.
    """
    stem = re.sub(r"[^a-z0-9]+", "_", f"{card.card} {card.name}".casefold()).strip("_")
    path = own_place(folder, stem[:_LONGEST_STEM], ".toml", partial(is_card_of, card.name))
    write_beside(path, card_text(card).encode())
    return path
