"""The Laywright workbench: collects inputs, calls the core, shows the results.

Importing this package makes the core importable as ``laywright``: an installed one is taken
as it is, otherwise the ``core`` folder of this checkout is used.  FreeCAD is not needed for
that, so the package can be imported anywhere.
"""

import importlib.util
import sys
from pathlib import Path

__all__ = ["ADDON", "ICONS", "TRANSLATIONS"]

ADDON = Path(__file__).resolve().parents[3]
ICONS = ADDON / "icons"
TRANSLATIONS = Path(__file__).resolve().parent / "translations"

if importlib.util.find_spec("laywright") is None:
    sys.path.append(str(ADDON / "core"))
