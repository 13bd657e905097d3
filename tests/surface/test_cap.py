"""The best pull is exact: no sampled direction beats it."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.surface.cap import smallest_cap


def unit(vectors: np.ndarray) -> np.ndarray:
    return vectors / np.linalg.norm(vectors, axis=1, keepdims=True)


def best_sampled(normals: np.ndarray, near: np.ndarray, seed: int) -> float:
    rng = np.random.default_rng(seed)
    everywhere = unit(rng.normal(size=(4000, 3)))
    around = unit(near + 0.02 * rng.normal(size=(2000, 3)))
    return float((normals @ np.concatenate([everywhere, around]).T).min(axis=0).max())


@settings(max_examples=60, deadline=None)
@given(
    count=st.integers(1, 40),
    seed=st.integers(0, 10**6),
    squeeze=st.sampled_from([1.0, 1e-2, 1e-5, 0.0]),
    lift=st.booleans(),
)
def test_no_sampled_direction_beats_it(count, seed, squeeze, lift):
    normals = np.random.default_rng(seed).normal(size=(count, 3))
    if lift:
        normals[:, 2] = np.abs(normals[:, 2])
    normals[:, 2] *= squeeze
    normals = unit(normals)
    cap = smallest_cap(normals)
    axis = np.array(cap.axis)
    assert np.isclose(np.linalg.norm(axis), 1.0, atol=1e-12)
    assert np.isclose(math.sin(cap.least_draft), (normals @ axis).min(), atol=1e-12)
    assert math.sin(cap.least_draft) >= best_sampled(normals, axis, seed) - 1e-9


def test_sphere_cap_has_its_axis_and_half_angle():
    surface = shapes.cap(50.0, math.radians(30.0), rings=12)
    edge = math.radians(30.0)
    cap = smallest_cap(surface.vertices / 50.0)
    np.testing.assert_allclose(cap.axis, (0, 0, 1), atol=1e-9)
    assert cap.least_draft == pytest.approx(math.pi / 2 - edge, abs=1e-9)


def test_no_pull_sees_a_whole_box_the_best_runs_along_its_diagonal():
    cap = smallest_cap(shapes.box(1, 2, 3).normals)
    assert cap.least_draft == pytest.approx(-math.asin(math.sqrt(1 / 3)), abs=1e-9)


def test_wall_of_a_cylinder_has_zero_draft_along_its_axis():
    surface = shapes.cylinder_patch(10.0, 2 * math.pi, 20.0)
    cap = smallest_cap(surface.normals)
    np.testing.assert_allclose(np.abs(cap.axis), (0, 1, 0), atol=1e-9)
    assert cap.least_draft == pytest.approx(0.0, abs=1e-9)


@settings(max_examples=15, deadline=None)
@given(st.integers(0, 10**6), st.floats(25.0, 85.0))
def test_of_many_normals_around_a_hole_no_sampled_direction_beats_it(seed, hole):
    """Normals everywhere but in a cap of a known angle: the pull is against the cap's middle."""
    rng = np.random.default_rng(seed)
    middle = unit(rng.normal(size=(1, 3)))[0]
    normals = unit(rng.normal(size=(20_000, 3)))
    normals = normals[normals @ middle < math.cos(math.radians(hole))]
    cap = smallest_cap(normals)
    axis = np.array(cap.axis)
    assert math.sin(cap.least_draft) == pytest.approx((normals @ axis).min(), abs=1e-12)
    assert math.sin(cap.least_draft) >= best_sampled(normals, axis, seed) - 1e-9
    assert -math.degrees(cap.least_draft) == pytest.approx(90.0 - hole, abs=1.0)
    assert math.degrees(math.acos(axis @ -middle)) < 2.0


def test_where_normals_lie_all_around_the_draft_given_is_that_of_the_pull_given():
    normals = shapes.sphere(50.0, 60).normals
    cap = smallest_cap(normals)
    assert math.sin(cap.least_draft) == pytest.approx((normals @ np.array(cap.axis)).min())
    assert math.degrees(cap.least_draft) < -70.0


def test_turning_the_part_turns_the_pull():
    normals = shapes.hatch(spacing=20.0).normals
    turn = np.linalg.qr(np.random.default_rng(3).normal(size=(3, 3)))[0]
    one, other = smallest_cap(normals), smallest_cap(normals @ turn.T)
    np.testing.assert_allclose(other.axis, turn @ np.array(one.axis), atol=1e-7)
    assert other.least_draft == pytest.approx(one.least_draft, abs=1e-9)


def test_zero_normals_are_left_out_and_nothing_is_refused():
    cap = smallest_cap(np.array([[0.0, 0.0, 0.0], [0.0, 0.0, 1.0]]))
    assert cap.axis == (0.0, 0.0, 1.0)
    with pytest.raises(ValueError, match="no normals"):
        smallest_cap(np.zeros((3, 3)))
