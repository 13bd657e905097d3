"""Gather the sentences of errors, remarks and results, as templates: ``ply %1: found %2 mm, ...``

The core knows no language but English and no window, and a document keeps what it was told in
English.  The sentences stand in the sources of core and workbench as texts with gaps for numbers
and names; this module reads them there, so that the window can find the template behind a sentence
and say it in its own language.
"""

from __future__ import annotations

import ast
import itertools
import re
from collections.abc import Iterator
from pathlib import Path

__all__ = ["FRAME", "LISTED", "sentences"]

ROOT = Path(__file__).resolve().parents[1]
CORE = ROOT / "core" / "laywright"
WORKBENCH = ROOT / "freecad_mod" / "freecad" / "laywright"
RESULTS = WORKBENCH / "objects"
LISTED = WORKBENCH / "translations" / "sentences.txt"

FRAME = "%1: found %2, needed %3; %4."
"""How an error says its four parts (`laywright.errors`)."""

_FIELD = re.compile(r"\{:[^}]*\}")

# Besides errors, which may come from anywhere: rooms whose results carry remarks.
REMARKING = ("surface", "laminate", "cloth", "mould", "shop", "job")
# Modules of those rooms that make pages and drawings, not remarks.
PAGES = (
    "station",
    "summaries",
    "section",
    "sheet",
    "table",
    "files",
    "bench",
    "cut_list",
    "job",
    "outputs",
    "pictures",
    "laminate_page",
    "trim_guide",
    "links",
    "description",
    "drawing",
    "drawn",
    "traveller",
    "timeline",
    "_lists",
    "cautions",
)


def sentences() -> list[str]:
    """Return every template, sorted; gaps are ``%1``, ``%2`` and so on."""
    found = set()
    for path in sorted(CORE.rglob("*.py")):
        room = path.relative_to(CORE).parts[0]
        remarks = room in REMARKING and not any(word in path.stem for word in PAGES)
        tree = ast.parse(path.read_text(encoding="utf-8"))
        found |= {text for text, problem in _texts(tree) if problem or (remarks and " " in text)}
    for path in (*RESULTS.glob("*.py"), RESULTS.parent / "staleness.py"):
        tree = ast.parse(path.read_text(encoding="utf-8"))
        found |= {text for text, problem in _texts(tree) if problem or "%1" in text}
    found |= {FRAME, "up to date"}
    # A backslash stands in patterns to read with, humps and colons in names of properties.
    found = {text for text in found if not re.search(r"\\|::|^[A-Z][a-z]+[A-Z]", text)}
    return sorted(text for text in found if sum(map(str.isalpha, text)) > 1)


def _texts(tree: ast.Module) -> Iterator[tuple[str, bool]]:
    """Give every text of a module and whether it is a part of an error."""
    skipped = set()
    problems = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Expr):
            skipped.add(node.value)
        if isinstance(node, ast.JoinedStr):
            skipped.update(node.values)
        if isinstance(node, (ast.Subscript, ast.Compare)):
            skipped.update(ast.walk(node))
        if _name(node) in ("Property", "addProperty"):
            skipped.update(ast.walk(node))
        if isinstance(node, ast.Raise) or _name(node).endswith("Error"):
            problems.update(ast.walk(node))
        if _name(node).lstrip("_").startswith("check"):
            problems.update(ast.walk(node))
        if isinstance(node, ast.keyword) and node.arg == "where":
            problems.update(ast.walk(node))
    for node in ast.walk(tree):
        text = None if node in skipped else _template(node)
        if text is not None:
            yield text.strip(), node in problems


def _name(node: ast.AST) -> str:
    """Return the name of what a node calls."""
    return getattr(node.func, "id", "") if isinstance(node, ast.Call) else ""


def _template(node: ast.AST) -> str | None:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        gap = itertools.count(1)
        return _FIELD.sub(lambda _: f"%{next(gap)}", node.value).replace("\n", " ")
    if not isinstance(node, ast.JoinedStr):
        return None
    text, gaps = "", 0
    for part in node.values:
        if isinstance(part, ast.Constant):
            text += str(part.value)
        else:
            gaps += 1
            text += f"%{gaps}"
    return text.replace("\n", " ")
