"""The job in FreeCAD's real window: commands, panels, colours, legends."""

import sys
import time
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from freecad.laywright import ICONS
from freecad.laywright.qt import QtWidgets

sys.path.append(str(Path(__file__).resolve().parents[2] / "examples"))
import hatch_cover

pytestmark = pytest.mark.gui

STAGES = (
    "MouldedFace",
    "ReleaseCheck",
    "Layup",
    "MouldBody",
    "PrintTiles",
    "ClothPatterns",
    "RollPlan",
    "MixCurePlan",
    "JobSheet",
)


def pump(seconds=0.3):
    """Let the window do what is waiting."""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        QtWidgets.QApplication.processEvents(QtCore.QEventLoop.AllEvents, 20)


def picture(path, names, document):
    """Save the 3D view with only these objects shown; return it as an image."""
    for obj in document.Objects:
        obj.ViewObject.Visibility = obj.Name in names
    view = FreeCADGui.getDocument(document.Name).activeView()
    view.viewAxometric()
    view.fitAll()
    pump()
    view.saveImage(str(path), 600, 450, "White")
    return QtGui.QImage(str(path))


def colours_in(image):
    """Return the share of pixels that are no kind of grey."""
    found = 0
    for x in range(0, image.width(), 3):
        for y in range(0, image.height() * 2 // 3, 3):
            colour = QtGui.QColor(image.pixel(x, y))
            found += max(colour.red(), colour.blue()) - min(colour.red(), colour.blue()) > 8
    return found / (image.width() / 3 * image.height() * 2 / 9)


@pytest.fixture(scope="module")
def window():
    FreeCADGui.activateWorkbench("LaywrightWorkbench")
    pump()
    return FreeCADGui.getMainWindow()


@pytest.fixture(scope="module")
def job(window):
    """Return document and stages of a job that was started by command from a picked face."""
    document = hatch_cover.build("WindowJob")
    part = document.HatchCover
    FreeCADGui.Selection.clearSelection()
    for face in hatch_cover.moulded_faces(part.Shape):
        FreeCADGui.Selection.addSelection(document.Name, part.Name, face)
    FreeCADGui.runCommand("Laywright_StartJob")
    pump()
    FreeCADGui.Selection.clearSelection()
    from freecad.laywright.objects.job import stages_of

    group = next(obj for obj in document.Objects if obj.Name.startswith("Job"))
    stages = stages_of(group)
    yield document, stages
    FreeCAD.closeDocument(document.Name)
    pump()


def buttons(panel):
    """Return the dialog buttons of the open task panel by name."""
    box = next(
        box
        for box in FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialogButtonBox)
        if box.isVisible()
    )
    kinds = QtWidgets.QDialogButtonBox
    return {name: box.button(getattr(kinds, name)) for name in ("Ok", "Apply", "Cancel")}


def opened(obj):
    """Open an object's task panel by double click; return its form."""
    obj.ViewObject.Proxy.doubleClicked(obj.ViewObject)
    pump()
    assert FreeCADGui.Control.activeDialog()
    label = next(
        label
        for label in FreeCADGui.getMainWindow().findChildren(QtWidgets.QLabel, "Report")
        if label.isVisible()
    )
    return label.parentWidget()


def test_commands_are_in_menu_and_toolbar_with_icons_that_can_be_seen(window):
    from freecad.laywright import commands

    assert set(commands.NAMES) <= set(FreeCADGui.listCommands())
    bars = [
        bar for bar in window.findChildren(QtWidgets.QToolBar) if bar.objectName() == "Laywright"
    ]
    assert len(bars) == 1
    assert len([action for action in bars[0].actions() if action.text()]) == len(commands.NAMES)
    icons = {command.icon for command in commands._COMMANDS.values()}
    assert len(icons) == len(commands.NAMES)
    for name in icons:
        small = QtGui.QIcon(str(ICONS / name)).pixmap(16, 16).toImage()
        pixels = {small.pixel(x, y) for x in range(16) for y in range(16)}
        assert len(pixels) > 8, name


