"""Weigh-in, Coupon Test and lessons in FreeCAD's real window."""

import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore

from freecad.laywright import lessons
from freecad.laywright.objects.job import add_stage, make_job, stages_of
from freecad.laywright.qt import QtWidgets
from laywright.job.records import read_records

sys.path.append(str(Path(__file__).resolve().parents[2] / "examples"))
import hatch_cover
from robot import pump

pytestmark = pytest.mark.gui


@pytest.fixture(scope="module")
def job():
    """Return document, job and stages, up to date."""
    FreeCADGui.activateWorkbench("LaywrightWorkbench")
    document = hatch_cover.build("ShopWindow")
    part = document.HatchCover
    group = make_job(part, hatch_cover.moulded_faces(part.Shape), "Hatch cover")
    stages = stages_of(group)
    stages["RollPlan"].SearchTime = 0.0
    document.recompute()
    pump()
    yield document, group, stages
    FreeCADGui.Control.closeDialog()
    FreeCAD.closeDocument(document.Name)
    pump()


def opened(obj):
    """Open an object's task panel by double click; return its form."""
    obj.ViewObject.Proxy.doubleClicked(obj.ViewObject)
    pump()
    labels = FreeCADGui.getMainWindow().findChildren(QtWidgets.QLabel, "Report")
    return next(label for label in labels if label.isVisible()).parentWidget()


def press(name):
    """Press OK or Cancel of the open task panel."""
    boxes = FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialogButtonBox)
    box = next(box for box in boxes if box.isVisible())
    box.button(getattr(QtWidgets.QDialogButtonBox, name)).click()
    pump()


def test_readings_are_typed_kept_as_a_file_and_undone(job, tmp_path, monkeypatch, artefacts):
    document, group, stages = job
    monkeypatch.setattr("freecad.laywright.panels.weigh_in_panel.records_folder", lambda: tmp_path)
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(document.Name, group.Name)
    FreeCADGui.runCommand("Laywright_WeighIn")
    pump()
    obj = next(found for found in document.Objects if found.Name.startswith("WeighIn"))
    assert obj.Label2.startswith("not weighed yet")
    assert Path(obj.ViewObject.Proxy.getIcon()).is_file()
    cloth = stages["MixCurePlan"].ClothMass
    form = opened(obj)
    for name, grams in (
        ("DryCloth", cloth),
        ("MixMade", 1.05 * cloth),
        ("PartUntrimmed", 2.0 * cloth),
    ):
        form.findChild(QtWidgets.QLineEdit, name).setText(f"{grams:.2f} g".replace(".", ","))
    form.findChild(QtWidgets.QPushButton, "Keep").click()
    pump()
    form.window().grab().save(str(artefacts / f"panel WeighIn {FreeCAD.Version()[1]}.png"))
    (entry,) = read_records(tmp_path)
    assert entry.record.resin_share == pytest.approx(0.5, abs=1e-3)
    press("Ok")
    assert not FreeCADGui.Control.activeDialog()
    assert obj.Status == "up to date"
    assert obj.File.endswith(".json")
    document.undo()
    pump()
    assert obj.MixMade == 0.0
    document.redo()
    pump()


def test_readings_of_a_coupon_are_asked_for_their_units(job, tmp_path, artefacts):
    from freecad.laywright.panels.coupon_reader import CouponReader

    document, group, _ = job
    test = add_stage(document, "CouponTest", group)
    document.recompute()
    plan = test.Proxy.kept(test).plan
    rows = "\n".join(f"{step.deflection:.5f},{step.mass_g * 9.80665e-3:.5f}" for step in plan.steps)
    path = tmp_path / "export.csv"
    path.write_text(f"Specimen 7\ntravel,load\n0,0\n{rows}\n", encoding="utf-8")
    form = opened(test)
    table = form.findChild(QtWidgets.QTableWidget, "Coupons")
    assert table.rowCount() == 0
    form.findChild(QtWidgets.QPushButton, "Add").click()
    pump()
    window = FreeCADGui.getMainWindow()
    reader = next(w for w in window.findChildren(CouponReader) if w.isVisible())
    reader.read(path)
    reader.lines["Thickness"].setText(f"{plan.thickness:.5f}")
    reader.accept()
    pump()
    assert reader.isVisible()
    assert "unit of the force: found nothing, needed one of N, kN" in reader.problem.text()
    reader.grab().save(str(artefacts / f"coupon reader {FreeCAD.Version()[1]}.png"))
    for box, unit in ((reader.force[1], "N"), (reader.travel[1], "mm")):
        box.setCurrentIndex(box.findText(unit))
    reader.accept()
    pump()
    assert table.rowCount() == 1
    assert test.Modulus.getValueAs("MPa").Value == pytest.approx(plan.modulus, rel=1e-3)
    table.item(0, 1).setText(f"{1.1 * plan.width:.5f}".replace(".", ","))
    pump()
    assert table.rowCount() == 1
    assert test.Modulus.getValueAs("MPa").Value == pytest.approx(plan.modulus / 1.1, rel=1e-3)
    form.window().grab().save(str(artefacts / f"panel CouponTest {FreeCAD.Version()[1]}.png"))
    press("Cancel")
    assert test.Proxy.coupons(test).names == ()


def test_lessons_are_shown_before_they_are_taken(job, tmp_path, monkeypatch, artefacts):
    document, group, stages = job
    monkeypatch.setattr(lessons, "records_folder", lambda: tmp_path)
    obj = next(found for found in document.Objects if found.Name.startswith("WeighIn"))
    obj.MixMade = 1.12 * stages["MixCurePlan"].ClothMass
    obj.Acceptance = "accepted"
    document.recompute()
    seen = []

    def answer():
        every = QtWidgets.QApplication.topLevelWidgets()
        windows = [w for w in every if w.objectName() == "Lessons" and w.isVisible()]
        if not windows:
            return  # not there yet: asked again
        (window,) = windows
        timer.stop()
        window.grab().save(str(artefacts / f"lessons {FreeCAD.Version()[1]}.png"))
        seen.extend((name, box.text(), box.isChecked()) for name, box in window.boxes.items())
        (window.accept if len(seen) > 2 else window.reject)()

    timer = QtCore.QTimer()
    timer.timeout.connect(answer)
    for take in (False, True):
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(document.Name, group.Name)
        timer.start(100)
        FreeCADGui.runCommand("Laywright_Learn")
        pump()
        assert stages["MixCurePlan"].ExtraShare == (12 if take else 5)
    assert seen[0][0] == "resin_share"
    assert seen[1][1] == "extra for losses: 12 % from 1 record, the plan has 5 %"
    assert [ticked for _, _, ticked in seen[:2]] == [False, True]
    assert stages["MixCurePlan"].Status == "up to date"
    document.undo()
    pump()
    assert stages["MixCurePlan"].ExtraShare == 5
