"""Draping against a plain flattening: python benchmarks/drape.py [NAME] [TRIANGLES ...]

The peer is as-rigid-as-possible flattening (L. Liu et al., A local/global approach to mesh
parameterization, 2008) in twenty rounds: that of the general library libigl from its harmonic
map or, where that is not installed, as it is written down, with one factorisation by SciPy.  It
knows no yarns, no start point and no limits.  The part is a sphere cap of 45 degrees in even
triangles; mean strain is the mean of what both principal stretches differ from 1.
"""

from __future__ import annotations

import math

import numpy as np
from rows import Case, Found, Kernel, Row, main
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import splu

import shapes
from cloth.drape.reading import principal_stretches
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.drape import drape
from laywright.cloth.drape.even_mesh import even_mesh, spacing_for
from laywright.cloth.drape.fabric import fabric_for
from laywright.cloth.drape.flatten import disk_map
from laywright.cloth.drape.strain import facet_gradients
from laywright.laminate.materials import Weave
from laywright.surface.triangles import Surface

try:
    import igl
except ImportError:
    igl = None

ROUNDS = 20
TOP = Datum((0.0, 0.0, 100.0), (1.0, 0.0, 0.0))
TRIANGLES = (3_200, 12_800)
PEER = "as-rigid-as-possible flattening by a general library (libigl), 20 rounds"


def by_library(surface: Surface) -> np.ndarray:
    """Return the library's flat map: (n, 2)."""
    points = np.ascontiguousarray(surface.vertices)
    corners = np.ascontiguousarray(surface.triangles, dtype=np.int64)
    rim = np.asarray(igl.boundary_loop(corners), dtype=np.int64)
    first = igl.harmonic(points, corners, rim, igl.map_vertices_to_circle(points, rim), 1)
    data = igl.ARAPData()
    data.max_iter = ROUNDS
    data.with_dynamics = False
    data.energy = igl.ARAP_ENERGY_TYPE_ELEMENTS
    igl.arap_precomputation(points, corners, 2, np.zeros(1, dtype=np.int32), data)
    return igl.arap_solve(np.array(first[:1]), data, np.ascontiguousarray(first))


def plain(surface: Surface) -> np.ndarray:
    """Return the flat map as the paper writes it: (n, 2)."""
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


def mean_strain(surface: Surface, uv: np.ndarray) -> float:
    off = np.abs(principal_stretches(surface, uv) - 1.0).mean(axis=1)
    return float(surface.areas @ off / surface.area)


def draped(triangles: int, weave: Weave) -> Case:
    cap = shapes.cap(100.0, math.radians(45.0), 60)
    surface = even_mesh(cap, spacing_for(cap, triangles))

    def compare(found, flat):
        strain, beside = mean_strain(surface, found.uv), mean_strain(surface, flat)
        areas = [abs(area(surface, uv)) / surface.area for uv in (found.uv, flat)]
        assert abs(areas[0] - 1.0) < 0.15
        assert abs(areas[0] / areas[1] - 1.0) < 0.15
        return Found(
            f"mean strain {strain:.4f}, peer {beside:.4f}; "
            f"yarn stretch {100 * found.yarn_stretch:.3f} % rms",
            {"strain": strain / beside, "stretch": found.yarn_stretch},
        )

    return Case(
        len(surface.triangles),
        lambda given: drape(given, fabric_for(weave), TOP),
        plain if igl is None else by_library,
        compare,
        lambda: surface.moved(surface.vertices),
    )


def area(surface: Surface, uv: np.ndarray) -> float:
    a, b, c = (uv[surface.triangles[:, corner]] for corner in range(3))
    u, v = b - a, c - a
    return 0.5 * float((u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]).sum())


def mat_met(row: Row) -> bool:
    return row.ratio is not None and row.ratio <= 1.2 and row.figures["strain"] <= 1.001


def woven_met(row: Row) -> bool:
    return row.figures["stretch"] <= 1e-3 and (row.size > 14_000 or row.ours <= 1.0)


KERNELS = (
    Kernel(
        "mat",
        "Flatten a mat",
        PEER,
        "at most 1.2 times the peer's time at the same or less mean strain",
        "triangles",
        (*TRIANGLES, 100_000),
        (3_200,),
        lambda triangles: draped(triangles, Weave.MAT),
        mat_met,
    ),
    Kernel(
        "woven",
        "Drape a woven cloth",
        PEER + "; it knows no yarns",
        "at most 1 s for 12,800 triangles; yarns stretched by at most 0.1 % rms",
        "triangles",
        (*TRIANGLES, 51_200),
        (3_200,),
        lambda triangles: draped(triangles, Weave.SATIN),
        woven_met,
    ),
    Kernel(
        "unidirectional",
        "Drape a unidirectional cloth",
        PEER + "; it knows no yarns",
        "none",
        "triangles",
        TRIANGLES,
        (3_200,),
        lambda triangles: draped(triangles, Weave.UNIDIRECTIONAL),
        lambda row: None,
    ),
)

if __name__ == "__main__":
    main(KERNELS)
