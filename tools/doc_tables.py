"""The property tables in docs/stages, written from the properties that the objects declare.

    bash tools/docs.sh tables

writes them anew; tests/freecad/test_docs.py fails while they differ.  A page marks the places:

    <!-- inputs of MouldBody -->
    <!-- end -->

What stands between the two is replaced; ``results of`` gives the read-only properties.
"""

import re
from datetime import date
from pathlib import Path

import FreeCAD

from freecad.laywright.objects.job import KINDS, SOURCES, TESTS, add_stage, make_job, stages_of

PAGES = Path(__file__).resolve().parents[1] / "docs" / "stages"
MARK = re.compile(r"(<!-- (inputs|results) of (\w+) -->\n).*?(<!-- end -->)", re.DOTALL)
_UNITS = {"Length": "mm", "Distance": "mm", "Angle": "°", "Area": "mm²", "Percent": "%"}
_IN_DOC = re.compile(r"\(([^()]*)\)")
_SPOKEN = {"degrees": "°", "1e-6 per K": "× 1e-6 per K"}


def first_values():
    """Return a document and the stage objects of a new job by kind, nothing computed."""
    document = FreeCAD.newDocument("Tables", hidden=True, temp=True)
    box = document.addObject("Part::Box", "Box")
    document.recompute()
    job = make_job(box, ["Face6"])
    stages = stages_of(job)
    for kind in SOURCES | KINDS | TESTS:
        if kind not in stages:
            stages[kind] = add_stage(document, kind, job)
    return document, stages


def renewed(text, stages):
    """Return a page with its tables as they should be."""
    return MARK.sub(lambda found: found[1] + _table(stages[found[3]], found[2]) + found[4], text)


def kinds_in(text):
    """Return which tables a page has, as (kind, inputs or results)."""
    return [(found[3], found[2]) for found in MARK.finditer(text)]


def _table(obj, which):
    shown = [
        prop for prop in _properties(obj, which) if "Hidden" not in obj.getEditorMode(prop.name)
    ]
    if which == "results":
        lines = ["| result | what it says |", "|---|---|"]
        lines += [f"| `{prop.name}` | {_safe(prop.doc)} |" for prop in shown]
    else:
        lines = ["| property | what it is | in a new job |", "|---|---|---|"]
        lines += [f"| `{prop.name}` | {_safe(prop.doc)} | {_value(obj, prop)} |" for prop in shown]
    return "\n".join(lines) + "\n"


def _properties(obj, which):
    return obj.Proxy.properties if which == "inputs" else obj.Proxy.reports


def _value(obj, prop):
    """Return the first value of an input as text, with its unit."""
    value = getattr(obj, prop.name)
    if prop.kind == "Enumeration":
        first, *others = obj.getEnumerationsOfProperty(prop.name)
        return _safe("; ".join([f"**{first}**", *others]))
    if prop.kind == "Link":
        return _safe(value.Label) if value else "none"
    if prop.kind.startswith("LinkSub"):
        return "the faces picked" if value else "none"
    if prop.kind in ("Length", "Distance", "Angle", "Area"):
        return f"{value.Value:g} {_UNITS[prop.kind]}"
    if prop.kind == "Bool":
        return "yes" if value else "no"
    if prop.kind == "StringList":
        return "<br>".join(_safe(item) for item in value) or "empty"
    if prop.kind == "FloatList":
        return "<br>".join(f"{item:g}{_unit(prop)}" for item in value) or "empty"
    if prop.kind == "VectorList":
        return "<br>".join(f"({p.x:g}, {p.y:g}, {p.z:g}){_unit(prop)}" for p in value) or "empty"
    if prop.kind == "Vector":
        return f"({value.x:g}, {value.y:g}, {value.z:g}){_unit(prop)}"
    if prop.kind in ("Float", "Integer", "Percent"):
        return f"{value:g}{_unit(prop)}"
    return "today" if value == date.today().isoformat() else _safe(str(value)) or "empty"


def _unit(prop):
    """Return the unit that the description names in brackets, with a blank before it."""
    found = _IN_DOC.search(prop.doc)
    unit = _SPOKEN.get(found[1], found[1]) if found else ""
    return f" {unit}" if unit else ""


def _safe(text):
    return text.replace("|", "\\|")


if __name__ == "__main__":
    document, stages = first_values()
    for path in sorted(PAGES.glob("*.md")):
        old = path.read_text(encoding="utf-8")
        new = renewed(old, stages)
        if new != old:
            path.write_text(new, encoding="utf-8")
            print(f"{path.name}: tables written anew")
