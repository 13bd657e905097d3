"""What holds the cloth while it settles: the start point, threads laid straight, stuck points.

Each is a set of linear rows over the unknowns ``(u0, v0, u1, v1, ...)`` with a target; the
solver adds the squares of what they lack.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.sparse import coo_matrix, csr_matrix

from laywright.arrays import Array, FloatArray, IntArray, Vector, unit_vector
from laywright.cloth.drape.fabric import Start
from laywright.cloth.drape.place import Place
from laywright.cloth.drape.strain import smooth_facets
from laywright.cloth.drape.thread import Thread, lay_thread, neighbours
from laywright.surface.triangles import Surface

__all__ = ["ARROW", "FirstThreads", "Held", "Rows", "first_threads", "hold_points", "hold_start"]

ARROW = 0.1
"""Length to both sides of the start, as a share of the surface's size, over which the warp runs
along the arrow in the mean."""

_FIRM = 100.0
_SHORT = 1e-6
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


@dataclass(frozen=True, eq=False)
class FirstThreads:
    """The threads laid straight through the start point.

    Attributes
    ----------
    place : Place
        The start point.
    warp, weft : tuple of Thread
        From the start point to either side; fewer than two at the edge of the surface.
    """

    place: Place
    warp: tuple[Thread, ...]
    weft: tuple[Thread, ...]


def first_threads(
    surface: Surface, place: Place, warp: Vector, normals: FloatArray
) -> FirstThreads:
    """Lay the warp and the weft thread through a start point.

    Parameters
    ----------
    surface : Surface
        The surface, mm.
    place : Place
        The start point, which becomes u = v = 0.
    warp : tuple of 3 float
        Unit direction of the warp along the surface there.
    normals : (n, 3) float
        Normals of the smooth surface at the vertices.
    """
    across, smooth = neighbours(surface), smooth_facets(surface)
    ahead = np.array(warp)
    left = np.cross(place.value(surface, normals), ahead)
    both = []
    for direction in (ahead, left):
        ways = (unit_vector(direction), unit_vector(-direction))
        laid = (
            lay_thread(surface, place, way, across=across, normals=normals, smooth=smooth)
            for way in ways
        )
        both.append(tuple(thread for thread in laid if len(thread.share)))
    return FirstThreads(place, both[0], both[1])


def hold_start(surface: Surface, threads: FirstThreads, start: Start, shear: float) -> Rows:
    """Return the rows that hold the start point and what is laid straight from it.

    Parameters
    ----------
    surface : Surface
        The surface, mm.
    threads : FirstThreads
        The start point, which becomes u = v = 0, and the threads through it.
    start : Start
        How the first threads are laid.
    shear : float
        Shear stiffness of the cloth.

    Returns
    -------
    Rows

    Notes
    -----
    `Start.CROSS` holds both threads where they are laid.  Otherwise the warp's mean direction
    is held over a tenth of the surface's size to both sides of the start, and `Start.EASED`
    adds for both threads the mean square of their angle to the straight line, as stiff as the
    cloth's own shear: a thread gives way where it spares the whole cloth more shear than that.
    """
    size = float(np.sqrt(surface.area))
    firm = float(np.sqrt(_FIRM)) / size
    corners = surface.triangles[threads.place.triangle]
    weights = firm * np.array(threads.place.weights)
    rows: list[tuple[Array, Array]] = [(2 * corners + _U, weights), (2 * corners + _V, weights)]
    if start is not Start.CROSS and threads.warp:
        rows.append(_level(threads.warp, ARROW * size, firm))
    for laid, which in ((threads.warp, _V), (threads.weft, _U)):
        for thread in laid:
            if start is Start.CROSS:
                rows += _laid(thread, which, firm, size)
            elif start is Start.EASED:
                rows += _eased(thread, which, float(np.sqrt(shear / size)))
    return Rows(_matrix(rows, 2 * len(surface.vertices)), np.zeros(len(rows)))


def _level(threads: tuple[Thread, ...], reach: float, firm: float) -> tuple[Array, Array]:
    """Return the row by which the two tips of the arrow lie on one warp thread."""
    where, shares = [], []
    for thread, sign in zip(threads, (1.0, -1.0), strict=False):
        tip = min(int(np.searchsorted(thread.distance, reach)), len(thread.share) - 1)
        where.append(2 * thread.ends[tip] + _V)
        shares.append(sign * firm * _shares(thread)[tip])
    return np.concatenate(where), np.concatenate(shares)


def _laid(thread: Thread, which: int, firm: float, size: float) -> list[tuple[Array, Array]]:
    """Return rows by which a thread stays where it is laid."""
    gaps = np.maximum(np.diff(thread.distance, prepend=0.0) / size, _SHORT)
    shares = (firm * np.sqrt(gaps))[:, None] * _shares(thread)
    return list(zip(2 * thread.ends + which, shares, strict=True))


def _eased(thread: Thread, which: int, stiffness: float) -> list[tuple[Array, Array]]:
    """Return rows for the angle of a thread to the straight line between its crossings."""
    gaps = np.diff(thread.distance)
    shares = _shares(thread)
    return [
        (
            np.concatenate([2 * thread.ends[i] + which, 2 * thread.ends[i + 1] + which]),
            stiffness / np.sqrt(gaps[i]) * np.concatenate([-shares[i], shares[i + 1]]),
        )
        for i in np.flatnonzero(gaps > _SHORT * thread.distance[-1])
    ]


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
