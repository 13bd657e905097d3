"""Processes that measure: started one after the other, each answers with a line of JSON."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

__all__ = ["MARK", "NotHere", "ask", "tables_of"]

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent
MARK = "MEASURED "
_HOURS = 2.0


class NotHere(Exception):
    """What a row needs is not installed."""


def ask(words: list[str], inside: str = "") -> Any:
    """Return what a fresh process answers to a task of `child.py`.

    Parameters
    ----------
    words : list of str
        The task.
    inside : str
        ``"FreeCAD"`` runs it inside FreeCAD, ``"a window"`` beside a screen of its own.

    Raises
    ------
    NotHere
        If FreeCAD or the screen is not installed.
    RuntimeError
        If the process ended without an answer.
    """
    try:
        done = _finished(words, inside)
    except subprocess.TimeoutExpired as problem:
        raise RuntimeError(f"{' '.join(words)} was not done after {_HOURS:g} hours") from problem
    answers = [line for line in done.stdout.splitlines() if line.startswith(MARK)]
    if not answers:
        last = "\n".join(done.stdout.splitlines()[-25:])
        raise RuntimeError(f"{' '.join(words)} gave no answer:\n{last}")
    return json.loads(answers[-1].removeprefix(MARK))


def tables_of(module: str, names: Iterable[str], inside: str, say: Callable[[str], None]) -> Any:
    """Return the table that each of a module's functions gives, or why there is none."""
    found = []
    for name in names:
        say(f"   {name}")
        try:
            found.append(ask(["call", module, name], inside))
        except (NotHere, RuntimeError) as problem:
            say(str(problem))
            reason = str(problem).splitlines()[0]
            found.append({"title": name, "words": f"{reason}.", "head": [], "rows": []})
    return found


def _finished(words: list[str], inside: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        _command(inside),
        env=os.environ
        | {"LAYWRIGHT_BENCHMARK": " ".join(words), "LAYWRIGHT_BENCHMARKS": str(HERE)}
        | {"LAYWRIGHT_VENV": sys.prefix},
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        errors="replace",
        timeout=3600.0 * _HOURS,
        check=False,
    )


def _command(inside: str) -> list[str]:
    child = str(HERE / "child.py")
    if inside == "FreeCAD":
        _need("freecadcmd")
        return ["bash", str(ROOT / "tools" / "in_freecad.sh"), "console", child]
    if inside == "a window":
        _need("freecad", "xvfb-run")
        return ["xvfb-run", "-a", sys.executable, child]
    return [sys.executable, child]


def _need(*programs: str) -> None:
    missing = [program for program in programs if shutil.which(program) is None]
    if missing:
        raise NotHere(f"not run: {', '.join(missing)} not found on this machine")
