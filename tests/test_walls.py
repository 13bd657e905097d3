"""The walls of the house: who may import whom, and what may be importable at all."""

import ast
import os
import subprocess
import sys
from pathlib import Path

import pytest

CHECKOUT = Path(__file__).resolve().parents[1]
WORKBENCH = CHECKOUT / "freecad_mod" / "freecad" / "laywright"
BRIDGE = "bridge.py"
QT = "qt.py"

COMPUTATION = {
    "ezdxf",
    "jinja2",
    "lxml",
    "manifold3d",
    "networkx",
    "pint",
    "reportlab",
    "scipy",
    "shapely",
    "spyrrow",
    "trimesh",
}
CONVERSION_MODULES = {"numpy", "Mesh", "MeshPart", "Points"}
CONVERSION_CALLS = {"tessellate", "meshFromShape", "Topology"}
WINDOWS = {"PySide", "PySide2", "PySide6", "PyQt5", "PyQt6", "shiboken2", "shiboken6"}

IMPORT_EVERYTHING_WITHOUT_A_HOST = """
import importlib, pkgutil, sys

BLOCKED = {"FreeCAD", "FreeCADGui", "freecad", "Part", "Mesh", "MeshPart", "PySide", "PySide2",
           "PySide6", "PyQt5", "PyQt6", "shiboken2", "shiboken6", "tkinter"}

class NoHost:
    def find_spec(self, name, path=None, target=None):
        if name.partition(".")[0] in BLOCKED:
            raise ImportError(f"{name} was asked for")

sys.meta_path.insert(0, NoHost())
import laywright
names = [m.name for m in pkgutil.walk_packages(laywright.__path__, "laywright.", onerror=print)]
for name in names:
    importlib.import_module(name)
print(len(names))
"""


def python_files(folder):
    return sorted(folder.rglob("*.py"))


def top_level_imports(source):
    """Return the first part of every module name that a source imports from outside."""
    found = set()
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            found |= {alias.name.partition(".")[0] for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.level == 0:
            found.add(node.module.partition(".")[0])
    return found


def attributes(source):
    return {node.attr for node in ast.walk(ast.parse(source)) if isinstance(node, ast.Attribute)}


def offenders(forbidden, found_in, but_not=()):
    """Return what each file of the workbench holds of `forbidden`; `but_not` names exceptions."""
    return {
        str(path.relative_to(WORKBENCH)): sorted(found)
        for path in python_files(WORKBENCH)
        if path.relative_to(WORKBENCH).as_posix() not in but_not
        and (found := found_in(path.read_text(encoding="utf-8")) & forbidden)
    }


def run_python(*arguments):
    environment = os.environ | {"PYTHONPATH": str(CHECKOUT / "core")}
    return subprocess.run(
        [sys.executable, *arguments],
        check=False,
        capture_output=True,
        text=True,
        cwd=CHECKOUT,
        env=environment,
    )


def test_finders_see_what_they_look_for():
    source = "import numpy as np\ndef f(x):\n    from scipy.linalg import lu\n    x.tessellate(1)"
    assert top_level_imports(source) == {"numpy", "scipy"}
    assert "tessellate" in attributes(source)


def test_imports_point_one_way():
    script = (
        "from importlinter.cli import lint_imports\n"
        "raise SystemExit(lint_imports('pyproject.toml', no_cache=True, no_logo=True))"
    )
    done = run_python("-c", script)
    assert done.returncode == 0, done.stdout + done.stderr
    assert "0 broken" in done.stdout


def test_every_module_of_the_core_imports_with_no_cad_host_and_no_window_toolkit():
    done = run_python("-c", IMPORT_EVERYTHING_WITHOUT_A_HOST)
    assert done.returncode == 0, done.stderr
    without_the_root = len(python_files(CHECKOUT / "core" / "laywright")) - 1
    assert int(done.stdout) == without_the_root


@pytest.mark.parametrize(
    "folder", [".", "core", "freecad_mod", "freecad_mod/freecad", "tests", "tools", "icons"]
)
def test_folder_is_no_package(folder):
    """FreeCAD puts the checkout on its path, where these names would collide with others."""
    assert not (CHECKOUT / folder / "__init__.py").exists()


def test_freecad_has_one_way_to_load_the_workbench():
    legacy = {"Init.py", "InitGui.py"}
    for folder in (CHECKOUT, CHECKOUT / "freecad_mod"):
        assert legacy.isdisjoint(entry.name for entry in folder.iterdir())


def test_workbench_computes_nothing():
    assert offenders(COMPUTATION, top_level_imports) == {}


def test_shapes_and_arrays_meet_in_the_bridge_alone():
    assert offenders(CONVERSION_MODULES, top_level_imports, but_not=[BRIDGE]) == {}
    assert offenders(CONVERSION_CALLS, attributes, but_not=[BRIDGE]) == {}


def test_window_toolkit_is_chosen_in_one_place():
    assert offenders(WINDOWS, top_level_imports, but_not=[QT]) == {}
