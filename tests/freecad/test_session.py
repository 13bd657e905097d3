"""What people do with objects in a session: move, copy, delete, rename, drive by expressions."""

from dataclasses import replace

import FreeCAD
import pytest
from parts import bored_box, hatch_job, job_in

from freecad.laywright import preferences
from freecad.laywright.exports import export_job
from freecad.laywright.objects.job import add_stage
from freecad.laywright.staleness import stale
from laywright.mould.tiles.printer import load_printers
from laywright.stage import Stage

pytestmark = pytest.mark.freecad


def test_a_part_inside_a_moved_container_is_taken_where_it_stands(doc):
    part, _ = bored_box(doc)
    container = doc.addObject("App::Part", "Container")
    container.addObject(part)
    container.Placement = FreeCAD.Placement(
        FreeCAD.Vector(100, 50, 10), FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 90)
    )
    face = add_stage(doc, "MouldedFace")
    top = next(
        f"Face{number}"
        for number, piece in enumerate(part.Shape.Faces, 1)
        if abs(piece.CenterOfMass.z - 20) < 1e-6
    )
    face.Faces = (part, [top])
    doc.recompute()
    assert face.isValid(), face.Status
    middle = face.Proxy.kept(face).surface.vertices.mean(axis=0)
    assert middle == pytest.approx([100 - 20, 50 + 30, 30])
    assert face.Shape.Faces[0].CenterOfMass.x == pytest.approx(80)

    part.Placement.Base = FreeCAD.Vector(5, 0, 0)
    doc.recompute()
    assert face.isValid(), face.Status
    assert face.Shape.Faces[0].CenterOfMass.y == pytest.approx(85)


def test_a_copied_job_is_whole_and_goes_its_own_way(hatch, monkeypatch):
    document, _, stages = hatch
    copied = document.copyObject(list(stages.values()), False)
    twins = {obj.LaywrightKind: obj for obj in copied if hasattr(obj, "LaywrightKind")}
    assert len(twins) == len(stages)
    for obj in stages.values():
        assert twins[obj.LaywrightKind].Digest == obj.Digest

    def never(self, *args, **kwargs):
        raise AssertionError(f"{self.title} was computed again")

    with monkeypatch.context() as patch:
        patch.setattr(Stage, "__call__", never)
        document.recompute()
    for twin in twins.values():
        assert twin.isValid()
        assert twin.Proxy.kept(twin).digest == twin.Digest
    twins["ClothPatternsObject"].Margin = "35 mm"
    document.recompute()
    assert twins["ClothPatternsObject"].Digest != stages["ClothPatterns"].Digest
    assert stages["ClothPatterns"].Margin.Value == 20.0


def test_a_deleted_stage_is_missed_by_name_and_the_rest_stays(hatch):
    document, _, stages = hatch
    sheet = stages["JobSheet"]
    document.removeObject(stages["RollPlan"].Name)
    document.recompute()
    assert not sheet.isValid()
    assert "found no link, needed a Roll Plan" in sheet.Status
    assert sheet.getStatusString().startswith("Job Sheet: found no link, needed a Roll Plan")
    assert stages["PrintTiles"].isValid()


def test_a_deleted_part_is_missed_by_name_and_undo_brings_all_back(hatch, capfd):
    document, _, stages = hatch
    document.UndoMode = 1
    names = {obj.Name for obj in document.Objects}
    before = {kind: (obj.Digest, obj.Status, obj.Label2) for kind, obj in stages.items()}
    capfd.readouterr()
    document.openTransaction("Delete")
    document.removeObject("HatchCover")
    document.recompute()
    document.commitTransaction()
    said = "".join(capfd.readouterr())
    assert said.count("Laywright: ") == 1
    assert "found no faces, for HatchCover is gone, needed one or more faces of a part" in said
    assert "Traceback" not in said
    face = stages["MouldedFace"]
    assert not face.isValid()
    for kind, obj in stages.items():
        if kind not in ("MouldedFace", "Layup"):
            assert obj.Label2 == "out of date: waits for Moulded Face"
            assert obj.Proxy.kept(obj).digest == before[kind][0]
    document.undo()
    assert {obj.Name for obj in document.Objects} == names
    assert face.Faces[0] is document.HatchCover
    document.recompute()
    assert {kind: (obj.Digest, obj.Status, obj.Label2) for kind, obj in stages.items()} == before
    assert all(obj.isValid() for obj in stages.values())


