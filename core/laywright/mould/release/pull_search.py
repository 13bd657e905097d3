"""Sets of pulls that together leave a whole surface, sought at some of its facets, proved at all.

Which facets leave along each of a hundred pulls is looked up at so many facets only.  A set that
is found is then measured at every facet; what it does not leave is looked at too, and the search
made again with that known, in the end with all facets.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray, floats, ints, unit_vector
from laywright.mould.release.cover import covers
from laywright.mould.release.leaving import barely_held, held_share, leaves_along
from laywright.mould.release.visibility import STANDING
from laywright.progress import Progress, silent
from laywright.surface.triangles import Surface

__all__ = ["PullSearch"]

_LOOKED_AT = 8_000
_ROUNDS = 4


class PullSearch:
    """What is known about pulls and facets while sets of pulls are sought.

    Parameters
    ----------
    surface : Surface
        Normals from the mould into the laminate, mm.
    pulls : (k, 3) float
        Unit directions to choose from.
    least_draft : float, radians
        Draft that is wanted.
    progress : Progress
        Told how far the first look is.
    """

    def __init__(
        self,
        surface: Surface,
        pulls: FloatArray,
        least_draft: float,
        progress: Progress = silent,
    ) -> None:
        self._surface, self._pulls = surface, pulls
        self._least = math.sin(least_draft) - STANDING
        self._measured: dict[int, tuple[Array, Array]] = {}
        self._some, self._areas = _looked_at(surface)
        self._leaves, self._good = self._seen(self._some, progress)

    def rounds(self, count: int) -> Iterator[list[tuple[int, ...]]]:
        """Give sets of so many pulls that promise to leave the most, the best first.

        Where every set of a round turns out to hold facets that were not looked at, they are
        looked at and another round follows; the last one knows all facets.
        """
        for left in reversed(range(_ROUNDS)):
            sets = covers(self._leaves, self._good, self._areas, count)
            yield sets
            missed = self._missed(sets)
            if len(missed) == 0:
                return
            if left == 1:
                missed = np.setdiff1d(np.arange(len(self._surface.triangles)), self._some)
            self._look_at(missed)

    def leaves(self, chosen: tuple[int, ...]) -> tuple[Array, Array]:
        """Return which facets leave along each of a set of pulls: two (k, m) bool.

        In the first those that barely hold a piece count as leaving, in the second they do not.
        """
        rows = [self._row(row) for row in chosen]
        return np.stack([row[0] for row in rows]), np.stack([row[1] for row in rows])

    def _row(self, row: int) -> tuple[Array, Array]:
        if row not in self._measured:
            pull = unit_vector(self._pulls[row])
            freely = held_share(self._surface, pull) == 0.0
            held = ints(np.flatnonzero(~freely), -1)
            leaves = freely.copy()
            leaves[held] = barely_held(self._surface, pull, held)
            self._measured[row] = leaves, freely
            self._leaves[row] = leaves[self._some]
        return self._measured[row]

    def _missed(self, sets: list[tuple[int, ...]]) -> IntArray:
        """Return the facets not looked at that sets hold; none if one set leaves them all."""
        found = []
        for chosen in sets:
            left = np.flatnonzero(~self.leaves(chosen)[0].any(axis=0))
            found.append(np.setdiff1d(left, self._some))
        least = min(len(missed) for missed in found)
        return ints(np.unique(np.concatenate(found)) if least else np.empty(0), -1)

    def _look_at(self, facets: IntArray) -> None:
        leaves, good = self._seen(facets, silent)
        for row, (known, _) in self._measured.items():
            leaves[row] = known[facets]
        self._some = ints(np.concatenate([self._some, facets]), -1)
        self._areas = floats(np.concatenate([self._areas, self._surface.areas[facets]]), -1)
        self._leaves = np.concatenate([self._leaves, leaves], axis=1)
        self._good = np.concatenate([self._good, good], axis=1)

    def _seen(self, facets: IntArray, progress: Progress) -> tuple[Array, Array]:
        """Return which facets seem to leave, and which do with the wanted draft: (k, s) bool."""
        leaves = leaves_along(self._surface, self._pulls, facets, progress)
        return leaves, leaves & (self._pulls @ self._surface.normals[facets].T >= self._least)


def _looked_at(surface: Surface) -> tuple[IntArray, FloatArray]:
    """Return the facets at which pulls are sought, and the area that each stands for, mm^2.

    All of them, or of a fine mesh the largest and each so many of the others.
    """
    count, areas = len(surface.triangles), surface.areas
    if count <= _LOOKED_AT:
        return ints(np.arange(count), -1), areas
    order = np.argsort(-areas, kind="stable")
    large = order[: _LOOKED_AT // 4]
    small = np.sort(order[len(large) :])
    step = math.ceil(len(small) / (_LOOKED_AT - len(large)))
    kept = small[::step]
    share = float(areas[small].sum()) / max(float(areas[kept].sum()), 1e-300)
    return (
        ints(np.concatenate([large, kept]), -1),
        floats(np.concatenate([areas[large], share * areas[kept]]), -1),
    )
