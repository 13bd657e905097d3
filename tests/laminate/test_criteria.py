from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.laminate.criteria import (
    Criterion,
    hashin_factor,
    hashin_indices,
    max_strain_factor,
    max_stress_factor,
    strength_factor,
    tsai_hill_factor,
    tsai_wu_factor,
)
from laywright.laminate.lamina import Lamina, Strengths

LAMINA = Lamina(130e3, 9e3, 0.3, 5e3)
STRENGTHS = Strengths(1500.0, 900.0, 40.0, 180.0, 70.0)
stresses = st.tuples(*[st.floats(-500.0, 500.0)] * 3).filter(
    lambda s: max(abs(part) for part in s) > 1.0
)


@pytest.mark.parametrize("criterion", Criterion)
@pytest.mark.parametrize(
    ("stress", "strength"),
    [
        ((1.0, 0.0, 0.0), 1500.0),
        ((-1.0, 0.0, 0.0), 900.0),
        ((0.0, 1.0, 0.0), 40.0),
        ((0.0, -1.0, 0.0), 180.0),
        ((0.0, 0.0, 1.0), 70.0),
        ((0.0, 0.0, -1.0), 70.0),
    ],
)
def test_every_criterion_agrees_under_a_single_stress(criterion, stress, strength):
    if criterion is Criterion.MAX_STRAIN and stress[0] != 0.0:
        strength = min(strength, 40.0 / 0.3 * 130.0 / 9.0 if stress[0] < 0.0 else strength)
    found = float(strength_factor(criterion, stress, STRENGTHS, LAMINA))
    assert found == pytest.approx(strength, rel=1e-9)


@given(stresses, st.floats(0.1, 10.0), st.sampled_from(Criterion))
def test_factor_scales_inversely_with_the_stress(stress, scale, criterion):
    one = float(strength_factor(criterion, stress, STRENGTHS, LAMINA))
    more = float(strength_factor(criterion, np.array(stress) * scale, STRENGTHS, LAMINA))
    assert more * scale == pytest.approx(one, rel=1e-9)


@given(stresses, st.sampled_from(Criterion))
def test_the_sign_of_shear_does_not_matter(stress, criterion):
    s1, s2, s12 = stress
    one = float(strength_factor(criterion, stress, STRENGTHS, LAMINA))
    assert float(strength_factor(criterion, (s1, s2, -s12), STRENGTHS, LAMINA)) == one


@given(stresses)
def test_at_the_factor_the_index_is_one(stress):
    at_limit = np.array(stress) * float(hashin_factor(stress, STRENGTHS))
    modes = hashin_indices(at_limit, STRENGTHS)
    worst = max(
        modes.fibre_tension,
        modes.fibre_compression,
        modes.matrix_tension,
        modes.matrix_compression,
    )
    assert float(worst) == pytest.approx(1.0, rel=1e-9)


@given(stresses)
def test_tsai_wu_lies_on_its_envelope(stress):
    x, y, s = np.array(stress) * float(tsai_wu_factor(stress, STRENGTHS))
    f11, f22 = 1 / (1500.0 * 900.0), 1 / (40.0 * 180.0)
    index = (1 / 1500 - 1 / 900) * x + (1 / 40 - 1 / 180) * y + f11 * x**2 + f22 * y**2
    index += (s / 70.0) ** 2 - np.sqrt(f11 * f22) * x * y
    assert index == pytest.approx(1.0, rel=1e-9)


@given(stresses)
def test_hill_never_allows_more_than_maximum_stress_where_the_signs_differ(stress):
    """With s1 and s2 of opposite sign the mixed term only adds to Hill's index."""
    s1, s2, s12 = stress
    opposite = (abs(s1), -abs(s2), s12)
    assert float(tsai_hill_factor(opposite, STRENGTHS)) <= float(
        max_stress_factor(opposite, STRENGTHS)
    ) * (1.0 + 1e-12)


def test_maximum_strain_without_poisson_is_maximum_stress():
    lamina = Lamina(130e3, 9e3, 0.0, 5e3)
    rng = np.random.default_rng(3)
    stress = rng.uniform(-300.0, 300.0, (50, 3))
    assert np.allclose(
        max_strain_factor(stress, STRENGTHS, lamina), max_stress_factor(stress, STRENGTHS)
    )


@pytest.mark.parametrize("criterion", Criterion)
def test_an_unstressed_ply_carries_without_end(criterion):
    assert np.isinf(strength_factor(criterion, np.zeros((2, 3)), STRENGTHS, LAMINA)).all()


@pytest.mark.parametrize("criterion", Criterion)
def test_leading_axes(criterion):
    rng = np.random.default_rng(8)
    stress = rng.uniform(-200.0, 200.0, (4, 5, 3))
    many = strength_factor(criterion, stress, STRENGTHS, LAMINA)
    assert many.shape == (4, 5)
    assert many[2, 3] == pytest.approx(
        float(strength_factor(criterion, stress[2, 3], STRENGTHS, LAMINA)), rel=1e-13
    )
