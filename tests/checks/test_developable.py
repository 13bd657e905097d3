"""Flattening of surfaces that unroll, against their closed forms.

Flat coordinates come from `laywright.cloth.drape.flatten`; lengths and areas of smooth surfaces
from two or more meshes by Richardson's extrapolation, because facets cut chords.
"""

import math
from itertools import pairwise

import numpy as np
import pytest

import shapes
from checks.reference import agree, row
from laywright.cloth.drape.flatten import flatten
from laywright.surface.triangles import Surface


def extrapolated(measure, cells):
    """Limit of measures whose error is a series in the square of the spacing (Romberg)."""
    table = [np.array(measure(n), float) for n in cells]
    for order in range(1, len(cells)):
        factor = 4.0**order
        table = [(factor * fine - coarse) / (factor - 1.0) for coarse, fine in pairwise(table)]
    return table[0]


def flat_area(surface: Surface, uv) -> float:
    return surface.moved(np.column_stack([uv, np.zeros(len(uv))])).area


def grid(cells_across, cells_along):
    """Unit square as a mesh, its two parameters, and its vertices numbered by row."""
    square = shapes.graph(lambda x, y: 0.0 * x, (0, 1), (0, 1), (cells_across, cells_along))
    return square, square.vertices[:, 0], square.vertices[:, 1]


def test_cone_frustum():
    r1, r2, h = 50.0, 30.0, 60.0
    slant = math.hypot(r1 - r2, h)
    half_angle = math.asin((r1 - r2) / slant)
    near, far = r2 / math.sin(half_angle), r1 / math.sin(half_angle)

    def measure(turns):
        surface = shapes.cone_patch(half_angle, near, far, 2.0 * math.pi, (turns, 4))
        uv = flatten(surface).reshape(turns + 1, 5, 2)
        first, last = uv[0, -1] - uv[0, 0], uv[-1, -1] - uv[-1, 0]
        apex = (
            uv[0, 0]
            - np.linalg.solve(np.stack([first, -last], axis=1), uv[0, 0] - uv[-1, 0])[0] * first
        )
        steps = uv[:, -1] - apex
        angles = np.unwrap(np.arctan2(steps[:, 1], steps[:, 0]))
        return [
            np.linalg.norm(first),
            np.linalg.norm(uv[0, -1] - apex),
            np.linalg.norm(uv[0, 0] - apex),
            abs(math.degrees(angles[-1] - angles[0])),
            flat_area(surface, uv.reshape(-1, 2)),
        ]

    found = extrapolated(measure, (32, 64, 128))
    agree(
        "DEV-01",
        dict(zip(("slant", "R_outer", "R_inner", "sector_angle", "area"), found, strict=True)),
    )


def test_elliptic_cylinder():
    """Ramanujan's formula is another closed form, nothing that is computed here."""
    a, b, length = 100.0, 50.0, 200.0

    def measure(turns):
        square, s, t = grid(turns, 4)
        turn = 2.0 * math.pi * s
        surface = square.moved(
            np.stack([a * np.cos(turn), b * np.sin(turn), length * (1.0 - t)], axis=1)
        )
        uv = flatten(surface).reshape(turns + 1, 5, 2)
        return [np.linalg.norm(uv[-1, 0] - uv[0, 0]), flat_area(surface, uv.reshape(-1, 2))]

    perimeter, area = extrapolated(measure, (64, 128, 256, 512))
    agree(
        "DEV-03",
        {"perimeter": perimeter, "area": area},
        without=("perimeter_Ramanujan",),
    )


def test_facetted_cylinder_unrolls_to_its_polygon():
    radius, length = 40.0, 100.0

    def width(turns):
        surface = shapes.cylinder_patch(radius, 2.0 * math.pi, length, (turns, 8))
        uv = flatten(surface).reshape(turns + 1, 9, 2)
        return [np.linalg.norm(uv[-1, 0] - uv[0, 0])]

    (polygon,) = width(64)
    (smooth,) = extrapolated(width, (32, 64, 128, 256))
    agree(
        "DEV-05",
        {
            "perimeter_polygon": polygon,
            "exact_perimeter": smooth,
        },
        without=("rel_deficit",),  # 1e-9 of 4e-4 is beyond what flattening resolves
    )
    deficit = next(e["value"] for e in row("DEV-05")["expected"] if e["name"] == "rel_deficit")
    assert 1.0 - polygon / smooth == pytest.approx(deficit, rel=1e-5)


