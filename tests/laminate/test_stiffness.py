from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.laminate.lamina import Lamina, reduced_stiffness
from laywright.laminate.rotation import stress_rotation
from laywright.laminate.stiffness import (
    Stiffness,
    bending_moduli,
    free_resultants,
    in_plane_moduli,
    laminate_stiffness,
    ply_bounds,
    ply_strains,
    ply_stresses,
    response,
)

STIFF = reduced_stiffness(Lamina(140e3, 9e3, 0.3, 5e3))
SOFT = reduced_stiffness(Lamina(20e3, 18e3, 0.15, 3e3))
EXPANSION = {0: (0.2e-6, 30e-6, 0.0), 1: (12e-6, 14e-6, 0.0)}

plies = st.lists(
    st.tuples(st.integers(0, 1), st.floats(-3.2, 3.2), st.floats(0.05, 1.0)), min_size=1, max_size=6
)


def parts(stack):
    kinds, angles, thicknesses = zip(*stack, strict=True)
    return (
        np.stack([(STIFF, SOFT)[kind] for kind in kinds]),
        np.array(angles),
        np.array(thicknesses),
    )


def same(first: Stiffness, second: Stiffness, height: float) -> bool:
    scale = float(np.abs(first.a).max())
    return all(
        np.allclose(getattr(first, n), getattr(second, n), rtol=0, atol=1e-9 * scale * height**p)
        for p, n in enumerate("abd")
    )


@given(plies, st.integers(0, 5), st.floats(0.1, 0.9))
def test_splitting_a_ply_changes_nothing(stack, place, cut):
    place %= len(stack)
    kind, angle, thickness = stack[place]
    pieces = [(kind, angle, cut * thickness), (kind, angle, (1.0 - cut) * thickness)]
    split = [*stack[:place], *pieces, *stack[place + 1 :]]
    height = sum(t for *_, t in stack)
    assert same(laminate_stiffness(*parts(stack)), laminate_stiffness(*parts(split)), height)


@given(plies, st.floats(-3.2, 3.2))
def test_turning_all_plies_turns_the_laminate(stack, turn):
    turned = laminate_stiffness(*parts([(k, a + turn, t) for k, a, t in stack]))
    rotation = stress_rotation(-turn)
    whole = laminate_stiffness(*parts(stack))
    by_hand = Stiffness(*(rotation @ m @ rotation.T for m in (whole.a, whole.b, whole.d)))
    assert same(turned, by_hand, sum(t for *_, t in stack))


@given(plies)
def test_laying_from_the_other_side_turns_the_sign_of_b(stack):
    kinds = laminate_stiffness(*parts(stack))
    mirrored = laminate_stiffness(*parts(stack[::-1]))
    turned = Stiffness(mirrored.a, -mirrored.b, mirrored.d)
    assert same(kinds, turned, sum(t for *_, t in stack))


@given(plies)
def test_a_symmetric_stack_does_not_couple_stretch_and_bending(stack):
    whole = laminate_stiffness(*parts([*stack, *stack[::-1]]))
    height = 2.0 * sum(t for *_, t in stack)
    assert np.abs(whole.b).max() < 1e-9 * np.abs(whole.a).max() * height


@given(plies)
def test_a_laminate_never_gives_energy_away(stack):
    whole = laminate_stiffness(*parts(stack)).matrix()
    assert np.linalg.eigvalsh((whole + whole.T) / 2.0).min() > 0.0


@settings(max_examples=30)
@given(plies, st.lists(st.floats(-5.0, 5.0), min_size=6, max_size=6))
def test_ply_stresses_add_up_to_the_load(stack, load):
    matrices, angles, thicknesses = parts(stack)
    strain, curvature = response(
        laminate_stiffness(matrices, angles, thicknesses), load[:3], load[3:]
    )
    strains = ply_strains(thicknesses, strain, curvature)
    stresses = ply_stresses(matrices, angles, strains)
    z = ply_bounds(thicknesses)
    mean = stresses.mean(axis=1)
    force = (mean * thicknesses[:, None]).sum(axis=0)
    assert np.allclose(force, load[:3], atol=1e-6)
    # a stress that runs linearly from s0 to s1 has its first moment about z = 0 in closed form
    low, high = z[:-1, None], z[1:, None]
    s0, s1 = stresses[:, 0], stresses[:, 1]
    moment = ((high - low) / 6.0 * (s0 * (2 * low + high) + s1 * (low + 2 * high))).sum(axis=0)
    assert np.allclose(moment, load[3:], atol=1e-6)


