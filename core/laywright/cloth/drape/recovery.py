"""Smooth gradients from values at the vertices, and what a facet misses of a curved map.

A map that is linear in each triangle reads the gradient of a smooth map wrong by the side of
the triangle times its second derivative.  Where the surface is smooth, that error is known: a
quadratic is fitted to each vertex and its neighbours in the tangent plane (O. Zienkiewicz,
J. Zhu, The superconvergent patch recovery, 1992; Z. Zhang, A. Naga, A new finite element
gradient recovery method, 2005), the fitted gradients give the second derivatives in each
triangle, and these the error at its middle.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from scipy.sparse import coo_matrix, csr_matrix, diags

from laywright.arrays import Array, FloatArray, floats
from laywright.cloth.drape.strain import (
    Strain,
    facet_axes,
    facet_gradients,
    smooth_facets,
    strain_from,
)
from laywright.surface.triangles import Surface

__all__ = ["Recovery", "strain_at_vertices"]

_FULL_RING = 6
_TINY = 1e-9


@dataclass(frozen=True, eq=False)
class Recovery:
    """Fitted gradients on one surface.

    Attributes
    ----------
    surface : Surface
        Without triangles of no area.
    """

    surface: Surface

    @cached_property
    def _pairs(self) -> tuple[Array, Array]:
        return _rings(self.surface)

    @cached_property
    def normals(self) -> FloatArray:
        """Unit normal at every vertex, from a quadratic through its neighbours: (n, 3) float.

        At vertices beside a sharp edge it is the mean normal of the triangles.
        """
        surface = self.surface
        mean = surface.vertex_normals
        centre, other = self._pairs
        x_axis, y_axis = _tangents(mean)
        step = surface.vertices[other] - surface.vertices[centre]
        flat = np.stack([_rowdot(step, x_axis[centre]), _rowdot(step, y_axis[centre])], axis=1)
        share = _quadratic_fit(centre, flat, len(mean))
        rise = _rowdot(step, mean[centre])
        slope = [
            np.bincount(centre, weights=share[:, i] * rise, minlength=len(mean)) for i in (0, 1)
        ]
        tilted = mean - slope[0][:, None] * x_axis - slope[1][:, None] * y_axis
        tilted = tilted / np.linalg.norm(tilted, axis=1, keepdims=True)
        sharp = np.zeros(len(mean), dtype=bool)
        sharp[surface.triangles[~smooth_facets(surface)]] = True
        normals: FloatArray = np.where(sharp[:, None], mean, tilted)
        return normals

    @cached_property
    def axes(self) -> tuple[FloatArray, FloatArray]:
        """Two tangent axes at every vertex: (n, 3) float each; the normal completes them."""
        return _tangents(self.normals)

    @cached_property
    def _fit(self) -> tuple[Array, Array, FloatArray]:
        """Centre, neighbour and share of the neighbour's difference in the gradient (k, 2).

        Neighbours are laid into the tangent plane at their distance along the surface: to a
        foot at ``x`` below a surface of shape operator ``S`` it is
        ``x + S x (x . S x) / 6``, and ``x . S x / 2`` is the height, ``-S x`` the other normal.
        """
        normals = self.normals
        centre, other = self._pairs
        step = self.surface.vertices[other] - self.surface.vertices[centre]
        height = _rowdot(step, normals[centre])
        along = step - (height / 3.0)[:, None] * normals[other]
        x_axis, y_axis = self.axes
        flat = np.stack([_rowdot(along, x_axis[centre]), _rowdot(along, y_axis[centre])], axis=1)
        return centre, other, _quadratic_fit(centre, flat, len(normals))

    @cached_property
    def _along(self) -> csr_matrix:
        """Matrix from values at the vertices to their gradients along both axes: (2 n, n)."""
        centre, other, share = self._fit
        count = len(self.surface.vertices)
        own = np.arange(count)
        down = np.concatenate([2 * centre, 2 * centre + 1, 2 * own, 2 * own + 1])
        across = np.concatenate([other, other, own, own])
        sums = [-np.bincount(centre, weights=share[:, i], minlength=count) for i in range(2)]
        entries = np.concatenate([share[:, 0], share[:, 1], *sums])
        return csr_matrix((entries, (down, across)), shape=(2 * count, count))

    def gradients(self, values: FloatArray) -> FloatArray:
        """Return the gradient at every vertex in the tangent axes.

        Parameters
        ----------
        values : (n, w) float
            Fields at the vertices.

        Returns
        -------
        (n, w, 2) float
        """
        gradients: FloatArray = (self._along @ values).reshape(len(values), 2, -1)
        return gradients.transpose(0, 2, 1)

    @cached_property
    def missed(self) -> csr_matrix:
        """Matrix from values at the vertices to what facets miss of the gradients: (2 m, n).

        Rows t and m + t belong to the middle of triangle t, along its axes x and y, and are
        zero beside sharp edges.  With the second derivatives ``H`` of a field and the corners at
        ``x_k`` from the middle, the facet's gradient is wrong by the sum of
        ``grad(hat_k) (x_k . H x_k) / 2``.
        """
        surface = self.surface
        both = np.stack(facet_axes(surface), axis=1)
        arms = surface.corners - surface.centroids[:, None]
        corners = np.einsum("mki,mxi->mkx", arms, both)
        tangents = np.stack(self.axes, axis=1)[surface.triangles]
        seen = np.einsum("mkai,mxi->mkax", tangents, both)
        hats = facet_gradients(surface)
        halves = np.einsum("mxj,mjp,mjq->mxpq", hats, corners, corners) / 2.0
        from_gradients = -np.einsum("mxpq,mpk,mkaq->amxk", halves, hats, seen)
        from_gradients *= smooth_facets(surface)[:, None, None]
        count, size = len(surface.triangles), len(surface.vertices)
        starts = np.arange(0, 12 * count + 1, 6)
        corners_of = np.stack([2 * surface.triangles, 2 * surface.triangles + 1])
        across = np.broadcast_to(corners_of.transpose(1, 0, 2), (2, count, 2, 3))
        entries = from_gradients.transpose(2, 1, 0, 3)  # axis of the triangle, triangle, ...
        weights = csr_matrix((entries.ravel(), across.ravel(), starts), shape=(2 * count, 2 * size))
        return weights @ self._along


def _rowdot(a: FloatArray, b: FloatArray) -> FloatArray:
    product: FloatArray = np.einsum("ij,ij->i", a, b)
    return product


def _tangents(normals: FloatArray) -> tuple[FloatArray, FloatArray]:
    away = np.eye(3)[np.abs(normals).argmin(axis=1)]
    x = np.cross(normals, away)
    x = x / np.linalg.norm(x, axis=1, keepdims=True)
    return x, np.cross(normals, x)


def _quadratic_fit(centre: Array, flat: FloatArray, count: int) -> FloatArray:
    """Return the share that each neighbour's difference has in the gradient at the centre.

    Parameters
    ----------
    centre : (k,) int
        Centre of each pair.
    flat : (k, 2) float, mm
        Place of the neighbour, counted from the centre.
    count : int
        Number of vertices.

    Returns
    -------
    (k, 2) float, 1/mm
        From a quadratic through the centre, fitted with weights that fall with the distance.
    """
    squares = (flat**2).sum(axis=1)
    members = np.maximum(np.bincount(centre, minlength=count), 1)
    size = np.sqrt(np.bincount(centre, weights=squares, minlength=count) / members)[centre]
    x, y = flat[:, 0] / size, flat[:, 1] / size
    weight = 1.0 / (x * x + y * y + 1e-3)
    terms = (x, y, x * x, x * y, y * y)
    weighted = [term * weight for term in terms]
    normal: dict[tuple[int, int], FloatArray] = {
        (i, j): floats(np.bincount(centre, weighted[i] * terms[j], count), -1)
        for i in range(5)
        for j in range(i + 1)
    }
    trace = sum(normal[i, i] for i in range(5)) + _TINY
    for i in range(5):
        normal[i, i] = normal[i, i] + _TINY * trace
    scale = weight / size
    share = np.empty((len(centre), 2))
    for axis, inverse in enumerate(_first_two_of_inverse(normal)):
        share[:, axis] = sum(inverse[i][centre] * terms[i] for i in range(5)) * scale
    return share


def _first_two_of_inverse(matrix: dict[tuple[int, int], FloatArray]) -> list[list[FloatArray]]:
    """Return the first two rows of the inverse of many symmetric 5 x 5 matrices, by L D L'.

    The entries (i, j) with j up to i are given, (n,) float each.
    """
    size = 5
    low: dict[tuple[int, int], FloatArray] = {}
    pivot: list[FloatArray] = []
    for j in range(size):
        pivot.append(matrix[j, j] - sum(low[j, k] ** 2 * pivot[k] for k in range(j)))
        for i in range(j + 1, size):
            done = sum(low[i, k] * low[j, k] * pivot[k] for k in range(j))
            low[i, j] = (matrix[i, j] - done) / pivot[j]
    rows = []
    for unit in range(2):
        x = [np.full_like(pivot[0], float(i == unit)) for i in range(size)]
        for i in range(size):
            x[i] = x[i] - sum(low[i, k] * x[k] for k in range(i))
        x = [value / by for value, by in zip(x, pivot, strict=True)]
        for i in reversed(range(size)):
            x[i] = x[i] - sum(low[k, i] * x[k] for k in range(i + 1, size))
        rows.append(x)
    return rows


def _rings(surface: Surface) -> tuple[Array, Array]:
    """Return pairs of a vertex and a neighbour; where a ring is not full, the next as well."""
    count = len(surface.vertices)
    ends = surface.edges.ends
    one = np.ones(len(ends))
    graph = coo_matrix((one, (ends[:, 0], ends[:, 1])), shape=(count, count))
    graph = (graph + graph.T).tocsr()
    short = np.diff(graph.indptr) < _FULL_RING
    short[np.concatenate(surface.boundary_loops)] = True
    near = (diags((~short).astype(float)) @ graph).tocoo()
    far = (diags(short.astype(float)) @ (graph + graph @ graph)).tocoo()
    centre = np.concatenate([near.row, far.row]).astype(np.int64)
    other = np.concatenate([near.col, far.col]).astype(np.int64)
    entries = np.concatenate([near.data, far.data])
    kept = (centre != other) & (entries != 0.0)
    return centre[kept], other[kept]


def strain_at_vertices(surface: Surface, uv: FloatArray) -> Strain:
    """Return the strain at the vertices, from fitted gradients: second order in the spacing.

    Parameters
    ----------
    surface : Surface
        Smooth; beside sharp edges the fit is poor.
    uv : (n, 2) float, mm
        The map.

    Returns
    -------
    Strain
        With (n,) values.
    """
    return strain_from(Recovery(surface).gradients(uv))
