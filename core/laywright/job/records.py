"""Records of what was made as dated files: one file for each part, never overwritten.

A folder of such files is the memory of a shop: what was learnt from the accepted ones goes into
the next plan.  The files hold plain text (JSON) that any editor shows.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import Enum
from pathlib import Path

from laywright import values
from laywright.errors import FileError, InputError
from laywright.file_names import safe_name
from laywright.saving import made_folder, own_place, write_beside
from laywright.shop.mixing.mix import PlyCloth
from laywright.shop.record.record import ClothReading, Readings, Record

__all__ = [
    "Acceptance",
    "RecordFile",
    "accepted_like",
    "cloth_readings",
    "read_records",
    "write_record",
]

_FORMAT = "laywright record 1"
_PREFIX = "weigh-in"


class Acceptance(Enum):
    """Whether a part was taken as good."""

    OPEN = "not decided"
    ACCEPTED = "accepted"
    REJECTED = "rejected"


@dataclass(frozen=True)
class RecordFile:
    """A record as it is kept.

    Attributes
    ----------
    job : str
        Name of the job.
    version : str
        Version code of its sheet.
    acceptance : Acceptance
    readings : Readings
        What was read.
    record : Record
        What follows from it.
    process : str
        How it was laid up.
    """

    job: str
    version: str
    acceptance: Acceptance
    readings: Readings
    record: Record
    process: str = ""


def write_record(entry: RecordFile, folder: Path) -> Path:
    """Write a record into a folder and return its path.

    The name holds the date and the job; where there is one of that name already, which is not
    the same, a number is added.

    Parameters
    ----------
    entry : RecordFile
    folder : Path
        Made if it is not there.

    Raises
    ------
    FileError
        If it cannot be written.
    """
    tree, _ = values.plain(entry)
    text = json.dumps({"format": _FORMAT, **tree}, indent=1, ensure_ascii=False) + "\n"
    content = text.encode("utf-8")
    stem = safe_name(f"{_PREFIX} {entry.record.date or 'undated'} {entry.job}")
    path = own_place(made_folder(folder), stem, ".json", lambda kept: kept == content)
    if not path.exists():
        write_beside(path, content)
    return path


def read_records(folder: Path) -> tuple[RecordFile, ...]:
    """Return the records of a folder, in the order of their names.

    Raises
    ------
    FileError
        If a file that calls itself a record cannot be read; the message names it.
    """
    found = []
    for path in sorted(folder.glob(f"{_PREFIX} *.json")):
        try:
            tree = json.loads(path.read_text(encoding="utf-8"))
            if tree.pop("format") != _FORMAT:
                raise ValueError("another format")
            found.append(values.from_tree(RecordFile, tree))
        except (OSError, ValueError, KeyError, TypeError, AttributeError) as problem:
            raise FileError(
                str(path),
                f"a file that cannot be read ({problem})",
                "a record that was written here",
                "mend it or take it out of the folder",
            ) from problem
    return tuple(found)


def accepted_like(entries: Iterable[RecordFile], process: str) -> tuple[Record, ...]:
    """Return the records that may teach a plan: accepted, and laid up by the same process."""
    return tuple(
        entry.record
        for entry in entries
        if entry.acceptance is Acceptance.ACCEPTED and entry.process == process
    )


def cloth_readings(pieces: Sequence[PlyCloth], masses: Sequence[float]) -> tuple[ClothReading, ...]:
    """Return the weighed pieces of a job, each with the area that it was cut to.

    Parameters
    ----------
    pieces : sequence of PlyCloth
        As they were cut.
    masses : sequence of float, g
        One for each piece in their order, or none at all.

    Raises
    ------
    InputError
        If some pieces were weighed and others not.
    """
    if not masses:
        return ()
    if len(masses) != len(pieces):
        raise InputError(
            "weighed pieces",
            f"{len(masses)} weights",
            f"one for each of the {len(pieces)} pieces, or none",
            "complete the list in the order of the page 'Cut cloth'",
        )
    return tuple(
        ClothReading(piece.cloth, piece.area_mm2, mass)
        for piece, mass in zip(pieces, masses, strict=True)
    )
