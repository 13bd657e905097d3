from __future__ import annotations

import math

import numpy as np
import pytest

from laywright.laminate.sandwich import wrinkling_stress


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
