"""The run-off: the mould's surface goes on beyond the trim line.

At every point of the trim edge a ray leaves the working surface along its tangent plane, at
right angles to the edge; convex corners get a fan of rays.  Where the surface rises steeply
at the edge (the wall of a cavity), the ray goes straight on for a short lead and then bends
over to a nearly level rim, so that the mould keeps a wall instead of a knife edge.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray
from laywright.surface.triangles import Surface

__all__ = ["Rays", "rays_of", "run_off_rows"]

_FAN = math.radians(12.0)
_SHARP_CORNER = math.radians(25.0)
_SQUARENESS = 5e-4
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
    """Return the rays that leave a boundary loop.

    Parameters
    ----------
    surface : Surface
        In the mould's frame (pull upwards), mm.
    loop : (k,) int
        A boundary loop, the surface on its left.
    """
    normal = _edge_normals(surface, loop)
    points = surface.vertices[loop]
    edge = np.roll(points, -1, axis=0) - points
    edge /= np.linalg.norm(edge, axis=1, keepdims=True)
    away = np.cross(edge, normal)
    before, before_normal = np.roll(away, 1, axis=0), np.roll(normal, 1, axis=0)
    turn = np.arctan2(
        np.einsum("ij,ij->i", np.cross(np.roll(edge, 1, axis=0), edge), before_normal + normal),
        2.0 * np.einsum("ij,ij->i", np.roll(edge, 1, axis=0), edge),
    )
    fans = np.where(turn > _SHARP_CORNER, np.ceil(turn / _FAN).astype(int) + 1, 1)
    place = np.repeat(np.arange(len(loop)), fans)
    share = np.concatenate([np.linspace(0, 1, n) if n > 1 else np.array([0.5]) for n in fans])
    mixed = (1.0 - share)[:, None] * before[place] + share[:, None] * away[place]
    alone = (fans == 1)[place]
    along = np.where(
        alone[:, None], _squared(mixed, before_normal[place], normal[place]), _unit(mixed)
    )
    middle = _unit((1.0 - share)[:, None] * before_normal[place] + share[:, None] * normal[place])
    middle = _unit(middle - np.einsum("ij,ij->i", middle, along)[:, None] * along)
    flat = np.stack([edge[:, 1], -edge[:, 0]], axis=1)
    flat /= np.maximum(np.linalg.norm(flat, axis=1, keepdims=True), 1e-12)
    outward = _unit(
        (1.0 - share)[:, None] * np.roll(flat, 1, axis=0)[place] + share[:, None] * flat[place]
    )
    return Rays(loop[place], points[place], along, middle, outward)


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
    over = _unit(level - np.einsum("ij,ij->i", level, rays.along)[:, None] * rays.along)
    rows = [rays.start + lead * rays.along]
    for step in range(1, steps + 1):
        turn = (bend * step / steps)[:, None]
        arc = radius[:, None] * (np.sin(turn) * rays.along + (1.0 - np.cos(turn)) * over)
        rows.append(rows[0] + arc)
    last = np.cos(bend)[:, None] * rays.along + np.sin(bend)[:, None] * over
    rows.append(rows[-1] + (length - lead - radius * bend)[:, None] * last)
    return np.asarray(np.stack(rows), dtype=np.float64)


def _edge_normals(surface: Surface, loop: IntArray) -> FloatArray:
    """Return the normal of the triangle at every edge of a boundary loop: (k, 3) float."""
    table = surface.edges
    low = np.minimum(loop, np.roll(loop, -1))
    high = np.maximum(loop, np.roll(loop, -1))
    size = len(surface.vertices)
    place = np.searchsorted(table.ends[:, 0] * size + table.ends[:, 1], low * size + high)
    owner = np.maximum(table.left[place], table.right[place])
    return np.asarray(surface.normals[owner], dtype=np.float64)


def _squared(along: FloatArray, one: FloatArray, other: FloatArray) -> FloatArray:
    """Turn directions into both neighbouring facets' planes as far as these disagree."""
    matrix = (
        one[:, :, None] * one[:, None, :]
        + other[:, :, None] * other[:, None, :]
        + _SQUARENESS * np.eye(3)
    )
    solved = np.linalg.solve(matrix, _SQUARENESS * along[:, :, None])[:, :, 0]
    return _unit(np.asarray(solved, dtype=np.float64))


def _unit(vectors: FloatArray) -> FloatArray:
    length = np.linalg.norm(vectors, axis=1, keepdims=True)
    return np.asarray(vectors / np.maximum(length, 1e-300), dtype=np.float64)
