"""Putting bytes on disk so that nothing is ever half written or lost.

A file is written beside its final place under another name, forced to the disk, and renamed.
Whatever goes wrong on the way, the file that was there before is still there, whole.
"""

from __future__ import annotations

import contextlib
import errno
import os
import re
import secrets
import shutil
import unicodedata
from collections.abc import Sequence
from pathlib import Path

from laywright.errors import FileError

__all__ = ["place_inside", "safe_name", "safe_names", "write_beside"]

_LONGEST_NAME = 80
_RESERVED = re.compile(r"(con|prn|aux|nul|com\d|lpt\d)(\..*)?", re.IGNORECASE)


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
    target = Path(os.path.realpath(path))
    if target.is_dir():
        raise FileError(str(path), "a folder of that name", "a file name", "choose another name")
    beside = target.with_name(f".{target.name[:40]}.{secrets.token_hex(6)}.part")
    try:
        _write_through(beside, content)
        if target.exists():
            with contextlib.suppress(OSError):
                shutil.copymode(target, beside)
        os.replace(beside, target)
    except OSError as problem:
        raise _explained(path, problem) from problem
    finally:
        with contextlib.suppress(OSError):
            beside.unlink(missing_ok=True)


def _write_through(path: Path, content: bytes) -> None:
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)
    with os.fdopen(os.open(path, flags, 0o666), "wb") as file:
        file.write(content)
        file.flush()
        os.fsync(file.fileno())


def _explained(path: str | os.PathLike[str], problem: OSError) -> FileError:
    where = os.fspath(path)
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
    return FileError(
        where,
        f"a failure while writing ({problem.strerror or type(problem).__name__})",
        "a folder that can be written to",
        "try again or choose another folder; the old file is unchanged",
    )


def safe_name(text: str) -> str:
    """Return `text` as a file name that every system takes and that leaves no folder.

    Letters, digits, blanks, ``-``, ``_`` and ``.`` stay; all else becomes ``_``.

    Examples
    --------
    >>> safe_name("../tile 1/2: left"), safe_name("con"), safe_name("...")
    ('_tile 1_2_ left', 'con_', 'unnamed')
    """
    composed = unicodedata.normalize("NFC", text)
    kept = "".join(c if c.isalnum() or c in " -_." else "_" for c in composed)
    name = kept[:_LONGEST_NAME].lstrip(" .").rstrip(" .")
    if _RESERVED.fullmatch(name):
        name = f"{name}_"
    return name or "unnamed"


def safe_names(texts: Sequence[str]) -> tuple[str, ...]:
    """Return a safe name for each text, no two alike even where capitals do not count.

    Examples
    --------
    >>> safe_names(["cowl/1", "cowl:1", "COWL_1"])
    ('cowl_1', 'cowl_1-2', 'COWL_1-3')
    """
    taken: set[str] = set()
    names = []
    for text in texts:
        first = name = safe_name(text)
        count = 1
        while name.casefold() in taken:
            count += 1
            name = f"{first}-{count}"
        taken.add(name.casefold())
        names.append(name)
    return tuple(names)


def place_inside(folder: str | os.PathLike[str], text: str, ending: str) -> Path:
    """Return the path of an export named after `text`, always directly inside `folder`.

    Parameters
    ----------
    folder : path
        The folder that the person chose.
    text : str
        Name of the thing, as its owner typed it.
    ending : str
        For example ``".stl"``.

    Examples
    --------
    >>> place_inside("exports", "../../etc/tile", ".3mf").as_posix()
    'exports/_.._etc_tile.3mf'
    """
    return Path(folder) / f"{safe_name(text)}{ending}"
