"""The smallest cap of directions that holds all normals of a surface.

The least draft of a surface along a pull ``p`` is the least ``asin(n . p)`` over its normals
``n``.  The pull that makes it largest follows exactly from the convex hull of the normals, so
no directions are sampled.

- The origin lies outside the hull: the pull points to the hull's point nearest to the origin
  and the sine of the least draft is that point's distance (the minimum-norm point, Wolfe,
  "Finding the nearest point in a polytope", 1976).
- The origin lies inside: no direction sees all normals.  ``min n . p`` is minus the hull's
  support function at ``-p``, whose least value is the distance of the nearest hull facet, so
  that facet's inward normal is the best pull.
  Of many normals a few are taken, and those that lie farthest beyond the nearest facets are
  added until none lies beyond the nearest: it is then a facet of the whole hull.  Where the
  few already lie so densely all around that every pull has a facet within 20 degrees of facing
  straight away, one of the best pulls is as useless as the best, and is given.
- The origin lies on the hull's boundary, or the normals span a plane through the origin (the
  wall of a full cylinder): the best least draft is zero.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from scipy.spatial import ConvexHull

from laywright.arrays import FloatArray, IntArray, Vector, unit_vector

__all__ = ["Cap", "smallest_cap"]

_FLAT = 1e-9
_STILL = 1e-14
_BEYOND = 1e-12
_MANY = 2000
_CELLS = 6
_AT_ONCE = 8
_DENSE = math.cos(math.radians(20.0))


@dataclass(frozen=True)
class Cap:
    """A spherical cap of directions.

    Attributes
    ----------
    axis : tuple of 3 float
        Unit vector to the centre of the cap.
    least_draft : float, radians
        Least angle between the plane across `axis` and the normals; negative where no
        direction sees all of them.
    """

    axis: Vector
    least_draft: float


def smallest_cap(normals: FloatArray) -> Cap:
    """Return the smallest cap that holds all `normals`.

    Parameters
    ----------
    normals : (m, 3) float
        Unit normals; zero vectors are left out.

    Returns
    -------
    Cap
        Its axis is the pull direction with the largest least draft.

    Raises
    ------
    ValueError
        If there is no normal.

    Examples
    --------
    >>> import numpy as np
    >>> smallest_cap(np.array([[0.6, 0.0, 0.8], [-0.6, 0.0, 0.8]])).axis
    (0.0, 0.0, 1.0)
    """
    usable = np.asarray(normals[np.einsum("ij,ij->i", normals, normals) > 0.25], dtype=np.float64)
    if len(usable) == 0:
        raise ValueError("no normals to hold in a cap")
    nearest = _nearest_point(usable)
    if float(np.linalg.norm(nearest)) > _FLAT:
        axis = nearest / np.linalg.norm(nearest)
    else:
        axis = _best_of_enclosing(usable)
    least = float(np.clip((usable @ axis).min(), -1.0, 1.0))
    return Cap(unit_vector(axis), math.asin(least))


def _best_of_enclosing(normals: FloatArray) -> FloatArray:
    """Return the best pull where the origin lies in the normals' convex hull: (3,) float."""
    _, spread, directions = np.linalg.svd(np.linalg.qr(normals, mode="r"))
    if spread[-1] <= _FLAT * spread[0]:
        across: FloatArray = np.asarray(directions[-1], dtype=np.float64)
        return across if across.sum() > 0 else -across
    chosen, many = _spread_out(normals, directions), _AT_ONCE
    while True:
        facets = ConvexHull(normals[chosen]).equations
        facets = facets[np.argsort(-facets[:, 3], kind="stable")[:many]]
        if len(chosen) == len(normals) or (len(normals) > _MANY and facets[0, 3] < -_DENSE):
            break
        farthest = np.array([int((normals @ facet[:3]).argmax()) for facet in facets])
        height = np.einsum("ij,ij->i", normals[farthest], facets[:, :3])
        beyond = height + facets[:, 3] > _BEYOND
        if not beyond[0]:
            break
        chosen, many = np.union1d(chosen, farthest[beyond]), 2 * many
    return np.asarray(-facets[0, :3], dtype=np.float64)


def _spread_out(normals: FloatArray, directions: FloatArray) -> IntArray:
    """Return which normals to begin with: the outermost, and one in each direction: (k,) int."""
    if len(normals) <= _MANY:
        return np.arange(len(normals))
    x, y, z = np.rint(_CELLS * normals).astype(np.int64).T + _CELLS
    size = 2 * _CELLS + 1
    one = np.full(size**3, -1)
    one[(x * size + y) * size + z] = np.arange(len(normals))
    along = normals @ directions.T
    outermost = np.concatenate([along.argmin(axis=0), along.argmax(axis=0)])
    return np.asarray(np.unique(np.concatenate([one[one >= 0], outermost])))


def _nearest_point(points: FloatArray) -> FloatArray:
    """Return the point of the convex hull of `points` (m, 3) nearest to the origin: (3,) float."""
    chosen = [int(np.argmin(np.einsum("ij,ij->i", points, points)))]
    weights = np.ones(1)
    found = points[chosen[0]]
    for _ in range(10 * len(points) + 100):
        height = points @ found
        lowest = int(np.argmin(height))
        if lowest in chosen or height[lowest] >= found @ found - _STILL:
            break
        chosen.append(lowest)
        weights = np.append(weights, 0.0)
        chosen, weights = _minor_cycles(points, chosen, weights)
        found = weights @ points[chosen]
    return np.asarray(found, dtype=np.float64)


def _minor_cycles(
    points: FloatArray, chosen: list[int], weights: FloatArray
) -> tuple[list[int], FloatArray]:
    """Drop points until the nearest point of the others' affine hull lies inside them."""
    while True:
        affine = _affine_weights(points[chosen])
        if (affine > 1e-15).all() or len(chosen) == 1:
            return chosen, affine
        falling = affine < weights
        step = min(1.0, float((weights[falling] / (weights - affine)[falling]).min()))
        weights = (1.0 - step) * weights + step * affine
        kept = weights > 1e-15
        if kept.all():
            kept[int(np.argmin(weights))] = False
        chosen = [index for index, keep in zip(chosen, kept.tolist(), strict=True) if keep]
        weights = weights[kept] / weights[kept].sum()


def _affine_weights(points: FloatArray) -> FloatArray:
    """Return the weights, summing to 1, of the affine hull's point nearest to the origin."""
    size = len(points)
    edges = points[1:] - points[0]
    inner = np.linalg.lstsq(edges.T, -points[0], rcond=1e-14)[0] if size > 1 else np.empty(0)
    return np.concatenate([[1.0 - inner.sum()], inner])
