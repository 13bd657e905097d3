"""Running the finite-element solver of Debian's package calculix-ccx in tests.

`tools/setup.sh` installs it; a test that needs it is marked `solver` and fails where it is not.
Debian 13 has no such package, so `tools/part.sh` leaves these tests out there and says so.
"""

from __future__ import annotations

import subprocess
from dataclasses import dataclass

import numpy as np

__all__ = ["Answer", "solve"]


@dataclass(frozen=True, eq=False)
class Answer:
    """What the solver found.

    Attributes
    ----------
    shifts : (n, 3) float, mm
        Of each node.
    reactions : dict of str to (3,) float, N
        Sum over each set of held nodes.
    """

    shifts: np.ndarray
    reactions: dict[str, np.ndarray]


def solve(deck: bytes, folder) -> Answer:
    """Run the solver on an input file and read what it prints."""
    (folder / "model.inp").write_bytes(deck)
    done = subprocess.run(
        ["ccx", "model"], cwd=folder, capture_output=True, text=True, check=False, timeout=300
    )
    assert "Job finished" in done.stdout, done.stdout[-2000:]
    assert "*ERROR" not in done.stdout
    shifts, reactions, name = [], {}, ""
    for line in (folder / "model.dat").read_text(encoding="ascii").splitlines():
        words = line.split()
        if "total force" in line:
            name = words[words.index("set") + 1]
        elif name and len(words) == 3:
            reactions[name] = np.array(words, float)
            name = ""
        elif len(words) == 4:
            shifts.append(words[1:])
    return Answer(np.array(shifts, float), reactions)
