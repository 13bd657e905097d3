from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from laywright.shop.kinetics import (
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


@given(st.floats(2e4, 1.5e5), temperatures, temperatures, temperatures)
def test_rates_do_not_depend_on_the_way(energy, first, second, third):
    by_way = rate_ratio(energy, first, second) * rate_ratio(energy, second, third)
    assert by_way == pytest.approx(rate_ratio(energy, first, third), rel=1e-9)


@pytest.mark.parametrize("order", [1.0, 1.5, 2.0, 3.0])
def test_nth_order_solves_its_equation(order):
    path = solve_ivp(
        lambda _, a: 0.03 * (1.0 - a) ** order, (0.0, 60.0), [0.0], rtol=1e-10, atol=1e-12
    )
    assert nth_order_cure(0.03, 60.0, order) == pytest.approx(float(path.y[0, -1]), rel=1e-7)


@given(st.floats(0.0, 1.0), st.floats(0.0, 0.98))
def test_glass_transition_rises_with_cure(cure, share):
    low, high = (glass_transition(part, -30.0, 85.0) for part in (cure * share, cure))
    assert -30.0 <= low <= high <= 85.0 + 1e-9


def test_fibre_only_lowers_the_heat():
    assert laminate_heat(400.0, 1.8, 0.0) == (400.0, 1.8)
    heat, capacity = laminate_heat(400.0, 1.8, 0.5)
    assert heat / capacity < 400.0 / 1.8
