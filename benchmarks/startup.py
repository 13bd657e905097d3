"""What the workbench adds to FreeCAD's start: FreeCAD with and without it, in turn.

    xvfb-run -a .venv/bin/python benchmarks/startup.py

Each start is a whole process with a new home, from nothing until the event loop runs.  In one
home the checkout is linked as a workbench, in the other there is none.  Needs `freecad` and an
X server.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import sysconfig
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
LEAVE = "from PySide import QtCore; import os; QtCore.QTimer.singleShot(0, lambda: os._exit(0))"
STARTS = 7


def home_of(folder: Path, with_workbench: bool) -> Path:
    """Make a FreeCAD home, with the checkout as a workbench or without."""
    home = folder / ("with" if with_workbench else "without")
    (home / "Mod").mkdir(parents=True)
    if with_workbench:
        (home / "Mod" / "Laywright").symlink_to(ROOT)
        (home / "AdditionalPythonPackages").symlink_to(sysconfig.get_path("purelib"))
    return home


def start(home: Path, script: Path) -> float:
    """Return the seconds of one start."""
    environment = os.environ | {
        "FREECAD_USER_HOME": str(home),
        "LC_ALL": "C.UTF-8",
        "LIBGL_ALWAYS_SOFTWARE": "1",
        "QTWEBENGINE_DISABLE_SANDBOX": "1",
    }
    environment.pop("PYTHONPATH", None)
    begin = time.perf_counter()
    subprocess.run(
        ["freecad", str(script)],
        env=environment,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        timeout=120,
        check=True,
    )
    return time.perf_counter() - begin


def main() -> int:
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        script = folder / "leave.py"
        script.write_text(LEAVE)
        homes = [home_of(folder, with_workbench) for with_workbench in (True, False)]
        for home in homes:
            start(home, script)
        pairs = [[start(home, script) for home in homes] for _ in range(STARTS)]
    ours, bare = (statistics.median(times) for times in zip(*pairs, strict=True))
    added = statistics.median(ours - bare for ours, bare in pairs)
    print(
        f"FreeCAD's start, {STARTS} pairs: {ours:.2f} s with the workbench, {bare:.2f} s without, "
        f"median of the differences {added:.2f} s (target: 0.3 s at most)"
    )
    return 0


if __name__ == "__main__":
    sys.exit(main())