def oblique_cone(turns):
    turn = 2.0 * math.pi * np.arange(turns + 1) / turns
    rim = np.stack([40.0 * np.cos(turn), 40.0 * np.sin(turn), 0.0 * turn], axis=1)
    first = 1 + np.arange(turns)
    fan = np.stack([np.zeros(turns, dtype=int), first, first + 1], axis=1)
    return Surface.single(np.concatenate([[[20.0, 0.0, 60.0]], rim]), fan)


def test_oblique_cone():
    def measure(turns):
        surface = oblique_cone(turns)
        uv = flatten(surface)
        rim = uv[1:] - uv[0]
        lengths = np.linalg.norm(rim, axis=1)
        angles = np.unwrap(np.arctan2(rim[:, 1], rim[:, 0]))
        angle = abs(math.degrees(angles[-1] - angles[0]))
        return [angle, flat_area(surface, uv), lengths.max(), lengths.min()]

    found = extrapolated(measure, (64, 128, 256))
    agree("DEV-06", dict(zip(("sector_angle", "area", "L_max", "L_min"), found, strict=True)))


def circle_through(points) -> float:
    """Radius of the circle through the first point and those at a third and two thirds."""
    first, second, third = (points[k * len(points) // 3] for k in range(3))
    sides = [math.dist(second, third), math.dist(third, first), math.dist(first, second)]
    ahead, aside = second - first, third - first
    return math.prod(sides) / (2.0 * abs(ahead[0] * aside[1] - ahead[1] * aside[0]))


def test_tangent_developable_of_a_helix():
    """The extended sides of a polygon on the helix bound flat facets that unroll exactly."""
    a, b, tangent = 30.0, 10.0, 20.0

    def measure(turns):
        turn = 2.0 * math.pi * np.arange(-1, turns + 1) / turns
        helix = np.stack([a * np.cos(turn), a * np.sin(turn), b * turn], axis=1)
        sides = np.diff(helix, axis=0)
        length = np.linalg.norm(sides, axis=1)[:, None]
        outer = helix[1:] + (tangent - length / 2.0) * sides / length
        count = turns + 1
        i = np.arange(turns)
        quads = ([i, i + 1, count + i], [i + 1, count + i + 1, count + i])
        surface = Surface.single(
            np.concatenate([helix[1:], outer]), np.concatenate([np.stack(q, 1) for q in quads])
        )
        uv = flatten(surface)
        steps = np.diff(uv[:count], axis=0)
        heading = np.unwrap(np.arctan2(steps[:, 1], steps[:, 0]))
        return [
            circle_through(uv[:count]),
            np.linalg.norm(steps, axis=1).sum(),
            abs(math.degrees(heading[-1] - heading[0])) * turns / (turns - 1),
            flat_area(surface, uv),
            circle_through(uv[count:]),
        ]

    names = ("flat_edge_radius", "turn_length", "flat_edge_angle", "area_strip")
    found = extrapolated(measure, (24, 48, 96, 192))
    agree("DEV-08", dict(zip((*names, "outer_flat_radius"), found, strict=True)))


def test_obliquely_cut_cylinder():
    radius, mean, tilt = 25.0, 60.0, math.radians(30.0)

    def measure(turns):
        square, s, t = grid(turns, 6)
        turn = 2.0 * math.pi * s
        top = mean + radius * math.tan(tilt) * np.cos(turn)
        surface = square.moved(
            np.stack([radius * np.cos(turn), radius * np.sin(turn), t * top], axis=1)
        )
        uv = flatten(surface).reshape(turns + 1, 7, 2)
        base = uv[-1, 0] - uv[0, 0]
        up = np.array([-base[1], base[0]]) / np.linalg.norm(base)
        heights = np.abs((uv[:, -1] - uv[0, 0]) @ up)
        edge = np.linalg.norm(np.diff(uv[:, -1], axis=0), axis=1).sum()
        return [np.ptp(heights) / 2.0, edge, flat_area(surface, uv.reshape(-1, 2))]

    found = extrapolated(measure, (32, 64, 128, 256))
    agree("DEV-10", dict(zip(("edge_amplitude", "edge_length", "area"), found, strict=True)))
