from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laminate.stacks import laminae
from laywright.errors import LimitError
from laywright.laminate.lamina import (
    Lamina,
    LaminaArrays,
    free_strains,
    lamina_of_stiffness,
    reduced_stiffness,
)


@given(laminae())
def test_constants_come_back_from_the_stiffness(lamina):
    back = lamina_of_stiffness(reduced_stiffness(lamina), (1e-6, 3e-5))
    assert back.modulus_1 == pytest.approx(lamina.modulus_1, rel=1e-9)
    assert back.poisson_12 == pytest.approx(lamina.poisson_12, rel=1e-6, abs=1e-9)
    assert back.shear_12 == pytest.approx(lamina.shear_12, rel=1e-9)


@given(st.lists(laminae(), min_size=1, max_size=4))
def test_many_laminae_at_once(several):
    names = ("modulus_1", "modulus_2", "poisson_12", "shear_12")
    arrays = LaminaArrays(
        *(np.array([getattr(lamina, name) for lamina in several]) for name in names)
    )
    for found, lamina in zip(reduced_stiffness(arrays), several, strict=True):
        assert np.array_equal(found, reduced_stiffness(lamina))


def test_free_strains_are_per_kelvin_and_per_unit_of_water():
    lamina = Lamina(1e5, 1e4, 0.3, 5e3, 1e-6, 3e-5, 0.01, 0.4)
    assert free_strains(lamina).tolist() == [[1e-6, 3e-5, 0.0], [0.01, 0.4, 0.0]]


def test_a_lamina_that_gives_energy_away_is_refused():
    with pytest.raises(LimitError, match="square root of the ratio"):
        Lamina(10e3, 100e3, 0.4, 5e3)