def test_labels_in_any_script_go_into_messages_sheets_and_files(hatch, tmp_path):
    document, job, stages = hatch
    names = {"MouldedFace": "Fläche №1", "Layup": "三層", "PrintTiles": "Κομμάτια ∅ 3/4"}
    for kind, label in names.items():
        stages[kind].Label = label
    job.Label = "Löffel: größer/kleiner?"
    stages["JobSheet"].Title = "Löffel: größer/kleiner?"
    document.recompute()
    assert {obj.Status for obj in stages.values()} == {"up to date"}
    written = export_job(job, tmp_path / "Dateien für 三層")
    assert len(written) > 10
    assert all(path.is_file() for path in written)
    sheet = (tmp_path / "Dateien für 三層" / "job sheet.html").read_text("utf-8")
    assert "Löffel: größer/kleiner?" in sheet
    document.saveAs(str(tmp_path / "Löffel 三層.FCStd"))
    FreeCAD.closeDocument(document.Name)
    document = FreeCAD.openDocument(str(tmp_path / "Löffel 三層.FCStd"))
    job, stages = job_in(document)
    assert job.Label == "Löffel: größer/kleiner?"
    assert {kind: stages[kind].Label for kind in names} == names
    stages["Layup"].Resin = "none such"
    document.recompute()
    assert stages["Layup"].getStatusString().startswith("三層, resin")
    assert stages["MouldBody"].Label2 == "out of date: waits for 三層"


@pytest.mark.parametrize("schema", [1, 2, 3])
def test_another_unit_system_makes_nothing_out_of_date(hatch, tmp_path, schema, monkeypatch):
    document, _, stages = hatch
    digests = {kind: obj.Digest for kind, obj in stages.items()}
    path = document.FileName

    def never(self, *args, **kwargs):
        raise AssertionError(f"{self.title} was computed again")

    earlier = FreeCAD.Units.getSchema()
    FreeCAD.Units.setSchema(schema)
    try:
        FreeCAD.closeDocument(document.Name)
        document = FreeCAD.openDocument(path)
        _, stages = job_in(document)
        monkeypatch.setattr(Stage, "__call__", never)
        for obj in stages.values():
            obj.touch()
        document.recompute()
        assert {kind: obj.Digest for kind, obj in stages.items()} == digests
        assert stale(stages.values()) == []
        assert {obj.Label2 for obj in stages.values()} == {""}
        stages["ClothPatterns"].Margin = "30 mm"
        assert stages["ClothPatterns"].Label2 == "out of date: margin changed"
    finally:
        FreeCAD.Units.setSchema(earlier)


def test_messages_use_the_label_that_the_person_gave(hatch):
    document, _, stages = hatch
    stages["Layup"].Label = "Three thin plies"
    stages["Layup"].Resin = "none such"
    document.recompute()
    assert stages["Layup"].getStatusString().startswith("Three thin plies, resin")
    assert stages["MouldBody"].Label2 == "out of date: waits for Three thin plies"
    assert next(obj.Label for obj in stale(stages.values())) == "Three thin plies"


class Broken:
    """An object of somebody else whose program has a fault."""

    def __init__(self, obj):
        obj.Proxy = self

    def execute(self, obj):
        raise ZeroDivisionError("a fault of the program")


