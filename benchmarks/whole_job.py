"""A whole job after a dimension edit, in FreeCAD: python benchmarks/run.py job

The three examples that are drawn in FreeCAD are built and computed; then one dimension is
changed.  Each stage object tells its seconds, once with the results of unchanged stages kept
and once with every result forgotten.  Meanwhile `perf`, where it is installed (Debian package
linux-perf), notes 499 times a second in which library the processor is: kernels are compiled
code of packages that compute, the rest of Python is glue, and the C library and the system
mostly move and clear the kernels' memory.
"""

from __future__ import annotations

import bisect
import contextlib
import dataclasses
import importlib
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import rows  # noqa: F401  # the core stands on the path
from children import ROOT, tables_of

# module, name of the part, edit, largest distance between faces and triangles
EXAMPLES = {
    "hatch_cover": ("HatchCover", "length", "440 mm", "0.05 mm"),
    "sensor_cowl": ("SensorCowl", "height", "48 mm", "0.05 mm"),
    "battery_tray": ("BatteryTray", "length", "230 mm", "0.1 mm"),
}
_RATE = 499
_SYSTEM = ("kernel", "libc.", "libc-", "ld-linux", "libstdc++", "libgcc", "vdso", "libpthread")
_READY = 1.5  # s until perf has attached


def tables(say):
    """Return what the page shows; every example in a FreeCAD of its own."""
    return {
        "title": "A whole job after a dimension edit",
        "words": "In FreeCAD without its window; the roll is placed without a search, whose time "
        "the maker sets. *kept*: after the edit, results of unchanged stages kept; *afresh*: the "
        "same with every result forgotten. The shares are "
        "of the time afresh: *kernels* is compiled code that computes (numpy, scipy, manifold3d, "
        "shapely, FreeCAD's geometry), *memory* the C library and the system, which move and "
        "clear what the kernels work on, *glue* the Python interpreter.",
        "tables": tables_of("whole_job", EXAMPLES, "FreeCAD", say),
    }


def hatch_cover():
    return edited("hatch_cover")


def sensor_cowl():
    return edited("sensor_cowl")


def battery_tray():
    return edited("battery_tray")


def edited(name):
    """Compute an example, edit it, and return its table; inside FreeCAD."""
    sys.path.append(str(ROOT / "examples"))
    from drawn_parts import set_dimension

    from freecad.laywright.objects.job import make_job, stages_of

    module = importlib.import_module(name)
    spans = watched()  # before any object: FreeCAD keeps the methods that it finds
    part_name, dimension, value, chord = EXAMPLES[name]
    document = module.build()
    part = document.getObject(part_name)
    stages = stages_of(make_job(part, module.moulded_faces(part.Shape), part.Label))
    stages["MouldedFace"].LargestChord = chord
    stages["RollPlan"].SearchTime = 0.0
    stages["MixCurePlan"].ScaleStep = 0.1
    document.recompute()
    spans.clear()
    kept_from = time.monotonic()
    set_dimension(document, dimension, value)
    kept, kept_whole = dict(spans), time.monotonic() - kept_from
    spans.clear()
    for obj in stages.values():
        forget(obj)
    with sampled() as samples:
        afresh_from = time.monotonic()
        document.recompute()
        afresh_whole = time.monotonic() - afresh_from
    late = [f"{obj.Label} ({obj.Status})" for obj in stages.values() if obj.Status != "up to date"]
    lines = []
    for obj in stages.values():
        if obj.Label not in spans:
            continue
        start, end = spans[obj.Label]
        before = kept.get(obj.Label)
        was = "" if before is None else f"{before[1] - before[0]:.2f}"
        lines.append([obj.Label, was, f"{end - start:.2f}", *shares(samples, start, end)])
    whole = shares(samples, afresh_from, afresh_from + afresh_whole)
    lines.append(["all", f"{kept_whole:.2f}", f"{afresh_whole:.2f}", *whole])
    named = dimension.replace("_", " ").capitalize()
    words = f"{named} set to {value}; triangles within {chord} of the faces."
    if late:
        words += f" Not computed: {', '.join(late)}."
    return {
        "title": part.Label,
        "words": words,
        "head": ["stage", "kept s", "afresh s", "kernels", "memory", "glue"],
        "rows": lines,
    }


def forget(obj):
    """Let a stage object hold a result of other inputs."""
    kept = obj.Proxy.kept(obj)
    if kept is not None:
        obj.Proxy._kept = dataclasses.replace(kept, digest="other")
        obj.Digest = "other"
    if "KnownShape" in obj.PropertiesList:
        obj.KnownShape = ""
        obj.Proxy._meshed = None
    obj.touch()


def watched():
    """Return a dict in which every stage object that computes leaves its start and end, s."""
    from freecad.laywright.objects.base import StageObject

    spans = {}
    execute = StageObject.execute

    def timed(proxy, obj):
        start = time.monotonic()
        try:
            execute(proxy, obj)
        finally:
            spans[obj.Label] = (start, time.monotonic())

    StageObject.execute = timed
    return spans


@contextlib.contextmanager
def sampled():
    """Give a list that holds, at the end, when the processor was where: (s, kind), in order."""
    found = []
    perf = shutil.which("perf")
    if perf is None:
        yield found
        return
    with tempfile.TemporaryDirectory() as folder:
        kept = Path(folder) / "samples"
        command = f"{perf} record -e cpu-clock -F {_RATE} -k CLOCK_MONOTONIC -o {kept} -p"
        with open("/proc/self/stat", encoding="ascii") as own:
            pid = own.read().split()[0]
        watcher = subprocess.Popen(
            [*command.split(), pid], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
        )
        time.sleep(_READY)
        try:
            yield found
        finally:
            watcher.send_signal(signal.SIGINT)
            watcher.wait()
        told = subprocess.run(
            [perf, "script", "-i", str(kept), "-F", "time,ip,dso"],
            capture_output=True,
            text=True,
            check=False,
        ).stdout
    for line in told.splitlines():
        when, _, place = line.strip().partition(":")
        with contextlib.suppress(ValueError):
            found.append((float(when), kind_of(place)))
    found.sort()


def kind_of(place):
    """Return what a place in memory is part of, by the file that it was loaded from."""
    library = place[place.rfind("(") + 1 :].rsplit("/", 1)[-1].lower()
    if any(word in library for word in _SYSTEM):
        return "memory"
    bare = library.startswith(("python3", "libpython"))
    return "glue" if bare or library.split(".cpython")[0] in _STANDARD else "kernels"


_STANDARD = ("_json", "_pickle", "_struct", "_datetime", "_elementtree", "_decimal", "unknown])")


def shares(samples, start, end):
    """Return the shares of kernels, memory and glue between two moments as text."""
    first = bisect.bisect_left(samples, (start, ""))
    kinds = [kind for _, kind in samples[first : bisect.bisect_right(samples, (end, "~"))]]
    if len(kinds) < _RATE // 20:
        return ["", "", ""]
    return [f"{kinds.count(kind) / len(kinds):.0%}" for kind in ("kernels", "memory", "glue")]
