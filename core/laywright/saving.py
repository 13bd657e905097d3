"""Putting bytes on disk so that nothing is ever half written or lost.

A file is written beside its final place under another name, forced to the disk, and renamed.
Whatever goes wrong on the way, the file that was there before is still there, whole.  A program
that is killed in between leaves a file ending in ``.laywright-part``; nobody reads it, and the
next file that is written into that folder an hour later or more takes it away.
"""

from __future__ import annotations

import contextlib
import errno
import os
import re
import secrets
import shutil
import time
import tomllib
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path

from laywright.errors import FileError

__all__ = ["is_card_of", "made_folder", "own_place", "take_away", "write_all", "write_beside"]

_LEFT_OVER = re.compile(r"\..*\.[0-9a-f]{12}\.laywright-part", re.DOTALL)
_LEFT_OVER_SECONDS = 3600.0
_MOST_OF_ONE_NAME = 999


def write_beside(path: str | os.PathLike[str], content: bytes) -> None:
    """Write `content` to `path`, all or nothing.

    Parameters
    ----------
    path : path
        Where the file shall stand; an old file there is replaced in one step.
    content : bytes
        The whole file.

    Raises
    ------
    FileError
        If the folder is missing, may not be written to, or the disk is full; the old file, if
        any, is unchanged then.
    """
    write_all([(path, content)])


def write_all(files: Iterable[tuple[str | os.PathLike[str], bytes]]) -> None:
    """Write several files; all are on the disk, beside their places, before one is replaced.

    So a disk that fills up, a folder that may not be written to and a stop while the contents
    are written leave every old file as it was.  What may still fail is one of the renamings at
    the end: those before it have taken place then, in the order of `files`.

    Parameters
    ----------
    files : iterable of (path, bytes)
        Where each shall stand, and the whole of it.

    Raises
    ------
    FileError
        As for `write_beside`; the message names the file.
    """
    ready: list[tuple[str, Path, Path]] = []
    try:
        for path, content in files:
            where = os.fspath(path)
            with _explained(where):
                ready.append((where, *_places(where)))
                _write_through(ready[-1][1], content, ready[-1][2])
        for where, beside, target in ready:
            with _explained(where):
                os.replace(beside, target)
    finally:
        for _, beside, _ in ready:
            with contextlib.suppress(OSError):
                beside.unlink(missing_ok=True)


def _places(path: str) -> tuple[Path, Path]:
    """Return where a file is written first and where it goes, links followed."""
    target = Path(os.path.realpath(path))
    if target.is_dir():
        raise FileError(path, "a folder of that name", "a file name", "choose another name")
    _take_away_left_overs(target.parent)
    start = target.name[:40]
    return target.with_name(f".{start}.{secrets.token_hex(6)}.laywright-part"), target


def _take_away_left_overs(folder: Path) -> None:
    """Remove what a killed program left here, if it is too old to be still written to."""
    long_ago = time.time() - _LEFT_OVER_SECONDS
    with contextlib.suppress(OSError), os.scandir(folder) as entries:
        for entry in entries:
            if _LEFT_OVER.fullmatch(entry.name) and entry.stat().st_mtime < long_ago:
                os.unlink(entry.path)


def _write_through(beside: Path, content: bytes, target: Path) -> None:
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)
    with os.fdopen(os.open(beside, flags, 0o666), "wb") as file:
        file.write(content)
        file.flush()
        os.fsync(file.fileno())
    if target.exists():
        with contextlib.suppress(OSError):
            shutil.copymode(target, beside)


def made_folder(folder: str | os.PathLike[str]) -> Path:
    """Return a folder, made with those above it where it is not there.

    Raises
    ------
    FileError
        If it cannot be made.
    """
    with _explained(os.fspath(folder)):
        try:
            Path(folder).mkdir(parents=True, exist_ok=True)
        except FileExistsError:
            raise FileError(
                os.fspath(folder), "a file of that name", "a folder", "choose another"
            ) from None
    return Path(folder)


def take_away(path: Path) -> None:
    """Remove a file; there is no harm where it has gone already.

    Raises
    ------
    FileError
        If it may not be removed.
    """
    with _explained(str(path)):
        path.unlink(missing_ok=True)


def own_place(folder: Path, stem: str, ending: str, mine: Callable[[bytes], bool]) -> Path:
    """Return where a file of one's own belongs, no other file being in the way.

    Parameters
    ----------
    folder : Path
    stem, ending : str
        The name that is wanted, such as ``"cloth twill"`` and ``".toml"``.
    mine : callable
        Whether a content found under that name is of the same thing and may be replaced.

    Returns
    -------
    Path
        ``"stem.toml"``, or ``"stem 2.toml"`` and so on where others hold that name.

    Raises
    ------
    FileError
        If the folder cannot be read, or 999 others are there.
    """
    for number in range(1, _MOST_OF_ONE_NAME + 1):
        path = folder / (f"{stem}{ending}" if number == 1 else f"{stem} {number}{ending}")
        with _explained(str(path)):
            if not path.exists() or mine(path.read_bytes()):
                return path
    raise FileError(
        str(folder), f"{_MOST_OF_ONE_NAME} files named {stem}", "room for one more", "tidy it up"
    )


def is_card_of(name: str, content: bytes) -> bool:
    """Return whether a content is the card, in TOML, of the thing of that name.

    Examples
    --------
    >>> is_card_of("twill", b'name = "twill"'), is_card_of("twill", b"some notes")
    (True, False)
    """
    try:
        return bool(tomllib.loads(content.decode()).get("name") == name)
    except (UnicodeDecodeError, tomllib.TOMLDecodeError):
        return False


@contextlib.contextmanager
def _explained(where: str) -> Iterator[None]:
    """Raise what the system says about a file as one sentence."""
    try:
        yield
    except FileError:
        raise
    except OSError as problem:
        raise _sentence(where, problem) from problem


def _sentence(where: str, problem: OSError) -> FileError:
    """Return what the system says as what was found, what is needed and what to do."""
    if problem.errno in (errno.ENOENT, errno.ENOTDIR):
        return FileError(
            where, "no such folder", "a folder that exists", "make the folder or choose another"
        )
    if problem.errno in (errno.EACCES, errno.EPERM, errno.EROFS):
        return FileError(
            where,
            "a folder or file that may not be written to",
            "permission to write",
            "choose another folder, or close the program that holds the file open",
        )
    if problem.errno in (errno.ENOSPC, errno.EDQUOT):
        return FileError(
            where, "a full disk", "room for the file", "free some space; the old file is unchanged"
        )
    if problem.errno == errno.EFBIG:
        return FileError(
            where,
            "a file larger than this disk takes",
            "a disk or folder for larger files",
            "choose another folder; the old file is unchanged",
        )
    if problem.errno == errno.ENAMETOOLONG:
        return FileError(
            where,
            "a name that is too long for this disk",
            "a shorter one",
            "choose another name",
        )
    return FileError(
        where,
        f"a failure while writing ({problem.strerror or type(problem).__name__})",
        "a folder that can be written to",
        "try again or choose another folder; the old file is unchanged",
    )
