"""A first flat map of a surface: a shadow or as conformal as it gets, then as rigid as it gets.

It only has to be a good start for the drape and must turn no triangle over.  Holes do no harm:
they are left open.  Where all of the surface faces one side, its shadow on a plane is the start.
Elsewhere it is the map with the least conformal energy (P. Mullen, Y. Tong, P. Alliez,
M. Desbrun, Spectral conformal parameterization, 2008) or, where that turns a triangle over, the
map onto a disk with positive weights, which never does (W. T. Tutte, 1963; M. Floater, 1997).
From there a few rounds bring lengths closer (see `laywright.cloth.drape.rigid`).
"""

from __future__ import annotations

import numpy as np
from scipy.sparse import coo_matrix, csc_matrix, diags
from scipy.sparse.linalg import splu

from laywright.arrays import FloatArray, IntArray
from laywright.cloth.drape.rigid import Rigid
from laywright.cloth.drape.strain import facet_gradients, turned_over
from laywright.errors import GeometryError
from laywright.progress import Progress, silent
from laywright.surface.triangles import Surface

__all__ = ["ROUGHLY", "check_disk", "conformal_map", "disk_map", "flatten"]

ROUGHLY = 1e-3
"""Rest of a map that only something else starts from."""

_MOST = 40
_STILL = 1e-11
_FACING = 0.25
_ROUNDS = 100
_TINY = 1e-12


def check_disk(surface: Surface) -> None:
    """Check that a surface can be laid flat in one piece; holes are allowed.

    Raises
    ------
    GeometryError
        If it is empty, has loose points, is in several pieces, closed, or has a handle (a
        tunnel through it).
    """
    name = ", ".join(surface.patch_names)
    if len(surface.triangles) == 0 or surface.area <= 0.0:
        raise GeometryError(name, "no triangles", "a face with area", "pick a face")
    loose = len(surface.vertices) - len(np.unique(surface.triangles))
    if loose:
        raise GeometryError(
            name,
            f"{loose} points that belong to no triangle",
            "points that are corners of triangles",
            "repair the mesh",
        )
    pieces = int(surface.components.max()) + 1
    if pieces > 1:
        raise GeometryError(
            name,
            f"{pieces} pieces that do not hang together along an edge",
            "one connected piece",
            "make a ply for each piece",
        )
    loops = len(surface.boundary_loops)
    if loops == 0:
        raise GeometryError(
            name,
            "a surface that closes on itself",
            "a surface with an open edge",
            "pick fewer faces",
        )
    if surface.euler_characteristic != 2 - loops:
        raise GeometryError(
            name,
            "a surface with a tunnel through it",
            "a surface that lies flat apart from holes",
            "split it into two Moulded Faces",
        )


def flatten(
    surface: Surface,
    *,
    rest: float = 1e-11,
    rigid: Rigid | None = None,
    progress: Progress = silent,
) -> FloatArray:
    """Return a flat map of a surface that turns no triangle over.

    Parameters
    ----------
    surface : Surface
        One piece with an open edge, holes allowed, no triangles without area.
    rest : float
        Share of the surface's size by which a point still moves at the end.
    rigid : Rigid, optional
        Of this surface, to save time.
    progress : Progress
        Told how far it is.

    Returns
    -------
    (n, 2) float, mm
        Flat coordinates, in the mean at true scale, seen from the side of the normals.

    Raises
    ------
    GeometryError
        See `check_disk`.
    """
    check_disk(surface)
    progress(0.0, "a first flat map")
    start = _shadow(surface)
    if start is None:
        start = conformal_map(surface)
        if turned_over(surface, start):
            start = disk_map(surface)
    progress(0.5)
    least = rest * float(np.sqrt(surface.area))
    return (rigid or Rigid(surface)).nearer(start, _ROUNDS, least).place.reshape(-1, 2)


def _shadow(surface: Surface) -> FloatArray | None:
    """Return the surface seen against its mean normal, or None where it is too steep for that."""
    mean = surface.areas @ surface.normals / surface.area
    mean = mean / (float(np.linalg.norm(mean)) + _TINY)
    if float((surface.normals @ mean).min()) < _FACING:
        return None
    aside = np.eye(3)[int(np.abs(mean).argmin())]
    x = np.cross(aside, mean)
    x = x / np.linalg.norm(x)
    shadow: FloatArray = surface.vertices @ np.stack([x, np.cross(mean, x)], axis=1)
    return shadow


