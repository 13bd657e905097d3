from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.laminate.lamina import Lamina, reduced_stiffness
from laywright.laminate.transverse import shear_flow, through_moduli, transverse_stiffness

STIFF = Lamina(140e3, 9e3, 0.3, 5e3)
FACE = Lamina(20e3, 20e3, 0.1, 3e3)
FOAM = Lamina(1.0, 1.0, 0.3, 1.0, shear_13=22.0, shear_23=11.0)


def arrays(*laminae):
    return (
        np.stack([reduced_stiffness(lamina) for lamina in laminae]),
        np.array([through_moduli(lamina) for lamina in laminae]),
    )


@given(st.floats(0.1, 50.0), st.lists(st.floats(0.1, 1.0), min_size=1, max_size=5))
def test_an_even_plate_has_five_sixths_however_it_is_cut(height, cuts):
    thicknesses = height * np.array(cuts) / sum(cuts)
    matrices, through = arrays(*[STIFF] * len(cuts))
    found = transverse_stiffness(matrices, np.zeros(len(cuts)), thicknesses, through)
    assert found == pytest.approx(5.0 / 6.0 * through[0, 0] * height, rel=1e-9)


def test_thin_faces_on_a_soft_core_shear_like_the_core():
    """G d^2 / c (Allen 1969), the better the thinner the faces."""
    errors = []
    for face in (1.0, 0.1, 0.01):
        matrices, through = arrays(FACE, FOAM, FACE)
        found = transverse_stiffness(matrices, np.zeros(3), [face, 10.0, face], through)
        errors.append(abs(found / (22.0 * (10.0 + face) ** 2 / 10.0) - 1.0))
    assert errors[0] < 0.02
    assert max(errors[1:]) < 1e-4


def test_a_core_is_softer_across_its_marked_direction():
    matrices, through = arrays(FACE, FOAM, FACE)
    along, across = (
        transverse_stiffness(matrices, np.zeros(3), [0.5, 10.0, 0.5], through, direction)
        for direction in (0.0, math.pi / 2.0)
    )
    assert along / across == pytest.approx(2.0, rel=0.01)


@given(st.lists(st.tuples(st.floats(-3.0, 3.0), st.floats(0.1, 1.0)), min_size=1, max_size=5))
def test_turning_the_plies_is_turning_the_direction(stack):
    angles, thicknesses = (np.array(column) for column in zip(*stack, strict=True))
    matrices, through = arrays(*[STIFF] * len(stack))
    turned = transverse_stiffness(matrices, angles + 0.7, thicknesses, through, 0.7)
    plain = transverse_stiffness(matrices, angles, thicknesses, through)
    assert turned == pytest.approx(plain, rel=1e-9)


def test_shear_stress_of_an_even_plate_peaks_at_three_halves():
    matrices, _ = arrays(STIFF, STIFF)
    flow = shear_flow(matrices, np.zeros(2), [1.0, 1.0])
    assert flow == pytest.approx([0.75, 0.75], rel=1e-12)


def test_shear_stress_in_a_core_is_force_over_the_distance_of_the_faces():
    matrices, _ = arrays(FACE, FOAM, FACE)
    flow = shear_flow(matrices, np.zeros(3), [0.5, 10.0, 0.5])
    assert flow[1] == pytest.approx(1.0 / 10.5, rel=2e-3)


def test_many_laminates_at_once():
    matrices, through = arrays(STIFF, FACE)
    angles = np.random.default_rng(1).uniform(-1.0, 1.0, (7, 2))
    thicknesses = np.random.default_rng(2).uniform(0.1, 1.0, (7, 2))
    many = transverse_stiffness(matrices, angles, thicknesses, through)
    single = [
        float(transverse_stiffness(matrices, a, t, through))
        for a, t in zip(angles, thicknesses, strict=True)
    ]
    assert many == pytest.approx(single, rel=1e-12)


def test_moduli_that_are_not_given_follow_from_those_in_the_plane():
    assert through_moduli(Lamina(7e3, 7e3, 0.4, 2.5e3)) == pytest.approx((2.5e3, 2.5e3))
    assert through_moduli(FOAM) == (22.0, 11.0)
