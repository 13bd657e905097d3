"""Draft, pull, undercut and body against peers, in turn in one run: python benchmarks/mould.py

Draft: the peer is trimesh's face normals from the same corners.  Pull: the peer tries 1,000
directions on a histogram of the normals in cells of about a degree.  Undercut: the peer is one
ray for each facet by embree (embreex, left out where it is not installed), on a torus standing
on edge, whose undercut share is 3/4 - r / (2 pi R).  Body: the peer is manifold3d alone, which
takes the same triangles, closed below, and cuts one groove into them: no run-off, no check
whether the part leaves, no measurement of the working area.  Ours and peer take turns; times
are medians.
"""

from __future__ import annotations

import math
import statistics
import sys
import time
from pathlib import Path

import numpy as np
import trimesh

ROOT = Path(__file__).parent.parent
sys.path[:0] = [str(ROOT / "core"), str(ROOT / "tests")]

import shapes  # noqa: E402
from laywright.mould.body import build_body  # noqa: E402
from laywright.mould.release import release_of  # noqa: E402
from laywright.mould.solid import from_manifold, to_manifold  # noqa: E402
from laywright.surface.cap import smallest_cap  # noqa: E402
from laywright.surface.face import MouldSide, take_face  # noqa: E402
from laywright.surface.triangles import Surface  # noqa: E402

try:
    from trimesh.ray.ray_pyembree import RayMeshIntersector
except ImportError:
    RayMeshIntersector = None

RING, TUBE = 40.0, 12.0
DIRECTIONS = 1000


def in_turn(ours, peer, runs):
    """Return the median seconds of both and their last results; they take turns."""
    times, results = ([], []), [None, None]
    for _ in range(runs):
        for which, call in enumerate((ours, peer)):
            start = time.perf_counter()
            results[which] = call()
            times[which].append(time.perf_counter() - start)
    return (*map(statistics.median, times), *results)


def row(what, facets, ours, peer, words):
    print(f"{what:<10}{facets:>9} {ours:9.4f} {peer:9.4f} {ours / peer:7.2f}  {words}", flush=True)


def fresh(surface):
    """The same surface without anything that an earlier run has kept on it."""
    return Surface(surface.vertices, surface.triangles, surface.patches, surface.patch_names)


def crowned(cells):
    return shapes.graph(
        lambda x, y: 40.0 - (x**2 + 0.5 * y**2) / 4000.0, (-300, 300), (-200, 200), (cells, cells)
    )


def draft(cells, runs):
    surface, pull = crowned(cells), np.array([0.0, 0.6, 0.8])
    anew = iter([fresh(surface) for _ in range(runs)])
    ours, peer, one, other = in_turn(
        lambda: next(anew).normals @ pull,
        lambda: trimesh.triangles.normals(surface.vertices[surface.triangles])[0] @ pull,
        runs,
    )
    row("draft", len(one), ours, peer, f"largest difference {np.abs(one - other).max():.1e}")


def tried(normals, directions):
    """Return the largest least draft of many directions, on a histogram of the normals."""
    cells = np.unique(np.round(normals * 57.0), axis=0)
    cells /= np.linalg.norm(cells, axis=1, keepdims=True)
    return math.asin(np.clip((cells @ directions.T).min(axis=0).max(), -1.0, 1.0))


def pull(cells, runs):
    normals = crowned(cells).normals
    turn = math.pi * (1.0 + math.sqrt(5.0)) * np.arange(DIRECTIONS)
    height = 1.0 - 2.0 * (np.arange(DIRECTIONS) + 0.5) / DIRECTIONS
    flat = np.sqrt(1.0 - height**2)
    directions = np.column_stack([flat * np.cos(turn), flat * np.sin(turn), height])
    ours, peer, cap, sampled = in_turn(
        lambda: smallest_cap(normals), lambda: tried(normals, directions), runs
    )
    words = f"least draft {math.degrees(cap.least_draft):.4f} deg, peer {math.degrees(sampled):.4f}"
    row("pull", len(normals), ours, peer, words)


def undercut(around, section, runs):
    surface = shapes.torus(RING, TUBE, around, section)
    up = (1.0, 0.0, 0.0)
    true = 0.75 - TUBE / (2.0 * math.pi * RING)

    def ours():
        return release_of(fresh(surface), up).undercut_area / surface.area

    def peer():
        mesh = trimesh.Trimesh(surface.vertices, surface.triangles, process=False)
        start = surface.centroids + 1e-3 * surface.normals
        hidden = RayMeshIntersector(mesh).intersects_any(start, np.tile(up, (len(start), 1)))
        away = surface.normals @ np.array(up) < 0.0
        return float((hidden | away) @ surface.areas) / surface.area

    if RayMeshIntersector is None:
        seconds, _, share, _ = in_turn(ours, lambda: None, runs)
        print(f"undercut  {len(surface.triangles):>9} {seconds:9.4f}   no peer: embreex missing")
        return
    one, other, share, rays = in_turn(ours, peer, runs)
    off = [100.0 * abs(found / true - 1.0) for found in (share, rays)]
    row(
        "undercut",
        len(surface.triangles),
        one,
        other,
        f"off by {off[0]:.3f} %, peer {off[1]:.3f} %",
    )


def body(spacing, runs):
    face = take_face(shapes.hatch(spacing=spacing), (0, 0, 1), mould_side=MouldSide.INSIDE)
    made = build_body(face, 1.0)
    scribed = np.isin(made.solid.patches, [made.patch("scribe line")])
    low, high = made.solid.part(scribed).bounds

    def peer():
        solid = to_manifold(made.solid, "the body")
        knife = type(solid).cube([*(high - low)[:2].tolist(), 0.4]).translate(low.tolist())
        return from_manifold(solid - knife, made.solid.patch_names)

    ours, other, result, _ = in_turn(lambda: build_body(face, 1.0), peer, runs)
    words = (
        f"closed: {result.solid.is_closed}, working area off by {result.largest_deviation:.1e} mm"
    )
    row("body", len(result.solid.triangles), ours, other, words)


def main() -> None:
    print(f"{'':<10}{'facets':>9} {'ours s':>9} {'peer s':>9} {'ratio':>7}")
    for cells, runs in ((220, 9), (700, 5)):
        draft(cells, runs)
    for cells, runs in ((220, 9), (700, 5)):
        pull(cells, runs)
    for around, section, runs in ((100, 50, 5), (316, 158, 3)):
        undercut(around, section, runs)
    for spacing, runs in ((8.0, 3), (3.0, 3)):
        body(spacing, runs)


if __name__ == "__main__":
    main()
