from __future__ import annotations

import math

import numpy as np
import pytest

from laminate.navier import navier_buckling, navier_deflection

EVEN = np.array([[1.0, 0.3, 0.0], [0.3, 1.0, 0.0], [0.0, 0.0, 0.35]])


@pytest.mark.parametrize(
    ("ratio", "coefficient"), [(1.0, 0.00406), (1.5, 0.00772), (2.0, 0.01013), (5.0, 0.01297)]
)
def test_even_plates_of_the_handbook(ratio, coefficient):
    """Timoshenko and Woinowsky-Krieger 1959, table 8, from memory; short side b = 1."""
    assert navier_deflection(EVEN, (ratio, 1.0), 1.0) == pytest.approx(coefficient, abs=6e-6)


@pytest.mark.parametrize(("ratio", "k"), [(1.0, 4.0), (2.0, 4.0), (3.0, 4.0), (1.5, 4.34)])
def test_buckling_of_even_plates_of_the_handbook(ratio, k):
    """Timoshenko and Gere 1961, table 9.1, from memory: k pi^2 D / b^2."""
    found = navier_buckling(EVEN, (ratio, 1.0), (-1.0, 0.0))
    assert found / math.pi**2 == pytest.approx(k, abs=0.005)


def test_transverse_shear_of_one_even_plate():
    """An even simply supported plate: the shear part is 0.0737 q a^2 / H (membrane analogy)."""
    thin = navier_deflection(EVEN, (1.0, 1.0), 1.0)
    for stiffness in (1e2, 1e4):
        soft = navier_deflection(EVEN, (1.0, 1.0), 1.0, (stiffness, stiffness))
        assert (soft - thin) * stiffness == pytest.approx(0.07367, abs=2e-5)


def test_nothing_buckles_in_tension():
    assert math.isinf(navier_buckling(EVEN, (1.0, 1.0), (1.0, 0.0)))


def test_a_sandwich_buckles_no_later_than_its_core_shears():
    """With a soft core the load tends to the shear stiffness itself."""
    found = navier_buckling(1e6 * EVEN, (1.0, 1.0), (-1.0, 0.0), (10.0, 10.0))
    assert found == pytest.approx(10.0, rel=0.01)
