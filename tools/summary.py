"""Add up the results of all parts and print them, ending in one plain line.

Usage: ``summary.py FOLDER PART:CODE:SECONDS...``.  ``FOLDER/PART.xml`` holds the part's results
as pytest wrote them; a part named ``style-...`` has none and counts as one check.  A part that
wrote no results, ran no test, or ended with an error beyond its failed tests, counts as failed.
"""

import sys
from pathlib import Path
from xml.etree import ElementTree


def counted(folder: Path, part: str, code: int) -> tuple[int, int, int]:
    """Return how many tests of a part passed, failed and were skipped."""
    if part.startswith("style-"):
        return int(code == 0), int(code != 0), 0
    try:
        suites = list(ElementTree.parse(folder / f"{part}.xml").iter("testsuite"))
    except (OSError, ElementTree.ParseError):
        return 0, 1, 0
    tests, failures, errors, skipped = (
        sum(int(suite.get(name, 0)) for suite in suites)
        for name in ("tests", "failures", "errors", "skipped")
    )
    failed = failures + errors
    if failed == 0 and (code != 0 or tests == skipped):
        failed, tests = 1, tests + 1
    return tests - failed - skipped, failed, skipped


def main(folder: str, *outcomes: str) -> int:
    """Print a line for each part and the sum; return 1 if anything failed."""
    total = [0, 0, 0]
    print()
    for outcome in outcomes:
        part, code, seconds = outcome.split(":")
        counts = counted(Path(folder), part, int(code))
        total = [sum(pair) for pair in zip(total, counts, strict=True)]
        passed, failed, skipped = counts
        print(
            f"{part:14} {passed:5} passed {failed:4} failed {skipped:4} skipped {seconds:>5} s"
            + ("   <-- FAILED" if failed else "")
        )
    print()
    print(f"{total[0]} passed, {total[1]} failed, {total[2]} skipped")
    return int(total[1] > 0 or total[0] == 0)


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
