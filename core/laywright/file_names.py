"""Names of files made from what people type: taken by every system, never leaving a folder."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence

__all__ = ["safe_name", "safe_names"]

_LONGEST_NAME = 80
_LONGEST_BYTES = 160
_RESERVED = re.compile(r"(con|prn|aux|nul|(com|lpt)[\d¹²³])", re.IGNORECASE)


def safe_name(text: str) -> str:
    """Return `text` as a file name that every system takes and that leaves no folder.

    Letters, digits, blanks, ``-``, ``_`` and ``.`` stay; all else becomes ``_``.  At most 80
    letters and 160 bytes are kept, so that there is room for an ending.

    Examples
    --------
    >>> safe_name("../tile 1/2: left"), safe_name("con"), safe_name("nul.txt"), safe_name("...")
    ('_tile 1_2_ left', 'con_', 'nul_.txt', 'unnamed')
    """
    composed = unicodedata.normalize("NFC", text)
    name = "".join(c if c.isalnum() or c in " -_." else "_" for c in composed)
    for _ in range(2):  # a name that is cut short may be a reserved one then
        name = _unreserved(_shortened(name))
    return name or "unnamed"


def _shortened(name: str) -> str:
    kept = name.strip(" .")[:_LONGEST_NAME].encode()[:_LONGEST_BYTES]
    return kept.decode(errors="ignore").strip(" .")


def _unreserved(name: str) -> str:
    """Return the name with ``_`` behind a word that some systems keep for a device."""
    stem, dot, rest = name.partition(".")
    return f"{stem.rstrip()}_{dot}{rest}" if _RESERVED.fullmatch(stem.rstrip()) else name


def safe_names(texts: Sequence[str]) -> tuple[str, ...]:
    """Return a safe name for each text, no two alike even where capitals do not count.

    Examples
    --------
    >>> safe_names(["cowl/1", "cowl:1", "COWL_1"])
    ('cowl_1', 'cowl_1-2', 'COWL_1-3')
    """
    taken: set[str] = set()
    names = []
    for text in texts:
        first = name = safe_name(text)
        count = 1
        while name.casefold() in taken:
            count += 1
            name = f"{first}-{count}"
        taken.add(name.casefold())
        names.append(name)
    return tuple(names)
