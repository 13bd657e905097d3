"""Where cuts have room: inside the face, and apart from the cuts of plies near by."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import shapely
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray
from laywright.cloth.cuts.trial import Ground, Trial
from laywright.progress import Progress, silent

__all__ = ["LEAST", "SHIFTS", "Room", "line_distance"]

LEAST = 3.5
"""Shortest cut that can be meshed, in spacings of the mesh; our own choice."""

SHIFTS = (0, 1, -1, 2, -2, 3, -3)
"""Steps a little over the distance wanted by which cuts are moved to keep apart; our own choice."""


def line_distance(one: FloatArray, other: FloatArray) -> float:
    """Return the smallest distance between points of two lines, mm."""
    return float(cKDTree(one).query(other)[0].min())


@dataclass(frozen=True, eq=False)
class Room:
    """The face on which cuts are tried, and what they keep away from.

    Attributes
    ----------
    ground : Ground
        The cloth on a coarse mesh.
    avoid : sequence of (k, 3) float, mm
        Lines that cuts keep away from.
    apart : float, mm
        By how much.
    progress : Progress
        Called before every trial.
    """

    ground: Ground
    avoid: Sequence[FloatArray] = ()
    apart: float = 0.0
    progress: Progress = silent

    @cached_property
    def rim(self) -> shapely.Geometry:
        """The edge of the face in the flat map."""
        return shapely.boundary(self.ground.region)

    def attempt(self, paths: Sequence[FloatArray]) -> Trial | None:
        """Return what cuts bring, or None where they cannot be made."""
        return self.ground.attempt(paths, self.progress)

    def free(self, path: FloatArray, others: Sequence[FloatArray] = ()) -> bool:
        """Return whether a path keeps apart from what it must, and from others beside it."""
        line = self.ground.on_surface(path)
        beside = [*self.avoid, *(self.ground.on_surface(other) for other in others)]
        return all(line_distance(line, other) >= self.apart for other in beside)

    def shifted(self, path: FloatArray, others: Sequence[FloatArray] = ()) -> FloatArray | None:
        """Return a path, moved along the edge as far as it takes to keep apart."""
        mouth = shapely.Point(path[0])
        ring = min(shapely.get_parts(self.rim), key=mouth.distance)
        at = shapely.line_locate_point(ring, mouth)
        inside = self.ground.region.buffer(self.ground.spacing)
        for step in SHIFTS:
            place = (at + 1.1 * step * self.apart) % ring.length
            moved = shapely.get_coordinates(shapely.line_interpolate_point(ring, place))[0]
            turned: FloatArray = path + (moved - path[0]) if step else path
            if inside.contains(shapely.LineString(turned)) and self.free(turned, others):
                return turned
        return None
