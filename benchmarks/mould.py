"""Draft, pull, undercut and body against peers: python benchmarks/mould.py [NAME] [SIZE ...]

Draft: the peer is trimesh's face normals from the same corners, or a plain pass over normals that
are there already.  Pull: the peer tries 1,000 directions on a histogram of the normals in cells
of about a degree.  Undercut: the peer is one ray for each facet by embree alone, on a torus
standing on edge, whose undercut share is 3/4 - r / (2 pi R): only the outer half of its tube
leaves, on the side of the pull.  Release: the whole report, with classes, regions and best pull,
against the same rays.  Body: the peer is manifold3d alone, which
takes the same triangles, closed below, and cuts one groove into them: no run-off, no check
whether the part leaves, no measurement of the working area.
"""

from __future__ import annotations

import math

import numpy as np
import trimesh
from rows import Case, Found, Kernel, main, ratio_within

import shapes
from laywright.mould.body.body import build_body
from laywright.mould.release.release import release_of
from laywright.mould.release.undercut import undercut_of
from laywright.mould.solid import from_manifold, to_manifold
from laywright.surface.cap import smallest_cap
from laywright.surface.face import MouldSide, take_face
from laywright.surface.triangles import Surface

try:
    from embreex.mesh_construction import TriangleMesh
    from embreex.rtcore_scene import EmbreeScene
except ImportError:
    EmbreeScene = None

RING, TUBE = 40.0, 12.0
DIRECTIONS = 1000
PULL = np.array([0.0, 0.6, 0.8])
FACETS = (10_000, 100_000, 1_000_000)


def anew(surface):
    """The same surface without anything that an earlier run has kept on it."""
    return Surface(surface.vertices, surface.triangles, surface.patches, surface.patch_names)


def crowned(facets):
    cells = round(math.sqrt(facets / 2.0))
    return shapes.graph(
        lambda x, y: 40.0 - (x**2 + 0.5 * y**2) / 4000.0, (-300, 300), (-200, 200), (cells, cells)
    )


def draft(facets):
    surface = crowned(facets)

    def compare(one, other):
        off = float(np.abs(one - other).max())
        assert off < 1e-9
        return Found(f"same to {off:.0e}")

    return Case(
        len(surface.triangles),
        lambda given: given.normals @ PULL,
        lambda given: trimesh.triangles.normals(given.vertices[given.triangles])[0] @ PULL,
        compare,
        lambda: anew(surface),
    )


def direction(facets):
    surface = crowned(facets)
    normals = np.array(surface.normals)

    def compare(one, other):
        off = float(np.abs(one - other).max())
        assert off < 1e-9
        return Found(f"same to {off:.0e}")

    return Case(
        len(normals),
        lambda _: np.arcsin(np.clip(surface.normals @ PULL, -1.0, 1.0)),
        lambda _: np.arcsin(normals @ PULL),
        compare,
    )


def tried(normals, directions):
    """Return the largest least draft of many directions, on a histogram of the normals."""
    cells = np.unique(np.round(normals * 57.0), axis=0)
    cells /= np.linalg.norm(cells, axis=1, keepdims=True)
    return math.asin(np.clip((cells @ directions.T).min(axis=0).max(), -1.0, 1.0))


def pull(facets):
    normals = crowned(facets).normals
    turn = math.pi * (1.0 + math.sqrt(5.0)) * np.arange(DIRECTIONS)
    height = 1.0 - 2.0 * (np.arange(DIRECTIONS) + 0.5) / DIRECTIONS
    flat = np.sqrt(1.0 - height**2)
    directions = np.column_stack([flat * np.cos(turn), flat * np.sin(turn), height])

    def compare(cap, sampled):
        exact, other = math.degrees(cap.least_draft), math.degrees(sampled)
        assert other - 1.0 < exact < other + 5.0
        return Found(f"least draft {exact:.4f} deg, peer {other:.4f}")

    return Case(
        len(normals),
        lambda _: smallest_cap(normals),
        lambda _: tried(normals, directions),
        compare,
    )


def undercut(facets):
    return against_rays(facets, lambda given: undercut_of(given, (1.0, 0.0, 0.0)).undercut)


def release(facets):
    return against_rays(facets, lambda given: release_of(given, (1.0, 0.0, 0.0)).undercut_share)


