"""A search for a tighter packing with the packing library, and the check of what it found."""

from __future__ import annotations

import threading
from typing import Any

import numpy as np
import shapely
from shapely.geometry import Polygon

from laywright.arrays import FloatArray
from laywright.cloth.skyline import Spot
from laywright.progress import Progress

__all__ = ["fits", "search"]

_ROUNDING = 1e-3
_CHECK_EVERY = 0.1
_TIGHT = 0.95


def search(
    outlines: list[FloatArray],
    width: float,
    gap: float,
    seconds: float,
    seed: int,
    progress: Progress,
) -> list[Spot] | None:
    """Search for a short strip that holds all outlines.

    Parameters
    ----------
    outlines : list of (k, 2) float, mm
        Outlines, x along the strip.
    width, gap : float, mm
        Width of the strip and smallest distance between pieces.
    seconds : float
        Time budget, at least 1.
    seed : int
        Start of the search.
    progress : Progress
        Told the share of the time used; what it raises ends the wait, while the search runs
        out its time in the background and is thrown away.

    Returns
    -------
    list of Spot or None
        In the order of the outlines; None where the packing library is not installed or
        found nothing.  A piece nearly as wide as the strip is not tried: the library gives up
        on it, and it leaves nothing beside it to gain.
    """
    if max(float(np.ptp(outline[:, 1])) for outline in outlines) > _TIGHT * width:
        return None
    try:
        import spyrrow  # noqa: PLC0415 - optional: without it the simple packing stands
    except ImportError:
        return None
    items = [
        spyrrow.Item(str(index), _rough(outline, width, gap), 1, [0.0, 180.0])
        for index, outline in enumerate(outlines)
    ]
    config = spyrrow.StripPackingConfig(
        total_computation_time=max(1, round(seconds)),
        min_items_separation=gap if gap > 0.0 else None,
        num_workers=1,
        seed=seed,
    )
    found: list[Any] = []

    def work() -> None:
        # the library keeps half the gap to the edges of its strip as well
        instance = spyrrow.StripPackingInstance("roll", width + gap, items)
        try:
            found.append(instance.solve(config))
        except BaseException:  # a panic of the library is no Exception
            return

    worker = threading.Thread(target=work, daemon=True)
    worker.start()
    waited = 0.0
    while worker.is_alive():
        worker.join(_CHECK_EVERY)
        waited += _CHECK_EVERY
        progress(min(waited / (seconds + 1.0), 0.99), "searching for a shorter piece of the roll")
    if not found:
        return None
    spots: dict[int, Spot] = {}
    for item in found[0].placed_items:
        turned = abs((item.rotation % 360.0) - 180.0) < 90.0
        x, y = item.translation
        spots[int(item.id)] = Spot(float(x), float(y) - gap / 2.0, turned)
    if len(spots) != len(outlines):
        return None
    return _from_zero(outlines, [spots[index] for index in range(len(outlines))])


def _rough(outline: FloatArray, width: float, gap: float) -> list[tuple[float, float]]:
    """Return an outline with fewer points that leaves no part of the given one outside."""
    slack = max(0.1 * gap, 0.2)
    rough = Polygon(outline).buffer(slack, join_style="mitre").simplify(slack)
    points = np.asarray(rough.exterior.coords)[:-1]
    if float(np.ptp(points[:, 1])) > width:
        points = outline
    return [(float(x), float(y)) for x, y in points]


def _from_zero(outlines: list[FloatArray], spots: list[Spot]) -> list[Spot]:
    """Shift all pieces so that the first begins at the start of the roll."""
    start = min(
        float(spot.on(outline)[:, 0].min()) for outline, spot in zip(outlines, spots, strict=True)
    )
    return [Spot(spot.x - start, spot.y, spot.turned) for spot in spots]


def fits(outlines: list[FloatArray], spots: list[Spot], width: float, gap: float) -> bool:
    """Return whether all pieces lie on the strip and keep the gap, to 1e-3 mm."""
    placed = [Polygon(spot.on(outline)) for outline, spot in zip(outlines, spots, strict=True)]
    low, high = -_ROUNDING, width + _ROUNDING
    if any(piece.bounds[1] < low or piece.bounds[3] > high for piece in placed):
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
