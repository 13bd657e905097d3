"""A ply in pieces or with darts: every piece draped from a start of its own, as one drape."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray, Vector, floats, ints, unit_vector
from laywright.cloth.cutting import CutSurface
from laywright.cloth.datum import Datum, start_place
from laywright.cloth.drape import Drape, drape, joined
from laywright.cloth.fabric import Fabric, Start
from laywright.cloth.place import nearest_place
from laywright.cloth.solver import REST
from laywright.cloth.strain import facet_axes, image_of, jacobians
from laywright.progress import Progress, part_of, silent
from laywright.surface.triangles import Surface

__all__ = ["Piece", "PiecedDrape", "drape_pieces"]

_UPRIGHT = 0.3


@dataclass(frozen=True, eq=False)
class Piece:
    """A piece of a ply.

    Attributes
    ----------
    triangles : (k,) int
        Triangles of the ply's surface.
    datum : Datum
        Where it is laid first, and the arrow there.
    """

    triangles: IntArray
    datum: Datum


@dataclass(frozen=True, eq=False)
class PiecedDrape:
    """The drape of a cut ply.

    Attributes
    ----------
    drape : Drape
        On the cut surface; in every piece zero stands at the start of that piece.
    pieces : tuple of Piece
        The one with the datum first, then from large to small.
    """

    drape: Drape
    pieces: tuple[Piece, ...]


def drape_pieces(
    cut: CutSurface,
    fabric: Fabric,
    datum: Datum,
    angle: float,
    *,
    start: Start | None = None,
    rest: float = REST,
    progress: Progress = silent,
) -> PiecedDrape:
    """Drape every piece of a cut surface.

    The piece that the datum lies on starts there; the others start in their middle, with the
    datum arrow laid into the surface, or carried along the flat where it stands upright.

    Parameters
    ----------
    cut : CutSurface
        The ply's surface with its cuts opened.
    fabric : Fabric
        Stiffnesses of the cloth.
    datum : Datum
        Start point and arrow of the ply.
    angle : float, radians
        Angle of the warp from the arrow.
    start : Start or None
        What is laid straight first.
    rest : float
        As for `laywright.cloth.drape.drape`.
    progress : Progress
        Told how far it is.
    """
    surface = cut.surface
    home = surface.components[start_place(surface, datum).triangle]
    numbers = np.arange(int(surface.components.max()) + 1)
    areas = np.bincount(surface.components, weights=surface.areas)
    order = sorted(numbers.tolist(), key=lambda n: (n != home, -areas[n]))
    uv = np.zeros((len(surface.vertices), 2))
    pieces: list[Piece] = []
    drapes: list[Drape] = []
    for count, number in enumerate(order):
        mask = surface.components == number
        part = surface.part(mask)
        used = np.unique(surface.triangles[mask])
        own = datum if number == home else _own_datum(cut, part, datum)
        inner = part_of(progress, count / len(order), (count + 1) / len(order))
        found = drape(
            part, fabric, own, angle, start=start, first=cut.flat[used], rest=rest, progress=inner
        )
        uv[used] = found.uv
        pieces.append(Piece(ints(np.flatnonzero(mask), -1), own))
        drapes.append(found)
    every = np.concatenate([piece.triangles for piece in pieces])
    merged = joined(surface, fabric, drapes, every, floats(uv, -1, 2))
    return PiecedDrape(merged, tuple(pieces))


def _own_datum(cut: CutSurface, part: Surface, datum: Datum) -> Datum:
    """Return the start of a piece that the datum does not lie on."""
    place = nearest_place(part, (part.areas / part.area) @ part.centroids)
    normal = np.array(place.normal(part))
    arrow = np.array(unit_vector(datum.direction))
    along: FloatArray = arrow - (arrow @ normal) * normal
    x, y, z = place.point(part).tolist()
    if np.linalg.norm(along) < _UPRIGHT:
        along = _carried_arrow(cut, datum, (x, y, z))
    return Datum((x, y, z), unit_vector(along))


def _carried_arrow(cut: CutSurface, datum: Datum, to: Vector) -> FloatArray:
    """Return the direction at a point that runs in the flat map as the arrow does."""
    surface = cut.surface
    image = image_of(surface, cut.flat, datum.origin, datum.direction)
    at = nearest_place(surface, np.array(to)).triangle
    x, y = (axis[at] for axis in facet_axes(surface))
    share = np.linalg.solve(jacobians(surface, cut.flat)[at], image)
    arrow: FloatArray = share[0] * x + share[1] * y
    return arrow
