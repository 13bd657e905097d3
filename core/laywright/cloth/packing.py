"""A search for a tighter packing with the packing library, and the check of what it found."""

from __future__ import annotations

import threading
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import shapely
from shapely.geometry import Polygon

from laywright.arrays import FloatArray
from laywright.cloth.bottom_left import drawn_back
from laywright.cloth.spot import Spot
from laywright.errors import Cancelled
from laywright.progress import Progress

__all__ = ["Found", "fits", "search"]

_ROUNDING = 1e-3
_CHECK_EVERY = 0.1
_TIGHT = 0.95
_DRAW = 3.0  # mm
_SLACK = 0.05  # mm


@dataclass(frozen=True)
class Found:
    """What a search found.

    Attributes
    ----------
    spots : tuple of Spot or None
        The shortest packing, in the order of the outlines; None where nothing was found.
    stopped : bool
        Whether the person ended the search before its time.
    """

    spots: tuple[Spot, ...] | None
    stopped: bool = False


def search(
    outlines: Sequence[FloatArray],
    mirrored: Sequence[bool],
    width: float,
    gap: float,
    seconds: float,
    seed: int,
    progress: Progress,
) -> Found:
    """Search for a short strip that holds all outlines.

    Parameters
    ----------
    outlines : sequence of (k, 2) float, mm
        Outlines, x along the strip.
    mirrored : sequence of bool
        Which of them lie mirrored; each may be turned by half a turn.
    width, gap : float, mm
        Width of the strip and smallest distance between pieces.
    seconds : float
        Time budget, at least 1.
    seed : int
        Start of the search.
    progress : Progress
        Told the share of the time used.  When it raises `Cancelled` the best packing so far is
        given, and the search runs out its time in the background unheard.

    Returns
    -------
    Found
        Nothing where the packing library is not installed.  A piece nearly as wide as the
        strip is not tried: the library gives up on it, and it leaves nothing beside it to gain.
    """
    if max(float(np.ptp(outline[:, 1])) for outline in outlines) > _TIGHT * width:
        return Found(None)
    try:
        import spyrrow  # noqa: PLC0415 - optional: without it the simple packing stands
    except ImportError:
        return Found(None)
    flipped = [
        Spot(0.0, 0.0, mirrored=over).on(outline)
        for outline, over in zip(outlines, mirrored, strict=True)
    ]
    items = [
        spyrrow.Item(str(index), _rough(outline, width), 1, [0.0, 180.0])
        for index, outline in enumerate(flipped)
    ]
    config = spyrrow.StripPackingConfig(
        total_computation_time=max(1, round(seconds)),
        min_items_separation=gap if gap > 0.0 else None,
        num_workers=1,
        seed=seed,
    )
    # the library keeps half the gap to the edges of its strip as well
    instance = spyrrow.StripPackingInstance("roll", width + gap, items)
    heard = spyrrow.ProgressQueue()
    complete = (spyrrow.ReportType.ExplFeas, spyrrow.ReportType.CmprFeas)
    best: list[Any] = []

    def listen() -> None:
        for kind, solution in heard.drain():
            if kind in complete and (not best or solution.width <= best[0].width):
                best[:] = [solution]

    def work() -> None:
        try:
            last = instance.solve(config, progress=heard)
        except BaseException:  # a panic of the library is no Exception
            return
        best[:] = [last]

    worker = threading.Thread(target=work, daemon=True)
    worker.start()
    stopped = _wait(worker, listen, seconds, progress)
    if stopped or worker.is_alive():
        listen()
    if not best:
        return Found(None, stopped)
    spots: list[Spot | None] = [None] * len(outlines)
    for item in best[0].placed_items:
        index = int(item.id)
        turned = abs((item.rotation % 360.0) - 180.0) < 90.0
        x, y = item.translation
        spots[index] = Spot(float(x), float(y) - gap / 2.0, turned, mirrored[index])
    placed = [spot for spot in spots if spot is not None]
    if len(placed) != len(outlines):
        return Found(None, stopped)
    placed = _from_zero(outlines, placed)
    return Found(tuple(drawn_back(outlines, placed, gap, reach=_DRAW)), stopped)


def _wait(
    worker: threading.Thread, listen: Callable[[], None], seconds: float, progress: Progress
) -> bool:
    """Wait until the search ends; return whether it was stopped before."""
    waited = 0.0
    while worker.is_alive():
        worker.join(_CHECK_EVERY)
        waited += _CHECK_EVERY
        if worker.is_alive():
            listen()
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
