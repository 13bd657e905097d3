"""Flat maps of a sheet that is alike in all directions."""

import math

import numpy as np
import pytest

import shapes
from cloth.drape.reading import principal_stretches
from laywright.cloth.drape.flatten import conformal_map
from laywright.cloth.drape.rigid import Rigid
from laywright.cloth.drape.strain import turned_over

CAP = shapes.cap(100, 1.0, 10)


def wavy(surface, seed=0):
    uv = conformal_map(surface)
    return uv + np.random.default_rng(seed).normal(0, 0.1, uv.shape)


@pytest.mark.parametrize("name", ["_from_rotations", "_stretched"])
def test_slope_is_the_derivative_of_the_value(name):
    energy = getattr(Rigid(CAP), name)
    place = wavy(CAP).ravel()
    _, slope = energy(place)
    way = np.random.default_rng(1).normal(size=place.size)
    rise = energy(place + 1e-5 * way)[0] - energy(place - 1e-5 * way)[0]
    assert rise / 2e-5 == pytest.approx(slope @ way, rel=1e-5)


def test_values_are_the_means_over_the_area():
    uv = wavy(CAP)
    scales = principal_stretches(CAP, uv)
    rigid = Rigid(CAP)
    for energy, lack in (
        (rigid._from_rotations, scales - 1.0),
        (rigid._stretched, 1.0 / scales - 1.0),
    ):
        expected = 0.5 * CAP.areas @ (lack**2).sum(axis=1) / CAP.area
        assert energy(uv.ravel())[0] == pytest.approx(expected, rel=1e-10)


def test_a_turned_triangle_has_no_finite_value():
    place = (conformal_map(CAP) * [1, -1]).ravel()
    assert Rigid(CAP)._from_rotations(place)[0] == math.inf
    assert Rigid(CAP)._stretched(place)[0] == math.inf


def test_first_round_is_the_local_and_global_step_of_the_paper():
    """Rotations nearest to the map by singular values, then least squares, solved densely."""
    start = conformal_map(CAP)
    found = Rigid(CAP).nearer(start, 1, 0.0).place.reshape(-1, 2)
    corners, flat = CAP.corners, start[CAP.triangles]
    normal, count = CAP.normals, len(start)
    matrix, right = np.zeros((count, count)), np.zeros((count, 2))
    for at, triangle in enumerate(CAP.triangles):
        x = corners[at, 1] - corners[at, 0]
        x = x / np.linalg.norm(x)
        y = np.cross(normal[at], x)
        plane = (corners[at] - corners[at].mean(axis=0)) @ np.stack([x, y], axis=1)
        hats = np.linalg.inv(np.column_stack([np.ones(3), plane]))[1:]  # (2, 3)
        left, _, other = np.linalg.svd(hats @ flat[at])
        turn = left @ np.diag([1.0, np.linalg.det(left @ other)]) @ other
        matrix[np.ix_(triangle, triangle)] += CAP.areas[at] * hats.T @ hats
        right[triangle] += CAP.areas[at] * hats.T @ turn
    expected = np.linalg.lstsq(matrix, right, rcond=None)[0]
    middle = found.mean(axis=0), expected.mean(axis=0)
    assert found - middle[0] == pytest.approx(expected - middle[1], abs=1e-8)


def test_the_sheet_comes_to_rest_where_no_other_start_leads_elsewhere():
    rigid, told = Rigid(CAP), []
    one = rigid.laid(conformal_map(CAP), 200, 1e-7, told.append)
    other = rigid.laid(wavy(CAP), 200, 1e-7, told.append)
    assert one.at_rest
    assert other.at_rest
    assert len(told) == one.steps + other.steps
    first, last = (principal_stretches(CAP, end.place.reshape(-1, 2)) for end in (one, other))
    assert first == pytest.approx(last, abs=1e-6)
    assert turned_over(CAP, one.place.reshape(-1, 2)) == 0
