"""How a tile stands on the bed.

Among the allowed poses that fit the printer and rest on a flat face, the working face comes
first: as little of it as possible hangs over.  Then layer lines that run along the pull, so
that the part slides out along them; then the least overhang anywhere.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

import numpy as np

from laywright.arrays import Array, FloatArray, Vector
from laywright.mould.tiles.cuts import PrintPose, rotations
from laywright.surface.triangles import Surface

__all__ = ["BedFace", "Standing", "stand"]

_STEEPEST = math.radians(45.0)  # from the vertical; common practice, no source
_LEVEL = 1e-3
_FLAT = 0.999
_BED_SHARE = 0.25
_TALLEST = 5.0
_MORE_OVERHANG = 0.03


class BedFace(Enum):
    """The face of a tile that lies on the bed."""

    BASE = "base down"
    SIDE = "side down"


@dataclass(frozen=True, eq=False)
class Standing:
    """A pose and what it means for the print.

    Attributes
    ----------
    rotation : (3, 3) float
        Turns the grid's axes to the printer's.
    bed_face : BedFace
        What lies on the bed.
    is_along_pull : bool
        Whether the layer lines on the working face run along the pull.
    bed_area : float, mm^2
        Flat area on the bed.
    overhang : float, mm^2
        Area that hangs over by more than 45 degrees from the vertical, the bed face left out
        (common practice, no source).
    unsupported_share : float
        Share of the tile's working face that hangs over by more than that.
    """

    rotation: FloatArray
    bed_face: BedFace
    is_along_pull: bool
    bed_area: float
    overhang: float
    unsupported_share: float


def stand(
    tile: Surface, on_face: Array, pose: PrintPose, room: Vector, scale: Vector
) -> Standing | None:
    """Return the best pose of a tile, or None if it fits in none.

    Parameters
    ----------
    tile : Surface
        The tile in the grid's axes, mm.
    on_face : (m,) bool
        Which of its triangles lie on the working face.
    pose : PrintPose
        Allowed poses.
    room : tuple of 3 float, mm
        What can be printed.
    scale : tuple of 3 float
        Print scale along the printer's axes.
    """
    low, high = tile.bounds
    size = high - low
    face_area = max(float(tile.areas[on_face].sum()), 1e-12)
    found: dict[tuple[int, ...], tuple[float, float, float]] = {}
    options = []
    for number, rotation in enumerate(rotations(pose)):
        extent = np.abs(rotation) @ size * np.array(scale)
        if (extent > np.array(room) + 1e-6).any():
            continue
        up = rotation[2]
        key = tuple(np.round(up).astype(int).tolist())
        if key not in found:
            found[key] = _measures(tile, on_face, up)
        bed, overhang, hanging = found[key]
        flat = bed >= _BED_SHARE * float(extent[0] * extent[1])
        steady = float(extent[2]) <= _TALLEST * min(float(extent[0]), float(extent[1]))
        along = abs(up[2]) < 0.5
        options.append((flat and steady, along, number, rotation, bed, overhang, hanging))
    if not options:
        return None
    usable = [option for option in options if option[0]] or options
    calm = min(option[5] for option in usable) + _MORE_OVERHANG * tile.area
    _, along, _, rotation, bed, overhang, hanging = min(
        usable,
        key=lambda option: (
            round(option[6] / face_area, 2),
            not (option[1] and option[5] <= calm),
            round(option[5]),
            option[2],
        ),
    )
    return Standing(
        rotation,
        BedFace.SIDE if along else BedFace.BASE,
        along,
        bed,
        overhang,
        hanging / face_area if on_face.any() else 0.0,
    )


def _measures(tile: Surface, on_face: Array, up: FloatArray) -> tuple[float, float, float]:
    """Return flat area on the bed, overhang, and overhang of the working face, mm^2."""
    rise = tile.normals @ up
    height = tile.vertices @ up
    bottom = (height < height.min() + _LEVEL)[tile.triangles].all(axis=1)
    hangs = (rise < -math.sin(math.pi / 2.0 - _STEEPEST)) & ~bottom
    bed = tile.areas[bottom & (rise < -_FLAT)].sum()
    return float(bed), float(tile.areas[hangs].sum()), float(tile.areas[hangs & on_face].sum())
