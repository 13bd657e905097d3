"""A value of the core inside a document, in a property of its own."""

import tempfile
from pathlib import Path

from laywright import values
from laywright.archives import archive_entries
from laywright.errors import FileError

__all__ = ["check_value", "read_value", "store_value"]


def store_value(obj, name, value):
    """Keep a value in the property `name`, a FileIncluded: saved, copied and undone with it.

    Raises
    ------
    FileError
        If the disk that FreeCAD keeps open documents on has no room for it.
    """
    packed = values.pack(value)
    problem = "not all of it was kept"
    try:
        with tempfile.TemporaryDirectory() as folder:
            path = Path(folder) / f"{obj.Name}.{name}"
            path.write_bytes(packed)
            setattr(obj, name, str(path))
        whole = Path(getattr(obj, name)).stat().st_size == len(packed)
    except OSError as found:
        whole, problem = False, _reason(found)
    if not whole:
        raise FileError(
            _where(obj, name),
            f"a disk that takes no more ({problem})",
            f"{len(packed) / 2**20:.1f} MiB in the folder for temporary files, twice",
            "free some space and recompute",
        )


def read_value(obj, name, kind):
    """Return the value that the property `name` holds, None where it holds none.

    Raises
    ------
    FileError
        If it is damaged or has gone.
    """
    packed = _packed(obj, name)
    return None if packed is None else values.unpack(kind, packed, _where(obj, name))


def check_value(obj, name):
    """Raise a FileError if the property `name` holds an archive that is damaged or has gone."""
    packed = _packed(obj, name)
    if packed is not None:
        archive_entries(packed, _where(obj, name))


def _packed(obj, name):
    path = getattr(obj, name)
    if not path:
        return None
    try:
        return Path(path).read_bytes()
    except OSError as problem:
        raise FileError(
            _where(obj, name),
            f"nothing ({_reason(problem)})",
            "what was stored in the document",
            "recompute the object, or take an earlier copy of the document",
        ) from problem


def _reason(problem):
    """Return why the system refused; it does not always give words of its own."""
    return problem.strerror or str(problem) or type(problem).__name__


def _where(obj, name):
    return f"{obj.Label}, {name}"
