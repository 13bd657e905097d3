"""Every save of the core, and ways to make it fail at a chosen moment, for tests and tools.

A moment is one call that changes the disk: opening, a third of a writing, forcing to the disk,
renaming, removing, making a folder.  The process that dies is a fork of this one (Linux only).
"""

from __future__ import annotations

import contextlib
import dataclasses
import hashlib
import io
import json
import os
import resource
import shutil
import signal
import tempfile
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from job_demo import hatch
from laywright.cloth.patterns.pattern import PatternSettings
from laywright.errors import LaywrightError
from laywright.job import JobResult, files_of, freshness, run, write_files
from laywright.job.records import RecordFile, read_records, write_record
from laywright.laminate.card_files import Card, card_text, corrected
from laywright.laminate.materials import Materials, gather_cards, load_materials
from laywright.laminate.own_cards import drop_card, keep_card
from laywright.mould.tiles.printer import Printer, load_printers, save_printer
from laywright.saving import write_beside

__all__ = [
    "SAVES",
    "Moment",
    "Save",
    "before_and_after",
    "killed",
    "left_over",
    "limited",
    "put_back",
    "small_job",
    "snapshot",
    "unmixed",
]

_SEED = Path(__file__).parent / "seeds" / "record" / "whole.json"
_GONE = "mould/tile Z9 (mm).stl"
_TWILL = "Carbon twill weave 200 g/m^2"
_NOBODY = 65534


@dataclass(frozen=True)
class Save:
    """One way in which files come onto the disk.

    Attributes
    ----------
    old : callable
        Puts into a folder what stands there before.
    save : callable
        Writes the new files into the folder.
    sound : callable
        Fails where a reader would be misled by what is in the folder.
    """

    old: Callable[[Path], object]
    save: Callable[[Path], object]
    sound: Callable[[Path], object]


@cache
def small_job() -> JobResult:
    """Return a whole job, coarse and quick."""
    return run(hatch(patterns=PatternSettings(triangles=600)))


def _hatch(name: str) -> JobResult:
    sheet = dataclasses.replace(small_job().sheet, digest=f"{name} 12345678")
    return dataclasses.replace(small_job(), name=name, sheet=sheet)


@cache
def _new_files() -> dict[str, bytes]:
    return _of_each_kind(files_of(_hatch("New hatch")))


@cache
def _old_files() -> dict[str, bytes]:
    """Return the files of a job of another name, with a tile that the new one does not have."""
    files = _of_each_kind(files_of(_hatch("Old hatch")))
    record = json.loads(files.pop("job.json"))
    files[_GONE] = b"old"
    record["files"][_GONE] = hashlib.sha256(b"old").hexdigest()
    return files | {"job.json": json.dumps(record).encode()}


def _of_each_kind(files: dict[str, bytes]) -> dict[str, bytes]:
    """Return the smallest file of each kind, the record among them."""
    by_size = sorted(files.items(), key=lambda entry: -len(entry[1]))
    return dict({Path(path).suffix: (path, content) for path, content in by_size}.values())


def _files_are_told_apart(folder: Path) -> None:
    """Files that are said to be up to date are all of that job."""
    for name, files in (("Old hatch", _old_files), ("New hatch", _new_files)):
        if freshness(folder, _hatch(name).digests) == ():
            assert snapshot(folder).items() >= files().items()


@cache
def _library() -> Materials:
    return load_materials()


def _twill(weight: float) -> Card:
    return corrected(_library().cards[_TWILL], "areal_weight", weight, "g/m^2", "invented")


def _cards_load(folder: Path) -> None:
    weights = {card.values["areal_weight"].value for card in gather_cards(folder).values()}
    assert weights <= {210.0, 240.0}


def _card_of_any_name(folder: Path) -> None:
    (folder / "my cloth.toml").write_text(card_text(_twill(210.0)), encoding="utf-8")


def _keep(folder: Path) -> None:
    keep_card(_twill(240.0), folder, _library())


def _printer(walls: int) -> Printer:
    return Printer("Mine", (200.0, 180.0, 210.0), walls=walls)


def _printers_load(folder: Path) -> None:
    assert load_printers(folder).get("Mine", _printer(2)).walls in (2, 3)


@cache
def _record() -> RecordFile:
    with tempfile.TemporaryDirectory() as folder:
        shutil.copy(_SEED, Path(folder) / "weigh-in whole.json")
        return read_records(Path(folder))[0]


def _records_load(folder: Path) -> None:
    assert all(entry.job == _record().job for entry in read_records(folder))


SAVES = {
    "files of a job": Save(
        lambda folder: write_files(_old_files(), folder),
        lambda folder: write_files(_new_files(), folder),
        _files_are_told_apart,
    ),
    "first files of a job": Save(
        lambda folder: None,
        lambda folder: write_files(_new_files(), folder),
        _files_are_told_apart,
    ),
    "new card": Save(lambda folder: None, _keep, _cards_load),
    "card in place of one": Save(_card_of_any_name, _keep, _cards_load),
    "card taken away": Save(
        _card_of_any_name, lambda folder: drop_card(_TWILL, folder), _cards_load
    ),
    "card given away": Save(
        lambda folder: write_beside(folder / "card.toml", b"old"),
        lambda folder: write_beside(folder / "card.toml", card_text(_twill(240.0)).encode()),
        lambda folder: None,
    ),
    "printer": Save(
        lambda folder: save_printer(_printer(2), folder),
        lambda folder: save_printer(_printer(3), folder),
        _printers_load,
    ),
    "record": Save(
        lambda folder: write_record(_record(), folder),
        lambda folder: write_record(dataclasses.replace(_record(), version="other"), folder),
        _records_load,
    ),
}


