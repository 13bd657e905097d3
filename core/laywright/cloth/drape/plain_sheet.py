"""Laying a sheet that is alike in all directions and held at one point: mat, film, tape.

Nothing but the surface decides how it strains, so the point and the arrow only say where zero
is and which way u runs.  One factored Laplace matrix serves all steps
(`laywright.cloth.drape.rigid`).
"""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray, Vector, unit_vector
from laywright.cloth.drape.energy import Sheet
from laywright.cloth.drape.hold import ARROW
from laywright.cloth.drape.place import Place
from laywright.cloth.drape.solver import Settled, share_done
from laywright.cloth.drape.strain import jacobians, smooth_facets
from laywright.cloth.drape.thread import lay_thread, neighbours
from laywright.progress import Progress
from laywright.surface.triangles import Surface

__all__ = ["lay_plain"]

_MOST = 200


def lay_plain(
    sheet: Sheet, place: Place, warp: Vector, start: FloatArray, progress: Progress, *, rest: float
) -> Settled | None:
    """Lay a sheet that is alike in all directions.

    Parameters
    ----------
    sheet : Sheet
        The surface.
    place : Place
        The start point.
    warp : tuple of 3 float
        Direction along the surface there that u follows in the mean, over a tenth of the
        surface's size to both sides.
    start : (n, 2) float, mm
        A flat map that turns no triangle over.
    progress : Progress
        Told after every step.
    rest : float
        The end is where no point moves further than this share of the surface's size.

    Returns
    -------
    Settled or None
        None where it found no rest.
    """
    surface = sheet.surface
    size = float(np.sqrt(surface.area))

    def tell(moved: float) -> None:
        progress(share_done(moved / size, rest), "the sheet settles")

    found = sheet.rigid.laid(start, _MOST, rest * size, tell)
    if not found.at_rest:
        return None
    flat = found.place.reshape(-1, 2)
    ahead = _ahead(surface, flat, place, warp, ARROW * size)
    turned = flat @ np.array([[ahead[0], -ahead[1]], [ahead[1], ahead[0]]])
    return Settled(turned, jacobians(surface, turned), found.steps, at_rest=True)


def _ahead(
    surface: Surface, flat: FloatArray, place: Place, warp: Vector, reach: float
) -> FloatArray:
    """Return the unit direction in the flat of a thread laid to both sides of a place."""
    across, smooth = neighbours(surface), smooth_facets(surface)
    tips = []
    for sign in (1.0, -1.0):
        way = unit_vector(sign * np.array(warp))
        thread = lay_thread(surface, place, way, reach, across=across, smooth=smooth)
        tips.append(place.value(surface, flat))
        if len(thread.share):
            share = thread.share[-1]
            first, last = flat[thread.ends[-1]]
            tips[-1] = (1.0 - share) * first + share * last
    step = tips[0] - tips[1]
    ahead: FloatArray = step / np.linalg.norm(step)
    return ahead
