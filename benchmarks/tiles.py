"""Print tiles against bare cuts: python benchmarks/tiles.py [NAME] [TRIANGLES ...]

Tiles: the peer is manifold3d alone, which cuts the same body into the same boxes and hands back
triangles: no joints, marks, poses, checks.  The search of the cuts is timed by itself.  Dowels:
the peer takes all holes off the body in one batch boolean before it cuts.  The body is an
invented crowned hatch on its mould; fine ones are halved from a coarser one.
"""

from __future__ import annotations

import dataclasses
import math
import sys
import time

import numpy as np
from manifold3d import Manifold, OpType
from rows import Case, Found, Kernel, main, ratio_within

import shapes
from laywright.mould.body.body import MouldBody, build_body
from laywright.mould.solid import joined, to_manifold
from laywright.mould.tiles.cells import cell_block, cells_of, places
from laywright.mould.tiles.cut_search import plan_cuts
from laywright.mould.tiles.printer import Printer
from laywright.mould.tiles.seam_joints import joints_for
from laywright.mould.tiles.tile import TileSettings
from laywright.mould.tiles.tiles import cut_tiles
from laywright.surface.face import MouldSide, take_face
from laywright.surface.triangles import Surface

SETTINGS = TileSettings(plan_seconds=60.0)
NINE = Printer("three by three", (172.0, 130.0, 130.0))
MANY = Printer("four by four", (134.0, 104.0, 110.0))
COARSE = 80_000


def halved(surface: Surface) -> Surface:
    """Every triangle in four."""
    a, b, c = surface.triangles.T
    ends = np.sort(np.concatenate([[a, b], [b, c], [c, a]], axis=1).T, axis=1)
    edges, index = np.unique(ends, axis=0, return_inverse=True)
    p, q, r = (len(surface.vertices) + index.reshape(3, -1)).astype(np.int64)
    points = np.concatenate([surface.vertices, surface.vertices[edges].mean(axis=1)])
    triangles = np.concatenate(
        [np.stack(three, axis=1) for three in ((a, p, r), (p, b, q), (r, q, c), (p, q, r))]
    )
    return Surface(points, triangles, np.tile(surface.patches, 4), surface.patch_names)


def body_of(triangles: int) -> MouldBody:
    """Return the body of a hatch in about so many triangles."""
    times = max(0, math.ceil(math.log(triangles / COARSE, 4.0)))
    spacing = math.sqrt(420.0 * 300.0 * 3.8 * 4.0**times / triangles)
    face = take_face(shapes.hatch(spacing=spacing), (0, 0, 1), mould_side=MouldSide.INSIDE)
    body = build_body(face, 1.0)
    solid, working = body.solid, body.working
    for _ in range(times):
        solid, working = halved(solid), halved(working)
    return dataclasses.replace(body, solid=solid, working=working)


def anew(body: MouldBody) -> MouldBody:
    """The same body without anything that an earlier run has kept on it."""
    return dataclasses.replace(
        body,
        solid=body.solid.moved(body.solid.vertices),
        working=body.working.moved(body.working.vertices),
    )


def searched(body: MouldBody, printer: Printer):
    """Return the grid of cuts and the seconds that its search took."""
    start = time.perf_counter()
    limits = SETTINGS.limits(printer.usable)
    plan = plan_cuts(
        body.solid, body.working, body.trim_line, body.pull, limits, seconds=SETTINGS.plan_seconds
    )
    return plan, time.perf_counter() - start


def gridded(body: MouldBody, plan) -> Manifold:
    return to_manifold(body.solid.moved(body.solid.vertices @ plan.axes.T), "the body")


def cut_along(plan, body: MouldBody):
    """Return the tiles of a body; the stage takes the grid instead of searching for one."""
    module = sys.modules[cut_tiles.__module__]
    search, module.plan_cuts = module.plan_cuts, lambda *_, **__: plan
    try:
        return cut_tiles(body, NINE, SETTINGS)
    finally:
        module.plan_cuts = search


def tiles(triangles: int) -> Case:
    body = body_of(triangles)
    plan, seconds = searched(anew(body), NINE)

    def bare(given):
        solid = gridded(given, plan)
        cells = [solid ^ cell_block(plan, place, 0.0, 0) for place in places(plan)]
        return [(np.asarray(cell.to_mesh64().tri_verts), cell.volume()) for cell in cells]

    def compare(found, cells):
        volume = sum(volume for _, volume in cells)
        assert abs(volume / body.solid.volume - 1.0) < 1e-9
        assert all(tile.solid.is_closed for tile in found.tiles)
        assert abs(found.volume_error) < 1e-6
        assert len(found.tiles) == sum(len(mesh) > 0 for mesh, _ in cells)
        return Found(
            f"{len(found.tiles)} closed tiles, {len(found.joints)} joints; "
            f"cuts searched in {seconds:.2f} s before"
        )

    return Case(
        len(body.solid.triangles),
        lambda given: cut_along(plan, given),
        bare,
        compare,
        lambda: anew(body),
    )


def dowels(triangles: int) -> Case:
    body = body_of(triangles)
    plan, _ = searched(anew(body), MANY)
    joints = joints_for(gridded(body, plan), plan, SETTINGS, 0)
    holes = [hole for cut in joints.holes.values() for hole in cut.decompose()]

    def ours(solid):
        cutters = {}
        for place in places(plan):
            block = cell_block(plan, place, 0.0, 0)
            cutters[place] = block - joints.holes[place] if place in joints.holes else block
        return [cell.volume() for _, cell in cells_of(solid, plan, cutters)]

    def batch(solid):
        drilled = Manifold.batch_boolean([solid, *holes], OpType.Subtract)
        cells = [drilled ^ cell_block(plan, place, 0.0, 0) for place in places(plan)]
        return [volume for volume in (cell.volume() for cell in cells) if volume > 1e-6]

    def compare(one, other):
        assert len(one) == len(other)
        assert np.allclose(sorted(one), sorted(other), rtol=1e-6)
        lost = joined(holes).volume() / 1000.0
        return Found(f"{len(joints.joints)} joints, {len(holes)} holes, {lost:.1f} cm3 drilled")

    return Case(len(body.solid.triangles), ours, batch, compare, lambda: gridded(anew(body), plan))


KERNELS = (
    Kernel(
        "tiles",
        "Cut into three by three tiles",
        "manifold3d alone: the same boxes, handed back as triangles",
        "at most 1.5 times the peer's time, joints and checks included",
        "triangles of the body",
        (10_000, 100_000, 1_000_000),
        (10_000,),
        tiles,
        ratio_within(1.5),
        missed="joints, marks and their share of the account cost the same however coarse the body "
        "is (about 20 ms for each tile); of the time that grows with the body, the cut takes the "
        "peer's time and the checks, specks and poses of the finished tiles half as much again",
    ),
    Kernel(
        "dowels",
        "About 50 dowels in four by four tiles",
        "manifold3d alone: all holes in one batch boolean, then the same boxes",
        "the peer's time",
        "triangles of the body",
        (10_000, 100_000),
        (10_000,),
        dowels,
        ratio_within(1.0),
    ),
)

if __name__ == "__main__":
    main(KERNELS)
