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

from laywright.arrays import FloatArray
from laywright.cloth.cuts.darts import find_darts
from laywright.cloth.cuts.rings import ring_cuts
from laywright.cloth.cuts.room import SHIFTS, Room
from laywright.cloth.cuts.splices import find_splices
from laywright.cloth.cuts.trial import Ground, Trial
from laywright.progress import Progress, silent

__all__ = ["Proposed", "propose"]

# Our own choice, all of them.
_HELPS = 0.5  # of the bare cloth's trouble, that which cuts must leave to be proposed
_ABOUT = 1.25  # of the least trouble: what leaves no more counts as as good
_TILTS = tuple(math.radians(tilt) for tilt in (25.0, 40.0, 55.0))  # of rings, off the mean normal


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
    room = Room(ground, avoid, apart, progress)
    bare = ground.bare
    if bare.clear:
        return Proposed(bare, None)
    if known:
        moved = [path for path in map(room.shifted, known) if path is not None]
        again = room.attempt(moved) if len(moved) == len(known) else None
        if again is not None and again.clear:
            return Proposed(bare, again)
    darts = find_darts(room, bare)
    splices = find_splices(room, bare, darts.length if darts.clear else math.inf)
    found = [darts, splices]
    if not darts.clear and not splices.clear:
        found.append(_rings(room, bare))
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


def _rings(room: Room, bare: Trial) -> Trial:
    """Return the best rings found, with splices where they do not do."""
    options = [trial for tilt in _TILTS for trial in _ring(room, tilt)]
    better = [trial for trial in options if bare.laps or trial.trouble < bare.trouble]
    best = min(better, key=lambda t: (not t.clear, t.trouble), default=bare)
    return best if best.clear or best is bare else find_splices(room, best, math.inf)


def _ring(room: Room, tilt: float) -> list[Trial]:
    """Return the trial of rings at a tilt, moved as far as it takes to keep apart."""
    for step in SHIFTS:
        cuts = ring_cuts(room.ground, tilt, 1.35 * step * room.apart)
        if cuts and all(room.free(path) for path in cuts):
            trial = room.attempt(cuts)
            return [] if trial is None else [trial]
    return []
