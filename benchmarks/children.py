"""Processes that measure: started one after the other, each answers with a line of JSON."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any

__all__ = ["MARK", "NotHere", "ask"]

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
    done = subprocess.run(
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
    answers = [line for line in done.stdout.splitlines() if line.startswith(MARK)]
    if not answers:
        last = "\n".join(done.stdout.splitlines()[-25:])
        raise RuntimeError(f"{' '.join(words)} gave no answer:\n{last}")
    return json.loads(answers[-1].removeprefix(MARK))


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
