"""Whether a document that FreeCAD has saved lies on the disk whole."""

import zipfile
from pathlib import Path

import FreeCAD

__all__ = ["warn_if_half"]


def warn_if_half(document, path):
    """Say in the report view that a file is half, and which one still is whole.

    FreeCAD does not look whether all that it wrote has arrived; on a full disk it takes half a
    file for a saved one.

    Parameters
    ----------
    document : App.Document
    path : str
        The file that was written.

    Returns
    -------
    bool
        Whether it is half.
    """
    if zipfile.is_zipfile(path):
        return False
    backups = [beside for beside in _backups(Path(path)) if zipfile.is_zipfile(beside)]
    newest = max(backups, key=lambda beside: beside.stat().st_mtime, default=None)
    where = "there is no backup" if newest is None else f"the file before it is {newest}"
    FreeCAD.Console.PrintError(
        f"{document.Label}: found half a file at {path}, needed a whole one; free some space or "
        f"choose another folder and save again before closing it, {where}.\n"
    )
    return True


def _backups(path):
    """Return the files that FreeCAD keeps beside a document: x.FCStd1, x.FCBak, x.date.FCBak."""
    return [
        beside
        for beside in path.parent.iterdir()
        if beside.name.startswith(path.name if beside.suffix != ".FCBak" else path.stem)
        and beside.name != path.name
    ]
