"""Where marks may lie on the run-off, and a figure laid onto it beside a tick."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import Array, FloatArray
from laywright.mould.body.scribe import clear_of_groove
from laywright.mould.marks import strokes
from laywright.surface.distance import distances
from laywright.surface.triangles import Surface

__all__ = ["Ground", "figure_beside"]

_FROM_RIM, _ROUNDING = 1.0, 1e-6
_HIGH, _LEAST_PENS, _BESIDE = 6.0, 4.5, 1.2
_BACK = (0.0, 1.5, 3.0)
_GRID = 6.0
_SPACING = 0.5
_REACH, _NEAR = 120.0, 2.0
_FACING = 0.3


@dataclass(frozen=True, eq=False)
class Ground:
    """Where marks may lie, in the mould's frame.

    Attributes
    ----------
    flat : Surface
        The working surface.
    upper : Surface
        The upper surface with its run-off.
    run_off : int
        Patch of the run-off.
    away : float, mm
        How far beyond the trim line nothing is marked: trim line, or edge of the cloth.
    depth, width : float, mm
        Of the grooves.
    """

    flat: Surface
    upper: Surface
    run_off: int
    away: float
    depth: float
    width: float

    def clear(self, points: FloatArray) -> Array:
        """Return which points (k, 3) are far enough from working area and rim: (k,) bool."""
        loop = self.upper.boundary_loops[0]
        lines = np.stack([loop, np.roll(loop, -1), loop], axis=1)
        rim = Surface.single(self.upper.vertices, lines)
        from_trim = self.away + clear_of_groove(self.width) - _ROUNDING
        from_rim = _FROM_RIM - _ROUNDING
        return np.asarray(
            (distances(points, self.flat) >= from_trim) & (distances(points, rim) >= from_rim)
        )


def figure_beside(
    ground: Ground, points: FloatArray, normals: FloatArray, text: str
) -> list[tuple[FloatArray, FloatArray]]:
    """Return the strokes of a figure beside the outer end of a tick, its top outwards.

    Parameters
    ----------
    ground : Ground
        Where it may lie.
    points, normals : (k, 3) float, mm
        The tick from the inside outwards, and the normals of the surface there.
    text : str
        The figure.

    Returns
    -------
    list of tuple of 2 (m, 3) float
        Each stroke's points and normals; none where there is no room.
    """
    gone = np.concatenate([[0.0], np.cumsum(np.linalg.norm(np.diff(points, axis=0), axis=1))])
    high = min(_HIGH, float(gone[-1]))
    if high < _LEAST_PENS * ground.width:
        return []
    lines = [line * (high / _GRID) - np.array([0.0, 0.5 * high]) for line in strokes(text)]
    pairs = np.concatenate([np.stack([line[:-1], line[1:]], axis=1) for line in lines])
    wide = float(pairs[..., 0].max())
    beside = 0.5 * ground.width + _BESIDE
    for back in _BACK:
        frame = _frame(points, normals, gone, float(gone[-1]) - 0.5 * high - back)
        for shift in (-wide - beside, beside):
            laid = [_laid(ground, pair, frame) for pair in pairs + np.array([shift, 0.0])]
            whole = [line for line in laid if line is not None]
            every = [line for line, _ in whole]
            if len(whole) == len(laid) and ground.clear(np.concatenate(every)).all():
                return whole
    return []


def _frame(
    points: FloatArray, normals: FloatArray, gone: FloatArray, place: float
) -> tuple[FloatArray, ...]:
    """Return where a tick has gone so far, and the axes there: right, up along it, normal."""
    middle = int(np.argmin(np.abs(gone - place)))
    normal = normals[middle]
    up = points[min(middle + 1, len(points) - 1)] - points[max(middle - 1, 0)]
    up = up - (up @ normal) * normal
    up /= np.linalg.norm(up)
    return points[middle], np.cross(up, normal), up, normal


def _laid(
    ground: Ground, ends: FloatArray, frame: tuple[FloatArray, ...]
) -> tuple[FloatArray, FloatArray] | None:
    """Return a stroke laid onto the run-off along the frame's normal; None where it leaves it.

    Its two ends are given along the frame's axes: (2, 2) float, mm.
    """
    origin, right, up, normal = frame
    first, second = ends
    number = max(2, round(float(np.linalg.norm(second - first)) / _SPACING) + 1)
    share = np.linspace(0.0, 1.0, number)[:, None]
    flat = (1.0 - share) * first + share * second
    upper = ground.upper
    corners = upper.corners - origin
    facing = (upper.patches == ground.run_off) & (upper.normals @ normal > _FACING)
    near = np.linalg.norm(corners, axis=2).min(axis=1) < _REACH
    chosen = np.flatnonzero(facing & near)
    a, b, c = np.moveaxis(corners[chosen] @ np.stack([right, up, normal], axis=1), 1, 0)
    u, v = b - a, c - a
    area = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
    x, y = (flat[:, None, axis] - a[None, :, axis] for axis in (0, 1))
    with_u = (x * v[:, 1] - y * v[:, 0]) / area
    with_v = (u[:, 0] * y - u[:, 1] * x) / area
    inside = (with_u >= -1e-9) & (with_v >= -1e-9) & (with_u + with_v <= 1.0 + 1e-9)
    height = a[:, 2] + with_u * u[:, 2] + with_v * v[:, 2]
    height = np.where(inside & (np.abs(height) < _NEAR), height, np.inf)
    if height.size == 0:
        return None
    lowest = np.argmin(np.abs(height), axis=1)
    raised = height[np.arange(number), lowest]
    if not np.isfinite(raised).all():
        return None
    points = origin + flat[:, :1] * right + flat[:, 1:] * up + raised[:, None] * normal
    even = upper.normals[chosen[lowest]].mean(axis=0)
    return points, np.tile(even, (number, 1))
