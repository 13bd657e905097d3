"""The roll plan: where each pattern is cut from its roll, with the grain kept.

The warp of every pattern lies along the roll, so a pattern may be turned by half a turn, and
where both faces of the cloth are alike it may be cut face down, and not otherwise.  Offcuts at
hand are filled first.  For the rolls a simple packing that fills holes is always made; a
packing library searches beside it within a time budget, and the shorter of the two is taken.
"""

from __future__ import annotations

import math
import time
from dataclasses import replace

import numpy as np

from laywright.arrays import FloatArray
from laywright.cloth.patterns.pattern import Pattern, PatternSet
from laywright.cloth.roll.bottom_left import Rectangle, place_bottom_left
from laywright.cloth.roll.packing import Hunt, fits, start, wait_for
from laywright.cloth.roll.roll_figures import layout_of
from laywright.cloth.roll.roll_layout import (
    Placement,
    RollLayout,
    RollPlan,
    placed_outline,
)
from laywright.cloth.roll.roll_pieces import Piece, pieces_of, ways_of
from laywright.cloth.roll.roll_settings import (
    Fault,
    Offcut,
    RollSettings,
    TurnOver,
    WidePatterns,
    roll_width,
)
from laywright.cloth.roll.spot import Spot, end_of
from laywright.errors import Cancelled
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage

__all__ = [
    "Fault",
    "Offcut",
    "Placement",
    "RollLayout",
    "RollPlan",
    "RollSettings",
    "TurnOver",
    "WidePatterns",
    "placed_outline",
    "plan_roll",
    "roll_width",
]

_SEARCHED = 1.0  # s, the shortest search
_FEW = 20  # pieces that are placed in several orders


@stage("Roll Plan", version=2)
def plan_roll(
    patterns: PatternSet,
    settings: RollSettings = RollSettings(),
    *,
    progress: Progress = silent,
) -> RollPlan:
    """Place all patterns on offcuts and rolls.

    Parameters
    ----------
    patterns : PatternSet
        The patterns.
    settings : RollSettings
        Rolls, offcuts, gaps, time budget.
    progress : Progress
        Told how far it is.  When it raises `laywright.errors.Cancelled` during a search, the
        search ends and the shortest plan so far is given; at any other time it is passed on.

    Returns
    -------
    RollPlan

    Raises
    ------
    LimitError
        If a pattern is wider than its roll and is not to be split.
    """
    by_cloth: dict[str, list[tuple[int, Pattern]]] = {}
    for index, pattern in enumerate(patterns.patterns):
        by_cloth.setdefault(pattern.cloth, []).append((index, pattern))
    remarks: list[str] = []
    pieces = {
        cloth: pieces_of(cloth, found, settings, remarks) for cloth, found in by_cloth.items()
    }
    total = sum(len(found) for found in pieces.values())
    done = 0
    stopped = False
    rolls: list[RollLayout] = []
    offcuts: list[RollLayout] = []
    for cloth, wanted in pieces.items():
        inner = part_of(progress, done / total, (done + len(wanted)) / total)
        if not stopped:
            inner(0.0, f"placing {len(wanted)} pieces of {cloth}")
        used, rest = _fill_offcuts(cloth, wanted, settings)
        offcuts += used
        if rest:
            seconds = 0.0 if stopped else settings.seconds * len(rest) / total
            layout, stopped_here = _lay_out(cloth, rest, settings, seconds, inner)
            rolls.append(layout)
            stopped = stopped or stopped_here
        done += len(wanted)
    if stopped:
        remarks.append("the search was ended before its time: this is the shortest plan till then")
    if settings.parts + settings.mirrored_parts > 1:
        remarks.append(
            f"cloth for {settings.parts} parts and {settings.mirrored_parts} mirrored ones; "
            "everything else in this job is for one part"
        )
    if not stopped:
        progress(1.0)
    return RollPlan(
        tuple(rolls), tuple(offcuts), tuple(remarks), settings.parts + settings.mirrored_parts
    )


def _fill_offcuts(
    cloth: str, pieces: list[Piece], settings: RollSettings
) -> tuple[list[RollLayout], list[Piece]]:
    """Return the offcuts that are used, and the pieces that found no room on any."""
    layouts = []
    rest = list(pieces)
    mine = [offcut for offcut in settings.offcuts if offcut.cloth == cloth]
    for number, offcut in sorted(
        enumerate(mine, 1), key=lambda item: item[1].length * item[1].width
    ):
        fitting = [p for p in rest if float(np.ptp(p.outline[:, 1])) <= offcut.width]
        outlines = [piece.outline for piece in fitting]
        spots = place_bottom_left(
            outlines,
            [ways_of(piece, settings) for piece in fitting],
            offcut.width,
            settings.gap,
            sorted(range(len(fitting)), key=lambda i: -fitting[i].pattern.area),
            longest=offcut.length,
        )
        chosen = [(p, s) for p, s in zip(fitting, spots, strict=True) if s is not None]
        if chosen:
            taken = {id(piece) for piece, _ in chosen}
            rest = [piece for piece in rest if id(piece) not in taken]
            placed = [(piece.pattern, piece.placed(spot)) for piece, spot in chosen]
            size = (offcut.length, offcut.width)
            layouts.append(layout_of(cloth, f"offcut {number}", size, 0.0, 0.0, placed, ()))
    return layouts, rest


