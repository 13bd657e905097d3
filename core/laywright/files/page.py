"""A printed sheet as plain values: stations with cautions, steps, tables and pictures.

The HTML and the PDF writer beside this module turn the same value into pages, so that both
say the same.
"""

from __future__ import annotations

from dataclasses import dataclass

from laywright.errors import InputError
from laywright.files.drawing import Drawing

__all__ = [
    "Block",
    "Card",
    "Cards",
    "Note",
    "Picture",
    "Sheet",
    "Station",
    "Steps",
    "Table",
    "version_note",
]


@dataclass(frozen=True)
class Note:
    """A paragraph."""

    text: str


@dataclass(frozen=True)
class Steps:
    """Numbered steps, each with a box to tick."""

    items: tuple[str, ...]


@dataclass(frozen=True)
class Table:
    """A table.

    Attributes
    ----------
    heading : str
        Title above it.
    columns : tuple of str
        Column heads, each with its unit.
    rows : tuple of tuple of str
        Cells; an empty one is room to write by hand.
    """

    heading: str
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]

    def __post_init__(self) -> None:
        for number, row in enumerate(self.rows, start=1):
            if len(row) != len(self.columns):
                raise InputError(
                    f"row {number} of the table '{self.heading}'",
                    f"{len(row)} cells",
                    f"{len(self.columns)} cells",
                    "give one cell per column",
                )


@dataclass(frozen=True, eq=False)
class Picture:
    """A drawing, shrunk to fit the page.

    Attributes
    ----------
    caption : str
        Text below it.
    drawing : Drawing
        In mm; the page says that the picture is not to scale.
    height : float, mm
        Largest height on the page.
    """

    caption: str
    drawing: Drawing
    height: float = 90.0


@dataclass(frozen=True, eq=False)
class Card:
    """One thing to be handled: a box to tick, a picture, a few lines.

    Attributes
    ----------
    title : str
        Beside the box.
    lines : tuple of str
        Below it; an empty one is a line to write on.
    drawing : Drawing or None
        Shrunk to fit the card.
    """

    title: str
    lines: tuple[str, ...]
    drawing: Drawing | None = None


@dataclass(frozen=True, eq=False)
class Cards:
    """Cards in reading order, two in a row.

    Attributes
    ----------
    heading : str
        Title above them.
    cards : tuple of Card
    """

    heading: str
    cards: tuple[Card, ...]


Block = Note | Steps | Table | Picture | Cards


@dataclass(frozen=True, eq=False)
class Station:
    """One page of the sheet: what is done at one place of the shop.

    Attributes
    ----------
    title : str
        For example ``"Mix"``.
    cautions : tuple of str
        What can hurt at this step; printed in a frame at its top.
    blocks : tuple of Block
        Contents, in order.
    """

    title: str
    cautions: tuple[str, ...]
    blocks: tuple[Block, ...]


@dataclass(frozen=True, eq=False)
class Sheet:
    """The whole sheet.

    Attributes
    ----------
    title : str
        Name of the job.
    version : str
        Short code of the job's inputs, printed on every page.
    stations : tuple of Station
        Pages, in the order of the work.
    foot : str
        What stands at the foot of every page, before the note on its version.
    """

    title: str
    version: str
    stations: tuple[Station, ...]
    foot: str = ""


def version_note(sheet: Sheet) -> str:
    """Return the sentence by which a person knows whether a printed page still holds.

    Examples
    --------
    >>> version_note(Sheet("cowl", "3F2A", ()))
    'Version 3F2A. If the job now shows another code, this page is out of date: print it again.'
    """
    return (
        f"Version {sheet.version}. If the job now shows another code, this page is out of "
        "date: print it again."
    )
