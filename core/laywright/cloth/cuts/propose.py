"""Proposals for cuts: the shortest found that bring shear and stretch below their limits.

First darts: for the worst spot a cut from the edge beside it to where the trouble starts, and
deeper where that does not do; then the next spot.  Where darts do not help, or where it takes
less cut length, splices: the face is parted from edge to edge through the worst spot, along or
across the yarns or on the bias, and its parts again.  Where neither does, rings: what faces one
way is cut out whole, and splices again.  Every trial is a drape on a coarse mesh.
The search is greedy: it finds good cuts, not always the very shortest.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
import shapely.ops
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray, IntArray, line_length
from laywright.cloth.cuts.rings import ring_cuts
from laywright.cloth.cuts.trial import Ground, Trial
from laywright.cloth.drape.strain import image_of
from laywright.cloth.drape.trouble import spots
from laywright.progress import Progress, silent

__all__ = ["Proposed", "line_distance", "propose"]

# Our own choice, all of them: more trials find shorter cuts and take longer.
_MOST_DARTS = 8  # on one piece of cloth
_MOST_SPLICES = 3  # one after the other
_DEEPER = (1.0, 1.35, 1.8, 2.4, 3.2)  # lengths tried, over that from the edge to the trouble
_SHIFTS = (0, 1, -1, 2, -2, 3, -3)  # to keep apart: steps a little over the distance wanted
_AS_BAD = 0.4  # of the worst spot's weight: spots above it get their darts together
_BETTER = 0.7  # of the trouble before, that which a further cut must leave at most
_HELPS = 0.5  # of the bare cloth's trouble, that which cuts must leave to be proposed
_BLUR = 2.5  # radius that a spot's worst place is sought with, in spacings of the mesh
_AROUND = 0.25  # radius of what one dart is aimed at, over the root of the face's area
_SHORTER = 0.8  # of a dart's length, tried once all is clear
_LEAST = 3.5  # shortest cut that can be meshed, in spacings of the mesh
_ABOUT = 1.25  # of the least trouble: what leaves no more counts as as good
_TILTS = (math.radians(25.0), math.radians(40.0), math.radians(55.0))  # of rings, off the mean normal


@dataclass(frozen=True, eq=False)
class Proposed:
    """What a search for cuts found.

    Attributes
    ----------
    bare : Trial
        The cloth without cuts.
    best : Trial or None
        With the proposed cuts; None where none are needed or none were found that help.  Where
        it is not `Trial.clear`, no cuts were found that bring all below the limits.
    """

    bare: Trial
    best: Trial | None


def propose(
    ground: Ground,
    avoid: Sequence[FloatArray] = (),
    apart: float = 0.0,
    known: Sequence[FloatArray] = (),
    *,
    progress: Progress = silent,
) -> Proposed:
    """Return the cuts that are proposed, with what they bring.

    Parameters
    ----------
    ground : Ground
        The cloth on a coarse mesh.
    avoid : sequence of (k, 3) float, mm
        Lines that cuts keep away from: cuts of plies near by, and refused ones.
    apart : float, mm
        By how much.
    known : sequence of (k, 2) float, mm
        Cuts that brought the same cloth below its limits on another ply, tried first.
    progress : Progress
        Called before every trial.

    Returns
    -------
    Proposed

    Raises
    ------
    GeometryError
        If the face cannot be covered at all.
    """
    search = _Search(ground, avoid, apart, progress)
    bare = ground.bare
    if bare.clear:
        return Proposed(bare, None)
    if known:
        moved = [path for path in map(search.shifted, known) if path is not None]
        again = ground.attempt(moved, progress) if len(moved) == len(known) else None
        if again is not None and again.clear:
            return Proposed(bare, again)
    darts = search.darts(bare)
    splices = search.splices(bare, darts.length if darts.clear else math.inf)
    found = [darts, splices]
    if not darts.clear and not splices.clear:
        found.append(search.rings(bare))
    best = _best(found)
    better = best.trouble < _HELPS * bare.trouble or (bare.laps and not best.laps)
    helps = bool(best.paths) and (best.clear or better)
    return Proposed(bare, best if helps else None)


def _best(found: Sequence[Trial]) -> Trial:
    """Return the shortest of those that are clear or, without any, of those about as good."""
    whole = [trial for trial in found if not trial.laps] or list(found)
    clear = [trial for trial in whole if trial.clear]
    least = min(trial.trouble for trial in whole)
    good = clear or [trial for trial in whole if trial.trouble <= _ABOUT * least]
    return min(good, key=lambda trial: trial.length)


def line_distance(one: FloatArray, other: FloatArray) -> float:
    """Return the smallest distance between points of two lines, mm."""
    return float(cKDTree(one).query(other)[0].min())


class _Search:
    def __init__(
        self, ground: Ground, avoid: Sequence[FloatArray], apart: float, progress: Progress
    ) -> None:
        self._ground = ground
        self._avoid = avoid
        self._apart = apart
        self._progress = progress
        self._rim = shapely.boundary(ground.region)

    def _attempt(self, paths: Sequence[FloatArray]) -> Trial | None:
        return self._ground.attempt(paths, self._progress)

    def _free(self, path: FloatArray, others: Sequence[FloatArray] = ()) -> bool:
        """Return whether a path keeps apart from what it must, and from others beside it."""
        line = self._ground.on_surface(path)
        beside = [*self._avoid, *(self._ground.on_surface(other) for other in others)]
        return all(line_distance(line, other) >= self._apart for other in beside)

    def shifted(self, path: FloatArray, others: Sequence[FloatArray] = ()) -> FloatArray | None:
        """Return a path, moved along the edge as far as it takes to keep apart."""
        mouth = shapely.Point(path[0])
        ring = min(shapely.get_parts(self._rim), key=mouth.distance)
        at = shapely.line_locate_point(ring, mouth)
        inside = self._ground.region.buffer(self._ground.spacing)
        for step in _SHIFTS:
            place = (at + 1.1 * step * self._apart) % ring.length
            moved = shapely.get_coordinates(shapely.line_interpolate_point(ring, place))[0]
            turned: FloatArray = path + (moved - path[0]) if step else path
            if inside.contains(shapely.LineString(turned)) and self._free(turned, others):
                return turned
        return None

    def darts(self, bare: Trial) -> Trial:
        """Return the best darts found, in addition to the cuts made already."""
        best = bare
        most = len(bare.paths) + _MOST_DARTS
        while not best.clear and len(best.paths) < most and best.over.any():
            wanted = [self._dart(best, spot) for spot in self._worst(best)]
            further = self._further(best, wanted, most) or self._further(best, wanted[:1], most)
            if further is None:
                break
            best = further
        return self._shortened(best, len(bare.paths))

    def rings(self, bare: Trial) -> Trial:
        """Return the best rings found, with splices where they do not do."""
        options = [trial for tilt in _TILTS for trial in self._ring(tilt)]
        better = [trial for trial in options if bare.laps or trial.trouble < bare.trouble]
        best = min(better, key=lambda t: (not t.clear, t.trouble), default=bare)
        return best if best.clear or best is bare else self.splices(best, math.inf)

    def _ring(self, tilt: float) -> list[Trial]:
        """Return the trial of rings at a tilt, moved as far as it takes to keep apart."""
        for step in _SHIFTS:
            cuts = ring_cuts(self._ground, tilt, 1.35 * step * self._apart)
            if cuts and all(self._free(path) for path in cuts):
                trial = self._attempt(cuts)
                return [] if trial is None else [trial]
        return []

    def _worst(self, trial: Trial) -> list[IntArray]:
        """Return the spots that are about as bad as the worst one."""
        found = spots(trial.cut.surface, trial.over)
        weights = [float(trial.over[spot] @ self._ground.surface.areas[spot]) for spot in found]
        return [
            spot
            for spot, weight in zip(found, weights, strict=True)
            if weight > _AS_BAD * weights[0]
        ]

    def _dart(self, trial: Trial, spot: IntArray) -> FloatArray:
        """Return a cut from the edge to where a spot starts: (2, 2) float, mm."""
        ground = self._ground
        spot, heart = self._heart(trial, spot)
        deepest = ground.middles[spot[int(np.argmax(ground.depth[spot]))]]
        near = shapely.ops.nearest_points(self._rim, shapely.Point(heart))[0]
        mouth = shapely.get_coordinates(near)[0]
        toward = deepest - mouth
        least = _LEAST * ground.spacing
        if np.linalg.norm(toward) < least:
            toward = ground.start_point - mouth
            toward = least * toward / max(float(np.linalg.norm(toward)), 1e-9)
        return np.stack([mouth, mouth + toward])

    def _further(self, before: Trial, wanted: Sequence[FloatArray], most: int) -> Trial | None:
        """Return the trial with further darts: the shortest that do, or that help most."""
        options: list[Trial] = []
        for factor in _DEEPER:
            paths = list(before.paths)
            for mouth, tip in wanted:
                dart = np.stack([mouth, mouth + factor * (tip - mouth)])
                path = self.shifted(dart, paths) if len(paths) < most else None
                paths += [] if path is None else [path]
            if len(paths) == len(before.paths):
                continue
            trial = self._attempt(paths)
            if trial is not None and trial.clear:
                return trial
            options += [] if trial is None else [trial]
        better = [trial for trial in options if trial.trouble < _BETTER * before.trouble]
        return max(
            better,
            key=lambda t: (before.trouble - t.trouble) / (t.length - before.length),
            default=None,
        )

    def _heart(self, trial: Trial, spot: IntArray) -> tuple[IntArray, FloatArray]:
        """Return the part of a spot around its worst place, and that place in the flat map."""
        ground = self._ground
        middles = ground.middles[spot]
        weight = trial.over[spot] * ground.surface.areas[spot]
        near = cKDTree(middles).query_ball_point(middles, _BLUR * ground.spacing)
        heart = middles[int(np.argmax([weight[members].sum() for members in near]))]
        close = np.linalg.norm(middles - heart, axis=1) < _AROUND * np.sqrt(ground.surface.area)
        return spot[close], heart

    def _shortened(self, best: Trial, fixed: int) -> Trial:
        """Return the trial with darts after the first `fixed` cuts left out or shortened."""
        if not best.clear:
            return best
        least = _LEAST * self._ground.spacing
        kept = list(best.paths[:fixed])
        every = self._attempt([*kept, *(_scaled(path, least) for path in best.paths[fixed:])])
        if every is not None and every.clear:
            best = every
        for number in range(len(best.paths) - 1, fixed - 1, -1):
            rest = [path for k, path in enumerate(best.paths) if k != number]
            for option in (rest, [*rest, _scaled(best.paths[number], least)]):
                trial = self._attempt(option)
                if trial is not None and trial.clear and trial.length < best.length:
                    best = trial
                    break
        return best

    def splices(self, bare: Trial, shorter_than: float) -> Trial:
        """Return the best splices found."""
        best = bare
        for _ in range(_MOST_SPLICES if bare.over.any() else 0):
            options: list[Trial] = []
            for paths in self._lines(best):
                if best.length + sum(line_length(path) for path in paths) >= shorter_than:
                    break
                trial = self._attempt([*best.paths, *paths])
                if trial is not None and trial.clear:
                    return trial
                options += [] if trial is None else [trial]
            better = [trial for trial in options if trial.trouble < _BETTER * best.trouble]
            if not better:
                break
            best = min(better, key=lambda trial: trial.trouble)
        return best

    def _lines(self, trial: Trial) -> list[list[FloatArray]]:
        """Return lines from edge to edge through the worst spot's piece, the shortest first."""
        ground = self._ground
        spot = spots(trial.cut.surface, trial.over)[0]
        number = trial.cut.surface.components[spot[0]]
        mine = trial.cut.surface.components == number
        weight = np.where(mine, trial.over * ground.surface.areas, 0.0)
        places = [weight @ ground.middles / weight.sum()]
        areas = np.where(mine, ground.surface.areas, 0.0)
        places.append(areas @ ground.middles / areas.sum())
        piece = shapely.union_all(
            shapely.polygons(ground.flat[ground.surface.triangles[mine]]), grid_size=None
        )
        warp = image_of(ground.surface, ground.flat, ground.datum.origin, ground.datum.direction)
        reach = 2.0 * float(np.ptp(ground.flat, axis=0).max())
        found = []
        for place in places:
            for turn in np.arange(4) * np.pi / 4.0 + ground.angle:
                cosine, sine = np.cos(turn), np.sin(turn)
                way = np.array([[cosine, -sine], [sine, cosine]]) @ warp
                paths = self._across(place, way, piece, reach)
                found += [] if paths is None else [paths]
        return sorted(found, key=lambda paths: sum(line_length(path) for path in paths))

    def _across(
        self, place: FloatArray, way: FloatArray, piece: shapely.Geometry, reach: float
    ) -> list[FloatArray] | None:
        """Return the line through a place, or beside it where that must be to keep apart."""
        beside = np.array([-way[1], way[0]])
        for step in _SHIFTS:
            middle = place + 1.1 * step * self._apart * beside
            line = shapely.LineString([middle - reach * way, middle + reach * way])
            paths = [
                np.asarray(part.coords)
                for part in shapely.get_parts(line.intersection(piece))
                if isinstance(part, shapely.LineString)
                and part.length > _LEAST * self._ground.spacing
            ]
            if paths and all(self._free(path) for path in paths):
                return paths
        return None


def _scaled(path: FloatArray, least: float) -> FloatArray:
    """Return a dart a little shorter, but not shorter than can be meshed."""
    mouth, tip = path[0], path[-1]
    length = float(np.linalg.norm(tip - mouth))
    share = max(_SHORTER, min(1.0, least / length))
    return np.stack([mouth, mouth + share * (tip - mouth)])
