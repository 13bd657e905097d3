"""Fixtures for tests that run inside FreeCAD with its window (tools/test.sh gui)."""

import os
import sys
from pathlib import Path

import pytest

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


@pytest.fixture
def artefacts(tmp_path):
    """Return the folder for pictures and files that a person may want to look at."""
    folder = os.environ.get("LAYWRIGHT_RESULTS")
    return Path(folder) if folder else tmp_path
