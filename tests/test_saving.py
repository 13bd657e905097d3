import errno
import os
import stat
import time

import pytest

from laywright import saving
from laywright.errors import FileError
from laywright.saving import made_folder, own_place, take_away, write_all, write_beside


def test_writes_and_replaces_whole_files_and_leaves_nothing_beside(tmp_path):
    target = tmp_path / "tile.stl"
    write_beside(target, b"first")
    write_beside(str(target), b"second, longer")
    assert target.read_bytes() == b"second, longer"
    assert [path.name for path in tmp_path.iterdir()] == ["tile.stl"]


def test_the_rights_of_the_old_file_stay(tmp_path):
    target = tmp_path / "tile.stl"
    target.write_bytes(b"old")
    target.chmod(0o640)
    write_beside(target, b"new")
    assert stat.S_IMODE(target.stat().st_mode) == 0o640


def test_a_link_keeps_pointing_at_the_file_that_is_replaced(tmp_path):
    target, link = tmp_path / "real.csv", tmp_path / "link.csv"
    target.write_bytes(b"old")
    link.symlink_to(target)
    write_beside(link, b"new")
    assert link.is_symlink()
    assert target.read_bytes() == b"new"


def _failing(number):
    def fail(*_args, **_keywords):
        raise OSError(number, os.strerror(number))

    return fail


@pytest.mark.parametrize("step", ["open", "fsync", "replace"])
@pytest.mark.parametrize(
    ("number", "word"),
    [
        (errno.ENOSPC, "full disk"),
        (errno.EACCES, "may not be written"),
        (errno.EROFS, "may not be written"),
        (errno.EFBIG, "larger than this disk takes"),
        (errno.EIO, "failure while writing"),
    ],
)
def test_whatever_fails_the_old_file_stays(tmp_path, monkeypatch, step, number, word):
    target = tmp_path / "record.csv"
    target.write_bytes(b"old and whole")
    monkeypatch.setattr(saving.os, step, _failing(number))
    with pytest.raises(FileError, match=word) as caught:
        write_beside(target, b"new")
    monkeypatch.undo()
    assert target.read_bytes() == b"old and whole"
    assert [path.name for path in tmp_path.iterdir()] == ["record.csv"]
    assert str(caught.value).count(". ") == 0
    assert caught.value.where == str(target)


def test_a_disk_that_fills_up_half_way_leaves_no_rest(tmp_path, monkeypatch):
    class Filling:
        def __init__(self, file):
            self._file = file

        def __enter__(self):
            return self

        def __exit__(self, *_):
            self._file.close()

        def write(self, content):
            self._file.write(content[: len(content) // 2])
            raise OSError(errno.ENOSPC, "no space")

    target = tmp_path / "tile.stl"
    target.write_bytes(b"old")
    opened = os.fdopen
    monkeypatch.setattr(saving.os, "fdopen", lambda *a, **k: Filling(opened(*a, **k)))
    with pytest.raises(FileError, match="full disk"):
        write_beside(target, b"x" * 1000)
    monkeypatch.undo()
    assert target.read_bytes() == b"old"
    assert [path.name for path in tmp_path.iterdir()] == ["tile.stl"]


def test_a_missing_folder_and_a_folder_as_target_are_named(tmp_path):
    with pytest.raises(FileError, match="no such folder"):
        write_beside(tmp_path / "nowhere" / "tile.stl", b"")
    with pytest.raises(FileError, match="a folder of that name"):
        write_beside(tmp_path, b"")
    (tmp_path / "file").write_bytes(b"")
    with pytest.raises(FileError, match="no such folder"):
        write_beside(tmp_path / "file" / "tile.stl", b"")
    with pytest.raises(FileError, match="a file of that name"):
        made_folder(tmp_path / "file")
    with pytest.raises(FileError, match="too long"):
        write_beside(tmp_path / ("x" * 400), b"")


def test_what_a_killed_program_left_goes_after_an_hour_and_nothing_else_does(tmp_path):
    names = [".tile.stl.0123456789ab.laywright-part", ".x\ny.0123456789ab.laywright-part"]
    others = [".tile.stl.0123456789ab.part", "tile.stl.0123456789ab.laywright-part", ".hidden"]
    for name in (*names, *others):
        (tmp_path / name).write_bytes(b"half")
    write_beside(tmp_path / "tile.stl", b"whole")
    assert len(list(tmp_path.iterdir())) == 6
    for path in tmp_path.iterdir():
        os.utime(path, (time.time() - 3700.0,) * 2)
    write_beside(tmp_path / "tile.stl", b"whole")
    assert {path.name for path in tmp_path.iterdir()} == {*others, "tile.stl"}


def test_of_several_files_none_is_replaced_before_all_are_written(tmp_path):
    old = {tmp_path / f"{i}": b"old" for i in range(3)}
    write_all(old.items())
    with pytest.raises(FileError, match="no such folder"):
        write_all([*((path, b"new") for path in old), (tmp_path / "nowhere" / "x", b"new")])
    assert {path: path.read_bytes() for path in tmp_path.iterdir()} == old


def test_the_place_of_a_file_of_ones_own_is_no_place_of_another(tmp_path):
    path = own_place(tmp_path, "cloth", ".toml", lambda kept: kept == b"mine")
    path.write_bytes(b"of another")
    second = own_place(tmp_path, "cloth", ".toml", lambda kept: kept == b"mine")
    assert (path.name, second.name) == ("cloth.toml", "cloth 2.toml")
    second.write_bytes(b"mine")
    assert own_place(tmp_path, "cloth", ".toml", lambda kept: kept == b"mine") == second


def test_a_file_is_taken_away_once_and_a_second_time_does_no_harm(tmp_path):
    (tmp_path / "card.toml").write_bytes(b"")
    take_away(tmp_path / "card.toml")
    take_away(tmp_path / "card.toml")
    assert list(tmp_path.iterdir()) == []
    with pytest.raises(FileError):
        take_away(tmp_path)
