"""A printed sheet as plain values: stations with cautions, steps, tables and pictures.

The HTML and the PDF writer beside this module turn the same value into pages, so that both
say the same.
"""

from __future__ import annotations

from dataclasses import dataclass

from laywright.files.drawing import Drawing

__all__ = ["Block", "Note", "Picture", "Sheet", "Station", "Steps", "Table"]


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
        Cells.
    """

    heading: str
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


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


Block = Note | Steps | Table | Picture


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
    """

    title: str
    version: str
    stations: tuple[Station, ...]
