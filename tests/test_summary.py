"""The sum over all parts of the tests (tools/summary.py) never makes a failure look green."""

import importlib.util
from pathlib import Path

import pytest

SCRIPT = Path(__file__).resolve().parents[1] / "tools" / "summary.py"


@pytest.fixture(scope="module")
def summary():
    spec = importlib.util.spec_from_file_location("summary", SCRIPT)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def results(tests, failures=0, errors=0, skipped=0):
    return (
        f'<testsuites><testsuite name="pytest" tests="{tests}" failures="{failures}" '
        f'errors="{errors}" skipped="{skipped}"/></testsuites>'
    )


@pytest.mark.parametrize(
    ("written", "code", "counts"),
    [
        (results(7), 0, (7, 0, 0)),
        (results(7, skipped=2), 0, (5, 0, 2)),
        (results(7, failures=1, errors=2, skipped=1), 1, (3, 3, 1)),
        (results(7), 1, (7, 1, 0)),
        (results(7), 139, (7, 1, 0)),
        (results(0), 5, (0, 1, 0)),
        (results(0), 0, (0, 1, 0)),
        (results(3, skipped=3), 0, (0, 1, 3)),
        ("<testsuites><testsuite tests=", 0, (0, 1, 0)),
        ("", 0, (0, 1, 0)),
        (None, 0, (0, 1, 0)),
        (None, 124, (0, 1, 0)),
    ],
)
def test_counts_of_a_part(summary, tmp_path, written, code, counts):
    if written is not None:
        (tmp_path / "core.xml").write_text(written, encoding="utf-8")
    assert summary.counted(tmp_path, "core", code) == counts


@pytest.mark.parametrize(("code", "counts"), [(0, (1, 0, 0)), (1, (0, 1, 0)), (127, (0, 1, 0))])
def test_a_check_of_style_counts_as_one(summary, tmp_path, code, counts):
    assert summary.counted(tmp_path, "style-mypy", code) == counts


def test_last_line_is_the_plain_sum(summary, tmp_path, capsys):
    (tmp_path / "core.xml").write_text(results(7, skipped=2), encoding="utf-8")
    (tmp_path / "gui.xml").write_text(results(4, failures=1), encoding="utf-8")
    assert summary.main(str(tmp_path), "style-ruff:0:1", "core:0:60", "gui:1:8") == 1
    printed = capsys.readouterr().out.splitlines()
    assert printed[-1] == "9 passed, 1 failed, 2 skipped"
    assert [line.endswith("FAILED") for line in printed[1:4]] == [False, False, True]


def test_all_green_is_success_and_nothing_at_all_is_not(summary, tmp_path):
    (tmp_path / "core.xml").write_text(results(7), encoding="utf-8")
    assert summary.main(str(tmp_path), "core:0:60") == 0
    assert summary.main(str(tmp_path)) == 1
