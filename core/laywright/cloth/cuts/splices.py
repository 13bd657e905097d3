"""The search for splices: lines from edge to edge through the worst spot, and its parts again."""

from __future__ import annotations

import numpy as np
import shapely

from laywright.arrays import FloatArray, line_length
from laywright.cloth.cuts.room import LEAST, SHIFTS, Room
from laywright.cloth.cuts.trial import Trial
from laywright.cloth.drape.strain import image_of
from laywright.cloth.drape.trouble import spots

__all__ = ["find_splices"]

# Our own choice: more trials find shorter cuts and take longer.
_MOST_SPLICES = 3  # one after the other
_BETTER = 0.7  # of the trouble before, that which a further splice must leave at most


def find_splices(room: Room, bare: Trial, shorter_than: float) -> Trial:
    """Return the best splices found, in addition to the cuts made already.

    Parameters
    ----------
    room : Room
        Where there is room for them.
    bare : Trial
        The cloth with the cuts made already.
    shorter_than : float, mm
        Length of all cuts that they must stay below.
    """
    best = bare
    for _ in range(_MOST_SPLICES if bare.over.any() else 0):
        options: list[Trial] = []
        for paths in _lines(room, best):
            if best.length + sum(line_length(path) for path in paths) >= shorter_than:
                break
            trial = room.attempt([*best.paths, *paths])
            if trial is not None and trial.clear:
                return trial
            options += [] if trial is None else [trial]
        better = [trial for trial in options if trial.trouble < _BETTER * best.trouble]
        if not better:
            break
        best = min(better, key=lambda trial: trial.trouble)
    return best


def _lines(room: Room, trial: Trial) -> list[list[FloatArray]]:
    """Return lines from edge to edge through the worst spot's piece, the shortest first."""
    ground = room.ground
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
            paths = _across(room, place, way, piece, reach)
            found += [] if paths is None else [paths]
    return sorted(found, key=lambda paths: sum(line_length(path) for path in paths))


def _across(
    room: Room, place: FloatArray, way: FloatArray, piece: shapely.Geometry, reach: float
) -> list[FloatArray] | None:
    """Return the line through a place, or beside it where that must be to keep apart."""
    beside = np.array([-way[1], way[0]])
    for step in SHIFTS:
        middle = place + 1.1 * step * room.apart * beside
        line = shapely.LineString([middle - reach * way, middle + reach * way])
        paths = [
            np.asarray(part.coords)
            for part in shapely.get_parts(line.intersection(piece))
            if isinstance(part, shapely.LineString) and part.length > LEAST * room.ground.spacing
        ]
        if paths and all(room.free(path) for path in paths):
            return paths
    return None
