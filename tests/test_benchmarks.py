"""The benchmarks run, compare what they measure, and print every row; no time is asserted."""

import dataclasses
import importlib
import math
import re
import sys
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "benchmarks"))
import page
import run
import scale
import whole_job
from rows import Case, Found, Kernel, Row, growth, measure, peak, table

from laywright.stage import stage

# Kernels that need no FreeCAD, at sizes that take a moment.
SMALL = {
    "draft": 800,
    "direction": 800,
    "pull": 800,
    "undercut": 1600,
    "body": 2500,
    "release": 1600,
    "tiles": 2500,
    "dowels": 2500,
    "offset": 700,
    "mat": 300,
    "woven": 300,
    "unidirectional": 300,
    "roll": 4,
    "laminates": 12,
    "stl": 400,
    "3mf": 400,
}
KERNELS = {
    kernel.name: kernel
    for module in run.MODULES
    for kernel in importlib.import_module(module).KERNELS
}


def test_every_kernel_is_tried_here_or_needs_freecad():
    inside = {name for name, kernel in KERNELS.items() if kernel.inside}
    assert inside == {"shape", "to-mesh", "from-mesh", "start"}
    assert set(KERNELS) == inside | set(SMALL)


@pytest.mark.parametrize("name", SMALL)
def test_ours_and_the_peer_agree(name):
    row = measure(KERNELS[name], SMALL[name], seconds=0.0)
    assert row.size == pytest.approx(SMALL[name], rel=0.6)
    assert row.runs == 1
    assert row.ours > 0.0
    assert row.met in (True, False, None)
    assert row.words


def doubled(size):
    def compare(ours, peer):
        assert ours == peer
        return Found("the same", {"sum": float(ours)})

    return Case(
        size,
        lambda given: 2 * sum(given),
        lambda given: sum(given) * 2,
        compare,
        lambda: list(range(size)),
    )


DOUBLED = Kernel(
    "doubled",
    "Doubling",
    "the other way round",
    "the same sum",
    "numbers",
    (10, 100),
    (10,),
    doubled,
    lambda row: row.figures["sum"] == row.size * (row.size - 1),
    missed="arithmetic",
)


def test_a_row_carries_what_was_found():
    row = measure(DOUBLED, 10, seconds=0.0)
    assert (row.size, row.words, row.figures, row.met) == (10, "the same", {"sum": 90.0}, True)
    assert row.ratio == row.ours / row.peer


def test_results_that_differ_are_no_row():
    wrong = dataclasses.replace(
        DOUBLED, case=lambda size: dataclasses.replace(doubled(size), peer=lambda given: -1)
    )
    with pytest.raises(AssertionError):
        measure(wrong, 10, seconds=0.0)


def test_memory_of_a_call_is_the_peak_and_what_it_added():
    def case(size):
        return Case(size, lambda _: bytearray(size) + bytearray(size), None, lambda *_: Found())

    kernel = dataclasses.replace(DOUBLED, case=case)
    whole, added = peak(kernel, 200_000_000, "ours")
    assert whole > added > 250.0
    assert all(map(math.isnan, peak(kernel, 10, "peer")))


def test_growth_is_the_exponent_between_sizes():
    rows = [Row(n, 1, 1e-9 * n**2, 1e-6 * n) for n in (10_000, 100_000, 1_000_000)]
    assert growth(rows) == ["", "2.00, peer 1.00", "2.00, peer 1.00"]


def results(met):
    rows = [dataclasses.replace(Row(10, 1, 2.0, 1.0, "fine"), met=met), Row(100, 1, 30.0, 10.0)]
    kernel = {**DOUBLED.described(), "problem": "", "rows": [vars(row) for row in rows]}
    absent = {**DOUBLED.described(), "title": "Absent", "problem": "not run", "rows": []}
    part = {
        "title": "A part",
        "words": "Words.",
        "tables": [{"title": "One", "words": "", "head": ["a", "b"], "rows": [["1", "2"]]}],
    }
    return [kernel, absent], [part]


def test_the_page_has_every_row_and_every_part():
    text = page.text(*results(met=True))
    assert "| Doubling | 10: 2.00<br>100: 3.00 | the same sum | yes<br> |" in text
    assert "| Absent |  | the same sum | not run |" in text
    assert "## A part\n\nWords.\n\n### One\n\n| a | b |\n|---|---|\n| 1 | 2 |" in text
    for line in table([Row(10, 1, 2.0, 1.0), Row(100, 1, 30.0, 10.0)]).splitlines():
        assert line.count("|") == 10


def test_a_reason_is_printed_only_where_the_target_is_missed():
    assert "Why it is missed: arithmetic." in page.text(*results(met=False))
    assert "arithmetic" not in page.text(*results(met=True))


def test_the_machine_is_told_without_names_or_paths():
    words = page.machine()
    assert re.search(r"\d+ cores, \d+ GB of memory", words)
    for package in ("numpy", "scipy", "manifold3d"):
        assert re.search(rf"{package} \d", words)
    assert "/" not in words


def test_unknown_names_are_refused(capsys):
    assert run.main(["nonsense", "--no-memory"]) == 2
    assert "found nonsense, needed some of draft" in capsys.readouterr().err


def test_a_chosen_kernel_is_measured_in_a_process_of_its_own(capsys):
    assert run.main(["laminates", "--sizes", "10", "20"]) == 0
    said = capsys.readouterr().out
    rows = [line for line in said.splitlines() if re.match(r"\| [12]0 \|", line)]
    assert len(rows) == 2
    assert all(re.search(r"\d \(\+\d+\)", row) for row in rows)


@dataclasses.dataclass(frozen=True)
class Number:
    value: int
    digest: str = ""


@stage("Inner", version=1)
def inner(value: int) -> Number:
    return Number(value + 1)


@stage("Outer", version=1)
def outer(value: int) -> Number:
    return Number(inner(value).value * 2)


def test_a_watch_tells_stages_once_and_leaves_them_as_they_were():
    before = type(outer).__call__
    with scale.Watch() as watch:
        assert outer(1).value == 4
        assert watch.step("said", lambda: 7) == 7
    assert type(outer).__call__ is before
    told = watch.table("title", "words")
    assert [row[0] for row in told["rows"]] == ["Outer", "said", "all"]
    assert all(len(row) == len(told["head"]) for row in told["rows"])


@pytest.mark.parametrize(
    ("place", "kind"),
    [
        ("7f00 (/usr/lib/python3/numpy/core/_multiarray_umath.cpython-311-x86_64.so)", "kernels"),
        ("7f00 (/usr/lib/libopenblasp-r0.so)", "kernels"),
        ("7f00 (/usr/bin/python3.11)", "glue"),
        ("7f00 (/usr/lib/libpython3.11.so.1.0)", "glue"),
        ("7f00 (/usr/lib/python3.11/lib-dynload/_json.cpython-311-x86_64-linux-gnu.so)", "glue"),
        ("7f00 (/usr/lib/libc.so.6)", "memory"),
        ("ffff ([kernel.kallsyms])", "memory"),
    ],
)
def test_a_sample_is_told_by_its_library(place, kind):
    assert whole_job.kind_of(place) == kind


def test_shares_are_those_between_two_moments():
    samples = [(0.001 * i, "kernels" if i < 300 else "glue") for i in range(400)]
    assert whole_job.shares(samples, 0.0, 1.0) == ["75%", "0%", "25%"]
    assert whole_job.shares(samples, 0.3, 0.4) == ["0%", "0%", "100%"]
    assert whole_job.shares(samples, 5.0, 6.0) == ["", "", ""]
