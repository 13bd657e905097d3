"""Where seams go along one axis: the cheapest places that every limit allows."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray

__all__ = ["place_seams"]

_UNEVEN = 0.05


def place_seams(
    places: FloatArray,
    costs: FloatArray,
    extent: tuple[float, float],
    count: int,
    longest: float,
    shortest: float,
    *,
    pinned: tuple[float, ...] = (),
    reach: float = 0.0,
) -> tuple[tuple[float, ...], float] | None:
    """Return the cheapest places of `count` seams, or None if none fit.

    Parameters
    ----------
    places, costs : (k,) float
        Candidate places, increasing, and what a seam costs at each.
    extent : tuple of 2 float, mm
        Where the body starts and ends.
    count : int
        Number of seams.
    longest, shortest : float, mm
        Limits of the length of every piece.
    pinned : tuple of float, mm
        Places that must be seams; all among the candidates.
    reach : float, mm
        How far every piece but the last stands out into the next; it counts for `longest`.

    Returns
    -------
    places : tuple of float
        The seams.
    cost : float
        Sum of their costs plus a little for uneven pieces.

    Notes
    -----
    Dynamic programming over the candidates (Bellman 1957): the best end of the first i pieces
    at each candidate follows from that of the first i - 1.  It is the true optimum among the
    candidates.
    """
    low, high = extent
    slack = 1e-9 * max(1.0, high - low)
    mean = (high - low) / (count + 1)
    scale = _UNEVEN * float(costs.mean()) if len(costs) else 0.0
    scale = scale if scale > 0.0 else 1.0
    pins = np.sort(np.array(pinned, dtype=np.float64))

    def piece(start: FloatArray, end: FloatArray, most: float) -> FloatArray:
        length = end - start
        fits = (length <= most + slack) & (length >= max(shortest - slack, slack))
        if len(pins):
            first = np.searchsorted(pins, start + slack, side="right")
            fits &= first == np.searchsorted(pins, end - slack, side="left")
        return np.where(fits, scale * (length / mean - 1.0) ** 2, np.inf)

    if count == 0:
        whole = float(piece(np.array([low]), np.array([high]), longest)[0])
        return ((), whole) if np.isfinite(whole) else None
    if len(places) < count:
        return None
    best = piece(np.full(len(places), low), places, longest - reach) + costs
    ways = places if count > 1 else places[:0]
    between = piece(ways[:, None], ways[None, :], longest - reach)
    came: list[FloatArray] = []
    for _ in range(count - 1):
        total = best[:, None] + between
        came.append(np.argmin(total, axis=0))
        best = total.min(axis=0) + costs
    best = best + piece(places, np.full(len(places), high), longest)
    at = int(np.argmin(best))
    if not np.isfinite(best[at]):
        return None
    cost, chosen = float(best[at]), [at]
    for back in reversed(came):
        chosen.append(int(back[chosen[-1]]))
    return tuple(float(places[i]) for i in reversed(chosen)), cost
