"""What the workbench adds to FreeCAD's start: FreeCAD with and without it, in turn.

    xvfb-run -a .venv/bin/python benchmarks/startup.py

Each start is a whole process, from nothing until the event loop runs.  In one home the checkout
is linked as a workbench, in the other there is none; both have been started once before.  Needs
`freecad` and an X server.
"""

from __future__ import annotations

import os
import subprocess
import sysconfig
import tempfile
from pathlib import Path

from rows import ROOT, Case, Found, Kernel, main

LEAVE = "from PySide import QtCore; import os; QtCore.QTimer.singleShot(0, lambda: os._exit(0))"


def home_of(folder: Path, with_workbench: bool) -> Path:
    """Make a FreeCAD home, with the checkout as a workbench or without."""
    home = folder / ("with" if with_workbench else "without")
    (home / "Mod").mkdir(parents=True)
    if with_workbench:
        (home / "Mod" / "Laywright").symlink_to(ROOT)
        (home / "AdditionalPythonPackages").symlink_to(sysconfig.get_path("purelib"))
    return home


def start(home: Path, script: Path) -> None:
    """Start FreeCAD and wait until it has left."""
    environment = os.environ | {
        "FREECAD_USER_HOME": str(home),
        "LC_ALL": "C.UTF-8",
        "LIBGL_ALWAYS_SOFTWARE": "1",
        "QTWEBENGINE_DISABLE_SANDBOX": "1",
    }
    environment.pop("PYTHONPATH", None)
    subprocess.run(
        ["freecad", str(script)],
        env=environment,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        timeout=120,
        check=True,
    )


def starts(_: int) -> Case:
    kept = tempfile.TemporaryDirectory()
    folder = Path(kept.name)
    script = folder / "leave.py"
    script.write_text(LEAVE)
    homes = [home_of(folder, with_workbench) for with_workbench in (True, False)]
    for home in homes:
        start(home, script)

    def compare(*_results: None) -> Found:
        kept.cleanup()
        return Found("until the event loop runs")

    return Case(1, lambda _: start(homes[0], script), lambda _: start(homes[1], script), compare)


KERNELS = (
    Kernel(
        "start",
        "Start of FreeCAD",
        "FreeCAD without the workbench",
        "at most 0.3 s more than the peer",
        "starts",
        (1,),
        (1,),
        starts,
        lambda row: row.ours - row.peer <= 0.3,
        inside="a window",
        turns=7,
    ),
)

if __name__ == "__main__":
    main(KERNELS)
