"""A ply in pieces or with darts: every piece draped from a start of its own, as one drape."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray, Vector, floats, ints, unit_vector
from laywright.cloth.cuts.cutting import CutSurface
from laywright.cloth.drape.datum import Datum, start_place
from laywright.cloth.drape.drape import Drape, drape, joined
from laywright.cloth.drape.fabric import Fabric, Start
from laywright.cloth.drape.place import nearest_place
from laywright.cloth.drape.solver import REST
from laywright.cloth.drape.strain import facet_axes, image_of, jacobians
from laywright.progress import Progress, part_of, silent
from laywright.surface.triangles import Surface

__all__ = ["Piece", "PiecedDrape", "drape_apart", "drape_pieces", "own_datum"]

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
        As for `laywright.cloth.drape.drape.drape`.
    progress : Progress
        Told how far it is.
    """
    surface = cut.surface
    home = surface.components[start_place(surface, datum).triangle]
    numbers = np.arange(int(surface.components.max()) + 1)
    areas = np.bincount(surface.components, weights=surface.areas)
    order = sorted(numbers.tolist(), key=lambda n: (n != home, -areas[n]))
    starts = {
        n: datum
        if n == home
        else own_datum(surface, cut.flat, surface.part(surface.components == n), datum)
        for n in order
    }
    return drape_apart(
        surface, fabric, starts, angle, start=start, first=cut.flat, rest=rest, progress=progress
    )


def drape_apart(
    surface: Surface,
    fabric: Fabric,
    starts: Mapping[int, Datum],
    angle: float,
    *,
    start: Start | None = None,
    first: FloatArray | None = None,
    rest: float = REST,
    progress: Progress = silent,
) -> PiecedDrape:
    """Drape every connected piece of a surface from a start of its own.

    Parameters
    ----------
    surface : Surface
        mm.
    fabric : Fabric
        Stiffnesses of the cloth.
    starts : mapping of int to Datum
        Where each piece is laid first, by its number among the components.
    angle : float, radians
        Angle of the warp from the arrow.
    start : Start or None
        What is laid straight first.
    first : (n, 2) float, mm, optional
        A flat map to start from.
    rest : float
        As for `laywright.cloth.drape.drape.drape`.
    progress : Progress
        Told how far it is.
    """
    uv = np.zeros((len(surface.vertices), 2))
    pieces: list[Piece] = []
    drapes: list[Drape] = []
    for count, (number, own) in enumerate(starts.items()):
        mask = surface.components == number
        part = surface.part(mask)
        used = np.unique(surface.triangles[mask])
        inner = part_of(progress, count / len(starts), (count + 1) / len(starts))
        known = None if first is None else first[used]
        found = drape(part, fabric, own, angle, start=start, first=known, rest=rest, progress=inner)
        uv[used] = found.uv
        pieces.append(Piece(ints(np.flatnonzero(mask), -1), own))
        drapes.append(found)
    every = np.concatenate([piece.triangles for piece in pieces])
    merged = joined(surface, fabric, drapes, every, floats(uv, -1, 2))
    return PiecedDrape(merged, tuple(pieces))


def own_datum(
    surface: Surface,
    flat: FloatArray,
    part: Surface,
    datum: Datum,
    middle: FloatArray | None = None,
) -> Datum:
    """Return the start of a piece that the datum does not lie on.

    Parameters
    ----------
    surface : Surface
        Which the datum lies on, mm.
    flat : (n, 2) float, mm
        A flat map of it.
    part : Surface
        The piece.
    datum : Datum
    middle : (3,) float, mm, optional
        Where it starts; None takes the middle of its area.
    """
    if middle is None:
        middle = (part.areas / part.area) @ part.centroids
    place = nearest_place(part, middle)
    normal = np.array(place.normal(part))
    arrow = np.array(unit_vector(datum.direction))
    along: FloatArray = arrow - (arrow @ normal) * normal
    x, y, z = place.point(part).tolist()
    if np.linalg.norm(along) < _UPRIGHT:
        along = _carried_arrow(surface, flat, datum, (x, y, z))
    return Datum((x, y, z), unit_vector(along))


def _carried_arrow(surface: Surface, flat: FloatArray, datum: Datum, to: Vector) -> FloatArray:
    """Return the direction at a point that runs in the flat map as the arrow does."""
    image = image_of(surface, flat, datum.origin, datum.direction)
    at = nearest_place(surface, np.array(to)).triangle
    x, y = (axis[at] for axis in facet_axes(surface))
    share = np.linalg.solve(jacobians(surface, flat)[at], image)
    arrow: FloatArray = share[0] * x + share[1] * y
    return arrow
