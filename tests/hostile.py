"""Surfaces that nobody should send, and everybody does one day.

Each entry of `CORPUS` makes the raw arrays of one: vertices (n, 3) in mm, triangles (m, 3) and
patch names.  All are inventions.
"""

from __future__ import annotations

import math

import numpy as np

import shapes
from laywright.surface.triangles import Surface

__all__ = ["CORPUS", "made"]


def _parts(surface):
    return surface.vertices.copy(), surface.triangles.copy(), surface.patches.copy()


def _hatch():
    return _parts(shapes.hatch(spacing=22.0))


def _plate(size=100.0, cells=(6, 6), height=lambda x, y: 0.0 * x):
    return _parts(shapes.graph(height, (0.0, size), (0.0, size), cells))


def _changed(change):
    def make():
        vertices, triangles, patches = _hatch()
        return change(vertices, triangles, patches)

    return make


def _each(triangles, chosen):
    triangles = triangles.copy()
    triangles[chosen] = triangles[chosen][:, ::-1]
    return triangles


def _moved(vertices, index, to):
    vertices[index] = to
    return vertices


def _two(v, t, p):
    shifted = np.add(v, [1000.0, 0.0, 0.0])
    return np.concatenate([v, shifted]), np.concatenate([t, t + len(v)]), np.concatenate([p, p])


def _touching():
    v, t, p = _plate(50.0)
    other = np.add(v, [50.0, 50.0, 0.0])
    corner = int(np.argmax(v.sum(axis=1)))
    twin = int(np.argmin(v.sum(axis=1)))
    moved = t + len(v)
    moved[moved == twin + len(v)] = corner
    return np.concatenate([v, other]), np.concatenate([t, moved]), np.concatenate([p, p])


def _moebius(count=60, width=30.0, radius=100.0):
    turn = 2.0 * math.pi * np.arange(count) / count
    rows = []
    for side in (-0.5, 0.5):
        reach = radius + side * width * np.cos(turn / 2.0)
        high = side * width * np.sin(turn / 2.0)
        rows.append(np.stack([reach * np.cos(turn), reach * np.sin(turn), high], axis=1))
    here, after = np.arange(count), (np.arange(count) + 1) % count
    low, top = here, here + count
    next_low = np.where(after == 0, count, after)
    next_top = np.where(after == 0, 0, after + count)
    triangles = np.concatenate(
        [np.stack([low, next_low, top], 1), np.stack([top, next_low, next_top], 1)]
    )
    return np.concatenate(rows), triangles, np.zeros(2 * count, dtype=int)


def _bow_tie():
    v = np.array([[0, 0, 0], [50, 50, 0], [100, 0, 0], [100, 100, 0], [0, 100, 0]], float)
    return v, np.array([[0, 1, 4], [1, 2, 3]]), np.zeros(2, dtype=int)


def _overlapping_spiral():
    """A level ramp of one and a half turns: it covers itself, seen from above."""
    turn = np.linspace(0.0, 3.0 * math.pi, 40)
    inner = np.stack([40 * np.cos(turn), 40 * np.sin(turn), 3.0 * turn], axis=1)
    outer = np.stack([90 * np.cos(turn), 90 * np.sin(turn), 3.0 * turn], axis=1)
    here = np.arange(39)
    triangles = np.concatenate(
        [
            np.stack([here, here + 40, here + 41], axis=1),
            np.stack([here, here + 41, here + 1], axis=1),
        ]
    )
    return np.concatenate([inner, outer]), triangles, np.zeros(78, dtype=int)


def _needles():
    """A plate of triangles 100 mm long and 0.001 mm wide among plain ones."""
    x = np.sort(np.concatenate([np.linspace(0, 100, 8), 50 + 0.001 * np.arange(1, 8)]))
    grid = np.stack(np.meshgrid(x, [0.0, 100.0], indexing="ij"), axis=-1).reshape(-1, 2)
    v = np.column_stack([grid, 0.001 * (grid[:, 0] - 50) ** 2])
    a = 2 * np.arange(len(x) - 1)
    triangles = np.concatenate(
        [np.stack([a, a + 2, a + 1], axis=1), np.stack([a + 1, a + 2, a + 3], axis=1)]
    )
    return v, triangles, np.zeros(len(triangles), dtype=int)


