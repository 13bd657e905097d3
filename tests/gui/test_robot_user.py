"""A robot user's whole job in the window: from a PartDesign part to files, and once more."""

import json

import ezdxf
import FreeCAD
import FreeCADGui
import pytest
import trimesh
from gutter import LENGTH, gutter, section_length, set_length
from robot import (
    VERSION,
    answered,
    buttons,
    chosen_folder,
    click_command,
    click_in_tree,
    close_all,
    fill,
    opened,
    pump,
    stages_in,
    until,
)

from freecad.laywright import lessons
from freecad.laywright.objects.job import KINDS
from freecad.laywright.qt import QtWidgets

pytestmark = pytest.mark.gui

# What is typed or chosen in each panel, and what the property then holds.
FILLED = {
    "MouldedFace": {"LargestChord": ("0,04 mm", 0.04)},
    "ReleaseCheck": {"LeastDraft": ("3", 3.0), "TextureDepth": ("0.05 mm", 0.05)},
    "Layup": {"VoidShare": ("1,5", 1.5), "ResinShare": (52, 52)},
    "MouldBody": {"RunOff": ("1 in", 25.4), "BaseHeight": ("9,5 mm", 9.5), "PryPockets": (2, 2)},
    "PrintTiles": {"GlueGap": ("0,2 mm", 0.2), "Printer": ("Large, 300 mm", "Large, 300 mm")},
    "ClothPatterns": {"Margin": ("22 mm", 22.0), "SideMargins": ("left: 30 mm", ["left: 30 mm"])},
    "RollPlan": {"SearchTime": ("0.2 s", 0.2), "Parts": (2, 2)},
    "MixCurePlan": {"Temperature": ("70 °F", 21.111), "ScaleStep": ("0,1 g", 0.1)},
    "JobSheet": {"Title": ("Robot gutter", "Robot gutter"), "Paper": ("Letter", "Letter")},
}


@pytest.fixture
def part(window, quick_drape, tmp_path, monkeypatch):
    """Return a document that holds nothing but a part; records go to a folder of their own."""
    for place in ("freecad.laywright.panels.weigh_in_panel", lessons.__name__):
        monkeypatch.setattr(f"{place}.records_folder", lambda: tmp_path / "records")
    document = FreeCAD.newDocument("Robot")
    document.UndoMode = 1
    gutter(document)
    FreeCADGui.SendMsgToActiveView("ViewFit")
    pump()
    yield document
    close_all()


def accept_filled(obj, kind):
    """Fill an object's panel as `FILLED` says and press OK."""
    fill_and_accept(obj, {name: typed for name, (typed, _) in FILLED[kind].items()})
    for name, (_, held) in FILLED[kind].items():
        found = getattr(getattr(obj, name), "Value", getattr(obj, name))
        assert found == pytest.approx(held, rel=1e-4) if isinstance(held, float) else held == found


def fill_and_accept(obj, texts):
    """Fill an object's panel and press OK."""
    form = opened(obj)
    for name, typed in texts.items():
        fill(form, name, typed)
    buttons(form)["Ok"].click()
    assert until(lambda: not FreeCADGui.Control.activeDialog()), obj.Label


def test_the_whole_job_from_part_to_files_and_again_after_an_edit(part, tmp_path, artefacts):
    click_in_tree("Gutter")
    click_command("Laywright_StartJob")
    stages = stages_in(part)
    assert stages["RollPlan"].Status == "up to date"
    assert "weigh with a finer scale" in stages["MixCurePlan"].Status
    for kind, obj in stages.items():
        accept_filled(obj, kind)
    assert {obj.Status for obj in stages.values()} == {"up to date"}
    job = stages["Layup"].getParentGroup().Label
    click_in_tree(job)
    with chosen_folder(tmp_path / "first"):
        click_command("Laywright_WriteFiles")
    first = written(tmp_path / "first", stages)

    set_length(part, LENGTH + 40.0)
    click_in_tree(job)
    click_command("Laywright_BringUpToDate")
    assert {obj.Status for obj in stages.values()} == {"up to date"}
    assert stages["JobSheet"].Files.startswith("out of date: Moulded Face, Release Check")
    click_in_tree(job)
    with chosen_folder(tmp_path / "second"):
        click_command("Laywright_WriteFiles")
    second = written(tmp_path / "second", stages)
    assert first["face"] == pytest.approx(LENGTH * section_length(), rel=1e-3)
    assert second["face"] - first["face"] == pytest.approx(40.0 * section_length(), rel=1e-3)
    assert second["body"][0] == pytest.approx(first["body"][0] + 40.0, abs=0.05)
    assert second["body"][1:] == pytest.approx(first["body"][1:], abs=0.05)
    # The face rolls out flat, so 40 mm more of it are 40 mm more of cloth with both margins.
    more = sum(40.0 * (width + 22.0 + 30.0) for width in first["widths"])
    assert second["cut"] - first["cut"] == pytest.approx(more, rel=2e-3)
    assert second["version"] != first["version"]
    FreeCADGui.getMainWindow().grab().save(str(artefacts / f"robot {VERSION}.png"))


