"""Make every save of the core fail for a long time.

    PYTHONPATH=core:tests .venv/bin/python tools/fault_loop.py SECONDS

In turn: killed at every call that changes the disk; refused there by the system; interrupted
there; killed at random times while ``laywright run`` computes and writes; on a disk of a few
hundred KiB that is really full (where this machine lets a small disk be mounted); every stage
cancelled at every call of its progress.  Prints how often; ends with 1 at the first file that is
neither the old nor the new one.  Linux only.
"""

from __future__ import annotations

import contextlib
import dataclasses
import errno
import itertools
import os
import random
import signal
import subprocess
import sys
import tempfile
import time
from collections import Counter
from pathlib import Path

import faults
from job_demo import hatch
from laywright import values
from laywright.cloth.patterns.pattern import PatternSettings
from laywright.errors import Cancelled, LaywrightError
from laywright.files.stl import stl_bytes
from laywright.job import run

ROOT = Path(__file__).resolve().parent.parent
STAGES = ("release", "body", "tiles", "patterns", "roll")
REFUSALS = (errno.ENOSPC, errno.EACCES, errno.EROFS, errno.EDQUOT, errno.EIO)


def holds(save: faults.Save, folder: Path, old: dict, new: dict) -> None:
    """Fail where a file is neither the old nor the new one, or misleads."""
    mixed = faults.unmixed(faults.snapshot(folder), old, new)
    if mixed:
        raise AssertionError(f"neither old nor new: {mixed}")
    save.sound(folder)


def every_moment(folder: Path, counts: Counter) -> None:
    """Kill, refuse and interrupt each save at each of its moments."""

    def refused(number: int) -> None:
        raise OSError(number, os.strerror(number))

    def interrupted() -> None:
        raise KeyboardInterrupt

    for save in faults.SAVES.values():
        old, new = faults.before_and_after(save, folder)
        for number in itertools.count(1):
            faults.put_back(old, folder)
            if not faults.killed(lambda save=save: save.save(folder), number):
                break
            holds(save, folder, old, new)
            counts["killed at a moment"] += 1
        acts = [(f"refused, {errno.errorcode[n]}", lambda n=n: refused(n)) for n in REFUSALS]
        for what, act in [*acts, ("interrupted", interrupted)]:
            for number in itertools.count(1):
                faults.put_back(old, folder)
                moment = faults.Moment(number, act)
                with moment.watched(), contextlib.suppress(LaywrightError, KeyboardInterrupt):
                    save.save(folder)
                if not moment.reached:
                    break
                holds(save, folder, old, new)
                counts[what] += 1


def full_disk(folder: Path, counts: Counter) -> None:
    """Save onto a small disk with less and less room."""
    for name, save in faults.SAVES.items():
        old, new = faults.before_and_after(save, folder)
        for share in (0.0, 0.2, 0.5, 0.9, 0.99):
            faults.put_back(old, folder)
            room = os.statvfs(folder).f_bavail * os.statvfs(folder).f_bsize
            wanted = int(share * sum(map(len, new.values())))
            (folder.parent / "ballast").write_bytes(b"x" * max(room - wanted, 0))
            try:
                save.save(folder)
                counts["had room after all"] += 1
            except LaywrightError as problem:
                if "full disk" not in str(problem) or faults.snapshot(folder) != old:
                    raise AssertionError(f"{name}: {problem}") from problem
                counts["full disk"] += 1
            finally:
                (folder.parent / "ballast").unlink()
            holds(save, folder, old, new)


def on_a_small_disk(counts: Counter) -> None:
    """Run `full_disk` in a process that has mounted a small disk for itself alone."""
    with tempfile.TemporaryDirectory() as place:
        mounted = f"mount -t tmpfs -o size=24m tmpfs '{place}' && exec '{sys.executable}' "
        command = f"{mounted} '{__file__}' small '{place}'"
        done = subprocess.run(
            ["unshare", "--mount", "--propagation", "private", "sh", "-c", command],
            capture_output=True,
            text=True,
            check=False,
        )
    if done.returncode == 3:
        raise AssertionError(done.stdout)
    if done.returncode:
        counts["no small disk could be mounted"] += 1
        return
    for line in done.stdout.splitlines():
        count, what = line.split(maxsplit=1)
        counts[what] += int(count)


