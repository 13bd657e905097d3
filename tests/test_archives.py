"""Archives from elsewhere: every entry, or one sentence."""

import io
import stat
import zipfile

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.archives import archive_entries
from laywright.errors import FileError


def packed(*entries, squeeze=zipfile.ZIP_DEFLATED):
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", squeeze) as archive:
        for name, data in entries:
            archive.writestr(name, data)
    return buffer.getvalue()


NAMES = st.from_regex(r"[a-z]{1,8}(/[a-z]{1,8})?", fullmatch=True)


@given(st.dictionaries(NAMES, st.binary(max_size=200), max_size=6))
def test_every_entry_comes_out_as_it_went_in(entries):
    assert archive_entries(packed(*entries.items()), "it") == entries


@pytest.mark.filterwarnings("ignore:Duplicate name")
@pytest.mark.parametrize(
    ("entries", "found"),
    [
        ([("../a", b"")], "'../a' outside"),
        ([("/etc/a", b"")], "'/etc/a' outside"),
        ([("c:/a", b"")], "'c:/a' outside"),
        ([("a\\..\\..\\b", b"")], "outside"),
        ([("a", b"1"), ("a", b"2")], "two entries 'a'"),
        ([("3D/3dmodel.model", b"<?xml?><!DOCTYPE x [<!ENTITY a 'b'>]>")], "a document type"),
        ([("a.xml", "<!DOCTYPE x>".encode("utf-16"))], "a document type in 'a.xml'"),
        ([(f"{i}", b"") for i in range(10_001)], "10001 entries"),
    ],
)
def test_what_is_refused_and_by_which_word(entries, found):
    with pytest.raises(FileError, match=found) as error:
        archive_entries(packed(*entries), "scan.3mf")
    assert error.value.where == "scan.3mf"


def test_a_link_is_refused():
    link = zipfile.ZipInfo("passwords")
    link.create_system = 3
    link.external_attr = (stat.S_IFLNK | 0o777) << 16
    with pytest.raises(FileError, match="'passwords' that is a link"):
        archive_entries(packed((link, b"/etc/passwd")), "it")


def test_an_encrypted_entry_is_refused():
    data = packed(("a.txt", b"secret"))
    place = data.index(b"PK\x01\x02") + 8
    with pytest.raises(FileError, match="an encrypted entry"):
        archive_entries(data[:place] + b"\x01" + data[place + 1 :], "it")


def test_a_bomb_is_refused_before_it_is_unpacked():
    with pytest.raises(FileError, match="unpacks to 257 MiB"):
        archive_entries(packed(("a", bytes(257 << 20))), "it")


def test_an_entry_longer_than_it_says_is_refused():
    data = packed(("a", b"x" * 1000), squeeze=zipfile.ZIP_STORED)
    size = (1000).to_bytes(4, "little")
    with pytest.raises(FileError, match="cannot be read"):
        archive_entries(data.replace(size + size, (10).to_bytes(4, "little") * 2), "it")


@given(st.binary(max_size=300))
def test_any_bytes_are_refused_in_one_sentence(data):
    with pytest.raises(FileError, match="cannot be read"):
        archive_entries(data, "it")


@given(st.data())
def test_a_cut_or_changed_archive_gives_its_entries_or_one_sentence(data):
    whole = packed(("a", b"first" * 20), ("b", b"second" * 20))
    place = data.draw(st.integers(0, len(whole) - 1))
    byte = data.draw(st.integers(0, 255))
    changed = data.draw(
        st.sampled_from([whole[:place], whole[:place] + bytes([byte]) + whole[place + 1 :]])
    )
    try:
        entries = archive_entries(changed, "it")
    except FileError:
        return
    assert set(entries.values()) <= {b"first" * 20, b"second" * 20}
