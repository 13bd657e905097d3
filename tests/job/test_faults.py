"""Killed, interrupted, refused or stopped at any moment: the old file or the new, never half."""

import contextlib
import dataclasses
import errno
import itertools
import os
import shutil
import tempfile
import time
from pathlib import Path

import pytest

import faults
from job_demo import hatch
from laywright import values
from laywright.cloth.patterns.pattern import PatternSettings
from laywright.errors import Cancelled, LaywrightError
from laywright.job import run

# The forked process writes files and is gone; no thread of this one matters to it.
pytestmark = pytest.mark.filterwarnings("ignore:This process:DeprecationWarning")


@pytest.fixture(params=faults.SAVES)
def saving(request, tmp_path):
    """Return a save, a folder for it, and what is in there before and after."""
    save = faults.SAVES[request.param]
    folder = tmp_path / "chosen"
    (tmp_path / "beside.txt").write_bytes(b"of another")
    yield save, folder, *faults.before_and_after(save, folder)
    assert (tmp_path / "beside.txt").read_bytes() == b"of another"
    assert sorted(os.listdir(tmp_path)) == ["beside.txt", "chosen"]


def left_overs(folder):
    return [path for path in folder.rglob("*") if faults.left_over(path.name)]


def test_killed_at_every_moment(saving):
    save, folder, old, new = saving
    for number in itertools.count(1):
        faults.put_back(old, folder)
        if not faults.killed(lambda: save.save(folder), number):
            break
        assert faults.unmixed(faults.snapshot(folder), old, new) == []
        save.sound(folder)
    assert number > 1
    assert faults.snapshot(folder) == new


def test_after_a_kill_the_next_run_completes_it_and_tidies_up(saving):
    save, folder, old, new = saving
    faults.put_back(old, folder)
    for number in (3, 5):
        faults.killed(lambda: save.save(folder), number)
    for path in left_overs(folder):
        os.utime(path, (time.time() - 4000.0,) * 2)
    with contextlib.suppress(LaywrightError):  # the card has gone already
        save.save(folder)
    assert faults.snapshot(folder) == new
    assert left_overs(folder) == []


@pytest.mark.parametrize("number", [errno.ENOSPC, errno.EACCES])
def test_refused_by_the_system_at_every_moment(saving, number):
    save, folder, old, new = saving

    def refuse():
        raise OSError(number, os.strerror(number))

    for count in itertools.count(1):
        faults.put_back(old, folder)
        said = None
        with faults.Moment(count, refuse).watched() as moment:
            try:
                save.save(folder)
            except LaywrightError as problem:
                said = problem
        if not moment.reached:
            break
        now = faults.snapshot(folder)
        if said is None:
            assert faults.unmixed(now, old, new) == []
        else:
            assert "\n" not in str(said)
            assert all((said.where, said.found, said.needed, said.remedy))
            assert moment.replaced or now == old
        assert left_overs(folder) == []
        assert faults.unmixed(now, old, new) == []
        save.sound(folder)


def test_interrupted_at_every_moment(saving):
    save, folder, old, new = saving

    def interrupt():
        raise KeyboardInterrupt

    for count in itertools.count(1):
        faults.put_back(old, folder)
        moment = faults.Moment(count, interrupt)
        with moment.watched(), contextlib.suppress(KeyboardInterrupt):
            save.save(folder)
        if not moment.reached:
            break
        now = faults.snapshot(folder)
        assert moment.replaced or now == old
        assert faults.unmixed(now, old, new) == []
        assert moment.at_removal or left_overs(folder) == []
        save.sound(folder)


@pytest.mark.parametrize("name", [name for name in faults.SAVES if name != "card taken away"])
def test_no_room(name, tmp_path):
    """The system refuses to let a file grow past a third of the largest."""
    save = faults.SAVES[name]
    folder = tmp_path / "chosen"
    old, new = faults.before_and_after(save, folder)
    room = max(len(content) for content in new.values()) // 3
    faults.put_back(old, folder)
    said = faults.limited(lambda: save.save(folder), largest_file=room)
    assert "a file larger than this disk takes" in said
    assert "\n" not in said
    assert faults.snapshot(folder) == old
    assert left_overs(folder) == []


@pytest.mark.parametrize("name", faults.SAVES)
def test_a_folder_that_may_not_be_written_to(name):
    save = faults.SAVES[name]
    home = Path(tempfile.mkdtemp())
    try:
        home.chmod(0o755)
        folder = home / "chosen"
        old, _ = faults.before_and_after(save, folder)
        faults.put_back(old, folder)
        for path in [folder, *folder.rglob("*")]:
            path.chmod(0o555 if path.is_dir() else 0o444)
        said = faults.limited(lambda: save.save(folder), nobody=True)
        assert "may not be written to, needed permission to write; choose another folder" in said
        assert "\n" not in said
        assert faults.snapshot(folder) == old
    finally:
        for path in [home, *home.rglob("*")]:
            path.chmod(0o755)
        shutil.rmtree(home)


STAGES = ("release", "body", "tiles", "patterns", "roll")


@pytest.mark.parametrize("stage", STAGES)
def test_cancelled_at_several_moments_of_each_stage(stage):
    """Nothing was changed: the same inputs give the same bytes as if nobody had stopped it."""
    job = hatch(patterns=PatternSettings(triangles=600))
    whole = faults.small_job()
    without = dataclasses.replace(whole, **{stage: None})
    shares = []
    again = run(job, without, progress=lambda share, _="", /: shares.append(share))
    assert values.pack(getattr(again, stage)) == values.pack(getattr(whole, stage))
    for number in sorted({0, 1, len(shares) // 3, len(shares) // 2, len(shares) - 1}):

        def stop(share, _doing="", /, *, wanted=shares[number]):
            if share >= wanted:  # and from then on: a search first gives its best so far
                raise Cancelled

        with pytest.raises(Cancelled):
            run(job, without, progress=stop)
    again = run(job, without)
    assert values.pack(getattr(again, stage)) == values.pack(getattr(whole, stage))
    assert again.digests == whole.digests
