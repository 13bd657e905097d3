"""Run one example inside FreeCAD: ``LAYWRIGHT_EXAMPLE`` names its file.

FreeCAD reports an exception in a script as success; this ends with the right exit code.  What
the example prints is shown, FreeCAD's own progress is not; its errors are.
"""

import os
import runpy
import sys
import traceback
from pathlib import Path

sys.stdout = os.fdopen(os.dup(1), "w", buffering=1)
os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
code = 0
try:
    path = Path(os.environ["LAYWRIGHT_EXAMPLE"]).resolve()
    sys.path.insert(0, str(path.parent))
    runpy.run_path(str(path), run_name="__main__")
except SystemExit as wish:
    code = wish.code if isinstance(wish.code, int) else int(wish.code is not None)
    if isinstance(wish.code, str):
        print(wish.code)
except BaseException:
    traceback.print_exc(file=sys.stdout)
    code = 1
sys.stdout.flush()
os._exit(code)
