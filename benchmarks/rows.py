"""What every benchmark shares: a kernel beside its peer, timed in turn, and a table of the rows.

A kernel is measured in processes of its own, so that memory peaks do not mix: one that times
ours and the peer in turn, and one for each of the two that runs it once and reads its peak.
This module needs the standard library alone; the process that starts the others stays small,
for a process inherits the peak of the one that started it.
"""

from __future__ import annotations

import contextlib
import dataclasses
import math
import resource
import statistics
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from itertools import pairwise
from pathlib import Path
from typing import Any

__all__ = [
    "MET",
    "ROOT",
    "Case",
    "Found",
    "Kernel",
    "Row",
    "as_stored",
    "growth",
    "main",
    "measure",
    "peak",
    "ratio_text",
    "ratio_within",
    "row_from",
    "table",
]

ROOT = Path(__file__).resolve().parent.parent
PEERS = ROOT / "results" / "peers"
sys.path[:0] = [str(ROOT / "core"), str(ROOT / "tests")]
sys.path.append(str(PEERS))

_FORGET_PEAK = Path("/proc/self/clear_refs")  # 5: the peak is what is held now (Linux)
_MEGABYTE = 1024.0  # of the kilobytes that Linux counts in
MET = {True: "yes", False: "**no**", None: ""}
_COLUMNS = ("size", "ours s", "peer s", "ratio", "growth", "ours MB", "peer MB", "target met")


@dataclass(frozen=True)
class Found:
    """What a comparison of both results says.

    Attributes
    ----------
    words : str
        For the table.
    figures : dict of str to float
        What the target asks for beside the time.
    """

    words: str = ""
    figures: dict[str, float] = field(default_factory=dict)


@dataclass(frozen=True)
class Case:
    """One size of a kernel, ready to run.

    Attributes
    ----------
    size : int
        What the input counts in truth.
    ours, peer : callable
        Take what `fresh` gives; no peer where it is not installed.
    fresh : callable
        Gives the input with nothing kept from an earlier run; not timed.
    compare : callable
        Takes both results (the peer's may be None) and returns `Found`; an AssertionError
        where they do not agree.
    """

    size: int
    ours: Callable[[Any], Any]
    peer: Callable[[Any], Any] | None
    compare: Callable[[Any, Any], Found]
    fresh: Callable[[], Any] = lambda: None


@dataclass(frozen=True)
class Kernel:
    """A row of the comparison.

    Attributes
    ----------
    name : str
        To choose it by.
    title, peer, target : str
        What is done, by what else, and what is wanted; for people.
    unit : str
        What sizes count.
    sizes, quick : tuple of int
        Sizes wanted; the quick ones take seconds.
    case : callable
        Makes a `Case` of about a size.
    met : callable
        Takes a `Row` and returns whether the target is met, None where there is none.
    missed : str
        Why it is missed where it is, found by profiling.
    inside : str
        What it runs inside, beside Python: ``"FreeCAD"``, ``"a window"`` or nothing.
    turns : int
        How often ours and the peer take turns; 0 for as often as fits the time.
    """

    name: str
    title: str
    peer: str
    target: str
    unit: str
    sizes: tuple[int, ...]
    quick: tuple[int, ...]
    case: Callable[[int], Case]
    met: Callable[[Row], bool | None]
    missed: str = ""
    inside: str = ""
    turns: int = 0

    def described(self) -> dict[str, Any]:
        """Return what can be told without the case."""
        told = ("name", "title", "peer", "target", "unit", "sizes", "quick", "missed", "inside")
        return {name: getattr(self, name) for name in told}


@dataclass
class Row:
    """What was measured: seconds are medians, memory is megabytes.

    `ours_peak` and `peer_peak` are the largest memory of a process that did the one thing
    once; `ours_added` and `peer_added` what that was more than before the call.
    """

    size: int
    runs: int
    ours: float
    peer: float | None = None
    words: str = ""
    figures: dict[str, float] = field(default_factory=dict)
    ours_peak: float | None = None
    peer_peak: float | None = None
    ours_added: float | None = None
    peer_added: float | None = None
    met: bool | None = None

    @property
    def ratio(self) -> float | None:
        """Our time over the peer's."""
        return None if self.peer is None else self.ours / self.peer


def ratio_within(limit: float) -> Callable[[Row], bool]:
    """Return a target: our time over the peer's."""
    return lambda row: row.ratio is not None and row.ratio <= limit


