"""Hidden shares agree with lines of sight and with known shadows."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.mould.frame import upright
from laywright.mould.release.visibility import hidden_share, is_one_layer
from laywright.surface.triangles import Surface

UP = (0.0, 0.0, 1.0)


def sheet(x0, x1, y0, y1, z, turned=1):
    points = np.array([[x0, y0, z], [x1, y0, z], [x1, y1, z], [x0, y1, z]], float)
    return points, np.array([[0, 1, 2], [0, 2, 3]])[:, ::turned]


def joined(*parts):
    points = np.concatenate([p for p, _ in parts])
    first = np.cumsum([0, *[len(p) for p, _ in parts]])
    triangles = np.concatenate([t + f for (_, t), f in zip(parts, first[:-1], strict=True)])
    return Surface.single(points, triangles)


def by_lines_of_sight(surface, pull, samples, seed=0):
    """Hidden share by random points of every facet against every facet, slow and plain."""
    rng = np.random.default_rng(seed)
    corners = surface.corners @ upright(pull).T
    facing = surface.normals @ np.array(pull) > 1e-7
    share = np.zeros(len(corners))
    a, b, c = corners[:, 0], corners[:, 1], corners[:, 2]
    ab, ac = (b - a)[:, :2], (c - a)[:, :2]
    whole = ab[:, 0] * ac[:, 1] - ab[:, 1] * ac[:, 0]
    usable = np.abs(whole) > 1e-12
    for facet in np.flatnonzero(facing):
        u, v = rng.random((2, samples))
        u, v = np.where(u + v > 1, 1 - u, u), np.where(u + v > 1, 1 - v, v)
        points = a[facet] + u[:, None] * (b - a)[facet] + v[:, None] * (c - a)[facet]
        way = points[:, None, :2] - a[None, usable, :2]
        s = (way[..., 0] * ac[usable, 1] - way[..., 1] * ac[usable, 0]) / whole[usable]
        t = (ab[usable, 0] * way[..., 1] - ab[usable, 1] * way[..., 0]) / whole[usable]
        height = a[usable, 2] + s * (b - a)[usable, 2] + t * (c - a)[usable, 2]
        above = height > points[:, 2:] + 1e-6
        share[facet] = ((s > 0) & (t > 0) & (s + t < 1) & above).any(axis=1).mean()
    return share


@pytest.mark.parametrize(
    ("surface", "pull"),
    [
        (shapes.torus(40, 12, 24, 14), (1.0, 0.0, 0.0)),
        (shapes.torus(40, 12, 25, 11), (0.48, 0.6, 0.64)),
        (shapes.mushroom(24), (0.6, 0.0, 0.8)),
        (shapes.mushroom(24), (0.0, 0.6, -0.8)),
    ],
)
def test_agrees_with_lines_of_sight(surface, pull):
    samples = 400
    found = hidden_share(surface, pull)
    seen = by_lines_of_sight(surface, pull, samples)
    facing = surface.normals @ np.array(pull) > 1e-7
    spread = np.sqrt(np.clip(found * (1 - found), 0, 1) / samples)
    assert (np.abs(found - seen)[facing] <= 5 * spread[facing] + 2 / samples).all()


@settings(max_examples=40, deadline=None)
@given(*[st.floats(-15.0, 15.0)] * 4, st.integers(1, 3))
def test_roofs_over_a_floor_cast_their_union(x1, y1, x2, y2, turned):
    """Two roofs, at different heights, that may overlap each other in the plan view."""
    floor = sheet(0, 10, 0, 10, 0)
    way = -1 if turned == 1 else 1
    roofs = [sheet(x1, x1 + 6, y1, y1 + 5, 3, way), sheet(x2, x2 + 4, y2, y2 + 7, 5, way)]
    surface = joined(floor, *roofs)
    found = float(surface.areas[:2] @ hidden_share(surface, UP)[:2])

    def over(x, y, w, h, x0=0.0, y0=0.0, x9=10.0, y9=10.0):
        return max(0, min(x + w, x9) - max(x, x0)) * max(0, min(y + h, y9) - max(y, y0))

    both = over(
        max(x1, x2),
        max(y1, y2),
        max(0, min(x1 + 6, x2 + 4) - max(x1, x2)),
        max(0, min(y1 + 5, y2 + 7) - max(y1, y2)),
    )
    wanted = over(x1, y1, 6, 5) + over(x2, y2, 4, 7) - both
    assert found == pytest.approx(wanted, abs=1e-6)


def test_a_roof_below_hides_nothing():
    surface = joined(sheet(0, 10, 0, 10, 0), sheet(2, 5, 2, 5, -3))
    assert hidden_share(surface, UP)[:2].tolist() == [0.0, 0.0]
    assert hidden_share(surface, UP)[2:].tolist() == [1.0, 1.0]


def test_turning_part_and_pull_together_changes_nothing():
    surface = shapes.mushroom(48)
    turn = np.linalg.qr(np.random.default_rng(5).normal(size=(3, 3)))[0]
    turn *= np.linalg.det(turn)
    pull = np.array([0.6, 0.0, 0.8])
    moved = surface.moved(surface.vertices @ turn.T + 7.0)
    one, other = hidden_share(surface, tuple(pull)), hidden_share(moved, tuple(turn @ pull))
    np.testing.assert_allclose(surface.areas @ one, surface.areas @ other, rtol=1e-9)


def test_one_layer_is_only_claimed_where_it_is_certain():
    assert is_one_layer(shapes.hatch(spacing=20.0), UP)
    assert is_one_layer(shapes.cap(50.0, math.pi / 2, 8), UP)
    assert not is_one_layer(shapes.cap(50.0, 2.0, 8), UP)
    assert not is_one_layer(shapes.sphere(50.0, 8), UP)
    spiral = np.linspace(0.0, 3.0 * math.pi, 60)
    inner = np.stack([10 * np.cos(spiral), 10 * np.sin(spiral), spiral], axis=1)
    outer = inner * np.array([2.0, 2.0, 1.0])
    points = np.concatenate([inner, outer])
    i = np.arange(59)
    ramp = Surface.single(
        points,
        np.concatenate(
            [np.stack([i, i + 60, i + 61], axis=1), np.stack([i, i + 61, i + 1], axis=1)]
        ),
    )
    assert (ramp.normals[:, 2] > 0).all()
    assert not is_one_layer(ramp, UP)
    assert ramp.areas @ hidden_share(ramp, UP) == pytest.approx(ramp.area / 3.0, rel=0.02)
