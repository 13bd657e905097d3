"""What a handful of coupons says about the next part: mean, scatter, basis values, outliers."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from scipy.special import nctdtrit, ndtri, stdtrit

from laywright.errors import InputError

__all__ = [
    "A_BASIS",
    "B_BASIS",
    "Basis",
    "Summary",
    "basis_value",
    "grubbs_critical",
    "normed_residuals",
    "outliers",
    "summarise",
    "tolerance_factor",
]


_ROUNDING = 1e-12  # of the mean: values that differ by no more are the same


@dataclass(frozen=True)
class Basis:
    """What a basis value promises, for a normal distribution.

    Attributes
    ----------
    coverage : float
        Share of all future values that lie above it.
    confidence : float
        With which this holds.
    """

    coverage: float
    confidence: float


A_BASIS = Basis(0.99, 0.95)
B_BASIS = Basis(0.90, 0.95)


@dataclass(frozen=True)
class Summary:
    """Mean and scatter of a few values.

    Attributes
    ----------
    count : int
    mean : float
        In the unit of the values.
    deviation : float
        Standard deviation of the sample (divisor count - 1), zero for a single value.
    """

    count: int
    mean: float
    deviation: float

    @property
    def variation(self) -> float:
        """Standard deviation as a share of the mean."""
        return self.deviation / abs(self.mean) if self.mean else math.inf


def summarise(values: Sequence[float]) -> Summary:
    """Return mean and scatter, free of cancellation.

    Raises
    ------
    InputError
        If there are no values, or one is not a finite number.

    Examples
    --------
    >>> summarise([10000001.0, 10000003.0, 10000002.0]).deviation
    1.0
    """
    if not values or not all(math.isfinite(value) for value in values):
        raise InputError(
            "statistics", "no values or one that is no number", "finite numbers", "check the list"
        )
    count = len(values)
    mean = math.fsum(values) / count
    residuals = [value - mean for value in values]
    drift = math.fsum(residuals)
    if count == 1:
        return Summary(1, mean, 0.0)
    square = math.fsum(residual**2 for residual in residuals) - drift**2 / count
    return Summary(count, mean, math.sqrt(max(square, 0.0) / (count - 1)))


def tolerance_factor(count: int, basis: Basis) -> float:
    """Return k so that mean - k deviation is a one-sided tolerance limit of normal values.

    Exact, by the non-central t distribution: k = t(confidence; count - 1, z sqrt(count)) /
    sqrt(count), with z the normal quantile of the coverage.

    Examples
    --------
    >>> round(tolerance_factor(10, B_BASIS), 3)
    2.355
    """
    _check_count(count, 2)
    root = math.sqrt(count)
    shift = float(ndtri(basis.coverage)) * root
    return float(nctdtrit(count - 1, shift, basis.confidence)) / root


def basis_value(summary: Summary, basis: Basis) -> float:
    """Return the value above which that share of future values lies with that confidence."""
    return summary.mean - tolerance_factor(summary.count, basis) * summary.deviation


def grubbs_critical(count: int, level: float = 0.05) -> float:
    """Return the largest normed residual that chance allows, two-sided (Grubbs 1969)."""
    _check_count(count, 3)
    t = float(stdtrit(count - 2, 1.0 - level / (2.0 * count)))
    return (count - 1) / math.sqrt(count) * math.sqrt(t**2 / (count - 2 + t**2))


def normed_residuals(values: Sequence[float]) -> list[float]:
    """Return the distance of each value from the mean in standard deviations."""
    summary = summarise(values)
    if summary.deviation <= _ROUNDING * abs(summary.mean):
        return [0.0] * summary.count
    return [abs(value - summary.mean) / summary.deviation for value in values]


def outliers(values: Sequence[float], level: float = 0.05) -> tuple[int, ...]:
    """Return the places of values that lie too far out, one at a time (maximum normed residual).

    A value found this way is looked into, not thrown out: only a cause found at the bench is a
    reason to leave it out.
    """
    left = list(range(len(values)))
    found = []
    while len(left) >= 3:
        residuals = normed_residuals([values[place] for place in left])
        worst = max(range(len(left)), key=residuals.__getitem__)
        if residuals[worst] <= grubbs_critical(len(left), level):
            break
        found.append(left.pop(worst))
    return tuple(found)


def _check_count(count: int, least: int) -> None:
    if count < least:
        raise InputError("statistics", f"{count} values", f"at least {least}", "test more coupons")