def test_what_is_made_is_weighed_tested_and_learnt_from_by_button(part, tmp_path):
    click_in_tree("Gutter")
    click_command("Laywright_StartJob")
    stages = stages_in(part)
    accept_filled(stages["MixCurePlan"], "MixCurePlan")
    job = stages["Layup"].getParentGroup().Label
    plan = stages["MixCurePlan"]
    click_in_tree(job)
    click_command("Laywright_WeighIn")
    weigh_in = next(obj for obj in part.Objects if obj.Name.startswith("WeighIn"))
    readings = {"DryCloth": 1.0, "MixMade": 1.1, "PartUntrimmed": 2.0}
    fill_and_accept(
        weigh_in, {name: f"{share * plan.ClothMass:.3f} g" for name, share in readings.items()}
    )
    assert weigh_in.MixMade == pytest.approx(1.1 * plan.ClothMass, rel=1e-3)
    form = opened(weigh_in)
    fill(form, "MixMade", "1 kg")
    buttons(form)["Cancel"].click()
    pump()
    assert weigh_in.MixMade == pytest.approx(1.1 * plan.ClothMass, rel=1e-3)
    click_in_tree(job)
    click_command("Laywright_CouponTest")
    coupons = next(obj for obj in part.Objects if obj.Name.startswith("CouponTest"))
    fill_and_accept(coupons, {"Count": 6})
    assert (coupons.Count, coupons.Status) == (6, "up to date")
    click_in_tree(job)
    with answered("Lessons", lambda window: window.reject()) as seen:
        click_command("Laywright_Learn")
    assert any("no accepted record" in text for text in seen[0])
    click_command("Laywright_MaterialCards")
    windows = QtWidgets.QApplication.topLevelWidgets()
    (cards,) = [w for w in windows if w.isVisible() and w.objectName() == "MaterialCards"]
    assert cards.names.topLevelItemCount() > 0
    cards.accept()
    pump()
    (body,) = [obj for obj in part.Objects if obj.Name == "MouldBody"]
    assert body.Mesh.isSolid()


def test_every_stage_is_added_by_its_own_button_and_takes_what_is_there(part):
    click_in_tree("Gutter")
    for kind in KINDS:
        click_command(f"Laywright_{kind}")
        (obj,) = [
            one for one in part.Objects if getattr(one, "LaywrightKind", "") == f"{kind}Object"
        ]
        if kind == "Layup":
            form = opened(obj)
            next(b for b in form.findChildren(QtWidgets.QPushButton) if b.text() == "Add").click()
            fill(form, "Resin", "Laminating epoxy, slow hardener")
            buttons(form)["Ok"].click()
            assert until(lambda: not FreeCADGui.Control.activeDialog())
        elif kind == "MixCurePlan":
            accept_filled(obj, kind)
        assert obj.Status == "up to date", kind
        part.commitTransaction()
    assert part.JobSheet.Version


def written(folder, stages):
    """Return the numbers of written files, read by other libraries, after comparing them."""
    record = json.loads((folder / "job.json").read_text(encoding="utf-8"))
    assert record["version"] == stages["JobSheet"].Version
    assert {"job sheet Letter.pdf", "job sheet.html"} <= set(record["files"])
    assert all((folder / name).stat().st_size for name in record["files"])
    (path,) = (folder / "mould").glob("*mould body (mm).stl")
    body = trimesh.load(path)
    assert body.is_watertight
    assert body.volume == pytest.approx(stages["MouldBody"].Volume.Value, rel=1e-4)
    (path,) = (folder / "mould").glob("*tiles.3mf")
    tiles = trimesh.load(path).geometry.values()
    assert len(tiles) == stages["PrintTiles"].Count
    assert all(tile.is_watertight for tile in tiles)
    drawing = ezdxf.readfile(folder / "cloth" / "patterns (mm).dxf")
    assert drawing.units == ezdxf.units.MM
    cut = sum(area_of(line) for line in drawing.modelspace().query("LWPOLYLINE[layer=='cut']"))
    patterns = stages["ClothPatterns"]
    assert cut == pytest.approx(patterns.CutArea.Value, rel=1e-3)
    assert patterns.Count == 3
    assert (folder / "job sheet Letter.pdf").read_bytes()[:5] == b"%PDF-"
    return {
        "body": body.extents.tolist(),
        "face": stages["MouldedFace"].Area.Value,
        "cut": cut,
        "widths": [p.net_area / LENGTH for p in patterns.Proxy.kept(patterns).patterns],
        "version": record["version"],
    }


def area_of(line):
    """Return the area inside a closed line of a drawing."""
    points = [(x, y) for x, y, *_ in line.get_points()]
    after = [*points[1:], points[0]]
    return abs(sum(x * v - u * y for (x, y), (u, v) in zip(points, after, strict=True))) / 2.0
