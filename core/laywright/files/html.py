"""A sheet as one HTML file that needs nothing beside it: pictures and looks are inside.

It prints on A4 and on Letter alike, because its width fits both and it names neither.
"""

from __future__ import annotations

from functools import cache
from importlib.resources import files

import jinja2
from markupsafe import Markup

from laywright.errors import InputError
from laywright.files.drawing import Drawing
from laywright.files.framing import fitted
from laywright.files.lettering import clean
from laywright.files.page import Cards, Note, Picture, Sheet, Steps, Table, version_note
from laywright.files.svg import svg_element

__all__ = ["html_bytes"]

_WIDTH = 178.0  # mm, fits between the margins of A4 and of Letter
_KINDS = {Note: "note", Steps: "steps", Table: "table", Picture: "picture", Cards: "cards"}


def html_bytes(sheet: Sheet) -> bytes:
    """Return a sheet as one HTML file.

    Parameters
    ----------
    sheet : Sheet
        The sheet; whatever its texts hold appears as text.

    Returns
    -------
    bytes
        UTF-8, without scripts and without anything to be fetched.

    Raises
    ------
    InputError
        If the sheet has no station.
    """
    if not sheet.stations:
        raise InputError(sheet.title, "no station", "at least one", "fill the sheet first")
    page = _template().render(sheet=sheet, note=version_note(sheet))
    return clean_lines(page).encode("utf-8")


def clean_lines(page: str) -> str:
    """Return a page without control codes; its line ends stay."""
    return "\n".join(clean(line) for line in page.splitlines()) + "\n"


@cache
def _template() -> jinja2.Template:
    environment = jinja2.Environment(
        autoescape=True, undefined=jinja2.StrictUndefined, trim_blocks=True, lstrip_blocks=True
    )
    environment.filters["picture"] = _picture
    environment.tests["kind"] = lambda block, kind: _KINDS[type(block)] == kind
    source = files("laywright.files").joinpath("sheet.html.jinja").read_text(encoding="utf-8")
    return environment.from_string(source)


def _picture(drawing: Drawing, height: float, width: float = _WIDTH) -> Markup:
    """Return the drawing as an element; its texts were escaped when it was written."""
    return Markup(svg_element(fitted(drawing, width, height)))
