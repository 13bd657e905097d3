"""What a drape asks of the cloth, as colours on the part: shear and stretch in steps."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.cloth.fabric import fabric_of
from laywright.cloth.lay import DrapedPly
from laywright.files.scale import Colour, Scale, stepped
from laywright.laminate.materials import Cloth
from laywright.surface.triangles import Surface

__all__ = ["MAPS", "ClothMap", "map_of"]

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
    def rows(self) -> tuple[tuple[Colour, str], ...]:
        """Colour and text of each step with its share of the area."""
        return self.scale.rows(self.values, self.surface.areas)


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
