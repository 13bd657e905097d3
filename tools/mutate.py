"""Change a kernel in small ways and see whether its tests notice: python tools/mutate.py KERNEL

KERNEL is one of the names below, or ``all``.  Works on a copy in a folder of its own, so the
checkout stays as it is.  Needs the package mutmut (version 3) beside those of the tests.  The
last lines say for each file how many changes were made, how many the tests noticed, and the
changes that none noticed are listed in FOLDER/survivors.txt.
"""

from __future__ import annotations

import json
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent

# The room of each kernel, its modules there, and tests besides theirs that must notice.
KERNELS = {
    "draft": (
        "mould/release",
        "release undercut regions wanted_draft",
        "checks/test_draft.py checks/test_undercut.py",
    ),
    "drape": ("cloth/drape", "energy strain descent solver", ""),
    "stiffness": (
        "laminate",
        "stiffness rotation",
        "laminate/test_laminate.py checks/test_laminate_clt.py",
    ),
    "mix": ("shop/mixing", "mix cups", "checks/test_weight.py"),
}

# mutmut leaves decorated functions alone, so a stage is decorated below its own text.
DECORATED = re.compile(r"^(@stage\([^)]*\))\n(def (\w+)\()", re.MULTILINE)


def prepared(folder: Path, files: tuple[str, ...], tests: str) -> None:
    """Copy the checkout into `folder` as mutmut wants it."""
    shutil.copytree(ROOT / "core", folder / "src", ignore=shutil.ignore_patterns("__pycache__"))
    # The tests find the checkout's other folders from their own place.
    for name in ("tests", "examples", "docs", "icons", "freecad_mod", "tools"):
        shutil.copytree(ROOT / name, folder / name, ignore=shutil.ignore_patterns("__pycache__"))
    for name in files:
        path = folder / "src/laywright" / name
        text = path.read_text(encoding="utf-8")
        for decorator, _, function in DECORATED.findall(text):
            text += f"\n\n{function} = {decorator[1:]}({function})\n"
        path.write_text(DECORATED.sub(r"\2", text), encoding="utf-8")
    chosen = [f"tests/{name}" for name in tests.split()]
    (folder / "pyproject.toml").write_text(
        "[tool.mutmut]\n"
        'source_paths = ["src"]\n'
        f"only_mutate = {json.dumps([f'src/laywright/{name}' for name in files])}\n"
        f"pytest_add_cli_args_test_selection = {json.dumps(chosen)}\n"
        'pytest_add_cli_args = ["-p", "no:cacheprovider"]\n'
        'also_copy = ["examples", "docs", "icons", "freecad_mod", "tools"]\n'
        "mutate_only_covered_lines = true\n"
        "[tool.pytest.ini_options]\n"
        'addopts = ["--import-mode=importlib"]\n'
        'pythonpath = ["src", "tests"]\n'
        'markers = ["solver", "freecad", "gui"]\n',
        encoding="utf-8",
    )


def counted(folder: Path, files: tuple[str, ...]) -> list[tuple[str, int, int]]:
    """Return (file, changes, noticed) for every file, and write the survivors down."""
    rows, survivors = [], []
    for name in files:
        meta = json.loads((folder / f"mutants/src/laywright/{name}.meta").read_text())
        codes = meta["exit_code_by_key"]
        alive = [key for key, code in codes.items() if code == 0]
        rows.append((name, len(codes), len(codes) - len(alive)))
        survivors += alive
    (folder / "survivors.txt").write_text("\n".join(survivors) + "\n")
    return rows


def main() -> int:
    if len(sys.argv) != 2 or sys.argv[1] not in (*KERNELS, "all"):
        print(__doc__, f"\nKernels: {', '.join(KERNELS)}")
        return 2
    for kernel in KERNELS if sys.argv[1] == "all" else [sys.argv[1]]:
        room, names, tests = KERNELS[kernel]
        files = tuple(f"{room}/{name}.py" for name in names.split())
        tests += "".join(f" {room}/test_{name}.py" for name in names.split())
        folder = Path(tempfile.mkdtemp(prefix=f"laywright-{kernel}-"))
        prepared(folder, files, tests)
        subprocess.run([sys.executable, "-m", "mutmut", "run"], cwd=folder, check=True)
        print(f"\n{kernel}, in {folder}")
        for name, made, noticed in counted(folder, files):
            print(f"  {name}: {noticed} of {made} changes noticed, {noticed / made:.0%}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
