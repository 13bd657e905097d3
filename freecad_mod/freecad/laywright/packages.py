"""The Python packages that the core needs, and how they come into FreeCAD.

FreeCAD looks for additional packages in a folder of its own.  They are installed there with
the numpy and scipy that FreeCAD brings held as they are, for those belong to the host.
"""

import importlib
import shutil
import sys
from pathlib import Path

import FreeCAD

__all__ = ["NEEDED", "by_hand", "command", "folder", "held", "missing"]

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


def held():
    """Return the packages that the host brings and that stay as they are: name to version."""
    return {name: importlib.import_module(name).__version__ for name in _HELD if _loads(name)}


def command(names, target):
    """Return the command that installs packages into a folder, as a list of words.

    The versions that are held are written into a file that the command names.
    """
    versions = Path(FreeCAD.getUserAppDataDir()) / "Laywright" / "held.txt"
    versions.parent.mkdir(parents=True, exist_ok=True)
    lines = [f"{name}=={version}\n" for name, version in held().items()]
    versions.write_text("".join(lines), encoding="utf-8")
    return [
        shutil.which("python3") or shutil.which("python") or sys.executable,
        "-m",
        "pip",
        "install",
        "--disable-pip-version-check",
        "--target",
        str(target),
        "--python-version",
        f"{sys.version_info.major}.{sys.version_info.minor}",
        "--only-binary=:all:",
        "--constraint",
        str(versions),
        *names,
    ]


def by_hand(names):
    """Return the very line to type where the packages cannot be installed from here."""
    return " ".join(
        f'"{word}"' if " " in word or not word else word for word in command(names, folder())
    )
