"""The search for the best grid of cuts.

First comes the number of tiles: the fewest that fit the printer in an allowed pose and keep
every limit.  Among the grids with that number those without slivers come first, then the seams
are placed where they cost least (`laywright.mould.tiles.seams`), for one turn of the grid after the
other.
"""

from __future__ import annotations

import math
import time
from collections.abc import Iterator
from dataclasses import replace

import numpy as np

from laywright.arrays import FloatArray, Vector
from laywright.errors import Cancelled, LimitError
from laywright.mould.tiles.cut_ground import CutLimits, Ground, Line, ground_of
from laywright.mould.tiles.cut_line import SLIVER, line_of
from laywright.mould.tiles.cuts import CutPlan, count_along, rotations
from laywright.mould.tiles.slivers import narrow_ends, slivers
from laywright.mould.tiles.wishes import CutWishes, Stretch
from laywright.progress import Progress, part_of, silent
from laywright.surface.triangles import Surface

__all__ = ["plan_cuts"]

_STEP = math.radians(7.5)
_FINER = (0.5, 0.25)
_MOST_TILES = 400
_SKEW = 1.02  # a turned grid is taken only where it is 2 % cheaper; own choice, no source
_ROUNDS = 3
_NONE = CutWishes()

_Rank = tuple[int, int, float]
_Found = tuple[_Rank, CutPlan]


def plan_cuts(
    solid: Surface,
    working: Surface,
    trim_line: FloatArray,
    pull: Vector,
    limits: CutLimits,
    wishes: CutWishes = _NONE,
    seconds: float = 2.0,
    *,
    progress: Progress = silent,
) -> CutPlan:
    """Return the best grid.

    Parameters
    ----------
    solid : Surface
        The body, mm.
    working : Surface
        Its working surface, where seams cost.
    trim_line : (k, 3) float, mm
        The trim edge.
    pull : tuple of 3 float
        Unit pull.
    limits : CutLimits
        What every tile must keep.
    wishes : CutWishes
        The maker's.
    seconds : float
        The search ends with the best grid so far when the time is up, what it takes to look at
        the body included; a body of a few hundred thousand triangles is searched whole before
        that.
    progress : Progress
        Told how far the search is.  If it raises `laywright.errors.Cancelled` after a first
        grid was found, the search ends with the best one so far.

    Raises
    ------
    LimitError
        If tiles of the least size do not fit, or far too many are needed.
    """
    begun = time.monotonic()
    if min(limits.room) < limits.least_tile + limits.tongue:
        raise LimitError(
            "printer",
            f"room for {min(limits.room):.4g} mm",
            f"at least the least tile of {limits.least_tile + limits.tongue:.4g} mm",
            "choose a larger printer or allow smaller tiles",
        )
    ground = ground_of(solid, working, trim_line, pull, limits)
    if not wishes.fixes_turn:
        return _search(ground, wishes, begun + seconds, progress)
    first = part_of(progress, 0.0, 0.5)
    free = _search(ground, CutWishes(kept_whole=wishes.kept_whole), begun + seconds / 2.0, first)
    ground.lines.clear()
    plan = _search(ground, wishes, begun + seconds, part_of(progress, 0.5, 1.0))
    return replace(plan, free_count=math.prod(free.counts), free_cost=free.cost)


def _search(ground: Ground, wishes: CutWishes, end: float, progress: Progress) -> CutPlan:
    turns = [k * _STEP for k in range(12)]
    if wishes.fixes_turn:
        turns = [wishes.turn or 0.0]
    bounds = [ground.fewest(turn) for turn in turns]
    queue = sorted(range(len(turns)), key=lambda place: (bounds[place], place))
    if bounds[queue[0]] > _MOST_TILES:
        raise LimitError(
            "printer",
            f"{bounds[queue[0]]} tiles for this mould",
            f"at most {_MOST_TILES}",
            "choose a larger printer",
        )
    best: _Found | None = None
    try:
        for number, place in enumerate(queue):
            progress(number / len(queue), "placing the cuts")
            if best is not None and (bounds[place] > best[0][0] or time.monotonic() > end):
                break
            best = _better(best, _best_at(ground, wishes, turns[place]))
        for share in () if wishes.fixes_turn else _FINER:
            for side in (-1.0, 1.0):
                if best is None:
                    break
                turn = (best[1].turn + side * share * _STEP) % (math.pi / 2.0)
                if time.monotonic() < end and ground.fewest(turn) <= best[0][0]:
                    best = _better(best, _best_at(ground, wishes, turn))
    except Cancelled:
        if best is None:
            raise
        return replace(best[1], is_whole_search=False)
    if best is None:
        raise LimitError(
            "least tile",
            f"{ground.limits.least_tile:.4g} mm",
            _largest_least(ground, turns),
            "allow smaller tiles, choose another printer or move what bars the cuts",
        )
    return replace(best[1], is_whole_search=time.monotonic() <= end)


