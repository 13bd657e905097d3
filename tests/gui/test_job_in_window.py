"""The job in FreeCAD's real window: commands, panels, colours, legends."""

from pathlib import Path

import FreeCAD
import FreeCADGui
import hatch_cover
import pytest
from PySide import QtGui
from robot import (
    VERSION,
    buttons,
    click_command,
    colours_in,
    cut_off,
    grabbed,
    opened,
    picture,
    pump,
    stages_in,
    type_into,
)

from freecad.laywright import ICONS
from freecad.laywright.qt import QAction, QtWidgets

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


def test_commands_are_in_menu_and_toolbar_with_icons_that_can_be_seen(window):
    from freecad.laywright import commands

    assert set(commands.NAMES) <= set(FreeCADGui.listCommands())
    bars = [
        bar for bar in window.findChildren(QtWidgets.QToolBar) if bar.objectName() == "Laywright"
    ]
    assert len(bars) == 1
    assert len([action for action in bars[0].actions() if action.text()]) == len(commands.NAMES)
    icons = {commands.COMMANDS[name].icon for name in commands.NAMES}
    assert len(icons) == len(commands.NAMES)
    for name in icons:
        small = QtGui.QIcon(str(ICONS / name)).pixmap(16, 16).toImage()
        pixels = {small.pixel(x, y) for x in range(16) for y in range(16)}
        assert len(pixels) > 8, name


def test_short_cuts_clash_with_nothing(window):
    from freecad.laywright import commands

    keys = [command.keys for command in commands.COMMANDS.values() if command.keys]
    assert len(keys) == len(set(keys))
    for name, command in commands.COMMANDS.items():
        if command.keys:
            assert FreeCADGui.Command.listByShortcut(command.keys) == [name]
        what = FreeCADGui.Command.get(name).getInfo()
        assert what["whatsThis"]
        assert what["toolTip"]


def test_a_grey_command_says_why(window):
    from freecad.laywright import commands

    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)
    pump()
    start = commands.COMMANDS["Laywright_StartJob"]
    assert not start.IsActive()
    assert start.obstacle() == "Open or make a document first."
    tips = {action.toolTip() for action in window.findChildren(QAction, "Laywright_StartJob")}
    assert any("Open or make a document first." in tip for tip in tips)
    document = FreeCAD.newDocument("Empty")
    assert start.obstacle() == "Select a part, or faces of one, first."
    assert "Select a job" in commands.COMMANDS["Laywright_WriteFiles"].obstacle()
    FreeCAD.closeDocument(document.Name)
    pump()


@pytest.mark.parametrize("file", ["hatch_cover", "sensor_cowl", "battery_tray"])
def test_each_example_opens_as_a_copy(window, file):
    FreeCADGui.runCommand(f"Laywright_Example_{file}")
    pump()
    document = FreeCAD.ActiveDocument
    assert file in document.FileName
    shapes = [obj.Shape for obj in document.Objects if hasattr(obj, "Shape")]
    assert any(shape.Solids and shape.isValid() for shape in shapes)
    assert not Path(document.FileName).is_relative_to(Path(hatch_cover.__file__).parent)
    FreeCAD.closeDocument(document.Name)
    pump()


def test_a_selected_part_becomes_a_job_in_one_click_and_one_step_of_undo(window):
    document = hatch_cover.build("OneClick")
    document.UndoMode = 1
    part = document.HatchCover
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(document.Name, part.Name)
    pump()
    click_command("Laywright_StartJob")
    FreeCADGui.Selection.clearSelection()
    stages = stages_in(document)
    assert tuple(stages) == STAGES
    assert set(stages["MouldedFace"].Faces[1]) == set(hatch_cover.moulded_faces(part.Shape))
    for obj in stages.values():
        assert obj.Status == "up to date", obj.Label
        assert Path(obj.ViewObject.Proxy.getIcon()).is_file()
    assert not part.ViewObject.Visibility
    document.undo()
    assert [obj for obj in document.Objects if obj.Name.startswith("MouldBody")] == []
    document.redo()
    pump()
    assert document.MouldBody.Mesh.isSolid()
    FreeCAD.closeDocument(document.Name)
    pump()


@pytest.mark.parametrize("kind", STAGES)
def test_panel_opens_shows_units_and_cancels_without_a_trace(job, kind, artefacts):
    _, stages = job
    obj = stages[kind]
    names = [prop.name for prop in (*obj.Proxy.properties, *obj.Proxy.reports)]
    before = {name: str(getattr(obj, name)) for name in (*names, "Digest")}
    form = opened(obj)
    report = form.findChild(QtWidgets.QLabel, "Report").text()
    assert len(report) > 20
    assert grabbed(form, artefacts / f"panel {kind} {VERSION}.png") > 8
    assert cut_off(form) == []
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
    type_into(form, "BaseHeight", "3/8 in")
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
    type_into(form, "BaseHeight", "0.1 mm")
    buttons(form)["Ok"].click()
    pump()
    assert FreeCADGui.Control.activeDialog()
    problem = form.findChild(QtWidgets.QLabel, "Problem BaseHeight")
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
    version = VERSION
    release, tiles = stages["ReleaseCheck"].Name, stages["PrintTiles"].Name
    shown = picture(artefacts / f"release {version}.png", {release}, document)
    assert colours_in(shown) > 0.1
    texts = stages["ReleaseCheck"].ViewObject.Proxy.legend.texts
    area = stages["MouldedFace"].Area.Value
    assert texts[:2] == ["Release Check", "cannot leave along the pull: 0 mm²"]
    assert texts[-1] == f"leaves: {area:.0f} mm²"
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
    shown = picture(artefacts / f"shear {VERSION}.png", {patterns.Name}, document)
    assert colours_in(shown) > 0.01
    texts = vobj.Proxy.legend.texts
    assert texts[0] == "ply 2: shear"
    shares = [float(text.rsplit(":", 1)[1].rstrip(" %")) for text in texts[1:]]
    assert sum(shares) == pytest.approx(100.0, abs=0.3)
    assert all("°" in text for text in texts[1:])
    # The crown shears by a few degrees: they are told apart, and the locking angle is named.
    assert max(shares) < 80.0
    assert texts[-1] == "past what the cloth bears, over 50°: 0.0 %"
    vobj.Map = "outlines only"
    pump()
