"""What FreeCAD does with a job by its own commands; what asks before it acts; what says busy."""

import FreeCADGui
import pytest
from robot import click_command, later, pump

from freecad.laywright import bridge
from freecad.laywright.qt import QtCore, QtWidgets
from freecad.laywright.staleness import stale

pytestmark = pytest.mark.gui


def pick(document, *names):
    FreeCADGui.Selection.clearSelection()
    for name in names:
        FreeCADGui.Selection.addSelection(document.Name, name)
    pump()


def confirmed(button, seen=None):
    """Press a button of the next dialog; its text goes into the list."""

    def press():
        box = QtWidgets.QApplication.activeModalWidget()
        if box is None:
            later(press, 0.1)
            return
        if seen is not None:
            seen.extend(label.text() for label in box.findChildren(QtWidgets.QLabel))
        box.findChild(QtWidgets.QDialogButtonBox).button(button).click()

    later(press, 0.3)


def twins_of(document, stages):
    """Return the objects that are there twice, the newer ones, by kind."""
    old = {obj.Name for obj in stages.values()}
    return {
        obj.LaywrightKind.removesuffix("Object"): obj
        for obj in document.Objects
        if hasattr(obj, "Digest") and obj.Name not in old
    }


@pytest.mark.parametrize("commands", [("Std_DuplicateSelection",), ("Std_Copy", "Std_Paste")])
def test_stages_are_duplicated_and_pasted_whole(job, commands):
    document, stages = job
    pick(document, *(obj.Name for obj in stages.values()))
    for command in commands:
        confirmed(QtWidgets.QDialogButtonBox.Ok)
        FreeCADGui.runCommand(command)
        pump()
    twins = twins_of(document, stages)
    assert set(twins) == set(stages)
    for kind, obj in stages.items():
        assert twins[kind].Digest == obj.Digest
        assert twins[kind].Proxy.kept(twins[kind]).digest == obj.Digest
        assert twins[kind].ViewObject.Proxy.getIcon() == obj.ViewObject.Proxy.getIcon()
    document.recompute()
    assert stale(twins.values()) == []
    twins["MouldBody"].BaseHeight = "13 mm"
    why = twins["PrintTiles"].Label2
    assert "base height" in why
    assert f" of {twins['MouldBody'].Label} changed" in why
    assert stages["PrintTiles"].Label2 == ""


def test_writing_what_is_out_of_date_asks_first(job):
    document, stages = job
    stages["ClothPatterns"].Margin = "27 mm"
    digest, seen = stages["ClothPatterns"].Digest, []
    pick(document, stages["Layup"].Name)
    confirmed(QtWidgets.QDialogButtonBox.No, seen)
    click_command("Laywright_WriteFiles")
    asked = " ".join(seen)
    assert "Out of date: Cloth Patterns, Roll Plan" in asked
    assert stages["ClothPatterns"].Digest == digest
    assert stages["JobSheet"].Files == "not written yet"


def test_the_window_says_that_a_shape_is_meshed(job, monkeypatch):
    document, stages = job
    bar, seen = FreeCADGui.getMainWindow().statusBar(), []
    mesh = bridge.surface_from_shape

    def watched(*args):
        cursor = QtWidgets.QApplication.overrideCursor()
        seen.append((bar.currentMessage(), cursor is not None and cursor.shape()))
        return mesh(*args)

    monkeypatch.setattr(bridge, "surface_from_shape", watched)
    stages["MouldedFace"].LargestChord = "0.06 mm"
    pick(document, stages["Layup"].Name)
    click_command("Laywright_BringUpToDate")
    part = stages["MouldedFace"].Faces[0].Label
    assert (f"Meshing {part} …", QtCore.Qt.WaitCursor) in seen
    assert bar.currentMessage() != f"Meshing {part} …"
    assert QtWidgets.QApplication.overrideCursor() is None
    assert stages["JobSheet"].Status == "up to date"
