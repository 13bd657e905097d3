"""Missing packages are fetched beside the window, which lives, may say no, gets its commands."""

import shutil
import sys
import time

import FreeCADGui
import pytest
from robot import VERSION, cut_off, grabbed, later, pump, until

from freecad.laywright import commands, packages
from freecad.laywright.init_gui import LaywrightWorkbench
from freecad.laywright.qt import QtWidgets

pytestmark = pytest.mark.gui

FETCH = """
import pathlib, sys, time
for number in range({steps}):
    print("Collecting part", number, flush=True)
    time.sleep(0.1)
(pathlib.Path(sys.argv[1]) / "alpha").mkdir(parents=True)
sys.exit({code})
"""


@pytest.fixture
def second(window, tmp_path, monkeypatch, request):
    """Return a function that chooses a workbench whose package alpha is missing, answering Yes."""
    name = f"Workbench_{request.node.name}"
    folder = tmp_path / "packages"
    folder.mkdir()
    monkeypatch.setattr(packages, "folder", lambda: folder)
    monkeypatch.setattr(sys, "path", list(sys.path))
    monkeypatch.setattr(commands, "register", lambda: None)  # FreeCAD has them already
    there = folder / "alpha"
    monkeypatch.setattr(packages, "missing", lambda: [] if there.exists() else ["alpha"])

    def choose(steps, code=0):
        def command(names, target):
            text = FETCH.format(steps=steps, code=code)
            return [shutil.which("python3"), "-c", text, str(target)]

        monkeypatch.setattr(packages, "command", command)
        FreeCADGui.addWorkbench(type(name, (LaywrightWorkbench,), {"MenuText": name})())
        later(accept)
        FreeCADGui.activateWorkbench(name)
        assert until(lambda: shown() is not None)
        return shown()

    yield choose
    FreeCADGui.activateWorkbench("LaywrightWorkbench")
    FreeCADGui.removeWorkbench(name)
    pump()


def accept():
    for box in QtWidgets.QApplication.topLevelWidgets():
        if isinstance(box, QtWidgets.QMessageBox) and box.isVisible():
            assert "alpha" in box.text()
            box.button(QtWidgets.QMessageBox.Yes).click()
            return
    later(accept, 0.1)


def shown():
    """Return the window that installs, None while there is none."""
    found = FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialog, "LaywrightInstall")
    return next((window for window in found if window.isVisible()), None)


def said(window):
    return window.findChild(QtWidgets.QPlainTextEdit, "InstallLines").toPlainText()


def buttons_in_toolbar():
    bars = FreeCADGui.getMainWindow().findChildren(QtWidgets.QToolBar, "Laywright")
    return [len([a for a in bar.actions() if a.text()]) for bar in bars if bar.isVisible()]


def test_the_window_lives_and_the_commands_come_when_all_is_there(second, artefacts):
    installing = second(30)
    assert not FreeCADGui.Control.activeDialog()
    assert not installing.isModal()
    assert buttons_in_toolbar() == []
    beats = []
    while shown() is not None and "number 29" not in said(installing):
        began = time.monotonic()
        pump(0.02)
        beats.append(time.monotonic() - began)
        if len(beats) == 20:
            assert grabbed(installing, artefacts / f"installing {VERSION}.png") > 8
            assert cut_off(installing) == []
        assert len(beats) < 2000
    assert len(beats) > 40
    assert sorted(beats)[-2] < 1.0
    assert until(lambda: buttons_in_toolbar() == [len(commands.NAMES)])


def test_cancel_ends_the_process_and_leaves_the_folder(second):
    installing = second(300)
    assert until(lambda: "Collecting part 2" in said(installing))
    process = installing.installation
    installing.findChild(QtWidgets.QPushButton, "InstallCancel").click()
    assert until(lambda: shown() is None)
    assert not process.is_running()
    assert list(packages.folder().iterdir()) == []
    assert buttons_in_toolbar() == []


def test_a_failure_says_the_line_to_type(second):
    installing = second(2, code=1)
    assert until(lambda: "by hand" in said(installing))
    assert "Collecting part 1" in said(installing)
    assert said(installing).endswith(packages.by_hand(["alpha"]))
    installing.findChild(QtWidgets.QPushButton, "InstallCancel").click()
    assert until(lambda: shown() is None)
    assert list(packages.folder().iterdir()) == []
