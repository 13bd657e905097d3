"""The search for darts: for the worst spot a cut from the edge beside it, and deeper.

Where a cut to where the trouble starts does not do, deeper ones are tried; then the next spot.
At the end darts are left out or shortened where that does as well.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
import shapely.ops
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray, IntArray
from laywright.cloth.cuts.room import LEAST, Room
from laywright.cloth.cuts.trial import Trial
from laywright.cloth.drape.trouble import spots

__all__ = ["find_darts"]

# Our own choice, all of them: more trials find shorter cuts and take longer.
_MOST_DARTS = 8  # on one piece of cloth
_DEEPER = (1.0, 1.35, 1.8, 2.4, 3.2)  # lengths tried, over that from the edge to the trouble
_AS_BAD = 0.4  # of the worst spot's weight: spots above it get their darts together
_BETTER = 0.7  # of the trouble before, that which a further cut must leave at most
_BLUR = 2.5  # radius that a spot's worst place is sought with, in spacings of the mesh
_AROUND = 0.25  # radius of what one dart is aimed at, over the root of the face's area
_SHORTER = 0.8  # of a dart's length, tried once all is clear


def find_darts(room: Room, bare: Trial) -> Trial:
    """Return the best darts found, in addition to the cuts made already.

    Parameters
    ----------
    room : Room
        Where there is room for them.
    bare : Trial
        The cloth with the cuts made already.
    """
    best = bare
    most = len(bare.paths) + _MOST_DARTS
    while not best.clear and len(best.paths) < most and best.over.any():
        wanted = [_dart(room, best, spot) for spot in _worst(room, best)]
        further = _further(room, best, wanted, most) or _further(room, best, wanted[:1], most)
        if further is None:
            break
        best = further
    return _shortened(room, best, len(bare.paths))


def _worst(room: Room, trial: Trial) -> list[IntArray]:
    """Return the spots that are about as bad as the worst one."""
    found = spots(trial.cut.surface, trial.over)
    weights = [float(trial.over[spot] @ room.ground.surface.areas[spot]) for spot in found]
    return [
        spot for spot, weight in zip(found, weights, strict=True) if weight > _AS_BAD * weights[0]
    ]


def _dart(room: Room, trial: Trial, spot: IntArray) -> FloatArray:
    """Return a cut from the edge to where a spot starts: (2, 2) float, mm."""
    ground = room.ground
    spot, heart = _heart(room, trial, spot)
    deepest = ground.middles[spot[int(np.argmax(ground.depth[spot]))]]
    near = shapely.ops.nearest_points(room.rim, shapely.Point(heart))[0]
    mouth = shapely.get_coordinates(near)[0]
    toward = deepest - mouth
    least = LEAST * ground.spacing
    if np.linalg.norm(toward) < least:
        toward = ground.start_point - mouth
        toward = least * toward / max(float(np.linalg.norm(toward)), 1e-9)
    return np.stack([mouth, mouth + toward])


def _further(room: Room, before: Trial, wanted: Sequence[FloatArray], most: int) -> Trial | None:
    """Return the trial with further darts: the shortest that do, or that help most."""
    options: list[Trial] = []
    for factor in _DEEPER:
        paths = list(before.paths)
        for mouth, tip in wanted:
            dart = np.stack([mouth, mouth + factor * (tip - mouth)])
            path = room.shifted(dart, paths) if len(paths) < most else None
            paths += [] if path is None else [path]
        if len(paths) == len(before.paths):
            continue
        trial = room.attempt(paths)
        if trial is not None and trial.clear:
            return trial
        options += [] if trial is None else [trial]
    better = [trial for trial in options if trial.trouble < _BETTER * before.trouble]
    return max(
        better,
        key=lambda t: (before.trouble - t.trouble) / (t.length - before.length),
        default=None,
    )


def _heart(room: Room, trial: Trial, spot: IntArray) -> tuple[IntArray, FloatArray]:
    """Return the part of a spot around its worst place, and that place in the flat map."""
    ground = room.ground
    middles = ground.middles[spot]
    weight = trial.over[spot] * ground.surface.areas[spot]
    near = cKDTree(middles).query_ball_point(middles, _BLUR * ground.spacing)
    heart = middles[int(np.argmax([weight[members].sum() for members in near]))]
    close = np.linalg.norm(middles - heart, axis=1) < _AROUND * np.sqrt(ground.surface.area)
    return spot[close], heart


def _shortened(room: Room, best: Trial, fixed: int) -> Trial:
    """Return the trial with darts after the first `fixed` cuts left out or shortened."""
    if not best.clear:
        return best
    least = LEAST * room.ground.spacing
    kept = list(best.paths[:fixed])
    every = room.attempt([*kept, *(_scaled(path, least) for path in best.paths[fixed:])])
    if every is not None and every.clear:
        best = every
    for number in range(len(best.paths) - 1, fixed - 1, -1):
        rest = [path for k, path in enumerate(best.paths) if k != number]
        for option in (rest, [*rest, _scaled(best.paths[number], least)]):
            trial = room.attempt(option)
            if trial is not None and trial.clear and trial.length < best.length:
                best = trial
                break
    return best


def _scaled(path: FloatArray, least: float) -> FloatArray:
    """Return a dart a little shorter, but not shorter than can be meshed."""
    mouth, tip = path[0], path[-1]
    length = float(np.linalg.norm(tip - mouth))
    share = max(_SHORTER, min(1.0, least / length))
    return np.stack([mouth, mouth + share * (tip - mouth)])