def _largest_least(ground: Ground, turns: list[float]) -> str:
    """Return which least tile the cuts could keep, in words."""
    limits = ground.limits
    largest = 0.0
    for turn in turns:
        for _, most, ear in _rooms(ground, turn):
            pieces = []
            for axis, (low, high) in enumerate(ground.extents(turn)):
                length, room = high - low + (2.0 * ear if axis < 2 else 0.0), float(most[axis])
                count = count_along(length, room, limits.tongue) if room > limits.tongue else 0
                pieces += [(high - low) / count if count else 0.0] if count != 1 else []
            largest = max(largest, min(pieces, default=math.inf))
    if largest < limits.least_tile:
        return f"at most {math.floor(10.0 * largest) / 10.0:.4g} mm"
    return f"cuts {limits.least_tile:.4g} mm apart beside what no cut may pass"


def _better(best: _Found | None, found: _Found | None) -> _Found | None:
    if best is None or (found is not None and found[0] < best[0]):
        return found
    return best


def _best_at(ground: Ground, wishes: CutWishes, turn: float) -> _Found | None:
    """Return the best grid at one turn, and by what it is compared."""
    best: tuple[int, float, FloatArray, list[Line], FloatArray, float] | None = None
    for rotation, most, ear in _rooms(ground, turn):
        found = [
            line_of(ground, wishes, turn, axis, float(most[axis]), ear if axis < 2 else 0.0)
            for axis in range(3)
        ]
        lines = [line for line in found if line is not None]
        if len(lines) < 3:
            continue
        number = math.prod(len(cuts) + 1 for cuts, _ in lines)
        cost = sum(cost for _, cost in lines)
        if best is None or (number, cost) < best[:2]:
            best = number, cost, rotation, lines, most, ear
    if best is None:
        return None
    _, _, rotation, lines, most, ear = best
    here = best_here = _ranked(ground, turn, rotation, lines)
    for axis in (0, 1) * _ROUNDS:
        if best_here[0][1] == 0:
            break
        avoided = _ends(ground, here[1], axis)
        other = line_of(ground, wishes, turn, axis, float(most[axis]), ear, avoided)
        if other is not None:
            lines = [other if place == axis else line for place, line in enumerate(lines)]
            here = _ranked(ground, turn, rotation, lines)
            best_here = min(best_here, here, key=_rank)
    return best_here


def _rank(found: _Found) -> _Rank:
    return found[0]


def _rooms(ground: Ground, turn: float) -> Iterator[tuple[FloatArray, FloatArray, float]]:
    """Yield the poses of the grid that differ in their room, that room, and that of the ears."""
    limits = ground.limits
    seen = set()
    for rotation in rotations(limits.pose):
        most = np.abs(rotation).T @ np.array(limits.room)
        if tuple(most) in seen:
            continue
        seen.add(tuple(most))
        ends = ground.extents(turn)
        fits = all(high - low <= room for (low, high), room in zip(ends, most, strict=True))
        yield rotation, most, 0.0 if fits else limits.ear


def _ranked(ground: Ground, turn: float, rotation: FloatArray, lines: list[Line]) -> _Found:
    """Return lines of cuts as a grid, and by what it is compared."""
    ends = ground.extents(turn)
    low, high = ([end[i] for end in ends] for i in (0, 1))
    cost = sum(cost for _, cost in lines)
    plan = CutPlan(
        ground.axes(turn) @ ground.frame,
        turn,
        (low[0], low[1], low[2]),
        (high[0], high[1], high[2]),
        (lines[0][0], lines[1][0], lines[2][0]),
        rotation,
        cost,
    )
    number = math.prod(plan.counts)
    thin = slivers(ground.foot, plan, ground.limits.least_tile) if number > 1 else 0
    thin += slivers(ground.trimmed, plan, SLIVER) if number > 1 else 0
    return (number, thin, cost * (_SKEW if turn else 1.0)), replace(plan, slivers=thin)


def _ends(ground: Ground, plan: CutPlan, axis: int) -> tuple[Stretch, ...]:
    """Return where a cut across an axis would leave a sliver of the foot or the working face."""
    return (
        *narrow_ends(ground.foot, plan, axis, ground.limits.least_tile),
        *narrow_ends(ground.trimmed, plan, axis, SLIVER),
    )
