"""Frozen values: what they hold as plain data, their digest, and their storage.

Every input and result of a stage is a frozen dataclass of numbers, texts, enums, tuples,
arrays and further such dataclasses.  This module turns any of them into a tree of plain data
plus the arrays beside it, and back.  The digest (are the inputs still the same?) and the
stored form (what does the document keep?) both come from that one tree.  Nothing stored is
ever executed: the archive holds JSON and ``.npy`` arrays without objects.
"""

from __future__ import annotations

import dataclasses
import hashlib
import io
import json
import math
import types
import zipfile
from enum import Enum
from functools import cache
from typing import Annotated, Any, TypeVar, Union, get_args, get_origin, get_type_hints

import numpy as np

from laywright.archives import archive_entries
from laywright.arrays import Array
from laywright.errors import FileError

__all__ = ["digest", "from_tree", "pack", "plain", "unpack"]

T = TypeVar("T")

_ARRAY = "$array"
_EPOCH = (1980, 1, 1, 0, 0, 0)
_DIGEST_DECIMALS = 7
_AS_THEY_ARE = frozenset((type(None), bool, int, float, str))


def plain(value: object) -> tuple[Any, list[Array]]:
    """Return `value` as a tree of plain data and the arrays that it refers to.

    Parameters
    ----------
    value : object
        A frozen dataclass, or a tuple or dict of such.

    Returns
    -------
    tree : object
        Dicts, lists, numbers, texts; an array is ``{"$array": index}``.
    arrays : list of numpy.ndarray
        The arrays, in the order of their indices.
    """
    arrays: list[Array] = []
    return _plain(value, arrays), arrays


def _plain(value: object, arrays: list[Array]) -> Any:
    kind: type = type(value)
    if kind in _AS_THEY_ARE:
        return value
    if isinstance(value, np.ndarray):
        arrays.append(value)
        return {_ARRAY: len(arrays) - 1}
    names = _field_names(kind)
    if names is not None:
        return {name: _plain(getattr(value, name), arrays) for name in names}
    if isinstance(value, (tuple, list)):
        return [_plain(item, arrays) for item in value]
    if isinstance(value, dict):
        return {str(key): _plain(item, arrays) for key, item in value.items()}
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, np.generic):
        return value.item()
    if isinstance(value, (int, float, str)):
        return value
    raise TypeError(f"a {kind.__name__} has no plain form")


@cache
def _field_names(kind: type) -> tuple[str, ...] | None:
    """Return the names of a dataclass's fields; None for any other kind of value."""
    if not dataclasses.is_dataclass(kind):
        return None
    return tuple(field.name for field in dataclasses.fields(kind))


def digest(*values: object) -> str:
    """Return a short text that changes when any of `values` does.

    A value that carries a ``digest`` of its own (the result of an earlier stage) stands by
    that digest.  Arrays of floats count to 1e-7 of their unit, so that noise in the last bits
    makes nothing out of date.

    Examples
    --------
    >>> digest(1.0, "glass") == digest(1.0, "glass"), digest(1.0) == digest(2.0)
    (True, False)
    """
    summary = hashlib.sha256()
    for value in values:
        carried = getattr(value, "digest", "")
        tree, arrays = (carried, []) if carried else plain(value)
        summary.update(json.dumps([type(value).__name__, tree], sort_keys=True).encode())
        for array in arrays:
            summary.update(f"{array.dtype.kind}{array.shape}".encode())
            rounded = np.round(array, _DIGEST_DECIMALS) + 0.0 if array.dtype.kind == "f" else array
            summary.update(np.ascontiguousarray(rounded).tobytes())
    return summary.hexdigest()[:16]


def from_tree(kind: type[T], tree: Any, arrays: list[Array] | None = None) -> T:
    """Return the value of type `kind` that `plain` made `tree` and `arrays` from.

    Raises
    ------
    TypeError, ValueError, KeyError
        If the tree does not fit the type.
    """
    value: T = _built(kind, tree, arrays or [])
    return value


def _built(kind: Any, tree: Any, arrays: list[Array]) -> Any:
    origin, inner = get_origin(kind), get_args(kind)
    if origin is Annotated:
        return _built(inner[0], tree, arrays)
    if origin in (Union, types.UnionType):
        return _first_that_fits(inner, tree, arrays)
    if kind is np.ndarray or origin is np.ndarray:
        array = arrays[tree[_ARRAY]]
        array.flags.writeable = False
        return array
    if kind is tuple or origin is tuple:
        if not isinstance(tree, list):
            raise TypeError(f"{tree!r} is no list")
        if not inner:
            return tuple(tree)
        kinds = inner[:1] * len(tree) if inner[-1] is Ellipsis else inner
        return tuple(_built(k, item, arrays) for k, item in zip(kinds, tree, strict=True))
    if kind is dict or origin is dict:
        return {key: _built(inner[1], item, arrays) for key, item in tree.items()}
    return _single(kind, tree, arrays)


