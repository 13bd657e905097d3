"""Documents of other versions: older ones go on, newer ones are shown and left alone.

tests/documents holds a job of each released version, named after it, saved by FreeCAD 0.20.
"""

import shutil
from pathlib import Path

import FreeCAD
import pytest
from parts import job_in

from freecad.laywright.objects.base import SCHEMA
from freecad.laywright.objects.job import KINDS
from freecad.laywright.objects.orphans import adopt

pytestmark = pytest.mark.freecad

SAVED = sorted((Path(__file__).parents[1] / "documents").glob("*.FCStd"))


def settings(obj):
    """Return what a person has set and can see, as text, links by name."""
    return {
        prop.name: str(getattr(obj, prop.name).Name if prop.kind == "Link" else value)
        for prop in obj.Proxy.properties
        if "Hidden" not in obj.getEditorMode(prop.name)
        and (value := getattr(obj, prop.name)) is not None
    }


@pytest.fixture(params=SAVED, ids=[path.stem for path in SAVED])
def saved(request, tmp_path):
    path = shutil.copy(request.param, tmp_path)
    document = FreeCAD.openDocument(str(path))
    yield document
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)


def test_a_document_of_each_release_opens_and_is_brought_up_to_date(saved):
    _, stages = job_in(saved)
    assert len(stages) >= 9
    assert list(stages) == [kind for kind in KINDS if kind in stages]
    before = {kind: settings(obj) for kind, obj in stages.items()}
    for obj in stages.values():
        obj.touch()
    saved.recompute()
    for kind, obj in stages.items():
        assert obj.isValid(), obj.Status
        assert obj.Status == "up to date"
        assert obj.Proxy.kept(obj).digest == obj.Digest
        assert before[kind].items() <= settings(obj).items()
        assert obj.LaywrightSchema == SCHEMA


def test_a_document_of_schema_1_opens_as_it_was_and_is_one_of_this_schema(hatch, tmp_path):
    document, _, stages = hatch
    before = {kind: (obj.Digest, obj.Status) for kind, obj in stages.items()}
    for obj in document.Objects:
        if hasattr(obj, "LaywrightSchema"):
            obj.LaywrightSchema = 1
    stages["Layup"].removeProperty("Extents")
    path = tmp_path / "schema 1.FCStd"
    document.saveAs(str(path))
    FreeCAD.closeDocument(document.Name)
    document = FreeCAD.openDocument(str(path))
    _, stages = job_in(document)
    assert list(stages["Layup"].Extents) == []
    for obj in stages.values():
        obj.touch()
    document.recompute()
    assert {kind: (obj.Digest, obj.Status) for kind, obj in stages.items()} == before
    assert {obj.LaywrightSchema for obj in stages.values()} == {SCHEMA}


def test_a_document_of_a_newer_version_is_shown_and_left_alone(hatch, tmp_path, capfd):
    document, _, stages = hatch
    body = stages["MouldBody"]
    body.LaywrightSchema = SCHEMA + 1
    document.saveAs(str(tmp_path / "newer.FCStd"))
    FreeCAD.closeDocument(document.Name)
    document = FreeCAD.openDocument(str(tmp_path / "newer.FCStd"))
    _, stages = job_in(document)
    body, tiles = stages["MouldBody"], stages["PrintTiles"]
    digest, volume, facets = body.Digest, body.Volume, body.Mesh.CountFacets
    assert body.Proxy.kept(body).digest == digest
    body.BaseHeight = "33 mm"
    document.recompute()
    assert not body.isValid()
    assert f"newer Laywright (schema {SCHEMA + 1})" in body.Status
    assert (body.Digest, body.Volume, body.Mesh.CountFacets) == (digest, volume, facets)
    assert body.LaywrightSchema == SCHEMA + 1
    assert tiles.Digest
    body.Proxy = None
    assert adopt(document) == []
    assert body.LaywrightSchema == SCHEMA + 1
