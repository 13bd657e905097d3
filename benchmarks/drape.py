"""Draping against a plain flattening: python benchmarks/drape.py [TRIANGLES ...]

The peer is as-rigid-as-possible flattening as it is written down (L. Liu et al., A local/global
approach to mesh parameterization, 2008): cotangent weights, one factorisation by SciPy, twenty
rounds of nearest rotations from a map onto a disk.  It knows no yarns, no start point and no
limits.  The part is a sphere cap of 45 degrees in even triangles.  Times are processor seconds,
the best of two runs; mean strain is the mean of what both principal stretches differ from 1.
"""

from __future__ import annotations

import math
import resource
import sys
import time
from pathlib import Path

import numpy as np

ROOT = Path(__file__).parent.parent
sys.path[:0] = [str(ROOT / "core"), str(ROOT / "tests")]

from scipy.sparse import coo_matrix  # noqa: E402
from scipy.sparse.linalg import splu  # noqa: E402

import shapes  # noqa: E402
from laywright.cloth.datum import Datum  # noqa: E402
from laywright.cloth.drape import drape  # noqa: E402
from laywright.cloth.even_mesh import even_mesh, spacing_for  # noqa: E402
from laywright.cloth.fabric import fabric_for  # noqa: E402
from laywright.cloth.flatten import disk_map  # noqa: E402
from laywright.cloth.strain import facet_gradients, principal_stretches  # noqa: E402
from laywright.laminate.materials import Weave  # noqa: E402
from laywright.surface.triangles import Surface  # noqa: E402

ROUNDS = 20
TOP = Datum((0.0, 0.0, 100.0), (1.0, 0.0, 0.0))
CLOTHS = {"woven (satin)": Weave.SATIN, "unidirectional": Weave.UNIDIRECTIONAL, "mat": Weave.MAT}


def plain(surface: Surface) -> np.ndarray:
    """Return the peer's flat map: (n, 2)."""
    uv = disk_map(surface)
    gradients, corners, areas = facet_gradients(surface), surface.triangles, surface.areas
    block = np.einsum("mxi,mxj,m->mij", gradients, gradients, areas)
    down, across = np.repeat(corners, 3, axis=1).ravel(), np.tile(corners, (1, 3)).ravel()
    size = len(surface.vertices)
    laplace = coo_matrix((block.ravel(), (down, across)), shape=(size, size)).tocsc()
    factors = splu(
        laplace[1:, 1:].tocsc(),
        permc_spec="MMD_AT_PLUS_A",
        diag_pivot_thresh=0.0,
        options={"SymmetricMode": True},
    )
    for _ in range(ROUNDS):
        a = np.einsum("mxk,mkw->mwx", gradients, uv[corners])
        turn = np.arctan2(a[:, 1, 0] - a[:, 0, 1], a[:, 0, 0] + a[:, 1, 1])
        cosine, sine = np.cos(turn), np.sin(turn)
        wanted = np.array([[cosine, -sine], [sine, cosine]]).transpose(2, 0, 1)
        force = np.einsum("mxk,mwx,m->mkw", gradients, wanted, areas).reshape(-1, 2)
        right = [np.bincount(corners.ravel(), weights=f, minlength=size) for f in force.T]
        uv = np.concatenate([np.zeros((1, 2)), factors.solve(np.stack(right, axis=1)[1:])])
    return uv


def best(function, surface):
    times = []
    for _ in range(2):
        fresh = surface.moved(surface.vertices)
        start = time.process_time()
        result = function(fresh)
        times.append(time.process_time() - start)
    return min(times), result


def mean_strain(surface: Surface, uv: np.ndarray) -> float:
    off = np.abs(principal_stretches(surface, uv) - 1.0).mean(axis=1)
    return float(surface.areas @ off / surface.area)


def main() -> None:
    print("| triangles | cloth | s | ratio to plain | mean strain | yarn stretch, rms |")
    print("|---|---|---|---|---|---|")
    for wanted in [int(argument) for argument in sys.argv[1:]] or [3200, 12800]:
        cap = shapes.cap(100.0, math.radians(45.0), 60)
        surface = even_mesh(cap, spacing_for(cap, wanted))
        count = len(surface.triangles)
        peer, uv = best(plain, surface)
        print(f"| {count} | plain peer | {peer:.2f} | 1 | {mean_strain(surface, uv):.4f} | |")
        for name, weave in CLOTHS.items():
            seconds, found = best(lambda s, w=weave: drape(s, fabric_for(w), TOP), surface)
            print(
                f"| {count} | {name} | {seconds:.2f} | {seconds / peer:.2f} | "
                f"{mean_strain(surface, found.uv):.4f} | {100 * found.yarn_stretch:.4f} % |"
            )
    print(f"\nlargest memory: {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024:.0f} MB")


if __name__ == "__main__":
    main()
