"""Zip archives that somebody else may have made: nothing bursts, nothing points elsewhere.

Entries are read into memory by name and never unpacked into a folder.  Before the first byte is
read, the archive's own list of contents is held against the limits here.
"""

from __future__ import annotations

import io
import stat
import zipfile
from pathlib import PurePosixPath

from laywright.errors import FileError

__all__ = ["archive_entries"]

_MOST_ENTRIES = 10_000
_MOST_BYTES = 8 << 30
_ALWAYS_BYTES = 256 << 20
_MOST_SQUEEZED = 100
_DOCTYPES = tuple("<!DOCTYPE".encode(code) for code in ("utf-8", "utf-16-le", "utf-16-be"))
_XML = (".xml", ".model", ".rels")


def archive_entries(packed: bytes, where: str) -> dict[str, bytes]:
    """Return the content of every entry of a zip archive.

    Parameters
    ----------
    packed : bytes
        The archive.
    where : str
        What to call it in an error.

    Returns
    -------
    dict of str to bytes
        By name, in the archive's order; folders are left out.

    Raises
    ------
    FileError
        If it is no whole zip archive; holds more than 10,000 entries or more than 8 GiB; holds
        more than 256 MiB squeezed to less than a hundredth; names a place outside itself, a
        link, or one name twice; is encrypted; or has an XML part that declares a document type
        (which may define entities).
    """
    try:
        with zipfile.ZipFile(io.BytesIO(packed)) as archive:
            entries = archive.infolist()
            fault = _fault(entries, len(packed))
            content = {}
            if not fault:
                content = {e.filename: archive.read(e) for e in entries if not e.is_dir()}
                fault = _document_type(content)
    except Exception as problem:
        fault = f"an archive that cannot be read ({type(problem).__name__})"
    if fault:
        raise FileError(where, fault, "a plain zip archive", "make it again in its own program")
    return content


def _fault(entries: list[zipfile.ZipInfo], size: int) -> str:
    if len(entries) > _MOST_ENTRIES:
        return f"an archive of {len(entries)} entries"
    total = sum(entry.file_size for entry in entries)
    if total > _MOST_BYTES or (total > _ALWAYS_BYTES and total > _MOST_SQUEEZED * size):
        return f"an archive of {size / 2**20:.1f} MiB that unpacks to {total / 2**20:.0f} MiB"
    names = set()
    for entry in entries:
        name = PurePosixPath(entry.filename.replace("\\", "/"))
        if name.is_absolute() or ".." in name.parts or ":" in entry.filename:
            return f"an entry '{entry.filename}' outside the archive"
        if stat.S_ISLNK(entry.external_attr >> 16):
            return f"an entry '{entry.filename}' that is a link"
        if entry.flag_bits & 1:
            return f"an encrypted entry '{entry.filename}'"
        if entry.filename in names:
            return f"two entries '{entry.filename}'"
        names.add(entry.filename)
    return ""


def _document_type(content: dict[str, bytes]) -> str:
    for name, data in content.items():
        if name.lower().endswith(_XML) and any(mark in data for mark in _DOCTYPES):
            return f"a document type in '{name}'"
    return ""
