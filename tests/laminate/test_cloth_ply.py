from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laminate.stacks import CARBON, GLASS, MAT, RESIN, TAPE
from laywright.laminate.cloth_ply import (
    Yarns,
    blend,
    cloth_plies,
    cloth_ply,
    cloth_strengths,
    crimped,
    yarns,
)
from laywright.laminate.lamina import Lamina, reduced_stiffness
from laywright.laminate.materials import Weave
from laywright.laminate.micromechanics import constituents_of, unidirectional
from laywright.laminate.rotation import invariants, rotated_stiffness, stress_rotation
from laywright.laminate.stiffness import free_resultants, laminate_stiffness, response

STRAIGHT = unidirectional(CARBON.fibre, RESIN, 0.4)


def test_one_direction_alone_is_the_ply_itself():
    alone = blend([Yarns(STRAIGHT, 0.0, 1.0)])
    for field in dataclasses.fields(Lamina):
        assert getattr(alone, field.name) == pytest.approx(getattr(STRAIGHT, field.name), rel=1e-9)


@given(st.floats(0.05, 0.95))
def test_cross_ply_is_the_laminate_of_its_yarns(share):
    """A cloth ply pulls and expands like a symmetric stack of its warp and its weft."""
    cloth = dataclasses.replace(CARBON, warp_share=share, crimp_angle=0.0)
    ply = cloth_ply(cloth, RESIN, 0.4)
    plies = np.stack([reduced_stiffness(STRAIGHT)] * 3)
    angles = [0.0, math.pi / 2.0, 0.0]
    thicknesses = [share / 2.0, 1.0 - share, share / 2.0]
    stack = laminate_stiffness(plies, angles, thicknesses)
    assert np.allclose(reduced_stiffness(ply), stack.a, rtol=1e-9, atol=1e-6)
    own = [(STRAIGHT.expansion_1, STRAIGHT.expansion_2, 0.0)] * 3
    strain, _ = response(stack, *free_resultants(plies, own, angles, thicknesses))
    assert (ply.expansion_1, ply.expansion_2) == pytest.approx(strain[:2].tolist(), rel=1e-9)
    wet = [(STRAIGHT.swelling_1, STRAIGHT.swelling_2, 0.0)] * 3
    strain, _ = response(stack, *free_resultants(plies, wet, angles, thicknesses))
    assert (ply.swelling_1, ply.swelling_2) == pytest.approx(strain[:2].tolist(), rel=1e-9)


@pytest.mark.parametrize("cloth", [CARBON, TAPE, MAT], ids=lambda cloth: cloth.name)
@given(st.floats(0.1, 0.6), st.floats(0.0, 0.1))
def test_many_plies_at_once_are_each_the_single_ply(cloth, fraction, void):
    many = cloth_plies(
        cloth, constituents_of(cloth.fibre, RESIN), np.array([fraction, 0.2]), np.array([void, 0.0])
    )
    for found, single in zip(many, ((fraction, void), (0.2, 0.0)), strict=True):
        ply = cloth_ply(cloth, RESIN, *single)
        assert np.allclose(found, reduced_stiffness(ply), rtol=1e-9, atol=1e-9 * found[0, 0])


def test_shear_through_a_balanced_cloth_is_the_mean_of_its_yarns():
    ply = cloth_ply(CARBON, RESIN, 0.4)
    mean = (STRAIGHT.shear_13 + STRAIGHT.shear_23) / 2.0
    assert (ply.shear_13, ply.shear_23) == pytest.approx((mean, mean), rel=1e-12)


def test_balanced_cloth_is_the_same_along_warp_and_weft():
    ply = cloth_ply(GLASS, RESIN, 0.31)
    assert ply.modulus_1 == pytest.approx(ply.modulus_2, rel=1e-12)
    assert ply.expansion_1 == pytest.approx(ply.expansion_2, rel=1e-12)


def test_mat_is_the_same_at_every_angle():
    stiffness = reduced_stiffness(cloth_ply(MAT, RESIN, 0.18))
    for angle in np.linspace(0.0, math.pi, 13):
        assert np.allclose(rotated_stiffness(stiffness, angle), stiffness, rtol=0, atol=1e-9 * 1e4)
    straight = invariants(reduced_stiffness(unidirectional(MAT.fibre, RESIN, 0.18)))
    assert stiffness[0, 0] == pytest.approx(straight[0], rel=1e-12)
    assert stiffness[0, 1] == pytest.approx(straight[3], rel=1e-12)


@given(st.floats(1e-3, 0.4))
def test_crimp_only_softens(slope):
    wavy = crimped(STRAIGHT, slope)
    assert STRAIGHT.modulus_2 < wavy.modulus_1 < STRAIGHT.modulus_1
    assert wavy.modulus_2 == STRAIGHT.modulus_2


def test_small_crimp_follows_the_series():
    """1/E grows by half the slope squared times (1/G - 2 nu/E - 2/E)."""
    slope = 0.01
    e, g, nu = STRAIGHT.modulus_1, STRAIGHT.shear_12, STRAIGHT.poisson_12
    growth = 1.0 / crimped(STRAIGHT, slope).modulus_1 - 1.0 / e
    assert growth == pytest.approx(slope**2 / 2.0 * (1 / g - 2 * nu / e - 2 / e), rel=1e-3)


def test_crimp_of_a_wave_by_rotation_of_each_piece():
    """The mean compliance along the wave, by turning the stiffness of each short piece."""
    slope, phase = 0.2, np.linspace(0.0, 2.0 * np.pi, 4000, endpoint=False)
    angles = np.arctan(np.tan(slope) * np.cos(phase))
    compliance = np.linalg.inv(rotated_stiffness(reduced_stiffness(STRAIGHT), angles))
    assert crimped(STRAIGHT, slope).modulus_1 == pytest.approx(
        1.0 / compliance[:, 0, 0].mean(), rel=1e-9
    )


def test_yarns_without_share_are_left_out():
    assert [part.share for part in yarns(TAPE, RESIN, 0.4)] == pytest.approx([0.97, 0.03])
    pure = dataclasses.replace(TAPE, warp_share=1.0)
    assert [part.angle for part in yarns(pure, RESIN, 0.4)] == [0.0]


def test_load_per_width_does_not_depend_on_resin():
    for fraction in (0.3, 0.4, 0.5):
        strengths = cloth_strengths(CARBON, fraction)
        assert strengths.tension_1 / fraction == pytest.approx(450.0 / 0.42, rel=1e-12)
        assert strengths.shear == CARBON.strengths.shear
    assert cloth_strengths(TAPE, 0.3).tension_2 == TAPE.strengths.tension_2
    assert cloth_strengths(dataclasses.replace(CARBON, strengths=None), 0.4) is None


def test_bias_pull_of_a_woven_ply_is_shear():
    """At 45 degrees a balanced woven ply is governed by its shear modulus."""
    ply = cloth_ply(dataclasses.replace(CARBON, weave=Weave.TWILL), RESIN, 0.4)
    own = stress_rotation(math.radians(45.0)) @ (1.0, 0.0, 0.0)
    assert abs(own[2]) == pytest.approx(0.5, rel=1e-12)
    compliance = np.linalg.inv(rotated_stiffness(reduced_stiffness(ply), math.radians(45.0)))
    e = ply.modulus_1
    closed = 1.0 / ((1.0 - ply.poisson_12) / (2.0 * e) + 1.0 / (4.0 * ply.shear_12))
    assert 1.0 / compliance[0, 0] == pytest.approx(closed, rel=1e-9)