def measure(kernel: Kernel, size: int, seconds: float = 3.0) -> Row:
    """Time ours and the peer in turn, in this process, and compare what they give.

    They take turns for that many seconds, three times at least and 25 times at most; where one
    turn takes five times as long, once.
    """
    case = kernel.case(size)
    calls = [call for call in (case.ours, case.peer) if call is not None]
    times: list[list[float]] = [[] for _ in calls]
    results: list[Any] = [None, None]
    begin = time.perf_counter()
    while len(times[-1]) < (
        kernel.turns or _runs(len(times[-1]), time.perf_counter() - begin, seconds)
    ):
        for which, call in enumerate(calls):
            given = case.fresh()
            start = time.perf_counter()
            results[which] = call(given)
            times[which].append(time.perf_counter() - start)
    found = case.compare(*results)
    ours, peer = (*map(statistics.median, times), None)[:2]
    row = Row(case.size, len(times[0]), ours, peer, found.words, found.figures)
    row.met = kernel.met(row)
    return row


def _runs(done: int, spent: float, seconds: float) -> int:
    """Return how many turns there are to be."""
    if done and spent / done > 5.0 * seconds:
        return 1
    return 25 if spent < seconds else 3


def peak(kernel: Kernel, size: int, whose: str) -> tuple[float, float]:
    """Run ours or the peer once; return this process's peak and what the call added, MB."""
    case = kernel.case(size)
    call = case.ours if whose == "ours" else case.peer
    if call is None:
        return math.nan, math.nan
    given = case.fresh()
    with contextlib.suppress(OSError):
        _FORGET_PEAK.write_text("5")
    before = _largest()
    kept = call(given)
    after = _largest()
    del kept
    return after, after - before


def _largest() -> float:
    """Return the largest memory so far of this process or of one that it started, MB."""
    whose = (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)
    return max(resource.getrusage(which).ru_maxrss for which in whose) / _MEGABYTE


def growth(rows: Sequence[Row]) -> list[str]:
    """Return for every row the exponent p of time ~ size^p since the row before, as text."""
    words = [""]
    for low, high in pairwise(rows):
        span = math.log(high.size / low.size)
        both = [
            f"{math.log(after / before) / span:.2f}"
            for before, after in ((low.ours, high.ours), (low.peer, high.peer))
            if before and after
        ]
        words.append(", peer ".join(both))
    return words


def table(rows: Sequence[Row]) -> str:
    """Return rows of one kernel as a Markdown table."""
    lines = ["| " + " | ".join((*_COLUMNS, "found")) + " |"]
    lines.append("|" + "---|" * (len(_COLUMNS) + 1))
    for row, grown in zip(rows, growth(rows), strict=True):
        cells = (
            f"{row.size:,}",
            _figure(row.ours),
            _figure(row.peer),
            ratio_text(row),
            grown,
            _memory(row.ours_peak, row.ours_added),
            _memory(row.peer_peak, row.peer_added),
            MET[row.met],
            row.words,
        )
        lines.append("| " + " | ".join(cells) + " |")
    return "\n".join(lines)


def ratio_text(row: Row) -> str:
    """Return our time over the peer's as text."""
    if row.ratio is None:
        return "no peer"
    return f"{row.ratio:.2f}" if row.ratio < 100.0 else f"{row.ratio:,.0f}"


def _figure(seconds: float | None) -> str:
    return "" if seconds is None else f"{seconds:.3g}" if seconds < 100.0 else f"{seconds:.0f}"


def _memory(whole: float | None, added: float | None) -> str:
    if whole is None or added is None or math.isnan(whole):
        return ""
    return f"{whole:.0f} (+{added:.0f})"


def main(kernels: Sequence[Kernel]) -> None:
    """Measure the kernels of one file, with the sizes that the command line names or all."""
    sizes = [int(word) for word in sys.argv[1:] if word.isdigit()]
    names = {word for word in sys.argv[1:] if not word.isdigit()}
    for kernel in kernels:
        if names and kernel.name not in names:
            continue
        print(f"{kernel.title} ({kernel.name}), sizes in {kernel.unit}; peer: {kernel.peer}")
        rows = [measure(kernel, size) for size in sizes or kernel.sizes]
        print(table(rows), end="\n\n", flush=True)


def row_from(stored: dict[str, Any]) -> Row:
    """Return a row from what `dataclasses.asdict` made of it."""
    return Row(**stored)


def as_stored(row: Row) -> dict[str, Any]:
    """Return a row as plain values."""
    return dataclasses.asdict(row)
