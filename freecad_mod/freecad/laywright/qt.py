"""The one place that knows which Qt FreeCAD brings.

FreeCAD's own ``PySide`` shim holds the widgets in ``QtGui`` up to Qt 5 builds of 0.20; newer
builds also have ``QtWidgets``.
"""

from PySide import QtCore, QtGui

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

# Qt 6 has moved it.
QAction = getattr(QtWidgets, "QAction", None) or QtGui.QAction

__all__ = [
    "QAction",
    "QtCore",
    "QtGui",
    "QtWidgets",
    "run_loop",
    "standard_buttons",
    "translate",
]


def run_loop(loop):
    """Run an event loop until it is told to quit."""
    (loop.exec if hasattr(loop, "exec") else loop.exec_)()


def standard_buttons(*names):
    """Return the sum of standard buttons as the integer that a task panel must give."""
    kinds = QtWidgets.QDialogButtonBox
    total = 0
    for name in names:
        button = getattr(kinds, name)
        total |= int(getattr(button, "value", button))
    return total


def translate(context, text):
    """Return the text in the language of the window."""
    return QtCore.QCoreApplication.translate(context, text)