@pytest.mark.parametrize("what", ["document", "object"])
def test_a_mistake_is_one_sentence_where_a_fault_is_a_traceback(hatch, what, capfd):
    document, _, stages = hatch
    layup = stages["Layup"]
    layup.Resin = "none such"
    capfd.readouterr()
    (document if what == "document" else layup).recompute()
    said = "".join(capfd.readouterr())
    assert "Laywright: Layup, resin: found 'none such', which" in said
    assert "Traceback" not in said
    assert layup.getStatusString().startswith("Layup, resin: found 'none such', which")

    broken = document.addObject("App::FeaturePython", "Broken")
    Broken(broken)
    broken.touch()
    document.recompute([broken])
    said = "".join(capfd.readouterr())
    assert "Traceback (most recent call last)" in said
    assert "in execute" in said
    assert "a fault of the program" in said


def test_inputs_follow_expressions_and_the_users_units(hatch):
    document, _, stages = hatch
    body = stages["MouldBody"]
    volume = body.Volume.Value
    body.setExpression("BaseHeight", "Dimensions.corner_radius / 5")
    document.recompute()
    assert body.BaseHeight.Value == pytest.approx(12.0)
    assert body.Volume.Value > volume
    schema = FreeCAD.Units.getSchema()
    try:
        FreeCAD.Units.setSchema(2)
        body.setExpression("BaseHeight", None)
        body.BaseHeight = "0.5 in"
        document.recompute()
        assert body.BaseHeight.Value == pytest.approx(12.7)
        assert body.isValid()
    finally:
        FreeCAD.Units.setSchema(schema)


def test_the_choices_made_once_go_into_new_jobs(tmp_path):
    group = FreeCAD.ParamGet(preferences.GROUP)
    mine = replace(next(iter(load_printers().values())), name="The one in the shed")
    names = ("PrintersFolder", "Printer", "DecimalMark")
    try:
        preferences.set_choice("PrintersFolder", str(tmp_path / "printers"))
        preferences.keep_printer(mine)
        preferences.set_choice("Printer", mine.name)
        preferences.set_choice("Paper", "Letter")
        preferences.set_choice("DecimalMark", "comma")
        assert preferences.printers()[mine.name] == mine
        assert preferences.own_printers() == [mine.name]
        document, _, stages = hatch_job("Preferred")
        assert stages["PrintTiles"].Printer == mine.name
        assert stages["JobSheet"].Paper == "Letter"
        assert stages["JobSheet"].DecimalMark == "comma"
        FreeCAD.closeDocument(document.Name)
        preferences.drop_printer(mine.name)
        assert preferences.own_printers() == []
    finally:
        for name in names:
            preferences.set_choice(name, "")
        group.RemInt("Paper")
    assert preferences.first_printer().startswith("Medium")
    assert (preferences.paper(), preferences.decimal_mark()) == ("A4", "point")


def test_sheets_are_written_with_a_decimal_comma_where_it_is_wanted(hatch, tmp_path):
    _, job, stages = hatch
    sheet = stages["JobSheet"]
    export_job(job, tmp_path / "point")
    sheet.DecimalMark = "comma"
    sheet.purgeTouched()
    export_job(job, tmp_path / "comma")
    page = {
        mark: (tmp_path / mark / "job sheet.html").read_text("utf-8") for mark in ("point", "comma")
    }
    thickness = f"{stages['Layup'].Thickness.Value:.2f} mm"
    assert thickness in page["point"]
    assert thickness.replace(".", ",") in page["comma"]
    assert thickness not in page["comma"]
    tables = [
        sorted(path.relative_to(tmp_path / mark) for path in (tmp_path / mark).rglob("*.csv"))
        for mark in page
    ]
    assert tables[0] == tables[1] != []
    for path in tables[0]:
        assert (tmp_path / "point" / path).read_bytes() == (tmp_path / "comma" / path).read_bytes()


def test_a_printer_that_is_not_there_is_said(hatch):
    document, _, stages = hatch
    stages["PrintTiles"].Printer = "gone"
    document.recompute()
    assert "found 'gone', needed one of" in stages["PrintTiles"].Status
