"""Feet below the base: three stand firm on any bench, four on a flat one (common practice)."""

from __future__ import annotations

import math

import numpy as np
import shapely
from manifold3d import Manifold

from laywright.arrays import FloatArray
from laywright.errors import GeometryError
from laywright.mould.body.settings import Feet
from laywright.mould.solid import bore
from laywright.wording import three_figures

__all__ = ["feet_of", "foot_places"]

_SUNK = 0.5


def foot_places(outline: FloatArray, feet: Feet) -> FloatArray:
    """Return the centres of the feet in the plan view: (n, 2) float, mm.

    They stand as far out as they can, the first in the direction of a corner.

    Parameters
    ----------
    outline : (k, 2) float, mm
        Of the base.
    feet : Feet
        How many, how wide.

    Raises
    ------
    GeometryError
        If the base is too small for them.
    """
    room = shapely.Polygon(outline).buffer(0.0).buffer(-0.5 * feet.diameter)
    if not room.is_empty:
        room = max(getattr(room, "geoms", [room]), key=lambda part: part.area)
        edge = np.array(room.exterior.coords)[:-1]
        middle = 0.5 * (edge.min(axis=0) + edge.max(axis=0))
        half = np.maximum(np.ptp(edge, axis=0) / 2.0, 1e-9)
        turn = 2.0 * np.pi * np.arange(feet.number) / feet.number + math.pi / 4.0
        ways = np.stack([np.cos(turn), np.sin(turn)], axis=1)
        places = edge[np.argmax(((edge - middle) / half) @ ways.T, axis=0)]
        apart = np.linalg.norm(places[:, None] - places[None], axis=2)
        if (apart + 1e9 * np.eye(feet.number)).min() >= feet.diameter:
            return np.asarray(places)
    size = np.ptp(outline, axis=0)
    raise GeometryError(
        "the feet",
        f"a base of {three_figures(size[0])} x {three_figures(size[1])} mm",
        f"room for {feet.number} feet of {three_figures(feet.diameter)} mm",
        "set smaller feet, fewer of them, or a longer run-off",
    )


def feet_of(outline: FloatArray, feet: Feet, floor: float, patch: int) -> list[Manifold]:
    """Return the feet as solids that reach a little into the base.

    Parameters
    ----------
    outline : (k, 2) float, mm
        Of the base.
    feet : Feet
        How many, how wide, how high.
    floor : float, mm
        Height of the base's underside.
    patch : int
        Patch of the feet.
    """
    return [
        bore(centre, feet.diameter, floor - feet.height, floor + _SUNK, patch)
        for centre in foot_places(outline, feet)
    ]
