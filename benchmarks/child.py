"""One process of `children.ask`: does what LAYWRIGHT_BENCHMARK says, answers with a line of JSON.

    describe MODULE            what its kernels are
    measure MODULE NAME SIZE   a row
    peak MODULE NAME SIZE WHOSE    memory of ours or the peer
    call MODULE NAME           whatever a function of that name returns

The same file runs in Python and inside FreeCAD, which tells no exit code.
"""

from __future__ import annotations

import importlib
import json
import os
import sys
import traceback

sys.path.insert(0, os.environ["LAYWRIGHT_BENCHMARKS"])

import rows
from children import MARK


def answer(task: str, module: str, name: str = "", size: str = "0", whose: str = "") -> object:
    found = importlib.import_module(module)
    if task == "call":
        return getattr(found, name)()
    if task == "describe":
        return [kernel.described() for kernel in found.KERNELS]
    (kernel,) = (kernel for kernel in found.KERNELS if kernel.name == name)
    if task == "peak":
        return rows.peak(kernel, int(size), whose)
    return rows.as_stored(rows.measure(kernel, int(size)))


code = 0
try:
    print(MARK + json.dumps(answer(*os.environ["LAYWRIGHT_BENCHMARK"].split())), flush=True)
except Exception:
    traceback.print_exc(file=sys.stdout)
    code = 1
sys.stdout.flush()
os._exit(code)
