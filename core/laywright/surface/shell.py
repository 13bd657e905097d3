"""A thin elastic skin on triangles that wants other folds than it has.

Its energy is that of a plate of even thickness without Poisson's ratio, per unit of stiffness:
thickness times the square of the strain (Green), and thickness cubed by twelve times the square
of the missing curvature.  Strain is constant in each triangle.  The curvature of a triangle is
``sum(fold_i / height_i * n_i n_i)`` over its three edges, with the outward normals ``n_i`` of
the edges in its plane: the gradient of normals that lie half-way between the neighbours at the
middle of each edge (Morley, "The triangular equilibrium element in the solution of plate bending
problems", 1968, in the form for discrete normals).
"""

from __future__ import annotations

import numpy as np
from scipy.sparse import coo_matrix, csr_matrix, diags
from scipy.sparse.linalg import splu

from laywright.arrays import FloatArray, IntArray, ints
from laywright.progress import Progress, silent
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["folds", "relaxed"]

_ROUNDS = 12
_STILL = 1e-9
_NEAR = 0.1


def folds(surface: Surface) -> FloatArray:
    """Return the signed fold at every edge of the table: (e,) radians; 0 at the outline.

    Positive where the facets turn away from the side that their normals point to.
    """
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    one, other = surface.normals[table.left], surface.normals[table.right]
    along = surface.vertices[table.ends[:, 1]] - surface.vertices[table.ends[:, 0]]
    along /= np.linalg.norm(along, axis=1, keepdims=True)
    sine = np.einsum("ij,ij->i", np.cross(one, other), along)
    return np.where(inner, np.arctan2(sine, np.einsum("ij,ij->i", one, other)), 0.0)


def relaxed(
    surface: Surface, wanted: FloatArray, thickness: float, *, progress: Progress = silent
) -> Surface:
    """Return the surface at rest when its folds want to be others.

    Parameters
    ----------
    surface : Surface
        Without strain, mm; connected.
    wanted : (e,) float, radians
        Fold at every edge of its table.
    thickness : float, mm
        Of the skin.
    progress : Progress
        Told how far it is.

    Returns
    -------
    Surface
        The same facets on points that moved; placed as near as possible to where it was.
    """
    skin = _Skin(surface, wanted, thickness)
    points = surface.vertices.copy()
    still = _STILL * float(np.ptp(surface.bounds, axis=0).max())
    before = 0.0
    for done in range(_ROUNDS):
        progress(1.0 - 0.5**done, "opening the bends")
        step = skin.step(points)
        points = points + step
        gone = float(np.abs(step).max())
        # Near the end a step is to the one before as the next one will be to it, squared.
        if gone < still or (gone < _NEAR * before and gone * gone < still * before):
            break
        before = gone
    return surface.moved(_laid_on(points, surface))


