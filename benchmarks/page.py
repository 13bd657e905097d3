"""The page docs/benchmarks.md, made from what was measured."""

from __future__ import annotations

import os
import platform
from importlib import metadata
from pathlib import Path
from typing import Any

from rows import MET, ratio_text, row_from, table

__all__ = ["kernel_text", "part_text", "text"]

_HEAD = """# Speed and memory, measured

Made by `benchmarks/run.py`, which anybody can run; times differ from machine to machine, ratios
less so. Ours and the peer take turns in one process, and each time is the median of the turns.
The peer is the best general way that was found to do the same, or a part of it. Both results are
compared before a row counts. `growth` is the exponent p of time ~ size^p since the row above.
Memory is the largest that a process of its own held which did the one thing once, its input
included; in brackets, how much the call itself put on top of that.
"""
_PACKAGES = ("numpy", "scipy", "manifold3d", "shapely", "spyrrow", "trimesh", "libigl", "embreex")


def text(kernels: list[dict[str, Any]], parts: list[dict[str, Any]]) -> str:
    """Return the whole page."""
    lines = [_HEAD, "## The machine\n", machine(), "", "## Against the peers\n"]
    lines += [_summary(kernels), *map(kernel_text, kernels), *map(part_text, parts)]
    return "\n".join(lines).rstrip() + "\n"


def machine() -> str:
    """Return what the machine is, in plain words, without names or paths."""
    cpu = Path("/proc/cpuinfo")
    models = [line.partition(":")[2].strip() for line in _lines(cpu) if "model name" in line]
    memory = [line.split()[1] for line in _lines(Path("/proc/meminfo")) if "MemTotal" in line]
    gigabytes = f"{int(memory[0]) / 2**20:.0f} GB of memory" if memory else "memory unknown"
    versions = []
    for package in _PACKAGES:
        try:
            versions.append(f"{package} {metadata.version(package)}")
        except metadata.PackageNotFoundError:
            versions.append(f"{package} not installed")
    return (
        f"{models[0] if models else platform.machine()}, {os.cpu_count()} cores, {gigabytes}, "
        f"{platform.system()}. Python {platform.python_version()}, {', '.join(versions)}."
    )


def _lines(path: Path) -> list[str]:
    return path.read_text(encoding="utf-8").splitlines() if path.is_file() else []


def _summary(kernels: list[dict[str, Any]]) -> str:
    lines = ["| what | size: our time over the peer's | target | met |", "|---|---|---|---|"]
    for kernel in kernels:
        rows = [row_from(stored) for stored in kernel["rows"]]
        sizes = "<br>".join(f"{row.size:,}: {ratio_text(row)}" for row in rows)
        met = [MET[row.met] for row in rows]
        said = "<br>".join(met) if len(set(met)) > 1 else "".join(met[:1]) or kernel["problem"]
        lines.append(f"| {kernel['title']} | {sizes} | {kernel['target']} | {said} |")
    return "\n".join(lines) + "\n"


def kernel_text(kernel: dict[str, Any]) -> str:
    """Return the section of one kernel; why it misses its target only where it does."""
    rows = [row_from(stored) for stored in kernel["rows"]]
    lines = [
        f"### {kernel['title']}\n",
        f"`{kernel['name']}`, sizes in {kernel['unit']}. Peer: {kernel['peer']}. "
        f"Target: {kernel['target']}.\n",
    ]
    if rows:
        lines.append(table(rows) + "\n")
    if kernel["missed"] and any(row.met is False for row in rows):
        lines.append(f"Why it is missed: {kernel['missed']}.\n")
    if kernel["problem"]:
        lines.append(f"{kernel['problem'].capitalize()}.\n")
    return "\n".join(lines)


def part_text(part: dict[str, Any]) -> str:
    """Return a part: a title, words, and tables with words of their own."""
    lines = [f"## {part['title']}\n", f"{part['words']}\n"]
    for one in part["tables"]:
        if one.get("title"):
            lines.append(f"### {one['title']}\n")
        if one.get("words"):
            lines.append(f"{one['words']}\n")
        if not one["rows"]:
            continue
        lines.append("| " + " | ".join(one["head"]) + " |")
        lines.append("|" + "---|" * len(one["head"]))
        lines += ["| " + " | ".join(row) + " |" for row in one["rows"]]
        lines.append("")
    return "\n".join(lines)
