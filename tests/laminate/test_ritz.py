from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from laminate.navier import navier_buckling, navier_deflection
from laywright.laminate.ritz import RitzPlate, Support
from laywright.laminate.rotation import rotated_stiffness

EVEN = np.array([[1.0, 0.3, 0.0], [0.3, 1.0, 0.0], [0.0, 0.0, 0.35]])
THIN = np.array([1e6, 1e6])


def square(support, bending=EVEN, shear=THIN):
    plate = RitzPlate(bending, shear, (1.0, 1.0), support)
    return plate, plate.deflected(1.0)


def test_a_simply_supported_square_of_the_handbook():
    """Timoshenko and Woinowsky-Krieger 1959, table 8, from memory."""
    plate, bent = square(Support.SIMPLE)
    middle = plate.at(bent, 0.0, 0.0)
    assert middle.deflection == pytest.approx(0.00406, abs=5e-6)
    assert middle.moment[:2] == pytest.approx([0.0479, 0.0479], abs=1e-4)
    assert abs(plate.at(bent, 1.0, 0.0).shear[0]) == pytest.approx(0.338, abs=1e-3)


def test_a_clamped_square_of_the_handbook():
    """Timoshenko and Woinowsky-Krieger 1959, table 35, from memory."""
    plate, bent = square(Support.CLAMPED)
    middle, edge = plate.at(bent, 0.0, 0.0), plate.at(bent, 1.0, 0.0)
    assert middle.deflection == pytest.approx(0.00126, abs=6e-6)
    assert middle.moment[0] == pytest.approx(0.0231, abs=3e-4)
    assert edge.moment[0] == pytest.approx(-0.0513, abs=2e-4)
    assert edge.deflection == pytest.approx(0.0, abs=1e-12)


@pytest.mark.parametrize(
    ("support", "force", "k", "within"),
    [
        (Support.SIMPLE, (-1.0, 0.0, 0.0), 4.00, 0.01),
        (Support.SIMPLE, (-1.0, -1.0, 0.0), 2.00, 0.01),
        (Support.SIMPLE, (0.0, 0.0, 1.0), 9.34, 0.03),
        (Support.CLAMPED, (-1.0, 0.0, 0.0), 10.07, 0.01),
        (Support.CLAMPED, (-1.0, -1.0, 0.0), 5.31, 0.01),
        (Support.CLAMPED, (0.0, 0.0, 1.0), 14.71, 0.10),
    ],
)
def test_buckling_of_even_squares_of_the_handbook(support, force, k, within):
    """Timoshenko and Gere 1961, chapter 9, from memory: k pi^2 D / a^2."""
    plate, _ = square(support)
    assert plate.buckling(force) / math.pi**2 == pytest.approx(k, abs=within)


@settings(max_examples=15)
@given(st.floats(0.5, 20.0), st.floats(0.5, 2.0), st.floats(5.0, 50.0), st.floats(0.5, 2.0))
def test_uncoupled_simply_supported_plates_meet_navier(stiff, ratio, firm, skew):
    bending = np.array([[stiff, 0.3, 0.0], [0.3, 1.0, 0.0], [0.0, 0.0, 0.5]])
    shear = firm * math.pi**2 * (1.0 + stiff)
    stiffness = np.array([shear, skew * shear])
    size = (ratio, 1.0)
    plate = RitzPlate(bending, stiffness, size, Support.SIMPLE)
    series = navier_deflection(bending, size, 1.0, tuple(stiffness))
    assert plate.at(plate.deflected(1.0), 0.0, 0.0).deflection == pytest.approx(series, rel=5e-4)
    for force in ((-1.0, 0.0), (-0.5, -1.0)):
        series = navier_buckling(bending, size, force, tuple(stiffness))
        # The least energy over fewer shapes never lies below the least over all.
        assert series * (1.0 - 1e-6) <= plate.buckling((*force, 0.0)) <= 1.01 * series


@pytest.mark.parametrize("support", Support)
def test_reactions_balance_the_pressure(support):
    plate, bent = square(support, shear=np.array([300.0, 200.0]))
    places, weights = np.polynomial.legendre.leggauss(12)
    across_x = sum(
        w * plate.at(bent, 1.0, y).shear[0] for y, w in zip(places, weights, strict=True)
    )
    across_y = sum(
        w * plate.at(bent, x, 1.0).shear[1] for x, w in zip(places, weights, strict=True)
    )
    assert abs(across_x + across_y) == pytest.approx(1.0, rel=0.02)  # half of it on two edges


def test_coupled_bending_and_twist_softens():
    tape = np.array([[20.0, 0.3, 0.0], [0.3, 1.0, 0.0], [0.0, 0.0, 0.5]])
    turned = rotated_stiffness(tape, math.radians(30.0))
    plain = turned.copy()
    plain[:2, 2] = plain[2, :2] = 0.0
    coupled, free = (
        plate.at(bent, 0.0, 0.0).deflection
        for plate, bent in (square(Support.SIMPLE, d) for d in (turned, plain))
    )
    assert coupled > 1.02 * free
    mirrored = turned.copy()
    mirrored[:2, 2] *= -1.0
    mirrored[2, :2] *= -1.0
    plate, bent = square(Support.SIMPLE, mirrored)
    assert plate.at(bent, 0.0, 0.0).deflection == pytest.approx(coupled, rel=1e-9)


def test_the_sign_of_a_shear_does_not_matter_without_coupling():
    plate, _ = square(Support.CLAMPED)
    assert plate.buckling((0.0, 0.0, 1.0)) == pytest.approx(plate.buckling((0.0, 0.0, -1.0)))


def test_nothing_buckles_in_tension():
    plate, _ = square(Support.SIMPLE)
    assert math.isinf(plate.buckling((1.0, 1.0, 0.0)))
    assert math.isinf(plate.buckling((0.0, 0.0, 0.0)))