def left_over(name: str) -> bool:
    """Return whether a file is what a killed program left, by its name."""
    return name.endswith(".laywright-part")


def snapshot(folder: Path) -> dict[str, bytes]:
    """Return the content of every file below a folder but for left-overs."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in folder.rglob("*")
        if path.is_file() and not left_over(path.name)
    }


def before_and_after(save: Save, folder: Path) -> tuple[dict[str, bytes], dict[str, bytes]]:
    """Return what stands in a folder before and after a save, and leave it as after."""
    put_back({}, folder)
    save.old(folder)
    old = snapshot(folder)
    save.save(folder)
    return old, snapshot(folder)


def put_back(files: dict[str, bytes], folder: Path) -> None:
    """Make the folder hold these files and nothing else."""
    if folder.exists():
        shutil.rmtree(folder)
    folder.mkdir(parents=True)
    for name, content in files.items():
        (folder / name).parent.mkdir(exist_ok=True)
        (folder / name).write_bytes(content)


def unmixed(now: dict[str, bytes], old: dict[str, bytes], new: dict[str, bytes]) -> list[str]:
    """Return the files that are neither the old nor the new one.

    The record of a job's files says so while they take their places; what it says is looked at
    by `Save.sound`.
    """
    return [
        name
        for name in {*now, *old, *new}
        if now.get(name) not in (old.get(name), new.get(name)) and Path(name).name != "job.json"
    ]


class Moment:
    """The n-th call that changes the disk: what happens there instead of it.

    Attributes
    ----------
    reached : bool
        Whether there were as many calls.
    at_removal : bool
        Whether it was the removal of a file.
    replaced : bool
        Whether a file had taken its place before.
    """

    def __init__(self, number: int, act: Callable[[], object]) -> None:
        self._left = number
        self._act = act
        self.reached = self.at_removal = self.replaced = False

    def _step(self, name: str) -> None:
        self._left -= 1
        if self._left == 0:
            self.reached, self.at_removal = True, name in ("unlink", "remove")
            self._act()

    @contextlib.contextmanager
    def watched(self) -> Iterator[Moment]:
        """Count the calls of this process as long as it lasts."""
        names = ("open", "fsync", "replace", "rename", "unlink", "remove", "mkdir")
        real = {name: getattr(os, name) for name in names}
        opened, made = os.fdopen, io.open

        def counted(name: str) -> Callable[..., object]:
            def call(*arguments: object, **named: object) -> object:
                self._step(name)
                if name == "fsync":  # nobody pulls the plug here, and it takes long
                    return None
                result = real[name](*arguments, **named)
                self.replaced |= name in ("replace", "rename")
                return result

            return call

        def open_file(file: object, mode: str = "r", *arguments: object, **named: object) -> object:
            if not set(mode) & set("wxa+"):
                return made(file, mode, *arguments, **named)
            self._step("open")
            return _Slowly(made(file, mode, *arguments, **named), self._step)

        for name in names:
            setattr(os, name, counted(name))
        os.fdopen = lambda *a, **k: _Slowly(opened(*a, **k), self._step)
        io.open = open_file
        try:
            yield self
        finally:
            for name, function in real.items():
                setattr(os, name, function)
            os.fdopen, io.open = opened, made


class _Slowly:
    """A file whose every writing takes three moments."""

    def __init__(self, file: object, step: Callable[[str], None]) -> None:
        self._file, self._step = file, step

    def __getattr__(self, name: str) -> object:
        return getattr(self._file, name)

    def __enter__(self) -> _Slowly:
        return self

    def __exit__(self, *_: object) -> None:
        self._file.close()

    def write(self, content: bytes | str) -> int:
        third = len(content) // 3 + 1
        for start in range(0, len(content), third):
            self._step("write")
            self._file.write(content[start : start + third])
            self._file.flush()
        return len(content)


def killed(act: Callable[[], object], number: int) -> bool:
    """Run in a process that is killed at that moment; return whether it came to it."""
    child = os.fork()
    if child == 0:
        try:
            moment = Moment(number, lambda: os.kill(os.getpid(), signal.SIGKILL))
            with moment.watched(), contextlib.suppress(LaywrightError):
                act()
            os._exit(0)
        finally:
            os._exit(1)
    _, status = os.waitpid(child, 0)
    if os.WIFSIGNALED(status):
        return True
    assert os.WEXITSTATUS(status) == 0
    return False


def limited(
    act: Callable[[], object], *, largest_file: int | None = None, nobody: bool = False
) -> str:
    """Run in a process that may do less; return its one sentence, or nothing where it did it.

    Parameters
    ----------
    act : callable
    largest_file : int or None
        Bytes after which the system refuses to write on.
    nobody : bool
        Whether the process gives up the rights of root, where it has them.
    """
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        try:
            if largest_file is not None:
                resource.setrlimit(resource.RLIMIT_FSIZE, (largest_file, largest_file))
            if nobody and os.getuid() == 0:
                os.setgid(_NOBODY)
                os.setuid(_NOBODY)
            try:
                act()
            except LaywrightError as problem:
                os.write(writing, str(problem).encode())
            os._exit(0)
        finally:
            os._exit(1)
    os.close(writing)
    with os.fdopen(reading, "rb") as pipe:
        sentence = pipe.read().decode()
    _, status = os.waitpid(child, 0)
    assert os.waitstatus_to_exitcode(status) == 0
    return sentence
