"""Letters that every format can carry, and the room that they take.

All writers set text in Helvetica or its like; a label's height is that of its capitals.
"""

from __future__ import annotations

import unicodedata

__all__ = ["CAPITAL", "clean", "latin", "width_of"]

CAPITAL = 0.718
"""Height of a capital letter over the font size, from the font's own metrics."""

_SYMBOLS = "≤≥≠≈∞√∂∑∏∫−→←↑↓↔∠αβγδεζηθικλμνξοπρστυφχψωΔΓΘΛΞΠΣΦΨΩ"
_BARE = {"Ł": "L", "ł": "l", "Đ": "D", "đ": "d", "ı": "i", "ħ": "h", "Ħ": "H"}
_MEAN_WIDTH = 0.58  # of the font size, a little above the mean of running text


def clean(text: str) -> str:
    r"""Return `text` without what no text format can hold: control codes and half characters.

    Line ends and tabs become blanks.

    Examples
    --------
    >>> clean("ply 1\x00\nwarp")
    'ply 1 warp'
    """
    if text.isprintable():
        return text
    spaced = "".join(" " if character in "\t\r\n" else character for character in text)
    return "".join(
        character
        for character in spaced
        if unicodedata.category(character) not in ("Cc", "Cs", "Cf")
        and character not in "\ufffe\uffff"
    )


def latin(text: str) -> str:
    """Return `text` in the characters of the fonts that every PDF reader has.

    A letter outside them loses its accent; what cannot be told so becomes a question mark.

    Examples
    --------
    >>> latin("Łódka č ☂ 3 m² ≥ 2 m²")
    'Lódka c ? 3 m² ≥ 2 m²'
    """
    return "".join(_latin_character(character) for character in clean(text))


def _latin_character(character: str) -> str:
    if character in _SYMBOLS or character.encode("cp1252", "ignore"):
        return character
    parts = unicodedata.normalize("NFKD", _BARE.get(character, character))
    return parts.encode("cp1252", "ignore").decode("cp1252") or "?"


def width_of(text: str, height: float) -> float:
    """Return the estimated width of a line of text, mm, from the height of its capitals, mm."""
    return len(text) * _MEAN_WIDTH * height / CAPITAL
