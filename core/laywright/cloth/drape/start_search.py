"""Where and along which direction a layup is laid first so that its cloth shears least.

Tried on a coarse mesh: first the datum arrow through the middle of the face in steps of 15
degrees, then start points half way to the edge on all sides, and again around the best of them.
A start that is not clearly better than the middle of the face, along it, is not taken.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

import numpy as np

from laywright.arrays import FloatArray, Vector
from laywright.cloth.drape.datum import Datum, default_datum, start_place, warp_direction
from laywright.cloth.drape.drape import drape
from laywright.cloth.drape.even_mesh import even_mesh, spacing_for
from laywright.cloth.drape.fabric import Fabric, Start
from laywright.cloth.drape.flatten import flatten
from laywright.cloth.drape.kin import Kin
from laywright.progress import Progress, silent
from laywright.surface.triangles import Surface

__all__ = ["FindStart", "FoundStart", "find_start"]

_COARSE = 600
_ROUGHLY = 2e-4
_TURNS = tuple(math.radians(angle) for angle in (-75, -60, -45, -30, -15, 15, 30, 45, 60, 75, 90))
_SIDES = 8
_HALF = 0.5
_CLEARLY = (0.97, math.radians(0.2))


class FindStart(Enum):
    """Where the datum comes from when nobody sets it."""

    MIDDLE = "middle of the face, along it"
    LEAST_SHEAR = "where the cloth shears least"


@dataclass(frozen=True)
class FoundStart:
    """What a search for a start found.

    Attributes
    ----------
    datum : Datum
        Start point and arrow.
    shear : float, radians
        Largest shear of any ply with it, on the coarse mesh.
    usual_shear : float, radians
        The same for the middle of the face, along it.
    """

    datum: Datum
    shear: float
    usual_shear: float


def find_start(
    surface: Surface,
    plies: Sequence[tuple[Fabric, float]],
    start: Start | None = None,
    *,
    progress: Progress = silent,
) -> FoundStart:
    """Return the start at which the plies shear least.

    Parameters
    ----------
    surface : Surface
        The working surface, one piece with an open edge, mm.
    plies : sequence of (Fabric, float)
        Cloth and angle (radians) of each ply; equal ones are tried once.
    start : Start or None
        What the hand lays straight first.
    progress : Progress
        Told how far it is.
    """
    coarse = even_mesh(surface, spacing_for(surface, _COARSE))
    flat = flatten(coarse)
    usual = default_datum(surface)
    kin = Kin()
    tried = 0
    total = 1 + len(_TURNS) + 2 * _SIDES

    def shear(datum: Datum) -> float:
        nonlocal tried
        progress(tried / total, "looking for the best start")
        tried += 1
        return max(
            drape(
                coarse, fabric, datum, angle, start=start, first=flat, rest=_ROUGHLY, kin=kin
            ).largest_shear
            for fabric, angle in dict.fromkeys(plies)
        )

    usual_shear = shear(usual)
    best = (usual_shear, usual)
    for turn in _TURNS:
        datum = Datum(usual.origin, warp_direction(coarse, usual, turn))
        best = min(best, (shear(datum), datum), key=lambda pair: pair[0])
    reach = _HALF
    for _ in range(2):
        around = _around(coarse, flat, best[1], reach)
        pairs = [(shear(datum), datum) for datum in around]
        best = min([best, *pairs], key=lambda pair: pair[0])
        reach *= _HALF
    progress(1.0)
    clearly = min(_CLEARLY[0] * usual_shear, usual_shear - _CLEARLY[1])
    if best[0] > clearly:
        return FoundStart(usual, usual_shear, usual_shear)
    return FoundStart(best[1], best[0], usual_shear)


def _around(surface: Surface, flat: FloatArray, datum: Datum, share: float) -> list[Datum]:
    """Return starts on all sides of a datum, at a share of the way to the edge."""
    origin = start_place(surface, datum).value(surface, flat)
    rim = flat[surface.boundary_loops[0]] - origin
    turns = np.arctan2(rim[:, 1], rim[:, 0])
    middles = flat[surface.triangles].mean(axis=1)
    found = []
    for turn in 2.0 * np.pi * np.arange(_SIDES) / _SIDES:
        off = np.abs(np.angle(np.exp(1j * (turns - turn))))
        place = origin + share * rim[int(np.argmin(off))]
        triangle = int(np.argmin(np.linalg.norm(middles - place, axis=1)))
        x, y, z = surface.centroids[triangle].tolist()
        found.append(Datum((x, y, z), _laid(surface, triangle, datum.direction)))
    return found


def _laid(surface: Surface, triangle: int, direction: Vector) -> Vector:
    """Return a direction laid into a triangle; its first side where it stands upright on it."""
    normal = surface.normals[triangle]
    arrow = np.asarray(direction)
    along = arrow - (arrow @ normal) * normal
    if np.linalg.norm(along) < 0.1:
        along = surface.corners[triangle, 1] - surface.corners[triangle, 0]
    x, y, z = (along / np.linalg.norm(along)).tolist()
    return x, y, z
