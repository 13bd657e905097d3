"""The one place that asks for folders and files, with the dialogs that FreeCAD is set to use."""

import FreeCAD
import FreeCADGui

from freecad.laywright.qt import QtWidgets

__all__ = ["ask_for_file", "ask_for_folder", "ask_where_to_save"]

_DIALOGS = "User parameter:BaseApp/Preferences/Dialog"


def ask_for_folder(title, start="", parent=None):
    """Return the folder that a person chooses, "" for none."""
    kinds = QtWidgets.QFileDialog
    return kinds.getExistingDirectory(
        parent or FreeCADGui.getMainWindow(), title, start, kinds.ShowDirsOnly | _own()
    )


def ask_for_file(title, kinds, parent=None):
    """Return the file that a person chooses to read, "" for none.

    Parameters
    ----------
    title : str
        Of the dialog.
    kinds : str
        What is offered, such as ``"Cards (*.toml)"``.
    parent : QWidget, optional
    """
    dialog = QtWidgets.QFileDialog
    found = dialog.getOpenFileName(
        parent or FreeCADGui.getMainWindow(), title, "", kinds, options=_own()
    )
    return found[0]


def ask_where_to_save(title, name, kinds, parent=None):
    """Return the file that a person chooses to write, "" for none; see `ask_for_file`."""
    dialog = QtWidgets.QFileDialog
    found = dialog.getSaveFileName(
        parent or FreeCADGui.getMainWindow(), title, name, kinds, options=_own()
    )
    return found[0]


def _own():
    """Return the option that keeps the system's dialogs away where FreeCAD's settings say so."""
    kinds = QtWidgets.QFileDialog
    plain = FreeCAD.ParamGet(_DIALOGS).GetBool("DontUseNativeDialog", False)
    return kinds.DontUseNativeDialog if plain else kinds.Options()
