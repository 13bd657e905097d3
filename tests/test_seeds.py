"""Every file that once troubled a reader, and a whole one of each kind to start from."""

from contextlib import nullcontext, suppress

import pytest

from laywright.errors import LaywrightError
from readers import READERS, SEEDS, read

FILES = sorted(path for path in SEEDS.glob("*/*") if path.is_file())


@pytest.mark.parametrize("path", FILES, ids=[f"{p.parent.name}/{p.name}" for p in FILES])
def test_a_value_or_one_sentence(path, tmp_path):
    whole = path.name.startswith("whole")
    with nullcontext() if whole else suppress(LaywrightError):
        assert read(path.parent.name, path.read_bytes(), tmp_path) or not whole


def test_every_reader_has_a_whole_file():
    assert {path.parent.name for path in FILES if path.name.startswith("whole")} == set(READERS)
