"""Cards of one's own: checked before they are kept, in a folder that wins over what comes along.

Nothing of the shipped cards is ever changed: a card of one's own with the same name is taken in
its place, and when it goes the shipped one counts again.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping
from pathlib import Path

from laywright.errors import FileError, MaterialError
from laywright.laminate.card_files import (
    Card,
    CardValue,
    Knowledge,
    card_text,
    parse_card,
    write_card,
)
from laywright.laminate.materials import Materials, gather_cards, materials_of
from laywright.saving import made_folder, take_away, write_beside

__all__ = ["card_value", "changed_card", "checked", "drop_card", "keep_card", "open_card"]

_LARGEST_FILE = 200_000


def card_value(
    number: str, unit: str, low: str, high: str, source: str, kind: str, where: str
) -> CardValue:
    """Return a value of a card as it was typed.

    Parameters
    ----------
    number, unit, low, high, source, kind : str
        As they stand on a card; low and high may be empty.
    where : str
        Card and field, for messages, such as ``"E-glass: density"``.

    Raises
    ------
    MaterialError
        If a number is none, the range does not hold it, or the unit or source is missing.
    """
    kinds = [known.value for known in Knowledge]
    if kind not in kinds:
        raise MaterialError(
            f"{where}: kind", repr(kind), " or ".join(kinds), "say how the value is known"
        )
    value = _number(number, where)
    bounds = [None if not text.strip() else _number(text, where) for text in (low, high)]
    typed = CardValue(value, unit.strip(), bounds[0], bounds[1], source.strip(), Knowledge(kind))
    # One value as a card of its own: whatever a file would be refused for is refused here.
    name, _, field = where.rpartition(": ")
    parse_card(card_text(Card(name, "card", "name", {}, {field: typed})), name)
    return typed


def _number(text: str, where: str) -> float:
    try:
        return float(text.strip())
    except ValueError:
        raise MaterialError(
            where, f"'{text}'", "a number with a point as the decimal mark", "correct it"
        ) from None


def changed_card(
    card: Card, name: str, texts: Mapping[str, str], values: Mapping[str, CardValue]
) -> Card:
    """Return a card with this name, these words and these values in place of its own.

    Raises
    ------
    MaterialError
        If the name is empty.
    """
    if not name.strip():
        raise MaterialError(f"{card.card} card", "no name", "a name", "give it one")
    return dataclasses.replace(card, name=name.strip(), texts=dict(texts), values=dict(values))


def checked(card: Card, library: Materials) -> Card:
    """Return the card if the library can work with it in place of one of the same name.

    Raises
    ------
    MaterialError
        If a field is missing, unknown or implausible, or another card stands in the way.
    """
    present = library.cards.get(card.name)
    if present is not None and present.card != card.card:
        raise MaterialError(
            f"{card.name}: name",
            f"a {present.card} of that name",
            "a name of its own",
            "choose another name",
        )
    materials_of((dict(library.cards) | {card.name: card}).values())
    return card


def keep_card(card: Card, folder: Path, library: Materials) -> Path:
    """Check a card and write it into a folder of one's own, in place of one of its name.

    Parameters
    ----------
    card : Card
    folder : Path
        Made if it is not there.
    library : Materials
        What it must fit into.

    Returns
    -------
    Path
        The file.

    Raises
    ------
    MaterialError
        If the card cannot be worked with; nothing is written then.
    FileError
        If the folder cannot be written to.
    """
    checked(card, library)
    older = gather_cards(made_folder(folder)).get(card.name)
    if older is None:
        return write_card(card, folder)
    write_beside(folder / older.file, card_text(card).encode())
    return folder / older.file


def drop_card(name: str, folder: Path) -> None:
    """Take a card of one's own away; a shipped one of the same name counts again.

    Raises
    ------
    MaterialError
        If the folder holds no card of this name.
    FileError
        If the folder may not be written to.
    """
    own = gather_cards(folder)
    if name not in own:
        raise MaterialError(
            name, "a card that comes along", "a card of your own", "leave it: it does no harm"
        )
    take_away(folder / own[name].file)


def open_card(path: Path) -> Card:
    """Return the card in a file from elsewhere; it is checked when it is kept.

    Raises
    ------
    FileError
        If the file cannot be read or is far too large for a card.
    MaterialError
        If it is no card.
    """
    try:
        if path.stat().st_size > _LARGEST_FILE:
            raise FileError(
                path.name, f"{path.stat().st_size} bytes", "a card in TOML", "choose another file"
            )
        text = path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as problem:
        if isinstance(problem, FileError):
            raise
        raise FileError(
            path.name,
            f"a file that cannot be read ({problem})",
            "a card in TOML",
            "choose another file",
        ) from problem
    return parse_card(text, path.name)
