"""Fuzz a reader of files, guided by coverage: python tools/fuzz.py READER SECONDS

READER is a name in tests/readers.py or ``all``, which gives each its share of the time.  What
a reader answers to with anything but a value or a LaywrightError, or answers to with more than
a value could need (20 s, 2 GiB), is written into tests/seeds/READER, where the tests find it.
Needs the package atheris beside those of the tests (Linux, Python 3.11 to 3.13).
"""

from __future__ import annotations

import contextlib
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path[:0] = [str(ROOT / "core"), str(ROOT / "tests")]


def fuzz_one(kind: str, seconds: int) -> None:
    """Fuzz one reader in this process; the engine ends it."""
    import atheris

    with atheris.instrument_imports(include=["laywright", "readers", "trimesh", "tomllib"]):
        import readers
        from laywright.errors import LaywrightError

    folder = Path(tempfile.mkdtemp())
    seeds = readers.SEEDS / kind
    seeds.mkdir(parents=True, exist_ok=True)

    def attempt(data: bytes) -> None:
        with contextlib.suppress(LaywrightError):
            readers.read(kind, data, folder)

    corpus = Path(tempfile.mkdtemp())
    limits = [
        f"-max_total_time={seconds}",
        "-timeout=20",
        "-rss_limit_mb=2048",
        "-max_len=40000",
        "-report_slow_units=20",
    ]
    found = f"-artifact_prefix={seeds}/"
    atheris.Setup([sys.argv[0], str(corpus), str(seeds), found, *limits], attempt)
    atheris.Fuzz()


def main() -> int:
    if len(sys.argv) != 3 or not sys.argv[2].isdigit():
        print(__doc__)
        return 2
    kind, seconds = sys.argv[1], int(sys.argv[2])
    if kind != "all":
        fuzz_one(kind, seconds)
        return 0
    import readers

    failed = []
    for each in readers.READERS:
        share = str(max(seconds // len(readers.READERS), 1))
        if subprocess.run([sys.executable, __file__, each, share], check=False).returncode:
            failed.append(each)
    print("Every reader held." if not failed else f"Faults found in: {', '.join(failed)}")
    return int(bool(failed))


if __name__ == "__main__":
    sys.exit(main())
