"""What a computation needs from FreeCAD while it runs: progress, and a way to be stopped."""

import threading
from contextlib import contextmanager

import FreeCAD

from laywright.errors import Cancelled

__all__ = ["busy", "has_window", "progress", "run", "transaction"]

_STEPS = 100


def has_window():
    """Return whether there is a window that must stay alive, and this is its thread."""
    return bool(FreeCAD.GuiUp) and threading.current_thread() is threading.main_thread()


def run(title, function):
    """Return ``function(progress)``; where there is a window, it stays alive meanwhile.

    Parameters
    ----------
    title : str
        What is computed.
    function : callable
        Takes a progress callback and touches nothing of FreeCAD.

    Raises
    ------
    Cancelled
        If the person stops it.
    """
    if has_window():
        from freecad.laywright.watch import Watch

        with Watch(title) as watch:
            return watch.run(function)
    with progress(title) as report:
        return function(report)


@contextmanager
def progress(title):
    """Give a progress callback that moves FreeCAD's progress bar."""
    bar = FreeCAD.Base.ProgressIndicator()
    bar.start(f"{title} …", _STEPS)
    done = 0

    def report(share, doing=""):
        nonlocal done
        while done < int(share * _STEPS) and done < _STEPS:
            done += 1
            try:
                bar.next(True)
            except RuntimeError as stopped:
                raise Cancelled(title) from stopped

    try:
        yield report
    finally:
        bar.stop()


@contextmanager
def busy(title):
    """Say what is being done while the window cannot be drawn.

    FreeCAD's shapes may be used by one thread alone, and Python waits while it works on one.
    """
    if not has_window():
        yield
        return
    import FreeCADGui

    from freecad.laywright.qt import QtCore, QtWidgets

    bar = FreeCADGui.getMainWindow().statusBar()
    bar.showMessage(title)
    QtWidgets.QApplication.setOverrideCursor(QtCore.Qt.WaitCursor)
    QtWidgets.QApplication.processEvents(QtCore.QEventLoop.ExcludeUserInputEvents)
    try:
        yield
    finally:
        QtWidgets.QApplication.restoreOverrideCursor()
        bar.clearMessage()


@contextmanager
def transaction(document, title):
    """One step of undo: kept when the block ends well, taken back when it does not."""
    document.openTransaction(title)
    try:
        yield
    except BaseException:
        document.abortTransaction()
        raise
    document.commitTransaction()
