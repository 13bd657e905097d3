"""Every facet is given to a piece so that the pieces are compact and meet along good lines.

The cost of a division is the cost of each facet at its piece plus the cost of each edge between
two pieces.  Its least value is found by cuts through a graph (Boykov, Veksler and Zabih, "Fast
approximate energy minimization via graph cuts", 2001, expansion moves; the graph of one move
after Kolmogorov and Zabih, "What energy functions can be minimized via graph cuts?", 2004).
For two pieces one move gives the exact minimum.
"""

from __future__ import annotations

import numpy as np
from scipy.sparse import csr_matrix
from scipy.sparse.csgraph import breadth_first_order, maximum_flow

from laywright.arrays import Array, FloatArray, IntArray

__all__ = ["NEVER", "labelled"]

NEVER = 1e9
"""Cost of a facet at a piece that it must not belong to."""

_CAPACITY = 2.0**30
_ROUNDS = 4


def labelled(cost: FloatArray, pairs: IntArray, price: FloatArray) -> IntArray:
    """Return the piece of every facet that makes the sum of all costs least.

    Parameters
    ----------
    cost : (k, m) float
        Cost of every facet at each piece, 0 or more; `NEVER` or more forbids.
    pairs : (e, 2) int
        Neighbouring facets.
    price : (e,) float
        Price of the edge between them when they belong to different pieces.

    Returns
    -------
    (m,) int
        0 to k - 1.
    """
    label = np.argmin(cost, axis=0)
    for turn in range(_ROUNDS if len(cost) > 2 else 1):
        before = label.copy()
        start = np.zeros_like(label) if len(cost) == 2 and turn == 0 else label
        for piece in range(len(cost) if len(cost) > 2 else 2):
            if len(cost) == 2 and piece == 0:
                continue
            label = _expanded(start, piece, cost, pairs, price)
            start = label
        if (label == before).all():
            break
    return np.asarray(label, dtype=np.int64)


def _expanded(
    label: IntArray, piece: int, cost: FloatArray, pairs: IntArray, price: FloatArray
) -> IntArray:
    """Return the best division in which some more facets belong to `piece`."""
    facets = np.arange(len(label))
    stay, change = cost[label, facets].copy(), cost[piece].copy()
    one, other = pairs[:, 0], pairs[:, 1]
    neither = price * (label[one] != label[other])
    second = price * (label[one] != piece)
    first = price * (label[other] != piece)
    np.add.at(change, one, np.maximum(first - neither, 0.0))
    np.add.at(stay, one, np.maximum(neither - first, 0.0))
    np.add.at(stay, other, first)
    between = second + first - neither
    taken = _cut(stay, change, one, other, between)
    return np.where(taken, piece, label)


def _cut(
    stay: FloatArray, change: FloatArray, one: IntArray, other: IntArray, between: FloatArray
) -> Array:
    """Return which facets change at the least cost: (m,) bool."""
    size = len(stay)
    source, sink = size, size + 1
    least = np.minimum(stay, change)
    stay, change = stay - least, change - least
    ends = np.concatenate([np.full(size, source), np.arange(size), one])
    heads = np.concatenate([np.arange(size), np.full(size, sink), other])
    whole = np.concatenate([change, stay, between])
    open_ = whole[whole < 0.5 * NEVER]
    scale = 0.25 * _CAPACITY / max(float(open_.sum()), 1e-12)
    capacity = np.minimum(np.round(np.minimum(whole, NEVER) * scale), 0.5 * _CAPACITY)
    used = capacity > 0
    graph = csr_matrix(
        (capacity[used].astype(np.int32), (ends[used], heads[used])), (size + 2, size + 2)
    )
    residual = (graph - maximum_flow(graph, source, sink).flow).tocsr()
    residual.data = np.where(residual.data > 0, residual.data, 0)
    residual.eliminate_zeros()
    reached = breadth_first_order(residual, source, return_predecessors=False)
    kept = np.zeros(size + 2, dtype=bool)
    kept[reached] = True
    return np.asarray(~kept[:size])
