"""Statistics of few coupons against tables and certified data."""

from __future__ import annotations

from checks import reference
from laywright.shop.coupons.statistics import (
    A_BASIS,
    B_BASIS,
    Basis,
    basis_value,
    grubbs_critical,
    summarise,
    tolerance_factor,
)


def test_sta_01_b_basis_factors():
    reference.agree("STA-01", {f"kB_{n}": tolerance_factor(n, B_BASIS) for n in (5, 10, 20, 30)})


def test_sta_02_a_basis_factors():
    reference.agree("STA-02", {f"kA_{n}": tolerance_factor(n, A_BASIS) for n in (10, 20, 30)})


def test_sta_04_factor():
    reference.agree("STA-04", {"k_exact": tolerance_factor(43, Basis(0.90, 0.99))})


def test_sta_06_worked_example():
    summary = summarise([412, 398, 427, 405, 391, 418, 409, 401, 422, 395])
    reference.agree(
        "STA-06",
        {
            "mean": summary.mean,
            "s": summary.deviation,
            "CV": 100.0 * summary.variation,
            "B_basis": basis_value(summary, B_BASIS),
            "A_basis": basis_value(summary, A_BASIS),
        },
    )


def test_sta_08_grubbs():
    reference.agree("STA-08", {f"C_{n}": grubbs_critical(n) for n in (5, 10, 20, 30)})


def test_sta_09_numerical_accuracy():
    first = summarise([10000001.0, 10000003.0, 10000002.0])

    def spread(start: float, low: float, high: float) -> float:
        return summarise([start, *[low, high] * 500]).deviation

    reference.agree(
        "STA-09",
        {
            "N1_mean": first.mean,
            "N1_sd": first.deviation,
            "N2_sd": spread(1.2, 1.1, 1.3),
            "N3_sd": spread(1000000.2, 1000000.1, 1000000.3),
            "N4_sd": spread(10000000.2, 10000000.1, 10000000.3),
        },
    )
