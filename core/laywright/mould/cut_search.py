"""The search for the best grid of cuts.

First comes the number of tiles: the fewest that fit the printer in an allowed pose and keep
every limit.  Among the grids with that number the seams are placed where they cost least
(`laywright.mould.seams`), for one turn of the grid after the other.
"""

from __future__ import annotations

import math
import time
from dataclasses import dataclass, field, replace

import numpy as np
import shapely
from scipy.spatial import ConvexHull

from laywright.arrays import FloatArray, Vector
from laywright.errors import Cancelled, LimitError
from laywright.mould.cuts import (
    CutPlan,
    PrintPose,
    count_along,
    fewest_counts,
    rotations,
    slivers,
    underside,
)
from laywright.mould.frame import upright
from laywright.mould.seam_cost import SeamCost
from laywright.mould.seams import place_seams
from laywright.mould.wishes import CutWishes, Stretch, barred, obstacles
from laywright.progress import Progress, part_of, silent
from laywright.surface.triangles import Surface

__all__ = ["CutLimits", "plan_cuts"]

_STEP = math.radians(7.5)
_FINER = (0.5, 0.25)
_PLACE_STEP = 1.0
_MOST_TILES = 400
_MORE_CUTS = 4
_SLIVER = 10.0
_SKEW = 1.02  # a turned grid is taken only where it is 2 % cheaper; own choice, no source
_SMOOTH = 0.05
_NONE = CutWishes()


@dataclass(frozen=True)
class CutLimits:
    """What every tile must keep.

    Attributes
    ----------
    room : tuple of 3 float, mm
        Largest tile along the printer's axes.
    least_tile : float, mm
        No cut leaves less than this along its axis.
    pose : PrintPose
        Allowed poses.
    tongue : float, mm
        How far tongues stand out of a tile into its neighbour.
    ear : float, mm
        How far ears stand out of the sides of the mould.
    wall : float, mm
        Material left between a cut and what no cut may pass through.
    """

    room: Vector
    least_tile: float
    pose: PrintPose = PrintPose.BASE_DOWN
    tongue: float = 0.0
    ear: float = 0.0
    wall: float = 2.5


