"""Release film or tape in strips on a face that is nearly developable.

A strip lies along its middle.  On a face of Gauss curvature K its edges, half a width w away,
are longer or shorter than its middle by the share K w^2 / 8 (on a sphere of radius R a
parallel at the distance w/2 has cos(w / 2R) of the length), and what is too long wrinkles.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from shapely import affinity
from shapely.geometry import Polygon, box

from laywright.arrays import FloatArray
from laywright.errors import InputError
from laywright.stage import stage

__all__ = ["StripPlan", "StripSettings", "edge_excess", "plan_strips", "widest_strip"]

_LEAST = 1e-6  # mm
_WRINKLE = 0.005  # share by which an edge may be too long; common practice, no source


@dataclass(frozen=True)
class StripSettings:
    """Strips of film or tape.

    Attributes
    ----------
    width : float, mm
        Of the roll; 50 is usual for tape.
    lap : float, mm
        By which a strip lies on its neighbour.
    beyond : float, mm
        By which it reaches beyond the trim line.
    """

    width: float = 50.0
    lap: float = 3.0
    beyond: float = 25.0

    def __post_init__(self) -> None:
        if not (0.0 <= self.lap < self.width <= 5000.0 and 0.0 <= self.beyond <= 1000.0):
            raise InputError(
                "strips",
                f"{self.width:g} mm wide with a lap of {self.lap:g} mm",
                "a lap smaller than the width",
                "correct the two",
            )


@dataclass(frozen=True)
class StripPlan:
    """Strips that cover a face.

    Attributes
    ----------
    lengths : tuple of float, mm
        Of the strips, from one edge to the other.
    total_mm : float, mm
        Of all strips.
    area_mm2 : float, mm^2
        Of film or tape.
    excess : float
        Share by which the edges of a strip are too long or too short.
    widest_mm : float or None, mm
        Widest strip that lies without wrinkles; None where any does.
    remarks : tuple of str
    digest : str
        Of its inputs.
    """

    lengths: tuple[float, ...]
    total_mm: float
    area_mm2: float
    excess: float
    widest_mm: float | None
    remarks: tuple[str, ...]
    digest: str = ""


def edge_excess(curvature: float, width: float) -> float:
    """Return by which share the edges of a strip (mm) are too long at K (1/mm^2).

    Examples
    --------
    >>> edge_excess(1e-6, 200.0)
    0.005
    """
    return abs(curvature) * width**2 / 8.0


def widest_strip(curvature: float, excess: float = _WRINKLE) -> float | None:
    """Return the widest strip (mm) whose edges are off by no more than a share; None for any."""
    return math.sqrt(8.0 * excess / abs(curvature)) if curvature else None


@stage("Release Strips", version=1)
def plan_strips(outline: FloatArray, curvature: float, settings: StripSettings) -> StripPlan:
    """Return the strips that cover a face.

    Parameters
    ----------
    outline : (k, 2) float, mm
        Of the face laid flat.
    curvature : float, 1/mm^2
        Gauss curvature of the face where it is large.
    settings : StripSettings
    """
    region = Polygon(np.asarray(outline))
    if not region.is_valid or region.is_empty:
        raise InputError("strips", "an outline that crosses itself", "a simple outline", "check it")
    region = region.buffer(settings.beyond) if settings.beyond > _LEAST else region
    left, low, right, high = region.bounds
    if high - low > right - left:
        region = affinity.rotate(region, 90.0, origin=(0.0, 0.0))
        left, low, right, high = region.bounds
    pitch = settings.width - settings.lap
    count = max(1, math.ceil((high - low - settings.lap) / pitch - 1e-9))
    lengths = []
    for number in range(count):
        bottom = low + number * pitch
        piece = region.intersection(box(left, bottom, right, bottom + settings.width))
        lengths.append(piece.bounds[2] - piece.bounds[0])
    total = math.fsum(lengths)
    excess = edge_excess(curvature, settings.width)
    widest = widest_strip(curvature)
    remarks: tuple[str, ...] = ()
    if widest is not None and settings.width > widest:
        remarks = (
            f"Strips of {settings.width:g} mm would wrinkle where the face is curved both ways: "
            f"take {math.floor(widest)} mm or less there, or wax instead.",
        )
    return StripPlan(tuple(lengths), total, total * settings.width, excess, widest, remarks)
