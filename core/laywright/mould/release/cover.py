"""The fewest pulls that together leave every facet of a surface."""

from __future__ import annotations

from itertools import combinations

import numpy as np

from laywright.arrays import Array, FloatArray
from laywright.mould.release.visibility import TRACE

__all__ = ["covers"]

_KEPT = 3
_FROM = 40


def covers(leaves: Array, good: Array, areas: FloatArray, count: int) -> list[tuple[int, ...]]:
    """Return the best sets of `count` pulls, the best first.

    Parameters
    ----------
    leaves : (k, m) bool
        Which facets leave along which pulls.
    good : (k, m) bool
        Which do so with the wanted draft.
    areas : (m,) float, mm^2
        Of the facets.
    count : int
        How many pulls, 1 to 4.

    Returns
    -------
    list of tuple of int
        Of the sets that leave as little area as the best one: the three with most area at the
        wanted draft, then the three whose pulls are listed first.

    Notes
    -----
    Sets of one to three are all tried.  A set of four is sought among the best pairs, each
    completed by its best other pair.
    """
    pattern, index = np.unique(np.concatenate([leaves, good]), axis=1, return_inverse=True)
    area = np.bincount(index.reshape(-1), weights=areas)
    half = len(leaves)
    found = _sets(np.asarray(~pattern[:half]), area, count)
    ranked = []
    for chosen in found:
        rows = list(chosen)
        left = float(area @ ~pattern[:half][rows].any(axis=0))
        poor = float(area @ ~pattern[half:][rows].any(axis=0))
        total = float(area.sum())
        ranked.append((round(left / total / TRACE), round(poor / total, 2), chosen))
    least = min(ranked)[0]
    kept = [entry for entry in ranked if entry[0] <= max(least, 1)]
    by_draft = [entry[2] for entry in sorted(kept)[:_KEPT]]
    by_list = [entry[2] for entry in sorted(kept, key=lambda entry: (max(entry[2]), entry[2]))]
    return list(dict.fromkeys([*by_draft, *by_list[:_KEPT]]))


def _sets(lacks: Array, area: Array, count: int) -> list[tuple[int, ...]]:
    """Return promising sets of pulls; `lacks` (k, p) says which facets do not leave."""
    every = range(len(lacks))
    if count == 1:
        return [(i,) for i in every]
    if count == 2:
        return _pairs(lacks, area, (), len(lacks) ** 2)
    if count == 3:
        return [
            chosen
            for i in every
            for chosen in _pairs(lacks[:, lacks[i]], area[lacks[i]], (i,), 3)
            if i < min(chosen[1:])
        ] or [next(iter(combinations(every, 3)))]
    starts = _pairs(lacks, area, (), _FROM)
    found = []
    for i, j in starts:
        rest = lacks[i] & lacks[j]
        found += _pairs(lacks[:, rest], area[rest], (i, j), 2)
    return [tuple(sorted(chosen)) for chosen in found]


def _pairs(lacks: Array, area: Array, taken: tuple[int, ...], most: int) -> list[tuple[int, ...]]:
    """Return `taken` with the pairs that leave the least area, the best first."""
    left = (lacks * area) @ lacks.T.astype(np.float64)
    first, second = np.triu_indices(len(lacks), 1)
    free = ~np.isin(first, taken) & ~np.isin(second, taken)
    first, second = first[free], second[free]
    order = np.argsort(left[first, second], kind="stable")[:most]
    return [(*taken, int(first[k]), int(second[k])) for k in order]
