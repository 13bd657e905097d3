"""Regions of a scan are picked by clicks on it in the 3D view."""

from itertools import pairwise

import FreeCAD
import FreeCADGui
import Mesh
import pytest
from PySide import QtCore, QtGui
from robot import colours_in, picture, pump, until

from freecad.laywright.objects.job import add_stage
from freecad.laywright.panels.stage_panel import StagePanel
from freecad.laywright.qt import QtWidgets


def click_in_view(across, up):
    """Click in the 3D view, so many shares of its half width and height off its middle."""
    area = next(
        widget
        for widget in FreeCADGui.getMainWindow().findChildren(QtWidgets.QGraphicsView)
        if widget.isVisible() and widget.inherits("SIM::Coin3D::Quarter::QuarterWidget")
    )
    port = area.viewport()
    half = 0.5 * min(port.width(), port.height())
    at = QtCore.QPointF(port.rect().center()) + QtCore.QPointF(across * half, -up * half)
    left, none = QtCore.Qt.LeftButton, QtCore.Qt.NoButton
    for kind, button, held in (
        (QtCore.QEvent.MouseMove, none, none),
        (QtCore.QEvent.MouseButtonPress, left, left),
        (QtCore.QEvent.MouseButtonRelease, left, none),
    ):
        event = QtGui.QMouseEvent(kind, at, button, held, QtCore.Qt.NoModifier)
        QtWidgets.QApplication.sendEvent(port, event)
        pump(0.2)


def test_clicks_on_a_scan_pick_the_regions_below_them(doc, window, artefacts):
    """A gable roof, 100 mm square: a click on each side takes the one, then both."""
    roof = doc.addObject("Mesh::Feature", "Roof")
    at = FreeCAD.Vector
    rows = [[at(x, y, 40 - 0.8 * abs(x)) for y in (-50, 50)] for x in (-50, 0, 50)]
    roof.Mesh = Mesh.Mesh(
        [corners for (a, d), (b, c) in pairwise(rows) for corners in ([a, b, c], [a, c, d])]
    )
    scan = add_stage(doc, "ScannedPart")
    scan.Source, scan.Unit = roof, "mm"
    face = add_stage(doc, "MouldedFace")
    face.Scan = scan
    doc.recompute()
    roof.ViewObject.Visibility = face.ViewObject.Visibility = False
    scan.ViewObject.Visibility = True
    whole = face.Area.Value
    FreeCADGui.activeView().viewTop()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    pump(0.5)
    panel = StagePanel(face)
    FreeCADGui.Control.showDialog(panel)
    pump()
    add, forget = (
        next(b for b in panel.form.findChildren(QtWidgets.QPushButton) if b.text() == text)
        for text in ("Add the place clicked on", "Forget all places")
    )
    for across, share in ((0.3, 0.5), (-0.3, 1.0)):
        click_in_view(across, 0.1)
        assert FreeCADGui.Selection.getSelection() == [scan]
        add.click()
        panel.apply()
        assert until(lambda: face.Status == "up to date", 10.0)
        assert face.Area.Value == pytest.approx(share * whole, rel=1e-5)
        FreeCADGui.Selection.clearSelection()
    assert [place.x > 0.0 for place in face.RegionPoints] == [True, False]
    forget.click()
    add.click()
    assert panel.fields["RegionPoints"].value() == []
    assert colours_in(picture(artefacts / "regions.png", {scan.Name}, doc)) > 0.05
