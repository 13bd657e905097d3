"""The Python packages that the core needs, and how they come into FreeCAD.

FreeCAD looks for additional packages in a folder of its own.  They are installed there with
the numpy and scipy that FreeCAD brings held as they are, for those belong to the host.
"""

import importlib
import shutil
import subprocess
import sys
from pathlib import Path

import FreeCAD

__all__ = ["NEEDED", "command", "folder", "install", "missing", "offer"]

# import name: name to install
NEEDED = {
    "numpy": "numpy",
    "scipy": "scipy",
    "pint": "pint",
    "manifold3d": "manifold3d",
    "shapely": "shapely",
    "trimesh": "trimesh",
    "networkx": "networkx",
    "lxml": "lxml",
    "ezdxf": "ezdxf",
    "spyrrow": "spyrrow",
    "reportlab": "reportlab",
    "jinja2": "jinja2",
}
_HELD = ("numpy", "scipy", "lxml")


def missing():
    """Return the names of the packages that are not there or do not load."""
    return [name for module, name in NEEDED.items() if not _loads(module)]


def _loads(module):
    try:
        importlib.import_module(module)
    except ImportError:
        return False
    return True


def folder():
    """Return the folder where FreeCAD looks for additional packages."""
    base = Path(FreeCAD.getUserAppDataDir()) / "AdditionalPythonPackages"
    major, minor = (int(part) for part in FreeCAD.Version()[:2])
    if (major, minor) >= (1, 0):
        return base / f"py{sys.version_info.major}{sys.version_info.minor}"
    return base


def command(names):
    """Return the command that installs the packages, as a list of words."""
    python = shutil.which("python3") or shutil.which("python") or sys.executable
    return [
        python,
        "-m",
        "pip",
        "install",
        "--target",
        str(folder()),
        "--python-version",
        f"{sys.version_info.major}.{sys.version_info.minor}",
        "--only-binary=:all:",
        "--constraint",
        str(folder() / "held.txt"),
        *names,
    ]


def install(names):
    """Install packages into FreeCAD's folder, the host's own numpy and scipy held.

    Returns
    -------
    str
        Empty when all went well; otherwise what pip said last.
    """
    target = folder()
    target.mkdir(parents=True, exist_ok=True)
    held = []
    for name in _HELD:
        if _loads(name):
            held.append(f"{name}=={importlib.import_module(name).__version__}")
    (target / "held.txt").write_text("\n".join(held) + "\n", encoding="utf-8")
    done = subprocess.run(command(names), capture_output=True, text=True, check=False)
    importlib.invalidate_caches()
    if str(target) not in sys.path:
        sys.path.append(str(target))
    return "" if done.returncode == 0 else done.stderr.strip()[-600:]


def offer(names):
    """Ask whether the missing packages shall be installed; print the command if that fails."""
    from freecad.laywright.qt import QtWidgets, translate

    asked = translate(
        "Laywright",
        "Laywright needs Python packages that FreeCAD does not bring: {0}.\n\n"
        "Install them into {1}?",
    )
    answer = QtWidgets.QMessageBox.question(
        None, "Laywright", asked.format(", ".join(names), folder())
    )
    by_hand = " ".join(command(names))
    if answer == QtWidgets.QMessageBox.Yes:
        problem = install(names)
        if problem:
            words = translate(
                "Laywright",
                "The packages were not installed: {0}\n\nTo do it by hand run:\n{1}",
            )
            QtWidgets.QMessageBox.warning(None, "Laywright", words.format(problem, by_hand))
            return
    FreeCAD.Console.PrintMessage(f"Laywright: {by_hand}\n")
