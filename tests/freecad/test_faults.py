"""Killed, full or damaged: the document opens, and what was lost is computed again."""

import contextlib
import os
import resource
import shutil
import signal
import time
import zipfile
from pathlib import Path

import FreeCAD
import pytest
from parts import job_in

from freecad.laywright.objects.kept_value import check_value, store_value
from freecad.laywright.saved import warn_if_half
from laywright.errors import FileError
from laywright.stage import Stage

pytestmark = pytest.mark.freecad


def rewritten(source, target, change):
    """Copy a document, one file in it changed: `change` gets its name and bytes."""
    with zipfile.ZipFile(source) as old, zipfile.ZipFile(target, "w") as new:
        for entry in old.infolist():
            content = change(entry.filename, old.read(entry))
            if content is not None:
                new.writestr(entry.filename, content)


def flipped(content):
    middle = len(content) // 2
    return content[:middle] + bytes([content[middle] ^ 0xFF]) + content[middle + 1 :]


@pytest.mark.parametrize(
    "damage",
    [lambda content: content[: len(content) // 2], flipped, lambda content: b""],
    ids=["half", "flipped", "empty"],
)
def test_a_damaged_result_is_said_once_and_computed_again(hatch, tmp_path, capfd, damage):
    document, _, stages = hatch
    digests = {kind: obj.Digest for kind, obj in stages.items()}
    FreeCAD.closeDocument(document.Name)
    path = tmp_path / "damaged.FCStd"
    rewritten(
        tmp_path / "HatchCover.FCStd",
        path,
        lambda name, content: damage(content) if name.casefold() == "layup.result" else content,
    )
    capfd.readouterr()
    document = FreeCAD.openDocument(str(path))
    said = "".join(capfd.readouterr())
    assert said.count("Layup, Result: found an archive that cannot be read") == 1
    _, stages = job_in(document)
    assert stages["Layup"].Status.startswith("out of date: Layup, Result: found an archive")
    document.recompute()
    for kind, obj in stages.items():
        assert obj.Status == "up to date"
        assert (obj.Digest, obj.Proxy.kept(obj).digest) == (digests[kind], digests[kind])


def test_of_a_document_cut_off_what_is_there_is_kept_and_the_rest_computed(hatch, tmp_path):
    document, _, stages = hatch
    digests = {kind: obj.Digest for kind, obj in stages.items()}
    FreeCAD.closeDocument(document.Name)
    whole = (tmp_path / "HatchCover.FCStd").read_bytes()
    (tmp_path / "cut.FCStd").write_bytes(whole[: len(whole) * 9 // 10])
    document = FreeCAD.openDocument(str(tmp_path / "cut.FCStd"))
    _, stages = job_in(document)
    lost = [kind for kind, obj in stages.items() if obj.Status != "up to date"]
    assert lost
    assert "MouldBody" not in lost
    document.recompute()
    assert {kind: obj.Proxy.kept(obj).digest for kind, obj in stages.items()} == digests


@contextlib.contextmanager
def largest_file(size):
    """Have the system refuse to let any file grow past a size."""
    signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (size, before[1]))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)


def test_no_room_for_a_result_is_one_sentence_and_the_earlier_one_stays(hatch, monkeypatch):
    document, _, stages = hatch
    layup = stages["Layup"]
    digest, sheet = layup.Digest, stages["JobSheet"].Digest
    angles = list(layup.Angles)
    layup.Angles = [angles[0] + 15.0, *angles[1:]]
    with largest_file(2000):
        document.recompute()
    assert "found a disk that takes no more" in layup.Status
    assert layup.getStatusString().startswith("Layup, Result: found a disk")
    assert (layup.Digest, layup.Proxy.kept(layup).digest) == (digest, digest)
    layup.Angles = angles
    monkeypatch.setattr(Stage, "__call__", None)
    document.recompute()
    assert layup.Status == "up to date"
    assert stages["JobSheet"].Digest == sheet


@pytest.mark.parametrize(
    ("problem", "why"),
    [
        (OSError(28, "No space left on device"), "No space left on device"),
        (OSError("cannot copy"), "cannot copy"),
        (OSError(), "OSError"),
    ],
)
def test_a_refusal_is_said_with_its_reason_also_where_the_system_has_no_words(
    hatch, monkeypatch, problem, why
):
    layup = hatch[2]["Layup"]

    def refused(*_):
        raise problem

    monkeypatch.setattr(Path, "write_bytes", refused)
    monkeypatch.setattr(Path, "read_bytes", refused)
    with pytest.raises(FileError, match=rf"takes no more \({why}\)"):
        store_value(layup, "Result", layup.Proxy.kept(layup))
    with pytest.raises(FileError, match=rf"found nothing \({why}\)"):
        check_value(layup, "Result")


def test_a_document_that_was_saved_half_is_said_with_the_one_before_it(hatch, tmp_path, capfd):
    document, _, _ = hatch
    path = Path(document.FileName)
    assert not warn_if_half(document, str(path))
    shutil.copy(path, f"{path}1")
    path.write_bytes(path.read_bytes()[:-100])
    (tmp_path / "HatchCover.20260101.FCBak").write_bytes(b"half")
    capfd.readouterr()
    assert warn_if_half(document, str(path))
    said = "".join(capfd.readouterr())
    assert f"found half a file at {path}" in said
    assert f"the file before it is {path}1." in said


def test_a_save_that_is_killed_leaves_the_old_document_or_the_new(hatch, tmp_path):
    document, _, _ = hatch
    path = Path(document.FileName)
    document.save()
    old = path.read_bytes()
    begun = time.monotonic()
    document.save()
    lasts = time.monotonic() - begun
    document.Comment = "the new one"
    for moment in range(12):
        for beside in tmp_path.iterdir():
            beside.unlink()
        path.write_bytes(old)
        child = os.fork()
        if child == 0:
            document.save()
            os._exit(0)
        time.sleep(lasts * moment / 10.0)
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        found = [path] if path.exists() else list(tmp_path.glob("*.FCBak"))
        with zipfile.ZipFile(found[0]) as archive:
            assert archive.testzip() is None
            assert "JobSheet" in archive.read("Document.xml").decode()
    FreeCAD.closeDocument(document.Name)
    _, stages = job_in(FreeCAD.openDocument(str(found[0])))
    for obj in stages.values():
        assert obj.Proxy.kept(obj).digest == obj.Digest
