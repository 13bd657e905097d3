"""A region of a scan is picked by a click on it in the 3D view."""

import FreeCAD
import FreeCADGui
import Mesh
import pytest
from robot import click, click_command, colours_in, picture, pump, until

from freecad.laywright.objects.job import stage_objects
from freecad.laywright.qt import QtCore, QtWidgets


def click_in_view(document, point):
    """Click a place of the active 3D view where a point of the model is seen."""
    view = FreeCADGui.getDocument(document.Name).activeView()
    x, y = view.getPointOnViewport(point) if hasattr(view, "getPointOnViewport") else (0, 0)
    area = next(
        widget
        for widget in FreeCADGui.getMainWindow().findChildren(QtWidgets.QGraphicsView)
        if widget.isVisible() and "Quarter" in widget.metaObject().className()
        or widget.metaObject().className() == "Gui::View3DInventorViewer"
    )
    port = area.viewport()
    ratio = port.devicePixelRatio()
    at = QtCore.QPointF(x / ratio, port.height() - 1 - y / ratio)
    move = QtCore.QEvent.MouseMove
    from PySide import QtGui

    QtWidgets.QApplication.sendEvent(
        port,
        QtGui.QMouseEvent(move, at, QtCore.Qt.NoButton, QtCore.Qt.NoButton, QtCore.Qt.NoModifier),
    )
    pump()
    click(port, at)
    pump()


def test_a_click_on_a_scan_picks_the_region_below_it(doc, window, artefacts):
    box = doc.addObject("Mesh::Feature", "Box")
    box.Mesh = Mesh.createBox(100.0, 60.0, 40.0)
    pump()
    view = FreeCADGui.activeView()
    view.viewTop()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    pump(0.5)
    click_in_view(doc, FreeCAD.Vector(20.0, 10.0, 20.0))
    print([(s.ObjectName, s.PickedPoints) for s in FreeCADGui.Selection.getSelectionEx()])
    assert FreeCADGui.Selection.getSelection() == [box]
