"""A small window beside FreeCAD's work: which packages are fetched, and how far that is."""

import FreeCAD

from freecad.laywright import packages
from freecad.laywright.installation import Installation
from freecad.laywright.qt import QtCore, QtWidgets, translate

__all__ = ["InstallWindow", "offer"]

_TICK = 100  # ms


class InstallWindow(QtWidgets.QDialog):
    """Shows what the installing process says; Cancel, Escape or closing it ends the process.

    Parameters
    ----------
    names : sequence of str
        Packages.
    ready : callable
        Called when they are there.
    """

    def __init__(self, names, ready, parent=None):
        super().__init__(parent)
        self.setObjectName("LaywrightInstall")
        self.setWindowTitle(translate("Laywright", "Packages for Laywright"))
        self.setAttribute(QtCore.Qt.WA_DeleteOnClose)
        self._names, self._ready = names, ready
        words = translate("Laywright", "Installing {0}. You can go on working.")
        said = QtWidgets.QLabel(words.format(", ".join(names)))
        said.setWordWrap(True)
        self._bar = QtWidgets.QProgressBar()
        self._bar.setRange(0, 0)
        self._text = QtWidgets.QPlainTextEdit()
        self._text.setObjectName("InstallLines")
        self._text.setReadOnly(True)
        self._button = QtWidgets.QPushButton(translate("Laywright", "Cancel"))
        self._button.setObjectName("InstallCancel")
        self._button.clicked.connect(self.reject)
        column = QtWidgets.QVBoxLayout(self)
        for widget in (said, self._bar, self._text):
            column.addWidget(widget)
        column.addWidget(self._button, 0, QtCore.Qt.AlignRight)
        self.resize(560, 320)
        self._shown = 0
        self.installation = Installation(names)
        self._timer = QtCore.QTimer(self)
        self._timer.timeout.connect(self._look)
        self._timer.start(_TICK)

    def _look(self):
        installation = self.installation
        running = installation.is_running()
        for line in installation.lines[self._shown :]:
            self._text.appendPlainText(line)
            self._shown += 1
        if not running:
            self._timer.stop()
            self._end(installation.finish())

    def _end(self, problem):
        self.installation = None
        if not problem:
            self.accept()
            self._ready()
            return
        words = translate(
            "Laywright", "The packages were not installed: {0}\n\nTo do it by hand run:\n{1}"
        )
        said = words.format(problem, packages.by_hand(self._names))
        self._bar.hide()
        self._button.setText(translate("Laywright", "Close"))
        self._text.setPlainText(said)
        FreeCAD.Console.PrintWarning(f"{said}\n")

    def reject(self):
        """End the process if it still runs; nothing has changed then."""
        self._timer.stop()
        if self.installation is not None:
            self.installation.stop()
            self.installation = None
        super().reject()


def offer(names, ready, parent):
    """Ask whether the missing packages shall be installed; print the command if not.

    Parameters
    ----------
    names : sequence of str
        Packages.
    ready : callable
        Called when they are there.
    parent : QWidget
        FreeCAD's window.

    Returns
    -------
    InstallWindow or None
        The window that shows the installation, if it is wanted.
    """
    asked = translate(
        "Laywright",
        "Laywright needs Python packages that FreeCAD does not bring: {0}.\n\n"
        "Install them into {1}?",
    )
    answer = QtWidgets.QMessageBox.question(
        parent, "Laywright", asked.format(", ".join(names), packages.folder())
    )
    if answer == QtWidgets.QMessageBox.Yes:
        window = InstallWindow(names, ready, parent)
        window.show()
        return window
    FreeCAD.Console.PrintMessage(f"Laywright: {packages.by_hand(names)}\n")
    return None