@dataclass(frozen=True, eq=False)
class _Ground:
    """What the search asks of the body."""

    frame: FloatArray
    hull: FloatArray
    face: FloatArray
    cost: SeamCost
    foot: shapely.Geometry
    trimmed: shapely.Geometry
    things: list[FloatArray]
    limits: CutLimits
    memory: dict[tuple[float, int, float, float], tuple[tuple[float, ...], float] | None] = field(
        default_factory=dict
    )
    costs: dict[tuple[float, int], tuple[FloatArray, FloatArray]] = field(default_factory=dict)


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
        The search ends with the best grid so far when the time is up; a body of a few hundred
        thousand triangles is searched whole before that.
    progress : Progress
        Told how far the search is.  If it raises `laywright.errors.Cancelled` after a first
        grid was found, the search ends with the best one so far.

    Raises
    ------
    LimitError
        If tiles of the least size do not fit, or far too many are needed.
    """
    if min(limits.room) < limits.least_tile + limits.tongue:
        raise LimitError(
            "printer",
            f"room for {min(limits.room):.4g} mm",
            f"at least the least tile of {limits.least_tile + limits.tongue:.4g} mm",
            "choose a larger printer or allow smaller tiles",
        )
    ground = _ground(solid, working, trim_line, pull, limits)
    if not wishes.fixes_turn:
        return _search(ground, wishes, seconds, progress)
    free = _search(
        ground, CutWishes(kept_whole=wishes.kept_whole), seconds / 2.0, part_of(progress, 0.0, 0.5)
    )
    ground.memory.clear()
    plan = _search(ground, wishes, seconds / 2.0, part_of(progress, 0.5, 1.0))
    return replace(plan, free_count=math.prod(free.counts), free_cost=free.cost)


def _ground(
    solid: Surface, working: Surface, trim_line: FloatArray, pull: Vector, limits: CutLimits
) -> _Ground:
    frame = upright(pull)
    edges = [trim_line]
    if "filled hole" in solid.patch_names:
        filled = solid.patches == solid.patch_names.index("filled hole")
        edges.append(solid.vertices[np.unique(solid.triangles[filled])])
    outline = shapely.Polygon((trim_line @ frame.T)[:, :2]).buffer(0.0)
    return _Ground(
        frame,
        _hull(solid, frame),
        _hull(working, frame),
        SeamCost.of(working, np.concatenate(edges)),
        shapely.simplify(underside(solid, frame), _SMOOTH),
        shapely.simplify(outline, _SMOOTH),
        obstacles(solid),
        limits,
    )


def _hull(surface: Surface, frame: FloatArray) -> FloatArray:
    """Return points that reach as far as a surface at every turn about the pull: (k, 3)."""
    flat = surface.vertices @ frame.T
    around = flat[ConvexHull(flat[:, :2]).vertices] if len(flat) > 3 else flat
    ends = flat[[int(np.argmin(flat[:, 2])), int(np.argmax(flat[:, 2]))]]
    return np.concatenate([around, ends])


def _search(ground: _Ground, wishes: CutWishes, seconds: float, progress: Progress) -> CutPlan:
    end = time.monotonic() + seconds
    turns = [k * _STEP for k in range(12)]
    if wishes.fixes_turn:
        turns = [wishes.turn or 0.0]
    bounds = [_fewest(ground, turn) for turn in turns]
    queue = sorted(range(len(turns)), key=lambda place: (bounds[place], place))
    if bounds[queue[0]] > _MOST_TILES:
        raise LimitError(
            "printer",
            f"{bounds[queue[0]]} tiles for this mould",
            f"at most {_MOST_TILES}",
            "choose a larger printer",
        )
    best: tuple[tuple[int, int, float], CutPlan] | None = None
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
                if time.monotonic() < end and _fewest(ground, turn) <= best[0][0]:
                    best = _better(best, _best_at(ground, wishes, turn))
    except Cancelled:
        if best is None:
            raise
        return replace(best[1], is_whole_search=False)
    if best is None:
        raise LimitError(
            "least tile",
            f"{ground.limits.least_tile:.4g} mm",
            "a size that the cuts of this mould can keep",
            "allow smaller tiles, choose another printer or move what bars the cuts",
        )
    return replace(best[1], is_whole_search=time.monotonic() <= end)


def _better(
    best: tuple[tuple[int, int, float], CutPlan] | None,
    found: tuple[tuple[int, int, float], CutPlan] | None,
) -> tuple[tuple[int, int, float], CutPlan] | None:
    if best is None or (found is not None and found[0] < best[0]):
        return found
    return best


def _axes(ground: _Ground, turn: float) -> FloatArray:
    cos, sin = math.cos(turn), math.sin(turn)
    about = np.array([[cos, sin, 0.0], [-sin, cos, 0.0], [0.0, 0.0, 1.0]])
    return np.asarray(about, dtype=np.float64)


def _extent(points: FloatArray, axis: FloatArray) -> Stretch:
    along = points @ axis
    return float(along.min()), float(along.max())


def _fewest(ground: _Ground, turn: float) -> int:
    """Return a number of tiles that no grid of this turn can be below."""
    ends = [_extent(ground.hull, axis) for axis in _axes(ground, turn)]
    x, y, z = (high - low for low, high in ends)
    limits = ground.limits
    return math.prod(fewest_counts((x, y, z), limits.room, limits.pose, limits.tongue)[0])


def _best_at(
    ground: _Ground, wishes: CutWishes, turn: float
) -> tuple[tuple[int, int, float], CutPlan] | None:
    """Return the best grid at one turn, and by what it is compared."""
    axes = _axes(ground, turn)
    ends = [_extent(ground.hull, axis) for axis in axes]
    limits = ground.limits
    best: tuple[tuple[int, int, float], CutPlan] | None = None
    seen = set()
    for rotation in rotations(limits.pose):
        most = np.abs(rotation).T @ np.array(limits.room)
        if tuple(most) in seen:
            continue
        seen.add(tuple(most))
        fits = all(high - low <= room for (low, high), room in zip(ends, most, strict=True))
        ear = 0.0 if fits else limits.ear
        found = [
            _along(ground, wishes, turn, axis, float(most[axis]), ear if axis < 2 else 0.0)
            for axis in range(3)
        ]
        if any(line is None for line in found):
            continue
        lines = [line for line in found if line is not None]
        number = math.prod(len(cuts) + 1 for cuts, _ in lines)
        cost = sum(line[1] for line in lines)
        low, high = ([end[i] for end in ends] for i in (0, 1))
        plan = CutPlan(
            axes @ ground.frame,
            turn,
            (low[0], low[1], low[2]),
            (high[0], high[1], high[2]),
            (lines[0][0], lines[1][0], lines[2][0]),
            rotation,
            cost,
        )
        key = (number, 0, cost * (_SKEW if turn else 1.0))
        if best is None or key < best[0]:
            best = key, plan
    if best is None:
        return None
    plan = best[1]
    thin = slivers(ground.foot, plan, limits.least_tile) if best[0][0] > 1 else 0
    thin += slivers(ground.trimmed, plan, _SLIVER) if best[0][0] > 1 else 0
    return (best[0][0], thin, best[0][2]), replace(plan, slivers=thin)


def _along(
    ground: _Ground, wishes: CutWishes, turn: float, axis: int, most: float, ear: float
) -> tuple[tuple[float, ...], float] | None:
    key = (turn, axis, most, ear)
    if key not in ground.memory:
        ground.memory[key] = _line(ground, wishes, turn, axis, most, ear)
    return ground.memory[key]


def _line(
    ground: _Ground, wishes: CutWishes, turn: float, axis: int, most: float, ear: float
) -> tuple[tuple[float, ...], float] | None:
    """Return the cuts along one axis and their cost, or None if none keep the limits."""
    axes = _axes(ground, turn)
    low, high = _extent(ground.hull, axes[axis])
    pins = tuple(sorted(pin for pin in wishes.pinned[axis] if low < pin < high))
    limits = ground.limits
    bars = barred(ground.things, wishes, axes @ ground.frame, axis, limits.wall)
    _check_pins(pins, bars, axis)
    start, end = _extent(ground.face, axes[axis])
    rims = [(start, start + _SLIVER), (end - _SLIVER, end)]
    extent = (low - ear, high + ear)
    reach = limits.tongue
    if most <= reach:
        return None
    least = max(count_along(extent[1] - extent[0], most, reach) - 1, len(pins))
    for kept_free in ([*bars, *rims], bars):
        for count in range(least, least + _MORE_CUTS):
            shortest = limits.least_tile if count else 0.0
            places, costs = _candidates(
                ground, turn, axis, (low, high), count, (*pins, *sum(bars, ()))
            )
            clear = (places >= low + shortest - 1e-9) & (places <= high - shortest + 1e-9)
            for a, b in kept_free:
                clear &= (places <= a) | (places >= b)
            clear |= np.isin(places, pins)
            found = place_seams(
                places[clear],
                costs[clear],
                extent,
                count,
                most,
                shortest,
                pinned=pins,
                reach=reach if count else 0.0,
            )
            if found is not None:
                return found
    return None


def _check_pins(pins: tuple[float, ...], bars: list[Stretch], axis: int) -> None:
    for pin in pins:
        for low, high in bars:
            if low < pin < high:
                raise LimitError(
                    f"pinned cut along {'xyz'[axis]}",
                    f"{pin:.4g} mm, through what no cut may pass",
                    f"a place outside {low:.4g} to {high:.4g} mm",
                    "move the pinned cut",
                )


def _candidates(
    ground: _Ground,
    turn: float,
    axis: int,
    extent: Stretch,
    count: int,
    more: tuple[float, ...],
) -> tuple[FloatArray, FloatArray]:
    """Return candidate cuts and their costs: one every millimetre, the even ones, the named."""
    low, high = extent
    key = (turn, axis)
    if key not in ground.costs:
        middle = 0.5 * (low + high)
        reach = math.floor((high - low) / 2.0 / _PLACE_STEP)
        steps = middle + _PLACE_STEP * np.arange(-reach, reach + 1)
        way = _axes(ground, turn)[axis] @ ground.frame
        ground.costs[key] = (steps, ground.cost.along(way, steps))
    steps, costs = ground.costs[key]
    even = low + (high - low) * np.arange(1, count + 1) / (count + 1)
    every = np.unique(np.concatenate([steps, even, np.array(more, dtype=np.float64)]))
    every = every[(every > low) & (every < high)]
    return every, np.asarray(np.interp(every, steps, costs))
