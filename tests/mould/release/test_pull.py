"""The best pull: exact where it can be, by search where something is hidden."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright import values
from laywright.errors import GeometryError, InputError, LimitError
from laywright.mould.release.pull import (
    PullFound,
    PullMethod,
    cap_directions,
    find_pull,
    held_area,
    pull_along,
    toward,
)
from laywright.surface.face import MouldSide
from laywright.surface.triangles import Surface


def unit(vectors):
    return vectors / np.linalg.norm(vectors, axis=-1, keepdims=True)


def two_shelves(lean: float) -> Surface:
    """A shelf 20 mm above a floor, joined by a leaning wall: both face up."""
    profile = np.array(
        [[0.0, 0.0], [40.0, 0.0], [40.0 - 20.0 * math.tan(lean), 20.0], [80.0, 20.0]]
    )
    y = np.linspace(0.0, 50.0, 6)
    points = np.array([[x, v, z] for x, z in profile for v in y])
    i, j = (a.ravel() for a in np.meshgrid(range(3), range(5), indexing="ij"))
    a, b, c, d = 6 * i + j, 6 * (i + 1) + j, 6 * (i + 1) + j + 1, 6 * i + j + 1
    triangles = np.concatenate([np.stack([a, b, c], 1), np.stack([a, c, d], 1)])
    return Surface.single(points, triangles)


@settings(max_examples=25, deadline=None)
@given(lift=st.floats(0.2, 3.0), bumps=st.integers(1, 3), seed=st.integers(0, 10**6))
def test_no_sampled_direction_beats_the_exact_pull(lift, bumps, seed):
    rng = np.random.default_rng(seed)
    wave = rng.uniform(-1.0, 1.0, (bumps, 4))

    def height(x, y):
        return sum(lift * a * np.sin(b * x / 5.0 + c) * np.cos(d * y / 5.0) for a, b, c, d in wave)

    surface = shapes.graph(height, (-10, 10), (-10, 10), (10, 10))
    found = find_pull(surface)
    assert found.method is PullMethod.EXACT
    assert (found.undercut_area, found.resolution, found.looks) == (0.0, 0.0, 1)
    tried = np.concatenate(
        [
            unit(rng.normal(size=(3000, 3))),
            unit(np.array(found.pull) + 0.02 * rng.normal(size=(1000, 3))),
        ]
    )
    best = (surface.normals @ tried.T).min(axis=0).max()
    assert math.sin(found.least_draft) >= best - 1e-9
    assert math.sin(found.least_draft) == pytest.approx(
        (surface.normals @ np.array(found.pull)).min(), abs=1e-12
    )


def test_a_leaning_wall_lets_go_askew():
    lean = math.radians(20.0)
    surface = two_shelves(lean)
    assert held_area(surface, (0.0, 0.0, 1.0)) > 0.0
    found = find_pull(surface)
    assert found.method is PullMethod.EXACT
    assert found.least_draft == pytest.approx((math.pi / 2 - lean) / 2, abs=1e-9)


def spiral(turns: float, rise: float) -> Surface:
    """A ramp round the z axis that comes to lie above itself after one turn."""
    cells = round(24 * turns)
    turn = np.linspace(0.0, 2.0 * np.pi * turns, cells + 1)
    points = [
        [r * math.cos(a), r * math.sin(a), rise * a / (2.0 * math.pi)]
        for a in turn
        for r in (10.0, 16.0, 22.0)
    ]
    i, j = (a.ravel() for a in np.meshgrid(range(cells), range(2), indexing="ij"))
    a, b, c, d = 3 * i + j, 3 * (i + 1) + j, 3 * (i + 1) + j + 1, 3 * i + j + 1
    triangles = np.concatenate([np.stack([a, c, b], 1), np.stack([a, d, c], 1)])
    return Surface.single(np.array(points), triangles)


def test_where_the_exact_pull_is_hidden_a_releasing_one_is_searched():
    surface = spiral(1.2, 8.0)
    assert held_area(surface, (0.0, 0.0, 1.0)) > 0.0
    found = find_pull(surface, math.radians(4.0))
    assert found.method is PullMethod.SEARCH
    assert found.resolution <= math.radians(4.0) + 1e-12
    assert found.releases
    assert math.sin(found.least_draft) == pytest.approx(
        (surface.normals @ np.array(found.pull)).min(), abs=1e-9
    )
    around = np.concatenate(
        [
            cap_directions(np.array([0, 0, 1.0]), 1.3, 0.3),
            cap_directions(np.array(found.pull), 0.2, 0.1),
        ]
    )
    for pull in around:
        if held_area(surface, tuple(pull)) == 0.0:
            least = math.asin((surface.normals @ pull).min())
            assert least <= found.least_draft + 2.0 * found.resolution


def test_where_nothing_releases_the_least_undercut_is_found():
    surface = shapes.torus(40.0, 12.0, 24, 12)
    found = find_pull(surface, math.radians(5.0))
    assert not found.releases
    assert found.undercut_area == pytest.approx(surface.area / 2.0, rel=1e-6)


def test_half_a_turn_of_the_spiral_is_not_hidden():
    assert find_pull(spiral(0.9, 8.0)).releases


def test_a_short_overhang_is_escaped_by_leaning_the_pull():
    """Two level strips, one 10 mm over the other's edge and joined to it round a far corner."""
    surface = shapes.plate(
        np.array([[0, 0], [60, 0], [60, 60], [0, 60]], float), lambda x, y: 0.0 * x, 6.0
    )
    above = surface.moved(surface.vertices + np.array([-50.0, 0.0, 30.0]))
    both = Surface.single(
        np.concatenate([surface.vertices, above.vertices]),
        np.concatenate([surface.triangles, above.triangles + len(surface.vertices)]),
    )
    found = find_pull(both)
    assert held_area(both, (0.0, 0.0, 1.0)) > 0.0
    assert found.releases
    assert found.method is PullMethod.SEARCH
    # the edge above stands 10 mm over the strip below, 30 mm up: the pull leans atan(1/3)
    best = math.pi / 2 - math.atan(10.0 / 30.0)
    assert found.least_draft == pytest.approx(best, abs=2.0 * found.resolution)
    assert found.least_draft <= best + 1e-6


