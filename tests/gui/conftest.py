"""Fixtures for tests that run inside FreeCAD with its window (tools/test.sh gui)."""

import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))
sys.path.append(str(Path(__file__).resolve().parents[2] / "examples"))

if not getattr(sys.modules.get("FreeCAD"), "GuiUp", False):
    collect_ignore_glob = ["test_*.py"]


@pytest.fixture
def doc():
    """Return a fresh document shown in a 3D view; it is closed after the test."""
    import FreeCAD
    import FreeCADGui

    document = FreeCAD.newDocument("Test")
    name = document.Name
    FreeCADGui.updateGui()
    yield document
    FreeCADGui.Control.closeDialog()
    FreeCADGui.Selection.clearSelection()
    if name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)
    FreeCADGui.updateGui()


@pytest.fixture(scope="session")
def window():
    """Return FreeCAD's window with the workbench chosen."""
    import FreeCADGui
    from robot import pump

    FreeCADGui.activateWorkbench("LaywrightWorkbench")
    pump()
    window = FreeCADGui.getMainWindow()
    window.showMaximized()
    pump()
    return window


@pytest.fixture(scope="session")
def quick_drape():
    """Drape on a third of the triangles, for the sake of time."""
    from dataclasses import replace

    from freecad.laywright.objects.cloth_patterns import ClothPatternsObject
    from laywright.cloth.patterns.pattern import PatternSettings

    with pytest.MonkeyPatch.context() as patch:
        inputs = ClothPatternsObject.inputs

        def fewer(self, obj):
            return tuple(
                replace(one, triangles=2500) if isinstance(one, PatternSettings) else one
                for one in inputs(self, obj)
            )

        patch.setattr(ClothPatternsObject, "inputs", fewer)
        yield


@pytest.fixture(scope="session")
def hatch_file(window, quick_drape, tmp_path_factory):
    """Return the file of the example's job, started by command and computed once."""
    import FreeCAD
    from robot import started_job

    document, _ = started_job("WindowJob")
    path = tmp_path_factory.mktemp("job") / "job.FCStd"
    document.saveAs(str(path))
    FreeCAD.closeDocument(document.Name)
    return path


@pytest.fixture
def job(hatch_file, tmp_path):
    """Return document and stages of the example's job, up to date, a copy for each test."""
    import shutil

    import FreeCAD
    from robot import close_all, pump, stages_in

    path = tmp_path / "job.FCStd"
    shutil.copy(hatch_file, path)
    document = FreeCAD.openDocument(str(path))
    document.UndoMode = 1
    pump()
    yield document, stages_in(document)
    close_all()
