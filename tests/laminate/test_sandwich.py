from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import LimitError
from laywright.laminate.sandwich import (
    Sandwich,
    bending_deflection,
    core_shear,
    face_stress,
    wrinkling_stress,
)
from laywright.laminate.stiffness import laminate_stiffness

FOAM = (8.0, 22.0)  # thickness mm, shear modulus MPa


@given(st.floats(5e3, 1e5), st.floats(5e3, 1e5), st.floats(0.2, 2.0), st.floats(0.2, 2.0))
def test_bending_stiffness_is_that_of_laminate_theory(lower, upper, thin, thick):
    """Faces without contraction on a core of no stiffness along the span."""
    sandwich = Sandwich(lower, upper, thin, thick, *FOAM)
    plies = [np.diag([e, e, e / 2.0]) for e in (lower, 1e-6, upper)]
    found = laminate_stiffness(plies, [0.0] * 3, [thin, FOAM[0], thick])
    free = found.d[0, 0] - found.b[0, 0] ** 2 / found.a[0, 0]
    assert sandwich.bending_stiffness == pytest.approx(free, rel=1e-8)


def test_shear_deflection_vanishes_with_a_stiff_core_and_matters_with_foam():
    bent, sheared = bending_deflection(Sandwich(20e3, 20e3, 0.6, 0.6, *FOAM), 200.0, 1.0)
    stiff = Sandwich(20e3, 20e3, 0.6, 0.6, 8.0, 1e6)
    assert bending_deflection(stiff, 200.0, 1.0)[0] == bent
    assert bending_deflection(stiff, 200.0, 1.0)[1] == pytest.approx(sheared * 22.0 / 1e6)
    assert sheared > 0.3 * bent


def test_shear_share_falls_with_the_square_of_the_span():
    sandwich = Sandwich(20e3, 20e3, 0.6, 0.6, *FOAM)
    shares = [
        sheared / bent
        for bent, sheared in (bending_deflection(sandwich, s, 1.0) for s in (100.0, 200.0))
    ]
    assert shares[0] == pytest.approx(4.0 * shares[1], rel=1e-12)


def test_faces_carry_the_moment_and_the_core_the_shear():
    sandwich = Sandwich(20e3, 40e3, 0.8, 0.5, *FOAM)
    lower, upper = face_stress(sandwich, 50.0)
    assert lower * 0.8 == pytest.approx(upper * 0.5, rel=1e-12)
    assert lower * 0.8 * sandwich.distance == pytest.approx(50.0, rel=1e-12)
    assert core_shear(sandwich, 5.0) * sandwich.distance == pytest.approx(5.0, rel=1e-12)


def test_wrinkling_is_half_the_cube_root():
    assert wrinkling_stress(20e3, 60.0, 22.0) == pytest.approx(0.5 * math.cbrt(20e3 * 60.0 * 22.0))


def test_wrinkling_of_practice_lies_below_the_exact_minimum():
    """An even face of bending stiffness D on an elastic half-space, minimised over the wave."""
    face, thickness, modulus, shear = 20e3, 0.6, 60.0, 22.0
    waves = np.linspace(0.02, 3.0, 20000)  # 1/mm
    # deep even core: foundation stiffness per area 2 E / ((1 + nu)(3 - nu)) times the wave number
    poisson = modulus / (2.0 * shear) - 1.0
    foundation = 2.0 * modulus / ((1.0 + poisson) * (3.0 - poisson))
    pressure = face * thickness**2 / 12.0 * waves**2 + foundation / (thickness * waves)
    practice = wrinkling_stress(face, modulus, shear)
    assert practice < pressure.min() < 2.0 * practice


def test_a_core_of_nothing_is_refused():
    with pytest.raises(LimitError, match="core_shear_modulus"):
        Sandwich(20e3, 20e3, 0.6, 0.6, 8.0, 0.0)
