"""What a drape asks of the cloth, as colours on the part: shear and stretch in steps."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.cloth.drape.fabric import fabric_of
from laywright.cloth.patterns.pattern import Pattern
from laywright.cloth.plies.lay import DrapedPly
from laywright.files.scale import Ramp, Scale, round_step, stepped
from laywright.laminate.materials import Cloth
from laywright.surface.triangles import Surface

__all__ = ["MAPS", "ClothMap", "flat_surface", "map_of"]

MAPS = ("shear", "stretch along the warp", "stretch along the weft")

_SHEAR_STEPS = 5
_LEAST_SHEAR = 0.5  # degrees: five steps of 0.1
_LEAST_STRETCH = 0.3  # percent: three steps of 0.1


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
        Its steps: round limits that spread over what is found, and what the cloth bears.
    bears : float
        What the cloth bears, either way: its locking angle in degrees, or percent of stretch.
    """

    surface: Surface
    values: FloatArray
    scale: Scale
    bears: float

    def __post_init__(self) -> None:
        object.__setattr__(self, "values", floats(self.values, -1))

    @property
    def colours(self) -> FloatArray:
        """Colour of every triangle: (m, 3) float."""
        return self.scale.colours[self.scale.steps(self.values)]

    @property
    def contours(self) -> FloatArray:
        """Lines between the steps below what the cloth bears, as segments: (k, 2, 3) float, mm.

        Values are carried from triangles to points as means weighted by area.
        """
        return self._lines([limit for limit in self.scale.limits if abs(limit) < self.bears])

    @property
    def limit_lines(self) -> FloatArray:
        """Lines where the cloth takes all that it bears, as segments: (k, 2, 3) float, mm."""
        return self._lines([limit for limit in self.scale.limits if abs(limit) >= self.bears])

    @property
    def shares(self) -> tuple[float, ...]:
        """Share of the area that every step takes, 0 to 1."""
        return self.scale.shares(self.values, self.surface.areas)

    def on(self, surface: Surface) -> ClothMap:
        """Return the same map on other points of the same triangles."""
        return replace(self, surface=surface)

    def painted(self, ramp: Ramp) -> ClothMap:
        """Return the same map in the colours of a ramp."""
        return replace(self, scale=self.scale.painted(ramp))

    def _lines(self, limits: Sequence[float]) -> FloatArray:
        surface = self.surface
        corners = surface.triangles
        weights = np.repeat(surface.areas, 3)
        count = len(surface.vertices)
        share = np.bincount(corners.ravel(), weights=weights, minlength=count)
        sums = np.bincount(
            corners.ravel(), weights=weights * np.repeat(self.values, 3), minlength=count
        )
        smooth = sums / np.where(share > 0.0, share, 1.0)
        lines = [_level_line(surface, smooth, limit) for limit in limits]
        return floats(np.concatenate([np.zeros((0, 2, 3)), *lines]), -1, 2, 3)


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
    fabric, areas = fabric_of(cloth), ply.surface.areas
    if kind == MAPS[0]:
        shear = np.degrees(np.abs(ply.drape.shear))
        bears = round(math.degrees(fabric.locking_angle), 1)
        return ClothMap(ply.surface, shear, _shear_scale(_reach(shear, areas), bears), bears)
    along = kind == MAPS[1]
    stretch = 100.0 * (ply.drape.warp_stretch if along else ply.drape.weft_stretch)
    bears = 100.0 * (fabric.warp_limit if along else fabric.weft_limit)
    step = min(round_step(max(_reach(np.abs(stretch), areas), _LEAST_STRETCH), 3), 0.5 * bears)
    return ClothMap(ply.surface, stretch, stepped("%", (-bears, -step, step, bears)), bears)


def _shear_scale(reach: float, bears: float) -> Scale:
    """Return round steps up to what is found, and one limit where the cloth locks."""
    step = round_step(max(reach, _LEAST_SHEAR), _SHEAR_STEPS)
    count = max(1, math.ceil(reach / step - 1e-9))
    below = [round(step * number, 6) for number in range(1, count + 1)]
    return stepped("deg", (*(limit for limit in below if limit < bears), bears))


def _reach(values: FloatArray, areas: FloatArray) -> float:
    """Return the value that all but a two-hundredth of the area stays below."""
    order = np.argsort(values)
    passed = np.searchsorted(np.cumsum(areas[order]), 0.995 * areas.sum())
    return float(values[order[min(int(passed), len(order) - 1)]])
