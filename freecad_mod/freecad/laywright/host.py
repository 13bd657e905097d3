"""What a computation needs from FreeCAD while it runs: progress, and a way to be stopped."""

from contextlib import contextmanager

import FreeCAD

from laywright.errors import Cancelled

__all__ = ["progress", "transaction"]

_STEPS = 100


@contextmanager
def progress(title):
    """Give a progress callback that moves FreeCAD's progress bar.

    Escape in the window ends the computation with `Cancelled`.
    """
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
def transaction(document, title):
    """One step of undo: kept when the block ends well, taken back when it does not."""
    document.openTransaction(title)
    try:
        yield
    except BaseException:
        document.abortTransaction()
        raise
    document.commitTransaction()
