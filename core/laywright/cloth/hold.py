"""What holds the cloth while it settles: the start point, threads laid straight, stuck points.

Each is a set of linear rows over the unknowns ``(u0, v0, u1, v1, ...)`` with a target; the
solver adds the squares of what they lack.  They are firm, not rigid: a thread that is laid
straight may still give by what the mesh cannot resolve.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.sparse import coo_matrix, csr_matrix

from laywright.arrays import Array, FloatArray, IntArray, Vector
from laywright.cloth.fabric import Start
from laywright.cloth.place import Place
from laywright.cloth.thread import Thread, lay_thread, neighbours
from laywright.surface.triangles import Surface

__all__ = ["Held", "Rows", "hold_points", "hold_start"]

_FIRM = 100.0
_ARROW = 0.1
_U, _V = 0, 1


@dataclass(frozen=True, eq=False)
class Held:
    """Points that already stick to the mould at known places of the cloth.

    Attributes
    ----------
    vertices : (k,) int
        Vertices of the surface, at least two.
    uv : (k, 2) float, mm
        Where they lie on the cloth, counted from the same zero.
    """

    vertices: IntArray
    uv: FloatArray


@dataclass(frozen=True, eq=False)
class Rows:
    """Rows by which the cloth is held.

    Attributes
    ----------
    matrix : (r, 2 n) sparse, 1/mm
        The rows.
    targets : (r,) float
        What they should come to.
    """

    matrix: csr_matrix
    targets: FloatArray


def hold_start(surface: Surface, place: Place, warp: Vector, start: Start) -> Rows:
    """Return the rows that hold the start point and what is laid straight from it.

    Parameters
    ----------
    surface : Surface
        The surface, mm.
    place : Place
        The start point, which becomes u = v = 0.
    warp : tuple of 3 float
        Unit direction of the warp along the surface there.
    start : Start
        `Start.POINT` holds the warp's mean direction over a tenth of the surface's size to
        both sides; the others hold threads over their whole length.
    """
    size = float(np.sqrt(surface.area))
    firm = float(np.sqrt(_FIRM)) / size
    corners = surface.triangles[place.triangle]
    weights = firm * np.array(place.weights)
    rows: list[tuple[Array, Array]] = [(2 * corners + _U, weights), (2 * corners + _V, weights)]
    across = neighbours(surface)
    ahead = np.array(warp)
    left = np.cross(place.normal(surface), ahead)
    reach = _ARROW * size if start is Start.POINT else np.inf

    def threads(direction: FloatArray) -> list[Thread]:
        both = (direction, -direction)
        laid = [lay_thread(surface, place, tuple(way.tolist()), reach, across) for way in both]
        return [thread for thread in laid if len(thread.share)]

    if start is Start.POINT:
        tips = [(2 * thread.ends[-1] + _V, _shares(thread)[-1]) for thread in threads(ahead)]
        signs = (1.0, -1.0)
        rows.append(
            (
                np.concatenate([where for where, _ in tips]),
                firm
                * np.concatenate([sign * s for sign, (_, s) in zip(signs, tips, strict=False)]),
            )
        )
    else:
        straight = [(thread, _V) for thread in threads(ahead)]
        if start is Start.CROSS:
            straight += [(thread, _U) for thread in threads(left)]
        for thread, which in straight:
            gaps = np.maximum(np.diff(thread.distance, prepend=0.0) / size, 1e-9)
            shares = (firm * np.sqrt(gaps))[:, None] * _shares(thread)
            rows += list(zip(2 * thread.ends + which, shares, strict=True))
    return Rows(_matrix(rows, 2 * len(surface.vertices)), np.zeros(len(rows)))


def hold_points(surface: Surface, held: Held) -> Rows:
    """Return the rows that hold points of the surface at given places of the cloth."""
    firm = float(np.sqrt(_FIRM / (surface.area * len(held.vertices))))
    unknowns = np.stack([2 * held.vertices + _U, 2 * held.vertices + _V], axis=1).ravel()
    rows = [(unknowns[i : i + 1], np.array([firm])) for i in range(len(unknowns))]
    return Rows(_matrix(rows, 2 * len(surface.vertices)), firm * np.asarray(held.uv).ravel())


def _shares(thread: Thread) -> FloatArray:
    shares: FloatArray = np.stack([1.0 - thread.share, thread.share], axis=1)
    return shares


def _matrix(rows: list[tuple[Array, Array]], width: int) -> csr_matrix:
    down = np.concatenate([np.full(len(where), row) for row, (where, _) in enumerate(rows)])
    across = np.concatenate([where for where, _ in rows])
    entries = np.concatenate([weights for _, weights in rows])
    return coo_matrix((entries, (down, across)), shape=(len(rows), width)).tocsr()
