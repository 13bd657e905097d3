"""Packages that are missing: fetched beside FreeCAD's folder, moved in whole or not at all."""

import shutil
import sys
import time
from importlib.metadata import version
from pathlib import Path

import FreeCAD
import pytest

from freecad.laywright import installation, packages

pytestmark = pytest.mark.freecad

FETCH = """
import pathlib, sys, time
new = pathlib.Path(sys.argv[1])
for name in ("alpha", "numpy", "numpy.libs", "bin"):
    (new / name).mkdir(parents=True)
    (new / name / "content.py").write_text("new")
for name in ("alpha-2.0", "numpy-9.9"):
    (new / f"{name}.dist-info").mkdir()
print("Collecting alpha", flush=True)
{then}
"""


def contents(folder):
    return {
        str(path.relative_to(folder)): path.read_text() if path.is_file() else None
        for path in folder.rglob("*")
    }


@pytest.fixture
def folder(tmp_path, monkeypatch):
    """Return a folder of packages that holds an older alpha, and another package."""
    folder = tmp_path / "packages"
    for name in ("alpha", "alpha-1.0.dist-info", "beta"):
        (folder / name).mkdir(parents=True)
        (folder / name / "content.py").write_text("old")
    monkeypatch.setattr(packages, "folder", lambda: folder)
    monkeypatch.setattr(sys, "path", list(sys.path))
    return folder


@pytest.fixture
def fetching(monkeypatch):
    """Return a function that starts an installation whose process ends as is said."""

    def start(then):
        def command(names, target):
            return [shutil.which("python3"), "-c", FETCH.replace("{then}", then), str(target)]

        monkeypatch.setattr(packages, "command", command)
        return installation.Installation(["alpha"])

    return start


def leftovers():
    own = Path(FreeCAD.getUserAppDataDir()) / "Laywright"
    return [name for name in ("being installed", "replaced") if (own / name).exists()]


def test_the_command_holds_what_the_host_brings():
    words = packages.command(["ezdxf", "pint"], "/some where")
    text = Path(words[words.index("--constraint") + 1]).read_text()
    assert text == "".join(f"{name}=={version(name)}\n" for name in ("numpy", "scipy", "lxml"))
    assert words[words.index("--target") + 1] == "/some where"
    wanted = f"{sys.version_info.major}.{sys.version_info.minor}"
    assert words[words.index("--python-version") + 1] == wanted
    assert words[-2:] == ["ezdxf", "pint"]
    line = packages.by_hand(["ezdxf"])
    assert line.endswith(" ezdxf")
    assert f"--target {packages.folder()}" in line
    assert packages.missing() == []


def test_what_was_fetched_is_moved_in_but_for_what_the_host_has(folder, fetching):
    running = fetching("")
    assert running.finish() == ""
    assert running.lines == ["Collecting alpha"]
    assert contents(folder) == {
        "alpha": None,
        "alpha/content.py": "new",
        "alpha-2.0.dist-info": None,
        "beta": None,
        "beta/content.py": "old",
    }
    assert leftovers() == []
    assert str(folder) in sys.path


def test_a_failure_says_why_and_leaves_the_folder(folder, fetching):
    before = contents(folder)
    running = fetching("print('no such package'); sys.exit(1)")
    assert running.finish() == "Collecting alpha\nno such package"
    assert contents(folder) == before
    assert leftovers() == []


def test_stopped_it_leaves_the_folder_and_no_process(folder, fetching):
    before = contents(folder)
    running = fetching("time.sleep(60)")
    end = time.monotonic() + 20
    while not running.lines and time.monotonic() < end:
        time.sleep(0.05)
    assert running.is_running()
    running.stop()
    assert not running.is_running()
    assert contents(folder) == before
    assert leftovers() == []


@pytest.mark.parametrize("moves", [1, 2, 3])
def test_if_moving_in_fails_all_is_moved_back(folder, fetching, monkeypatch, moves):
    before, done, move = contents(folder), [], shutil.move

    def failing(source, target):
        if len(done) == moves:
            done.append("failed")
            raise OSError("no space left")
        done.append(source)
        return move(source, target)

    running = fetching("")
    monkeypatch.setattr(shutil, "move", failing)
    assert running.finish() == "no space left"
    assert contents(folder) == before
    assert leftovers() == []


def test_no_python_to_run_is_said(folder, monkeypatch):
    monkeypatch.setattr(packages, "command", lambda names, target: ["/no/such/python"])
    assert "No such file" in installation.install(["alpha"])
    assert leftovers() == []
