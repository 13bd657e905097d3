from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from laywright.shop.kinetics import (
    activation_energy,
    autocatalytic_cure,
    glass_transition,
    laminate_heat,
    nth_order_cure,
    rate_ratio,
    time_at,
)

temperatures = st.floats(0.0, 80.0)


@given(st.floats(0.1, 100.0), temperatures, temperatures, temperatures)
def test_times_do_not_depend_on_the_way(time, first, second, third):
    direct = time_at(time, first, third)
    assert time_at(time_at(time, first, second), second, third) == pytest.approx(direct, rel=1e-9)


@given(st.floats(1.1, 10.0), st.floats(0.0, 40.0), st.floats(5.0, 40.0))
def test_energy_and_rate_are_inverse(ratio, first, step):
    energy = activation_energy(ratio, first, first + step)
    assert rate_ratio(energy, first, first + step) == pytest.approx(ratio, rel=1e-9)


@pytest.mark.parametrize("order", [1.0, 1.5, 2.0, 3.0])
def test_nth_order_solves_its_equation(order):
    path = solve_ivp(
        lambda _, a: 0.03 * (1.0 - a) ** order, (0.0, 60.0), [0.0], rtol=1e-10, atol=1e-12
    )
    assert nth_order_cure(0.03, 60.0, order) == pytest.approx(float(path.y[0, -1]), rel=1e-7)


def test_autocatalysis_solves_its_equation():
    path = solve_ivp(lambda _, a: 0.05 * a * (1.0 - a), (0.0, 90.0), [0.02], rtol=1e-10, atol=1e-12)
    assert autocatalytic_cure(0.05, 90.0, 0.02) == pytest.approx(float(path.y[0, -1]), rel=1e-7)


@given(st.floats(0.0, 1.0), st.floats(0.0, 0.98))
def test_glass_transition_rises_with_cure(cure, share):
    low, high = (glass_transition(part, -30.0, 85.0) for part in (cure * share, cure))
    assert -30.0 <= low <= high <= 85.0 + 1e-9


def test_fibre_only_lowers_the_heat():
    assert laminate_heat(400.0, 1.8, 0.0) == (400.0, 1.8)
    heat, capacity = laminate_heat(400.0, 1.8, 0.5)
    assert heat / capacity < 400.0 / 1.8
