"""Files of a job stay in the chosen folder, whatever its things are called."""

import dataclasses
import hashlib
import json
from pathlib import Path, PurePosixPath

import pytest

import faults
from laywright.errors import FileError
from laywright.job import files_of, freshness, write_files

NAMES = [
    "../../x",
    "a/b",
    "CON",
    "..",
    "/etc/passwd",
    "C:\\x",
    "x" * 500,
    "翼" * 300,
    "a\0b\n",
    " ",
]


@pytest.mark.parametrize("first", [0, 3, 6])
def test_a_job_with_any_names_stays_inside(first, tmp_path):
    name, *others = NAMES[first : first + 4]
    result = faults.small_job()
    pieces = zip(result.patterns.patterns, others, strict=True)
    patterns = dataclasses.replace(
        result.patterns,
        patterns=tuple(dataclasses.replace(piece, name=n, cloth=n) for piece, n in pieces),
    )
    (layout,) = result.roll.layouts
    roll = dataclasses.replace(result.roll, rolls=(dataclasses.replace(layout, cloth=others[0]),))
    files = files_of(dataclasses.replace(result, name=name, patterns=patterns, roll=roll))
    for path in files:
        parts = PurePosixPath(path).parts
        assert len(parts) <= 2
        assert all(part not in ("", ".", "..") and len(part.encode()) <= 255 for part in parts)
    home = tmp_path / "home"
    folder = home / "chosen"
    written = write_files(files, folder)
    assert len(written) == len(files)
    assert list(home.iterdir()) == [folder]
    assert list(tmp_path.iterdir()) == [home]


@pytest.mark.parametrize("name", ["../x", "/x", "mould/../../x"])
def test_a_path_that_leads_out_is_refused_before_anything_is_written(name, tmp_path):
    folder = tmp_path / "chosen"
    with pytest.raises(FileError, match="a place outside the folder"):
        write_files({"inside": b"", name: b""}, folder)
    assert list(tmp_path.iterdir()) == []


def test_a_folder_that_is_a_link_elsewhere_is_refused(tmp_path):
    folder, elsewhere = tmp_path / "chosen", tmp_path / "elsewhere"
    folder.mkdir()
    elsewhere.mkdir()
    (folder / "mould").symlink_to(elsewhere)
    with pytest.raises(FileError, match="a place outside the folder"):
        write_files({"mould/x": b""}, folder)
    assert list(elsewhere.iterdir()) == []


@pytest.mark.parametrize("name", ["../precious", "{outside}/precious", "link"])
def test_a_record_that_names_a_file_elsewhere_takes_nothing_away(name, tmp_path):
    precious = tmp_path / "precious"
    precious.write_bytes(b"precious")
    folder = tmp_path / "chosen"
    folder.mkdir()
    (folder / "link").symlink_to(precious)
    digest = hashlib.sha256(b"precious").hexdigest()
    record = {"stages": {}, "files": {name.format(outside=tmp_path): digest}}
    (folder / "job.json").write_text(json.dumps(record), encoding="utf-8")
    write_files({"job.json": b"{}"}, folder)
    assert precious.read_bytes() == b"precious"


@pytest.mark.parametrize(
    "record", [b"", b"[]", b"\xff", b'{"files": 3}', b'{"files": {"a": 3}}', b'{"stages": []}']
)
def test_a_record_of_any_other_kind_is_no_record(record, tmp_path):
    (tmp_path / "job.json").write_bytes(record)
    assert freshness(tmp_path, {"Layup": "1"}) is None
    write_files({"a": b"new", "job.json": b"{}"}, tmp_path)
    assert Path(tmp_path / "a").read_bytes() == b"new"