@given(plies, st.floats(-100.0, 100.0))
def test_a_free_laminate_carries_no_load_when_it_cools(stack, change):
    matrices, angles, thicknesses = parts(stack)
    own = np.array([EXPANSION[kind] for kind, *_ in stack])
    force, moment = free_resultants(matrices, own, angles, thicknesses)
    strain, curvature = response(
        laminate_stiffness(matrices, angles, thicknesses), change * force, change * moment
    )
    stresses = ply_stresses(
        matrices, angles, ply_strains(thicknesses, strain, curvature), change * own
    )
    assert np.allclose((stresses.mean(axis=1) * thicknesses[:, None]).sum(axis=0), 0.0, atol=1e-7)


def test_many_laminates_in_one_call():
    rng = np.random.default_rng(5)
    angles, thicknesses = rng.uniform(-3, 3, (4, 7, 3)), rng.uniform(0.1, 1.0, (4, 7, 3))
    matrices = np.broadcast_to(np.stack([STIFF, SOFT, STIFF]), (4, 7, 3, 3, 3))
    many = laminate_stiffness(matrices, angles, thicknesses)
    strain, curvature = response(many, (1.0, 2.0, 3.0))
    stresses = ply_stresses(matrices, angles, ply_strains(thicknesses, strain, curvature))
    assert (many.a.shape, stresses.shape) == ((4, 7, 3, 3), (4, 7, 3, 2, 3))
    one = laminate_stiffness(matrices[2, 3], angles[2, 3], thicknesses[2, 3])
    one_strain, one_curvature = response(one, (1.0, 2.0, 3.0))
    assert np.allclose(many.d[2, 3], one.d, rtol=1e-13)
    assert np.allclose(strain[2, 3], one_strain, rtol=1e-10)
    assert np.allclose(
        stresses[2, 3],
        ply_stresses(
            matrices[2, 3], angles[2, 3], ply_strains(thicknesses[2, 3], one_strain, one_curvature)
        ),
        rtol=1e-9,
        atol=1e-9,
    )


def test_one_laminate_under_many_loads_and_many_laminates_under_their_own():
    rng = np.random.default_rng(6)
    angles, thicknesses = rng.uniform(-3, 3, (5, 3)), rng.uniform(0.1, 1.0, (5, 3))
    many = laminate_stiffness(np.stack([STIFF, SOFT, STIFF]), angles, thicknesses)
    force, moment = rng.normal(size=(5, 3)), rng.normal(size=(5, 3))
    one = laminate_stiffness(np.stack([STIFF, SOFT, STIFF]), angles[1], thicknesses[1])
    for stiffness in (many, one):
        strain, curvature = response(stiffness, force, moment)
        a, b, d = (np.broadcast_to(m, (5, 3, 3)) for m in (stiffness.a, stiffness.b, stiffness.d))
        carried = np.einsum("nij,nj->ni", a, strain) + np.einsum("nij,nj->ni", b, curvature)
        turned = np.einsum("nij,nj->ni", b, strain) + np.einsum("nij,nj->ni", d, curvature)
        assert np.allclose(carried, force, rtol=1e-9)
        assert np.allclose(turned, moment, rtol=1e-9)


def test_whole_numbers_are_taken_as_numbers():
    strain, curvature = response(laminate_stiffness([SOFT, SOFT], [0, 1], [1, 2]), [3, 0, 0])
    real = response(laminate_stiffness([SOFT, SOFT], [0.0, 1.0], [1.0, 2.0]), [3.0, 0.0, 0.0])
    assert np.array_equal(np.stack([strain, curvature]), np.stack(real))


@pytest.mark.parametrize("thickness", [1.0, 2.5])
def test_moduli_of_an_even_plate_are_those_of_its_material(thickness):
    lamina = Lamina(30e3, 20e3, 0.2, 6e3)
    shares = np.array([0.2, 0.5, 0.3])
    whole = laminate_stiffness([reduced_stiffness(lamina)] * 3, [0.0] * 3, shares * thickness)
    for moduli in (in_plane_moduli(whole, thickness), bending_moduli(whole, thickness)):
        assert moduli.e_x == pytest.approx(30e3, rel=1e-12)
        assert moduli.e_y == pytest.approx(20e3, rel=1e-12)
        assert moduli.g_xy == pytest.approx(6e3, rel=1e-12)
        assert moduli.nu_xy == pytest.approx(0.2, rel=1e-12)


def test_stiff_faces_bend_stiffer_than_they_pull():
    stack = laminate_stiffness([STIFF] * 3, [0.0, math.pi / 2, 0.0], [0.25, 0.5, 0.25])
    assert bending_moduli(stack, 1.0).e_x > 1.5 * in_plane_moduli(stack, 1.0).e_x
