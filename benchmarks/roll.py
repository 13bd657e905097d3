"""Cloth used by the roll plan, against plain bottom-left and the packing library alone.

    python benchmarks/roll.py [PIECES ...]

Compared is how much of the roll's usable width becomes pieces: by the simple packing alone, by
the roll plan, by bottom-left on a grid with pieces in the order of their length, and by the
packing library with the same pieces, gap, time and worker.  The pieces are invented.  All plans
are checked for gaps and edges before they are counted.
"""

from __future__ import annotations

import numpy as np
import shapely
import spyrrow
from rows import Case, Found, Kernel, main
from scipy.signal import fftconvolve
from shapely.geometry import Polygon

from laywright.arrays import floats
from laywright.cloth.patterns.pattern import Pattern, PatternSet
from laywright.cloth.roll.packing import fits
from laywright.cloth.roll.roll import RollSettings, plan_roll
from laywright.cloth.roll.spot import Spot, end_of
from laywright.laminate.materials import Weave

WIDTH, EDGE, GAP, GRID = 1000.0, 10.0, 5.0, 5.0
USABLE = WIDTH - 2.0 * EDGE
SIZES = {20: 150.0, 60: 120.0, 400: 80.0}
SECONDS = 10
FEW = 20  # fewer pieces are a trial of this file: 1 s


def outlines(count, size):
    """Return smooth outlines of uneven roundness, as the drape makes them."""
    draw = np.random.default_rng(count)
    turn = 2.0 * np.pi * np.arange(80) / 80
    found = []
    for _ in range(count):
        radius = size * draw.uniform(0.5, 1.6) * np.ones(80)
        for wave, most in ((2, 0.25), (3, 0.15), (5, 0.08)):
            radius *= 1.0 + most * np.cos(wave * turn + draw.uniform(0.0, 6.3))
        round_points = np.stack([radius * np.cos(turn), 0.6 * radius * np.sin(turn)], axis=1)
        found.append(round_points - round_points.min(axis=0))
    return found


def patterns(shapes, weave):
    """Return patterns with these cut lines."""
    one, none = floats([1.0, 0.0], 2), floats([0.0, 0.0], 2)
    return PatternSet(
        tuple(
            Pattern(
                number,
                f"ply {number}",
                "cloth",
                weave,
                WIDTH,
                0.9,
                0.0,
                floats(shape, -1, 2),
                (),
                floats(shape, -1, 2),
                (),
                none,
                one,
                none,
                (),
                Polygon(shape).area,
                Polygon(shape).area,
                0.0,
                0.0,
            )
            for number, shape in enumerate(shapes, 1)
        ),
        (),
        (),
    )


def bottom_left(shapes):
    """Return spots by the plain rule: as near to the start, then as low, as the grid allows."""
    rows = int((USABLE + GAP) / GRID)
    long = int(sum(np.ptp(shape[:, 0]) + 2 * GAP for shape in shapes) / GRID / 3) + 200
    used = np.zeros((rows, long), dtype=np.float32)
    end = 0
    spots = [None] * len(shapes)
    for index in sorted(range(len(shapes)), key=lambda i: -np.ptp(shapes[i][:, 0])):
        best = None
        for turned in (False, True):
            shape = Spot(0.0, 0.0, turned).on(shapes[index])
            low = shape.min(axis=0)
            grown = Polygon(shape - low + GAP / 2).buffer(GAP / 2)
            high = np.ceil((np.ptp(shape, axis=0) + GAP) / GRID).astype(int)
            x, y = np.meshgrid(np.arange(high[0]) * GRID, np.arange(high[1]) * GRID)
            shapely.prepare(grown)
            mask = shapely.intersects(grown, shapely.box(x, y, x + GRID, y + GRID))
            seen = used[:, : min(end + 2 * high[0], long)]
            free = fftconvolve(seen, mask[::-1, ::-1].astype(np.float32), "valid") < 0.5
            column = int(np.argmax(free.any(axis=0)))
            row = int(np.argmax(free[:, column]))
            if best is None or column < best[0]:
                best = (column, row, mask, turned, low)
        column, row, mask, turned, low = best
        used[row : row + mask.shape[0], column : column + mask.shape[1]] += mask
        end = max(end, column + mask.shape[1])
        spots[index] = Spot(column * GRID - low[0], row * GRID - low[1], turned)
    return spots


def library(shapes, seconds):
    """Return spots of the packing library alone."""
    items = [
        spyrrow.Item(str(i), [tuple(p) for p in shape.tolist()], 1, [0.0, 180.0])
        for i, shape in enumerate(shapes)
    ]
    instance = spyrrow.StripPackingInstance("roll", USABLE + GAP, items)
    config = spyrrow.StripPackingConfig(
        total_computation_time=seconds, min_items_separation=GAP, num_workers=1, seed=1
    )
    spots = [None] * len(shapes)
    for item in instance.solve(config).placed_items:
        x, y = item.translation
        spots[int(item.id)] = Spot(x - GAP / 2, y - GAP / 2, abs(item.rotation) > 90.0)
    return spots


def planned(shapes, weave, seconds):
    """Return the length that the roll plan needs, mm."""
    settings = RollSettings(edge=EDGE, gap=GAP, seconds=float(seconds))
    (roll,) = plan_roll(patterns(shapes, weave), settings).rolls
    return roll.length


def packed(count):
    size = SIZES.get(count, 80.0)
    seconds = SECONDS if count >= FEW else 1
    shapes = outlines(count, size)
    area = sum(Polygon(shape).area for shape in shapes)

    def share(length):
        return area / (length * USABLE)

    def compare(length, spots):
        # The library keeps the gap to its own accuracy, ours to the last digit.
        assert fits(shapes, spots, USABLE, GAP - 0.01)
        low = bottom_left(shapes)
        assert fits(shapes, low, USABLE, GAP)
        ours, peer = share(length), share(end_of(shapes, spots))
        others = {
            "bottom-left": end_of(shapes, low),
            "without a search": planned(shapes, Weave.TWILL, 0.0),
            "faces alike": planned(shapes, Weave.PLAIN, seconds),
        }
        told = ", ".join(f"{name} {share(length):.1%}" for name, length in others.items())
        return Found(
            f"{seconds} s each: used {ours:.1%}, peer {peer:.1%}; {told}",
            {"ours": ours, "peer": peer, "bottom-left": share(others["bottom-left"])},
        )

    return Case(
        count,
        lambda _: planned(shapes, Weave.TWILL, seconds),
        lambda _: library(shapes, seconds),
        compare,
    )


KERNELS = (
    Kernel(
        "roll",
        "Pack a roll",
        "the packing library alone (spyrrow), one worker, the same pieces and gap",
        "at least the share of cloth that the peer uses in the same time",
        "pieces",
        tuple(SIZES),
        (8,),
        packed,
        lambda row: row.figures["ours"] >= row.figures["peer"],
    ),
)

if __name__ == "__main__":
    main(KERNELS)
