"""What a drape asks of the cloth, as colours on the part: shear and stretch in steps."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.cloth.fabric import fabric_of
from laywright.cloth.lay import DrapedPly
from laywright.cloth.pattern import Pattern
from laywright.files.scale import Colour, Ramp, Scale, stepped
from laywright.laminate.materials import Cloth
from laywright.surface.triangles import Surface

__all__ = ["MAPS", "ClothMap", "flat_surface", "map_of"]

MAPS = ("shear", "stretch along the warp", "stretch along the weft")

_STRETCH = stepped("%", (-1.0, -0.1, 0.1, 1.0))


@dataclass(frozen=True, eq=False)
class ClothMap:
    """A map on the surface of a ply.

    Attributes
    ----------
    surface : Surface
        The surface, mm.
    values : (m,) float
        Shear in degrees, or stretch in percent, of every triangle.
    scale : Scale
        Its steps; the last limit of a shear map is the locking angle of the cloth.
    """

    surface: Surface
    values: FloatArray
    scale: Scale

    def __post_init__(self) -> None:
        object.__setattr__(self, "values", floats(self.values, -1))

    @property
    def colours(self) -> FloatArray:
        """Colour of every triangle: (m, 3) float."""
        return self.scale.colours[self.scale.steps(self.values)]

    @property
    def contours(self) -> FloatArray:
        """Lines between the steps, as segments: (k, 2, 3) float, mm.

        Values are carried from triangles to points as means weighted by area; in a shear map
        the innermost line around a spot past the last limit is where the cloth locks.
        """
        surface = self.surface
        corners = surface.triangles
        weights = np.repeat(surface.areas, 3)
        count = len(surface.vertices)
        share = np.bincount(corners.ravel(), weights=weights, minlength=count)
        sums = np.bincount(
            corners.ravel(), weights=weights * np.repeat(self.values, 3), minlength=count
        )
        smooth = sums / np.where(share > 0.0, share, 1.0)
        lines = [_level_line(surface, smooth, limit) for limit in self.scale.limits]
        return floats(np.concatenate(lines), -1, 2, 3)

    def on(self, surface: Surface) -> ClothMap:
        """Return the same map on other points of the same triangles."""
        return ClothMap(surface, self.values, self.scale)

    def painted(self, ramp: Ramp) -> ClothMap:
        """Return the same map in the colours of a ramp."""
        return ClothMap(self.surface, self.values, self.scale.painted(ramp))

    @property
    def rows(self) -> tuple[tuple[Colour, str], ...]:
        """Colour and text of each step with its share of the area."""
        return self.scale.rows(self.values, self.surface.areas)


def _level_line(surface: Surface, values: FloatArray, level: float) -> FloatArray:
    """Return where a field at the vertices takes a value, as segments: (k, 2, 3) float, mm."""
    above = values[surface.triangles] > level
    mixed = surface.triangles[above.any(axis=1) & ~above.all(axis=1)]
    ends = []
    for side in range(3):
        a, b = mixed[:, side], mixed[:, (side + 1) % 3]
        crossed = (values[a] > level) != (values[b] > level)
        step = np.where(crossed, values[b] - values[a], 1.0)
        share = np.where(crossed, (level - values[a]) / step, np.nan)[:, None]
        ends.append(surface.vertices[a] + share * (surface.vertices[b] - surface.vertices[a]))
    points = np.stack(ends, axis=1)  # two of three are numbers
    segments: FloatArray = points[~np.isnan(points).any(axis=2)].reshape(-1, 2, 3)
    return segments


def flat_surface(
    ply: DrapedPly, patterns: Sequence[Pattern], places: Sequence[tuple[float, float]]
) -> Surface:
    """Return the triangles of a ply as they lie on its flat patterns.

    Parameters
    ----------
    ply : DrapedPly
        The ply.
    patterns : sequence of Pattern
        One for each of its pieces, in their order.
    places : sequence of (float, float), mm
        Where the zero of each pattern lies.
    """
    flat = np.zeros_like(ply.surface.vertices)
    for piece, pattern, place in zip(ply.pieces, patterns, places, strict=True):
        used = np.unique(ply.surface.triangles[piece.triangles])
        flat[used, :2] = ply.drape.uv[used] + pattern.datum + np.asarray(place)
    return ply.surface.moved(flat)


def map_of(ply: DrapedPly, cloth: Cloth, kind: str) -> ClothMap:
    """Return a map of a draped ply.

    Parameters
    ----------
    ply : DrapedPly
        The ply on its surface.
    cloth : Cloth
        What it is cut from.
    kind : str
        One of `MAPS`.
    """
    if kind == MAPS[0]:
        locking = math.degrees(fabric_of(cloth).locking_angle)
        steps = tuple(round(locking * share, 1) for share in (0.25, 0.5, 0.75, 1.0))
        return ClothMap(ply.surface, np.degrees(np.abs(ply.drape.shear)), stepped("deg", steps))
    stretch = ply.drape.warp_stretch if kind == MAPS[1] else ply.drape.weft_stretch
    return ClothMap(ply.surface, 100.0 * stretch, _STRETCH)
