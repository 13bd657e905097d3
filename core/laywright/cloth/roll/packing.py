"""A search for a tighter packing with the packing library, and the check of what it found."""

from __future__ import annotations

import threading
import time
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import shapely
from shapely.geometry import Polygon

from laywright.arrays import FloatArray
from laywright.cloth.roll.bottom_left import drawn_back
from laywright.cloth.roll.spot import Spot
from laywright.errors import Cancelled
from laywright.progress import Progress

__all__ = ["Hunt", "fits", "start", "wait_for"]

_ROUNDING = 1e-3
_CHECK_EVERY = 0.1
_TIGHT = 0.95
_DRAW = 3.0  # mm
_SLACK = 0.05  # mm


class Hunt:
    """A search that runs in the background, its best packing at hand at any moment.

    Use `start` to make one.
    """

    def __init__(
        self, instance: Any, config: Any, heard: Any, complete: tuple[Any, ...], pieces: _Pieces
    ) -> None:
        self._heard, self._complete, self._pieces = heard, complete, pieces
        self._best: Any = None
        self._worker = threading.Thread(target=self._work, args=(instance, config), daemon=True)
        self._worker.start()

    def _work(self, instance: Any, config: Any) -> None:
        try:
            self._best = instance.solve(config, progress=self._heard)
        except BaseException:  # a panic of the library is no Exception
            return

    def listen(self, patience: float) -> bool:
        """Wait for at most `patience` seconds; return whether the search goes on."""
        self._worker.join(patience)
        for kind, solution in self._heard.drain():
            if kind in self._complete and (
                self._best is None or solution.width <= self._best.width
            ):
                self._best = solution
        return self._worker.is_alive()

    def best(self) -> list[Spot] | None:
        """Return the shortest packing so far, in the order of the outlines; None without one."""
        return None if self._best is None else self._pieces.spots(self._best)


@dataclass(frozen=True, eq=False)
class _Pieces:
    """What is packed, and how an answer of the library is read."""

    outlines: Sequence[FloatArray]
    mirrored: Sequence[bool]
    gap: float

    def spots(self, solution: Any) -> list[Spot] | None:
        found: dict[int, Spot] = {}
        for item in solution.placed_items:
            index = int(item.id)
            turned = abs((item.rotation % 360.0) - 180.0) < 90.0
            x, y = item.translation
            # the library keeps half the gap to the edges of its strip as well
            found[index] = Spot(float(x), float(y) - self.gap / 2, turned, self.mirrored[index])
        if len(found) != len(self.outlines):
            return None
        placed = _from_zero(self.outlines, [found[index] for index in range(len(found))])
        return drawn_back(self.outlines, placed, self.gap, reach=_DRAW)


def start(
    outlines: Sequence[FloatArray],
    mirrored: Sequence[bool],
    width: float,
    gap: float,
    seconds: float,
    seed: int,
) -> Hunt | None:
    """Start a search for a short strip that holds all outlines.

    Parameters
    ----------
    outlines : sequence of (k, 2) float, mm
        Outlines, x along the strip.
    mirrored : sequence of bool
        Which of them lie mirrored; each may be turned by half a turn.
    width, gap : float, mm
        Width of the strip and smallest distance between pieces.
    seconds : float
        Time budget, at least 1; a search cannot be ended before, only left unheard.
    seed : int
        Start of the search.

    Returns
    -------
    Hunt or None
        None where the packing library is not installed.  A piece nearly as wide as the strip
        is not tried: the library gives up on it, and it leaves nothing beside it to gain.
    """
    if max(float(np.ptp(outline[:, 1])) for outline in outlines) > _TIGHT * width:
        return None
    try:
        import spyrrow  # noqa: PLC0415 - optional: without it the simple packing stands
    except ImportError:
        return None
    items = [
        spyrrow.Item(
            str(index),
            _rough(Spot(0.0, 0.0, mirrored=over).on(outline), width),
            1,
            [0.0, 180.0],
        )
        for index, (outline, over) in enumerate(zip(outlines, mirrored, strict=True))
    ]
    config = spyrrow.StripPackingConfig(
        total_computation_time=max(1, round(seconds)),
        min_items_separation=gap if gap > 0.0 else None,
        num_workers=1,
        seed=seed,
    )
    return Hunt(
        spyrrow.StripPackingInstance("roll", width + gap, items),
        config,
        spyrrow.ProgressQueue(),
        (spyrrow.ReportType.ExplFeas, spyrrow.ReportType.CmprFeas),
        _Pieces(outlines, mirrored, gap),
    )


def wait_for(hunts: Sequence[Hunt], seconds: float, progress: Progress) -> bool:
    """Wait until searches end.

    Parameters
    ----------
    hunts : sequence of Hunt
        What runs.
    seconds : float
        How long that is expected to take.
    progress : Progress
        Told the share of the time used.

    Returns
    -------
    bool
        Whether `progress` raised `Cancelled`: the searches then go on unheard.
    """
    began = time.monotonic()
    while sum(hunt.listen(_CHECK_EVERY) for hunt in hunts):
        waited = time.monotonic() - began
        try:
            progress(min(waited / (seconds + 1.0), 0.99), "searching for a shorter piece of roll")
        except Cancelled:
            return True
    return False


def _rough(outline: FloatArray, width: float) -> list[tuple[float, float]]:
    """Return an outline with fewer points that leaves no part of the given one outside."""
    rough = Polygon(outline).buffer(_SLACK, join_style="mitre").simplify(_SLACK)
    points = np.asarray(rough.exterior.coords)[:-1]
    if float(np.ptp(points[:, 1])) > width:
        points = outline
    return [(float(x), float(y)) for x, y in points]


def _from_zero(outlines: Sequence[FloatArray], spots: Sequence[Spot]) -> list[Spot]:
    """Shift all pieces so that the first begins at the start of the roll."""
    start = min(
        float(spot.on(outline)[:, 0].min()) for outline, spot in zip(outlines, spots, strict=True)
    )
    return [replace(spot, x=spot.x - start) for spot in spots]


def fits(outlines: Sequence[FloatArray], spots: Sequence[Spot], width: float, gap: float) -> bool:
    """Return whether all pieces lie on the strip and keep the gap, to 1e-3 mm."""
    placed = [Polygon(spot.on(outline)) for outline, spot in zip(outlines, spots, strict=True)]
    low, high = -_ROUNDING, width + _ROUNDING
    if any(piece.bounds[1] < low or piece.bounds[3] > high for piece in placed):
        return False
    if any(piece.bounds[0] < low for piece in placed):
        return False
    tree = shapely.STRtree(placed)
    first, second = tree.query(placed, predicate="dwithin", distance=max(gap - _ROUNDING, 0.0))
    near = first < second
    if gap > 0.0:
        return not near.any()
    return all(
        placed[a].intersection(placed[b]).area <= _ROUNDING
        for a, b in zip(first[near], second[near], strict=True)
    )