class _Skin:
    """Energy and its steps; reference geometry is kept."""

    def __init__(self, surface: Surface, wanted: FloatArray, thickness: float) -> None:
        table, corners = surface.edges, surface.corners
        self._triangles, self._ends, self._wanted = surface.triangles, table.ends, wanted
        self._inner = np.flatnonzero((table.left >= 0) & (table.right >= 0))
        self._surface = surface
        count = len(surface.triangles)
        u, v = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
        x = u / np.linalg.norm(u, axis=1, keepdims=True)
        y = np.cross(surface.normals, x)
        flat = np.zeros((count, 3, 2))
        flat[:, 1, 0] = np.einsum("ij,ij->i", u, x)
        flat[:, 2] = np.stack([np.einsum("ij,ij->i", v, a) for a in (x, y)], axis=1)
        doubled = 2.0 * surface.areas
        opposite = np.roll(flat, -2, axis=1) - np.roll(flat, -1, axis=1)
        self._slope = (
            np.stack([-opposite[..., 1], opposite[..., 0]], axis=2) / doubled[:, None, None]
        )
        self._stiff = np.sqrt(thickness * surface.areas)
        self._rest = self._metric(surface.vertices)
        self._opposite = [self._third(owner) for owner in (table.left, table.right)]
        self._bend = self._bending(table.left, table.right, thickness)

    def _third(self, owner: IntArray) -> IntArray:
        """Return the corner of each inner edge's facet that is not on the edge."""
        facets = self._triangles[owner[self._inner]]
        return ints(facets.sum(axis=1) - self._ends[self._inner].sum(axis=1), -1)

    def _bending(self, left: IntArray, right: IntArray, thickness: float) -> csr_matrix:
        """Return the matrix of the bending energy in terms of the folds of inner edges."""
        count = len(self._triangles)
        rigid = np.sqrt(thickness**3 / 12.0 * self._surface.areas)
        here, after = self._triangles, np.roll(self._triangles, -1, axis=1)
        size = len(self._surface.vertices)
        key = np.minimum(here, after) * size + np.maximum(here, after)
        place = np.searchsorted(self._ends[:, 0] * size + self._ends[:, 1], key)
        number = np.full(len(self._ends), -1)
        number[self._inner] = np.arange(len(self._inner))
        rows, columns, values = [], [], []
        facet = np.arange(count)
        for side in range(3):
            edge = number[place[:, side]]
            inner = edge >= 0
            slope = self._slope[:, (side + 2) % 3]
            height = np.linalg.norm(slope, axis=1)
            for row, value in enumerate(
                (
                    slope[:, 0] ** 2 / height,
                    slope[:, 1] ** 2 / height,
                    np.sqrt(2.0) * slope[:, 0] * slope[:, 1] / height,
                )
            ):
                rows.append((3 * facet + row)[inner])
                columns.append(edge[inner])
                values.append((rigid * value)[inner])
        matrix = coo_matrix(
            (np.concatenate(values), (np.concatenate(rows), np.concatenate(columns))),
            (3 * count, len(self._inner)),
        ).tocsr()
        fold = np.abs(self._wanted[self._inner])
        sharp = fold > TOLERANCES.sharp_edge
        length = self._lengths(self._surface.vertices)
        own = np.where(sharp, thickness**2 / 12.0 * length / np.maximum(fold, 1e-9), 0.0)
        return csr_matrix(matrix.T @ matrix + diags(own))

    def _lengths(self, points: FloatArray) -> FloatArray:
        ends = points[self._ends[self._inner]]
        return np.asarray(np.linalg.norm(ends[:, 1] - ends[:, 0], axis=1), dtype=np.float64)

    def _gradient(self, points: FloatArray) -> FloatArray:
        """Return both tangents of every facet: (m, 2, 3) float."""
        tangents = np.einsum("mca,mcx->max", self._slope, points[self._triangles])
        return np.asarray(tangents, dtype=np.float64)

    def _metric(self, points: FloatArray) -> FloatArray:
        tangent = self._gradient(points)
        first, second = tangent[:, 0], tangent[:, 1]
        return np.stack(
            [
                0.5 * np.einsum("mx,mx->m", first, first),
                0.5 * np.einsum("mx,mx->m", second, second),
                np.sqrt(0.5) * np.einsum("mx,mx->m", first, second),
            ],
            axis=1,
        )

    def _missing(self, points: FloatArray) -> FloatArray:
        missing = folds(self._surface.moved(points)) - self._wanted
        return np.asarray(missing[self._inner], dtype=np.float64)

    def step(self, points: FloatArray) -> FloatArray:
        """Return the Gauss-Newton step of all points: (n, 3) float."""
        strain = (self._stiff[:, None] * (self._metric(points) - self._rest)).ravel()
        stretch, turning = self._strain_slope(points), self._fold_slope(points)
        bend = self._bend
        matrix = stretch.T @ stretch + turning.T @ bend @ turning
        force = stretch.T @ strain + turning.T @ (bend @ self._missing(points))
        free = self._free(points)
        step = np.zeros(points.size)
        factors = splu(
            matrix[free][:, free].tocsc(),
            permc_spec="MMD_AT_PLUS_A",
            diag_pivot_thresh=0.0,
            options={"SymmetricMode": True},
        )
        step[free] = factors.solve(-force[free])
        return step.reshape(-1, 3)

    def _strain_slope(self, points: FloatArray) -> csr_matrix:
        tangent, count = self._gradient(points), len(self._triangles)
        first, second = tangent[:, None, 0], tangent[:, None, 1]
        x, y = self._slope[..., :1], self._slope[..., 1:]
        parts = np.stack([x * first, y * second, np.sqrt(0.5) * (x * second + y * first)], axis=1)
        values = self._stiff[:, None, None, None] * parts
        rows = np.broadcast_to(np.arange(3 * count).reshape(-1, 3, 1, 1), values.shape)
        columns = np.broadcast_to(
            (3 * self._triangles[:, None, :, None] + np.arange(3)), values.shape
        )
        shape = (3 * count, points.size)
        return coo_matrix((values.ravel(), (rows.ravel(), columns.ravel())), shape).tocsr()

    def _fold_slope(self, points: FloatArray) -> csr_matrix:
        """Return the change of the inner edges' folds with the points: (e, 3 n)."""
        surface = self._surface.moved(points)
        table = self._surface.edges
        start, end = self._ends[self._inner].T
        along = points[end] - points[start]
        squared = np.einsum("ij,ij->i", along, along)
        columns, values = [], []
        ends = [np.zeros_like(along), np.zeros_like(along)]
        for owner, third in zip((table.left, table.right), self._opposite, strict=True):
            facet = owner[self._inner]
            height = 2.0 * surface.areas[facet] / np.sqrt(squared)
            slope = -surface.normals[facet] / height[:, None]
            share = np.einsum("ij,ij->i", points[third] - points[start], along) / squared
            ends[0] -= (1.0 - share)[:, None] * slope
            ends[1] -= share[:, None] * slope
            columns.append(third)
            values.append(slope)
        columns += [start, end]
        values += ends
        value, column = np.stack(values, axis=1), np.stack(columns, axis=1)
        rows = np.broadcast_to(np.arange(len(start))[:, None, None], value.shape)
        places = 3 * column[..., None] + np.arange(3)
        shape = (len(start), points.size)
        return coo_matrix((value.ravel(), (rows.ravel(), places.ravel())), shape).tocsr()

    def _free(self, points: FloatArray) -> IntArray:
        """Return the coordinates that may move: all but six that hold the skin in its place."""
        used = np.unique(self._triangles)
        away = points[used] - points[used[0]]
        far = int(np.argmax(np.einsum("ij,ij->i", away, away)))
        along = away[far] / np.linalg.norm(away[far])
        aside = np.cross(away, along)
        third = int(np.argmax(np.einsum("ij,ij->i", aside, aside)))
        main = int(np.argmax(np.abs(along)))
        normal = aside[third]
        others = [axis for axis in range(3) if axis != main]
        across = int(np.argmax(np.abs(np.where(np.arange(3) == main, 0.0, normal))))
        held = [3 * used[0] + axis for axis in range(3)]
        held += [3 * used[far] + axis for axis in others]
        held.append(3 * used[third] + across)
        free = np.zeros(points.size, dtype=bool)
        free.reshape(-1, 3)[used] = True
        free[held] = False
        return np.flatnonzero(free)


def _laid_on(points: FloatArray, surface: Surface) -> FloatArray:
    """Return points turned and shifted, so that they lie nearest to a surface's own.

    Kabsch, "A solution for the best rotation to relate two sets of vectors", 1976, each point
    weighted by the area around it.
    """
    weight = np.zeros(len(points))
    for corner in range(3):
        weight += np.bincount(surface.triangles[:, corner], surface.areas, len(points))
    weight /= weight.sum()
    here, there = weight @ points, weight @ surface.vertices
    u, _, v = np.linalg.svd((points - here).T @ (weight[:, None] * (surface.vertices - there)))
    mirror = np.diag([1.0, 1.0, np.sign(np.linalg.det(u @ v))])
    return np.asarray((points - here) @ (u @ mirror @ v) + there, dtype=np.float64)
