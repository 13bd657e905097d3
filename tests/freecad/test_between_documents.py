"""Objects that go elsewhere: into containers and other documents, into files, back by undo."""

import FreeCAD
import Mesh
import Part
import pytest
from parts import hatch_job

from freecad.laywright import bridge
from freecad.laywright.objects.job import add_stage
from freecad.laywright.staleness import stale
from laywright.stage import Stage

pytestmark = pytest.mark.freecad


def face_of(document, part, names):
    face = add_stage(document, "MouldedFace")
    face.Faces = (part, names)
    document.recompute()
    assert face.isValid(), face.Status
    return face.Proxy.kept(face).surface


def test_a_body_is_taken_where_it_stands(doc):
    body = doc.addObject("PartDesign::Body", "Body")
    box = doc.addObject("PartDesign::AdditiveBox", "Box")
    body.addObject(box)
    box.Length, box.Width, box.Height = 60, 40, 20
    body.Placement = FreeCAD.Placement(
        FreeCAD.Vector(100, 50, 10), FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 90)
    )
    container = doc.addObject("App::Part", "Container")
    container.addObject(body)
    container.Placement.Base = FreeCAD.Vector(0, 0, 1000)
    doc.recompute()
    top = bridge.upper_faces(bridge.placed_shape(body))
    assert len(top) == 1
    for part in (body, box):
        surface = face_of(doc, part, top)
        assert surface.vertices.mean(axis=0) == pytest.approx([80, 80, 1030])
        assert surface.area == pytest.approx(2400)


def test_a_link_stands_for_its_part_where_the_link_stands(doc):
    box = doc.addObject("Part::Box", "Box")
    link = doc.addObject("App::Link", "Link")
    link.LinkedObject = box
    link.Placement.Base = FreeCAD.Vector(0, 0, 500)
    doc.recompute()
    surface = face_of(doc, link, bridge.upper_faces(bridge.placed_shape(link)))
    assert surface.vertices.mean(axis=0) == pytest.approx([5, 5, 510])


def test_a_part_of_another_document_is_moulded_through_a_link(doc, tmp_path):
    box = doc.addObject("Part::Box", "Box")
    box.Height = 30
    doc.recompute()
    doc.saveAs(str(tmp_path / "part.FCStd"))
    other = FreeCAD.newDocument("Elsewhere")
    other.saveAs(str(tmp_path / "job.FCStd"))
    try:
        link = other.addObject("App::Link", "Link")
        link.LinkedObject = box
        other.recompute()
        surface = face_of(other, link, ["Face6"])
        assert surface.vertices[:, 2].mean() == pytest.approx(30)
        box.Height = 40
        doc.recompute()
        other.recompute()
        face = other.MouldedFace
        assert face.isValid(), face.Status
        assert face.Proxy.kept(face).surface.vertices[:, 2].mean() == pytest.approx(40)
    finally:
        FreeCAD.closeDocument(other.Name)


def test_a_job_pasted_into_another_document_is_whole(hatch, monkeypatch):
    _, _, stages = hatch
    other = FreeCAD.newDocument("Elsewhere")
    copied = other.copyObject(list(stages.values()), True)
    twins = {obj.LaywrightKind: obj for obj in copied if hasattr(obj, "LaywrightKind")}

    def never(self, *args, **kwargs):
        raise AssertionError(f"{self.title} was computed again")

    with monkeypatch.context() as patch:
        patch.setattr(Stage, "__call__", never)
        other.recompute()
    for obj in stages.values():
        twin = twins[obj.LaywrightKind]
        assert twin.Document is other
        assert (twin.Digest, twin.Status) == (obj.Digest, "up to date")
    assert stale([twins[obj.LaywrightKind] for obj in stages.values()]) == []


def test_undo_and_redo_carry_results_with_them(hatch):
    document, _, stages = hatch
    document.UndoMode = 1
    body = stages["MouldBody"]
    states = [(body.Digest, body.Volume.Value)]
    document.openTransaction("higher base")
    body.BaseHeight = "12 mm"
    document.recompute()
    document.commitTransaction()
    states.append((body.Digest, body.Volume.Value))
    assert states[0] != states[1]
    for state, step in ((0, document.undo), (1, document.redo), (0, document.undo)):
        step()
        assert (body.Digest, body.Volume.Value) == states[state]
        assert body.Proxy.kept(body).digest == body.Digest
        assert body.Mesh.Volume == pytest.approx(body.Volume.Value, rel=1e-5)


def test_what_is_selected_can_be_exported_as_freecad_exports(hatch, tmp_path):
    _, _, stages = hatch
    body, patterns = stages["MouldBody"], stages["ClothPatterns"]
    Mesh.export([body], str(tmp_path / "body.stl"))
    mesh = Mesh.Mesh(str(tmp_path / "body.stl"))
    assert mesh.isSolid()
    assert mesh.Volume == pytest.approx(body.Volume.Value, rel=1e-4)
    Part.export([patterns], str(tmp_path / "patterns.step"))
    shape = Part.read(str(tmp_path / "patterns.step"))
    assert shape.Length == pytest.approx(patterns.Shape.Length, rel=1e-6)


def test_saved_under_another_name_both_files_hold_the_job(hatch, tmp_path):
    document, _, stages = hatch
    first, digest = document.FileName, stages["JobSheet"].Digest
    document.saveAs(str(tmp_path / "another.FCStd"))
    stages["ClothPatterns"].Margin = "24 mm"
    document.recompute()
    changed = stages["JobSheet"].Digest
    document.save()
    FreeCAD.closeDocument(document.Name)
    for path, wanted in ((first, digest), (str(tmp_path / "another.FCStd"), changed)):
        again = FreeCAD.openDocument(path)
        assert again.JobSheet.Digest == wanted
        assert again.JobSheet.Proxy.kept(again.JobSheet).digest == wanted
        FreeCAD.closeDocument(again.Name)


def test_upper_faces_are_those_that_hang_together():
    document, _, stages = hatch_job("Faces")
    part = document.HatchCover
    assert bridge.upper_faces(part.Shape) == sorted(stages["MouldedFace"].Faces[1])
    FreeCAD.closeDocument(document.Name)
