"""Fixtures for tests that run inside FreeCAD without its window (tools/test.sh freecad)."""

import importlib.util
import shutil
import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))

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


@pytest.fixture(scope="session")
def hatch_file(tmp_path_factory):
    """Return the file of the example's job, computed once for all tests."""
    import FreeCAD
    from parts import hatch_job

    document, _, _ = hatch_job()
    document.recompute()
    path = tmp_path_factory.mktemp("hatch") / "hatch.FCStd"
    document.saveAs(str(path))
    FreeCAD.closeDocument(document.Name)
    return path


@pytest.fixture
def hatch(hatch_file, tmp_path):
    """Return document, job and stages of the example, up to date, a copy for each test."""
    import FreeCAD
    from parts import job_in

    path = tmp_path / "HatchCover.FCStd"
    shutil.copy(hatch_file, path)
    document = FreeCAD.openDocument(str(path))
    yield (document, *job_in(document))
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)
