"""A value of the core inside a document, in a property of its own."""

import tempfile
from pathlib import Path

from laywright import values

__all__ = ["read_value", "store_value"]


def store_value(obj, name, value):
    """Keep a value in the property `name`, a FileIncluded: saved, copied and undone with it."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / f"{obj.Name}.{name}"
        path.write_bytes(values.pack(value))
        setattr(obj, name, str(path))


def read_value(obj, name, kind):
    """Return the value that the property `name` holds, None where there is none."""
    path = getattr(obj, name)
    if not path or not Path(path).is_file():
        return None
    return values.unpack(kind, Path(path).read_bytes(), f"{obj.Label}, {name}")