def _single(kind: Any, tree: Any, arrays: list[Array]) -> Any:
    if isinstance(kind, type) and dataclasses.is_dataclass(kind):
        hints = _hints(kind)
        unknown = sorted(set(tree) - set(hints))
        if unknown:
            raise ValueError(f"{kind.__name__} has no field {unknown[0]!r}")
        return kind(**{name: _built(hints[name], item, arrays) for name, item in tree.items()})
    if isinstance(kind, type) and issubclass(kind, Enum):
        return kind(tree)
    if kind is float and isinstance(tree, int) and not isinstance(tree, bool):
        return float(tree)
    if not isinstance(tree, kind) or (isinstance(tree, bool) and kind is not bool):
        raise TypeError(f"{tree!r} is no {kind.__name__}")
    return tree


def _first_that_fits(kinds: tuple[Any, ...], tree: Any, arrays: list[Array]) -> Any:
    for kind in kinds:
        try:
            return _built(kind, tree, arrays)
        except (TypeError, ValueError, KeyError, AttributeError):
            continue
    raise TypeError(f"{tree!r} is none of {kinds}")


@cache
def _hints(kind: type) -> dict[str, Any]:
    return get_type_hints(kind, include_extras=True)


def pack(value: object) -> bytes:
    """Return `value` as one archive: the same value gives the same bytes.

    Arrays of one kind of number lie end to end in one entry, however many they are; their
    shapes stand beside the tree.

    See Also
    --------
    unpack : the way back.
    """
    tree, arrays = plain(value)
    shapes = [[array.dtype.str, *array.shape] for array in arrays]
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
        head = {"kind": type(value).__name__, "tree": tree, "arrays": shapes}
        archive.writestr(zipfile.ZipInfo("value.json", _EPOCH), json.dumps(head, sort_keys=True))
        for number, kind in enumerate(_kinds(shapes)):
            flat = np.concatenate([a.ravel() for a in arrays if a.dtype.str == kind])
            with io.BytesIO() as entry:
                np.lib.format.write_array(entry, flat, allow_pickle=False)
                archive.writestr(zipfile.ZipInfo(f"{number}.npy", _EPOCH), entry.getvalue())
    return buffer.getvalue()


def _kinds(shapes: list[list[Any]]) -> list[str]:
    """Return the kinds of numbers that arrays hold, in the order of their entries."""
    return sorted({kind for kind, *_ in shapes})


def unpack(kind: type[T], packed: bytes, where: str = "a stored result") -> T:
    """Return the value of type `kind` held by an archive that `pack` made.

    Raises
    ------
    FileError
        If the archive is damaged or holds another kind of value.
    """
    try:
        entries = archive_entries(packed, where)
        head = json.loads(entries["value.json"])
        stored = [
            np.lib.format.read_array(io.BytesIO(entries[f"{i}.npy"]), allow_pickle=False)
            for i in range(len(entries) - 1)
        ]
        # Laywright 0.1.0 gave every array an entry of its own.
        arrays = _apart(stored, head["arrays"]) if "arrays" in head else stored
        if head["kind"] != kind.__name__:
            raise ValueError(f"it holds {head['kind']}")
        return from_tree(kind, head["tree"], arrays)
    except Exception as problem:
        raise FileError(
            where,
            f"an archive that cannot be read ({type(problem).__name__})",
            f"a stored {kind.__name__}",
            "recompute the object",
        ) from problem


def _apart(stored: list[Array], shapes: list[list[Any]]) -> list[Array]:
    """Return arrays that lie end to end, one entry for each kind of number, by their shapes."""
    flat = dict(zip(_kinds(shapes), stored, strict=True))
    taken = dict.fromkeys(flat, 0)
    arrays = []
    for kind, *shape in shapes:
        start, size = taken[kind], math.prod(shape)
        if min(shape, default=1) < 0 or flat[kind].dtype.str != kind:
            raise ValueError(f"an array of shape {shape}")
        arrays.append(flat[kind][start : start + size].reshape(shape))
        taken[kind] = start + size
    if any(taken[kind] != len(whole) for kind, whole in flat.items()):
        raise ValueError("numbers that belong to no array")
    return arrays
