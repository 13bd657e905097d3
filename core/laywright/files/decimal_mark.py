"""The decimal mark on printed sheets: a point or a comma, put in when all words stand."""

from __future__ import annotations

import re
from dataclasses import replace
from enum import StrEnum

from laywright.files.drawing import Drawing, Label
from laywright.files.page import Block, Card, Cards, Note, Picture, Sheet, Station, Steps, Table

__all__ = ["DecimalMark", "marked", "with_comma"]

_FRACTION = re.compile(r"(?<![\w.])(\d+)\.(\d+)(?!\w|\.\d)")
_ENTRY = r"-?\d+(?:\.\d+)?"
_LIST = re.compile(rf"(?<![\w.,]){_ENTRY}(?:, {_ENTRY})+(?!\w|\.\d)")


class DecimalMark(StrEnum):
    """What stands between the whole and the fraction of a number."""

    POINT = "point"
    COMMA = "comma"


def with_comma(text: str) -> str:
    """Return a text with decimal commas; lists of such numbers are told apart by semicolons.

    Names of files, versions and times of day stay as they are.

    Examples
    --------
    >>> with_comma("51.8 x 173.8 mm; moduli 12.9, 12.9, 3.6 GPa")
    '51,8 x 173,8 mm; moduli 12,9; 12,9; 3,6 GPa'
    >>> with_comma("tile 1.stl of 0.9.1, day 1, 12:10")
    'tile 1.stl of 0.9.1, day 1, 12:10'
    """
    apart = _LIST.sub(
        lambda found: found[0].replace(", ", "; ") if "." in found[0] else found[0], text
    )
    return _FRACTION.sub(r"\1,\2", apart)


def marked(sheet: Sheet, mark: DecimalMark) -> Sheet:
    """Return a sheet with this decimal mark in all its words; it is written with points."""
    if mark is DecimalMark.POINT:
        return sheet
    return replace(sheet, stations=tuple(_station(station) for station in sheet.stations))


def _station(station: Station) -> Station:
    return Station(
        station.title, _words(station.cautions), tuple(_block(block) for block in station.blocks)
    )


def _block(block: Block) -> Block:
    match block:
        case Note():
            return Note(with_comma(block.text))
        case Steps():
            return Steps(_words(block.items))
        case Table():
            rows = tuple(_words(row) for row in block.rows)
            return Table(with_comma(block.heading), _words(block.columns), rows)
        case Picture():
            return replace(
                block, caption=with_comma(block.caption), drawing=_drawing(block.drawing)
            )
        case Cards():
            return Cards(with_comma(block.heading), tuple(_card(card) for card in block.cards))


def _card(card: Card) -> Card:
    drawing = None if card.drawing is None else _drawing(card.drawing)
    return Card(with_comma(card.title), _words(card.lines), drawing)


def _drawing(drawing: Drawing) -> Drawing:
    shapes = tuple(
        replace(shape, text=with_comma(shape.text)) if isinstance(shape, Label) else shape
        for shape in drawing.shapes
    )
    return replace(drawing, shapes=shapes)


def _words(texts: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(with_comma(text) for text in texts)