DESCRIPTION = """name = "Hatch"
[part]
mesh = "hatch.stl"
unit = "mm"
[layup]
resin = "Laminating epoxy, slow hardener"
plies = [{ cloth = "E-glass twill weave 200 g/m^2", angle = "0 deg" }]
[printer]
use = "Medium, 220 x 220 x 250 mm"
[mix]
scale_resolution_g = "0.1 g"
[roll]
seconds = "0 s"
[cure]
mould_softening_c = "70 degC"
"""


def robot(folder: Path, counts: Counter, chance: random.Random) -> None:
    """Kill ``laywright run`` at a random time over files of an earlier run."""
    faults.put_back({}, folder)
    surface = hatch().surface
    (folder / "hatch.stl").write_bytes(stl_bytes(surface.vertices, surface.triangles))
    (folder / "job.toml").write_text(DESCRIPTION, encoding="utf-8")
    command = [sys.executable, "-m", "laywright", "run", str(folder / "job.toml")]
    environment = {**os.environ, "PYTHONPATH": str(ROOT / "core")}
    begun = time.monotonic()
    subprocess.run(command, env=environment, check=True, capture_output=True)
    lasts = time.monotonic() - begun
    whole = faults.snapshot(folder)
    text = DESCRIPTION.replace('"Hatch"', '"Other"')
    (folder / "job.toml").write_text(text, encoding="utf-8")
    subprocess.run(command, env=environment, check=True, capture_output=True)
    other = faults.snapshot(folder)
    for _ in range(4):
        faults.put_back(whole | {"job.toml": text.encode()}, folder)
        child = subprocess.Popen(
            command, env=environment, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
        )
        # Half of the kills fall into the last tenth, in which the files are written.
        time.sleep(lasts * (chance.random() if chance.random() < 0.5 else chance.uniform(0.9, 1.1)))
        child.send_signal(signal.SIGKILL)
        child.wait()
        mixed = faults.unmixed(faults.snapshot(folder), whole, other)
        if mixed:
            raise AssertionError(f"laywright run: neither old nor new: {mixed}")
        counts["laywright run killed at a random time"] += 1


def cancelled(counts: Counter, end: float) -> None:
    """Stop every stage at every call of its progress."""
    job, whole = hatch(patterns=PatternSettings(triangles=600)), faults.small_job()
    for stage in STAGES:
        without = dataclasses.replace(whole, **{stage: None})
        shares: list[float] = []
        run(job, without, progress=lambda share, _="", /, *, told=shares: told.append(share))
        for wanted in shares:
            if time.monotonic() > end:
                break

            def stop(share: float, _: str = "", /, *, wanted: float = wanted) -> None:
                if share >= wanted:
                    raise Cancelled

            try:
                run(job, without, progress=stop)
                raise AssertionError(f"{stage} was not stopped at {wanted}")
            except Cancelled:
                counts[f"{stage} cancelled"] += 1
        again = run(job, without)
        if values.pack(getattr(again, stage)) != values.pack(getattr(whole, stage)):
            raise AssertionError(f"{stage} is another one after it was cancelled")


def show(counts: Counter) -> None:
    for what, count in sorted(counts.items()):
        print(f"{count:8} {what}", flush=True)


def main() -> int:
    counts: Counter = Counter()
    if sys.argv[1:2] == ["small"]:
        try:
            full_disk(Path(sys.argv[2]) / "chosen", counts)
        except AssertionError as problem:
            print(problem)
            return 3
        show(counts)
        return 0
    if len(sys.argv) != 2 or not sys.argv[1].isdigit():
        print(__doc__)
        return 2
    end = time.monotonic() + int(sys.argv[1])
    chance = random.Random(1)
    with tempfile.TemporaryDirectory() as home:
        folder = Path(home) / "chosen"
        try:
            while time.monotonic() < end:
                every_moment(folder, counts)
                on_a_small_disk(counts)
                robot(folder, counts, chance)
                cancelled(counts, end)
                counts["rounds"] += 1
        finally:
            show(counts)
    return 0


if __name__ == "__main__":
    sys.exit(main())
