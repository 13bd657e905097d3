"""The whole job of the example in a real document: run, edit, save, reopen, export."""

import hashlib
import json
import math
import os
import subprocess

import FreeCAD
import pytest
import trimesh
from parts import set_dimension

from freecad.laywright.exports import export_job
from freecad.laywright.objects.base import is_current
from laywright.errors import InputError
from laywright.stage import Stage

pytestmark = pytest.mark.freecad

ALL = {
    "Moulded Face",
    "Release Check",
    "Layup",
    "Mould Body",
    "Print Tiles",
    "Cloth Patterns",
    "Roll Plan",
    "Mix & Cure Plan",
    "Job Sheet",
}


@pytest.fixture
def computed(monkeypatch):
    """Return the titles of the stages that are really computed, in order."""
    titles, running = [], []
    call = Stage.__call__

    def counted(self, *args, **kwargs):
        # A stage that asks another one for an answer of its own is still one stage.
        if self.title in ALL and not running:
            titles.append(self.title)
        running.append(self.title)
        try:
            return call(self, *args, **kwargs)
        finally:
            running.pop()

    monkeypatch.setattr(Stage, "__call__", counted)
    return titles


def digests(stages):
    return {kind: obj.Digest for kind, obj in stages.items()}


def test_every_stage_gives_a_true_result(hatch):
    _, _, stages = hatch
    assert {obj.Proxy.stage.title for obj in stages.values()} == ALL
    assert {kind: obj.Status for kind, obj in stages.items()} == dict.fromkeys(stages, "up to date")
    face = stages["MouldedFace"]
    assert face.Area.Value == pytest.approx(face.Shape.Area, rel=1e-3)
    assert face.Deviation.Value <= face.LargestChord.Value
    assert stages["ReleaseCheck"].UndercutArea.Value == 0.0
    # A crown of 1100 mm along and 500 mm across: the steepest place is where the outline is
    # farthest out, at the corner arcs; the slope there bounds the draft from below.
    steepest = math.degrees(math.asin(210 / 1100) + math.asin(150 / 500))
    assert 90.0 - steepest < stages["ReleaseCheck"].DraftFound.Value < 80.0
    # 200 g/m2 twill three times at equal masses of resin and cloth.
    assert stages["Layup"].ArealMass == pytest.approx(1200.0)
    body = stages["MouldBody"]
    assert body.Mesh.isSolid()
    assert body.Mesh.Volume == pytest.approx(body.Volume.Value, rel=1e-5)
    assert face.Deviation.Value <= body.LargestDeviation.Value < 0.06
    tiles = stages["PrintTiles"]
    assert tiles.Mesh.isSolid()
    assert tiles.Mesh.countComponents() == tiles.Count == 4
    assert abs(tiles.VolumeError) < 1e-6
    patterns = stages["ClothPatterns"]
    assert patterns.Count == 3
    assert patterns.CutArea.Value > 3 * face.Area.Value
    plan = stages["MixCurePlan"]
    assert plan.ClothMass == pytest.approx(patterns.CutArea.Value * 200e-6)
    mixed = plan.ResinMass + plan.HardenerMass
    assert 1.05 * plan.ClothMass <= mixed < 1.05 * plan.ClothMass + 4.0


def test_an_edited_dimension_runs_through_and_only_what_changed_is_computed(hatch, computed):
    document, _, stages = hatch
    before = digests(stages)
    document.recompute()
    assert computed == []

    set_dimension(document, "crown_radius_cross", "450 mm")
    assert set(computed) == ALL - {"Layup"}
    assert len(computed) == len(set(computed))
    after = digests(stages)
    assert {kind for kind in before if before[kind] != after[kind]} == set(stages) - {"Layup"}
    # 150 mm off the middle, a tighter crown falls off farther.
    body = stages["MouldBody"].Proxy.kept(stages["MouldBody"])
    fall = 32.0 + 450.0 - math.sqrt(450.0**2 - 150.0**2)
    assert float(body.working.vertices[:, 2].max()) == pytest.approx(60.0, abs=0.06)
    assert float(body.working.vertices[:, 2].min()) < 60.0 - fall + 32.0

    computed.clear()
    stages["ClothPatterns"].Margin = "30 mm"
    document.recompute()
    assert set(computed) == {"Cloth Patterns", "Roll Plan", "Mix & Cure Plan", "Job Sheet"}

    computed.clear()
    stages["PrintTiles"].Printer = "Large, 300 mm"
    document.recompute()
    assert set(computed) == {"Print Tiles", "Job Sheet"}

    computed.clear()
    stages["Layup"].Angles = [0.0, 90.0, 0.0]
    document.recompute()
    # The thickness is the same, and bends of balanced cloth close alike, so the mould stays.
    assert set(computed) == {
        "Layup",
        "Cloth Patterns",
        "Roll Plan",
        "Mix & Cure Plan",
        "Job Sheet",
    }

    computed.clear()
    set_dimension(document, "length", "440 mm")
    assert set(computed) == ALL - {"Layup"}


def test_written_files_are_told_out_of_date_after_an_edit(hatch, tmp_path):
    document, job, stages = hatch
    sheet = stages["JobSheet"]
    assert sheet.Files == "not written yet"
    written = export_job(job, tmp_path / "files")
    assert sheet.Files == "up to date"
    record = json.loads((tmp_path / "files" / "job.json").read_text(encoding="utf-8"))
    assert record["version"] == sheet.Version
    for name, digest in record["files"].items():
        content = (tmp_path / "files" / name).read_bytes()
        assert hashlib.sha256(content).hexdigest() == digest
    assert len(written) == len(record["files"]) + 1

    set_dimension(document, "crown_radius_cross", "450 mm")
    assert sheet.Files.startswith("out of date: Moulded Face, Release Check, Mould Body")
    assert "Layup" not in sheet.Files
    export_job(job, tmp_path / "files")
    assert sheet.Files == "up to date"


