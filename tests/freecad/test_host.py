"""The workbench is found and loaded by FreeCAD as it is on a user's machine."""

import os
from pathlib import Path

import FreeCAD
import pytest

CHECKOUT = Path(__file__).resolve().parents[2]

pytestmark = pytest.mark.freecad


def test_runs_in_the_freecad_that_was_asked_for():
    version = ".".join(FreeCAD.Version()[:2])
    print("FreeCAD", *FreeCAD.Version()[:3])
    assert version == os.environ["LAYWRIGHT_FREECAD"]


def test_home_is_a_throwaway_one():
    home = os.environ["FREECAD_USER_HOME"]
    assert Path(FreeCAD.getUserAppDataDir()) == Path(home)
    assert (Path(home) / "Mod" / "Laywright").resolve() == CHECKOUT


def test_workbench_is_imported_from_this_checkout():
    import freecad.laywright

    assert Path(freecad.laywright.__file__).resolve().is_relative_to(CHECKOUT / "freecad_mod")


def test_core_comes_along_with_the_workbench_and_its_packages_work():
    import freecad.laywright  # noqa: F401  # makes the core importable
    import laywright
    from laywright import quantities, values

    assert Path(laywright.__file__).resolve() == CHECKOUT / "core" / "laywright" / "__init__.py"
    assert quantities.magnitude("2 in", "mm", "length") == 50.8
    assert values.unpack(tuple, values.pack((1.0, "glass"))) == (1.0, "glass")


def test_numpy_and_scipy_are_the_hosts_own():
    import numpy as np
    import scipy

    packages = Path(os.environ["FREECAD_USER_HOME"]) / "AdditionalPythonPackages"
    for module in (np, scipy):
        assert not Path(module.__file__).resolve().is_relative_to(packages.resolve())


def test_no_room_of_the_checkout_is_a_top_level_package():
    from importlib.machinery import PathFinder

    for name in ("core", "tests", "tools", "icons", "examples"):
        spec = PathFinder.find_spec(name)
        assert spec is None or spec.loader is None or spec.origin is None


def test_document_is_fresh_and_units_are_understood(doc):
    assert doc.Objects == []
    box = doc.addObject("Part::Box", "Box")
    box.Length = "2.5 in"
    doc.recompute()
    assert box.Shape.Volume == pytest.approx(63.5 * 10 * 10, rel=1e-12)


def test_manifest_says_what_freecad_has_to_load():
    manifest = FreeCAD.Metadata(str(CHECKOUT / "package.xml"))
    (workbench,) = manifest.Content["workbench"]
    assert (manifest.Name, workbench.Name) == ("Laywright", "Laywright")
    assert (workbench.Classname, workbench.Subdirectory) == ("LaywrightWorkbench", "freecad_mod")
    assert manifest.supportsCurrentFreeCAD()
    for icon in (
        CHECKOUT / manifest.Icon,
        CHECKOUT / workbench.Subdirectory / workbench.Icon,
    ):
        assert icon.is_file()
