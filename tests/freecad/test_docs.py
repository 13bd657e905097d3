"""What docs/ says about the workbench is true: property tables, macros, numbers."""

import re
import sys
from pathlib import Path

import FreeCAD
import pytest

sys.path.append(str(Path(__file__).resolve().parents[2] / "tools"))
import doc_tables

CHECKOUT = Path(__file__).resolve().parents[2]
DOCS = CHECKOUT / "docs"

pytestmark = pytest.mark.freecad

PAGES = sorted((DOCS / "stages").glob("*.md"))


def python_blocks(name):
    text = (DOCS / name).read_text(encoding="utf-8")
    return re.findall(r"^```python\n(.*?)^```", text, re.DOTALL | re.MULTILINE)


@pytest.fixture(scope="module")
def first_stages():
    document, stages = doc_tables.first_values()
    name = document.Name
    yield stages
    if name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_property_tables_are_those_of_the_objects(page, first_stages):
    text = page.read_text(encoding="utf-8")
    assert text == doc_tables.renewed(text, first_stages), "run: bash tools/docs.sh tables"


def test_every_kind_of_object_has_its_page(first_stages):
    found = [kind for page in PAGES for kind in doc_tables.kinds_in(page.read_text("utf-8"))]
    assert sorted(found) == sorted(
        (kind, w) for kind in first_stages for w in ("inputs", "results")
    )


def test_the_macros_run_from_top_to_bottom(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    names = {}
    try:
        for number, block in enumerate(python_blocks("macros.md"), 1):
            exec(compile(block, f"macros.md, block {number}", "exec"), names)
        assert (tmp_path / "hatch cover files" / "job.json").is_file()
        assert names["weigh_in"].Verdict.startswith("within the band")
        assert names["test"].Modulus.getValueAs("MPa") > 1000.0
    finally:
        for name in list(FreeCAD.listDocuments()):
            FreeCAD.closeDocument(name)


def test_the_numbers_of_the_first_job_are_those_of_the_example(hatch):
    _, _, stages = hatch
    text = (DOCS / "first-job.md").read_text(encoding="utf-8")
    rows = re.findall(r"^\| `(\w+)\.(\w+)` \|.*\| ([-\d.]+) [^|]*\|$", text, re.MULTILINE)
    assert len(rows) >= 8
    for kind, name, shown in rows:
        value = getattr(stages[kind], name)
        value = getattr(value, "Value", value)
        last = 10.0 ** -len(shown.partition(".")[2])
        assert float(shown) == pytest.approx(value, abs=last, rel=0.02), f"{kind}.{name}"
