"""The run-off: the mould's surface goes on beyond the trim line.

At every point of the trim edge a ray leaves the working surface along its tangent plane, at
right angles to the edge as seen along the pull; convex corners get a fan of rays,
and a crease of the surface goes on along its own line.  Where the surface rises steeply
at the edge (the wall of a cavity), the ray goes straight on for a short lead and then bends
over to a nearly level rim, so that the mould keeps a wall instead of a knife edge.

A flange may follow: the ray bends level with a blend radius and goes on for the flange's width.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = [
    "Rays",
    "RunOff",
    "at_distance",
    "rays_along",
    "rays_of",
    "run_off_rows",
    "travelled",
    "unit_rows",
]

_FAN = math.radians(12.0)
_SHARP_CORNER = math.radians(25.0)
_WIDEST_FAN = math.radians(170.0)
_LEAD = 3.0
_BEND_RADIUS = 8.0
_BEND_STEP = math.radians(6.0)
_RISE = math.radians(20.0)
_ASIDE = math.radians(25.0)


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


@dataclass(frozen=True)
class RunOff:
    """How far the surface goes on beyond the trim line.

    Attributes
    ----------
    length : float, mm
        Of the run-off, measured along the ray.
    flange : float, mm
        Width of the level flange beyond it; 0 for none.
    blend : float, mm
        Radius with which the flange leaves the run-off.
    """

    length: float
    flange: float = 0.0
    blend: float = 6.0


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


def run_off_rows(rays: Rays, profile: RunOff) -> FloatArray:
    """Return points along every ray: (rows, k, 3) float, mm, the trim edge left out.

    Parameters
    ----------
    rays : Rays
        In the mould's frame.
    profile : RunOff
        Lengths along the ray.
    """
    length = profile.length
    rise = np.arcsin(np.clip(rays.along[:, 2], -1.0, 1.0))
    bend = np.maximum(rise - _RISE, 0.0)
    steps = math.ceil(float(bend.max()) / _BEND_STEP)
    level = np.column_stack([rays.outward, np.zeros(len(bend))])
    if steps == 0:
        rows, last = [rays.start + length * rays.along], rays.along
    else:
        lead = min(_LEAD, 0.2 * length)
        radius = np.minimum(_BEND_RADIUS, 0.6 * (length - lead) / np.maximum(bend, 1e-9))
        rows = [rays.start + lead * rays.along]
        rows += _arc(rows[0], rays.along, level, bend, radius, steps)
        over = _across(level, rays.along)
        last = np.cos(bend)[:, None] * rays.along + np.sin(bend)[:, None] * over
        rows.append(rows[-1] + (length - lead - radius * bend)[:, None] * last)
    if profile.flange > 0.0:
        turn = np.arccos(np.clip(np.einsum("ij,ij->i", last, level), -1.0, 1.0))
        number = max(1, math.ceil(float(turn.max()) / _BEND_STEP))
        rows += _arc(rows[-1], last, level, turn, np.full(len(turn), profile.blend), number)
        rows.append(rows[-1] + profile.flange * level)
    return np.asarray(np.stack(rows), dtype=np.float64)


def _arc(
    start: FloatArray,
    along: FloatArray,
    toward: FloatArray,
    turn: FloatArray,
    radius: FloatArray,
    steps: int,
) -> list[FloatArray]:
    """Return the points of arcs that turn from one direction towards another."""
    over = _across(toward, along)
    points = []
    for step in range(1, steps + 1):
        part = (turn * step / steps)[:, None]
        arc = np.sin(part) * along + (1.0 - np.cos(part)) * over
        points.append(np.asarray(start + radius[:, None] * arc, dtype=np.float64))
    return points


def travelled(lines: FloatArray) -> FloatArray:
    """Return how far each point of rays (rows, k, 3) is from its start: (rows, k) mm."""
    steps = np.linalg.norm(np.diff(lines, axis=0), axis=2)
    return np.concatenate([np.zeros((1, lines.shape[1])), np.cumsum(steps, axis=0)])


def at_distance(lines: FloatArray, gone: FloatArray, place: FloatArray) -> FloatArray:
    """Return the point of every ray at a distance along it: (k, 3) float.

    Parameters
    ----------
    lines : (rows, k, 3) float, mm
        Points along the rays, the first row at their starts.
    gone : (rows, k) float, mm
        As `travelled` gives it.
    place : (k,) float, mm
        Distances.
    """
    after, share = _segment(gone, place)
    ray = np.arange(lines.shape[1])
    share = share[:, None]
    return np.asarray((1.0 - share) * lines[after - 1, ray] + share * lines[after, ray])


def rays_along(rays: Rays, lines: FloatArray, distance: float) -> Rays:
    """Return rays that start where others have gone a distance, in their direction there.

    Parameters
    ----------
    rays : Rays
        The others, in the mould's frame.
    lines : (rows, k, 3) float, mm
        Points along them, the first row at their starts.
    distance : float, mm
        Along each of them.
    """
    gone, place = travelled(lines), np.full(lines.shape[1], distance)
    after, _ = _segment(gone, place)
    ray = np.arange(lines.shape[1])
    along = unit_rows(lines[after, ray] - lines[after - 1, ray])
    out = np.column_stack([rays.outward, np.zeros(len(ray))])
    away = np.einsum("ij,ij->i", along, out)[:, None]
    normal = away * np.array([0.0, 0.0, 1.0]) - along[:, 2:] * out
    start = at_distance(lines, gone, place)
    return Rays(rays.vertex, start, along, _across(normal, along), rays.outward)


def _segment(gone: FloatArray, place: FloatArray) -> tuple[IntArray, FloatArray]:
    """Return the row after each distance, and the share of the way to it from the row before."""
    ray = np.arange(gone.shape[1])
    after = np.clip((gone < place).sum(axis=0), 1, len(gone) - 1)
    start, end = gone[after - 1, ray], gone[after, ray]
    return after, np.clip((place - start) / np.maximum(end - start, 1e-300), 0.0, 1.0)


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
    """Return the line in which two facets' planes meet, on the side of `along`: (k, 3).

    Where it would lead far aside, `along` itself: strips between such rays would fold.
    """
    line = np.cross(one, other)
    side = np.sign(np.einsum("ij,ij->i", line, along))[:, None]
    found = np.where(side == 0.0, along, unit_rows(line) * side)
    plan, wanted = unit_rows(found[:, :2]), unit_rows(along[:, :2])
    near = np.einsum("ij,ij->i", plan, wanted) > math.cos(_ASIDE)
    return np.where(near[:, None], found, along)


def unit_rows(vectors: Array) -> FloatArray:
    """Return vectors (k, d) scaled to length 1."""
    length = np.linalg.norm(vectors, axis=1, keepdims=True)
    return np.asarray(vectors / np.maximum(length, 1e-300), dtype=np.float64)
