"""Offset beyond the radius of curvature: python benchmarks/offset.py [FACETS ...]

A rounded valley of 1 mm radius is offset by 5 mm towards its hollow.  The peer moves every
vertex along its normal, as general libraries do, and folds.  The true offset is known: every
point of it lies 5 mm from the valley.
"""

from __future__ import annotations

import numpy as np
from rows import Case, Found, Kernel, main

import shapes
from laywright.surface.distance import distances
from laywright.surface.offset import offset
from laywright.surface.rolled import ACCURACY

DISTANCE = 5.0
RADIUS = 1.0
CHECKED = 4000


def valley(facets):
    along = max(2, round(np.sqrt(facets / 20.0)))
    return shapes.graph(
        lambda x, y: np.sqrt(x**2 + RADIUS**2), (-30, 30), (-20, 20), (10 * along, along)
    )


def off(moved, surface):
    """Return the largest error of the distance at vertices and middles spread over a surface."""
    points = np.concatenate([moved.vertices, moved.centroids])
    spread = points[:: max(1, len(points) // CHECKED)]
    return float(np.abs(distances(spread, surface) - DISTANCE).max())


def beyond(facets):
    surface = valley(facets)

    def compare(ours, peer):
        folded = np.einsum("ij,ij->i", surface.normals, peer.normals) < 0.0
        error, beside = off(ours, surface), off(peer, surface)
        loops = len(ours.boundary_loops)
        turned = int((ours.normals[:, 2] <= 0.0).sum())
        # Where nothing folds, both are the same surface but for the rule at a vertex.
        assert abs(np.median(ours.vertices[:, 1]) - np.median(peer.vertices[:, 1])) < 1.0
        return Found(
            f"{loops} outline, {turned} triangles turned over, distance off by {error:.3f} mm; "
            f"peer {100.0 * folded.mean():.0f} % turned over, off by {beside:.2f} mm",
            {"off": error, "outlines": loops, "turned": turned},
        )

    return Case(
        len(surface.triangles),
        lambda given: offset(given, DISTANCE),
        lambda given: given.moved(given.vertices + DISTANCE * given.vertex_normals),
        compare,
        lambda: surface.moved(surface.vertices),
    )


def met(row):
    whole = row.figures["outlines"] == 1 and row.figures["turned"] == 0
    return whole and row.figures["off"] <= 2.0 * ACCURACY


KERNELS = (
    Kernel(
        "offset",
        "Offset by five times the radius of curvature",
        "every vertex moved along its normal, which folds",
        f"one clean outline, nothing turned over, distance within {2 * ACCURACY:g} mm; no time",
        "facets",
        (2_000, 10_000, 40_000),
        (2_000,),
        beyond,
        met,
        missed="coarse facets: at the two ends of the crease one triangle along the edge spans it; "
        "everywhere else the error is below 0.01 mm",
    ),
)

if __name__ == "__main__":
    main(KERNELS)
