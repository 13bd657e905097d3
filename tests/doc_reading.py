"""Reading the pages of docs/ for the tests that hold them to the truth."""

import re
from pathlib import Path

__all__ = ["CHECKOUT", "CORE", "DOCS", "WORKBENCH", "blocks", "prose", "without_blocks"]

CHECKOUT = Path(__file__).resolve().parents[1]
DOCS = CHECKOUT / "docs"
CORE = CHECKOUT / "core" / "laywright"
WORKBENCH = CHECKOUT / "freecad_mod" / "freecad" / "laywright"

_BLOCK = re.compile(r"^```(\w+)\n(.*?)^```", re.DOTALL | re.MULTILINE)


def blocks(text, language):
    """Return the blocks of code in a language."""
    return [code for found, code in _BLOCK.findall(text) if found == language]


def without_blocks(page):
    """Return a page without its blocks of code."""
    return _BLOCK.sub("", page.read_text(encoding="utf-8"))


def prose(page):
    """Return the words of a page without its code."""
    return re.sub(r"\s+", " ", re.sub(r"`[^`\n]*`", "``", without_blocks(page)))