def test_short_cuts_clash_with_nothing(window):
    from freecad.laywright import commands

    keys = [command.keys for command in commands._COMMANDS.values() if command.keys]
    assert len(keys) == len(set(keys))
    for name, command in commands._COMMANDS.items():
        if command.keys:
            assert FreeCADGui.Command.listByShortcut(command.keys) == [name]
        what = FreeCADGui.Command.get(name).getInfo()
        assert what["whatsThis"]
        assert what["toolTip"]


def test_a_grey_command_says_why(window):
    from freecad.laywright import commands
    from freecad.laywright.qt import QAction

    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)
    pump()
    start = commands._COMMANDS["Laywright_StartJob"]
    assert not start.IsActive()
    assert start.obstacle() == "Open or make a document first."
    tips = {action.toolTip() for action in window.findChildren(QAction, "Laywright_StartJob")}
    assert any("Open or make a document first." in tip for tip in tips)
    document = FreeCAD.newDocument("Empty")
    assert start.obstacle() == "Select one or more faces of a part in the 3D view first."
    assert "Select a job" in commands._COMMANDS["Laywright_WriteFiles"].obstacle()
    FreeCAD.closeDocument(document.Name)
    pump()


def test_the_example_opens_as_a_copy(window):
    FreeCADGui.runCommand("Laywright_OpenExample")
    pump()
    document = FreeCAD.ActiveDocument
    assert document.HatchCover.Shape.isValid()
    assert not Path(document.FileName).is_relative_to(Path(hatch_cover.__file__).parent)
    FreeCAD.closeDocument(document.Name)
    pump()


def test_one_command_makes_the_whole_job_from_a_picked_face(job):
    document, stages = job
    assert tuple(stages) == STAGES
    for obj in stages.values():
        assert obj.Status == "up to date", obj.Label
        assert Path(obj.ViewObject.Proxy.getIcon()).is_file()
    assert not document.HatchCover.ViewObject.Visibility
    document.undo()
    assert [obj for obj in document.Objects if obj.Name.startswith("MouldBody")] == []
    document.redo()
    pump()
    assert stages["MouldBody"].Mesh.isSolid()


@pytest.mark.parametrize("kind", STAGES)
def test_panel_opens_shows_units_and_cancels_without_a_trace(job, kind, artefacts):
    _, stages = job
    obj = stages[kind]
    names = [prop.name for prop in (*obj.Proxy.properties, *obj.Proxy.reports)]
    before = {name: str(getattr(obj, name)) for name in (*names, "Digest")}
    form = opened(obj)
    report = form.findChild(QtWidgets.QLabel, "Report").text()
    assert len(report) > 20
    form.window().grab().save(str(artefacts / f"panel {kind} {FreeCAD.Version()[1]}.png"))
    buttons(form)["Cancel"].click()
    pump()
    assert not FreeCADGui.Control.activeDialog()
    assert {name: str(getattr(obj, name)) for name in before} == before
    assert obj.Status == "up to date"


def test_a_value_typed_with_another_unit_is_taken_and_undone_in_one_step(job):
    document, stages = job
    body = stages["MouldBody"]
    volume = body.Volume.Value
    form = opened(body)
    field = form.findChild(QtWidgets.QAbstractSpinBox, "BaseHeight")
    line = field.findChild(QtWidgets.QLineEdit)
    line.setText("3/8 in")
    field.interpretText()
    buttons(form)["Ok"].click()
    pump()
    assert not FreeCADGui.Control.activeDialog()
    assert body.BaseHeight.Value == pytest.approx(9.525)
    assert body.Volume.Value > volume
    document.undo()
    pump()
    assert body.BaseHeight.Value == 8.0
    assert body.Volume.Value == volume


def test_a_wrong_value_is_said_in_the_panel_and_cancel_restores_the_job(job):
    _, stages = job
    body = stages["MouldBody"]
    version = body.Digest
    form = opened(body)
    field = form.findChild(QtWidgets.QAbstractSpinBox, "BaseHeight")
    field.findChild(QtWidgets.QLineEdit).setText("0.1 mm")
    field.interpretText()
    buttons(form)["Ok"].click()
    pump()
    assert FreeCADGui.Control.activeDialog()
    problem = form.findChild(QtWidgets.QLabel, "Problem")
    assert problem.isVisible()
    assert "base height: found 0.1 mm, needed" in problem.text()
    buttons(form)["Cancel"].click()
    pump()
    assert body.isValid()
    assert (body.Digest, body.Status) == (version, "up to date")


