"""The run-off: the mould's surface goes on beyond the trim line.

At every point of the trim edge a ray leaves the working surface along its tangent plane, at
right angles to the edge as seen along the pull; convex corners get a fan of rays,
and a crease of the surface goes on along its own line.  Where the surface rises steeply
at the edge (the wall of a cavity), the ray goes straight on for a short lead and then bends
over to a nearly level rim, so that the mould keeps a wall instead of a knife edge.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["Rays", "rays_of", "run_off_rows", "unit_rows"]

_FAN = math.radians(12.0)
_SHARP_CORNER = math.radians(25.0)
_WIDEST_FAN = math.radians(170.0)
_LEAD = 3.0
_BEND_RADIUS = 8.0
_BEND_STEP = math.radians(6.0)
_RISE = math.radians(20.0)


@dataclass(frozen=True, eq=False)
class Rays:
    """Rays that leave a trim edge, in the order of the edge.

    Attributes
    ----------
    vertex : (k,) int
        Vertex of the surface that each ray starts at; the rays of a fan share one.
    start : (k, 3) float, mm
        Where they start.
    along : (k, 3) float
        Unit direction, tangent to the surface.
    normal : (k, 3) float
        Unit normal of the surface at the start, square to `along`.
    outward : (k, 2) float
        Unit direction away from the outline in the plan view.
    """

    vertex: IntArray
    start: FloatArray
    along: FloatArray
    normal: FloatArray
    outward: FloatArray


def rays_of(surface: Surface, loop: IntArray) -> Rays:
    """Return the rays that leave a boundary loop: one for each point, a fan at sharp corners.

    Parameters
    ----------
    surface : Surface
        In the mould's frame (pull upwards), mm.
    loop : (k,) int
        A boundary loop, the surface on its left.
    """
    turn = _turns(surface, loop)
    fans = np.where(turn > _SHARP_CORNER, np.ceil(turn / _FAN).astype(int) + 1, 1)
    return _fanned(surface, loop, turn, fans)


def _fanned(surface: Surface, loop: IntArray, turn: FloatArray, fans: IntArray) -> Rays:
    normal, flat = _edges(surface, loop)
    before, before_flat = np.roll(normal, 1, axis=0), np.roll(flat, 1, axis=0)
    place = np.repeat(np.arange(len(loop)), fans)
    share = np.concatenate([np.linspace(0, 1, n) if n > 1 else np.array([0.5]) for n in fans])
    first, last = _even_turn(share, np.clip(turn[place], -_WIDEST_FAN, _WIDEST_FAN))
    outward = unit_rows(first[:, None] * before_flat[place] + last[:, None] * flat[place])
    middle = unit_rows((1.0 - share)[:, None] * before[place] + share[:, None] * normal[place])
    tangent = np.column_stack(
        [middle[:, 2:] * outward, -np.einsum("ij,ij->i", middle[:, :2], outward)]
    )
    along = unit_rows(tangent)
    crease = np.einsum("ij,ij->i", before, normal) < math.cos(TOLERANCES.sharp_edge)
    alone = (crease & (fans == 1))[place, None]
    along = np.where(alone, _ridge(along, before[place], normal[place]), along)
    points = surface.vertices[loop][place]
    return Rays(loop[place], points, along, _across(middle, along), outward)


def run_off_rows(rays: Rays, length: float) -> FloatArray:
    """Return points along every ray: (rows, k, 3) float, mm, the trim edge left out.

    Parameters
    ----------
    rays : Rays
        In the mould's frame.
    length : float, mm
        Length of the run-off, measured along the ray.
    """
    rise = np.arcsin(np.clip(rays.along[:, 2], -1.0, 1.0))
    bend = np.maximum(rise - _RISE, 0.0)
    steps = math.ceil(float(bend.max()) / _BEND_STEP)
    if steps == 0:
        return np.asarray((rays.start + length * rays.along)[None], dtype=np.float64)
    lead = min(_LEAD, 0.2 * length)
    radius = np.minimum(_BEND_RADIUS, 0.6 * (length - lead) / np.maximum(bend, 1e-9))
    level = np.column_stack([rays.outward, np.zeros(len(bend))])
    over = _across(level, rays.along)
    rows = [rays.start + lead * rays.along]
    for step in range(1, steps + 1):
        turn = (bend * step / steps)[:, None]
        arc = radius[:, None] * (np.sin(turn) * rays.along + (1.0 - np.cos(turn)) * over)
        rows.append(rows[0] + arc)
    last = np.cos(bend)[:, None] * rays.along + np.sin(bend)[:, None] * over
    rows.append(rows[-1] + (length - lead - radius * bend)[:, None] * last)
    return np.asarray(np.stack(rows), dtype=np.float64)


def _edges(surface: Surface, loop: IntArray) -> tuple[FloatArray, FloatArray]:
    """Return normal and plan way out at every edge of a loop: (k, 3 or 2) each."""
    table = surface.edges
    low = np.minimum(loop, np.roll(loop, -1))
    high = np.maximum(loop, np.roll(loop, -1))
    size = len(surface.vertices)
    place = np.searchsorted(table.ends[:, 0] * size + table.ends[:, 1], low * size + high)
    normal = surface.normals[np.maximum(table.left[place], table.right[place])]
    points = surface.vertices[loop]
    edge = np.roll(points, -1, axis=0) - points
    return normal, unit_rows(np.stack([edge[:, 1], -edge[:, 0]], axis=1))


def _turns(surface: Surface, loop: IntArray) -> FloatArray:
    """Return the plan turn of a loop at every point, to the left positive: (k,) radians."""
    _, flat = _edges(surface, loop)
    before = np.roll(flat, 1, axis=0)
    sine = before[:, 0] * flat[:, 1] - before[:, 1] * flat[:, 0]
    return np.asarray(np.arctan2(sine, np.einsum("ij,ij->i", before, flat)), dtype=np.float64)


def _even_turn(share: FloatArray, turn: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Return the weights of two directions that give an even turn from one to the other."""
    safe = np.where(np.abs(turn) > 1e-6, turn, 1e-6)
    return np.sin((1.0 - share) * safe) / np.sin(safe), np.sin(share * safe) / np.sin(safe)


def _across(normal: FloatArray, along: FloatArray) -> FloatArray:
    return unit_rows(normal - np.einsum("ij,ij->i", normal, along)[:, None] * along)


def _ridge(along: FloatArray, one: FloatArray, other: FloatArray) -> FloatArray:
    """Return the line in which two facets' planes meet, on the side of `along`: (k, 3)."""
    line = np.cross(one, other)
    side = np.sign(np.einsum("ij,ij->i", line, along))[:, None]
    return np.where(side == 0.0, along, unit_rows(line) * side)


def unit_rows(vectors: Array) -> FloatArray:
    """Return vectors (k, d) scaled to length 1."""
    length = np.linalg.norm(vectors, axis=1, keepdims=True)
    return np.asarray(vectors / np.maximum(length, 1e-300), dtype=np.float64)
