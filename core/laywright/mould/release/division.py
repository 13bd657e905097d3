"""A working surface divided among given pulls, so that its pieces are compact and connected."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import combinations

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from laywright.arrays import Array, FloatArray, IntArray, Vector, ints, unit_vector
from laywright.mould.release.labelling import NEVER, labelled
from laywright.mould.release.parting_lines import sharp_edges
from laywright.mould.release.plane_split import split_along
from laywright.mould.release.visibility import STANDING, TRACE
from laywright.surface.triangles import Surface

__all__ = ["Division", "divided"]

_SHARP_PRICE = 0.15
_ASIDE = 5.0
_POOR = 20.0
_BARELY = 200.0
_HELD = 1e4


@dataclass(frozen=True, eq=False)
class Division:
    """A surface whose facets are given to pieces, still without its lines.

    Attributes
    ----------
    surface : Surface
        mm; facets that a plane between two pulls crosses are divided.
    piece : (m,) int
        Piece of every facet; each piece is connected, the largest first.
    pulls : tuple of tuple of 3 float
        Unit direction in which the part leaves each piece.
    """

    surface: Surface
    piece: IntArray
    pulls: tuple[Vector, ...]


def divided(
    surface: Surface, pulls: FloatArray, leaves: Array, freely: Array, least_draft: float
) -> Division:
    """Return a surface divided among pulls.

    Parameters
    ----------
    surface : Surface
        Normals from the mould into the laminate, mm.
    pulls : (k, 3) float
        Unit directions.
    leaves : (k, m) bool
        Which facets leave along which pulls, at least so far that they barely hold a piece.
    freely : (k, m) bool
        Which leave without doing so: where others are near, facets are given to their pieces.
    least_draft : float, radians
        Draft that is wanted.
    """
    pairs = list(combinations(range(len(pulls)), 2))
    planes = {pair: _plane(surface, pulls, leaves, pair) for pair in pairs}
    for (one, other), (normal, place) in planes.items():
        surface, parent = split_along(surface, leaves[one] & leaves[other], normal, place)
        leaves, freely = leaves[:, parent], freely[:, parent]
    size = float(np.linalg.norm(np.ptp(surface.bounds, axis=0)))
    tilt = pulls @ surface.normals.T
    poor = tilt < math.sin(least_draft) - STANDING
    cost = _POOR / size * surface.areas * (poor & ~poor.all(axis=0))
    cost += _BARELY / size * surface.areas * (leaves & ~freely)
    none = ~leaves.any(axis=0)
    held = _HELD / size * surface.areas * (1.0 + np.maximum(-tilt, 0.0))
    cost += np.where(leaves, 0.0, np.where(none, held, 2.0 * NEVER))
    for (one, other), (normal, place) in planes.items():
        both = (leaves[one] & leaves[other]) * surface.areas * _ASIDE / size
        above = surface.centroids @ normal > place
        cost[one] += both * above
        cost[other] += both * ~above
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    start, end = (surface.vertices[table.ends[inner, i]] for i in (0, 1))
    price = np.linalg.norm(end - start, axis=1)
    price *= np.where(sharp_edges(surface)[inner], _SHARP_PRICE, 1.0)
    label = labelled(cost, np.stack([table.left[inner], table.right[inner]], axis=1), price)
    piece, of_label = _connected(surface, label)
    return Division(surface, piece, tuple(unit_vector(pulls[k]) for k in of_label))


def _plane(
    surface: Surface, pulls: FloatArray, leaves: Array, pair: tuple[int, int]
) -> tuple[FloatArray, float]:
    """Return normal and place of the plane between two pulls.

    What leaves along the first pull only should lie below it, what leaves along the second
    only above it; where that leaves room, the plane lies in the middle of the surface.
    """
    one, other = pair
    across = pulls[one] - pulls[other]
    normal = np.array(unit_vector(across))
    height = surface.centroids @ normal
    corners = surface.vertices[np.unique(surface.triangles)] @ normal
    middle = 0.5 * float(corners.min() + corners.max())
    low = leaves[one] & ~leaves[other]
    high = leaves[other] & ~leaves[one]
    forced = np.flatnonzero(low | high)
    if len(forced) == 0:
        return normal, middle
    order = forced[np.argsort(height[forced], kind="stable")]
    area = surface.areas[order]
    wrong_below = np.concatenate([[0.0], np.cumsum(area * high[order])])
    wrong_above = np.concatenate([np.cumsum((area * low[order])[::-1])[::-1], [0.0]])
    wrong = wrong_below + wrong_above
    best = np.flatnonzero(wrong <= wrong.min() + TRACE * surface.area)
    bounds = np.concatenate([[corners.min()], height[order], [corners.max()]])
    distance = np.maximum(bounds[best] - middle, middle - bounds[best + 1])
    gap = int(best[np.argmin(np.maximum(distance, 0.0))])
    return normal, float(np.clip(middle, bounds[gap], bounds[gap + 1]))


def _connected(surface: Surface, label: IntArray) -> tuple[IntArray, list[int]]:
    """Return connected pieces, the largest first, and the label of each."""
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    left, right = table.left[inner], table.right[inner]
    same = label[left] == label[right]
    size = len(label)
    graph = coo_matrix((np.ones(same.sum()), (left[same], right[same])), (size, size))
    number, group = connected_components(graph, directed=False)
    order = np.argsort(-np.bincount(group, weights=surface.areas), kind="stable")
    place = np.empty(number, dtype=np.int64)
    place[order] = np.arange(number)
    first = np.full(number, size)
    np.minimum.at(first, place[group], np.arange(size))
    return ints(place[group], -1), label[first].tolist()