def test_what_is_out_of_date_says_so_in_the_tree_until_it_is_mended(job):
    document, stages = job
    layup, sheet = stages["Layup"], stages["JobSheet"]
    resin = layup.Resin
    assert {obj.Label2 for obj in stages.values()} == {""}
    layup.Resin = "no such resin"
    document.recompute()
    assert layup.Label2.startswith("out of date: resin: found 'no such resin'")
    assert stages["MouldBody"].Label2 == "out of date: waits for Layup"
    assert sheet.Label2.startswith("out of date: waits for")
    assert stages["ReleaseCheck"].Label2 == ""
    layup.Resin = resin
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(document.Name, layup.Name)
    FreeCADGui.runCommand("Laywright_BringUpToDate")
    pump()
    FreeCADGui.Selection.clearSelection()
    assert {obj.Label2 for obj in stages.values()} == {""}
    assert {obj.Status for obj in stages.values()} == {"up to date"}


def test_plies_are_edited_in_a_table(job):
    document, stages = job
    layup = stages["Layup"]
    form = opened(layup)
    table = form.findChild(QtWidgets.QTableWidget, "Plies")
    assert table.rowCount() == 3
    table.cellWidget(1, 1).setValue(-45.0)
    next(b for b in form.findChildren(QtWidgets.QPushButton) if b.text() == "Add").click()
    pump()
    assert table.rowCount() == 4
    buttons(form)["Ok"].click()
    pump()
    assert layup.Angles == [0.0, -45.0, 0.0, 0.0]
    assert layup.ArealMass == pytest.approx(1600.0)
    document.undo()
    pump()
    assert layup.Angles == [0.0, 45.0, 0.0]
    assert layup.ArealMass == pytest.approx(1200.0)


def test_release_and_tiles_are_coloured_with_a_legend_and_stay_so(job, artefacts, tmp_path):
    document, stages = job
    version = FreeCAD.Version()[1]
    release, tiles = stages["ReleaseCheck"].Name, stages["PrintTiles"].Name
    shown = picture(artefacts / f"release {version}.png", {release}, document)
    assert colours_in(shown) > 0.1
    texts = stages["ReleaseCheck"].ViewObject.Proxy.legend.texts
    area = stages["MouldedFace"].Area.Value
    assert texts[0] == "cannot leave along the pull: 0 mm2"
    assert texts[-1] == f"leaves: {area:.0f} mm2"
    assert colours_in(picture(artefacts / f"tiles {version}.png", {tiles}, document)) > 0.1

    path = str(tmp_path / "job.FCStd")
    document.saveCopy(path)
    again = FreeCAD.openDocument(path)
    pump()
    try:
        assert colours_in(picture(tmp_path / "again.png", {release}, again)) > 0.1
        proxy = again.getObject(release).ViewObject.Proxy
        assert proxy.legend.texts == texts
    finally:
        FreeCAD.closeDocument(again.Name)
        pump()


def test_shear_of_a_ply_is_shown_on_the_part_with_its_numbers(job, artefacts):
    document, stages = job
    patterns = stages["ClothPatterns"]
    vobj = patterns.ViewObject
    plain = picture(artefacts / "no map.png", {patterns.Name}, document)
    assert colours_in(plain) < 0.01
    vobj.Map, vobj.MapPly = "shear", 2
    pump()
    shown = picture(artefacts / f"shear {FreeCAD.Version()[1]}.png", {patterns.Name}, document)
    assert colours_in(shown) > 0.01
    texts = vobj.Proxy.legend.texts
    assert texts[0] == "ply 2: shear"
    shares = [float(text.rsplit(":", 1)[1].rstrip(" %")) for text in texts[1:]]
    assert sum(shares) == pytest.approx(100.0, abs=0.3)
    assert all("deg" in text for text in texts[1:])
    vobj.Map = "outlines only"
    pump()
