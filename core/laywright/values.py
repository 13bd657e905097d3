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
import zipfile
from functools import cache
from typing import Any, TypeVar

import cattrs
import numpy as np
from cattrs.preconf.json import make_converter

from laywright.arrays import Array
from laywright.errors import FileError

__all__ = ["digest", "from_tree", "pack", "plain", "unpack"]

T = TypeVar("T")

_ARRAY = "$array"
_EPOCH = (1980, 1, 1, 0, 0, 0)
_DIGEST_DECIMALS = 7


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
    if isinstance(value, np.ndarray):
        arrays.append(value)
        return {_ARRAY: len(arrays) - 1}
    if dataclasses.is_dataclass(value) and not isinstance(value, type):
        return {f.name: _plain(getattr(value, f.name), arrays) for f in dataclasses.fields(value)}
    if isinstance(value, (tuple, list)):
        return [_plain(item, arrays) for item in value]
    if isinstance(value, dict):
        return {str(key): _plain(item, arrays) for key, item in value.items()}
    return _converter().unstructure(value)


@cache
def _converter() -> cattrs.Converter:
    return make_converter(forbid_extra_keys=True, detailed_validation=True)


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
    Exception
        A cattrs error that lists every field at fault, if the tree does not fit the type.
    """
    converter = _converter()
    if arrays is not None:
        converter = converter.copy()

        def stored_array(item: dict[str, int], _: object) -> Array:
            array = arrays[item[_ARRAY]]
            array.flags.writeable = False
            return array

        converter.register_structure_hook_func(
            lambda wanted: getattr(wanted, "__origin__", wanted) is np.ndarray, stored_array
        )
    return converter.structure(tree, kind)


def pack(value: object) -> bytes:
    """Return `value` as one archive: the same value gives the same bytes.

    See Also
    --------
    unpack : the way back.
    """
    tree, arrays = plain(value)
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
        head = {"kind": type(value).__name__, "tree": tree}
        archive.writestr(zipfile.ZipInfo("value.json", _EPOCH), json.dumps(head, sort_keys=True))
        for index, array in enumerate(arrays):
            with io.BytesIO() as entry:
                np.lib.format.write_array(entry, array, allow_pickle=False)
                archive.writestr(zipfile.ZipInfo(f"{index}.npy", _EPOCH), entry.getvalue())
    return buffer.getvalue()


def unpack(kind: type[T], packed: bytes, where: str = "a stored result") -> T:
    """Return the value of type `kind` held by an archive that `pack` made.

    Raises
    ------
    FileError
        If the archive is damaged or holds another kind of value.
    """
    try:
        with zipfile.ZipFile(io.BytesIO(packed)) as archive:
            head = json.loads(archive.read("value.json"))
            arrays = [
                np.lib.format.read_array(io.BytesIO(archive.read(f"{i}.npy")), allow_pickle=False)
                for i in range(len(archive.namelist()) - 1)
            ]
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