def _lay_out(
    cloth: str, pieces: list[Piece], settings: RollSettings, seconds: float, progress: Progress
) -> tuple[RollLayout, bool]:
    """Return the shortest layout found on a roll, and whether the search was stopped."""
    width = settings.widths.get(cloth, pieces[0].pattern.roll_width)
    usable = width - 2.0 * settings.edge
    faults: tuple[Rectangle, ...] = tuple(
        (fault.start, fault.end, fault.low, min(fault.high, width))
        for fault in settings.faults
        if fault.cloth == cloth and fault.low < width
    )
    below = tuple((a, b, low - settings.edge, high - settings.edge) for a, b, low, high in faults)
    outlines = [piece.outline for piece in pieces]
    search = seconds >= _SEARCHED and len(pieces) > 1
    began = time.monotonic()
    plain = [piece.opposite for piece in pieces]
    task = (usable, settings.gap, seconds, settings.seed)
    first = start(outlines, plain, *task) if search and not below else None
    best = _simple(pieces, outlines, usable, settings, below)
    left = max(seconds - (time.monotonic() - began), _SEARCHED)
    stopped = False
    if search and any(fault[0] < end_of(outlines, best) for fault in faults):
        best, stopped = _reordered(pieces, best, usable, settings, below, left, progress)
    elif search and (first := first or start(outlines, plain, *task)) is not None:
        best, stopped = _searched(first, pieces, best, usable, settings, left, progress)
    length = end_of(outlines, best)
    placed = [
        (piece.pattern, piece.placed(replace(spot, y=spot.y + settings.edge)))
        for piece, spot in zip(pieces, best, strict=True)
    ]
    bought = math.ceil(length / settings.sold_by - 1e-9) * settings.sold_by
    reached = tuple(fault for fault in faults if fault[0] < length)
    return (
        layout_of(cloth, "roll", (length, width), bought, settings.edge, placed, reached),
        stopped,
    )


def _simple(
    pieces: list[Piece],
    outlines: list[FloatArray],
    usable: float,
    settings: RollSettings,
    faults: tuple[Rectangle, ...],
) -> list[Spot]:
    """Return the shortest of the simple packings, in a few orders and ways round."""
    ways = [ways_of(piece, settings) for piece in pieces]
    measures = [
        [-float(np.ptp(outline[:, 0])) for outline in outlines],
        [-piece.pattern.area for piece in pieces],
        [-float(np.ptp(outline[:, 1])) for outline in outlines],
    ]
    tries = [(ways, measure) for measure in measures[: 3 if len(pieces) <= _FEW else 1]]
    if any(len(way) > 2 for way in ways):
        tries.append(([way[:2] for way in ways], measures[0]))
    found = [
        _placed(
            outlines,
            allowed,
            usable,
            settings.gap,
            sorted(range(len(pieces)), key=lambda i, by=measure: (by[i], i)),  # type: ignore[misc]
            faults,
        )
        for allowed, measure in tries
    ]
    return min(found, key=lambda spots: end_of(outlines, spots))


def _searched(
    first: Hunt,
    pieces: list[Piece],
    best: list[Spot],
    usable: float,
    settings: RollSettings,
    seconds: float,
    progress: Progress,
) -> tuple[list[Spot], bool]:
    """Return the shortest of a packing and what is found, and whether it was stopped.

    Where the simple packing turns pieces over, a second search goes beside the first, with the
    same pieces turned over: the library itself does not turn them.
    """
    outlines = [piece.outline for piece in pieces]
    over = [spot.mirrored for spot in best]
    hunts = [first]
    if over != [piece.opposite for piece in pieces]:
        second = start(outlines, over, usable, settings.gap, seconds, settings.seed)
        hunts += [] if second is None else [second]
    stopped = wait_for(hunts, seconds, progress)
    for hunt in hunts:
        found = hunt.best()
        if (
            found is not None
            and end_of(outlines, found) < end_of(outlines, best)
            and fits(outlines, found, usable, settings.gap)
        ):
            best = found
    return best, stopped


def _reordered(
    pieces: list[Piece],
    best: list[Spot],
    usable: float,
    settings: RollSettings,
    faults: tuple[Rectangle, ...],
    seconds: float,
    progress: Progress,
) -> tuple[list[Spot], bool]:
    """Return the shortest packing around the faults among many orders, and whether it was stopped.

    Two pieces change places in the order, and what is not longer is kept.
    """
    outlines = [piece.outline for piece in pieces]
    ways = [ways_of(piece, settings) for piece in pieces]
    draw = np.random.default_rng(settings.seed)
    order = sorted(range(len(pieces)), key=lambda i: -float(np.ptp(outlines[i][:, 0])))
    shortest = end_of(outlines, best)
    began = time.monotonic()
    while (spent := time.monotonic() - began) < seconds:
        try:
            progress(spent / seconds, "searching for a shorter piece of roll")
        except Cancelled:
            return best, True
        one, other = draw.choice(len(order), 2, replace=False).tolist()
        trial = list(order)
        trial[one], trial[other] = trial[other], trial[one]
        spots = _placed(outlines, ways, usable, settings.gap, trial, faults)
        if (end := end_of(outlines, spots)) <= shortest:
            best, shortest, order = spots, end, trial
    return best, False


def _placed(
    outlines: list[FloatArray],
    ways: list[tuple[Spot, ...]],
    usable: float,
    gap: float,
    order: list[int],
    faults: tuple[Rectangle, ...],
) -> list[Spot]:
    """Return the simple packing on a roll, where every piece finds room."""
    spots = place_bottom_left(outlines, ways, usable, gap, order, taken=faults)
    return [spot for spot in spots if spot is not None]
