"""Progress: shares of a part become shares of the whole, and a stop gets out."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import Cancelled
from laywright.progress import part_of, silent

SHARE = st.floats(0.0, 1.0)


class Heard:
    def __init__(self):
        self.reports = []

    def __call__(self, share, doing="", /):
        self.reports.append((share, doing))


def test_silence_says_nothing(capsys):
    silent(0.5, "cutting")
    assert capsys.readouterr() == ("", "")


@given(st.tuples(SHARE, SHARE).map(sorted), st.lists(SHARE).map(sorted))
def test_part_stays_inside_its_bounds_and_never_goes_back(bounds, shares):
    start, end = bounds
    heard = Heard()
    inner = part_of(heard, start, end)
    for share in shares:
        inner(share)
    reported = [share for share, _ in heard.reports]
    assert reported == sorted(reported)
    assert all(start - 1e-12 <= share <= end + 1e-12 for share in reported)


def test_ends_of_the_part_are_met():
    heard = Heard()
    inner = part_of(heard, 0.25, 0.75)
    inner(0.0, "start")
    inner(1.0, "end")
    assert heard.reports == [(0.25, "start"), (0.75, "end")]


def test_parts_can_be_nested():
    heard = Heard()
    part_of(part_of(heard, 0.5, 1.0), 0.0, 0.5)(1.0, "deep")
    assert heard.reports == [(0.75, "deep")]


def test_a_stop_gets_out_of_every_part():
    def stop(share, doing="", /):
        raise Cancelled(doing)

    with pytest.raises(Cancelled, match="cutting: found a request to stop"):
        part_of(part_of(stop, 0.0, 1.0), 0.0, 0.5)(0.5, "cutting")