def test_the_sphere_of_directions_is_covered_as_stated():
    rng = np.random.default_rng(1)
    for reach, step in ((math.pi, 0.2), (0.5, 0.1), (0.1, 0.05)):
        axis = unit(rng.normal(size=3))
        found = cap_directions(axis, reach, step)
        np.testing.assert_allclose(np.linalg.norm(found, axis=1), 1.0, atol=1e-12)
        np.testing.assert_allclose(found[0], axis)
        assert (found @ axis).min() >= math.cos(reach) - 1e-9
        aim = unit(rng.normal(size=(4000, 3)))
        aim = aim[aim @ axis > math.cos(0.98 * reach)]
        assert np.arccos(np.clip((aim @ found.T).max(axis=1), -1, 1)).max() < 1.1 * step


def test_turning_the_part_turns_the_exact_pull():
    surface = shapes.hatch(spacing=25.0)
    turn = np.linalg.qr(np.random.default_rng(3).normal(size=(3, 3)))[0]
    turn *= np.sign(np.linalg.det(turn))
    one, other = find_pull(surface), find_pull(surface.moved(surface.vertices @ turn.T))
    np.testing.assert_allclose(other.pull, turn @ np.array(one.pull), atol=1e-7)
    assert other.least_draft == pytest.approx(one.least_draft, abs=1e-9)


@settings(max_examples=25, deadline=None)
@given(seed=st.integers(0, 10**6))
def test_the_sense_of_an_axis_does_not_count(seed):
    rng = np.random.default_rng(seed)
    normals, areas = unit(rng.normal(size=(20, 3))), rng.uniform(0.1, 2.0, 20)
    axis = rng.normal(size=3)
    one, other = toward(normals, areas, tuple(axis)), toward(normals, areas, tuple(-axis))
    np.testing.assert_allclose(one, other, atol=1e-12)
    assert np.maximum(normals @ one, 0) @ areas >= np.maximum(-(normals @ one), 0) @ areas


def test_a_plug_and_a_cavity_leave_a_picked_axis_in_opposite_senses():
    surface = shapes.hatch(spacing=40.0)
    for sense in (2.0, -3.0):
        assert pull_along(surface, (0.0, 0.0, sense), MouldSide.INSIDE) == (0.0, 0.0, 1.0)
        assert pull_along(surface, (0.0, 0.0, sense), MouldSide.OUTSIDE) == (0.0, 0.0, -1.0)


def test_bad_input_is_named():
    with pytest.raises(InputError, match="pull axis"):
        toward(np.eye(3), np.ones(3), (0.0, 0.0, 0.0))
    with pytest.raises(LimitError, match="resolution of the pull search"):
        find_pull(shapes.hatch(spacing=40.0), 1.0)
    flat = Surface.single(np.zeros((3, 3)), np.array([[0, 1, 2]]), "Face9")
    with pytest.raises(GeometryError, match="Face9: found no area"):
        find_pull(flat)


def test_stored_and_stamped():
    surface = shapes.hatch(spacing=40.0)
    found = find_pull(surface)
    assert found.digest == find_pull.digest(surface)
    assert values.unpack(PullFound, values.pack(found)) == found
