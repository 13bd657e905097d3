import errno
import os
import stat

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import FileError
from laywright.files import saving
from laywright.files.saving import place_inside, safe_name, safe_names, write_beside


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


@given(st.text(max_size=120))
def test_a_safe_name_is_one_plain_name(text):
    name = safe_name(text)
    assert name
    assert len(name.encode()) <= 255 + 80
    assert not set(name) & set('/\\:*?"<>|\0\n\r\t')
    assert name == name.strip(" .")
    assert name.split(".")[0].casefold() not in {"con", "prn", "aux", "nul", "com1", "lpt1"}
    assert safe_name(name) == name


@given(st.lists(st.text(alphabet="aA/:-1 ", max_size=5), max_size=12))
def test_safe_names_never_meet(texts):
    names = safe_names(texts)
    assert len({name.casefold() for name in names}) == len(texts)


@given(st.text(max_size=60))
def test_an_export_stays_in_its_folder(text):
    path = place_inside("/chosen/folder", text, ".svg")
    assert os.path.dirname(os.path.normpath(path)) == os.path.normpath("/chosen/folder")
