"""Fixtures for tests that run inside FreeCAD without its window (tools/test.sh freecad)."""

import importlib.util
import os
from pathlib import Path

import pytest

if importlib.util.find_spec("FreeCAD") is None:
    collect_ignore_glob = ["test_*.py"]


@pytest.fixture
def doc():
    """Return a fresh document; it is closed after the test, if the test has not done so."""
    import FreeCAD

    document = FreeCAD.newDocument("Test")
    name = document.Name
    yield document
    if name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)


@pytest.fixture
def artefacts(tmp_path):
    """Return the folder for pictures and files that a person may want to look at."""
    folder = os.environ.get("LAYWRIGHT_RESULTS")
    return Path(folder) if folder else tmp_path
