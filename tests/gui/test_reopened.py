"""What a person sees is there again when a document is opened again; problems are one sentence."""

import FreeCAD
import FreeCADGui
import pytest
from robot import pump, stages_in

from freecad.laywright.qt import QtWidgets
from freecad.laywright.views.base import StageView

pytestmark = pytest.mark.gui


def toggles_of(stages):
    """Return view and name of everything that the tree's context menu shows and hides."""
    return {
        (kind, toggle.name): obj.ViewObject
        for kind, obj in stages.items()
        if isinstance(obj.ViewObject.Proxy, StageView)
        for toggle in obj.ViewObject.Proxy.toggles
    }


def menu_of(vobj):
    """Return the entries that an object adds to the tree's context menu, by their text."""
    menu = QtWidgets.QMenu()
    vobj.Proxy.setupContextMenu(vobj, menu)
    return menu, {action.text(): action for action in menu.actions()}


def saved_and_opened(document, path):
    document.saveAs(str(path))
    FreeCAD.closeDocument(document.Name)
    pump()
    again = FreeCAD.openDocument(str(path))
    pump()
    return stages_in(again)


@pytest.mark.parametrize("on", [True, False])
def test_what_was_shown_and_hidden_in_the_tree_is_so_when_opened_again(job, tmp_path, on):
    document, stages = job
    found = toggles_of(stages)
    assert {kind for kind, _ in found} >= {"MouldedFace", "ReleaseCheck", "MouldBody", "PrintTiles"}
    for vobj in found.values():
        vobj.Visibility = True
        menu, entries = menu_of(vobj)
        for toggle in vobj.Proxy.toggles:
            assert entries[toggle.title].isChecked()
            entries[toggle.title].setChecked(on)
        del menu
    patterns = stages["ClothPatterns"].ViewObject
    patterns.Map, patterns.MapPly = "shear", 2
    stages["PrintTiles"].ViewObject.Proxy.pull_apart(35.0 if on else 0.0)
    digests = {kind: obj.Digest for kind, obj in stages.items()}
    pump()

    stages = saved_and_opened(document, tmp_path / "again.FCStd")
    for (kind, name), vobj in toggles_of(stages).items():
        assert getattr(vobj, name) is on, (kind, name)
        assert vobj.Proxy.legend.is_shown is on, (kind, name)
        menu, entries = menu_of(vobj)
        assert entries[vobj.Proxy.toggles[0].title].isChecked() is on
        del menu
    assert stages["MouldedFace"].ViewObject.Proxy.arrow.is_shown is on
    patterns = stages["ClothPatterns"].ViewObject
    assert (patterns.Map, patterns.MapPly) == ("shear", 2)
    assert patterns.Proxy.legend.texts[0] == "ply 2: shear"
    assert stages["PrintTiles"].ShownApart.Value == (35.0 if on else 0.0)
    assert {kind: obj.Digest for kind, obj in stages.items()} == digests
    assert {obj.Status for obj in stages.values()} == {"up to date"}


def test_the_report_view_says_a_sentence_and_no_traceback(job):
    document, stages = job
    report = next(
        view
        for view in FreeCADGui.getMainWindow().findChildren(QtWidgets.QTextEdit)
        if view.metaObject().className() == "Gui::DockWnd::ReportOutput"
    )
    report.clear()
    stages["Layup"].Resin = "no such resin"
    document.recompute()
    pump()
    said = report.toPlainText()
    assert "Laywright: Layup, resin: found 'no such resin'" in said
    assert "Traceback" not in said
    assert "File " not in said
