"""The examples that come along: parts to try the workbench on, opened as copies."""

import shutil
import tempfile
from pathlib import Path

import FreeCAD

from freecad.laywright import ADDON

__all__ = ["EXAMPLES", "open_example"]

# file in the folder examples: title
EXAMPLES = {
    "hatch_cover": "Crowned hatch cover",
    "sensor_cowl": "Teardrop cowl for a sensor",
    "battery_tray": "Battery tray that holds itself back",
}


def open_example(file):
    """Open a copy of an example, so that the example itself stays as it is.

    Parameters
    ----------
    file : str
        A key of `EXAMPLES`.

    Returns
    -------
    App.Document
    """
    folder = Path(tempfile.mkdtemp(prefix="laywright-"))
    copy = shutil.copy(ADDON / "examples" / f"{file}.FCStd", folder)
    return FreeCAD.openDocument(str(copy))
