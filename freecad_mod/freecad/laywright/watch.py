"""A small window over FreeCAD's: what is being computed, how far it is, how long it may take.

While it stands, FreeCAD's window is drawn and moved as always but takes no input, so that a
document cannot change below a computation.  Escape and Cancel stop the computation.
"""

import sys
import time
from contextlib import contextmanager

import FreeCADGui

from freecad.laywright.qt import QtCore, QtWidgets, run_loop, translate
from freecad.laywright.worker import Worker
from laywright.errors import Cancelled

__all__ = ["Watch", "time_left"]

_QUIET = 0.4  # s before it shows itself
_PATIENCE = 1.5  # s that a stopped computation is waited for; then it ends by itself, unused
_TICK = 50  # ms
_TURN = 0.0005  # s after which a computation lets the window have its turn
_STEPS = 1000
_SURE = 0.03  # share done from which a time is told


class Watch:
    """Runs computations beside the window, one after the other, and shows itself if they last.

    Parameters
    ----------
    title : str
        What is being done, for its title bar.
    """

    def __init__(self, title):
        self._title = title
        self._began = time.monotonic()
        self._cancelled_at = None
        self._dialog = None

    def __enter__(self):
        return self

    def __exit__(self, *problem):
        if self._dialog is not None:
            self._dialog.finished.disconnect()
            self._dialog.close()
            self._dialog.deleteLater()
        return False

    def run(self, function, start=0.0, end=1.0, doing=""):
        """Return ``function(progress)``, computed in a thread of its own.

        Parameters
        ----------
        function : callable
            Touches nothing of FreeCAD.
        start, end : float
            Its share of all that is computed under this watch.
        doing : str
            What it makes, for people.

        Raises
        ------
        Cancelled
            If the person stops it.
        """
        worker = Worker(function)
        worker.join(max(0.0, _QUIET - (time.monotonic() - self._began)))
        if worker.is_alive():
            if self._dialog is None:
                self._show()
            with _heard(self._button, self._cancel):
                self._wait(worker, start, end, doing)
        if worker.is_alive() or self._cancelled_at is not None:
            raise Cancelled()
        return worker.outcome()

    def _wait(self, worker, start, end, doing):
        loop = QtCore.QEventLoop()

        def look():
            share = start + (end - start) * worker.share
            self._bar.setRange(0, _STEPS if share > 0.0 else 0)
            self._bar.setValue(int(_STEPS * share))
            if self._cancelled_at is None:
                words = ": ".join(part for part in (doing, worker.doing) if part)
                self._words.setText(words or self._title)
                self._time.setText(time_left(time.monotonic() - self._began, share))
            else:
                worker.stop()
                self._words.setText(translate("Laywright", "Stopping …"))
                if time.monotonic() - self._cancelled_at > _PATIENCE:
                    loop.quit()
            if not worker.is_alive():
                loop.quit()

        timer = QtCore.QTimer()
        timer.timeout.connect(look)
        timer.start(_TICK)
        look()
        run_loop(loop)
        timer.stop()

    def _show(self):
        dialog = QtWidgets.QDialog(FreeCADGui.getMainWindow())
        dialog.setObjectName("LaywrightWatch")
        dialog.setWindowTitle(self._title)
        dialog.setWindowModality(QtCore.Qt.ApplicationModal)
        dialog.setMinimumWidth(420)
        column = QtWidgets.QVBoxLayout(dialog)
        self._words, self._time = QtWidgets.QLabel(), QtWidgets.QLabel()
        self._bar = QtWidgets.QProgressBar()
        self._bar.setTextVisible(False)
        row = QtWidgets.QHBoxLayout()
        row.addWidget(self._time)
        row.addStretch()
        self._button = QtWidgets.QPushButton(translate("Laywright", "Cancel"))
        self._button.setObjectName("LaywrightCancel")
        self._button.clicked.connect(dialog.reject)
        row.addWidget(self._button)
        column.addWidget(self._words)
        column.addWidget(self._bar)
        column.addLayout(row)
        dialog.finished.connect(self._cancel)
        dialog.show()
        self._dialog = dialog

    def _cancel(self, *_):
        """Escape, Cancel or closing the window; it stays in sight until the work has ended."""
        if self._cancelled_at is None:
            self._cancelled_at = time.monotonic()
        self._dialog.show()


def time_left(seconds, share):
    """Return in words how long the rest will take at the pace so far; "" while unknown."""
    if share < _SURE or seconds < 1.0:
        return ""
    left = seconds * (1.0 - share) / share
    if left < 90.0:
        return translate("Laywright", "about {0} s left").format(max(1, round(left)))
    return translate("Laywright", "about {0} min left").format(round(left / 60.0))


class _Ear(QtCore.QObject):
    """Hears Cancel and Escape during a recompute, before FreeCAD takes all input for itself."""

    def __init__(self, button, act):
        super().__init__()
        self._button, self._act = button, act

    def eventFilter(self, watched, event):
        kind = event.type()
        if kind == QtCore.QEvent.MouseButtonRelease and watched is self._button:
            self._act()
            return True
        if kind == QtCore.QEvent.KeyPress and event.key() == QtCore.Qt.Key_Escape:
            self._act()
            return True
        return False


@contextmanager
def _heard(button, act):
    application = QtWidgets.QApplication.instance()
    ear = _Ear(button, act)
    interval = sys.getswitchinterval()
    sys.setswitchinterval(_TURN)
    application.installEventFilter(ear)
    application.setOverrideCursor(QtCore.Qt.ArrowCursor)
    try:
        yield
    finally:
        application.restoreOverrideCursor()
        application.removeEventFilter(ear)
        sys.setswitchinterval(interval)
