"""Packages are fetched by a process beside the window, into a folder beside FreeCAD's.

Only when all is there it is moved in; until then nothing has changed, so it can be stopped at
any moment.
"""

import importlib
import shutil
import subprocess
import sys
import threading
from pathlib import Path

import FreeCAD

from freecad.laywright import packages

__all__ = ["Installation", "install"]

_PATIENCE = 3.0  # s that a stopped process is waited for
_LAST = 6  # lines that say why it failed
_NOT_NEEDED = ("bin", "share", "Scripts", "__pycache__")


def install(names):
    """Install packages and wait for it; for scripts and FreeCAD without its window.

    Returns
    -------
    str
        Empty when all went well; otherwise why not.
    """
    return Installation(names).finish()


class Installation:
    """Packages being fetched.

    Parameters
    ----------
    names : sequence of str
        Packages by the names that are installed.

    Attributes
    ----------
    lines : list of str
        What the process has said so far.
    """

    def __init__(self, names):
        self.lines = []
        self._new = Path(FreeCAD.getUserAppDataDir()) / "Laywright" / "being installed"
        self._old = self._new.with_name("replaced")
        self._process = self._problem = None
        self._clear()
        try:
            self._process = subprocess.Popen(
                packages.command(names, self._new),
                stdin=subprocess.DEVNULL,
                stdout=subprocess.PIPE,
                stderr=subprocess.STDOUT,
                encoding="utf-8",
                errors="replace",
            )
        except OSError as problem:
            self._problem = str(problem)
        self._reader = threading.Thread(target=self._read, name="Laywright", daemon=True)
        self._reader.start()

    def _read(self):
        if self._process is not None:
            for line in self._process.stdout:
                self.lines.append(line.rstrip())

    def is_running(self):
        """Return whether the process still works."""
        return self._reader.is_alive()

    def stop(self):
        """End the process; FreeCAD's folder of packages is as it was."""
        if self._process is not None:
            self._process.terminate()
            try:
                self._process.wait(_PATIENCE)
            except subprocess.TimeoutExpired:
                self._process.kill()
        self._reader.join()
        self._clear()

    def finish(self):
        """Wait for the process and move in what it fetched.

        Returns
        -------
        str
            Empty when all went well; otherwise why not, the folder being as it was.
        """
        self._reader.join()
        if self._process is not None and self._process.wait() != 0:
            self._problem = "\n".join(self.lines[-_LAST:]) or "the process gave no reason"
        if self._problem is None:
            try:
                self._move_in(packages.folder())
            except OSError as problem:
                self._problem = str(problem)
        self._clear()
        return self._problem or ""

    def _move_in(self, target):
        """Move every package in, or none."""
        target.mkdir(parents=True, exist_ok=True)
        self._old.mkdir(parents=True, exist_ok=True)
        moves = []
        try:
            for entry in sorted(self._new.iterdir()):
                if _is_wanted(entry.name):
                    for there in _replaced(entry.name, target):
                        moves.append((there, self._old / there.name))
                        shutil.move(*moves[-1])
                    moves.append((entry, target / entry.name))
                    shutil.move(*moves[-1])
        except OSError:
            for before, after in reversed(moves):
                if after.exists() and not before.exists():
                    shutil.move(after, before)
            raise
        importlib.invalidate_caches()
        if str(target) not in sys.path:
            sys.path.append(str(target))

    def _clear(self):
        for rest in (self._new, self._old):
            shutil.rmtree(rest, ignore_errors=True)


def _is_wanted(name):
    """Return whether an entry belongs in: the host's own packages and command lines do not."""
    hosts = any(
        name == held or name.startswith((f"{held}-", f"{held}.")) for held in packages.held()
    )
    return not hosts and name not in _NOT_NEEDED


def _replaced(name, target):
    """Return the entries of a folder in whose place a new one comes."""
    if name.endswith(".dist-info"):
        return list(target.glob(f"{name.split('-')[0]}-*.dist-info"))
    return [target / name] if (target / name).exists() else []
