"""A computation in a thread of its own; the core is pure, so nothing has to be guarded."""

import threading

from laywright.errors import Cancelled

__all__ = ["Worker"]


class Worker(threading.Thread):
    """Runs ``function(progress)`` beside the window.

    Attributes
    ----------
    share : float
        Share done, 0 to 1.
    doing : str
        What is being done.
    """

    def __init__(self, function):
        super().__init__(name="Laywright", daemon=True)
        self.share, self.doing = 0.0, ""
        self._function = function
        self._result = self._problem = None
        self._stopped = threading.Event()
        self.start()

    def run(self):
        """Compute; what goes wrong is kept for `outcome`."""
        try:
            self._result = self._function(self._report)
        except BaseException as problem:
            self._problem = problem

    def _report(self, share, doing=""):
        if self._stopped.is_set():
            raise Cancelled()
        self.share, self.doing = max(share, self.share), doing or self.doing

    def stop(self):
        """Let it end at its next report; nothing of it will be used."""
        self._stopped.set()

    def outcome(self):
        """Return what the finished function gave, or raise what it raised."""
        if self._problem is not None:
            raise self._problem
        return self._result