def _spike(v, t, p):
    return _moved(v, len(v) // 2, v[len(v) // 2] + [0.0, 0.0, 300.0]), t, p


def _noise(size):
    def change(v, t, p):
        return v + np.random.default_rng(4).normal(0.0, size, v.shape), t, p

    return _changed(change)


def _soup():
    draw = np.random.default_rng(7)
    v = draw.uniform(0.0, 100.0, (60, 3))
    return v, np.arange(60).reshape(-1, 3), np.zeros(20, dtype=int)


def _many_patches():
    v, t, _ = _plate(200.0, (40, 40), lambda x, y: 0.002 * ((x - 100) ** 2 + (y - 100) ** 2))
    return v, t, np.arange(len(t))


def _holes(v, t, p):
    middle = v[t].mean(axis=1)
    gone = np.linalg.norm(middle[:, :2] - [100.0, 60.0], axis=1) < 30
    gone |= np.linalg.norm(middle[:, :2] + [100.0, 60.0], axis=1) < 30
    used, number = np.unique(t[~gone], return_inverse=True)
    return v[used], number.reshape(-1, 3), p[~gone]


CORPUS = {
    "nothing": lambda: (np.zeros((0, 3)), np.zeros((0, 3), int), np.zeros(0, int)),
    "one triangle": lambda: (
        np.array([[0, 0, 0], [60, 0, 0], [0, 60, 3.0]]),
        np.array([[0, 1, 2]]),
        np.zeros(1, int),
    ),
    "turned over": _changed(lambda v, t, p: (v, t[:, ::-1], p)),
    "a few turned over": _changed(lambda v, t, p: (v, _each(t, slice(3, 9)), p)),
    "all doubled": _changed(lambda v, t, p: (v, np.concatenate([t, t]), np.concatenate([p, p]))),
    "doubled and turned": _changed(
        lambda v, t, p: (v, np.concatenate([t, t[:, ::-1]]), np.concatenate([p, p]))
    ),
    "triangles without area": _changed(
        lambda v, t, p: (
            v,
            np.concatenate([t, t[:5][:, [0, 0, 1]]]),
            np.concatenate([p, p[:5]]),
        )
    ),
    "a point that is no number": _changed(lambda v, t, p: (_moved(v, 4, math.nan), t, p)),
    "a point at infinity": _changed(lambda v, t, p: (_moved(v, 4, math.inf), t, p)),
    "a point that is not there": _changed(lambda v, t, p: (v, np.where(t == 4, len(v), t), p)),
    "points nobody uses": _changed(
        lambda v, t, p: (np.concatenate([v, np.add(v, [0, 0, 1e6])]), t, p)
    ),
    "holes": _changed(_holes),
    "three pieces on one edge": _changed(
        lambda v, t, p: (
            np.concatenate([v, np.add(v[:1], [0, 0, 40])]),
            np.concatenate([t, [[*t[len(t) // 2][:2], len(v)]]]),
            np.append(p, 0),
        )
    ),
    "two pieces": _changed(_two),
    "two pieces at one corner": _touching,
    "one side only": _moebius,
    "closed": lambda: _parts(shapes.sphere(60.0, 12)),
    "closed with a handle": lambda: _parts(shapes.torus(60.0, 20.0, 24, 12)),
    "crossing outline": _bow_tie,
    "covering itself": _overlapping_spiral,
    "knife-thin triangles": _needles,
    "knife-thin strip": lambda: _parts(
        shapes.graph(lambda x, y: 0.0 * x, (0.0, 300.0), (0.0, 0.4), (60, 1))
    ),
    "a spike": _changed(_spike),
    "a little noise": _noise(0.02),
    "much noise": _noise(3.0),
    "a soup": _soup,
    "level": _plate,
    "upright wall": lambda: _parts(
        shapes.cylinder_patch(60.0, 2.0, 80.0, (12, 4)).moved(
            shapes.cylinder_patch(60.0, 2.0, 80.0, (12, 4)).vertices[:, [0, 2, 1]]
        )
    ),
    "whole tube": lambda: _parts(shapes.cylinder_patch(60.0, 1.99 * math.pi, 80.0, (40, 6))),
    "far from the origin": _changed(lambda v, t, p: (np.add(v, [2e6, -3e6, 1e6]), t, p)),
    "huge": _changed(lambda v, t, p: (10.0 * v, t, p)),
    "tiny": _changed(lambda v, t, p: (0.02 * v, t, p)),
    "in metres": _changed(lambda v, t, p: (0.001 * v, t, p)),
    "in micrometres": _changed(lambda v, t, p: (1000.0 * v, t, p)),
    "saw teeth": lambda: _plate(120.0, (24, 2), lambda x, y: 8.0 * np.abs((x / 10.0) % 2 - 1)),
    "a deep well": lambda: _plate(
        200.0, (24, 24), lambda x, y: -90.0 / (1 + ((x - 100) ** 2 + (y - 100) ** 2) / 300.0)
    ),
    "thousands of faces": _many_patches,
}


def made(name):
    """Return the surface of that name; building it may already be refused."""
    vertices, triangles, patches = CORPUS[name]()
    names = tuple(f"Face{number + 1}" for number in range(int(patches.max(initial=0)) + 1))
    return Surface(vertices, triangles, patches, names)