def conformal_map(surface: Surface) -> FloatArray:
    """Return the map of least conformal energy at the mean scale 1: (n, 2) float, mm."""
    count = len(surface.vertices)
    stiffness = _stiffness(surface)
    energy = _interleaved(stiffness) - _signed_area(surface)
    edge = np.unique(np.concatenate(surface.boundary_loops))
    mass = np.zeros(2 * count)
    mass[2 * edge] = mass[2 * edge + 1] = 1.0
    shift = 1e-6 * float(energy.diagonal().mean())
    factors = _factor((energy + shift * diags(mass)).tocsc())
    spread = surface.vertices - surface.vertices.mean(axis=0)
    axes = np.linalg.svd(spread, full_matrices=False)[2][:2]
    uv = spread @ axes.T
    before = np.zeros(len(edge), dtype=complex)
    for _ in range(_MOST):
        uv = factors.solve(mass * uv.ravel()).reshape(-1, 2)
        uv = (uv - uv[edge].mean(axis=0)) / np.linalg.norm(uv[edge] - uv[edge].mean(axis=0))
        rim = uv[edge] @ np.array([1.0, 1j])
        if np.linalg.norm(rim - np.vdot(before, rim) * before) < _STILL:
            break
        before = rim
    return _scaled(surface, uv)


def disk_map(surface: Surface) -> FloatArray:
    """Return a map onto a disk, the outer edge on its rim, holes closed by a point each.

    It turns no triangle over, whatever the surface, but bends lengths a lot.
    """
    outer, *holes = surface.boundary_loops
    count = len(surface.vertices)
    first = surface.edges.ends[:, 0]
    second = surface.edges.ends[:, 1]
    for number, hole in enumerate(holes):
        first = np.concatenate([first, hole])
        second = np.concatenate([second, np.full(len(hole), count + number)])
    size = count + len(holes)
    one = np.ones(len(first))
    graph = coo_matrix((one, (first, second)), shape=(size, size))
    graph = (graph + graph.T).tocsc()
    laplace = (diags(np.asarray(graph.sum(axis=0)).ravel()) - graph).tocsc()
    rim = np.zeros(size, dtype=bool)
    rim[outer] = True
    length = np.linalg.norm(surface.vertices[np.roll(outer, -1)] - surface.vertices[outer], axis=1)
    turn = 2.0 * np.pi * (np.cumsum(length) - length) / length.sum()
    flat = np.zeros((size, 2))
    flat[outer] = np.stack([np.cos(turn), np.sin(turn)], axis=1)
    inner = ~rim
    flat[inner] = _factor(laplace[inner][:, inner].tocsc()).solve(
        -laplace[inner][:, rim] @ flat[rim]
    )
    return _scaled(surface, flat[:count])


def _stiffness(surface: Surface) -> csc_matrix:
    """Return the Laplace matrix of linear triangles: (n, n)."""
    gradients = facet_gradients(surface)
    block = np.einsum("mxi,mxj,m->mij", gradients, gradients, surface.areas)
    down = np.repeat(surface.triangles, 3, axis=1).ravel()
    across = np.tile(surface.triangles, (1, 3)).ravel()
    size = len(surface.vertices)
    return coo_matrix((block.ravel(), (down, across)), shape=(size, size)).tocsc()


def _interleaved(matrix: csc_matrix) -> csc_matrix:
    """Return the matrix that acts on u and v in turn as `matrix` does on each."""
    entries = matrix.tocoo()
    down = np.concatenate([2 * entries.row, 2 * entries.row + 1])
    across = np.concatenate([2 * entries.col, 2 * entries.col + 1])
    size = 2 * matrix.shape[0]
    return coo_matrix(
        (np.concatenate([entries.data, entries.data]), (down, across)), shape=(size, size)
    ).tocsc()


def _signed_area(surface: Surface) -> csc_matrix:
    """Return the matrix whose quadratic form is twice the area of the flat map."""
    size = 2 * len(surface.vertices)
    starts = np.concatenate(surface.boundary_loops)
    ends: IntArray = np.concatenate([np.roll(loop, -1) for loop in surface.boundary_loops])
    half = np.full(len(starts), 0.5)
    down = np.concatenate([2 * starts, 2 * ends + 1, 2 * starts + 1, 2 * ends])
    across = np.concatenate([2 * ends + 1, 2 * starts, 2 * ends, 2 * starts + 1])
    signs = np.concatenate([half, half, -half, -half])
    return coo_matrix((signs, (down, across)), shape=(size, size)).tocsc()


def _scaled(surface: Surface, uv: FloatArray) -> FloatArray:
    corners = uv[surface.triangles]
    side, last = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    area = 0.5 * float((side[:, 0] * last[:, 1] - side[:, 1] * last[:, 0]).sum())
    if area <= 0.0:
        return uv
    scaled: FloatArray = uv * np.sqrt(surface.area / area)
    return scaled


def _factor(matrix: csc_matrix) -> splu:
    return splu(
        matrix,
        permc_spec="MMD_AT_PLUS_A",
        diag_pivot_thresh=0.0,
        options={"SymmetricMode": True},
    )
