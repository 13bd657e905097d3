"""Laying a ply that covers a part of the face only, on its own surface and from its own start."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray
from laywright.cloth.cuts.pieces import drape_apart, own_datum
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.fabric import Start, fabric_of
from laywright.cloth.drape.place import nearest_place
from laywright.cloth.plies.cover import Cover
from laywright.cloth.plies.draped_ply import DrapedPly
from laywright.cloth.plies.region import region_of
from laywright.laminate.extents import Round
from laywright.laminate.plies import Ply
from laywright.progress import Progress, silent
from laywright.surface.lines import away_from_lines
from laywright.surface.offset import offset
from laywright.surface.triangles import Surface

__all__ = ["lay_on_region"]

_DEEP = 0.8


def lay_on_region(
    number: int,
    ply: Ply,
    height: float | FloatArray,
    cover: Cover,
    flat: FloatArray,
    datum: Datum,
    start: Start | None = None,
    *,
    progress: Progress = silent,
) -> DrapedPly:
    """Lay a local ply.

    A round patch starts in its middle, any other piece at the datum if that lies on it, else in
    its middle too, or well inside it where its middle lies beside it; the datum arrow is carried
    there.

    Parameters
    ----------
    number : int
        Of the ply.
    ply : Ply
    height : float or (n,) float, mm
        Of its middle above every point of the whole face.
    cover : Cover
        Which plies lie where.
    flat : (n, 2) float, mm
        A flat map of the whole face.
    datum : Datum
    start : Start or None
        What the hand lays straight first.
    progress : Progress
        Told how far it is.
    """
    own = next(found for found in cover.local if found.ply == number)
    region = region_of(cover.mesh, cover.named, own)
    below = region.surface
    surface = offset(below, cover.carried(height, below.vertices))
    reach = float(np.sqrt(below.areas.mean()))
    origin = np.array(datum.origin)
    areas = np.bincount(below.components, weights=below.areas)
    starts: dict[int, Datum] = {}
    for piece in np.argsort(-areas, kind="stable").tolist():
        part = below.part(below.components == piece)
        near = nearest_place(part, origin).point(part)
        here = float(np.linalg.norm(near - origin)) <= reach and not isinstance(own.extent, Round)
        starts[piece] = (
            datum if here else own_datum(cover.mesh, flat, part, datum, _middle(part, datum))
        )
    laid = drape_apart(
        surface, fabric_of(ply.cloth), starts, ply.angle, start=start, progress=progress
    )
    share = cover.share(number, region.area)
    return DrapedPly(surface, laid.drape, laid.pieces, ends=region.ends, share=share)


def _middle(part: Surface, datum: Datum) -> FloatArray:
    """Return where a piece is laid first: its middle, or a place well inside it: (3,) mm."""
    edges = [np.stack([loop, np.roll(loop, -1)], axis=1) for loop in part.boundary_loops]
    lines = part.vertices[np.concatenate(edges)]
    middle: FloatArray = (part.areas / part.area) @ part.centroids
    inside = away_from_lines(part.vertices, lines)
    at = nearest_place(part, middle).point(part)
    if float(away_from_lines(at[None], lines)[0]) > 0.5 * _DEEP * inside.max():
        return middle
    deep = part.vertices[inside >= _DEEP * inside.max()]
    ahead = (deep - np.array(datum.origin)) @ np.array(datum.direction)
    found: FloatArray = deep[int(np.argmax(np.round(ahead, 3)))]
    return found
