from __future__ import annotations

import statistics

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.special import ndtr, ndtri
from scipy.stats import chi

from laywright.errors import InputError
from laywright.shop.coupons.statistics import (
    A_BASIS,
    B_BASIS,
    Basis,
    basis_value,
    grubbs_critical,
    normed_residuals,
    outliers,
    summarise,
    tolerance_factor,
)
from laywright.values import pack, unpack

values = st.lists(st.floats(-1e6, 1e6), min_size=2, max_size=40)


@given(values)
def test_mean_and_deviation_agree_with_exact_fractions(numbers):
    found = summarise(numbers)
    assert found.mean == pytest.approx(statistics.mean(numbers), rel=1e-12, abs=1e-9)
    assert found.deviation == pytest.approx(statistics.stdev(numbers), rel=1e-9, abs=1e-9)


@pytest.mark.parametrize("count", [3, 5, 17, 100])
@pytest.mark.parametrize("basis", [A_BASIS, B_BASIS, Basis(0.5, 0.9)])
def test_factor_gives_the_confidence_by_integration(count, basis):
    """Mean normal, variance chi-square: the chance that mean - k s lies below the quantile."""
    k, root, quantile = tolerance_factor(count, basis), np.sqrt(count), ndtri(basis.coverage)

    def part(spread: float) -> float:
        return chi.pdf(spread, count - 1) * ndtr(
            k * root * spread / np.sqrt(count - 1) - quantile * root
        )

    assert quad(part, 0.0, 30.0, limit=200)[0] == pytest.approx(basis.confidence, abs=1e-6)


def test_factor_by_trial():
    """19 of 20 samples of 6 normal values put their limit below the true 10th percentile."""
    rng = np.random.default_rng(12)
    samples = rng.normal(size=(20000, 6))
    limits = samples.mean(axis=1) - tolerance_factor(6, B_BASIS) * samples.std(axis=1, ddof=1)
    assert (limits < -1.2815515655446004).mean() == pytest.approx(0.95, abs=0.005)


def test_factors_fall_with_more_coupons():
    factors = [tolerance_factor(n, B_BASIS) for n in range(3, 60)]
    assert factors == sorted(factors, reverse=True)


def test_a_basis_lies_below_b_basis():
    summary = summarise([400.0, 410.0, 395.0, 405.0, 390.0])
    assert basis_value(summary, A_BASIS) < basis_value(summary, B_BASIS) < summary.mean


def test_one_wild_value_is_found_and_an_even_set_has_none():
    even = [100.0, 101.0, 99.0, 100.5, 99.5, 100.2, 99.8]
    assert outliers(even) == ()
    assert outliers([*even[:3], 140.0, *even[3:]]) == (3,)
    assert outliers([5.0] * 6) == ()
    assert normed_residuals([5.0] * 6) == [0.0] * 6


@given(st.integers(3, 60))
def test_no_residual_can_pass_its_bound(count):
    """A normed residual never exceeds (n - 1) / sqrt n, and the critical value lies below."""
    assert grubbs_critical(count) < (count - 1) / np.sqrt(count)


def test_summary_survives_storage():
    summary = summarise([1.0, 2.0, 4.0])
    assert unpack(type(summary), pack(summary)) == summary
    assert summarise([3.0]).deviation == 0.0


@pytest.mark.parametrize("numbers", [[], [1.0, float("nan")]])
def test_no_numbers_are_refused(numbers):
    with pytest.raises(InputError, match="statistics"):
        summarise(numbers)


def test_too_few_values_are_refused():
    with pytest.raises(InputError, match="at least 2"):
        tolerance_factor(1, B_BASIS)
    with pytest.raises(InputError, match="at least 3"):
        grubbs_critical(2)
