"""Print tiles against a bare cut: python benchmarks/tiles.py

The peer is manifold3d alone, which cuts the same body into the same boxes and hands back
triangles: no search of the cuts, no joints, marks, poses, checks.  The body is an invented
crowned hatch on its mould; the finest ones are halved from a coarser one.  Times are seconds of
the processor, so that other work on the machine counts little, and the best of a few runs.
"""

from __future__ import annotations

import dataclasses
import sys
import time
from pathlib import Path

import numpy as np

ROOT = Path(__file__).parent.parent
sys.path[:0] = [str(ROOT / "core"), str(ROOT / "tests")]

import shapes  # noqa: E402
from laywright.mould.body import MouldBody, build_body  # noqa: E402
from laywright.mould.cells import cell_block, places  # noqa: E402
from laywright.mould.cut_search import plan_cuts  # noqa: E402
from laywright.mould.cuts import PrintPose  # noqa: E402
from laywright.mould.printer import Printer  # noqa: E402
from laywright.mould.solid import to_manifold  # noqa: E402
from laywright.mould.tile import TileSettings  # noqa: E402
from laywright.mould.tiles import cut_tiles  # noqa: E402
from laywright.surface.face import MouldSide, take_face  # noqa: E402
from laywright.surface.triangles import Surface  # noqa: E402

SETTINGS = TileSettings(plan_seconds=60.0)
FLAT = dataclasses.replace(SETTINGS, pose=PrintPose.BASE_DOWN, least_tile=28.0)


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


def body_of(spacing: float, times: int) -> MouldBody:
    face = take_face(shapes.hatch(spacing=spacing), (0, 0, 1), mould_side=MouldSide.INSIDE)
    body = build_body(face, 1.0)
    solid, working = body.solid, body.working
    for _ in range(times):
        solid, working = halved(solid), halved(working)
    return dataclasses.replace(body, solid=solid, working=working)


def best(function, runs):
    times = []
    for _ in range(runs):
        start = time.process_time()
        result = function()
        times.append(time.process_time() - start)
    return min(times), result


def fresh(body: MouldBody) -> MouldBody:
    """The same body without anything that an earlier run has kept on it."""
    return dataclasses.replace(
        body,
        solid=body.solid.moved(body.solid.vertices),
        working=body.working.moved(body.working.vertices),
    )


def bare(body: MouldBody, plan) -> int:
    solid = to_manifold(body.solid.moved(body.solid.vertices @ plan.axes.T), "the body")
    return sum(
        len(np.asarray((solid ^ cell_block(plan, place, 0.0, 0)).to_mesh64().tri_verts))
        for place in places(plan)
    )


def search(body: MouldBody, printer: Printer, settings: TileSettings):
    limits = settings.limits(printer.usable)
    return plan_cuts(
        body.solid, body.working, body.trim_line, body.pull, limits, seconds=settings.plan_seconds
    )


def main() -> None:
    small = Printer("Small", (110.0, 110.0, 110.0))
    medium = Printer("Medium", (220.0, 220.0, 250.0))
    flat = Printer("Flat", (89.0, 69.0, 43.0))
    head = ("facets", "tiles", "ours s", "search s", "peer s", "(ours - search) / peer")
    print(("{:>9} {:>6} {:>8} {:>9} {:>8} {:>23}").format(*head))
    for spacing, times, printer, runs in (
        (1.8, 0, medium, 3),
        (1.8, 0, small, 3),
        (2.25, 2, medium, 1),
        (2.25, 2, small, 1),
        (2.25, 2, flat, 1),
    ):
        body = body_of(spacing, times)
        kept = FLAT if printer is flat else SETTINGS
        ours, tiles = best(lambda b=body, p=printer, s=kept: cut_tiles(fresh(b), p, s), runs)
        searched, _ = best(lambda b=body, p=printer, s=kept: search(fresh(b), p, s), runs)
        peer, _ = best(lambda b=body, t=tiles: bare(b, t.plan), runs)
        print(
            f"{len(body.solid.triangles):9d} {len(tiles.tiles):6d} {ours:8.2f} {searched:9.2f} "
            f"{peer:8.2f} {(ours - searched) / peer:23.2f}",
            flush=True,
        )


if __name__ == "__main__":
    main()
