"""Every benchmark, ours and the peer in turn: .venv/bin/python benchmarks/run.py [NAME ...]

    run.py                        everything; writes docs/benchmarks.md
    run.py draft tiles            these kernels, printed only
    run.py --sizes 10000 draft    of these sizes
    run.py --quick                every kernel at sizes that take seconds, printed only
    run.py --list                 the names
    run.py job                    a whole job after a dimension edit
    run.py scale                  very large inputs
    run.py --page draft           written into the page beside what an earlier run found

Each measurement is a process of its own, one after the other.  What the peers need beside the
packages of the tests stands in tools/requirements-bench.txt:

    .venv/bin/pip install --no-deps --target results/peers -r tools/requirements-bench.txt
"""

from __future__ import annotations

import argparse
import json
import sys
import time
from pathlib import Path
from typing import Any

import page
from children import ROOT, NotHere, ask
from rows import Row, row_from

MODULES = (
    "mould",
    "tiles",
    "offset",
    "drape",
    "roll",
    "laminates",
    "writers",
    "bridge",
    "startup",
)
PARTS = ("job", "scale")
STORE = ROOT / "results" / "benchmarks.json"


def main(arguments: list[str] | None = None) -> int:
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("names", nargs="*", metavar="NAME")
    parser.add_argument("--sizes", nargs="+", type=int, metavar="N", help="sizes to measure")
    parser.add_argument("--quick", action="store_true", help="sizes that take seconds")
    parser.add_argument("--no-memory", action="store_true", help="times only")
    parser.add_argument("--page", action="store_true", help="write the page, earlier rows kept")
    parser.add_argument("--list", action="store_true", help="say the names and end")
    chosen = parser.parse_args(arguments)
    every = {k["name"]: (module, k) for module in MODULES for k in ask(["describe", module])}
    if chosen.list:
        for name, (_, kernel) in every.items():
            print(f"{name:<16}{kernel['title']}")
        return 0
    unknown = [name for name in chosen.names if name not in every and name not in PARTS]
    if unknown:
        known = ", ".join((*every, *PARTS))
        print(f"run.py: found {', '.join(unknown)}, needed some of {known}.", file=sys.stderr)
        return 2
    whole = not (chosen.names or chosen.sizes or chosen.quick)
    begin = time.monotonic()
    wanted = chosen.names or ([*every] if chosen.quick or chosen.sizes else [*every, *PARTS])
    kept = whole or chosen.page
    found: dict[str, Any] = {}
    if chosen.page and not whole and STORE.is_file():
        found = json.loads(STORE.read_text(encoding="utf-8"))
    for name in wanted:
        _say(f"-- {name}")
        if name in PARTS:
            found[name] = _part(name)
            print(page.part_text(found[name]), flush=True)
        else:
            module, kernel = every[name]
            sizes = chosen.sizes or kernel["quick" if chosen.quick else "sizes"]
            measured, problem = _kernel(module, kernel, sizes, not chosen.no_memory)
            found[name] = {**kernel, "problem": problem, "rows": [vars(row) for row in measured]}
            print(page.kernel_text(found[name]), flush=True)
        if kept:
            _write(STORE, json.dumps(found, indent=1))
    _say(f"{(time.monotonic() - begin) / 60.0:.0f} min in all")
    if kept:
        kernels = [found[name] for name in every if name in found]
        parts = [found[name] for name in PARTS if name in found]
        _write(ROOT / "docs" / "benchmarks.md", page.text(kernels, parts))
    return 0


def _kernel(
    module: str, kernel: dict[str, Any], sizes: list[int], memory: bool
) -> tuple[list[Row], str]:
    """Return the rows of a kernel and why there are no more, where something is missing."""
    measured: list[Row] = []
    for size in sizes:
        task = [module, kernel["name"], str(size)]
        try:
            row = row_from(ask(["measure", *task], kernel["inside"]))
            if memory:
                row.ours_peak, row.ours_added = ask(["peak", *task, "ours"], kernel["inside"])
                if row.peer is not None:
                    row.peer_peak, row.peer_added = ask(["peak", *task, "peer"], kernel["inside"])
        except (NotHere, RuntimeError) as problem:
            _say(str(problem))
            return measured, str(problem).splitlines()[0]
        _say(f"   {row.size:,} {kernel['unit']}: {row.ours:.3g} s, ratio {row.ratio or 0.0:.2f}")
        measured.append(row)
    return measured, ""


def _part(name: str) -> dict[str, Any]:
    """Return the tables of a part that is more than a kernel."""
    module = __import__({"job": "whole_job", "scale": "scale"}[name])
    return module.tables(_say)


def _say(words: str) -> None:
    print(words, file=sys.stderr, flush=True)


def _write(path: Path, content: str) -> None:
    """Write a file beside its place and rename it: the old one or the new one, never half."""
    path.parent.mkdir(parents=True, exist_ok=True)
    beside = path.with_name(path.name + ".new")
    beside.write_text(content, encoding="utf-8")
    beside.replace(path)


if __name__ == "__main__":
    sys.exit(main())