def test_tiles_are_read_back_by_another_library(hatch, tmp_path):
    _, job, stages = hatch
    export_job(job, tmp_path)
    tiles = stages["PrintTiles"].Proxy.kept(stages["PrintTiles"]).tiles
    scene = trimesh.load(next((tmp_path / "mould").glob("*tiles.3mf")))
    assert scene.units in ("mm", "millimeter", "millimeters")
    names = {name: scene.geometry[name] for name in scene.geometry}
    assert set(names) == {tile.name for tile in tiles}
    for tile in tiles:
        assert names[tile.name].is_watertight
        assert names[tile.name].volume == pytest.approx(tile.volume, rel=1e-4)
    for path in (tmp_path / "mould").glob("tile *.stl"):
        assert trimesh.load(path).is_watertight


def test_saved_and_opened_again_nothing_is_lost_and_nothing_recomputed(hatch, computed, tmp_path):
    document, _, stages = hatch
    before = digests(stages)
    names = {kind: obj.Name for kind, obj in stages.items()}
    path = str(tmp_path / "job.FCStd")
    document.saveAs(path)
    FreeCAD.closeDocument(document.Name)
    computed.clear()

    again = FreeCAD.openDocument(path)
    objects = {kind: again.getObject(name) for kind, name in names.items()}
    assert digests(objects) == before
    again.recompute()
    assert computed == []
    assert {obj.State[0] for obj in objects.values()} == {"Up-to-date"}
    for obj in objects.values():
        assert is_current(obj), obj.Label
    assert computed == []
    assert objects["MouldBody"].Mesh.isSolid()
    assert objects["ClothPatterns"].Shape.Wires

    objects["PrintTiles"].LeastTile = "35 mm"
    again.recompute()
    assert computed == ["Print Tiles", "Job Sheet"]


def test_a_document_opened_without_the_workbench_keeps_its_data(hatch, computed, tmp_path):
    document, _, stages = hatch
    before = digests(stages)
    names = {kind: obj.Name for kind, obj in stages.items()}
    path = tmp_path / "job.FCStd"
    document.saveAs(str(path))
    FreeCAD.closeDocument(document.Name)

    home = tmp_path / "home without workbench"
    home.mkdir()
    script = tmp_path / "open_and_save.py"
    script.write_text(
        "import os, FreeCAD\n"
        f"document = FreeCAD.openDocument({str(path)!r})\n"
        "document.Dimensions.set('A20', 'touched elsewhere')\n"
        "document.recompute()\n"
        "document.save()\n"
        "orphans = [o for o in document.Objects if hasattr(o, 'Digest')]\n"
        "os._exit(0 if len(orphans) == 9 and all(o.Proxy is None for o in orphans) else 1)\n",
        encoding="utf-8",
    )
    environment = os.environ | {"FREECAD_USER_HOME": str(home), "LC_ALL": "C.UTF-8"}
    done = subprocess.run(
        ["freecadcmd", str(script)],
        env=environment,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        check=False,
        timeout=120,
    )
    assert done.returncode == 0, done.stdout[-2000:]

    again = FreeCAD.openDocument(str(path))
    assert again.Dimensions.get("A20") == "touched elsewhere"
    objects = {kind: again.getObject(name) for kind, name in names.items()}
    assert digests(objects) == before
    for obj in objects.values():
        assert obj.Proxy.kept(obj).digest == obj.Digest
    computed.clear()
    again.recompute()
    assert computed == []


def test_bad_input_is_one_sentence_and_the_last_result_stays(hatch, tmp_path):
    document, job, stages = hatch
    layup, body = stages["Layup"], stages["MouldBody"]
    version, volume = layup.Digest, body.Volume.Value
    layup.Cloths = ["no such cloth", *layup.Cloths[1:]]
    document.recompute()
    assert not layup.isValid()
    assert "no such cloth" in layup.Status
    assert layup.Digest == version
    assert body.Volume.Value == volume
    assert layup.Proxy.kept(layup).digest == version
    with pytest.raises(InputError, match="out of date"):
        export_job(job, tmp_path / "never")
    assert not (tmp_path / "never").exists()

    layup.Cloths = [layup.Cloths[1], *layup.Cloths[1:]]
    document.recompute()
    assert layup.isValid()
    assert layup.Digest == version


def test_an_undercut_face_is_refused_by_name(hatch):
    document, _, stages = hatch
    face = stages["MouldedFace"]
    face.PullFrom = "fixed direction"
    face.Pull = FreeCAD.Vector(0, 0, 1)
    document.recompute()
    assert stages["ReleaseCheck"].UndercutArea.Value == pytest.approx(face.Area.Value)
    assert not stages["MouldBody"].isValid()
    assert face.Faces[1][0] in stages["MouldBody"].Status


def test_job_is_one_step_of_undo(hatch):
    document, _, stages = hatch
    document.UndoMode = 1
    version = stages["ClothPatterns"].Digest
    document.openTransaction("wider margin")
    stages["ClothPatterns"].Margin = "35 mm"
    document.recompute()
    document.commitTransaction()
    assert stages["ClothPatterns"].Digest != version
    document.undo()
    assert stages["ClothPatterns"].Margin.Value == 20.0
    assert stages["ClothPatterns"].Digest == version
    assert stages["ClothPatterns"].Proxy.kept(stages["ClothPatterns"]).digest == version
