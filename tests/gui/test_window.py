"""FreeCAD's window stands, and the workbench is offered in it."""

import os

import FreeCAD
import FreeCADGui
import pytest

pytestmark = pytest.mark.gui


def test_runs_in_the_freecad_that_was_asked_for():
    assert ".".join(FreeCAD.Version()[:2]) == os.environ["LAYWRIGHT_FREECAD"]


def test_main_window_is_shown():
    window = FreeCADGui.getMainWindow()
    assert window.isVisible()
    assert (window.width(), window.height()) >= (640, 480)


def test_view_shows_what_is_in_the_document(doc, tmp_path):
    from PySide import QtGui

    doc.addObject("Part::Box", "Box").ViewObject.ShapeColor = (1.0, 0.0, 0.0, 0.0)
    doc.recompute()
    view = FreeCADGui.getDocument(doc.Name).activeView()
    view.viewFront()
    view.fitAll()
    FreeCADGui.updateGui()
    picture = tmp_path / "box.png"
    view.saveImage(str(picture), 200, 200, "White")
    image = QtGui.QImage(str(picture))
    colours = [QtGui.QColor(image.pixel(x, y)) for x in range(0, 200, 4) for y in range(0, 200, 4)]
    red = [c for c in colours if c.red() > max(c.green(), c.blue()) + 50]
    assert colours[0] == QtGui.QColor("white")
    assert len(red) > 0.2 * len(colours)


def test_workbench_is_offered():
    assert "LaywrightWorkbench" in FreeCADGui.listWorkbenches()