def against_rays(facets, ours):
    section = round(math.sqrt(facets / 4.0))
    surface = shapes.torus(RING, TUBE, 2 * section, section)
    up = (1.0, 0.0, 0.0)
    true = 0.75 - TUBE / (2.0 * math.pi * RING)

    def rays(given):
        a, b, c = np.moveaxis(given.vertices[given.triangles], 1, 0)
        normals = np.cross(b - a, c - a)
        areas = np.linalg.norm(normals, axis=1)
        normals /= areas[:, None]
        scene = EmbreeScene()
        TriangleMesh(scene, given.vertices.astype(np.float32), given.triangles.astype(np.int32))
        start = ((a + b + c) / 3.0 + 1e-3 * normals).astype(np.float32)
        along = np.tile(np.array(up, dtype=np.float32), (len(start), 1))
        hidden = scene.run(start, along, query="OCCLUDED") >= 0
        return np.asarray(hidden | (normals[:, 0] < 0.0), dtype=np.float64), areas

    def told(share, areas):
        wrong = 100.0 * float(areas @ np.abs(share - held_by_points(surface))) / areas.sum()
        return 100.0 * abs(float(areas @ share) / areas.sum() / true - 1.0), wrong

    def compare(one, other):
        off, wrong = told(one, surface.areas)
        figures = {"off": off, "wrong": wrong}
        words = f"area off by {off:.3f} %, in the wrong class {wrong:.3f} %"
        assert wrong < 1.0
        if other is None:
            return Found(f"{words}; embree is not installed", figures)
        beside, beside_wrong = told(*other)
        assert beside_wrong < 20.0
        return Found(f"{words}; peer {beside:.2f} % and {beside_wrong:.2f} %", figures)

    return Case(
        len(surface.triangles),
        ours,
        None if EmbreeScene is None else rays,
        compare,
        lambda: anew(surface),
    )


def held_by_points(surface):
    """The true share of every facet of the ring that holds the part back, by 36 points of each."""
    a, b, c = np.moveaxis(surface.corners, 1, 0)
    share = np.zeros(len(a))
    places = [((i + 1 / 3) / 8.0, (j + 1 / 3) / 8.0) for i in range(8) for j in range(8 - i)]
    for u, v in places:
        x, y, _ = (a + u * (b - a) + v * (c - a)).T
        share += (x < 0.0) | (np.hypot(x, y) < RING)
    return share / len(places)


def body(facets):
    # A hatch cover of 420 x 300 mm; its body has about 1.7 triangles for each of its face.
    spacing = math.sqrt(420.0 * 300.0 * 2.0 * 1.9 / facets)
    face = take_face(shapes.hatch(spacing=spacing), (0, 0, 1), mould_side=MouldSide.INSIDE)
    made = build_body(face, 1.0)
    scribed = np.isin(made.solid.patches, [made.patch("scribe line")])
    low, high = made.solid.part(scribed).bounds

    def bare(_):
        solid = to_manifold(anew(made.solid), "the body")
        knife = type(solid).cube([*(high - low)[:2].tolist(), 0.4]).translate(low.tolist())
        return from_manifold(solid - knife, made.solid.patch_names)

    def compare(result, peer):
        assert result.solid.is_closed
        assert result.largest_deviation < 0.01
        assert abs(peer.volume / result.solid.volume - 1.0) < 0.01
        return Found(f"closed, working area off by {result.largest_deviation:.0e} mm")

    return Case(
        len(made.solid.triangles),
        lambda _: build_body(face, 1.0),
        bare,
        compare,
    )


def undercut_met(row):
    near = row.size > 12_000 or max(row.figures["off"], row.figures["wrong"]) <= 0.5
    return near and row.ratio is not None and row.ratio <= 2.0


KERNELS = (
    Kernel(
        "draft",
        "Draft of every facet from scratch",
        "trimesh's face normals from the same corners",
        "at most half of the peer's time",
        "facets",
        FACETS,
        (10_000, 100_000),
        draft,
        ratio_within(0.5),
    ),
    Kernel(
        "direction",
        "Draft along a further direction",
        "a plain pass over normals that are there already",
        "at most twice the peer's time",
        "facets",
        FACETS,
        (10_000, 100_000),
        direction,
        ratio_within(2.0),
    ),
    Kernel(
        "pull",
        "Best pull",
        "1,000 directions tried on a histogram of the normals",
        "the exact answer in less time than the peer's near one",
        "facets",
        FACETS,
        (10_000, 100_000),
        pull,
        ratio_within(1.0),
    ),
    Kernel(
        "undercut",
        "Undercut of a torus standing on edge",
        "embree: a tree and one ray for each facet",
        "at most twice the peer's time; at 10,000 facets at most 0.5 % of the area wrong",
        "facets",
        FACETS,
        (10_000,),
        undercut,
        undercut_met,
    ),
    Kernel(
        "release",
        "Release report of a torus standing on edge",
        "embree: a tree and one ray for each facet; no classes, no regions, no best pull",
        "none: the peer does less",
        "facets",
        FACETS,
        (10_000,),
        release,
        lambda row: None,
    ),
    Kernel(
        "body",
        "Mould body",
        "manifold3d alone: the same triangles taken, one groove cut, handed back",
        "none: the peer makes no run-off, measures nothing and checks nothing",
        "triangles of the body",
        (10_000, 100_000),
        (10_000,),
        body,
        lambda row: None,
    ),
)

if __name__ == "__main__":
    main(KERNELS)
