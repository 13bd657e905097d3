"""What the plies of one layup take over from each other.

Surfaces of plies lie a ply's thickness apart and have the same triangles.  So they share what
depends on the triangles alone, and a cloth that came to rest on one of them starts on the next
from there: with the factored matrix that led to it and, from the third ply on, where the last
two lead on to.
"""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.energy import Sheet
from laywright.cloth.drape.fabric import Fabric, Start
from laywright.cloth.drape.solver import Below, Settled
from laywright.surface.triangles import Surface

__all__ = ["Kin"]

_Key = tuple[Fabric, float, Start, Datum]
_FURTHEST = 3.0


class Kin:
    """Grows with every ply that is draped with it."""

    def __init__(self) -> None:
        self._sheet: Sheet | None = None
        self._rests: dict[_Key, list[tuple[Surface, Settled]]] = {}

    def sheet(self, surface: Surface) -> Sheet:
        """Return a sheet that takes over what depends on the triangles alone, or all it can."""
        if self._sheet is not None and self._sheet.surface is surface:
            return self._sheet
        sheet = Sheet(surface, self._sheet)
        self._sheet = self._sheet or sheet
        return sheet

    def below(self, surface: Surface, key: _Key) -> Below | None:
        """Return what a cloth takes over from the plies below, None without any like it."""
        known = [
            (lower, settled)
            for lower, settled in self._rests.get(key, [])
            if np.array_equal(lower.triangles, surface.triangles)
        ]
        if not known:
            return None
        last, settled = known[-1]
        uv = settled.uv
        if len(known) > 1:
            before, earlier = known[-2]
            share = _share(before, last, surface)
            uv = uv + share * (uv - earlier.uv)
        return Below(uv, settled.factors)

    def keep(self, surface: Surface, key: _Key, settled: Settled) -> None:
        """Keep where a cloth came to rest."""
        if settled.at_rest:
            self._rests[key] = [*self._rests.get(key, [])[-1:], (surface, settled)]


def _share(before: Surface, last: Surface, surface: Surface) -> float:
    """Return how far a surface lies from the last one, over how far that lies from before it."""
    step: FloatArray = last.vertices - before.vertices
    squares = float((step * step).sum())
    further = float(((surface.vertices - last.vertices) * step).sum())
    return min(max(further / squares, 0.0), _FURTHEST) if squares > 0.0 else 0.0
