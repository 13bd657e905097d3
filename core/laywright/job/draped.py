"""What the drape says to the laminate: how every ply lies in every triangle of the part."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray, IntArray
from laywright.cloth.drape.strain import facet_axes, jacobians, strain_from
from laywright.cloth.patterns.pattern import PatternSet
from laywright.laminate.local import DrapedPlaces
from laywright.surface.triangles import Surface

__all__ = ["YarnDirections", "draped_places", "yarns_of"]

_UPRIGHT = 0.05


@dataclass(frozen=True, eq=False)
class YarnDirections:
    """The yarns of one ply in every triangle.

    Attributes
    ----------
    warp, weft : (m, 3) float
        Unit directions in space, in the plane of the triangle.
    cover : (m,) float
        Flat cloth per area of surface.
    """

    warp: FloatArray
    weft: FloatArray
    cover: FloatArray


def yarns_of(surface: Surface, uv: FloatArray) -> YarnDirections:
    """Return the yarns of a draped ply in every triangle.

    Parameters
    ----------
    surface : Surface
        The ply's own surface, mm.
    uv : (n, 2) float, mm
        Its drape.
    """
    x, y = facet_axes(surface)
    gradients = jacobians(surface, uv)
    u, v = gradients[:, 0], gradients[:, 1]
    # A warp yarn keeps v, a weft yarn keeps u.
    warp = v[:, 1:] * x - v[:, :1] * y
    weft = -u[:, 1:] * x + u[:, :1] * y
    return YarnDirections(_unit(warp), _unit(weft), strain_from(gradients).cover)


def draped_places(patterns: PatternSet) -> DrapedPlaces:
    """Return how every ply lies in every triangle, for `laywright.laminate.local`.

    Angles count from the datum arrow, laid into the plane of each triangle; where the arrow
    stands upright on it, from the first side of the triangle.  The places are the triangles of
    the first ply that covers the whole face; a ply with other triangles is read at its nearest
    ones, and covers no place beyond its end.
    """
    arrow = _arrow(patterns)
    places = patterns.main.surface
    warp: list[FloatArray] = []
    weft: list[FloatArray] = []
    cover: list[FloatArray] = []
    for ply in patterns.draped:
        yarns = yarns_of(ply.surface, ply.drape.uv)
        along = arrow - (ply.surface.normals @ arrow)[:, None] * ply.surface.normals
        upright = np.linalg.norm(along, axis=1) < _UPRIGHT
        along = _unit(np.where(upright[:, None], facet_axes(ply.surface)[0], along))
        left = np.cross(ply.surface.normals, along)
        at = _nearest(ply.surface, places)
        for found, angles in ((yarns.warp, warp), (yarns.weft, weft)):
            turn = np.arctan2(
                np.einsum("mi,mi->m", found, left), np.einsum("mi,mi->m", found, along)
            )
            angles.append(turn[at])
        share = 1.0 if ply.share is None else ply.share
        cover.append(yarns.cover[at] * share)
    return DrapedPlaces(
        np.stack(warp, axis=1),
        np.stack(weft, axis=1),
        np.stack(cover, axis=1),
        places.areas,
    )


def _nearest(surface: Surface, places: Surface) -> IntArray:
    """Return for each triangle of `places` the triangle of `surface` that lies nearest."""
    count = len(places.triangles)
    if np.array_equal(surface.triangles, places.triangles):
        return np.arange(count)
    middles = (part.vertices[part.triangles].mean(axis=1) for part in (surface, places))
    found: IntArray = cKDTree(next(middles)).query(next(middles))[1]
    return found


def _arrow(patterns: PatternSet) -> FloatArray:
    """Return the datum arrow in space, read back from a whole ply at its start point."""
    first = patterns.main
    surface, uv, own = first.surface, first.drape.uv, first.pieces[0].triangles
    middles = uv[surface.triangles[own]].mean(axis=1)
    at = int(own[np.argmin(np.einsum("mi,mi->m", middles, middles))])
    x, y = (axis[at] for axis in facet_axes(surface))
    number = next(n for n, ply in enumerate(patterns.draped, 1) if not ply.local)
    own_pattern = next(pattern for pattern in patterns.patterns if pattern.ply == number)
    direction = np.linalg.solve(jacobians(surface, uv)[at], own_pattern.datum_direction)
    arrow = direction[0] * x + direction[1] * y
    return np.asarray(arrow / np.linalg.norm(arrow))


def _unit(vectors: FloatArray) -> FloatArray:
    return np.asarray(vectors / np.linalg.norm(vectors, axis=1, keepdims=True))
