"""Run pytest inside FreeCAD; tools/test.sh starts it through tools/in_freecad.sh.

The two FreeCADs hand arguments on differently, so they come as environment variables:
``LAYWRIGHT_TESTS`` (folder of tests), ``LAYWRIGHT_JUNIT`` (file for the results) and
``LAYWRIGHT_FREECAD`` (the version that must be running, such as ``0.20``).
"""

import os
import sys
import traceback
from pathlib import Path

import FreeCAD


def main() -> int:
    """Run the tests and return pytest's exit code; 1 if they could not be run."""
    # FreeCAD shows Python's output in a panel of its window: write to the terminal instead.
    sys.stdout = os.fdopen(os.dup(1), "w", buffering=1)
    sys.stderr = os.fdopen(os.dup(2), "w", buffering=1)
    try:
        version = ".".join(FreeCAD.Version()[:2])
        wanted = os.environ["LAYWRIGHT_FREECAD"]
        if version != wanted:
            print(f"This is FreeCAD {version}, needed {wanted}; run tools/test.sh on Debian 12.")
            return 1
        import pytest  # its absence must end FreeCAD like any other failure

        checkout = Path(__file__).resolve().parent.parent
        return int(
            pytest.main(
                [
                    f"--rootdir={checkout}",
                    f"--config-file={checkout / 'pyproject.toml'}",
                    f"--junitxml={os.environ['LAYWRIGHT_JUNIT']}",
                    "-p",
                    "no:cacheprovider",
                    str(checkout / os.environ["LAYWRIGHT_TESTS"]),
                ]
            )
        )
    except BaseException:
        traceback.print_exc()
        return 1


def run() -> None:
    """Run the tests and end FreeCAD at once, for it would go on or lose the exit code."""
    code = main()
    sys.stdout.flush()
    sys.stderr.flush()
    os._exit(code)


if FreeCAD.GuiUp:
    from PySide import QtCore

    # Once the window stands and its event loop runs.
    QtCore.QTimer.singleShot(500, run)
else:
    run()
