"""Cloth used by the roll plan, against plain bottom-left and the packing library alone.

    PYTHONPATH=core python benchmarks/roll.py [seconds]

Prints for each set of pieces how much of the roll's usable width becomes pieces: by the simple
packing alone, by the roll plan, by bottom-left on a grid with pieces in the order of their
length, and by the packing library with the same pieces, gap, time and worker.  The pieces are
invented.  All plans are checked for gaps and edges before they are counted.
"""

from __future__ import annotations

import sys
import time

import numpy as np
import shapely
import spyrrow
from scipy.signal import fftconvolve
from shapely.geometry import Polygon

from laywright.arrays import floats
from laywright.cloth.packing import fits
from laywright.cloth.pattern import Pattern, PatternSet
from laywright.cloth.roll import RollSettings, plan_roll
from laywright.cloth.spot import Spot, end_of
from laywright.laminate.materials import Weave

WIDTH, EDGE, GAP, GRID = 1000.0, 10.0, 5.0, 5.0
USABLE = WIDTH - 2.0 * EDGE
SETS = ((20, 150.0), (60, 120.0), (400, 80.0))


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


def main(seconds=10):
    print(f"share of {USABLE:.0f} mm usable width x length that becomes pieces, {seconds} s each")
    for count, size in SETS:
        shapes = outlines(count, size)
        area = sum(Polygon(shape).area for shape in shapes)
        found = {}
        for name, weave, budget in (
            ("simple", Weave.TWILL, 0.0),
            ("roll plan", Weave.TWILL, float(seconds)),
            ("roll plan, like faces", Weave.PLAIN, float(seconds)),
        ):
            settings = RollSettings(edge=EDGE, gap=GAP, seconds=budget)
            start = time.perf_counter()
            (roll,) = plan_roll(patterns(shapes, weave), settings).rolls
            found[name] = (roll.length, time.perf_counter() - start)
        for name, call in (
            ("bottom-left", lambda shapes=shapes: bottom_left(shapes)),
            ("library alone", lambda shapes=shapes: library(shapes, seconds)),
        ):
            start = time.perf_counter()
            spots = call()
            spent = time.perf_counter() - start
            assert fits(shapes, spots, USABLE, GAP) or name == "library alone"
            found[name] = (end_of(shapes, spots), spent)
        print(f"{count} pieces:")
        for name, (length, spent) in found.items():
            print(
                f"    {name:22} {area / (length * USABLE):6.1%}   {length / 1000.0:7.3f} m   "
                f"{spent:5.1f} s"
            )


if __name__ == "__main__":
    main(*(int(argument) for argument in sys.argv[1:2]))
