from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laminate.stacks import laminae
from laywright.laminate.lamina import Lamina, reduced_stiffness
from laywright.laminate.rotation import (
    at_angles,
    entries_at_angles,
    invariants,
    rotated_expansion,
    rotated_stiffness,
    strain_rotation,
    stress_rotation,
    symmetric,
)

angles = st.floats(-10.0, 10.0)


@given(laminae(), angles, angles)
def test_two_turns_are_one(lamina, first, second):
    q = reduced_stiffness(lamina)
    twice = rotated_stiffness(rotated_stiffness(q, first), second)
    assert np.allclose(twice, rotated_stiffness(q, first + second), rtol=0, atol=1e-8 * q.max())


@given(laminae(), angles)
def test_half_a_turn_changes_nothing_and_invariants_never_change(lamina, angle):
    q = reduced_stiffness(lamina)
    turned = rotated_stiffness(q, angle)
    scale = q.max()
    assert np.allclose(turned, rotated_stiffness(q, angle + math.pi), rtol=0, atol=1e-9 * scale)
    kept = [0, 3, 4]  # U2 and U3 are the amplitudes of what turns
    assert np.allclose(invariants(turned)[kept], invariants(q)[kept], rtol=0, atol=1e-9 * scale)


@given(laminae(), angles)
def test_mirroring_turns_the_sign_of_the_coupling_only(lamina, angle):
    q = reduced_stiffness(lamina)
    flip = np.diag([1.0, 1.0, -1.0])
    mirrored = flip @ rotated_stiffness(q, angle) @ flip
    assert np.allclose(mirrored, rotated_stiffness(q, -angle), rtol=0, atol=1e-9 * q.max())


@given(angles)
def test_stress_and_strain_turn_so_that_work_stays(angle):
    product = stress_rotation(angle).T @ strain_rotation(angle)
    assert np.allclose(product, np.eye(3), atol=1e-12)


@given(laminae(), angles)
def test_stiffness_is_positive_at_every_angle(lamina, angle):
    q = reduced_stiffness(lamina)
    turned = rotated_stiffness(q, angle)
    assert np.linalg.eigvalsh((turned + turned.T) / 2.0).min() > 0.0
    assert np.allclose(turned, turned.T, rtol=0, atol=1e-9 * q.max())


@given(laminae(), st.lists(angles, min_size=1, max_size=5))
def test_many_angles_by_invariants_agree_with_turning(lamina, several):
    q = reduced_stiffness(lamina)
    assert np.allclose(
        at_angles(q, several), rotated_stiffness(q, several), rtol=0, atol=1e-9 * q.max()
    )


def test_expansion_at_45_degrees_is_the_mean_with_shear():
    x, y, shear = rotated_expansion((2e-6, 10e-6, 0.0), math.radians(45.0))
    assert (x, y) == pytest.approx((6e-6, 6e-6), rel=1e-12)
    assert shear == pytest.approx(-8e-6, rel=1e-12)


def test_leading_axes():
    q = np.stack([reduced_stiffness(Lamina(1e5 + i, 1e4, 0.3, 5e3)) for i in range(6)])
    many = rotated_stiffness(q.reshape(2, 3, 3, 3), np.linspace(0, 1, 6).reshape(2, 3))
    for i in range(6):
        one = rotated_stiffness(q[i], np.linspace(0, 1, 6)[i])
        assert np.allclose(many.reshape(6, 3, 3)[i], one, rtol=1e-13)


@given(laminae(), angles)
def test_six_entries_make_the_matrix(lamina, angle):
    q = reduced_stiffness(lamina)
    assert np.array_equal(symmetric(entries_at_angles(q, angle)), at_angles(q, angle))
